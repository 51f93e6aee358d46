import { answer } from '../src/calculators/kit/answer.ts';
import { pourHeatCalculator } from '../src/calculators/pour-heat/calculator.ts';
import { usualBase } from '../src/model/resin/base.ts';
import { classKinetics, classThermal } from '../src/model/resin/kinetics.ts';
import { type Pour, runawayTemperature, runPour } from '../src/model/resin/pour.ts';
import { referencePours } from '../src/model/resin/reference-pours.ts';
import { stepPour } from '../tests/model/resin/explicit-pour.ts';
import { median } from './compute.ts';

const few = { warm: 5, runs: 40 };

/** The reference pours that stay below the stop. */
const pours: readonly Pour[] = referencePours
  .filter(([, , , peak]) => peak <= runawayTemperature)
  .map(([kinetics, depth, shop]) => ({
    kinetics: classKinetics[kinetics],
    resin: classThermal,
    depth,
    base: usualBase,
    filmTop: 10,
    filmBottom: 5,
    shopTemperature: shop,
    resinTemperature: shop,
  }));

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
  const plain = pours.slice(0, 5).map((pour) => median(() => stepPour(pour), { warm: 1, runs: 3 }));
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

/** Time the heat of pours. */
export function benchResin(): void {
  console.log('\nResin, medians in Node');
  benchPour();
}
