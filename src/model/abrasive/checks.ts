import type { CheckSet, CheckValue, SourceId } from '../evidence/index.ts';
import type { Grading } from './grade-data.ts';
import { spread } from './grade-data.ts';
import { equivalents, gradeOf } from './grades.ts';

/** Grain sizes typed a second time from each text, apart from the table: number of the grade, µm. */
type Rows = readonly (readonly [number: number, micrometres: number])[];

const dictionaryP: Rows = [
  [12, 1815],
  [16, 1324],
  [20, 1000],
  [24, 764],
  [30, 642],
  [36, 538],
  [40, 425],
  [50, 336],
  [60, 269],
  [80, 201],
  [100, 162],
  [120, 125],
];
const comparisonP: Rows = [
  [36, 500],
  [40, 425],
  [50, 336],
  [60, 270],
  [80, 200],
  [100, 162],
  [120, 125],
  [150, 100],
  [180, 82],
  [220, 68],
  [240, 60],
  [280, 52],
  [320, 46],
  [360, 40],
  [400, 35],
  [500, 30],
  [600, 26],
  [800, 22],
  [1000, 18],
  [1200, 15],
  [1500, 13],
  [2000, 10],
  [2500, 8],
];
const particlesP: Rows = [
  [12, 1815],
  [16, 1324],
  [20, 1000],
  [24, 764],
  [30, 642],
  [36, 538],
  [40, 425],
  [50, 336],
  [60, 269],
  [80, 201],
  [100, 162],
  [120, 125],
  [150, 100],
  [180, 82],
  [220, 68],
  [240, 58.5],
  [280, 52.2],
  [320, 46.3],
  [360, 40.3],
  [400, 35.3],
  [500, 30.4],
  [600, 26],
];
const glossaryP: Rows = [
  [600, 26],
  [800, 22],
  [1200, 15],
  [1500, 12],
  [2000, 10],
];
const dictionaryAnsi: Rows = [
  [16, 1320],
  [20, 905],
  [24, 715],
  [30, 638],
  [36, 535],
  [40, 428],
  [50, 351],
  [60, 268],
  [80, 192],
  [100, 141],
];
const comparisonAnsi: Rows = [
  [36, 500],
  [40, 430],
  [50, 350],
  [60, 270],
  [80, 192],
  [120, 116],
  [150, 93],
  [180, 82],
  [220, 68],
  [240, 52],
  [280, 42],
  [320, 35],
  [360, 28],
  [400, 22],
  [500, 18],
  [600, 15],
];

/** Every text with what it gives for each grading. */
export const typedAgain: readonly { grading: Grading; source: SourceId; words: string; rows: Rows }[] = [
  { grading: 'P', source: 'grit-units-dictionary', words: 'dictionary of units', rows: dictionaryP },
  { grading: 'P', source: 'grit-comparison-table', words: 'comparison table', rows: comparisonP },
  { grading: 'P', source: 'grit-particle-sizes', words: 'particle sizes', rows: particlesP },
  { grading: 'P', source: 'grit-craft-glossary', words: 'craft glossary', rows: glossaryP },
  { grading: 'ANSI', source: 'grit-units-dictionary', words: 'dictionary of units', rows: dictionaryAnsi },
  { grading: 'ANSI', source: 'grit-comparison-table', words: 'comparison table', rows: comparisonAnsi },
];

function sizes(grading: Grading): CheckValue[] {
  return typedAgain
    .filter((text) => text.grading === grading)
    .flatMap(({ source, words, rows }) =>
      rows.map(([number, published]): CheckValue => {
        const id = grading === 'P' ? `P${number}` : `${number}`;
        return {
          id: `${id}-${source}`,
          what: `Grain size of ${grading === 'P' ? id : `ANSI ${id}`}, ${words}`,
          published,
          ours: () => gradeOf(grading, number)?.micrometres ?? Number.NaN,
          unit: 'um',
          tolerance: spread * published,
          reason: 'Texts differ by up to 8 %, and a grade is a distribution: figures compare to about 10 %.',
          citation: { source, locator: `grade ${id}`, seen: 'quoted' },
        };
      }),
    );
}

const memory: readonly (readonly [Grading, number, number])[] = [
  ['P', 320, 46.2],
  ['P', 360, 40.5],
  ['P', 400, 35],
  ['P', 500, 30.2],
  ['P', 600, 25.8],
  ['P', 800, 21.8],
  ['P', 1000, 18.3],
  ['P', 1200, 15.3],
  ['P', 1500, 12.6],
  ['P', 2000, 10.3],
  ['P', 2500, 8.4],
  ['ANSI', 240, 53],
  ['ANSI', 280, 44],
  ['ANSI', 320, 36],
  ['ANSI', 360, 28.8],
  ['ANSI', 400, 23],
  ['ANSI', 600, 16],
  ['ANSI', 1000, 9.2],
];

const pairs = (rows: Rows, source: SourceId): CheckValue[] =>
  rows.map(([ansi, p]) => ({
    id: `pair-${ansi}-${source}`,
    what: `P grade nearest to ANSI ${ansi}`,
    published: p,
    ours: () => {
      const grade = gradeOf('ANSI', ansi);
      return grade ? equivalents(grade).nearest.number : Number.NaN;
    },
    unit: '1',
    tolerance: 0,
    reason: 'The number of a grade.',
    citation: { source, locator: `row of ${ansi}`, seen: 'quoted' },
  }));

/** Grain sizes and pairs of grades against the texts that give them. */
export const checks: readonly CheckSet[] = [
  {
    id: 'grain-sizes-p',
    title: 'Grain sizes of FEPA P grades',
    kind: 'check',
    about:
      'The grain size used for each grade against every text that gives one. It shows how far the texts agree; the tables of the standards themselves were not seen.',
    values: sizes('P'),
  },
  {
    id: 'grain-sizes-ansi',
    title: 'Grain sizes of ANSI B74.18 grades',
    kind: 'check',
    about: 'As for the P grades.',
    values: sizes('ANSI'),
  },
  {
    id: 'grit-pairs',
    title: 'Pairs of ANSI and P grades',
    kind: 'check',
    about: 'The P grade whose grain is nearest in size, against the pair that the comparison table prints in one row.',
    values: pairs(
      [
        [180, 180],
        [220, 220],
        [240, 280],
        [320, 400],
        [400, 800],
        [500, 1000],
        [600, 1200],
      ],
      'grit-comparison-table',
    ),
  },
  {
    id: 'grit-pairs-glossary',
    title: 'Pairs of ANSI and P grades in a glossary that stands alone',
    kind: 'comparison',
    about:
      'A craft glossary pairs 400 with P600 and 500 with P800, where four other texts and the grain sizes say P800 and P1000.',
    values: pairs(
      [
        [400, 600],
        [500, 800],
        [600, 1200],
        [800, 1500],
        [1000, 2000],
      ],
      'grit-craft-glossary',
    ),
  },
  {
    id: 'grain-sizes-memory',
    title: 'Grain sizes as commonly printed, from memory',
    kind: 'comparison',
    about:
      'Figures remembered from the standards, not read anywhere. They prove nothing; the worst difference is shown.',
    values: memory.map(([grading, number, published]) => ({
      id: `${grading}-${number}`,
      what: `Grain size of ${grading === 'P' ? 'P' : 'ANSI '}${number}`,
      published,
      ours: () => gradeOf(grading, number)?.micrometres ?? Number.NaN,
      unit: 'um',
      tolerance: spread * published,
      reason: 'Reported only: the figure was not read.',
      citation: { source: grading === 'P' ? 'iso-6344' : 'ansi-b74-18', seen: 'memory' },
    })),
  },
];
