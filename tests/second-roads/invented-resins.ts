import { type CupFineness, rateOfPotLife } from './cup.ts';
import { depthThatWarms, type Fineness, type RoadRun, stepPour } from './pour.ts';
import { classes, type RoadResin } from './resins.ts';

/**
 * Resins that nobody sells, all of one pot life: what a pot life alone leaves open. From them come the bands of what the heat of a
 * pour says. They are the spread of what is assumed, not of measurements.
 *
 * Each is drawn, evenly between two ends, about what the model assumes of every resin:
 *
 * - activation energy 47 to 63 kJ/mol (55 ± 8, as the model takes for a sheet of one pot life);
 * - share of the uncatalysed path 0.01 to 0.1, evenly on its logarithm (the model: 0.03);
 * - orders m 0.8 to 1.2 and n 1.7 to 2.3 (1 and 2);
 * - heat of reaction 0.85 to 1.15 of its class (400 and 350 kJ/kg);
 * - density 1050 to 1150 kg/m³ (1100), heat capacity 1800 to 2200 J/(kg·K) (2000), conductivity 0.15 to 0.21 W/(m·K) (0.18).
 *
 * Its rate is then fitted so that a cup of 100 g at 25 °C gels in the pot life.
 */
export function inventedResins(kind: keyof typeof classes, count: number): Omit<RoadResin, 'rate'>[] {
  const draw = drawsFrom(kind === 'fast' ? 1 : 2);
  const between = (low: number, high: number) => low + (high - low) * draw();
  return Array.from({ length: count }, () => ({
    energy: between(47_000, 63_000),
    c: Math.exp(between(Math.log(0.01), Math.log(0.1))),
    m: between(0.8, 1.2),
    n: between(1.7, 2.3),
    heat: between(0.85, 1.15) * classes[kind].heat,
    density: between(1050, 1150),
    heatCapacity: between(1800, 2200),
    conductivity: between(0.15, 0.21),
  }));
}

/** Pot lives of the two classes, min, and how many resins are drawn of each. */
export const potLives = { fast: 30, slow: 360 } as const;
export const howMany = 120;

/** Even numbers from 0 to 1, the same in every run: the generator of Park and Miller, 48 271 modulo 2³¹ − 1. */
function drawsFrom(seed: number): () => number {
  let state = seed * 104_729;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const pourFineness: Fineness = { cells: [6, 5], gain: 0.01 };
const cupFineness: CupFineness = { cells: [6, 6], gain: 0.005 };
const shops = [15, 20, 30] as const;

/** The resin that the model takes for a sheet of that pot life, 55 kJ/mol and the rest of its class, fitted on the same grid; and its depths. */
export interface Yardstick {
  kind: keyof typeof classes;
  resin: RoadResin;
  /** Depth that warms by 25 K at 25 °C, mm, and the shares of it that do so at 15, 20 and 30 °C. */
  depth: number;
  shares: readonly number[];
  /** Rises at 0.8 and 1.25 of it, K. */
  shallow: number;
  deep: number;
  /** Depths that warm by 15, 25 and 60 K at 25 °C, mm, and what pours so deep do. */
  pours: readonly { depth: number; run: RoadRun }[];
}

const fitted = (kind: keyof typeof classes, resin: Omit<RoadResin, 'rate'>): RoadResin => ({
  ...resin,
  rate: rateOfPotLife(resin, potLives[kind], 100, 25, cupFineness),
});

const depthFor = (resin: RoadResin, by: number, shop: number, near: number) =>
  depthThatWarms(resin, by, { shop }, { from: near / 2.5, to: near * 2.5, fineness: pourFineness });

export function yardstick(kind: keyof typeof classes): Yardstick {
  const resin = fitted(kind, { ...classes[kind], energy: 55_000 });
  const near = kind === 'fast' ? 3 : 14;
  const rise = (deep: number) => stepPour(resin, { depth: deep, shop: 25 }, pourFineness).peak - 25;
  const depth = depthFor(resin, 25, 25, near);
  return {
    kind,
    resin,
    depth,
    shares: shops.map((shop) => depthFor(resin, 25, shop, depth) / depth),
    shallow: rise(0.8 * depth),
    deep: rise(1.25 * depth),
    pours: [15, 25, 60].map((by) => {
      const deep = depthFor(resin, by, 25, near);
      return { depth: deep, run: stepPour(resin, { depth: deep, shop: 25 }, pourFineness) };
    }),
  };
}

/** What one invented resin does. */
export interface Spread {
  /** Depth that warms by 25 K at 25 °C, mm, and its shares at 15, 20 and 30 °C. */
  depth: number;
  shares: number[];
  /** Rises at 0.8 and 1.25 of its own depth, K. */
  shallow: number;
  deep: number;
  /** Rises at its own depth times the class's shares, in shops of 15, 20 and 30 °C, K: 25 K if it were like its class. */
  away: number[];
  /** Rise, first and last gel over those of the class, at the depths where that warms by 15, 25 and 60 K. */
  rise: number[];
  firstGel: number[];
  lastGel: number[];
}

export function spreadOf(drawn: Omit<RoadResin, 'rate'>, class_: Yardstick): Spread {
  const resin = fitted(class_.kind, drawn);
  const depth = depthFor(resin, 25, 25, class_.depth);
  const runAt = (deep: number, shop: number) => stepPour(resin, { depth: deep, shop }, pourFineness);
  const rise = (deep: number, shop: number) => runAt(deep, shop).peak - shop;
  const beside = class_.pours.map(({ depth: deep, run }) => ({ run, ours: runAt(deep, 25) }));
  const over = (one: number | undefined, other: number | undefined) => (one ?? Number.NaN) / (other ?? Number.NaN);
  return {
    depth,
    shares: shops.map((shop) => depthFor(resin, 25, shop, depth) / depth),
    shallow: rise(0.8 * depth, 25),
    deep: rise(1.25 * depth, 25),
    away: shops.map((shop, at) => rise((class_.shares[at] as number) * depth, shop)),
    rise: beside.map(({ run, ours }) => (ours.peak - 25) / (run.peak - 25)),
    firstGel: beside.map(({ run, ours }) => over(ours.firstGel, run.firstGel)),
    lastGel: beside.map(({ run, ours }) => over(ours.lastGel, run.lastGel)),
  };
}

/** 5 %, middle and 95 % of some numbers. */
export function quantiles(values: readonly number[]): [low: number, middle: number, high: number] {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => {
    const place = share * (sorted.length - 1);
    const [below, rest] = [Math.floor(place), place % 1];
    return (sorted[below] as number) * (1 - rest) + (sorted[Math.min(below + 1, sorted.length - 1)] as number) * rest;
  };
  return [at(0.05), at(0.5), at(0.95)];
}
