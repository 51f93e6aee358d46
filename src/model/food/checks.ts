import type { CheckSet, CheckValue, Figure } from '../evidence/index.ts';
import { convert } from '../quantity/index.ts';
import { foodRuleById } from './rules.ts';
import type { FoodRuleId } from './types.ts';

/** A figure of a rule, in another unit of the same kind; not a number where there is no such figure. */
function ruleFigure(id: FoodRuleId, label: string, unit: string): number {
  const figure: Figure | undefined = foodRuleById(id).figures.find((each) => each.label === label);
  return figure ? convert(figure.value, figure.unit, unit) : Number.NaN;
}

const byHand = (locator: string) => ({ source: 'kerf-and-cure' as const, locator });

function limit(
  id: string,
  what: string,
  published: number,
  unit: string,
  tolerance: number,
  locator: string,
  ours: () => number,
): CheckValue {
  return {
    id,
    what,
    published,
    ours,
    unit,
    tolerance,
    reason: 'Half of the last digit written.',
    citation: byHand(locator),
  };
}

const inches = '1 in² is 6.4516 cm², so 1 dm² is 15.5000 in²; by hand';

/** Limits on what passes into food, from one unit into the other. */
export const foodChecks: readonly CheckSet[] = [
  {
    id: 'food-contact-limits',
    title: 'Limits of food contact in both units of area',
    kind: 'check',
    about:
      'Shows that our units turn milligrams for a square inch into milligrams for a square decimetre as hand arithmetic does. It does not show that the limits are still in force, and limits of different rules are no more alike for being in one unit: their tests differ.',
    values: [
      limit(
        'fda-board',
        '21 CFR 175.300(c)(4), repeated use, not a container, 18 mg/in², in mg/dm²',
        279,
        'mg/dm2',
        0.5,
        inches,
        () => ruleFigure('cfr-21-175-300', 'Limit for a board: repeated use, not a container', 'mg/dm2'),
      ),
      limit(
        'fda-small-container',
        '21 CFR 175.300(c)(1), single use up to one gallon, 0.5 mg/in², in mg/dm²',
        7.75,
        'mg/dm2',
        0.005,
        inches,
        () => ruleFigure('cfr-21-175-300', 'Limit for a single-use container up to one gallon', 'mg/dm2'),
      ),
      limit(
        'fda-large-container',
        '21 CFR 175.300(c)(2), single use over one gallon, 1.8 mg/in², in mg/dm²',
        27.9,
        'mg/dm2',
        0.05,
        inches,
        () => ruleFigure('cfr-21-175-300', 'Limit for a single-use container over one gallon', 'mg/dm2'),
      ),
      limit('eu-overall', '(EU) 10/2011 Article 12, 10 mg/dm², in mg/in²', 0.645, 'mg/[sin_i]', 0.0005, inches, () =>
        ruleFigure('eu-10-2011', 'Overall migration from plastic', 'mg/[sin_i]'),
      ),
      limit(
        'badge-for-a-surface',
        '(EC) 1895/2005, 9 mg for 6 dm², for one dm²',
        1.5,
        'mg/dm2',
        0.05,
        '9 / 6 = 1.5; by hand',
        () =>
          ruleFigure('eu-1895-2005', 'BADGE and its hydrates in food', 'mg/kg') /
          (ruleFigure('eu-10-2011', 'Surface counted with a kilogram of food', 'cm2') / 100),
      ),
      limit(
        'badge-as-listed',
        'The same limit as our record of the rule gives it',
        1.5,
        'mg/dm2',
        0.05,
        '9 / 6 = 1.5; by hand',
        () => ruleFigure('eu-1895-2005', 'The same for a surface', 'mg/dm2'),
      ),
    ],
  },
];
