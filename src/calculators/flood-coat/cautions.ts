import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { assumed, statedCupWords } from '../../model/resin/assumed.ts';
import type { Resin } from '../../model/resin/types.ts';
import { type Coat, cupsFor } from './coat.ts';
import { mm } from './verdict.ts';

const own = (id: string, level: Caution['level'], text: string, more: Partial<Caution> = {}): Caution => ({
  id,
  level,
  own: true,
  text,
  basis: 'derived',
  ...more,
});

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
  const { potLife, potLifeTemperature } = resin.figures;
  if (!potLife || cupsFor(mass, resin) === undefined) {
    return [
      own(
        'no-cup-limit',
        'warning',
        'Nothing says how much may stand in one cup: ask the maker for the pot life and its mass.',
      ),
    ];
  }
  const cups = cupsFor(mass, resin) ?? 1;
  if (cups === 1) return [];
  const celsius = potLifeTemperature?.value ?? assumed.potLifeTemperature;
  const life = `${amount(potLife.value, 's', 2)} ${statedCupWords(resin)}`;
  const warmer = shop !== undefined && shop > celsius ? `; at ${amount(shop, 'Cel')} it is less` : '';
  return [
    own(
      'several-cups',
      'warning',
      `Mix it in ${cups} cups, one after another, each poured out at once: pot life ${life}${warmer}.`,
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
