import { atStep, isResinCoat } from './kit.ts';
import { rule } from './rule.ts';

/** Mixed resin that could be left overnight. */
export const resinWithoutStop = rule({
  id: 'resin-without-stop',
  level: 'warn',
  title: 'Mixed resin is not left before it is used',
  looksAt:
    'Steps that mix, seal, pour or coat with resin, and whether they may be interrupted: they are done in one go (interrupt: never).',
  why: 'A cup that is left heats itself, smokes and sets; the plan lets a step that may be interrupted lie overnight.',
  find: (worked) =>
    worked.steps
      .filter((step) => ['mix', 'seal', 'pour'].includes(step.act.id) || isResinCoat(worked, step))
      .filter(({ interrupt }) => interrupt !== 'never')
      .map((step) => ({
        ...atStep(step),
        message: `“${step.record.title}” may be left ${step.interrupt === 'anywhere' ? 'at any point' : 'between two pieces'}, with mixed resin standing in its cup.`,
        wayOut: 'Write interrupt: never into the step.',
      })),
});
