import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { boardByBoard, longestFirst, mostArea, ontoSmallerBoards } from './yield-fill.ts';
import {
  type Assignment,
  compareScores,
  type Item,
  lengthTaken,
  millimetres,
  type Problem,
  type Span,
  type Stock,
  scoreOf,
  steps,
  type YieldRequest,
  yieldProblem,
} from './yield-problem.ts';
import { searchYield } from './yield-search.ts';

export type { YieldBlank, YieldBoard, YieldRequest } from './yield-problem.ts';

/** A blank on a board, mm from the end of the board. */
export interface Cut {
  /** Which of the blanks asked for. */
  blank: number;
  from: number;
  to: number;
}

/** A board as it is cut up, mm. */
export interface CutBoard {
  /** Which of the boards given. */
  board: number;
  cuts: readonly Cut[];
  /** Clear pieces that remain, longest first. */
  offcuts: readonly { from: number; to: number }[];
}

/** Which blanks come from where. */
export interface YieldPlan {
  boards: readonly CutBoard[];
  /** Blanks of each size that are cut, in the order asked for. */
  cut: readonly number[];
  /** Blanks of each size that the rack does not give. */
  missing: readonly number[];
  /** Face area of the blanks cut and of the boards cut into, mm². */
  blankArea: number;
  boardArea: number;
  /** Longest clear piece left of a board cut into, mm. */
  longestOffcut: number;
  /** Whether no plan gives more blank area. */
  mostYield: boolean;
  /** Whether every other plan was ruled out: none gives as much from less board, or leaves a longer offcut. */
  proved: boolean;
}

/** Sizes that the search takes; beyond them a rack is planned in parts. */
export const yieldLimits = { boards: 400, blanks: 400, defects: 60, longest: 20_000 };

/** Steps of the search, each over all spans: about a quarter of a second at most. */
const work = 8_000_000;
const nodesFor = (problem: Problem) => Math.max(500, Math.min(200_000, Math.floor(work / (problem.spans.length + 20))));

function refusal(request: YieldRequest): ReturnType<typeof refuse> | undefined {
  const { boards, blanks, kerf, endTrim, snipe } = request;
  const count = blanks.reduce((sum, blank) => sum + blank.count, 0);
  if (boards.length === 0 || boards.length > yieldLimits.boards) {
    return refuse(
      'boards',
      `${boards.length} boards were read; a rack has 1 to ${yieldLimits.boards}`,
      'Plan a larger rack in parts.',
    );
  }
  if (blanks.some((blank) => !Number.isInteger(blank.count) || blank.count < 1)) {
    return refuse(
      'blanks',
      'A count of blanks is not a whole number from 1 upwards',
      'Give how many of each are wanted.',
    );
  }
  if (count === 0 || count > yieldLimits.blanks) {
    return refuse(
      'blanks',
      `${count} blanks are asked for; the plan takes 1 to ${yieldLimits.blanks}`,
      'Plan a larger batch in parts.',
    );
  }
  const size = (value: number, least: number) => value >= least && value <= yieldLimits.longest;
  for (const [at, board] of boards.entries()) {
    const spans = board.defects.every(({ from, to }) => size(from, 0) && size(to, 0));
    if (!size(board.length, 1) || !size(board.width, 1) || !spans || board.defects.length > yieldLimits.defects) {
      return refuse(
        'boards',
        `Board ${at + 1} has a size or a defect outside 1 to ${yieldLimits.longest} mm, or more than ${yieldLimits.defects} defects`,
        'Correct it.',
      );
    }
  }
  const bad = blanks.findIndex((blank) => !size(blank.length, 1) || !size(blank.width, 1));
  if (bad >= 0) {
    return refuse(
      'blanks',
      `Blank ${bad + 1} is not between 1 and ${yieldLimits.longest} mm long and wide`,
      'Correct it.',
    );
  }
  for (const [field, value] of [
    ['kerf', kerf],
    ['endTrim', endTrim],
    ['snipe', snipe],
  ] as const) {
    if (!(value >= 0 && value <= 1000)) return refuse(field, `${value} mm is not between 0 and 1000 mm`, 'Correct it.');
  }
  return undefined;
}

/** The plan of one board as a problem of its own, with the items that it holds. */
function alone(problem: Problem, board: number, held: readonly number[]): { part: Problem; spans: number[] } {
  const spans = [...problem.spans.keys()].filter((at) => (problem.spans[at] as Span).board === board);
  return {
    spans,
    part: {
      kerf: problem.kerf,
      items: held.map((at) => problem.items[at] as Item),
      stock: [problem.stock[board] as Stock],
      spans: spans.map((at) => ({ ...(problem.spans[at] as Span), board: 0 })),
    },
  };
}

/** Lay the blanks of each board anew, so that the board keeps the longest offcut that it can. */
function gatherOffcuts(problem: Problem, assignment: Assignment): Assignment {
  const plan = Int32Array.from(assignment);
  const heldBy = new Map<number, number[]>();
  for (const [at, span] of plan.entries()) {
    if (span < 0) continue;
    const { board } = problem.spans[span] as Span;
    heldBy.set(board, [...(heldBy.get(board) ?? []), at]);
  }
  for (const [board, held] of heldBy) {
    const { part, spans } = alone(problem, board, held);
    if (spans.length < 2) continue;
    const start = Int32Array.from(held.map((at) => spans.indexOf(plan[at] as number)));
    const found = searchYield(part, { assignment: start, score: scoreOf(part, start) }, 5000);
    for (const [index, at] of held.entries()) plan[at] = spans[found.assignment[index] as number] as number;
  }
  return plan;
}

function solve(problem: Problem): { assignment: Assignment; mostYield: boolean; proved: boolean } {
  const quick = [boardByBoard(problem), longestFirst(problem, 'small-boards'), longestFirst(problem, 'large-boards')];
  const plans = [...quick, ...quick.map((plan) => ontoSmallerBoards(problem, plan))].map((assignment) => ({
    assignment,
    score: scoreOf(problem, assignment),
  }));
  const start = plans.reduce((best, plan) => (compareScores(plan.score, best.score) > 0 ? plan : best));
  const found = searchYield(problem, start, nodesFor(problem));
  const mostYield = found.proved || found.score.area >= mostArea(problem) - 0.5;
  const assignment = found.proved
    ? found.assignment
    : gatherOffcuts(problem, ontoSmallerBoards(problem, found.assignment));
  return { assignment, mostYield, proved: found.proved };
}

/** Lay the blanks of a plan along their spans, each followed by a saw cut. */
function laidOut(request: YieldRequest, problem: Problem, assignment: Assignment): CutBoard[] {
  const kerf = steps(request.kerf);
  const bySpan = new Map<number, number[]>();
  for (const [at, span] of assignment.entries()) if (span >= 0) bySpan.set(span, [...(bySpan.get(span) ?? []), at]);
  const touched = new Set([...bySpan.keys()].map((span) => (problem.spans[span] as Span).board));
  const boards = new Map<number, { cuts: Cut[]; offcuts: { from: number; to: number }[] }>();
  for (const [at, span] of problem.spans.entries()) {
    if (!touched.has(span.board)) continue;
    const board = boards.get(span.board) ?? { cuts: [], offcuts: [] };
    boards.set(span.board, board);
    let from = span.from;
    for (const index of bySpan.get(at) ?? []) {
      const item = problem.items[index] as Item;
      board.cuts.push({ blank: item.blank, from: millimetres(from), to: millimetres(from + item.size - kerf) });
      from += item.size;
    }
    const end = span.from + span.room - kerf;
    if (end > from) board.offcuts.push({ from: millimetres(from), to: millimetres(end) });
  }
  return [...boards]
    .sort(([a], [b]) => a - b)
    .map(([board, { cuts, offcuts }]) => ({
      board,
      cuts,
      offcuts: offcuts.sort((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from),
    }));
}

/**
 * Say which blanks come from which boards, cut along the board, every blank across its full width.
 *
 * The plan gives the most blank area that the rack holds, then cuts into the least area of board, then leaves the longest
 * single offcut. Racks of a few boards are solved to the end and said to be; on larger racks each board is filled exactly, one
 * after another, and the search stops after a set number of steps, the same on every machine, so that the answer never varies.
 *
 * @param request sizes in mm
 * @returns the plan, with what was proved of it; refusals name the boards or the blanks
 */
export function boardYield(request: YieldRequest): Outcome<YieldPlan> {
  const wrong = refusal(request);
  if (wrong) return wrong;
  const problem = yieldProblem(request);
  const { assignment, mostYield, proved } = solve(problem);
  const score = scoreOf(problem, assignment);
  const cut = request.blanks.map(() => 0);
  for (const [at, span] of assignment.entries()) {
    const { blank } = problem.items[at] as Item;
    if (span >= 0) cut[blank] = (cut[blank] as number) + 1;
  }
  return answer({
    boards: laidOut(request, problem, assignment),
    cut,
    missing: request.blanks.map((blank, at) => blank.count - (cut[at] as number)),
    blankArea: millimetres(millimetres(score.area)),
    boardArea: millimetres(millimetres(score.stock)),
    longestOffcut: millimetres(Math.max(0, score.offcut)),
    mostYield,
    proved,
  });
}

export { lengthTaken };
