import { finishById, finishes } from '../../model/finish/kinds.ts';
import type { Finish, FinishId } from '../../model/finish/types.ts';
import { choiceField } from './fields.ts';

/** A choice among the kinds of finish, and none. */
export function finishChoice(words: { label: string; help?: string; group?: string }) {
  return choiceField<FinishId | 'none'>({
    ...words,
    options: [
      { value: 'none', label: 'None, bare wood' },
      ...finishes.map(({ id, name }) => ({ value: id, label: name })),
    ],
    examples: ['mineral-oil', 'tung-oil', 'none'],
  });
}

/** The finish of such a choice; undefined for none. */
export function chosenFinish(id: FinishId | 'none' | undefined): Finish | undefined {
  return id === undefined || id === 'none' ? undefined : finishById(id);
}
