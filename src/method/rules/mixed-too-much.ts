import type { WorkedCalculation, WorkedMethod, WorkedStep } from '../case/types.ts';
import { answerFor, atStep, figureOf, layersOfResin, minutesOf, placeOf, span, stepsBefore, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** More in a cup than is laid before it must be empty. */
export const mixedTooMuch = rule({
  id: 'mixed-too-much',
  level: 'warn',
  title: 'A cup is empty before it sets',
  looksAt:
    'The hands-on time for the pieces that one cup serves (that of each piece, times the pieces, over the cups of resin-dose for one layer) beside the time in which resin-dose has a cup emptied.',
  why: 'Past its time a cup thickens, strings and grows hot enough to burn; what is poured then holds bubbles and streaks.',
  find: (worked) =>
    layersOfResin(worked).flatMap((step) => {
      const dose = doseFor(worked, step);
      const emptied = minutesOf(dose, 'emptyWithin');
      const cups = dose && figureOf(dose, 'cups')?.value;
      if (!dose || emptied === undefined || !cups) return [];
      const layers = figureOf(dose, 'layers')?.value ?? 1;
      const each = (step.hands.each * worked.pieces) / Math.max(1, cups / layers);
      if (each <= emptied) return [];
      return [
        {
          ...atStep(step, 'hands'),
          message: `What one cup holds takes ${span(each)} to lay in “${step.record.title}”; a cup is emptied within ${span(emptied)} of mixing.`,
          wayOut: `Mix smaller cups, one after another (cupMass of ${placeOf(dose).path.at(-1)}), work with more people, or take a slower resin.`,
        },
      ];
    }),
});

/** The dose that a layer is mixed by: the one whose time its link to the mix names, else that of the nearest mix, else its own. */
function doseFor(worked: WorkedMethod, step: WorkedStep): WorkedCalculation | undefined {
  for (const link of step.record.after ?? []) {
    const most = typeof link === 'object' && typeof link.most === 'object' ? link.most.from : undefined;
    const named = most === undefined ? undefined : worked.calculations[most.split('/')[2] ?? ''];
    if (named?.use === 'resin-dose') return named;
  }
  const own = step.calculations.find(({ use }) => use === 'resin-dose');
  if (own) return own;
  const before = stepsBefore(worked, step);
  const mix = stepsThat(worked, 'mix').findLast(({ id }) => before.has(id));
  return mix && answerFor(worked, mix, 'resin-dose');
}
