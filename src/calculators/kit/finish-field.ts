import type * as z from 'zod/mini';
import { type FinishId, finishes } from '../../model/finish/index.ts';
import { choiceField } from './fields.ts';

/** A field that names one of the generic kinds of finish. */
export function finishField(meta: { label: string; help?: string; group?: string }): z.ZodMiniType<FinishId, string> {
  return choiceField({
    options: finishes.map(({ id, name }) => ({ value: id, label: name })),
    examples: ['mineral-oil', 'film-epoxy'],
    ...meta,
  });
}
