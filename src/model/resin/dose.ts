import { equation } from '../evidence/index.ts';
import { asTyped } from '../quantity/index.ts';

/** What is lost or added on the way from the cup to the place, in percent. */
export interface Allowances {
  /** Runs over an edge that has no dam: percent of the fill. */
  drip: number;
  /** Stays in the cup and on the stick: percent of what is mixed. */
  residue: number;
  /** To be sure: percent of what is needed. */
  spare: number;
}

/** Mass to mix for a mass that must arrive. */
export const massToMix = equation(
  {
    id: 'resin-mass-to-mix',
    title: 'Resin to mix for what must arrive',
    tex: 'M = \\frac{(m_f (1 + d) + m_s)(1 + s)}{1 - r}',
    symbols: [
      { tex: 'M', meaning: 'mass to mix', unit: 'g' },
      { tex: 'm_f', meaning: 'mass that fills the place', unit: 'g' },
      { tex: 'm_s', meaning: 'mass that soaks into bare wood as a seal coat', unit: 'g' },
      { tex: 'd', meaning: 'share of the fill that runs over an open edge', unit: '1' },
      { tex: 's', meaning: 'spare', unit: '1' },
      { tex: 'r', meaning: 'share of what is mixed that stays in the cup', unit: '1' },
    ],
    validity: 'Arithmetic; its shares are practice or guesses.',
    basis: 'derived',
  },
  /**
   * @param fill g
   * @param seal g
   * @param allowances percent
   * @returns g
   */
  (fill: number, seal: number, { drip, residue, spare }: Allowances): number =>
    ((fill * (1 + drip / 100) + seal) * (1 + spare / 100)) / (1 - residue / 100),
);

/** What bare wood soaks up as a thin first coat; from memory. */
export const bareWoodTakes = asTyped({ metric: '100 to 200 g/m²', inch: '1/3 to 2/3 oz/ft²' });

/** Name of the stage that soaks into bare wood. */
export const sealCoatName = 'Seal coat';

/** What the one round of mixing is called that fills a place. */
export const fillName = 'Fill';

/** One round of mixing: a seal coat or a layer. */
export interface Stage {
  name: string;
  /** g to mix. */
  mass: number;
}

/** What a place takes, and what each round of mixing takes. */
export interface Dose {
  /** g of mix that fills the place. */
  fill: number;
  /** g that soaks in as a seal coat. */
  seal: number;
  /** g for each allowance. */
  drip: number;
  spare: number;
  residue: number;
  /** g to mix in all: the sum of the five above, and of the stages. */
  total: number;
  stages: readonly Stage[];
}

/**
 * The dose of a place.
 *
 * @param fill g of mix that fills it
 * @param shares share of the fill that each layer takes, the lowest first; they sum to 1
 * @param seal g of mix for a seal coat, 0 for none
 */
export function doseOf(fill: number, shares: readonly number[], seal: number, allowances: Allowances): Dose {
  const layers = shares.map((share, index) => ({
    name: shares.length === 1 ? fillName : `Layer ${index + 1}`,
    mass: massToMix(fill * share, 0, allowances),
  }));
  const stages = [
    ...(seal > 0 ? [{ name: sealCoatName, mass: massToMix(0, seal, allowances) }] : []),
    ...layers.filter(({ mass }) => mass > 0),
  ];
  const total = stages.reduce((sum, { mass }) => sum + mass, 0);
  const drip = (fill * allowances.drip) / 100;
  return {
    fill,
    seal,
    drip,
    spare: ((fill + drip + seal) * allowances.spare) / 100,
    residue: (total * allowances.residue) / 100,
    total,
    stages,
  };
}

/** Error of the mix ratio that reading a scale to its division leaves open. */
export const readingError = equation(
  {
    id: 'resin-dosing-error',
    title: 'Error of the mix ratio that a scale allows',
    tex: 'e = \\pm \\frac{100\\, d}{2\\, m_B}',
    symbols: [
      { tex: 'e', meaning: 'error of the ratio', unit: '%' },
      { tex: 'd', meaning: 'smallest division of the scale', unit: 'g' },
      { tex: 'm_B', meaning: 'the smaller part in the cup, mostly the hardener', unit: 'g' },
    ],
    validity:
      'Reading alone, half a division. A scale that is not level, warm parts or a wet cup wall add to it. Measuring by volume it holds with ml for g.',
    basis: 'derived',
    remarks:
      'Off the ratio by 2 %, about 2 % of one part finds nothing to react with. That 2 to 3 % is as far as a casting should be off is practice, from memory.',
  },
  /**
   * @param division g or mL
   * @param part the smaller part, in the same unit
   * @returns %
   */
  (division: number, part: number): number => (100 * division) / (2 * part),
);

/** How far off a mix may be, in percent: beyond the first it is worth mending, beyond the second it is not to be poured. Memory. */
export const dosingLimits = { mend: 2, stop: 3 } as const;
