import { equation } from '../evidence/index.ts';

const symbols = (symbol: string, what: string) => [
  { tex: symbol, meaning: `shrinkage of the ${what} from green`, unit: '% of the green dimension' },
  { tex: 'M', meaning: 'moisture content', unit: '%' },
];
const validity =
  'Softwood construction lumber of mixed grain, 8 % to 19 % moisture content, shrinkage starting at 28 %; not redwood or cedars.';

/**
 * Shrinkage of the width of softwood lumber from green.
 *
 * @param moisture %, 8 to 19
 * @returns % of the green width
 */
export const lumberWidthShrinkage = equation(
  {
    id: 'fpl-rp-489-width',
    title: 'Shrinkage of softwood lumber in width',
    tex: 'S_w = 6.031 - 0.215\\,M',
    symbols: symbols('S_w', 'width'),
    validity,
    basis: 'published',
    citation: { source: 'fpl-rp-489', locator: 'abstract', seen: 'source-text' },
    remarks: 'Shown to compare with the handbook’s equations; no calculator uses it.',
  },
  (moisture: number): number => 6.031 - 0.215 * moisture,
);

/**
 * Shrinkage of the thickness of softwood lumber from green.
 *
 * @param moisture %, 8 to 19
 * @returns % of the green thickness
 */
export const lumberThicknessShrinkage = equation(
  {
    id: 'fpl-rp-489-thickness',
    title: 'Shrinkage of softwood lumber in thickness',
    tex: 'S_t = 5.062 - 0.181\\,M',
    symbols: symbols('S_t', 'thickness'),
    validity,
    basis: 'published',
    citation: { source: 'fpl-rp-489', locator: 'abstract', seen: 'source-text' },
    remarks: 'Shown to compare with the handbook’s equations; no calculator uses it.',
  },
  (moisture: number): number => 5.062 - 0.181 * moisture,
);
