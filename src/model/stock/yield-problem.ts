/** A board on the rack, mm; defects run right across it. */
export interface YieldBoard {
  name: string;
  length: number;
  width: number;
  /** Spans along the board that no blank may hold: knots, checks, nail lines, sapwood. */
  defects: readonly { from: number; to: number; kind?: string }[];
}

/** Blanks of one size, mm. */
export interface YieldBlank {
  name: string;
  length: number;
  width: number;
  count: number;
}

/** What is to be cut from what. */
export interface YieldRequest {
  boards: readonly YieldBoard[];
  blanks: readonly YieldBlank[];
  /** Width of a saw cut, mm. */
  kerf: number;
  /** Cut off each end of every board, mm. */
  endTrim: number;
  /** Length that the planer spoils at an end, mm. */
  snipe: number;
  /** Whether boards are planed before they are cut up, which spoils their ends, or each blank after, which spoils its own. */
  planed: 'boards' | 'blanks';
}

/** One blank to be cut; lengths in steps. */
export interface Item {
  /** Which of the sizes asked for. */
  blank: number;
  /** Length along the board with the saw cut that parts it from the next. */
  size: number;
  width: number;
  area: number;
}

/** A clear span of a board; it holds blanks whose sizes add up to no more than `room`. */
export interface Span {
  board: number;
  /** Where it starts, steps. */
  from: number;
  /** Its length and one saw cut more, steps. */
  room: number;
}

/** A board as the search sees it. */
export interface Stock {
  width: number;
  area: number;
  /** Boards of one signature are interchangeable. */
  signature: string;
}

/** What is searched: whole numbers throughout, so that sums are exact. */
export interface Problem {
  kerf: number;
  /** Longest first; blanks of one size stand together. */
  items: readonly Item[];
  stock: readonly Stock[];
  spans: readonly Span[];
}

/**
 * Steps in a millimetre. One step, 0.003125 mm, goes a whole number of times into a tenth of a millimetre (32) and into a
 * sixty-fourth of an inch (127), so that sizes in either are exact.
 */
export const stepsPerMillimetre = 320;

export const steps = (millimetres: number): number => Math.round(millimetres * stepsPerMillimetre);
export const millimetres = (count: number): number => count / stepsPerMillimetre;

/** The greatest whole number that divides both. */
export function greatestDivisor(a: number, b: number): number {
  let [high, low] = [a, b];
  while (low > 0) [high, low] = [low, high % low];
  return high;
}

/** Clear spans of a board between its trimmed ends and its defects, in steps. */
function clearSpans(board: YieldBoard, request: YieldRequest): { from: number; to: number }[] {
  const kerf = steps(request.kerf);
  const end = steps(Math.max(request.endTrim, request.planed === 'boards' ? request.snipe : 0));
  const start = end;
  const stop = steps(board.length) - end;
  const defects = board.defects
    .map(({ from, to }) => {
      const [low, high] = [steps(Math.min(from, to)), steps(Math.max(from, to))];
      // A fault thinner than the saw is cut out by the saw, which takes half of its own width on either side.
      const widen = Math.max(0, kerf - (high - low)) / 2;
      return { from: Math.floor(low - widen), to: Math.ceil(high + widen) };
    })
    .filter(({ from, to }) => to > start && from < stop)
    .sort((a, b) => a.from - b.from);
  const clear: { from: number; to: number }[] = [];
  let at = start;
  for (const defect of defects) {
    if (defect.from > at) clear.push({ from: at, to: defect.from });
    at = Math.max(at, defect.to);
  }
  if (stop > at) clear.push({ from: at, to: stop });
  return clear;
}

/** Length that a blank takes of a board, mm: its own and, where blanks are planed by themselves, the ends that are spoiled. */
export function lengthTaken(blank: YieldBlank, request: YieldRequest): number {
  return blank.length + (request.planed === 'blanks' ? 2 * request.snipe : 0);
}

/** Put a request in whole numbers. */
export function yieldProblem(request: YieldRequest): Problem {
  const kerf = steps(request.kerf);
  const spans: Span[] = [];
  const stock = request.boards.map((board, index): Stock => {
    const clear = clearSpans(board, request);
    for (const { from, to } of clear) spans.push({ board: index, from, room: to - from + kerf });
    const width = steps(board.width);
    const rooms = clear.map(({ from, to }) => to - from);
    return {
      width,
      area: width * steps(board.length),
      signature: `${width}:${steps(board.length)}:${rooms.join(',')}`,
    };
  });
  const items = request.blanks
    .flatMap((blank, index): Item[] => {
      const width = steps(blank.width);
      const size = steps(lengthTaken(blank, request)) + kerf;
      return Array.from({ length: blank.count }, () => ({
        blank: index,
        size,
        width,
        area: width * steps(blank.length),
      }));
    })
    .sort((a, b) => b.size - a.size || b.width - a.width || a.blank - b.blank);
  return { kerf, items, stock, spans };
}

/** The span of each item, or −1 where it is not cut. */
export type Assignment = Int32Array;

/** How good a plan is: most blank area, then least area of boards cut into, then the longest single offcut. */
export interface Score {
  area: number;
  stock: number;
  offcut: number;
}

/** Above 0 where `a` is the better, below 0 where `b` is. */
export function compareScores(a: Score, b: Score): number {
  return a.area - b.area || b.stock - a.stock || a.offcut - b.offcut;
}

/** Score a plan. */
export function scoreOf(problem: Problem, assignment: Assignment): Score {
  const left = problem.spans.map((span) => span.room);
  const touched = new Set<number>();
  let area = 0;
  for (const [at, span] of assignment.entries()) {
    if (span < 0) continue;
    const item = problem.items[at] as Item;
    left[span] = (left[span] as number) - item.size;
    touched.add((problem.spans[span] as Span).board);
    area += item.area;
  }
  let stock = 0;
  for (const board of touched) stock += (problem.stock[board] as Stock).area;
  let offcut = 0;
  for (const [at, span] of problem.spans.entries()) {
    if (touched.has(span.board)) offcut = Math.max(offcut, (left[at] as number) - problem.kerf);
  }
  return { area, stock, offcut };
}
