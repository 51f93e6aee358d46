import {
  type Assignment,
  compareScores,
  greatestDivisor,
  type Item,
  type Problem,
  type Score,
  type Span,
  type Stock,
} from './yield-problem.ts';

/** The best plan found, and whether every other was ruled out. */
export interface Found {
  assignment: Assignment;
  score: Score;
  proved: boolean;
}

/** Cells of the bounding table, over all rows. */
const tableSize = 200_000;

/**
 * A bound on the blank area that a room holds of the items from one on, whatever their width: dynamic programming from the
 * last item back, with sizes rounded down to whole cells where they are no multiples of one.
 */
function suffixHolding({ items, spans, stock }: Problem): (from: number, room: number) => number {
  const mostRoom = spans.reduce((most, span) => Math.max(most, span.room), 0);
  const widest = stock.reduce((most, board) => Math.max(most, board.width), 0);
  const divisor = items.reduce((common, item) => greatestDivisor(common, item.size), 0) || 1;
  const cell = Math.max(divisor, Math.ceil((mostRoom * (items.length + 1)) / tableSize));
  const cells = Math.ceil(mostRoom / cell);
  let row = new Float64Array(cells + 1);
  const rows = [row];
  for (let at = items.length - 1; at >= 0; at -= 1) {
    const { size, width, area } = items[at] as Item;
    const next = Float64Array.from(row);
    const step = Math.floor(size / cell);
    if (width <= widest) {
      for (let to = step; to <= cells; to += 1)
        next[to] = Math.max(next[to] as number, (row[to - step] as number) + area);
    }
    rows.push(next);
    row = next;
  }
  return (from, room) =>
    rows[items.length - from]?.[cell === divisor ? Math.floor(room / cell) : Math.ceil(room / cell)] ?? 0;
}

/**
 * Branch and bound over the items, longest first: each goes into one of the spans that still hold it, or is left out.
 *
 * Spans that cannot be told apart are tried once: untouched boards of one signature, and spans of touched boards with the
 * same room and width. Items of one size go into spans in order. Both only drop plans that are mirror images of others.
 *
 * @param start the plan to beat
 * @param nodes most branches to look at; beyond them the best so far is returned as not proved
 */
export function searchYield(problem: Problem, start: { assignment: Assignment; score: Score }, nodes: number): Found {
  const { items, spans, stock, kerf } = problem;
  const count = items.length;
  const room = spans.map((span) => span.room);
  const inUse = new Int32Array(stock.length);
  const current = new Int32Array(count).fill(-1);
  let best = { assignment: Int32Array.from(start.assignment), score: start.score };
  let budget = nodes;

  // What remains from an item on: area, size, smallest size, and most area for a step of length.
  const restArea = new Float64Array(count + 1);
  const restSize = new Float64Array(count + 1);
  const restSmallest = new Float64Array(count + 1).fill(Number.POSITIVE_INFINITY);
  const restDensity = new Float64Array(count + 1);
  for (let at = count - 1; at >= 0; at -= 1) {
    const item = items[at] as Item;
    restArea[at] = (restArea[at + 1] as number) + item.area;
    restSize[at] = (restSize[at + 1] as number) + item.size;
    restSmallest[at] = Math.min(restSmallest[at + 1] as number, item.size);
    restDensity[at] = Math.max(restDensity[at + 1] as number, item.area / item.size);
  }
  // Numbers that tell apart what may differ: a touched board by its width, an untouched one by its signature.
  const names = new Map<string, number>();
  const numberOf = (name: string) => names.get(name) ?? names.set(name, names.size).size - 1;
  const widthNumber = stock.map((board) => numberOf(`${board.width}`));
  const signatureNumber = stock.map((board) => numberOf(board.signature));
  // Least area of board that a step of room costs, and the least that any board costs.
  const roomOf = new Float64Array(stock.length);
  for (const span of spans) roomOf[span.board] = (roomOf[span.board] as number) + span.room;
  let cheapest = Number.POSITIVE_INFINITY;
  let leastBoard = Number.POSITIVE_INFINITY;
  for (const [at, board] of stock.entries()) {
    if ((roomOf[at] as number) <= 0) continue;
    cheapest = Math.min(cheapest, board.area / (roomOf[at] as number));
    leastBoard = Math.min(leastBoard, board.area);
  }

  const holding = suffixHolding(problem);

  /** Whether nothing below this branch can beat the best plan. */
  function hopeless(at: number, area: number, used: number): boolean {
    const smallest = restSmallest[at] as number;
    let useful = 0;
    let free = 0;
    let usefulTouched = 0;
    let longestTouched = 0;
    let freeTouched = 0;
    let longest = 0;
    for (const [index, span] of spans.entries()) {
      const left = room[index] as number;
      free += left;
      longest = Math.max(longest, left);
      const touched = (inUse[span.board] as number) > 0;
      if (touched) {
        longestTouched = Math.max(longestTouched, left);
        freeTouched += left;
      }
      if (left < smallest) continue;
      useful += holding(at, left);
      if (touched) usefulTouched += left;
    }
    const most = area + Math.min(restArea[at] as number, useful);
    // Areas are whole numbers; the half keeps rounding out of the comparison.
    if (most < best.score.area - 0.5) return true;
    if (most > best.score.area + 0.5) return false;
    // Only a plan of the same blank area can come of it; it must then use less board, or leave a longer offcut.
    const needAll = area + (restArea[at] as number) === best.score.area;
    const lacking = needAll ? (restSize[at] as number) - usefulTouched : 0;
    const least = used + (lacking > 0 ? Math.max(leastBoard, lacking * cheapest) : 0);
    if (least > best.score.stock + 0.5) return true;
    if (least < best.score.stock - 0.5) return false;
    // The same area still has to be cut out of the free room, at the best area for a step of length that is left.
    const needed = needAll ? (restSize[at] as number) : (best.score.area - area - 0.5) / (restDensity[at] || 1);
    const closed = used + leastBoard > best.score.stock;
    const offcut = closed ? Math.min(longestTouched, freeTouched - needed) : Math.min(longest, free - needed);
    return offcut - kerf <= best.score.offcut;
  }

  function leaf(area: number, used: number): void {
    let offcut = 0;
    for (const [index, span] of spans.entries()) {
      if ((inUse[span.board] as number) > 0) offcut = Math.max(offcut, (room[index] as number) - kerf);
    }
    const score = { area, stock: used, offcut };
    if (compareScores(score, best.score) > 0) best = { assignment: Int32Array.from(current), score };
  }

  function branch(at: number, area: number, used: number): void {
    budget -= 1;
    if (budget < 0) return;
    if (at === count) {
      leaf(area, used);
      return;
    }
    if (hopeless(at, area, used)) return;
    const item = items[at] as Item;
    const before = items[at - 1];
    const twin = before?.blank === item.blank;
    const from = twin ? (current[at - 1] as number) : 0;
    // An equal item was left out before: this one is too.
    if (!(twin && from < 0)) {
      const tried = new Set<number>();
      const choices: number[] = [];
      for (let index = from; index < spans.length; index += 1) {
        const span = spans[index] as Span;
        const board = stock[span.board] as Stock;
        const free = room[index] as number;
        if (free < item.size || board.width < item.width) continue;
        const kind = ((inUse[span.board] as number) > 0 ? widthNumber : signatureNumber)[span.board] as number;
        const key = free * names.size + kind;
        if (tried.has(key)) continue;
        tried.add(key);
        choices.push(index);
      }
      // Boards already cut into first, the tightest of them first; then the smallest new board.
      const opens = (index: number) =>
        (inUse[(spans[index] as Span).board] as number) > 0 ? 0 : (stock[(spans[index] as Span).board] as Stock).area;
      choices.sort((a, b) => opens(a) - opens(b) || (room[a] as number) - (room[b] as number));
      for (const index of choices) {
        const board = (spans[index] as Span).board;
        const opened = (inUse[board] as number) === 0 ? (stock[board] as Stock).area : 0;
        room[index] = (room[index] as number) - item.size;
        inUse[board] = (inUse[board] as number) + 1;
        current[at] = index;
        branch(at + 1, area + item.area, used + opened);
        room[index] = (room[index] as number) + item.size;
        inUse[board] = (inUse[board] as number) - 1;
        if (budget < 0) return;
      }
    }
    current[at] = -1;
    branch(at + 1, area, used);
  }

  branch(0, 0, 0);
  return { ...best, proved: budget >= 0 };
}
