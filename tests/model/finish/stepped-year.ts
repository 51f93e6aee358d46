/** A board of the stepper; `balance` gives the moisture content at balance (%) at a share of the year. */
export interface SteppedYear {
  balance: (share: number) => number;
  /** m. */
  thickness: number;
  /** m²/s at the moisture content `at`, growing by `perPercent` (of its logarithm) for each percent. */
  diffusion: number;
  perPercent: number;
  at: number;
  /** Resistance of air and coating at each face, s/m. */
  resistances: readonly [number, number];
}

const yearSeconds = 365.25 * 86_400;

/**
 * A board through the year by finite volumes over the whole thickness and implicit midpoint steps, D at mid-step by three
 * Picard passes, run until the year repeats itself. Another road to what the closed form gives, which holds D constant.
 *
 * @returns mean moisture at each step of the last year, %
 */
export function steppedYear(board: SteppedYear, cells: number, steps: number): Float64Array {
  const width = board.thickness / cells;
  const dt = yearSeconds / steps;
  const start = Array.from({ length: steps }, (_, at) => board.balance(at / steps)).reduce((a, b) => a + b, 0) / steps;
  let now = new Float64Array(cells).fill(start);
  let before = new Float64Array(steps);
  const conductance = new Float64Array(cells + 1);
  const upper = new Float64Array(cells);
  const right = new Float64Array(cells);
  for (let year = 0; year < 60; year += 1) {
    const means = new Float64Array(steps);
    for (let step = 0; step < steps; step += 1) {
      const air = board.balance((step + 0.5) / steps);
      let middle = Float64Array.from(now);
      for (let pass = 0; pass < (board.perPercent === 0 ? 1 : 3); pass += 1) {
        const d = (cell: number) =>
          board.diffusion * Math.exp(board.perPercent * ((middle[cell] as number) - board.at));
        for (let face = 1; face < cells; face += 1)
          conductance[face] = 1 / (width / 2 / d(face - 1) + width / 2 / d(face));
        conductance[0] = 1 / (width / 2 / d(0) + board.resistances[0]);
        conductance[cells] = 1 / (width / 2 / d(cells - 1) + board.resistances[1]);
        // Implicit midpoint: solve for the state half a step on, by elimination downwards and back.
        const half = dt / 2 / width;
        for (let cell = 0; cell < cells; cell += 1) {
          const [low, high] = [(conductance[cell] as number) * half, (conductance[cell + 1] as number) * half];
          const last = cell === cells - 1;
          const from = cell === 0 ? low * air : 0;
          const to = last ? high * air : 0;
          const above = cell === 0 ? 0 : low * (upper[cell - 1] as number);
          const diagonal = 1 + low + high - above;
          upper[cell] = last ? 0 : high / diagonal;
          right[cell] =
            ((now[cell] as number) + from + to + (cell === 0 ? 0 : low * (right[cell - 1] as number))) / diagonal;
        }
        const next = new Float64Array(cells);
        for (let cell = cells - 1; cell >= 0; cell -= 1)
          next[cell] =
            (right[cell] as number) + (cell === cells - 1 ? 0 : (upper[cell] as number) * (next[cell + 1] as number));
        middle = next;
      }
      now = middle.map((value, cell) => 2 * value - (now[cell] as number));
      means[step] = now.reduce((sum, value) => sum + value, 0) / cells;
    }
    const gap = means.reduce((most, value, at) => Math.max(most, Math.abs(value - (before[at] as number))), 0);
    before = means;
    if (gap < 1e-5) break;
  }
  return before;
}

/** Wettest less driest of a line. */
export function swingOf(line: Float64Array): number {
  return Math.max(...line) - Math.min(...line);
}
