import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, leastBetween, placeOf, stepsBefore, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** Wood that is cut while it is still on its way to balance. */
export const workedBeforeSettled = rule({
  id: 'worked-before-settled',
  level: 'warn',
  title: 'Wood has settled before it is flattened',
  looksAt:
    'The days that acclimatising takes beside the least that lies between bringing the wood in and the first flattening or planing.',
  why: 'Wood that is made flat while it dries goes out of flat as it goes on drying.',
  find(worked) {
    const flat = stepsThat(worked, 'flatten', 'plane', 'glue-up');
    return askedOf(worked, 'acclimatise').flatMap((calculation) => {
      const wait = figureOf(calculation, 'withinOne');
      if (!wait || wait.value === 0) return [];
      const first = flat.find(
        (step) => step.id === calculation.step || stepsBefore(worked, step).has(calculation.step),
      );
      if (!first) return [];
      const seconds = first.id === calculation.step ? 0 : 60 * (leastBetween(worked, calculation.step, first.id) ?? 0);
      // A minute is lost where days are written as whole minutes.
      if (seconds >= wait.value - 60) return [];
      return [
        {
          ...placeOf(calculation),
          message: `The wood comes to within one point of balance in about ${amount(wait.value, 's', 2)}, and “${first.record.title}” may begin ${seconds > 0 ? `${amount(seconds, 's', 2)} after` : 'as soon as'} it has come in.`,
          wayOut: `Let “${first.record.title}” wait, with least: { from: /calculations/${calculation.name}/events/ready }.`,
        },
      ];
    });
  },
});
