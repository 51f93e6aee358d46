import { type Assignment, greatestDivisor, type Item, type Problem, type Span, type Stock } from './yield-problem.ts';

/** Cells of the table times items: keeps one filling of the table to about a millisecond. */
const tableSize = 300_000;

/**
 * Best fillings of a span for every room, by dynamic programming over the items, each used at most once.
 *
 * Sizes are counted in cells. Where all sizes are multiples of one step the cells are exact; otherwise sizes are rounded
 * up to whole cells, which gives a filling that fits but may miss the best, or down, which gives a bound.
 */
export class Filling {
  private readonly cell: number;
  private readonly cells: number;
  /** Items by width, narrowest first: a board holds a prefix of them. */
  private readonly order: readonly number[];
  private readonly best: Float64Array[];
  readonly exact: boolean;

  constructor(
    private readonly items: readonly Item[],
    among: readonly number[],
    private readonly mostRoom: number,
    rounding: 'up' | 'down',
  ) {
    this.order = [...among].sort((a, b) => (items[a] as Item).width - (items[b] as Item).width || a - b);
    const sizes = this.order.map((at) => (items[at] as Item).size);
    const divisor = sizes.reduce(greatestDivisor, 0) || 1;
    const wanted = Math.max(1, Math.ceil((mostRoom * Math.max(1, sizes.length)) / tableSize));
    this.exact = divisor >= wanted;
    this.cell = this.exact ? divisor : wanted;
    this.cells = rounding === 'up' ? Math.floor(mostRoom / this.cell) : Math.ceil(mostRoom / this.cell);
    const cellsOf = (size: number) => (rounding === 'up' ? Math.ceil(size / this.cell) : Math.floor(size / this.cell));
    let row = new Float64Array(this.cells + 1);
    this.best = [row];
    for (const [position, at] of this.order.entries()) {
      const next = Float64Array.from(row);
      const size = cellsOf(sizes[position] as number);
      const { area } = items[at] as Item;
      for (let cell = size; cell <= this.cells; cell += 1) {
        const filled = (row[cell - size] as number) + area;
        if (filled > (next[cell] as number)) next[cell] = filled;
      }
      this.best.push(next);
      row = next;
    }
    this.sizeInCells = this.order.map((_, position) => cellsOf(sizes[position] as number));
  }

  private readonly sizeInCells: readonly number[];

  /** How many of the items a board of this width can hold, narrowest first. */
  private prefix(width: number): number {
    let low = 0;
    let high = this.order.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.items[this.order[middle] as number] as Item).width <= width) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Cells in a room; those rounded up beyond the greatest room do not occur. */
  private cellsIn(room: number): number {
    return Math.min(this.cells, Math.floor(Math.min(room, this.mostRoom) / this.cell));
  }

  /** Greatest blank area in a room of a board. */
  areaIn(room: number, width: number): number {
    return room <= 0 ? 0 : (this.best[this.prefix(width)]?.[this.cellsIn(room)] as number);
  }

  /** The items of a filling with the greatest area and, of those, the least length. */
  itemsIn(room: number, width: number): number[] {
    let at = this.prefix(width);
    let cell = this.cellsIn(room);
    const row = this.best[at] as Float64Array;
    while (cell > 0 && row[cell - 1] === row[cell]) cell -= 1;
    const chosen: number[] = [];
    for (; at > 0; at -= 1) {
      if (this.best[at]?.[cell] === this.best[at - 1]?.[cell]) continue;
      chosen.push(this.order[at - 1] as number);
      cell -= this.sizeInCells[at - 1] as number;
    }
    return chosen;
  }
}

/** Spans of each board, longest first. */
function spansByBoard(problem: Problem): number[][] {
  const spans: number[][] = problem.stock.map(() => []);
  for (const [at, span] of problem.spans.entries()) spans[span.board]?.push(at);
  for (const list of spans) list.sort((a, b) => (problem.spans[b] as Span).room - (problem.spans[a] as Span).room);
  return spans;
}

const longestRoom = (problem: Problem) => problem.spans.reduce((most, span) => Math.max(most, span.room), 0);

/** A bound on the blank area that the rack can give: every span filled as if the others took nothing away. */
export function mostArea(problem: Problem): number {
  const all = problem.items.map((_, at) => at);
  const filling = new Filling(problem.items, all, longestRoom(problem), 'down');
  const inSpans = problem.spans.reduce(
    (sum, span) => sum + filling.areaIn(span.room, (problem.stock[span.board] as Stock).width),
    0,
  );
  return Math.min(
    inSpans,
    problem.items.reduce((sum, item) => sum + item.area, 0),
  );
}

/** A plan made board by board: each time the board of which the greatest share becomes blanks, filled as well as it can be. */
export function boardByBoard(problem: Problem): Assignment {
  const assignment: Assignment = new Int32Array(problem.items.length).fill(-1);
  const spansOf = spansByBoard(problem);
  const free = new Set(problem.stock.keys());
  let left = problem.items.map((_, at) => at);
  const most = longestRoom(problem);
  while (left.length > 0 && free.size > 0) {
    let filling = new Filling(problem.items, left, most, 'up');
    let choice = -1;
    let bestShare = 0;
    const wanted = left.reduce((sum, at) => sum + (problem.items[at] as Item).area, 0);
    for (const board of free) {
      const { width, area } = problem.stock[board] as Stock;
      const filled = (spansOf[board] as number[]).reduce(
        (sum, span) => sum + filling.areaIn((problem.spans[span] as Span).room, width),
        0,
      );
      const share = Math.min(filled, wanted) / area;
      if (share > bestShare + 1e-12) {
        bestShare = share;
        choice = board;
      }
    }
    if (choice < 0) break;
    free.delete(choice);
    for (const span of spansOf[choice] as number[]) {
      const chosen = filling.itemsIn((problem.spans[span] as Span).room, (problem.stock[choice] as Stock).width);
      if (chosen.length === 0) continue;
      for (const at of chosen) assignment[at] = span;
      left = left.filter((at) => (assignment[at] as number) < 0);
      filling = new Filling(problem.items, left, most, 'up');
    }
  }
  return assignment;
}

/** A plan made blank by blank, longest first, each into the first board in the given order that still holds it. */
export function longestFirst(problem: Problem, order: 'small-boards' | 'large-boards'): Assignment {
  const assignment: Assignment = new Int32Array(problem.items.length).fill(-1);
  const room = problem.spans.map((span) => span.room);
  const sign = order === 'small-boards' ? 1 : -1;
  const queue = [...problem.spans.keys()].sort(
    (a, b) =>
      sign *
        ((problem.stock[(problem.spans[a] as Span).board] as Stock).area -
          (problem.stock[(problem.spans[b] as Span).board] as Stock).area) || a - b,
  );
  const used = new Set<number>();
  for (const [at, item] of problem.items.entries()) {
    const holds = (span: number) =>
      (room[span] as number) >= item.size &&
      (problem.stock[(problem.spans[span] as Span).board] as Stock).width >= item.width;
    const place =
      queue.find((span) => used.has((problem.spans[span] as Span).board) && holds(span)) ?? queue.find(holds);
    if (place === undefined) continue;
    assignment[at] = place;
    room[place] = (room[place] as number) - item.size;
    used.add((problem.spans[place] as Span).board);
  }
  return assignment;
}

/**
 * Try to move all that is cut from one board to a smaller board that is not cut into yet, where it fits span by span.
 *
 * @returns a plan that uses no more board area
 */
export function ontoSmallerBoards(problem: Problem, assignment: Assignment): Assignment {
  const plan = Int32Array.from(assignment);
  const spansOf = spansByBoard(problem);
  const boardOf = (at: number) => ((plan[at] as number) < 0 ? -1 : (problem.spans[plan[at] as number] as Span).board);
  const used = new Set([...plan.keys()].map(boardOf).filter((board) => board >= 0));
  const bySize = [...problem.stock.keys()].sort(
    (a, b) => (problem.stock[a] as Stock).area - (problem.stock[b] as Stock).area,
  );
  for (const board of [...used].sort((a, b) => (problem.stock[b] as Stock).area - (problem.stock[a] as Stock).area)) {
    const held = [...plan.keys()].filter((at) => boardOf(at) === board);
    for (const other of bySize) {
      if ((problem.stock[other] as Stock).area >= (problem.stock[board] as Stock).area) break;
      if (used.has(other)) continue;
      const room = (spansOf[other] as number[]).map((span) => (problem.spans[span] as Span).room);
      const places = held.map((at) => {
        const item = problem.items[at] as Item;
        if ((problem.stock[other] as Stock).width < item.width) return -1;
        const place = room.findIndex((free) => free >= item.size);
        if (place >= 0) room[place] = (room[place] as number) - item.size;
        return place < 0 ? -1 : (spansOf[other]?.[place] as number);
      });
      if (places.includes(-1)) continue;
      for (const [index, at] of held.entries()) plan[at] = places[index] as number;
      used.delete(board);
      used.add(other);
      break;
    }
  }
  return plan;
}
