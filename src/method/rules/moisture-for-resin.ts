import { amount } from '../../model/quantity/index.ts';
import { layersOfResin } from './kit.ts';
import { rule } from './rule.ts';
import { tenths, worksAt } from './stock-moisture.ts';

/** Moisture content up to which resin is usually laid on wood, %. Common practice; the sheet of the resin comes first. */
export const mostUnderResin = 12;

/** Resin on wood that is wetter than it bears. */
export const moistureForResin = rule({
  id: 'moisture-for-resin',
  level: 'warn',
  title: 'Wood is dry before resin goes on it',
  looksAt: `How dry the wood is when it is worked, in methods that lay resin, beside ${mostUnderResin} %: common practice, and the sheet of the resin comes first.`,
  why: 'Damp blows bubbles into resin and keeps it from bonding, and what is sealed in cannot dry.',
  find(worked) {
    if (layersOfResin(worked).length === 0) return [];
    const wettest = worksAt(worked).sort((one, other) => other.moisture - one.moisture)[0];
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
