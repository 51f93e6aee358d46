import { cellCureOf } from './cells.ts';
import { conductorOf, type Grid, gridOf } from './conduction.ts';
import type { ThermalProperties } from './kinetics.ts';
import type { Pour } from './pour-types.ts';

/** A thinner base holds next to no heat and stops none, mm. */
const thinnestBase = 0.01;

/** Passes of cure and conduction in a step, at most; fewer where the temperature half-way moves by less than so much, K. */
const mostPasses = 3;
const settledWithin = 1e-3;
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
export interface Workspace {
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

export function workspaceOf(pour: Pour, cells: readonly [number, number], conversionStep: number): Workspace {
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
export function heightOf({ grid, offset }: Workspace, temperatures: Float64Array, cell: number): number {
  const underside = (grid.centres[offset] as number) - (grid.widths[offset] as number) / 2;
  const height = (at: number) => 1000 * ((grid.centres[at] as number) - underside);
  if (cell === offset || cell === grid.count - 1) return height(cell);
  const three = [cell - 1, cell, cell + 1] as const;
  return vertex(
    three.map(height) as [number, number, number],
    three.map((at) => temperatures[at] as number) as [number, number, number],
  );
}
