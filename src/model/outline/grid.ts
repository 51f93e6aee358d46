import type { Point, Polyline } from './types.ts';

/** A place on one edge of one of several closed polylines. */
export interface OnEdge {
  line: number;
  edge: number;
  /** 0 at the edge's start, 1 at its end. */
  t: number;
  place: Point;
}

/** A place where edges cross, and the two lines that they belong to, the same where a line crosses itself. */
export interface Crossing {
  at: Point;
  lines: readonly [number, number];
  /** How often they cross, about: a crossing near the border of two cells counts twice. */
  count: number;
}

/** The edges of closed polylines, sorted into square cells, so that those near a place are found without looking at all. */
export class EdgeGrid {
  readonly #lines: readonly Polyline[];
  readonly #cell: number;
  readonly #left: number;
  readonly #bottom: number;
  readonly #columns: number;
  readonly #rows: number;
  /** Edges as running numbers, by cell; those of cell c stand from `#starts[c]` to `#starts[c + 1]`. */
  readonly #starts: Int32Array;
  readonly #entries: Int32Array;
  readonly #lineOf: Int32Array;
  readonly #firstOf: number[] = [];

  /**
   * @param cell side of a cell in mm; enlarged where the polylines are so large that there would be too many
   */
  constructor(lines: readonly Polyline[], cell: number) {
    this.#lines = lines;
    let [left, right, bottom, top] = [
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
    ];
    let edges = 0;
    for (const { x, y } of lines) {
      this.#firstOf.push(edges);
      edges += x.length;
      for (let i = 0; i < x.length; i++) {
        left = Math.min(left, x[i] as number);
        right = Math.max(right, x[i] as number);
        bottom = Math.min(bottom, y[i] as number);
        top = Math.max(top, y[i] as number);
      }
    }
    // At most about a quarter of a million cells.
    this.#cell = Math.max(
      cell,
      Math.sqrt(((right - left) * (top - bottom)) / 250_000),
      (right - left + top - bottom) / 5000,
      1e-6,
    );
    this.#left = left - this.#cell;
    this.#bottom = bottom - this.#cell;
    this.#columns = Math.ceil((right - left) / this.#cell) + 3;
    this.#rows = Math.ceil((top - bottom) / this.#cell) + 3;
    this.#lineOf = new Int32Array(edges);
    lines.forEach(({ x }, line) => {
      this.#lineOf.fill(line, this.#firstOf[line] as number, (this.#firstOf[line] as number) + x.length);
    });
    this.#starts = new Int32Array(this.#columns * this.#rows + 1);
    this.#eachCell((_edge, at) => {
      this.#starts[at + 1] = (this.#starts[at + 1] as number) + 1;
    });
    for (let at = 1; at < this.#starts.length; at++)
      this.#starts[at] = (this.#starts[at] as number) + (this.#starts[at - 1] as number);
    this.#entries = new Int32Array(this.#starts[this.#starts.length - 1] as number);
    const filled = this.#starts.slice();
    this.#eachCell((edge, at) => {
      this.#entries[filled[at] as number] = edge;
      filled[at] = (filled[at] as number) + 1;
    });
  }

  /**
   * Visit the cells that each edge passes, at steps of half a cell. Such a step that ends in a diagonal neighbour passes one
   * of the two cells beside it; both are told, and a cell may be told more than once.
   */
  #eachCell(visit: (edge: number, at: number) => void): void {
    let edge = 0;
    for (const { x, y } of this.#lines) {
      const count = x.length;
      for (let i = 0; i < count; i++, edge++) {
        const j = i + 1 === count ? 0 : i + 1;
        const [ax, ay] = [x[i] as number, y[i] as number];
        const [dx, dy] = [(x[j] as number) - ax, (y[j] as number) - ay];
        const steps = Math.max(1, Math.ceil((2 * Math.hypot(dx, dy)) / this.#cell));
        let last = -1;
        for (let k = 0; k <= steps; k++) {
          const at = this.#cellAt(ax + (dx * k) / steps, ay + (dy * k) / steps);
          if (at === last) continue;
          const jump = at - last;
          if (last >= 0 && Math.abs(jump) !== 1 && Math.abs(jump) !== this.#columns) {
            const upright = jump > 0 ? this.#columns : -this.#columns;
            visit(edge, last + upright);
            visit(edge, at - upright);
          }
          visit(edge, at);
          last = at;
        }
      }
    }
  }

  #cellAt(px: number, py: number): number {
    const column = Math.min(this.#columns - 2, Math.max(1, Math.floor((px - this.#left) / this.#cell)));
    const row = Math.min(this.#rows - 2, Math.max(1, Math.floor((py - this.#bottom) / this.#cell)));
    return row * this.#columns + column;
  }

  /** The place of an edge nearest to a point, where one lies within a cell's side of it. */
  nearest(px: number, py: number): OnEdge | undefined {
    let best: OnEdge | undefined;
    let least = this.#cell * this.#cell;
    const middle = this.#cellAt(px, py);
    for (let row = -this.#columns; row <= this.#columns; row += this.#columns) {
      for (let at = middle + row - 1; at <= middle + row + 1; at++) {
        for (let k = this.#starts[at] as number; k < (this.#starts[at + 1] as number); k++) {
          const running = this.#entries[k] as number;
          const line = this.#lineOf[running] as number;
          const { x, y } = this.#lines[line] as Polyline;
          const i = running - (this.#firstOf[line] as number);
          const j = i + 1 === x.length ? 0 : i + 1;
          const [ax, ay] = [x[i] as number, y[i] as number];
          const dx = (x[j] as number) - ax;
          const dy = (y[j] as number) - ay;
          const square = dx * dx + dy * dy;
          const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square));
          const ex = px - ax - t * dx;
          const ey = py - ay - t * dy;
          const off = ex * ex + ey * ey;
          if (off < least) {
            least = off;
            best = { line, edge: i, t, place: { x: ax + t * dx, y: ay + t * dy } };
          }
        }
      }
    }
    return best;
  }

  /**
   * Where edges that are not neighbours cross or touch: one place for each line that crosses itself and for each two lines
   * that cross each other, with a count that stops at `mostCounted`.
   */
  crossings(mostCounted = 50): Crossing[] {
    const found = new Map<number, Crossing>();
    const lines = this.#lines.length;
    for (let at = 0; at + 1 < this.#starts.length; at++) {
      const end = this.#starts[at + 1] as number;
      for (let k = this.#starts[at] as number; k < end; k++) {
        for (let m = k + 1; m < end; m++) {
          const [p, q] = [this.#entries[k] as number, this.#entries[m] as number];
          if (p === q) continue;
          const [pl, ql] = [this.#lineOf[p] as number, this.#lineOf[q] as number];
          const [one, two] = pl < ql ? [pl, ql] : [ql, pl];
          const told = found.get(one * lines + two);
          if (told && told.count >= mostCounted) {
            if (lines === 1) return [told];
            continue;
          }
          const place = this.#crossing(p, q);
          if (!place) continue;
          if (told) told.count++;
          else found.set(one * lines + two, { at: place, lines: [one, two], count: 1 });
        }
      }
    }
    return [...found.values()];
  }

  #crossing(p: number, q: number): Point | undefined {
    const [pl, ql] = [this.#lineOf[p] as number, this.#lineOf[q] as number];
    const [one, two] = [this.#lines[pl] as Polyline, this.#lines[ql] as Polyline];
    const [i, k] = [p - (this.#firstOf[pl] as number), q - (this.#firstOf[ql] as number)];
    const j = i + 1 === one.x.length ? 0 : i + 1;
    const m = k + 1 === two.x.length ? 0 : k + 1;
    if (pl === ql && (j === k || m === i)) return undefined;
    const [ax, ay, bx, by] = [one.x[i], one.y[i], one.x[j], one.y[j]] as [number, number, number, number];
    const [cx, cy, dx, dy] = [two.x[k], two.y[k], two.x[m], two.y[m]] as [number, number, number, number];
    const side = (ux: number, uy: number, vx: number, vy: number, px: number, py: number) =>
      (vx - ux) * (py - uy) - (vy - uy) * (px - ux);
    const [a, b] = [side(cx, cy, dx, dy, ax, ay), side(cx, cy, dx, dy, bx, by)];
    const [c, d] = [side(ax, ay, bx, by, cx, cy), side(ax, ay, bx, by, dx, dy)];
    if (a * b > 0 || c * d > 0) return undefined;
    if (a === b) {
      // On one line: they meet where their extents do.
      const meet = (u: number, v: number, w: number, z: number) =>
        Math.max(Math.min(u, v), Math.min(w, z)) <= Math.min(Math.max(u, v), Math.max(w, z));
      return a === 0 && meet(ax, bx, cx, dx) && meet(ay, by, cy, dy) ? { x: cx, y: cy } : undefined;
    }
    const t = a / (a - b);
    return { x: ax + (bx - ax) * t, y: ay + (by - ay) * t };
  }
}
