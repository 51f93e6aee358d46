/**
 * When the cells of a body pass a conversion: the first of them, the last, and the one at the far end, in s.
 * A cell passes in proportion within a step.
 */
export interface Crossing {
  /** Note one step; allocates nothing. */
  note(before: Float64Array, after: Float64Array, time: number, step: number): void;
  /** Forget what was noted after this time, s. */
  cut(time: number): void;
  /** Null until a cell has passed. */
  readonly first: number | null;
  /** Null until all have. */
  readonly last: number | null;
  /** Of the cell with the highest index. */
  readonly end: number | null;
}

/** @param level the conversion to pass; all cells start below it */
export function crossingOf(level: number, cells: number): Crossing {
  const times = new Float64Array(cells).fill(Number.POSITIVE_INFINITY);
  let passed = 0;
  let first = Number.POSITIVE_INFINITY;
  let last = 0;
  return {
    note(before, after, time, step) {
      if (passed === cells) return;
      for (let at = 0; at < cells; at += 1) {
        const start = before[at] as number;
        const end = after[at] as number;
        if (start >= level || end < level) continue;
        const when = time + (step * (level - start)) / (end - start);
        times[at] = when;
        passed += 1;
        first = Math.min(first, when);
        last = Math.max(last, when);
      }
    },
    cut(time) {
      passed = 0;
      last = 0;
      for (let at = 0; at < cells; at += 1) {
        if ((times[at] as number) <= time) {
          passed += 1;
          last = Math.max(last, times[at] as number);
        } else times[at] = Number.POSITIVE_INFINITY;
      }
      if (first > time) first = Number.POSITIVE_INFINITY;
    },
    get first() {
      return first < Number.POSITIVE_INFINITY ? first : null;
    },
    get last() {
      return passed === cells ? last : null;
    },
    get end() {
      const when = times[cells - 1] as number;
      return when < Number.POSITIVE_INFINITY ? when : null;
    },
  };
}
