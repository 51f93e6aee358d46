import { referencePours } from '../../src/model/resin/reference-pours.ts';
import { fineCup, rateOfPotLife, stepCup } from './cup.ts';
import { howMany, inventedResins, potLives, quantiles, type Spread, spreadOf, yardstick } from './invented-resins.ts';
import { depthThatWarms, stepPour } from './pour.ts';
import { classes, stepLayer, work } from './resins.ts';

// npx tsx tests/second-roads/print.ts pours | layers | cups | depths | resins
//
// Prints the values that the model is set beside, made again without any of its code but the list of which pours there are.

type Kind = keyof typeof classes;
const kinds: readonly Kind[] = ['fast', 'slow'];
const cups = [
  ...[25, 50, 100, 200, 500, 1000].map((mass) => [mass, 25] as const),
  ...[15, 20, 30].map((air) => [100, air] as const),
];
const shops = [15, 20, 25, 30] as const;
const row = (cells: readonly (string | number)[]) =>
  console.log(cells.map((cell) => String(cell).padStart(9)).join(' '));
const show = (value: number | undefined, digits = 1) => (value === undefined ? '–' : value.toFixed(digits));

const tables: Readonly<Record<string, () => void>> = {
  pours() {
    row(['class', 'mm', '°C', 'peak °C', 'to peak', 'to work', 'first gel', 'last gel']);
    for (const [kind, depth, shop] of referencePours) {
      const run = stepPour(classes[kind], { depth, shop });
      row([kind, depth, shop, ...[run.peak, run.timeToPeak, run.work, run.firstGel, run.lastGel].map((v) => show(v))]);
    }
  },
  layers() {
    row(['class', '°C', 'work min', 'gel min']);
    for (const kind of kinds)
      for (const shop of shops)
        row([kind, shop, ...[work, 0.577].map((alpha) => show(stepLayer(classes[kind], shop, alpha) / 60, 2))]);
  },
  cups() {
    row(['class', 'g', '°C', 'peak °C', 'gel min', 'work min']);
    for (const kind of kinds) {
      for (const [mass, air] of cups) {
        const cup = stepCup(classes[kind], mass, air);
        row([kind, mass, air, show(cup.peak), show(cup.gel), show(cup.work)]);
      }
      row([kind, 'rate', rateOfPotLife(classes[kind], potLives[kind], 100, 25, fineCup).toExponential(3)]);
    }
  },
  depths() {
    row(['class', '°C', 'mm']);
    for (const kind of kinds)
      for (const shop of shops) row([kind, shop, show(depthThatWarms(classes[kind], 25, { shop }))]);
  },
  resins() {
    for (const kind of kinds) {
      const beside = yardstick(kind);
      const spreads = inventedResins(kind, howMany).map((resin) => spreadOf(resin, beside));
      console.log(`${kind}: pot life ${potLives[kind]} min, ${howMany} resins; 5 %, middle, 95 %`);
      const line = (name: string, of: (spread: Spread) => number) =>
        row([name.padEnd(36), ...quantiles(spreads.map(of)).map((value) => show(value, 3))]);
      line('depth that warms by 25 K, mm', ({ depth }) => depth);
      for (const [at, shop] of [15, 20, 30].entries()) {
        line(`share of it at ${shop} °C`, ({ shares }) => shares[at] as number);
        line(`rise at the class’s share, ${shop} °C, K`, ({ away }) => away[at] as number);
      }
      line('rise at 0.8 of it, K', ({ shallow }) => shallow);
      line('rise at 1.25 of it, K', ({ deep }) => deep);
      for (const [at, by] of [15, 25, 60].entries()) {
        line(`rise where the class rises ${by} K`, ({ rise }) => rise[at] as number);
        line(`first gel where it rises ${by} K`, ({ firstGel }) => firstGel[at] as number);
        line(`last gel where it rises ${by} K`, ({ lastGel }) => lastGel[at] as number);
      }
    }
  },
};

const name = process.argv[2] ?? '';
const table = tables[name];
if (table) table();
else {
  console.error(`“${name}” is no table. Give one of ${Object.keys(tables).join(', ')}.`);
  process.exitCode = 1;
}
