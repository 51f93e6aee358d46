/** The point that makes a linear programme largest, or why there is none. */
export type LinearOutcome =
  | { ok: true; x: number[]; value: number }
  | { ok: false; why: 'infeasible' | 'unbounded' | 'unsettled' };

/** Beside coefficients of about 1, anything smaller is the noise of arithmetic. */
const noise = 1e-11;

/** Steps by steepest price before the rule that cannot cycle takes over, and the most steps in all. */
const steepestSteps = 200;
const mostSteps = 20_000;

/** Solve the few equations `matrix · x = side` by elimination; `matrix` is given by rows and is used up. */
function eliminate(matrix: number[][], side: number[]): number[] | undefined {
  const size = side.length;
  for (let at = 0; at < size; at += 1) {
    let pivot = at;
    for (let row = at + 1; row < size; row += 1) {
      if (Math.abs((matrix[row] as number[])[at] as number) > Math.abs((matrix[pivot] as number[])[at] as number))
        pivot = row;
    }
    [matrix[at], matrix[pivot]] = [matrix[pivot] as number[], matrix[at] as number[]];
    [side[at], side[pivot]] = [side[pivot] as number, side[at] as number];
    const top = matrix[at] as number[];
    const head = top[at] as number;
    if (Math.abs(head) < 1e-14) return undefined;
    for (let row = at + 1; row < size; row += 1) {
      const line = matrix[row] as number[];
      const factor = (line[at] as number) / head;
      if (factor === 0) continue;
      for (let column = at; column < size; column += 1) {
        line[column] = (line[column] as number) - factor * (top[column] as number);
      }
      side[row] = (side[row] as number) - factor * (side[at] as number);
    }
  }
  const x = new Array<number>(size).fill(0);
  for (let at = size - 1; at >= 0; at -= 1) {
    const line = matrix[at] as number[];
    let rest = side[at] as number;
    for (let column = at + 1; column < size; column += 1) rest -= (line[column] as number) * (x[column] as number);
    x[at] = rest / (line[at] as number);
  }
  return x;
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, at) => sum + value * (b[at] as number), 0);

/**
 * Solve a linear programme with few variables and many limits exactly, up to rounding: the simplex method on its dual, whose
 * basis has as many rows as there are variables and is solved afresh at each step. Coefficients should be of about 1.
 *
 * @param goal coefficients of what is to be largest, one a variable; variables may take either sign
 * @param rows coefficients of each limit
 * @param limits `rows[i] · x ≤ limits[i]`
 */
export function maximise(
  goal: readonly number[],
  rows: readonly (readonly number[])[],
  limits: readonly number[],
): LinearOutcome {
  const size = goal.length;
  const count = rows.length;
  const column = (at: number): readonly number[] =>
    at < count
      ? (rows[at] as readonly number[])
      : goal.map((side, row) => (row === at - count ? (side < 0 ? -1 : 1) : 0));
  const basis = goal.map((_, row) => count + row);

  const prices = (costs: (at: number) => number) =>
    eliminate(
      basis.map((at) => [...column(at)]),
      basis.map(costs),
    );
  const amounts = (side: readonly number[]) =>
    eliminate(
      goal.map((_, row) => basis.map((at) => column(at)[row] as number)),
      [...side],
    );

  /** Bring the cost down as far as it goes; the prices at the end are the point looked for. */
  function descend(costs: (at: number) => number, phase: 1 | 2): number[] | 'endless' | 'unsettled' {
    for (let step = 0; step < mostSteps; step += 1) {
      const price = prices(costs);
      const stock = amounts(goal);
      if (!price || !stock) return 'unsettled';
      let entering = -1;
      let best = -noise;
      for (let at = 0; at < count; at += 1) {
        if (basis.includes(at)) continue;
        const reduced = costs(at) - dot(price, rows[at] as readonly number[]);
        if (reduced >= best) continue;
        entering = at;
        if (step >= steepestSteps) break;
        best = reduced;
      }
      if (entering < 0) return price;
      const change = amounts(column(entering));
      if (!change) return 'unsettled';
      let leaving = -1;
      let least = Number.POSITIVE_INFINITY;
      for (let row = 0; row < size; row += 1) {
        const rate = change[row] as number;
        // A limit of the start that is still in the basis stands at nothing and must stay there.
        const idle = phase === 2 && (basis[row] as number) >= count && Math.abs(rate) > noise;
        if (rate <= noise && !idle) continue;
        const ratio = idle ? 0 : Math.max(0, stock[row] as number) / rate;
        const earlier = ratio === least && (basis[row] as number) < (basis[leaving] as number);
        if (ratio < least || earlier) {
          least = ratio;
          leaving = row;
        }
      }
      if (leaving < 0) return 'endless';
      basis[leaving] = entering;
    }
    return 'unsettled';
  }

  const start = descend((at) => (at < count ? 0 : 1), 1);
  if (typeof start === 'string') return { ok: false, why: 'unsettled' };
  if (dot(start, goal) > 1e-9) return { ok: false, why: 'unbounded' };
  const x = descend((at) => (at < count ? (limits[at] as number) : 0), 2);
  if (x === 'endless') return { ok: false, why: 'infeasible' };
  if (x === 'unsettled') return { ok: false, why: 'unsettled' };
  return { ok: true, x, value: dot(x, goal) };
}
