export { completeAt } from './complete.ts';
export { hoverAt } from './hover.ts';
export { kindOfRecord, looseData } from './outline.ts';
export { type LookedOver, type LookOptions, lookOver, problemsOf } from './problems.ts';
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
