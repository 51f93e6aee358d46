import { acclimatise, showingTimes } from '../src/model/moisture/index.ts';
import { boardYield, flattenPlan } from '../src/model/stock/index.ts';
import { stepBoard } from '../tests/model/moisture/explicit-stepper.ts';
import { median } from './compute.ts';

/** Numbers that look random and are the same in every run (a Lehmer generator). */
function lehmer(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

/** A board of 25 mm followed to within one percent, 60 points: the series, and a plain explicit time-stepper of 40 cells. */
function benchAcclimatise(): void {
  const board = { thickness: 25, start: 12, balance: 7, diffusion: 1e-10, surface: 5e-8 };
  let end = 0;
  const series = median(() => {
    const outcome = acclimatise(board);
    if (!outcome.ok) return;
    const times = showingTimes(outcome.value, 60);
    end = times[59] ?? 0;
    for (const time of times) outcome.value.at(time);
  });
  const stepper = median(() => stepBoard({ depth: 0.0125, diffusion: 1e-10, resistance: 1 / 5e-8 }, 40, end), {
    warm: 3,
    runs: 30,
  });
  console.log(
    `acclimatise, 60 points ${series.toFixed(3)} ms; an explicit time-stepper ${stepper.toFixed(1)} ms: ratio ${(series / stepper).toFixed(4)}`,
  );
}

/** A hundred heights on a board, and a slope search on a grid of 41 by 41 planes over the same points. */
function benchFlatten(): void {
  const random = lehmer(7);
  const points = Array.from({ length: 100 }, (_, at) => ({
    x: 100 * (at % 10),
    y: 30 * Math.floor(at / 10),
    height: 6 * random(),
  }));
  const plan = median(() => flattenPlan({ points, thickness: 30, target: 20, depthOfCut: 1 }));
  const search = median(
    () => {
      let best = Number.NEGATIVE_INFINITY;
      for (let i = -20; i <= 20; i += 1) {
        for (let j = -20; j <= 20; j += 1) {
          let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
          for (const { x, y, height } of points) {
            const rest = height - i * 5e-4 * x - j * 5e-4 * y;
            low = Math.min(low, rest);
            high = Math.max(high, rest);
          }
          best = Math.max(best, 30 - (high - low));
        }
      }
      return best;
    },
    { warm: 5, runs: 50 },
  );
  console.log(
    `flatten-plan, 100 points ${plan.toFixed(3)} ms; a search over 1,681 planes ${search.toFixed(2)} ms: ratio ${(plan / search).toFixed(2)}`,
  );
}

/** Two hundred boards and fifty blanks. */
function benchYield(): void {
  const random = lehmer(11);
  const boards = Array.from({ length: 200 }, (_, at) => ({
    name: `b${at}`,
    length: Math.round(1200 + random() * 2400),
    width: Math.round(120 + random() * 200),
    defects: Array.from({ length: Math.floor(random() * 4) }, () => {
      const from = Math.round(random() * 1000);
      return { from, to: from + Math.round(20 + random() * 120) };
    }),
  }));
  const blanks = Array.from({ length: 50 }, (_, at) => ({
    name: `t${at}`,
    length: Math.round(250 + random() * 700),
    width: Math.round(100 + random() * 150),
    count: 1,
  }));
  const time = median(
    () =>
      boardYield({ boards, blanks, kerf: 3, endTrim: 25, edgeTrim: 0, snipe: 60, planed: 'boards', first: 'crosscut' }),
    {
      warm: 2,
      runs: 9,
    },
  );
  console.log(`board-yield, 200 boards and 50 blanks ${time.toFixed(0)} ms`);
}

/** Time the work on stock, each beside a plain way of doing it. */
export function benchStock(): void {
  console.log('\nStock and moisture, medians in Node');
  benchAcclimatise();
  benchFlatten();
  benchYield();
}
