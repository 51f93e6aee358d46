import type { CheckException, CheckSet, CheckValue } from '../evidence/index.ts';
import { day } from '../quantity/seconds.ts';
import { measuredFinishes } from './excluding.ts';
import { moistureExcluding, specimen } from './excluding-fit.ts';
import { moistureYear } from './year.ts';

const own = (locator: string) => ({ source: 'kerf-and-cure' as const, locator });

const idOf = (finish: string, coats: number) => `${finish.toLowerCase().replaceAll(/[^a-z]+/g, '-')}-${coats}`;
const coatsWords = (coats: number) => `${coats} ${coats === 1 ? 'coat' : 'coats'}`;

/** Rows with a reading after 1, 7 and 14 days. */
const threefold = measuredFinishes.filter(({ readings }) => readings.length === 3);

const tableSet: CheckSet = {
  id: 'moisture-excluding-table',
  title: 'What finishes keep out: one resistance to a row of three readings',
  kind: 'check',
  about:
    'One number is fitted to each row and must give back its three readings: it shows that a film of one resistance on a board that obeys Fick’s law behaves as finishes were measured to, after a day as after two weeks. It does not prove the resistance itself, whose size rests on the specimen as assumed. First coats that cover unevenly depart most: part of the face stays open.',
  values: threefold.flatMap(({ finish, coats, readings, resistance, source, seen }) =>
    readings.map(
      ({ days, printed }): CheckValue => ({
        id: `${idOf(finish, coats)}-${days}`,
        what: `${finish}, ${coatsWords(coats)}, after ${days} ${days === 1 ? 'day' : 'days'}`,
        published: printed,
        ours: () => moistureExcluding(resistance ?? 0, days),
        unit: '%',
        tolerance: 4,
        reason:
          'Four points. The readings are whole percents of one series; rows of one finish scatter by two or three, and a coat is never even.',
        citation: { source, ...(source === 'fpl-gtr-190' ? { locator: 'Table 16-3' } : {}), seen },
      }),
    ),
  ),
};

/** Finish, coats, and its resistance in 10⁶ s/m as fitted apart from this code, by least squares on the same readings. */
const fittedApart: readonly (readonly [finish: string, coats: number, resistance: number])[] = [
  ['Linseed oil', 3, 8.1],
  ['Tung oil', 2, 13.5],
  ['Water repellent', 3, 53],
  ['Lacquer', 2, 41],
  ['Acrylic latex house primer paint', 2, 30],
  ['Acrylic latex flat house paint', 2, 54],
  ['Acrylic latex flat house paint', 3, 74],
  ['Spar varnish', 2, 68],
  ['Shellac', 2, 83],
  ['Urethane varnish', 1, 20],
  ['Urethane varnish', 2, 87],
  ['Urethane varnish', 3, 170],
  ['Urethane varnish', 4, 200],
  ['Urethane varnish', 6, 300],
  ['Alkyd house primer paint', 1, 93],
  ['Alkyd house primer paint', 2, 200],
  ['Alkyd house primer paint', 3, 300],
  ['Latex primer wall paint', 3, 120],
  ['Polyurethane paint, gloss', 1, 170],
  ['Polyurethane paint, gloss', 2, 310],
  ['Polyurethane paint, gloss', 3, 490],
  ['Two-part epoxy', 2, 1150],
];

const rowOf = (finish: string, coats: number) => threefold.find((row) => row.finish === finish && row.coats === coats);

/** Root mean square of modelled less printed over the rows that were fitted apart. */
function misfitOverall(): number {
  const squares = fittedApart.flatMap(([finish, coats]) => {
    const row = rowOf(finish, coats);
    return (row?.readings ?? []).map(
      ({ days, printed }) => (moistureExcluding(row?.resistance ?? 0, days) - printed) ** 2,
    );
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

const resistanceSet: CheckSet = {
  id: 'moisture-excluding-resistances',
  title: 'Resistances of finishes against a fit made apart',
  kind: 'check',
  about:
    'The same readings and the same specimen, fitted by another program with another solution of Fick’s law. It shows that series, units and search are right.',
  values: [
    ...fittedApart.map(
      ([finish, coats, resistance]): CheckValue => ({
        id: idOf(finish, coats),
        what: `${finish}, ${coatsWords(coats)}: resistance, 10⁶ s/m`,
        published: resistance,
        ours: () => (rowOf(finish, coats)?.resistance ?? Number.NaN) / 1e6,
        unit: '10⁶ s/m',
        tolerance: 0.05 * resistance,
        reason: 'The other fit is printed to two figures, which leaves up to 5 %.',
        citation: own('fit made apart from this code'),
      }),
    ),
    ...(
      [
        ['Linseed oil', 3, 0.75, 0.005],
        ['Two-part epoxy', 2, 105, 0.5],
      ] as const
    ).map(
      ([finish, coats, days, half]): CheckValue => ({
        id: `${idOf(finish, coats)}-delay`,
        what: `${finish}, ${coatsWords(coats)}: delay that it adds to a board of ${2 * specimen.halfThickness} mm`,
        published: days,
        ours: () => ((rowOf(finish, coats)?.resistance ?? Number.NaN) * specimen.halfThickness * 1e-3) / day,
        unit: 'd',
        tolerance: half + 0.01 * days,
        reason: 'Half of the last digit printed, and 1 % for the fit.',
        citation: own('fit made apart from this code'),
      }),
    ),
  ],
};

const misfitSet: CheckSet = {
  id: 'moisture-excluding-misfit',
  title: 'Misfit of the resistances, beside that of the fit made apart',
  kind: 'comparison',
  about:
    'How far one resistance to a row leaves its readings, over the rows that were fitted twice. The other fit rounds its resistances to two figures, and is the looser for it.',
  values: [
    {
      id: 'misfit',
      what: 'root mean square of modelled less printed',
      published: 1.7,
      ours: misfitOverall,
      unit: '%',
      tolerance: 0.05,
      reason: 'Half of the last digit printed.',
      citation: own('fit made apart from this code'),
    },
  ],
};

/** A board of 20 or 40 mm, D 0.57 × 10⁻¹⁰ m²/s, S 5.5 × 10⁻⁸ m/s, in air whose balance swings by 6 points as a sine. */
const sineYear = Array.from({ length: 360 }, (_, at) => 9 + 3 * Math.cos((2 * Math.PI * at) / 360));
const stepped: readonly {
  id: string;
  words: string;
  thickness: number;
  coatings: readonly [number, number];
  swing: number;
  lag: number;
}[] = [
  { id: 'bare-20', words: '20 mm, bare', thickness: 20, coatings: [0, 0], swing: 5.9157, lag: 8.7769 },
  { id: 'varnish-20', words: '20 mm, 8.7e7 s/m', thickness: 20, coatings: [8.7e7, 8.7e7], swing: 5.691, lag: 18.2611 },
  {
    id: 'epoxy-20',
    words: '20 mm, 1.15e9 s/m',
    thickness: 20,
    coatings: [1.15e9, 1.15e9],
    swing: 2.2727,
    lag: 68.6654,
  },
  {
    id: 'one-face-20',
    words: '20 mm, 1.15e9 s/m on one face, the other bare',
    thickness: 20,
    coatings: [1.15e9, 0],
    swing: 5.3813,
    lag: 23.491,
  },
  { id: 'bare-40', words: '40 mm, bare', thickness: 40, coatings: [0, 0], swing: 5.1251, lag: 27.4508 },
  {
    id: 'epoxy-40',
    words: '40 mm, 1.15e9 s/m',
    thickness: 40,
    coatings: [1.15e9, 1.15e9],
    swing: 1.1501,
    lag: 79.6168,
  },
];

const yearSet: CheckSet = {
  id: 'board-year',
  title: 'A board through the year against finite volumes',
  kind: 'check',
  about:
    'Swing and lag of the mean moisture, in closed form, against a solution by time steps: 160 cells over the whole thickness, ten steps a day, run until the year repeats itself. It shows that the closed form and its sum are right. That D is held constant costs at most 3 % of the swing in such boards: time steps in which D rises with moisture differ by that much from time steps in which it does not.',
  values: stepped.flatMap(({ id, words, thickness, coatings, swing, lag }) => {
    const ours = () => moistureYear({ balance: sineYear, thickness, diffusion: 0.57e-10, surface: 5.5e-8, coatings });
    const citation = own('finite volumes, 160 cells, run apart from this code');
    return [
      {
        id: `${id}-swing`,
        what: `${words}: swing in the year where balance swings by 6 points`,
        published: swing,
        ours: () => ours().swing,
        unit: '%',
        tolerance: 0.001 * swing,
        reason: '0.1 %, for cells, steps and rounding.',
        citation,
      },
      {
        id: `${id}-lag`,
        what: `${words}: lag behind the air`,
        published: lag,
        ours: () => ours().lag / day,
        unit: 'd',
        tolerance: 0.05,
        reason: 'Half a time step of the other solution.',
        citation,
      },
    ];
  }),
};

/** Check values of what finishes do to moisture. */
export const checks: readonly CheckSet[] = [tableSet, resistanceSet, misfitSet, yearSet];

const uneven =
  'A first coat of this paint covers unevenly: the readings fall slower than those of any single resistance, since part of the face is nearly bare.';

/** Readings known to differ. */
export const exceptions: readonly CheckException[] = (
  [
    'latex-primer-wall-paint-1-1',
    'latex-primer-wall-paint-1-14',
    'acrylic-latex-flat-house-paint-1-7',
    'acrylic-latex-flat-house-paint-1-14',
  ] as const
).map((id) => ({ set: tableSet.id, id, reason: uneven }));
