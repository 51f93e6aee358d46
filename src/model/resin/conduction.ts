/**
 * Heat conduction along one coordinate: across a slab, or along the radius of a cylinder or a ball.
 *
 * Finite volumes centred on their cells, conductances of two half cells in series, and an L-stable SDIRK method of second
 * order in time. A Crank–Nicolson step rings on long steps in thin pours, and a source split off from the conduction shifts
 * its balance with the losses; this scheme does neither.
 */

/** A layer of one material, divided into cells of one width. */
export interface ConductingLayer {
  /** m. */
  thickness: number;
  /** How many cells; at least 1. */
  cells: number;
  /** W/(m·K). */
  conductivity: number;
  /** Heat that a cubic metre holds per kelvin, J/(m³·K). */
  heatCapacity: number;
}

/** What bounds a body at one end: a film coefficient in W/(m²·K), 0 where no heat passes, Infinity where the face is held. */
export type Film = number;

export type BodyShape = 'slab' | 'cylinder' | 'sphere';

/**
 * Cells of a body from its low end (the underside of a slab, the middle of a cylinder or ball) to its high end.
 * Per square metre of a slab, per radian and metre of a cylinder, per steradian of a ball.
 */
export interface Grid {
  count: number;
  /** Middle of each cell from the low end, m. */
  centres: Float64Array;
  /** Width of each cell, m. */
  widths: Float64Array;
  /** Size of each cell, m³. */
  volumes: Float64Array;
  /** Heat that each cell holds per kelvin, J/K. */
  capacities: Float64Array;
  /** Between cells at − 1 and at, W/K; the first and last lead to the surroundings. */
  conductances: Float64Array;
}

const exponents: Readonly<Record<BodyShape, number>> = { slab: 0, cylinder: 1, sphere: 2 };

/** Share of its own step that each stage of the method looks ahead, 1 − 1/√2. */
const gamma = 1 - Math.SQRT1_2;

/**
 * Divide a body into cells.
 *
 * @param layers from the low end to the high end
 * @param films at the low and the high end, W/(m²·K); the middle of a cylinder or ball takes 0
 * @param shape slab unless told
 */
export function gridOf(
  layers: readonly ConductingLayer[],
  films: { low: Film; high: Film },
  shape: BodyShape = 'slab',
): Grid {
  const power = exponents[shape];
  const count = layers.reduce((sum, layer) => sum + layer.cells, 0);
  const grid: Grid = {
    count,
    centres: new Float64Array(count),
    widths: new Float64Array(count),
    volumes: new Float64Array(count),
    capacities: new Float64Array(count),
    conductances: new Float64Array(count + 1),
  };
  // Resistance of the half cell (or film) just passed, for one square metre.
  let behind = films.low > 0 ? 1 / films.low : Number.POSITIVE_INFINITY;
  let start = 0;
  let at = 0;
  for (const { thickness, cells, conductivity, heatCapacity } of layers) {
    const width = thickness / cells;
    const half = width / 2 / conductivity;
    for (let cell = 0; cell < cells; cell += 1) {
      const low = start + cell * width;
      const high = low + width;
      grid.centres[at] = low + width / 2;
      grid.widths[at] = width;
      const volume = (high ** (power + 1) - low ** (power + 1)) / (power + 1);
      grid.volumes[at] = volume;
      grid.capacities[at] = volume * heatCapacity;
      grid.conductances[at] = low ** power / (behind + half);
      behind = half;
      at += 1;
    }
    start += thickness;
  }
  const out = films.high > 0 ? 1 / films.high : Number.POSITIVE_INFINITY;
  grid.conductances[count] = start ** power / (behind + out);
  return grid;
}

/** Steps the temperature of a grid. Everything it works with is allocated once. */
export interface Conductor {
  /** Set the length of the steps that follow, s. */
  setStep(seconds: number): void;
  /**
   * One step with a source held through it.
   *
   * @param before temperature of each cell at the start, °C
   * @param source heat made in each cell, W
   * @param surroundings beyond the low and the high end, °C
   * @param after gets the temperature at the end, °C; may not be `before`
   */
  step(before: Float64Array, source: Float64Array, surroundings: number, after: Float64Array): void;
  /** Heat that left at both ends in the last step, J. */
  lost(surroundings: number): number;
}

/** A conductor for a grid. */
export function conductorOf(grid: Grid): Conductor {
  const { count, capacities, conductances } = grid;
  const last = count - 1;
  const lead = new Float64Array(count); // capacities over γ·step
  const upper = new Float64Array(count); // what the elimination leaves above the diagonal
  const pivot = new Float64Array(count); // one over the diagonal after the elimination
  const middle = new Float64Array(count); // temperatures of the first stage
  const lowEnd = conductances[0] as number;
  const highEnd = conductances[count] as number;
  let seconds = 0;
  let final: Float64Array = middle;

  /** Solve in place: `x` holds the right side and gets the temperatures. */
  const solve = (x: Float64Array) => {
    let carried = 0;
    for (let at = 0; at < count; at += 1) {
      carried = ((x[at] as number) + (conductances[at] as number) * carried) * (pivot[at] as number);
      x[at] = carried;
    }
    for (let at = last - 1; at >= 0; at -= 1) {
      carried = (x[at] as number) + (upper[at] as number) * carried;
      x[at] = carried;
    }
  };

  return {
    setStep(next) {
      if (next === seconds) return;
      seconds = next;
      const scale = 1 / (gamma * next);
      let above = 0;
      for (let at = 0; at < count; at += 1) {
        const here = (capacities[at] as number) * scale;
        const low = conductances[at] as number;
        const high = conductances[at + 1] as number;
        lead[at] = here;
        const one = 1 / (here + low + high - low * above);
        pivot[at] = one;
        above = high * one;
        upper[at] = above;
      }
    },
    step(before, source, surroundings, after) {
      const share = (1 - gamma) / gamma;
      for (let at = 0; at < count; at += 1)
        middle[at] = (lead[at] as number) * (before[at] as number) + (source[at] as number);
      middle[0] = (middle[0] as number) + lowEnd * surroundings;
      middle[last] = (middle[last] as number) + highEnd * surroundings;
      solve(middle);
      for (let at = 0; at < count; at += 1) {
        const start = before[at] as number;
        after[at] = (lead[at] as number) * (start + share * ((middle[at] as number) - start)) + (source[at] as number);
      }
      after[0] = (after[0] as number) + lowEnd * surroundings;
      after[last] = (after[last] as number) + highEnd * surroundings;
      solve(after);
      final = after;
    },
    lost(surroundings) {
      const out = (temperatures: Float64Array) =>
        lowEnd * ((temperatures[0] as number) - surroundings) +
        highEnd * ((temperatures[last] as number) - surroundings);
      return seconds * ((1 - gamma) * out(middle) + gamma * out(final));
    },
  };
}
