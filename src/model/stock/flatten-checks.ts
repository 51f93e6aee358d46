import type { CheckSet } from '../evidence/index.ts';
import { flattenPlan } from './flatten.ts';

/** Heights at the nodes of a grid over a board 600 mm long and 300 mm wide, rows along its length. */
function left(rows: readonly (readonly number[])[], thickness: number): number {
  const points = rows.flatMap((row, i) =>
    row.map((height, j) => ({ x: (600 * i) / (rows.length - 1), y: (300 * j) / (row.length - 1), height })),
  );
  const outcome = flattenPlan({ points, thickness, target: thickness, depthOfCut: 1 });
  return outcome.ok ? outcome.value.thicknessLeft : Number.NaN;
}

const cases: readonly { id: string; what: string; rows: readonly (readonly number[])[]; left: number }[] = [
  {
    id: 'tilted',
    what: 'flat but tilted: nothing is lost',
    rows: [
      [0, 3],
      [4, 7],
    ],
    left: 30,
  },
  {
    id: 'cupped',
    what: 'cupped by 3 mm: the cup is lost',
    rows: [
      [3, 0, 3],
      [3, 0, 3],
    ],
    left: 27,
  },
  {
    id: 'bowed',
    what: 'bowed by 2 mm: the bow is lost',
    rows: [
      [0, 0],
      [2, 2],
      [0, 0],
    ],
    left: 28,
  },
  {
    id: 'one-corner',
    what: 'one corner 4 mm high: half of it is lost',
    rows: [
      [0, 0],
      [0, 4],
    ],
    left: 28,
  },
  {
    id: 'twisted',
    what: 'two opposite corners 2 mm high: 2 mm are lost',
    rows: [
      [2, 0],
      [0, 2],
    ],
    left: 28,
  },
  {
    id: 'high-middle',
    what: 'one spot in the middle 5 mm high: all of it is lost',
    rows: [
      [0, 0, 0],
      [0, 5, 0],
      [0, 0, 0],
    ],
    left: 25,
  },
  {
    id: 'cup-and-tilt',
    what: 'cupped by 3 mm and tilted: the cup alone is lost',
    rows: [
      [3, 0, 3],
      [9, 6, 9],
    ],
    left: 27,
  },
];

/** Boards whose thickest flat slab can be worked out by hand. */
export const flattenChecks: readonly CheckSet[] = [
  {
    id: 'flattening-by-hand',
    title: 'Thickness left by flattening, worked by hand',
    kind: 'check',
    about:
      'Boards 30 mm thick of simple shapes, whose plane of least removal follows from symmetry: half of a wind is shared by both diagonals, a cup is lost whole. It shows that the linear programme finds the plane. The tests also compare it with searches over all planes of irregular boards.',
    values: cases.map(({ id, what, rows, left: published }) => ({
      id,
      what: `Board ${what}`,
      published,
      ours: () => left(rows, 30),
      unit: 'mm',
      tolerance: 1e-6,
      reason: 'Rounding of the arithmetic.',
      citation: { source: 'kerf-and-cure', locator: 'symmetry of the board' },
    })),
  },
];
