import { cellCureOf } from './cells.ts';
import type { Body } from './pour-body.ts';
import type { Pour } from './pour-types.ts';

/** Passes of cure and conduction in a step, at most; fewer where the temperature half-way moves by less than so much, K. */
const mostPasses = 3;
const settledWithin = 1e-3;

/** Everything that a run works with, allocated once. */
export interface Workspace {
  body: Body;
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
  /** One step in air of this temperature, °C; false, and nothing done, where a cell would cure by too much. `change` gets the largest change of conversion. */
  attempt(step: number, air: number): boolean;
  change: number;
  /** Let the end of the step be the start of the next. */
  turn(): void;
  lost(air: number): number;
}

export function workspaceOf(pour: Pour, body: Body, conversionStep: number): Workspace {
  const { resin, kinetics, shopTemperature } = pour;
  const { conductor, count, offset } = body;
  const cure = cellCureOf(kinetics);
  const heats = body.volumes.map((volume) => volume * resin.density * kinetics.heatOfReaction);
  const work: Workspace = {
    body,
    before: new Float64Array(count).fill(shopTemperature).fill(pour.resinTemperature, offset),
    after: new Float64Array(count),
    halfway: new Float64Array(count),
    trend: new Float64Array(count),
    alphaBefore: new Float64Array(count - offset),
    alphaAfter: new Float64Array(count - offset),
    source: new Float64Array(count),
    made: 0,
    change: 0,
    attempt(step, air) {
      const { before, after, halfway, trend, alphaBefore, alphaAfter, source } = work;
      conductor.setStep(step);
      // A first guess by the trend of the step before, so that the passes have little left to find.
      for (let at = offset; at < count; at += 1) after[at] = (before[at] as number) + step * (trend[at] as number);
      for (let pass = 0; pass < mostPasses; pass += 1) {
        let moved = 0;
        for (let at = offset; at < count; at += 1) {
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
        conductor.step(before, source, air, after);
      }
      for (let at = offset; at < count; at += 1) {
        work.made += (source[at] as number) * step;
        trend[at] = ((after[at] as number) - (before[at] as number)) / step;
      }
      return true;
    },
    turn() {
      [work.before, work.after] = [work.after, work.before];
      [work.alphaBefore, work.alphaAfter] = [work.alphaAfter, work.alphaBefore];
    },
    lost: (air) => conductor.lost(air),
  };
  return work;
}

/** Index of the hottest cell of the resin. */
export function hottestOf(temperatures: Float64Array, offset: number): number {
  let best = offset;
  for (let at = offset + 1; at < temperatures.length; at += 1)
    if ((temperatures[at] as number) > (temperatures[best] as number)) best = at;
  return best;
}

/** Place of the vertex of the parabola through three points, kept between the outer two. */
export function vertex(x: readonly [number, number, number], y: readonly [number, number, number]): number {
  const before = (y[1] - y[0]) / (x[1] - x[0]);
  const after = (y[2] - y[1]) / (x[2] - x[1]);
  const bend = before - after;
  if (!(bend > 0)) return x[1];
  const low = (x[0] + x[1]) / 2;
  return Math.min(x[2], Math.max(x[0], low + ((x[2] - x[0]) / 2) * (before / bend)));
}

/** Height of the hottest place above the underside of the resin, mm: between cells by a parabola through three of them. */
export function heightOf(
  { column, heights, resinFrom, underside, levelOf }: Body,
  temperatures: Float64Array,
  cell: number,
): number {
  const level = levelOf(cell);
  const height = (at: number) => (heights[at] as number) - underside;
  if (level === resinFrom || level === heights.length - 1) return height(level);
  const three = [level - 1, level, level + 1] as const;
  return vertex(
    three.map(height) as [number, number, number],
    three.map((at) => temperatures[column[at] as number] as number) as [number, number, number],
  );
}
