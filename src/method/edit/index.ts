export {
  calculatorTitle,
  type FieldSaying,
  fieldSaying,
  fieldWords,
  inputsFor,
  referencesFor,
  valuesFor,
} from './ask.ts';
export { completeAt } from './complete.ts';
export { hoverAt } from './hover.ts';
export type { InputOption } from './inputs.ts';
export { kindOfRecord, looseData } from './outline.ts';
export type { PointerOption } from './pointers.ts';
export { type LookedOver, type LookOptions, lookOver, problemsOf } from './problems.ts';
export { addEntry, moveEntry, removeEntry, setValue } from './splice/entries.ts';
export { renameEntry } from './splice/rename.ts';
export { applySplices, canBeEdited } from './splice/text.ts';
export type {
  Completion,
  Completions,
  EditContext,
  EditProblem,
  Fix,
  Hover,
  NamedOption,
  NameLoaders,
  RecordKind,
  Splice,
} from './types.ts';
export { usualNames } from './usual-names.ts';
