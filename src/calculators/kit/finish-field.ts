import * as z from 'zod/mini';
import { type FinishId, finishes } from '../../model/finish/index.ts';
import { choiceField } from './fields.ts';
import { countField } from './stock-fields.ts';

/** A field that names one of the generic kinds of finish. */
export function finishField(meta: { label: string; help?: string; group?: string }): z.ZodMiniType<FinishId, string> {
  return choiceField({
    options: finishes.map(({ id, name }) => ({ value: id, label: name })),
    examples: ['mineral-oil', 'film-epoxy'],
    ...meta,
  });
}

/** How many coats of it; the record's usual number where left empty. */
export const coatsField = (group: string) =>
  z.optional(
    countField(
      { label: 'Coats', group, help: 'Empty: as many as is usual.', examples: ['3'] },
      { minimum: 1, maximum: 12 },
    ),
  );
