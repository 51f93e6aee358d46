import { usualRatio } from '../../model/abrasive/index.ts';
import { askedOf, figureOf, hasOwnCaution, numberTold, placeOf, wordTold } from './kit.ts';
import { rule } from './rule.ts';

/** Steps between grits that leave scratches behind. */
export const gritsSkipped = rule({
  id: 'grits-skipped',
  level: 'warn',
  title: 'No grit is skipped',
  looksAt:
    'The largest step of each sanding sequence, grain over grain, beside the step that it allows, and grits that are not in the drawer.',
  why: 'The next grit must take out scratches deeper than its own; a hand stops before it has, and what is left shows under the finish.',
  find: (worked) =>
    askedOf(worked, 'grit-sequence').flatMap((calculation) => {
      const largest = figureOf(calculation, 'largestStep');
      if (!largest) return [];
      const limit =
        numberTold(calculation, 'ratio') ??
        usualRatio[wordTold(calculation, 'material') === 'resin' ? 'resin' : 'wood'];
      const wide = hasOwnCaution(calculation, 'step-too-wide');
      const missing = (calculation.result?.uses ?? []).filter(
        ({ id, note }) => id.startsWith('discs-') && note !== undefined,
      );
      if (!wide && missing.length === 0) return [];
      // With steps that are all small enough it is the first grit that is too fine.
      const stepTooWide = largest.value > limit * (1 + 1e-9);
      const told = calculation.result?.cautions.find(({ id }) => id === 'step-too-wide');
      const grits = figureOf(calculation, 'grits')?.note?.replace(/\.$/, '');
      return [
        {
          ...placeOf(calculation),
          message: !wide
            ? `The sequence ${grits} takes ${missing.map(({ what }) => what.replace('Discs or sheets, ', '')).join(' and ')}, and the drawer has none.`
            : stepTooWide
              ? `From grit to grit (${grits}) the largest step is ${largest.value.toFixed(1)} times the grain, and ${limit} times is the most.`
              : `The sequence ${grits} begins too fine: the marks of the tool will show through.`,
          wayOut: wide ? `${told?.text ?? ''}` : 'Buy the grit and list it in the drawer.',
        },
      ];
    }),
});
