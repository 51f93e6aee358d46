import { cureClockCalculator } from '../src/calculators/cure-clock/calculator.ts';
import { answer } from '../src/calculators/kit/answer.ts';
import { workingTimeCalculator } from '../src/calculators/working-time/calculator.ts';
import { cupOf, fineGrid, quickGrid, runCup } from '../src/model/resin/cup.ts';
import { fitRate } from '../src/model/resin/fit.ts';
import { classKinetics, classThermal } from '../src/model/resin/kinetics.ts';
import { rateOfPotLife, stepCup } from '../tests/second-roads/cup.ts';
import { classes } from '../tests/second-roads/resins.ts';
import { median } from './compute.ts';

const { slow } = classKinetics;
const stated = {
  potLife: 6 * 3600,
  mass: 100,
  temperature: 25,
  means: 'gel',
  kinetics: slow,
  thermal: classThermal,
} as const;

/** Time a cup and the fit to a pot life, each beside a plain explicit scheme, and the answers of the two pages. */
export function benchCure(): void {
  console.log('\nCure of resin, medians in Node');
  const cup = () => runCup(cupOf(100, classThermal, quickGrid), slow, { air: 25 });
  const quick = median(cup);
  const fine = median(() => runCup(cupOf(100, classThermal, fineGrid), slow, { air: 25, until: 'peak' }), {
    warm: 3,
    runs: 20,
  });
  const plain = median(() => stepCup(classes.slow, 100, 25, 'gel', { cells: [8, 8], gain: 0.002 }), {
    warm: 2,
    runs: 10,
  });
  console.log(
    `cup of 100 g to the gel ${quick.toFixed(2)} ms, on the fine grid to its peak ${fine.toFixed(1)} ms; plain explicit scheme, 8 by 8 cells, to the gel ${plain.toFixed(0)} ms: ratio ${(quick / plain).toFixed(4)}`,
  );
  const fit = median(() => fitRate(stated), { warm: 20, runs: 100 });
  const bisected = median(() => rateOfPotLife(classes.slow, 360, 100, 25, { cells: [6, 6], gain: 0.002 }), {
    warm: 0,
    runs: 3,
  });
  console.log(
    `rate fitted to a pot life ${fit.toFixed(2)} ms; halvings with the plain scheme ${bisected.toFixed(0)} ms: ratio ${(fit / bisected).toFixed(4)}`,
  );
  let mass = 100;
  const working = median(() => {
    mass = 100 + ((mass + 7) % 400);
    return answer(workingTimeCalculator, { ...workingTimeCalculator.example.metric, mass: `${mass} g` });
  });
  const night = { resin: 'slow-casting-2-1', dayTemperature: '20 °C', nightTemperature: '12 °C' };
  const clock = median(() => answer(cureClockCalculator, night));
  console.log(`working-time ${working.toFixed(2)} ms; cure-clock by day and night ${clock.toFixed(2)} ms`);
}
