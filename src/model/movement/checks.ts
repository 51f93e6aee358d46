import type { CheckSet, CheckValue, Citation } from '../evidence/index.ts';
import { shrinkageTo } from '../species/equations.ts';
import { measuredYear } from './checks-year.ts';
import { changeByCoefficient, changeByShrinkage } from './formulas.ts';
import { lumberThicknessShrinkage, lumberWidthShrinkage } from './lumber.ts';

const handbook: Citation = {
  source: 'fpl-gtr-190',
  locator: 'Chapter 13, worked example under Eq. 13-2',
  seen: 'source-text',
};

/** White fir of the handbook's example; the start at 8 % is from memory, the rest was read. */
const whiteFir = { width: 232, coefficient: 0.00245, from: 8, to: 11 };
const whiteFirChange = () => changeByCoefficient(whiteFir.width, whiteFir.coefficient, whiteFir.from, whiteFir.to);

const workedExamples: CheckSet = {
  id: 'movement-worked-examples',
  title: 'Change of width: the handbook’s worked example',
  kind: 'check',
  about:
    'A flatsawn white fir board, 232 mm wide, going up to 11 % moisture content. The sums, the width and the 11 % were read, and the coefficient 0.00245 is quoted from Table 13-5; that it starts at 8 % is from memory, and agrees with the printed result.',
  values: [
    {
      id: 'white-fir-change',
      what: 'Eq. 13-2: change of width of white fir, 232 mm, 8 % to 11 %',
      published: 1.7,
      ours: whiteFirChange,
      unit: 'mm',
      tolerance: 0.05,
      reason: 'Half of the last printed digit.',
      citation: handbook,
    },
    {
      id: 'white-fir-width',
      what: 'Eq. 13-2: width of the same board afterwards',
      published: 233.7,
      ours: () => whiteFir.width + whiteFirChange(),
      unit: 'mm',
      tolerance: 0.05,
      reason: 'Half of the last printed digit.',
      citation: handbook,
    },
    {
      id: 'white-fir-radial',
      what: 'Eq. 13-3: radial change of white fir per 1 % from 10 %, shrinkage 3.3 %, against the coefficient printed in the example',
      published: 0.00112,
      ours: () => changeByShrinkage(1, 3.3, 10, 11),
      unit: '1/%',
      tolerance: 0.000005,
      reason: 'Half of the last printed digit.',
      citation: {
        ...handbook,
        locator: 'Chapter 13, worked example (thickness); shrinkage from Table 4-3, Fir: White',
      },
    },
  ],
};

/** Table 13-5 rows read in the text, with the shrinkage of Table 4-3 as read: one percent from 10 % is the coefficient. */
const coefficientRows = [
  { id: 'red-alder', row: 'Alder, red', shrinkage: [4.4, 7.3], coefficient: [0.00151, 0.00256] },
  { id: 'black-ash', row: 'Ash, black', shrinkage: [5.0, 7.8], coefficient: [0.00172, 0.00274] },
  { id: 'sugar-maple', row: 'Maple, sugar', shrinkage: [4.8, 9.9], coefficient: [0.00165, 0.00353] },
] as const;

const byShrinkage: CheckSet = {
  id: 'movement-13-3-from-10',
  title: 'Eq. 13-3 over one percent from 10 %, against the coefficients of Table 13-5',
  kind: 'check',
  about:
    'The coefficients are printed for the dimension at 10 % moisture content, so Eq. 13-3 must give them over one percent from there. It shows that the form of Eq. 13-3, which is from memory, is the one that the handbook’s own table follows. Three woods read in both tables stand here; the formula behind the coefficients, checked row by row with the woods, is the same over this step.',
  values: coefficientRows.flatMap(({ id, row, shrinkage, coefficient }) =>
    (['radial', 'tangential'] as const).map(
      (direction, index): CheckValue => ({
        id: `${id}-${direction}`,
        what: `${row}, ${direction}, shrinkage ${shrinkage[index]} %`,
        published: coefficient[index] as number,
        ours: () => changeByShrinkage(1, shrinkage[index] as number, 10, 11),
        unit: '1/%',
        tolerance: 0.00001,
        reason: 'One unit of the last printed digit; the shrinkage is itself rounded to 0.1 %.',
        citation: { source: 'fpl-gtr-190', locator: `Table 13-5, ${row}`, seen: 'source-text' },
      }),
    ),
  ),
};

const standardLumber: Citation = { source: 'fpl-rp-489', locator: 'PS 20-70 as cited there', seen: 'quoted' };

const lumber: CheckSet = {
  id: 'movement-lumber-standard',
  title: 'Softwood lumber from green to 15 %, against the lumber standard',
  kind: 'check',
  about:
    'The two equations of FPL-RP-489 against the shrinkage that the American softwood lumber standard takes, as the paper cites it.',
  values: [
    {
      id: 'width-15',
      what: 'shrinkage of the width from green to 15 %',
      published: 2.8,
      ours: () => lumberWidthShrinkage(15),
      unit: '%',
      tolerance: 0.01,
      reason:
        'One unit of the last printed digit: the standard’s figure and the paper’s equation are not copies of each other.',
      citation: standardLumber,
    },
    {
      id: 'thickness-15',
      what: 'shrinkage of the thickness from green to 15 %',
      published: 2.35,
      ours: () => lumberThicknessShrinkage(15),
      unit: '%',
      tolerance: 0.01,
      reason:
        'One unit of the last printed digit: the standard’s figure and the paper’s equation are not copies of each other.',
      citation: standardLumber,
    },
  ],
};

/** Coast Douglas-fir of Table 4-3, radial and tangential, % (both read). */
const douglasFir = [4.8, 7.6] as const;

const lumberAgainstHandbook: CheckSet = {
  id: 'movement-lumber-comparison',
  title: 'Softwood lumber of mixed grain, against Eq. 4-9 for coast Douglas-fir',
  kind: 'comparison',
  about:
    'Lumber is sawn at every ring angle, so its width should shrink by something between the radial and the tangential figure. Ours is Eq. 4-9 with the mean of the two; theirs is for many softwoods together, with shrinkage starting at 28 %. It shows that the two speak of the same size of thing, no more.',
  values: [8, 12, 15, 19].map(
    (moisture): CheckValue => ({
      id: `width-${moisture}`,
      what: `shrinkage of the width from green to ${moisture} %: FPL-RP-489 against Eq. 4-9`,
      published: lumberWidthShrinkage(moisture),
      ours: () => shrinkageTo((douglasFir[0] + douglasFir[1]) / 2, moisture, 30),
      unit: '%',
      tolerance: 0.5,
      reason: 'Reported only: one wood against a fit to many.',
      citation: { source: 'fpl-rp-489', locator: 'abstract, width equation', seen: 'source-text' },
    }),
  ),
};

const twoEquations: CheckSet = {
  id: 'movement-two-equations',
  title: 'Eq. 13-2 against Eq. 13-3, sugar maple, 300 mm flatsawn',
  kind: 'comparison',
  about:
    'Two published equations for the same change. They agree from 10 % and part by about the shrinkage lost or gained since 10 %: one part in 70 at the ends of the range where both hold.',
  values: [
    [10, 6],
    [10, 14],
    [6, 14],
    [14, 6],
  ].map(([from, to]): CheckValue => {
    const [start, end] = [from as number, to as number];
    return {
      id: `from-${start}-to-${end}`,
      what: `change from ${start} % to ${end} %: Eq. 13-2 (coefficient 0.00353) against Eq. 13-3 (shrinkage 9.9 %)`,
      published: changeByCoefficient(300, 0.00353, start, end),
      ours: () => changeByShrinkage(300, 9.9, start, end),
      unit: 'mm',
      tolerance: 0.15,
      reason: 'Reported only: both are published, and neither is the judge of the other.',
      citation: { source: 'fpl-gtr-190', locator: 'Eq. 13-2, Table 13-5, Maple, sugar', seen: 'source-text' },
    };
  }),
};

/** Published values that this room must reproduce, and comparisons. */
export const checks: readonly CheckSet[] = [
  workedExamples,
  byShrinkage,
  lumber,
  lumberAgainstHandbook,
  twoEquations,
  measuredYear,
];
