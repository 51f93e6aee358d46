import { askedOf, atStep, isResinCoat, stepsBefore, stepsThat, wordTold } from './kit.ts';
import { rule } from './rule.ts';

/** A face that will meet water, finished before its grain was raised. */
export const grainNotRaised = rule({
  id: 'grain-not-raised',
  level: 'warn',
  title: 'The grain is raised before the finish',
  looksAt:
    'Whether water will reach the wood (food lies on it, or a sanding sequence says so), and whether the first oil, wax or coat (of resin none) waits for a step that raises the grain.',
  why: 'The first washing lifts every fibre that sanding has pressed down, and the face turns rough. Raised on purpose and sanded off, it stays down.',
  find(worked) {
    const [first] = stepsThat(worked, 'oil', 'wax', 'coat').filter((step) => !isResinCoat(worked, step));
    const sanded = stepsThat(worked, 'sand', 'scrape', 'plane').length > 0;
    if (!first || !sanded) return [];
    const { food } = worked.record;
    const eaten = food?.touches === 'wood' || food?.touches === 'wood-and-resin';
    const wetted = askedOf(worked, 'grit-sequence').some(
      (calculation) =>
        wordTold(calculation, 'material') !== 'resin' &&
        (wordTold(calculation, 'water') === 'yes' || wordTold(calculation, 'finish') === 'water-based'),
    );
    if (!eaten && !wetted) return [];
    const before = stepsBefore(worked, first);
    if (stepsThat(worked, 'raise-the-grain').some(({ id }) => before.has(id))) return [];
    return [
      {
        ...atStep(first),
        message: `Water will reach the wood${eaten && food ? ` (“${food.claim}”)` : ''}, and “${first.record.title}” goes on before the grain was raised.`,
        wayOut:
          'Before it, wipe the sanded face with clean water, let it dry for hours, and take the fibres off with the last grit, lightly.',
      },
    ];
  },
});
