import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution, Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { assumed } from '../../model/resin/assumed.ts';
import type { Resin } from '../../model/resin/types.ts';

/** How thick a coat comes to rest without a dam, mm. */
export interface Coat {
  rest: number;
  /** At the least of the usual contact angles. */
  least: number;
  /** True where the angle is assumed. */
  unsure: boolean;
}

const mm = (value: number) => amount(value, 'mm', 2);
const grams = (value: number) => amount(value, 'g', value >= 1000 ? 4 : 3, true);

const own = (id: string, level: Caution['level'], text: string, more: Partial<Caution> = {}): Caution => ({
  id,
  level,
  own: true,
  text,
  basis: 'derived',
  ...more,
});

/** What a coat comes to. */
export function verdictOf(
  wanted: number | undefined,
  mass: number | undefined,
  { rest, least, unsure }: Coat,
  cautions: readonly Caution[],
): Verdict {
  if (wanted === undefined) {
    return {
      level: 'care',
      text: `Without a dam a coat comes to rest at about ${mm(rest)}: what is poured beyond that runs over the edge.`,
    };
  }
  const said = `One coat of ${mm(wanted)}${mass === undefined ? '' : `: ${grams(mass)}`}`;
  if (wanted > rest) {
    return {
      level: 'care',
      text: `${said}, with a dam higher than that: without one it comes to rest at about ${mm(rest)}.`,
    };
  }
  if (unsure && wanted > least) {
    return {
      level: 'care',
      text: `${said}. On some faces it stands without a dam, off others it runs: try it on an offcut.`,
    };
  }
  return {
    level: cautions.some(({ level }) => level !== 'note') ? 'care' : 'good',
    text: `${said}. It stands without a dam.`,
  };
}

/** Whether the wanted thickness stands by itself. */
export function damWords(wanted: number, { rest, least, unsure }: Coat): Caution[] {
  if (wanted > rest) {
    return [
      own('dam-needed', 'warning', 'Build a dam higher than the coat, or pour it in coats that each stand.', {
        why: `It comes to rest at about ${mm(rest)}, and the rest runs over the edge. A crisp arris can hold the rim of a thicker coat for a while, until a drip, a bump or a rounded place lets it go: do not count on it.`,
      }),
    ];
  }
  if (unsure && wanted > least) {
    return [own('dam-perhaps', 'warning', 'Try it on an offcut of the same face, or build a dam.')];
  }
  return [
    own(
      'no-dam',
      'note',
      'Spread it to the edges of a clean face: poured thinner than it would rest, resin draws back into puddles.',
    ),
  ];
}

/** How the mix is parted into cups: none holds more than the pot life is stated for. */
export function cupWords(mass: number, resin: Resin, shop: number | undefined): Caution[] {
  const { potLife, potLifeMass, potLifeTemperature } = resin.figures;
  if (!potLife || (resin.fromSheet && potLife.basis !== 'supplier-sheet')) {
    return [
      own(
        'no-cup-limit',
        'warning',
        'Nothing says how much may stand in one cup: ask the maker for the pot life and its mass.',
      ),
    ];
  }
  const stated = potLifeMass?.value ?? assumed.potLifeMass;
  const celsius = potLifeTemperature?.value ?? assumed.potLifeTemperature;
  const life = `${amount(potLife.value, 's', 2)} for ${grams(stated)} at ${amount(celsius, 'Cel')}`;
  const warmer = shop !== undefined && shop > celsius ? `; at ${amount(shop, 'Cel')} it is less` : '';
  if (mass <= stated) return [];
  return [
    own(
      'several-cups',
      'warning',
      `Mix it in ${Math.ceil(mass / stated - 1e-9)} cups, one after another, each poured out at once: pot life ${life}${warmer}.`,
      { basis: potLife.basis },
    ),
  ];
}

const level: Caution = {
  id: 'level-face',
  level: 'warning',
  text: 'Level the board in both directions before you mix.',
  why: `${amount(1, 'mm')} out of level from edge to edge is most of a coat of this thickness.`,
  basis: 'shop-practice',
};

const always = ['resin-cup-heat', 'resin-skin', 'resin-air', 'heat-tool'];

/** What holds of every poured coat. */
export function standing(): Caution[] {
  return [level, ...always.flatMap((id) => cautionById(id) ?? [])];
}
