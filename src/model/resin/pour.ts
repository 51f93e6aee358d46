import { equation } from '../evidence/index.ts';
import { cellCureOf } from './cells.ts';
import { gelPoint } from './clock.ts';
import { conductorOf, type Grid, gridOf } from './conduction.ts';
import { crossingOf } from './crossings.ts';
import { type Kinetics, type ThermalProperties, workConversion } from './kinetics.ts';

/** Above this the model is wrong (boiling, decomposition, rising heat capacity), and so is the pour, °C. */
export const runawayTemperature = 120;

/** A flat pour over a base, without loss at its edges. */
export interface Pour {
  kinetics: Kinetics;
  /** Of the mixed resin. */
  resin: ThermalProperties;
  /** mm. */
  depth: number;
  /** What the resin lies on; null where air meets its underside. */
  base: Base | null;
  /** Film coefficient over the resin, W/(m²·K). */
  filmTop: number;
  /** Film coefficient under the base, W/(m²·K). */
  filmBottom: number;
  /** Of the air, and of the base at the start, °C. */
  shopTemperature: number;
  /** Of the mixed resin as it is poured, °C. */
  resinTemperature: number;
}

export interface Base extends ThermalProperties {
  /** mm. */
  thickness: number;
}

export interface PourOptions {
  /** Cells in the resin, and in a base of 20 mm. */
  cells?: readonly [resin: number, base: number];
  /** Largest change of conversion in a step that is aimed at. */
  conversionStep?: number;
  /** Temperature at which the run stops, °C; `runawayTemperature` unless told. */
  stop?: number;
  /** Whether temperatures through time and depth are kept for drawing. */
  record?: boolean;
  /** Whether the run may end once the peak is past, without waiting for the resin to gel through and to cool. */
  peakOnly?: boolean;
  /** Run to this time and no further, s. */
  until?: number;
}

/** Temperatures kept of a run, one entry a step. */
export interface PourRecord {
  /** s from mixing. */
  times: number[];
  /** °C: of the uppermost, the middle and the lowest cell of the resin. */
  top: number[];
  middle: number[];
  bottom: number[];
}

/** What a pour did. Times in s from mixing. */
export interface PourRun {
  /**
   * `settled`: it gelled through and cooled. `runaway`: some of it passed the stop, where the run ends.
   * `unfinished`: neither within `longestRun`.
   */
  outcome: 'settled' | 'runaway' | 'unfinished';
  /** Highest temperature anywhere in the resin, °C; in a runaway that of the stop. */
  peakTemperature: number;
  /** That above the air of the shop, K. */
  peakRise: number;
  timeToPeak: number;
  /** Middle of the hottest cell at that time above the underside of the resin, mm. */
  hottestHeight: number;
  /** First cell at the end of working time; null where the run ended before. */
  timeToWork: number | null;
  /** First and last cell to gel. */
  timeToFirstGel: number | null;
  timeToLastGel: number | null;
  /** The upper face has cured so far that a layer poured on it no longer bonds by itself. */
  timeToClose: number | null;
  /** After the last gel: the hottest cell is back within `coolWithin` of the air. */
  timeToCool: number | null;
  /** When the run ended. */
  end: number;
  /** Least and greatest conversion at the end. */
  conversion: { least: number; most: number };
  /** Heat per square metre, J: made by the cure, held above the start, lost to the air. */
  heat: { made: number; held: number; lost: number };
  steps: number;
  /** Height of each cell above the underside of the base, mm, and its temperature at the time of the peak, °C. */
  profile: { heights: number[]; temperatures: number[]; resinFrom: number };
  record: PourRecord;
}

/** A pour counts as cooled when its hottest place is within this of the air, K. */
export const coolWithin = 5;

/** Conversion of a face beyond which a layer poured on it bonds no better than to any cured resin; from memory. */
export const recoatConversion = 0.75;

/** Runs end here, s: a resin that has not set in a month will not. */
export const longestRun = 30 * 86_400;

/** A thinner base holds next to no heat and stops none, mm. */
const thinnestBase = 0.01;

/** Steps are no longer than this, s, or than this share of the time since mixing, where a resin takes days. */
const longestStep = 900;
const longestShare = 0.01;
const firstStep = 1;
/** Passes of cure and conduction in a step, at most; fewer where the temperature half-way moves by less than so much, K. */
const mostPasses = 3;
const settledWithin = 1e-3;
const mostSteps = 20_000;

const volumetric = ({ density, heatCapacity }: ThermalProperties) => density * heatCapacity;

/** Cells of a base: as fine in a thicker one as in one of 20 mm, up to 40. */
const baseCells = (thickness: number, inTwenty: number) =>
  Math.min(40, Math.max(inTwenty, Math.round((inTwenty * thickness) / 20)));

function gridOfPour({ resin, depth, base, filmTop, filmBottom }: Pour, cells: readonly [number, number]): Grid {
  const layers = [
    ...(base && base.thickness >= thinnestBase
      ? [
          {
            thickness: base.thickness / 1000,
            cells: baseCells(base.thickness, cells[1]),
            conductivity: base.conductivity,
            heatCapacity: volumetric(base),
          },
        ]
      : []),
    { thickness: depth / 1000, cells: cells[0], conductivity: resin.conductivity, heatCapacity: volumetric(resin) },
  ];
  return gridOf(layers, { low: filmBottom, high: filmTop });
}

/** Everything that a run works with, allocated once. */
interface Workspace {
  grid: Grid;
  /** Index of the lowest cell of the resin. */
  offset: number;
  /** Temperature of each cell at the start of a step, at its end and half-way, °C. */
  before: Float64Array;
  after: Float64Array;
  halfway: Float64Array;
  /** How fast each cell warmed in the step before, K/s. */
  trend: Float64Array;
  /** Conversion of each cell of the resin. */
  alphaBefore: Float64Array;
  alphaAfter: Float64Array;
  /** Heat made in each cell in the step, W, and in all, J. */
  source: Float64Array;
  made: number;
  /** One step; false, and nothing done, where a cell would cure by too much. `change` gets the largest change of conversion. */
  attempt(step: number): boolean;
  change: number;
  /** Let the end of the step be the start of the next. */
  turn(): void;
  lost(): number;
}

function workspaceOf(pour: Pour, cells: readonly [number, number], conversionStep: number): Workspace {
  const { resin, kinetics, shopTemperature } = pour;
  const grid = gridOfPour(pour, cells);
  const conductor = conductorOf(grid);
  const cure = cellCureOf(kinetics);
  const offset = grid.count - cells[0];
  const heats = grid.volumes.map((volume) => volume * resin.density * kinetics.heatOfReaction);
  const work: Workspace = {
    grid,
    offset,
    before: new Float64Array(grid.count).fill(shopTemperature).fill(pour.resinTemperature, offset),
    after: new Float64Array(grid.count),
    halfway: new Float64Array(grid.count),
    trend: new Float64Array(grid.count),
    alphaBefore: new Float64Array(cells[0]),
    alphaAfter: new Float64Array(cells[0]),
    source: new Float64Array(grid.count),
    made: 0,
    change: 0,
    attempt(step) {
      const { before, after, halfway, trend, alphaBefore, alphaAfter, source } = work;
      conductor.setStep(step);
      // A first guess by the trend of the step before, so that the passes have little left to find.
      for (let at = offset; at < grid.count; at += 1) after[at] = (before[at] as number) + step * (trend[at] as number);
      for (let pass = 0; pass < mostPasses; pass += 1) {
        let moved = 0;
        for (let at = offset; at < grid.count; at += 1) {
          const middle = ((before[at] as number) + (after[at] as number)) / 2;
          moved = Math.max(moved, Math.abs(middle - (halfway[at] as number)));
          halfway[at] = middle;
        }
        if (pass > 0 && moved < settledWithin) break;
        work.change = cure(alphaBefore, alphaAfter, halfway, offset, step);
        if (work.change > 2.5 * conversionStep) return false;
        for (let at = 0; at < alphaBefore.length; at += 1)
          source[at + offset] =
            ((heats[at + offset] as number) * ((alphaAfter[at] as number) - (alphaBefore[at] as number))) / step;
        conductor.step(before, source, shopTemperature, after);
      }
      for (let at = offset; at < grid.count; at += 1) {
        work.made += (source[at] as number) * step;
        trend[at] = ((after[at] as number) - (before[at] as number)) / step;
      }
      return true;
    },
    turn() {
      [work.before, work.after] = [work.after, work.before];
      [work.alphaBefore, work.alphaAfter] = [work.alphaAfter, work.alphaBefore];
    },
    lost: () => conductor.lost(shopTemperature),
  };
  return work;
}

/** Index of the hottest cell of the resin. */
function hottestOf(temperatures: Float64Array, offset: number): number {
  let best = offset;
  for (let at = offset + 1; at < temperatures.length; at += 1)
    if ((temperatures[at] as number) > (temperatures[best] as number)) best = at;
  return best;
}

/** Place of the vertex of the parabola through three points, kept between the outer two. */
function vertex(x: readonly [number, number, number], y: readonly [number, number, number]): number {
  const before = (y[1] - y[0]) / (x[1] - x[0]);
  const after = (y[2] - y[1]) / (x[2] - x[1]);
  const bend = before - after;
  if (!(bend > 0)) return x[1];
  const low = (x[0] + x[1]) / 2;
  return Math.min(x[2], Math.max(x[0], low + ((x[2] - x[0]) / 2) * (before / bend)));
}

/** Height of the hottest place above the underside of the resin, mm: between cells by a parabola through three of them. */
function heightOf({ grid, offset }: Workspace, temperatures: Float64Array, cell: number): number {
  const underside = (grid.centres[offset] as number) - (grid.widths[offset] as number) / 2;
  const height = (at: number) => 1000 * ((grid.centres[at] as number) - underside);
  if (cell === offset || cell === grid.count - 1) return height(cell);
  const three = [cell - 1, cell, cell + 1] as const;
  return vertex(
    three.map(height) as [number, number, number],
    three.map((at) => temperatures[at] as number) as [number, number, number],
  );
}

/**
 * Follow a pour from mixing until it has set and cooled, or runs away.
 *
 * Heat is conducted across the depth of resin and base (see `conduction.ts`); the cure gives heat ρ·H·dα/dt in the resin, taken
 * at the middle of each step and found by up to three passes; steps are so long that no cell cures by more than about
 * `conversionStep`. Slowing of the cure by vitrification is left out: it begins well after gel and hardly any heat is left then.
 *
 * @param pour sizes, materials and temperatures
 * @param options grid, step and stop
 */
function follow(pour: Pour, options: PourOptions = {}): PourRun {
  const { cells = [20, 12], conversionStep = 0.01, stop = runawayTemperature, until = longestRun } = options;
  const air = pour.shopTemperature;
  const work = workspaceOf(pour, cells, conversionStep);
  const { grid, offset } = work;
  const worked = crossingOf(workConversion, cells[0]);
  const gelled = crossingOf(gelPoint, cells[0]);
  const closed = crossingOf(recoatConversion, cells[0]);
  const crossings = [worked, gelled, closed];
  const record: PourRecord = { times: [], top: [], middle: [], bottom: [] };
  const keep = (time: number, temperatures: Float64Array) => {
    if (!options.record) return;
    record.times.push(time);
    record.top.push(temperatures[grid.count - 1] as number);
    record.middle.push(temperatures[offset + (cells[0] >> 1)] as number);
    record.bottom.push(temperatures[offset] as number);
  };
  keep(0, work.before);

  // Times and hottest temperatures of the last steps; where the middle one is the peak, the parabola through them has its time.
  const times: [number, number, number] = [0, 0, 0];
  const highs: [number, number, number] = [pour.resinTemperature, pour.resinTemperature, pour.resinTemperature];
  const profile = work.before.slice();
  let [peak, timeToPeak, hottestHeight] = [pour.resinTemperature, 0, pour.depth / 2];
  let [time, steps, lost] = [0, 0, 0];
  let step = Math.min(firstStep, until);
  let timeToCool: number | null = null;
  let outcome: PourRun['outcome'] = 'unfinished';

  while (outcome === 'unfinished' && time < until && steps < mostSteps) {
    if (!work.attempt(step)) {
      step *= Math.max(0.2, (0.9 * conversionStep) / work.change);
      continue;
    }
    const end = time + step;
    const cell = hottestOf(work.after, offset);
    const now = work.after[cell] as number;
    lost += work.lost();
    for (const crossing of crossings) crossing.note(work.alphaBefore, work.alphaAfter, time, step);
    keep(end, work.after);
    [times[0], times[1], times[2]] = [times[1], times[2], end];
    [highs[0], highs[1], highs[2]] = [highs[1], highs[2], now];
    if (now >= stop && now > peak) {
      peak = stop;
      timeToPeak = time + (step * (stop - highs[1])) / (now - highs[1]);
      hottestHeight = heightOf(work, work.after, cell);
      profile.set(work.after);
      for (const crossing of crossings) crossing.cut(timeToPeak);
      outcome = 'runaway';
    } else if (now > peak) {
      [peak, timeToPeak] = [now, end];
      hottestHeight = heightOf(work, work.after, cell);
      profile.set(work.after);
    } else if (timeToPeak === times[1] && steps > 1) timeToPeak = vertex(times, highs);
    steps += 1;
    time = end;
    work.turn();
    if (outcome === 'runaway') break;
    const rise = now - air;
    if (timeToCool === null && gelled.last !== null && rise <= coolWithin) timeToCool = end;
    const falling = now < peak - 0.02 * Math.abs(peak - air);
    const done = timeToCool !== null && closed.last !== null && falling;
    // Where no heat leaves it never cools; long after the last gel nothing more happens.
    const over = gelled.last !== null && end > 10 * gelled.last;
    if (over || (options.peakOnly ? gelled.first !== null && falling : done)) outcome = 'settled';
    const aim = work.change > 0 ? (0.9 * conversionStep) / work.change : 1.5;
    step = Math.min(step * Math.min(1.5, aim), Math.max(longestStep, longestShare * time), until - time);
  }

  const held = work.before.reduce(
    (sum, temperature, at) =>
      sum + (grid.capacities[at] as number) * (temperature - (at < offset ? air : pour.resinTemperature)),
    0,
  );
  return {
    outcome,
    peakTemperature: peak,
    peakRise: peak - air,
    timeToPeak,
    hottestHeight,
    timeToWork: worked.first,
    timeToFirstGel: gelled.first,
    timeToLastGel: gelled.last,
    timeToClose: closed.end,
    timeToCool,
    end: time,
    conversion: { least: Math.min(...work.alphaBefore), most: Math.max(...work.alphaBefore) },
    heat: { made: work.made, held, lost },
    steps,
    profile: {
      heights: Array.from(grid.centres, (height) => 1000 * height),
      temperatures: Array.from(profile),
      resinFrom: offset,
    },
    record,
  };
}

export const runPour = equation(
  {
    id: 'heat-of-pour',
    title: 'Heat of a pour',
    tex: '\\rho\\,c_p\\,\\frac{\\partial T}{\\partial t} = \\frac{\\partial}{\\partial x}\\!\\left(k\\,\\frac{\\partial T}{\\partial x}\\right) + \\rho\\,H\\,\\frac{\\partial \\alpha}{\\partial t}',
    symbols: [
      { tex: 'T', meaning: 'temperature', unit: '°C' },
      { tex: 't', meaning: 'time from mixing', unit: 's' },
      { tex: 'x', meaning: 'height', unit: 'm' },
      { tex: '\\rho', meaning: 'density of resin or base', unit: 'kg/m³' },
      { tex: 'c_p', meaning: 'heat capacity', unit: 'J/(kg K)' },
      { tex: 'k', meaning: 'thermal conductivity', unit: 'W/(m K)' },
      { tex: 'H', meaning: 'heat of reaction; none in the base', unit: 'J/kg' },
      { tex: '\\alpha', meaning: 'conversion of the cure', unit: '1' },
    ],
    validity:
      'A flat pour without loss at its edges, without bubbles and fillers, up to 120 °C. At both faces heat leaves by a film coefficient of 5 to 14 W/(m² K).',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'conduction of heat with the rate of cure as its source' },
    remarks:
      'Solved on 20 cells of resin and 12 of base, with steps in which no cell cures by more than about 1 %. Ordering of cases, the way that depth goes with temperature, times of thin layers and the most that the heat could give can be trusted; a single peak cannot, within a factor of two.',
  },
  follow,
);
