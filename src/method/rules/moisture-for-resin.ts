import { amount } from '../../model/quantity/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import { askedOf, figureOf, layersOfResin, placeOf, stepsBefore } from './kit.ts';
import { rule } from './rule.ts';
import { tenths, worksAt } from './stock-moisture.ts';

/** Moisture content up to which resin is usually laid on wood, %. Common practice; the sheet of the resin comes first. */
export const mostUnderResin = 12;

/** Resin on wood that is wetter than it bears. */
export const moistureForResin = rule({
  id: 'moisture-for-resin',
  level: 'warn',
  title: 'Wood is dry before resin goes on it',
  looksAt: `How dry the wood is when resin goes on it (the balance of an acclimatising before it, else the moisture told to the movement through the year), beside ${mostUnderResin} %: common practice, and the sheet of the resin comes first.`,
  why: 'Damp blows bubbles into resin and keeps it from bonding, and what is sealed in cannot dry.',
  find(worked) {
    const wettest = atFirstLayer(worked).sort((one, other) => other.moisture - one.moisture)[0];
    if (!wettest || wettest.moisture <= mostUnderResin) return [];
    return [
      {
        ...wettest.place,
        message: `The wood is worked at ${tenths(wettest.moisture)}; up to ${amount(mostUnderResin, '%')} is usual under resin.`,
        wayOut: 'Let it dry in the air of the shop until its weight stands still, and ask the sheet of the resin.',
      },
    ];
  },
});

/** How dry the wood is when the first resin goes on it: what it came to in the shop before that, else as it is worked. */
function atFirstLayer(worked: WorkedMethod): ReturnType<typeof worksAt> {
  const [first] = layersOfResin(worked);
  if (!first) return [];
  const before = stepsBefore(worked, first);
  const settled = askedOf(worked, 'acclimatise').flatMap((calculation) => {
    const moisture = figureOf(calculation, 'balance')?.value;
    return moisture !== undefined && before.has(calculation.step) ? [{ moisture, place: placeOf(calculation) }] : [];
  });
  return settled.length > 0 ? settled : worksAt(worked);
}
