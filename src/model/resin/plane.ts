import type { Conductor, Film } from './conduction.ts';
import type { ThermalProperties } from './kinetics.ts';

/**
 * Heat conduction in a cross-section, by the scheme of `conduction.ts` in two directions: finite volumes, and both stages of the
 * same L-stable method solved at once for the whole section. A scheme that takes one direction after the other would be cheaper a
 * step, but leaves what is stiff in both directions undamped and splits the source from its losses.
 */

/** Cells of a section in columns and rows, per metre of its length. Cell of column x and row y stands at `y * columns + x`. */
export interface PlaneGrid {
  columns: number;
  rows: number;
  /** Width of each column and height of each row, m, from the middle outwards and from the underside up. */
  widths: Float64Array;
  heights: Float64Array;
  /** Size of each cell, m², and the heat that it holds per kelvin, J/(m·K). */
  volumes: Float64Array;
  capacities: Float64Array;
  /** To the next cell in the row and to the one above, W/(m·K); in the last column none, in the last row to the air. */
  outward: Float64Array;
  upward: Float64Array;
  /** From each cell of the lowest row to the air below, W/(m·K). */
  below: Float64Array;
}

/**
 * Divide a section into cells. No heat passes its first and its last column outwards.
 *
 * @param widths of the columns from the middle outwards, m
 * @param heights of the rows from the underside up, m
 * @param material of the cell in a column and a row
 * @param films under the lowest row and over the highest, W/(m²·K)
 */
export function planeGridOf(
  widths: readonly number[],
  heights: readonly number[],
  material: (column: number, row: number) => ThermalProperties,
  films: { low: Film; high: Film },
): PlaneGrid {
  const [columns, rows] = [widths.length, heights.length];
  const field = () => new Float64Array(columns * rows);
  const grid: PlaneGrid = {
    columns,
    rows,
    widths: Float64Array.from(widths),
    heights: Float64Array.from(heights),
    volumes: field(),
    capacities: field(),
    outward: field(),
    upward: field(),
    below: new Float64Array(columns),
  };
  for (const [row, height] of heights.entries()) {
    for (const [column, width] of widths.entries()) {
      const at = row * columns + column;
      const here = material(column, row);
      grid.volumes[at] = width * height;
      grid.capacities[at] = width * height * here.density * here.heatCapacity;
      const [across, up] = [width / 2 / here.conductivity, height / 2 / here.conductivity];
      if (column + 1 < columns) {
        const next = (widths[column + 1] as number) / 2 / material(column + 1, row).conductivity;
        grid.outward[at] = height / (across + next);
      }
      const above =
        row + 1 < rows ? (heights[row + 1] as number) / 2 / material(column, row + 1).conductivity : 1 / films.high;
      grid.upward[at] = width / (up + above);
      if (row === 0) grid.below[column] = width / (up + 1 / films.low);
    }
  }
  return grid;
}

/** Share of its own step that each stage of the method looks ahead, 1 − 1/√2. */
const gamma = 1 - Math.SQRT1_2;

/**
 * Sum of the products of two rows of numbers. Four sums run side by side: one alone would wait for itself at every number, and this is where a
 * channel spends its time.
 */
function product(one: Float64Array, from: number, other: Float64Array, start: number, count: number): number {
  let first = 0;
  let second = 0;
  let third = 0;
  let fourth = 0;
  let at = 0;
  for (; at + 3 < count; at += 4) {
    first += (one[from + at] as number) * (other[start + at] as number);
    second += (one[from + at + 1] as number) * (other[start + at + 1] as number);
    third += (one[from + at + 2] as number) * (other[start + at + 2] as number);
    fourth += (one[from + at + 3] as number) * (other[start + at + 3] as number);
  }
  for (; at < count; at += 1) first += (one[from + at] as number) * (other[start + at] as number);
  return first + second + (third + fourth);
}

/**
 * A conductor for a section. Its temperatures and sources stand in any order that is asked for.
 *
 * The equations of a stage are solved by LDLᵀ in a band as wide as the shorter side of the section has cells.
 *
 * @param places of each value of a field: which cell of the grid it is
 */
export function planeConductorOf(grid: PlaneGrid, places: Int32Array): Conductor {
  const { columns, rows, capacities } = grid;
  const count = columns * rows;
  const byColumns = rows < columns;
  const band = byColumns ? rows : columns;
  /** Number of an equation, counted along the shorter side first. */
  const equation = (column: number, row: number) => (byColumns ? column * rows + row : row * columns + column);
  // Of each equation: heat held, couplings to the equation before and to the one a band before, and to the air.
  const held = new Float64Array(count);
  const near = new Float64Array(count);
  const far = new Float64Array(count);
  const open = new Float64Array(count);
  const sum = new Float64Array(count);
  const numbers = new Int32Array(count);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const cell = row * columns + column;
      const at = equation(column, row);
      numbers[cell] = at;
      held[at] = capacities[cell] as number;
      const left = column > 0 ? (grid.outward[cell - 1] as number) : 0;
      const under = row > 0 ? (grid.upward[cell - columns] as number) : 0;
      near[at] = byColumns ? under : left;
      far[at] = byColumns ? left : under;
      const [above, below] = [grid.upward[cell] as number, row === 0 ? (grid.below[column] as number) : 0];
      open[at] = below + (row + 1 === rows ? above : 0);
      sum[at] = left + under + below + (grid.outward[cell] as number) + above;
    }
  }
  const order = Int32Array.from(places, (cell) => numbers[cell] as number);

  const lower = new Float64Array(count * band); // row p holds L[p][p − band] to L[p][p − 1]
  const pivot = new Float64Array(count);
  const lead = new Float64Array(count);
  const middle = new Float64Array(count);
  const final = new Float64Array(count);
  const start = new Float64Array(count);
  const made = new Float64Array(count);
  let seconds = 0;

  const factor = () => {
    const scale = 1 / (gamma * seconds);
    for (let p = 0; p < count; p += 1) {
      lead[p] = (held[p] as number) * scale;
      const from = Math.max(0, p - band);
      const row = p * band - (p - band);
      for (let q = from; q < p; q += 1) lower[row + q] = 0;
      if (p > 0 && near[p] !== 0) lower[row + p - 1] = -(near[p] as number);
      if (p >= band) lower[row + p - band] = (lower[row + p - band] as number) - (far[p] as number);
      let diagonal = (lead[p] as number) + (sum[p] as number);
      // `lower` holds L·D until the row is done.
      for (let q = from; q < p; q += 1) {
        const other = q * band - (q - band);
        lower[row + q] = (lower[row + q] as number) - product(lower, row + from, lower, other + from, q - from);
      }
      for (let q = from; q < p; q += 1) {
        const value = lower[row + q] as number;
        const share = value * (pivot[q] as number);
        diagonal -= value * share;
        lower[row + q] = share;
      }
      pivot[p] = 1 / diagonal;
    }
  };

  /** Solve in place: `x` holds the right side and gets the temperatures. */
  const solve = (x: Float64Array) => {
    for (let p = 1; p < count; p += 1) {
      const from = Math.max(0, p - band);
      x[p] = (x[p] as number) - product(lower, p * band - (p - band) + from, x, from, p - from);
    }
    for (let p = 0; p < count; p += 1) x[p] = (x[p] as number) * (pivot[p] as number);
    for (let p = count - 1; p > 0; p -= 1) {
      const row = p * band - (p - band);
      const value = x[p] as number;
      for (let q = Math.max(0, p - band); q < p; q += 1) x[q] = (x[q] as number) - (lower[row + q] as number) * value;
    }
  };

  return {
    setStep(next) {
      if (next === seconds) return;
      seconds = next;
      factor();
    },
    step(before, source, surroundings, after) {
      const share = (1 - gamma) / gamma;
      for (let at = 0; at < count; at += 1) {
        const p = order[at] as number;
        start[p] = before[at] as number;
        made[p] = source[at] as number;
      }
      for (let p = 0; p < count; p += 1) {
        made[p] = (made[p] as number) + (open[p] as number) * surroundings;
        middle[p] = (lead[p] as number) * (start[p] as number) + (made[p] as number);
      }
      solve(middle);
      for (let p = 0; p < count; p += 1) {
        const from = start[p] as number;
        final[p] = (lead[p] as number) * (from + share * ((middle[p] as number) - from)) + (made[p] as number);
      }
      solve(final);
      for (let at = 0; at < count; at += 1) after[at] = final[order[at] as number] as number;
    },
    lost(surroundings) {
      let out = 0;
      for (let p = 0; p < count; p += 1) {
        const through = open[p] as number;
        if (through === 0) continue;
        out +=
          through *
          ((1 - gamma) * ((middle[p] as number) - surroundings) + gamma * ((final[p] as number) - surroundings));
      }
      return seconds * out;
    },
  };
}
