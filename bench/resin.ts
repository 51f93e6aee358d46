import { answer } from '../src/calculators/kit/answer.ts';
import { pourHeatCalculator } from '../src/calculators/pour-heat/calculator.ts';
import { usualBase } from '../src/model/resin/base.ts';
import { channelSection } from '../src/model/resin/channel.ts';
import { type Pour, runawayTemperature, runPour } from '../src/model/resin/pour.ts';
import { airFrom } from '../src/model/resin/pour-day.ts';
import { referencePours } from '../src/model/resin/reference-pours.ts';
import { classPour } from '../src/model/resin/usual-pour.ts';
import { stepChannel } from '../tests/model/resin/explicit-channel.ts';
import { stepPour } from '../tests/second-roads/pour.ts';
import { classes } from '../tests/second-roads/resins.ts';
import { median } from './compute.ts';

const few = { warm: 5, runs: 40 };

/** The reference pours that stay below the stop. */
const pours: readonly Pour[] = referencePours
  .filter(([, , , peak]) => peak <= runawayTemperature)
  .map(([kinetics, depth, shop]) => classPour(kinetics, depth, shop));

/** Pours of 20 and 12 cells below the stop, beside a plain explicit scheme on the same cells; and the whole answer of a page. */
function benchPour(): void {
  const ours = pours.map((pour) => median(() => runPour(pour, { record: true }), few)).sort((a, b) => a - b);
  const middle = ours[ours.length >> 1] as number;
  const worst = ours.at(-1) as number;
  let slowest = 0;
  for (const pour of pours) {
    for (let run = 0; run < 50; run += 1) {
      const start = performance.now();
      runPour(pour, { record: true });
      slowest = Math.max(slowest, performance.now() - start);
    }
  }
  const plain = pours
    .slice(0, 5)
    .map((pour) =>
      median(() => stepPour(classes.fast, { depth: pour.depth, shop: pour.shopTemperature }), { warm: 1, runs: 3 }),
    );
  const same = pours.slice(0, 5).map((pour) => median(() => runPour(pour, { record: true }), few));
  const sum = (times: readonly number[]) => times.reduce((total, time) => total + time, 0);
  console.log(
    `pour, 20 and 12 cells, ${pours.length} pours below the stop: median ${middle.toFixed(2)} ms, slowest pour ${worst.toFixed(2)} ms, slowest of 50 runs of each ${slowest.toFixed(1)} ms`,
  );
  console.log(
    `the five of the fast set ${sum(same).toFixed(1)} ms; a plain explicit scheme on the same cells ${sum(plain).toFixed(0)} ms: ratio ${(sum(same) / sum(plain)).toFixed(4)}`,
  );
  for (const [words, asked] of [
    ['worked case', pourHeatCalculator.example.metric],
    ['cold shop, 60 mm', { resin: 'slow-casting-3-1', depth: '60 mm', shopTemperature: '12 °C' }],
  ] as const) {
    const time = median(() => answer(pourHeatCalculator, asked), { warm: 20, runs: 100 });
    console.log(`pour-heat, ${words}: ${time.toFixed(2)} ms`);
  }
}

/** Channels of slow resin: width and depth, mm, and temperature of the shop, °C. */
const channels = [
  [6, 12, 20],
  [12, 19, 20],
  [22, 19, 20],
  [60, 19, 20],
  [200, 19, 20],
  [12, 45, 24],
  [22, 45, 24],
] as const;

/** Channels beside a plain explicit scheme on the same cells; their error beside a run cut far finer; and one in a shop that is cold at night. */
function benchChannel(): void {
  const { thickness: _, ...sides } = usualBase;
  const pourOf = ([width, depth, shop]: (typeof channels)[number]): Pour =>
    classPour('slow', depth, shop, { channel: { width, sides } });
  const all = channels.map(pourOf);
  const times = all.map((pour) => median(() => runPour(pour, { record: true }), { warm: 2, runs: 9 }));
  const errors = all.map((pour) => {
    const finest = runPour(pour, { cells: [32, 20], conversionStep: 0.005, peakOnly: true }).peakRise;
    return Math.abs(runPour(pour).peakRise / finest - 1);
  });
  const sorted = [...times].sort((a, b) => a - b);
  console.log(
    `channel, ${all.length} channels: median ${(sorted[sorted.length >> 1] as number).toFixed(0)} ms, slowest ${(sorted.at(-1) as number).toFixed(0)} ms; rises within ${(100 * Math.max(...errors)).toFixed(1)} % of runs cut far finer`,
  );
  const one = all[1] as Pour;
  const { grid, resinColumns, baseRows } = channelSection(one, one.channel as NonNullable<Pour['channel']>, [12, 8]);
  const [widths, heights] = [Array.from(grid.widths), Array.from(grid.heights)];
  const cells = {
    resinWidths: widths.slice(0, resinColumns),
    woodWidths: widths.slice(resinColumns),
    baseHeights: heights.slice(0, baseRows),
    resinHeights: heights.slice(baseRows),
  };
  const plain = median(() => stepChannel(one, cells), { warm: 0, runs: 1 });
  console.log(
    `a channel 12 mm wide and 19 mm deep ${(times[1] as number).toFixed(0)} ms; a plain explicit scheme on the same cells ${plain.toFixed(0)} ms: ratio ${((times[1] as number) / plain).toFixed(4)}`,
  );
  const cold: Pour = {
    ...one,
    air: airFrom({ warm: 20, cool: 12, warmHours: 10 }, 10),
    shopTemperature: 12,
    resinTemperature: 12,
  };
  console.log(
    `the same in a shop that is cold at night ${median(() => runPour(cold, { record: true }), { warm: 1, runs: 9 }).toFixed(0)} ms`,
  );
}

/** Time the heat of pours. */
export function benchResin(): void {
  console.log('\nResin, medians in Node');
  benchPour();
  benchChannel();
}
