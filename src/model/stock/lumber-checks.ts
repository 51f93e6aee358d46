import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { boardFeet, foot, inch, surfaceMeasure, tallyBoardFeet } from './lumber.ts';
import { gradeById, hardwoodGrades, nominalThicknesses, surfacingLoss } from './nominal.ts';

const guide = (locator: string, seen: 'source-text' | 'quoted' = 'source-text') => ({
  source: 'ahec-grading-guide' as const,
  locator,
  seen,
});
const article = (locator: string) => ({
  source: 'lumber-inspector-article' as const,
  locator,
  seen: 'quoted' as const,
});

const measures: readonly {
  id: string;
  what: string;
  width: number;
  length: number;
  published: number;
  cited: 'guide' | 'article';
}[] = [
  { id: 'sm-6-25-8', what: '6 1/4 in × 8 ft', width: 6.25, length: 8, published: 4, cited: 'guide' },
  { id: 'sm-6-5-8', what: '6 1/2 in × 8 ft', width: 6.5, length: 8, published: 4, cited: 'article' },
  { id: 'sm-8-12', what: '8 in × 12 ft', width: 8, length: 12, published: 8, cited: 'article' },
  { id: 'sm-10-13', what: '10 in × 13 ft', width: 10, length: 13, published: 11, cited: 'article' },
  { id: 'sm-6-7-16', what: '6 7/16 in × 10 ft 9 in', width: 6 + 7 / 16, length: 10.75, published: 5, cited: 'article' },
];

const surfaced = nominalThicknesses.filter((nominal) => nominal.seen !== 'memory');

/** Published figures of lumber arithmetic and surfaced sizes that ours must reproduce. */
export const lumberChecks: readonly CheckSet[] = [
  {
    id: 'lumber-arithmetic',
    title: 'Board feet and surface measure',
    kind: 'check',
    about:
      'The grading guide’s and an inspector’s own examples. It shows that widths keep their fractions, odd parts of a foot are dropped, and surface measure is rounded before the thickness comes in.',
    values: [
      ...measures.map(
        ({ id, what, width, length, published, cited }): CheckValue => ({
          id,
          what: `Surface measure of a board ${what}`,
          published,
          ours: () => surfaceMeasure(length * foot, width * inch),
          unit: '[sft_i]',
          tolerance: 0,
          reason: 'A whole number.',
          citation: cited === 'guide' ? guide('Measurement, example') : article('examples of surface measure'),
        }),
      ),
      {
        id: 'bf-tally',
        what: 'Board feet by tally of a board 2 in × 6 1/4 in × 8 ft',
        published: 8,
        ours: () => tallyBoardFeet([{ length: 8 * foot, width: 6.25 * inch }], 2 * inch),
        unit: '[bf_i]',
        tolerance: 0,
        reason: 'A whole number.',
        citation: guide('Measurement, example'),
      },
      {
        id: 'bf-fractional',
        what: 'Board feet of the same board with fractions',
        published: 8.33,
        ours: () => boardFeet(8 * foot, 6.25 * inch, 2 * inch),
        unit: '[bf_i]',
        tolerance: 0.005,
        reason: 'Half of the last digit printed.',
        citation: guide('Measurement, example'),
      },
    ],
  },
  {
    id: 'surfaced-thickness',
    title: 'Rough and surfaced thickness of hardwood',
    kind: 'check',
    about:
      'What surfacing both faces takes off by one rule, 3/16 in up to 1 1/2 in and 1/4 in above, against the table row by row. It shows that the planing allowance used here is the trade’s own.',
    values: surfaced.map(
      (nominal): CheckValue => ({
        id: `s2s-${nominal.name.replace(/\W+/g, '-')}`,
        what: `S2S thickness of ${nominal.name} lumber`,
        published: nominal.s2s,
        ours: () => nominal.rough - surfacingLoss(nominal.rough),
        unit: 'mm',
        tolerance: 1e-3,
        reason: 'Both are exact fractions of an inch.',
        citation: { source: 'hardwood-dimensions-table', locator: `${nominal.name}, S2S`, seen: 'quoted' },
      }),
    ),
  },
  {
    id: 'grade-yields',
    title: 'Clear yield of hardwood grades',
    kind: 'check',
    about:
      'The yield in percent that each grade prints against its cutting units of 12 in² per square foot. It shows that the two columns of the table agree, and that the 60 2/3 % of one chart is a misprint.',
    values: (
      [
        ['fas', 83 + 1 / 3],
        ['1-common', 66 + 2 / 3],
        ['2a-common', 50],
        ['3b-common', 25],
      ] as const
    ).map(([id, published]): CheckValue => {
      const grade = gradeById(id) ?? hardwoodGrades[0];
      return {
        id: `yield-${id}`,
        what: `Least clear yield of the poorer face, ${grade?.name ?? id}`,
        published,
        ours: () => 100 * (grade?.clearPoorer ?? 0),
        unit: '%',
        tolerance: 1e-6,
        reason: 'Exact fractions.',
        citation: { source: grade?.source ?? 'ahec-grading-guide', locator: 'table of grades', seen: 'quoted' },
      };
    }),
  },
];
