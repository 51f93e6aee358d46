import { cureRate, gel, type RoadResin, work } from './resins.ts';

/** A flat pour over a base, all at the temperature of the shop. */
export interface RoadPour {
  /** mm. */
  depth: number;
  /** °C. */
  shop: number;
  /** Thickness in mm, density in kg/m³, heat capacity in J/(kg·K), conductivity in W/(m·K). */
  base?: { thickness: number; density: number; heatCapacity: number; conductivity: number };
  /** Heat lost to the air above and below, W/(m²·K). */
  above?: number;
  below?: number;
}

/** What a pour does: °C, and minutes from mixing; undefined where the run ended before. */
export interface RoadRun {
  peak: number;
  timeToPeak: number;
  work: number | undefined;
  firstGel: number | undefined;
  lastGel: number | undefined;
}

/** 20 mm of hardwood. */
export const hardwood = { thickness: 20, density: 650, heatCapacity: 1650, conductivity: 0.15 };

/** How fine a run is: cells in resin and base, and the largest gain of conversion in a step. */
export interface Fineness {
  cells: readonly [resin: number, base: number];
  gain: number;
}
export const fine: Fineness = { cells: [20, 12], gain: 0.005 };

/**
 * A pour by the plainest scheme there is: equal cells, stepped forward by Euler's rule within the limit of stability, the heat of
 * each step put where it arose. Slow and simple; it shares no line with the model.
 *
 * @param until stops a run as soon as it has risen so far, K: enough to know that it is hotter
 */
export function stepPour(
  resin: RoadResin,
  { depth, shop, base = hardwood, above = 10, below = 5 }: RoadPour,
  { cells, gain }: Fineness = fine,
  until = Number.POSITIVE_INFINITY,
): RoadRun {
  const [inResin, inBase] = cells;
  const count = inResin + inBase;
  const width = (cell: number) => (cell < inBase ? base.thickness / inBase : depth / inResin) / 1000;
  const of = (cell: number) => (cell < inBase ? base : resin);
  const capacity = Array.from({ length: count }, (_, cell) => width(cell) * of(cell).density * of(cell).heatCapacity);
  const half = (cell: number) => width(cell) / 2 / of(cell).conductivity;
  const pass = Array.from({ length: count + 1 }, (_, face) => {
    if (face === 0) return 1 / (1 / below + half(0));
    if (face === count) return 1 / (1 / above + half(count - 1));
    return 1 / (half(face - 1) + half(face));
  });
  const stable =
    0.9 * Math.min(...capacity.map((held, cell) => held / ((pass[cell] as number) + (pass[cell + 1] as number))));
  // What a cell of resin grows warmer by for each unit of conversion.
  const warms = resin.heat / resin.heatCapacity;

  let now = new Float64Array(count).fill(shop);
  let next = new Float64Array(count);
  const alpha = new Float64Array(inResin);
  const rates = new Float64Array(inResin);
  const run: RoadRun = { peak: shop, timeToPeak: 0, work: undefined, firstGel: undefined, lastGel: undefined };
  for (let time = 0; ; ) {
    let quickest = 0;
    for (let at = 0; at < inResin; at += 1) {
      const rate = cureRate(resin, alpha[at] as number, now[inBase + at] as number);
      rates[at] = rate;
      if (rate > quickest) quickest = rate;
    }
    const step = Math.min(stable, gain / quickest);
    let [most, least, hottest] = [0, 1, shop];
    for (let cell = 0; cell < count; cell += 1) {
      const here = now[cell] as number;
      const under = cell === 0 ? shop : (now[cell - 1] as number);
      const over = cell === count - 1 ? shop : (now[cell + 1] as number);
      const watts = (pass[cell] as number) * (under - here) + (pass[cell + 1] as number) * (over - here);
      let warmer = here + (watts * step) / (capacity[cell] as number);
      if (cell >= inBase) {
        const at = cell - inBase;
        const gained = Math.min(1 - (alpha[at] as number), (rates[at] as number) * step);
        const cured = (alpha[at] as number) + gained;
        alpha[at] = cured;
        warmer += warms * gained;
        if (cured > most) most = cured;
        if (cured < least) least = cured;
        if (warmer > hottest) hottest = warmer;
      }
      next[cell] = warmer;
    }
    [now, next] = [next, now];
    time += step / 60;
    if (most >= work) run.work ??= time;
    if (most >= gel) run.firstGel ??= time;
    if (least >= gel) run.lastGel ??= time;
    if (hottest > run.peak) {
      run.peak = hottest;
      run.timeToPeak = time;
    }
    if (run.peak - shop >= until) return run;
    if (run.lastGel !== undefined && hottest < run.peak - 0.05 * (run.peak - shop)) return run;
  }
}

/** Depth in mm at which a pour warms by so many kelvin: halved on its logarithm. */
export function depthThatWarms(
  resin: RoadResin,
  by: number,
  pour: Omit<RoadPour, 'depth'>,
  { from = 0.5, to = 200, fineness = fine }: { from?: number; to?: number; fineness?: Fineness } = {},
): number {
  let [low, high] = [Math.log(from), Math.log(to)];
  while (high - low > 0.002) {
    const middle = (low + high) / 2;
    if (stepPour(resin, { ...pour, depth: Math.exp(middle) }, fineness, by).peak - pour.shop >= by) high = middle;
    else low = middle;
  }
  return Math.exp((low + high) / 2);
}
