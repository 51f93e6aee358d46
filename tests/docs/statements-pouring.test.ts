import { expect } from 'vitest';
import { hottestAnchor } from '../../src/model/resin/anchor.ts';
import { usualBase } from '../../src/model/resin/base.ts';
import { kineticsOf } from '../../src/model/resin/fit.ts';
import { resinOf } from '../../src/model/resin/kinds.ts';
import { type Pour, type PourRun, runPour } from '../../src/model/resin/pour.ts';
import type { Resin } from '../../src/model/resin/types.ts';
import { classPour } from '../../src/model/resin/usual-pour.ts';
import { allBetween, figure, hold, whole, worked, workedCase } from './statements.ts';

// Numbers in the page on pouring, worked out again.

type Class = 'fast' | 'slow';
const classes: readonly Class[] = ['fast', 'slow'];

/** A pour of a class over 20 mm of hardwood. */
const pourOf = (kind: Class, depth: number, shopTemperature: number): Pour => classPour(kind, depth, shopTemperature);

/** Its rise, K; infinite where it runs away. */
function riseOf(kind: Class, depth: number, shopTemperature: number, more: Partial<Pour> = {}): number {
  const run = runPour({ ...pourOf(kind, depth, shopTemperature), ...more }, { peakOnly: true });
  return run.outcome === 'runaway' ? Number.POSITIVE_INFINITY : run.peakRise;
}

/** Depth in mm at which such a pour rises by 25 K. */
function depthOf(kind: Class, shopTemperature: number): number {
  let [shallow, deep] = [0.5, 60];
  for (let pass = 0; pass < 20; pass++) {
    const middle = (shallow + deep) / 2;
    if (riseOf(kind, middle, shopTemperature) < 25) shallow = middle;
    else deep = middle;
  }
  return shallow;
}

/** Rise after a change, over that of the pour that rises by 25 K at 20 °C, for both classes. */
const factors = (change: (kind: Class, depth: number) => number) =>
  classes.map((kind) => change(kind, depthOf(kind, 20)) / 25);

hold({
  'pouring-without-overheating': [
    [
      'half as deep',
      () => {
        allBetween(
          factors((kind, depth) => riseOf(kind, depth / 2, 20)),
          0,
          0.25,
        );
        return '| half as deep | a quarter of it, or less |';
      },
    ],
    [
      'a fifth shallower',
      () => {
        allBetween(
          factors((kind, depth) => riseOf(kind, 0.8 * depth, 20)),
          0.4,
          0.6,
        );
        return '| a fifth shallower | about half |';
      },
    ],
    [
      'a quarter deeper',
      () => {
        allBetween(
          factors((kind, depth) => riseOf(kind, 1.25 * depth, 20)),
          2,
          Number.POSITIVE_INFINITY,
        );
        return '| a quarter deeper | more than double, or it runs away |';
      },
    ],
    [
      'a warmer shop',
      () => {
        allBetween(
          factors((kind, depth) => riseOf(kind, depth, 22)),
          1.4,
          1.7,
        );
        return '| shop 2 °C (4 °F) warmer | about half as much again |';
      },
    ],
    [
      'a cover',
      () => {
        allBetween(
          factors((kind, depth) => riseOf(kind, depth, 20, { filmTop: 6 })),
          2,
          3,
        );
        return '| a cover, or dead still air over the pour | more than double';
      },
    ],
    [
      'foam below',
      () => {
        const base = { thickness: 50, density: 30, heatCapacity: 1400, conductivity: 0.035 };
        expect(factors((kind, depth) => riseOf(kind, depth, 20, { base }))).toEqual([
          Number.POSITIVE_INFINITY,
          Number.POSITIVE_INFINITY,
        ]);
        return '| foam under the mould | runs away: take it out |';
      },
    ],
    [
      'warmed bottles',
      () => {
        allBetween(
          factors((kind, depth) => riseOf(kind, depth, 20, { resinTemperature: 25 })),
          1,
          1.05,
        );
        return '| warmed bottles, 5 °C (9 °F) | hardly hotter, but it gels sooner |';
      },
    ],
    [
      'bottles warmed by 20 °C',
      () => {
        const warmed = classes.map((kind) => {
          const pour = { ...pourOf(kind, depthOf(kind, 20), 20), resinTemperature: 40 };
          return runPour(pour);
        });
        const as = classes.map((kind) => runPour(pourOf(kind, depthOf(kind, 20), 20)));
        const ratios = (of: (run: PourRun) => number | null) =>
          warmed.map((run, at) => (of(run) ?? Number.NaN) / (of(as[at] as PourRun) ?? Number.NaN));
        allBetween(
          ratios(({ peakRise }) => peakRise),
          1.1,
          1.22,
        );
        allBetween(
          ratios(({ timeToWork }) => timeToWork),
          0.61,
          0.72,
        );
        return '| warmed bottles, 20 °C (36 °F) | a tenth to a fifth hotter, and about a third less time to work |';
      },
    ],
    [
      'a cold shop that is warmed',
      () => {
        const at = (shopTemperature: string) => {
          const inputs = { resin: 'slow-casting-2-1', depth: '18 mm', shopTemperature };
          const { value } = figure('pour-heat', inputs, 'peakRise');
          return `${whole(value)} °C (${whole(Number((1.8 * value).toPrecision(2)))} °F)`;
        };
        return `18 mm of a slow resin that rise by ${at('12 °C')} in a shop of 12 °C (54 °F) rise by ${at('25 °C')} in one of 25 °C (77 °F)`;
      },
    ],
    [
      'a narrow place',
      () => {
        const { kinetics } = kineticsOf(resinOf('slow-casting-2-1') as Resin);
        const { thickness: _, ...sides } = usualBase;
        const run = (width: number) =>
          runPour({ ...pourOf('slow', 45, 24), kinetics, channel: { width, sides } }, { peakOnly: true });
        const said = (width: number) => {
          const { peakRise, outcome } = run(width);
          expect(outcome).toBe('settled');
          return `${whole(peakRise)} °C (${whole(1.8 * peakRise)} °F)`;
        };
        expect(run(40).outcome).toBe('runaway');
        return `a slot 12 mm wide and as deep rises by ${said(12)} and one of 22 mm by ${said(22)}. One of 40 mm runs away as the hollow does.`;
      },
    ],
    [
      'too hot at any index',
      () =>
        `Deeper than the sheet is too deep at any index, and so is a rise above ${hottestAnchor} °C (${whole(1.8 * hottestAnchor)} °F).`,
    ],
    ...(
      [
        [15, 59, 1.7],
        [20, 68, 1.3],
        [30, 86, 0.78],
      ] as const
    ).map(([celsius, fahrenheit, factor]): [string, () => string] => [
      `depth at ${celsius} °C`,
      () => {
        const times = classes.map((kind) => depthOf(kind, celsius) / depthOf(kind, 25));
        allBetween(times, 0.9 * factor, 1.1 * factor);
        return `| ${celsius} °C (${fahrenheit} °F) | ${factor} times |`;
      },
    ]),
    [
      'a hollow of 45 mm',
      () => {
        const of = (name: string) => worked('pouring-without-overheating', name, { depth: '45 mm' }).value;
        expect(of('layers')).toBe(3);
        expect(of('heatIndex')).toBeGreaterThan(1.6);
        return `In one go it would run away about ${(of('timeToPeak') / 3600).toFixed(1)} hours after mixing, when the class has long gone home. In this shop ${whole(of('greatestDepthHere'))} mm is the most that this kind bears: three layers of ${whole(of('layerDepth'))} mm, ${whole(of('waitBetween') / 3600)} hours apart.`;
      },
    ],
    [
      'the band of a rise',
      () => {
        const { calculator, inputs } = workedCase('pouring-without-overheating', { depth: '45 mm' });
        const { value, low = 0, high = 0 } = figure(calculator, { ...inputs, depth: '15 mm' }, 'peakRise');
        expect(low / value).toBeCloseTo(0.47, 9);
        expect(high / value).toBeCloseTo(3, 9);
        return 'We give no peak temperature as a promise: it may be half as much or three times.';
      },
    ],
    ['20 mm at 25 °C, poured at 30 °C', () => `1. About ${whole(20 * 0.78)} mm: 0.78 times.`],
  ],
});
