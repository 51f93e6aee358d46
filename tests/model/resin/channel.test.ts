import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usualBase } from '../../../src/model/resin/base.ts';
import { channelSection, growing } from '../../../src/model/resin/channel.ts';
import { changedAfter } from '../../../src/model/resin/history.ts';
import { classKinetics, classThermal } from '../../../src/model/resin/kinetics.ts';
import { planeConductorOf, planeGridOf } from '../../../src/model/resin/plane.ts';
import { type Pour, type PourOptions, runPour } from '../../../src/model/resin/pour.ts';
import { classPour } from '../../../src/model/resin/usual-pour.ts';
import { evenCells, stepChannel } from './explicit-channel.ts';

const { thickness: _, ...hardwood } = usualBase;
const pourOf = classPour;
const inChannel = (
  kinetics: 'fast' | 'slow',
  width: number,
  depth: number,
  shop: number,
  more: Partial<Pour> = {},
): Pour => pourOf(kinetics, depth, shop, { channel: { width, sides: hardwood }, ...more });
const coarse = { cells: [8, 6], conversionStep: 0.02, peakOnly: true } as const satisfies PourOptions;
const all = (grid: { capacities: Float64Array }) => Int32Array.from(grid.capacities, (__, at) => at);

describe('cells that grow', () => {
  test('fill the length, smallest first, no faster than told', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        fc.double({ min: 1e-4, max: 0.05, noNaN: true }),
        fc.double({ min: 1.1, max: 2, noNaN: true }),
        (length, first, most) => {
          const sizes = growing(length, first, most);
          expect(sizes.reduce((sum, size) => sum + size)).toBeCloseTo(length, 12);
          expect(sizes[0] as number).toBeLessThanOrEqual(Math.max(first, length > first ? 0 : length) + 1e-12);
          for (const [at, size] of sizes.entries())
            if (at > 0) expect(size / (sizes[at - 1] as number)).toBeCloseTo(most, 9);
        },
      ),
    );
  });
});

describe('a section', () => {
  test('holds the size and the heat of half the channel, its walls and the base', () => {
    const { grid, resinColumns, baseRows } = channelSection(
      inChannel('slow', 12, 19, 20),
      { width: 12, sides: hardwood },
      [12, 8],
    );
    const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);
    expect(sum(grid.widths.slice(0, resinColumns))).toBeCloseTo(0.006, 12);
    expect(sum(grid.heights.slice(0, baseRows))).toBeCloseTo(0.02, 12);
    expect(sum(grid.heights)).toBeCloseTo(0.039, 12);
    const wood = sum(grid.volumes) - 0.006 * 0.019;
    expect(sum(grid.capacities)).toBeCloseTo(
      0.006 * 0.019 * classThermal.density * classThermal.heatCapacity +
        wood * hardwood.density * hardwood.heatCapacity,
      6,
    );
  });

  test('of any size that may be asked for is cut into few cells, all of some size', () => {
    const any = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(any(0.5, 2000), any(0.3, 300), any(0, 300), any(0, 1000), (width, depth, thickness, filmTop) => {
        const pour = inChannel('slow', width, depth, 20, { base: { ...hardwood, thickness }, filmTop });
        const { grid } = channelSection(pour, { width, sides: hardwood }, [12, 8]);
        for (const size of [...grid.widths, ...grid.heights]) expect(size).toBeGreaterThan(0);
        expect(grid.columns * grid.rows).toBeLessThan(1800);
      }),
    );
  });

  test.each([
    [4, 7],
    [7, 4],
    [1, 6],
    [6, 1],
  ])('of %d columns and %d rows keeps the heat, in any order of its cells', (columns, rows) => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 50_000, noNaN: true }),
        fc.array(fc.double({ min: -20, max: 120, noNaN: true }), {
          minLength: columns * rows,
          maxLength: columns * rows,
        }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (seconds, start, watts) => {
          const count = columns * rows;
          const grid = planeGridOf(
            Array.from({ length: columns }, (__, at) => 0.002 * (at + 1)),
            Array.from({ length: rows }, (__, at) => 0.003 / (at + 1)),
            (column, row) => (column + row > 3 ? hardwood : classThermal),
            { low: 5, high: 10 },
          );
          const turned = Int32Array.from({ length: count }, (__, at) => count - 1 - at);
          const results = [all(grid), turned].map((places) => {
            const conductor = planeConductorOf(grid, places);
            conductor.setStep(seconds);
            const before = Float64Array.from(places, (cell) => start[cell] as number);
            const source = Float64Array.from(places, (cell) => (watts * (cell + 1)) / count);
            const after = new Float64Array(count);
            conductor.step(before, source, 20, after);
            const held = places.reduce(
              (sum, cell, at) =>
                sum + (grid.capacities[cell] as number) * ((after[at] as number) - (before[at] as number)),
              0,
            );
            const made = seconds * source.reduce((sum, one) => sum + one);
            expect(Math.abs(held - made + conductor.lost(20))).toBeLessThan(1e-8 * (Math.abs(held) + made + 1e3));
            return Array.from(places, (__, at) => after[places.indexOf(at)] as number);
          });
          for (const [at, value] of (results[0] as number[]).entries())
            expect(Math.abs(value - ((results[1] as number[])[at] as number))).toBeLessThan(
              1e-6 * (1 + Math.abs(value)),
            );
        },
      ),
      { numRuns: 40 },
    );
  });

  test('without films keeps all heat and comes to one temperature', () => {
    const grid = planeGridOf([0.002, 0.003], [0.001, 0.002, 0.003], () => classThermal, { low: 0, high: 0 });
    const conductor = planeConductorOf(grid, all(grid));
    conductor.setStep(1e7);
    const after = new Float64Array(6);
    conductor.step(Float64Array.from([60, 20, 20, 20, 20, 20]), new Float64Array(6), -40, after);
    const mean = 20 + (40 * (grid.capacities[0] as number)) / grid.capacities.reduce((sum, one) => sum + one);
    for (const temperature of after) expect(temperature).toBeCloseTo(mean, 2);
    expect(conductor.lost(-40)).toBe(0);
  });
});

describe('a channel against a plain explicit scheme on fine equal cells', () => {
  test.each([
    ['slow', 12, 19, 20, 1.5, 60],
    ['slow', 22, 45, 24, 1.5, 60],
    ['fast', 10, 6, 20, 0.75, 40],
    ['slow', 60, 19, 20, 1.5, 60],
  ] as const)('%s, %d mm wide, %d mm deep, %d °C', (kinetics, width, depth, shop, size, wood) => {
    const pour = inChannel(kinetics, width, depth, shop);
    const theirs = stepChannel(pour, evenCells(pour, size, wood));
    const ours = runPour(pour);
    expect(Math.abs(ours.peakRise / theirs.rise - 1)).toBeLessThan(0.02);
    expect(Math.abs(ours.timeToPeak / theirs.timeToPeak - 1)).toBeLessThan(0.01);
    expect(Math.abs((ours.timeToFirstGel as number) / theirs.firstGel - 1)).toBeLessThan(0.01);
  });

  test('poured cold and warmed after twelve hours', () => {
    const air = changedAfter(12 * 3600, 12, 21);
    const pour = inChannel('slow', 40, 25, 12, { air });
    const theirs = stepChannel(pour, evenCells(pour, 1.5, 60), (time) => air.at(time));
    const ours = runPour(pour);
    expect(Math.abs(ours.peakRise / theirs.rise - 1)).toBeLessThan(0.02);
    expect(Math.abs(ours.peakTemperature - theirs.peak)).toBeLessThan(0.02 * theirs.rise);
    expect(Math.abs(ours.timeToPeak / theirs.timeToPeak - 1)).toBeLessThan(0.01);
  });
});

describe('a channel in its limits', () => {
  test.each([
    ['slow', 19, 20],
    ['slow', 10, 30],
    ['fast', 3, 25],
  ] as const)('%s, %d mm deep at %d °C: as wide as a table it is a pool, within a percent', (kinetics, depth, shop) => {
    const pool = runPour(pourOf(kinetics, depth, shop));
    const wide = runPour(inChannel(kinetics, 1500, depth, shop));
    expect(Math.abs(wide.peakRise / pool.peakRise - 1)).toBeLessThan(0.01);
    expect(Math.abs(wide.timeToPeak / pool.timeToPeak - 1)).toBeLessThan(0.01);
    expect(Math.abs((wide.timeToFirstGel as number) / (pool.timeToFirstGel as number) - 1)).toBeLessThan(0.01);
    // Its edges stay cool, and set later.
    expect(wide.timeToLastGel).toBeGreaterThan(1.1 * (pool.timeToLastGel as number));
  });

  test('a hair wide it hardly warms and keeps the time of the air', () => {
    const thin = runPour(inChannel('slow', 0.5, 19, 20));
    expect(thin.peakRise).toBeLessThan(0.2);
    expect(thin.outcome).toBe('settled');
  });

  test('the error to a fine grid falls as the grid grows finer', () => {
    for (const [width, depth, shop] of [
      [12, 19, 20],
      [22, 45, 24],
      [60, 19, 20],
    ] as const) {
      const rise = (options: PourOptions) => runPour(inChannel('slow', width, depth, shop), options).peakRise;
      const finest = rise({ cells: [28, 18], conversionStep: 0.01 });
      expect(Math.abs(rise(coarse) / finest - 1)).toBeLessThan(0.04);
      expect(Math.abs(rise({}) / finest - 1)).toBeLessThan(0.02);
      expect(Math.abs(rise({ cells: [20, 14] }) / finest - 1)).toBeLessThan(0.006);
    }
  });
});

const anyChannel = fc.record({
  kinetics: fc.constantFrom('fast' as const, 'slow' as const),
  width: fc.double({ min: 1, max: 400, noNaN: true }),
  depth: fc.double({ min: 1, max: 60, noNaN: true }),
  shop: fc.integer({ min: 5, max: 32 }),
});
const unlimited = { ...coarse, stop: Number.POSITIVE_INFINITY };

describe('any channel', () => {
  test('gives finite figures and keeps its heat', () => {
    fc.assert(
      fc.property(anyChannel, ({ kinetics, width, depth, shop }) => {
        const run = runPour(inChannel(kinetics, width, depth, shop), coarse);
        for (const value of [run.peakRise, run.timeToPeak, run.hottestHeight, run.end])
          expect(Number.isFinite(value)).toBe(true);
        expect(run.peakRise).toBeGreaterThan(0);
        expect(run.hottestHeight).toBeGreaterThanOrEqual(0);
        expect(run.hottestHeight).toBeLessThanOrEqual(depth);
        const { made, held, lost } = run.heat;
        expect(Math.abs(made - held - lost)).toBeLessThan(1e-6 * made);
        const whole = (classThermal.density * classKinetics[kinetics].heatOfReaction * width * depth) / 2e6;
        expect(made / whole).toBeLessThanOrEqual(run.conversion.most + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test('is never hotter than the pool of its depth, nor than its own heat can make it', () => {
    fc.assert(
      fc.property(anyChannel, ({ kinetics, width, depth, shop }) => {
        const channel = runPour(inChannel(kinetics, width, depth, shop), unlimited).peakRise;
        const pool = runPour(pourOf(kinetics, depth, shop), { ...unlimited, cells: [10, 8] }).peakRise;
        const ceiling = classKinetics[kinetics].heatOfReaction / classThermal.heatCapacity;
        // Past a hundred kelvins a front runs through the resin, which coarse cells overshoot.
        const slack = pool < 100 ? 1.04 : 1.15;
        expect(channel).toBeLessThan(slack * pool + 0.02);
        expect(channel).toBeLessThan(1.15 * ceiling);
      }),
      { numRuns: 60 },
    );
  });

  test('stays no cooler for being wider, deeper or in a warmer shop', () => {
    fc.assert(
      fc.property(
        anyChannel,
        fc.double({ min: 1.1, max: 2, noNaN: true }),
        fc.integer({ min: 1, max: 5 }),
        ({ kinetics, width, depth, shop }, factor, warmer) => {
          const rise = (wide: number, deep: number, celsius: number) =>
            runPour(inChannel(kinetics, wide, deep, celsius), { ...coarse, mostRise: 60 }).peakRise;
          const here = rise(width, depth, shop);
          expect(rise(factor * width, depth, shop)).toBeGreaterThan(0.97 * here - 0.01);
          expect(rise(width, factor * depth, shop)).toBeGreaterThan(0.97 * here - 0.01);
          expect(rise(width, depth, shop + warmer)).toBeGreaterThan(here - 0.01);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('what stands beside a channel', () => {
  const rise = (more: Partial<Pour>) => runPour(inChannel('slow', 22, 30, 22, more)).peakRise;
  const usual = rise({});
  test('walls that insulate make it hotter, walls that conduct cooler', () => {
    const foam = { density: 35, heatCapacity: 1450, conductivity: 0.035 };
    const plastic = { density: 980, heatCapacity: 1900, conductivity: 0.5 };
    expect(rise({ channel: { width: 22, sides: foam } })).toBeGreaterThan(1.5 * usual);
    expect(rise({ channel: { width: 22, sides: plastic } })).toBeLessThan(0.8 * usual);
  });

  test('air under it instead of wood changes it, and it still runs', () => {
    const open = runPour(inChannel('slow', 22, 30, 22, { base: null }));
    expect(open.outcome).toBe('settled');
    expect(open.profile.resinFrom).toBe(0);
  });

  test.each([3.8e-124, 0.005, 0.02])('a base of %d mm is no worse than none', (thickness) => {
    const film = runPour(inChannel('slow', 22, 30, 22, { base: { ...hardwood, thickness } }), coarse);
    const open = runPour(inChannel('slow', 22, 30, 22, { base: null }), coarse);
    expect(Math.abs(film.peakRise / open.peakRise - 1)).toBeLessThan(0.01);
  });

  test('the section at the hottest time falls from the middle to the wood', () => {
    const { across, peakTemperature } = runPour(inChannel('slow', 40, 19, 20));
    const { places, temperatures } = across as NonNullable<typeof across>;
    expect(places).toHaveLength(temperatures.length);
    expect(temperatures[0]).toBeCloseTo(peakTemperature, 6);
    for (const [at, temperature] of temperatures.entries())
      if (at > 0) expect(temperature).toBeLessThanOrEqual((temperatures[at - 1] as number) + 1e-9);
    expect(temperatures.at(-1)).toBeLessThan(20.5);
  });
});
