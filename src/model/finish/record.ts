import type { Basis, Citation, Figure } from '../evidence/index.ts';
import type { FoodStanding } from '../food/types.ts';
import type { Finish, FinishFigureName, FinishOptionalName } from './types.ts';

/** s. */
export const minute = 60;
export const hour = 3600;
export const day = 86_400;
export const week = 7 * day;

/** A value with the ends of what is usual; how it is known, common practice unless told; what to say beside it. */
type Usual = readonly [
  value: number,
  low: number,
  high: number,
  more?: { basis?: Basis; note?: string; citation?: Citation },
];

/** Label, unit and digits of every figure of a finish. */
export const finishFigureWords: Readonly<
  Record<FinishFigureName | FinishOptionalName, { label: string; unit: string; digits: number }>
> = {
  coats: { label: 'Coats', unit: '1', digits: 1 },
  spreadingFirst: { label: 'Spreading rate, first coat', unit: 'm2/L', digits: 2 },
  spreadingNext: { label: 'Spreading rate, further coats', unit: 'm2/L', digits: 2 },
  density: { label: 'Density', unit: 'g/mL', digits: 3 },
  recoat: { label: 'Wait between coats', unit: 's', digits: 2 },
  lightUse: { label: 'Until it may be handled', unit: 's', digits: 2 },
  soak: { label: 'Soak', unit: 's', digits: 2 },
  fullCure: { label: 'Until it has cured for food and water', unit: 's', digits: 2 },
  upkeep: { label: 'Until it wants renewing', unit: 's', digits: 2 },
};

const band = 'What is usual in the trade; the sheet of the finish decides.';

/** The figures of a finish from their usual values. */
export function finishFigures(
  values: Record<FinishFigureName, Usual> & Record<FinishOptionalName, Usual | null>,
): Finish['figures'] {
  const figure = (name: FinishFigureName | FinishOptionalName, usual: Usual | null): Figure | null => {
    if (!usual) return null;
    const [value, low, high, more = {}] = usual;
    const { basis = 'shop-practice', note, citation } = more;
    return {
      ...finishFigureWords[name],
      value,
      low,
      high,
      band,
      basis,
      ...(note ? { note } : {}),
      ...(citation ? { citation } : {}),
    };
  };
  return Object.fromEntries(
    Object.entries(values).map(([name, usual]) => [name, figure(name as FinishFigureName, usual)]),
  ) as Finish['figures'];
}

const memory = { basis: 'memory' as const };

/** Spreading rates of a thin clear oil that is wiped: from memory; a handbook’s nearest figure is for a stain. */
export const oilSpreading = {
  spreadingFirst: [
    14,
    10,
    20,
    {
      ...memory,
      note: 'Clear oil on planed hardwood. Nearest in the Wood Handbook: 4.9 to 9.8 m² from a litre of penetrating oil-based stain on smooth wood.',
    },
  ],
  spreadingNext: [28, 20, 40, memory],
} as const satisfies Partial<Record<FinishFigureName, Usual>>;

/** Two to three coats, as oils go on. */
export const oilCoats: Usual = [3, 2, 3];

/** Each coat of oil soaks for 30 to 45 minutes before it is wiped. */
export const oilSoak: Usual = [40 * minute, 30 * minute, 45 * minute];

/** A density from memory, g/mL. */
export const densityFromMemory = (value: number, low: number, high: number): Usual => [value, low, high, memory];

/** A figure from memory. */
export const fromMemory = (value: number, low: number, high: number): Usual => [value, low, high, memory];

export const soakAndWipe =
  'Flood the faces, the end grain twice; lay dull places wet again while it soaks; then wipe off all that is still on top, and again ten minutes later.';

/** How cured drying oil stands by the rule on coatings. */
export function dryingOilStanding(oil: string, more: readonly string[] = []): FoodStanding {
  return {
    level: 'listed',
    summary: `${oil} is among the drying oils that US rules list for coatings of repeated use, under conditions`,
    conditions: [
      'Pure oil, raw, heat-bodied or blown, with nothing in it that the rule does not list. The maker can say.',
      'The rule speaks of a continuous film that is a barrier between food and what lies under it. Whether oil that has sunk into wood is one, it does not say.',
      'Fully cured: weeks after the last coat, without a smell.',
      ...more,
    ],
    rules: ['cfr-21-175-300', 'eu-1935-2004'],
    basis: 'published',
    citation: { source: 'cfr-21-175-300', locator: '(b)(3)(i)', seen: 'source-text' },
  };
}
