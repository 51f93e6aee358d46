import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { day } from '../quantity/seconds.ts';
import { acclimatise } from './diffusion.ts';
import { boardResponse, fickMean, fickMeanFreeFace } from './diffusion-series.ts';

const own = (locator: string) => ({ source: 'kerf-and-cure' as const, locator });

/** Days until the mean of a board has made a share of its change. */
function daysFor(
  board: { thickness: number; diffusion: number; surface: number; coating?: number },
  share: number,
): number {
  const outcome = acclimatise({ start: 12, balance: 6, ...board });
  if (!outcome.ok) return Number.NaN;
  return boardResponse(outcome.value.surfaceNumber).timeFor(share) / outcome.value.fourierPerSecond / day;
}

/** Thickness in mm; half-times in days with D = 1e-10 m²/s and S endless, 1e-7 and 3e-8 m/s. */
const halfTimes: readonly (readonly [thickness: number, days: readonly [number, number, number]])[] = [
  [5, [0.14, 0.36, 0.83]],
  [10, [0.57, 1.01, 1.98]],
  [20, [2.28, 3.17, 5.17]],
  [25, [3.56, 4.68, 7.2]],
  [40, [9.11, 10.9, 15.0]],
  [50, [14.2, 16.5, 21.7]],
];
const surfaces = [
  { surface: Number.POSITIVE_INFINITY, words: 'no resistance at the face' },
  { surface: 1e-7, words: 'S 1e-7 m/s' },
  { surface: 3e-8, words: 'S 3e-8 m/s' },
];

/** Half a unit of the last printed digit of a number printed to three digits, or to the hundredth below one. */
function halfDigit(printed: number): number {
  return printed < 10 ? 0.005 : 0.05;
}

const roundingReason =
  'Half of the last digit printed, and 0.1 % more for the finite volumes that the figure was computed with.';

function printedDays(id: string, what: string, published: number, half: number, ours: () => number): CheckValue {
  return {
    id,
    what,
    published,
    ours,
    unit: 'd',
    tolerance: half + 0.001 * published,
    reason: roundingReason,
    citation: own('half-response by finite volumes, 40 cells on half the board'),
  };
}

const closedForms: readonly { fo: number; free: number; ten: number; one: number }[] = [
  { fo: 0.05, free: 0.2523, ten: 0.1755, one: 0.0427 },
  { fo: 0.2, free: 0.5041, ten: 0.4167, one: 0.1484 },
  { fo: 0.5, free: 0.764, ten: 0.685, one: 0.3189 },
  { fo: 1, free: 0.9313, ten: 0.8865, one: 0.5296 },
];

/** Check values of diffusion through a board. None is published: they come from another way of computing, and say so. */
export const diffusionChecks: readonly CheckSet[] = [
  {
    id: 'diffusion-closed-forms',
    title: 'Moisture of a board against closed forms',
    kind: 'check',
    about:
      'The general series against the plain series of a face without resistance, summed term by term, against values of both series computed apart from this code to four digits, and against the Fo of half-response, 0.19673. It shows that the arithmetic is right, not that wood obeys it.',
    values: [
      ...[0.001, 0.01, 0.05, 0.19673, 0.5, 1, 3].map(
        (fo): CheckValue => ({
          id: `free-face-${fo}`,
          what: `Share of the change at Fo ${fo}, no resistance at the face`,
          published: fickMeanFreeFace(fo),
          ours: () => fickMean(fo, Number.POSITIVE_INFINITY),
          unit: '1',
          tolerance: 0.001 * fickMeanFreeFace(fo),
          reason: '0.1 % of the value; the difference found is that of rounding, below 1e-9.',
          citation: own('series of a free face, 200 terms, summed as it stands'),
        }),
      ),
      ...closedForms.flatMap(({ fo, free, ten, one }) =>
        (
          [
            [Number.POSITIVE_INFINITY, free, 'no resistance at the face', 'free'],
            [10, ten, 'L 10', 'ten'],
            [1, one, 'L 1', 'one'],
          ] as const
        ).map(
          ([ell, published, words, id]): CheckValue => ({
            id: `series-${id}-${fo}`,
            what: `Share of the change at Fo ${fo}, ${words}`,
            published,
            ours: () => fickMean(fo, ell),
            unit: '1',
            tolerance: Math.max(0.00005, 0.001 * published),
            reason: '0.1 %, or half of the fourth decimal where that is more.',
            citation: own('series computed apart from this code'),
          }),
        ),
      ),
      {
        id: 'half-response',
        what: 'Fo at which half of the change is made, no resistance at the face',
        published: 0.19673,
        ours: () => boardResponse(Number.POSITIVE_INFINITY).timeFor(0.5),
        unit: '1',
        tolerance: 0.000005,
        reason: 'Half of the last digit printed.',
        citation: own('Fo of half-response'),
      },
    ],
  },
  {
    id: 'diffusion-half-times',
    title: 'Days to half-way against finite volumes',
    kind: 'check',
    about:
      'Half-response of bare and coated boards as computed by finite volumes, another method on another grid. It shows that the series and the units are right. The coefficients themselves scatter by a factor of two, and no published half-time was read.',
    values: [
      ...halfTimes.flatMap(([thickness, days]) =>
        surfaces.map(({ surface, words }, index) =>
          printedDays(
            `half-${thickness}-${index}`,
            `${thickness} mm, D 1e-10 m²/s, ${words}`,
            days[index] as number,
            halfDigit(days[index] as number),
            () => daysFor({ thickness, diffusion: 1e-10, surface }, 0.5),
          ),
        ),
      ),
      ...(
        [
          [0.5e-10, 5.46],
          [2e-10, 2.02],
          [4e-10, 1.43],
        ] as const
      ).map(([diffusion, published]) =>
        printedDays(`half-20-d-${diffusion}`, `20 mm, D ${diffusion} m²/s, S 1e-7 m/s`, published, 0.005, () =>
          daysFor({ thickness: 20, diffusion, surface: 1e-7 }, 0.5),
        ),
      ),
      ...(
        [
          ['bare', 0, [3.8, 0.05], [19, 0.5]],
          ['two coats of urethane varnish', 8.7e7, [12.7, 0.05], [56, 0.5]],
          ['two coats of epoxy', 1.15e9, [119, 0.5], [516, 0.5]],
        ] as const
      ).flatMap(([words, coating, half, most]) => {
        const board = { thickness: 25, diffusion: 1.5e-10, surface: 8e-8, coating };
        const title = `25 mm, D 1.5e-10 m²/s, S 8e-8 m/s, ${words}`;
        return [
          printedDays(`coated-half-${coating}`, `${title}, half-way`, half[0], half[1], () => daysFor(board, 0.5)),
          printedDays(`coated-most-${coating}`, `${title}, 95 %`, most[0], most[1], () => daysFor(board, 0.95)),
        ];
      }),
    ],
  },
];
