import { amount } from '../../model/quantity/index.ts';
import { askedOf, inSentence, numberTold, placeOf, toolsOf, wordTold } from './kit.ts';
import { rule } from './rule.ts';

/** A router bit that is larger than its router or table takes. */
export const bitTooLarge = rule({
  id: 'bit-too-large',
  level: 'stop',
  title: 'The machine takes the bit',
  looksAt:
    'The diameter of each bit that a step asks the speed of, beside the greatest that its router, router table or drill press takes (its limit bitDiameter).',
  why: 'A bit that is too large strikes the opening or the guard, and few small routers turn slowly enough for it.',
  neverExcepted: 'What the machine does not take is not made to fit by a reason.',
  find: (worked) =>
    askedOf(worked, 'cutter-speed').flatMap((calculation) => {
      const diameter = numberTold(calculation, 'diameter');
      const step = worked.steps.find(({ id }) => id === calculation.step);
      if (diameter === undefined || !step) return [];
      const takes = wordTold(calculation, 'work') === 'boring' ? ['drill-press'] : ['router-table', 'plunge-router'];
      return toolsOf(worked, step).flatMap(({ record, limits }) => {
        const most = limits.bitDiameter?.value;
        if (!takes.includes(record.kind) || most === undefined || diameter <= most + 0.01) return [];
        return [
          {
            ...placeOf(calculation),
            message: `The bit of ${amount(diameter, 'mm')} is larger than the ${amount(most, 'mm')} that the machine takes (${inSentence(record.what)}).`,
            wayOut: 'Take a smaller bit, or a machine that is made for it.',
          },
        ];
      });
    }),
});
