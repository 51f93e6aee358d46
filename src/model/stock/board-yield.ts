import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import {
  type CutFirst,
  type Kind,
  lengthTaken,
  millimetres,
  type Plate,
  type Problem,
  type Rectangle,
  stepsPerMillimetre,
  turned,
  type YieldRequest,
  yieldProblem,
} from './yield-plate.ts';
import { bounds, planRack, type RackPlan } from './yield-rack.ts';
import { sectionsOf, type Way } from './yield-sections.ts';

export type { CutFirst, YieldBlank, YieldBoard, YieldDefect, YieldRequest } from './yield-plate.ts';

/** A rectangle of a board, mm: along it from its end, and across it from the edge that is measured from. */
export interface Place {
  from: number;
  to: number;
  low: number;
  high: number;
}

/** A blank on a board. */
export interface Cut extends Place {
  /** Which of the blanks asked for. */
  blank: number;
  /** Which first cut it lies in: sections or strips counted from 1. */
  section: number;
}

/** A board as it is cut up. */
export interface CutBoard {
  /** Which of the boards given. */
  board: number;
  cuts: readonly Cut[];
  /** Clear rectangles that remain and are worth keeping, longest first. */
  offcuts: readonly Place[];
}

/** Which blanks come from where. */
export interface YieldPlan {
  first: CutFirst;
  boards: readonly CutBoard[];
  /** Blanks of each size that are cut, in the order asked for. */
  cut: readonly number[];
  /** Blanks of each size that the plan does not give. */
  missing: readonly number[];
  /** Face area of the blanks cut and of the boards cut into, mm². */
  blankArea: number;
  boardArea: number;
  /** Area of board that any plan must cut into for as many blanks, mm²: the gap to `boardArea` bounds what could be saved. */
  leastBoardArea: number;
  /** Most blank area that any plan could give, mm². */
  mostBlankArea: number;
  /** Longest clear piece left of a board cut into, mm. */
  longestOffcut: number;
  /** Whether no plan of this kind gives more blank area. */
  mostYield: boolean;
  /** Whether every other plan of this kind was ruled out: none gives as much from less board. */
  proved: boolean;
}

/** Sizes that the search takes; beyond them a rack is planned in parts. */
export const yieldLimits = { boards: 400, blanks: 400, defects: 60, longest: 20_000 };

/** A piece left over is listed, and kept, from this size on, mm. */
export const worthKeeping = { length: 100, width: 50 };

/** A defect may be measured a hair beyond the edge that it touches, mm. */
const onEdge = 1;

function refusal(request: YieldRequest): ReturnType<typeof refuse> | undefined {
  const { boards, blanks, kerf, endTrim, edgeTrim, snipe } = request;
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
    const spans = board.defects.every(({ from, to, acrossFrom = 0, acrossTo = 0 }) =>
      [from, to, acrossFrom, acrossTo].every((place) => size(place, 0)),
    );
    if (!size(board.length, 1) || !size(board.width, 1) || !spans || board.defects.length > yieldLimits.defects) {
      return refuse(
        'boards',
        `Board ${at + 1} has a size or a defect outside 1 to ${yieldLimits.longest} mm, or more than ${yieldLimits.defects} defects`,
        'Correct it.',
      );
    }
    const off = board.defects.find(
      ({ from, to, acrossFrom = 0, acrossTo = 0 }) =>
        Math.max(from, to) > board.length + onEdge || Math.max(acrossFrom, acrossTo) > board.width + onEdge,
    );
    if (off) {
      const along = Math.max(off.from, off.to) > board.length + onEdge;
      return refuse(
        'boards',
        `Board ${at + 1}: ${off.kind ?? 'a defect'} reaches to ${amount(along ? Math.max(off.from, off.to) : Math.max(off.acrossFrom ?? 0, off.acrossTo ?? 0), 'mm', 5)}, and the board is ${amount(along ? board.length : board.width, 'mm', 5)} ${along ? 'long' : 'wide'}`,
        'Measure it from the end and edge that the board is measured from, in the same unit.',
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
    ['edgeTrim', edgeTrim],
    ['snipe', snipe],
  ] as const) {
    if (!(value >= 0 && value <= 1000)) return refuse(field, `${value} mm is not between 0 and 1000 mm`, 'Correct it.');
  }
  return undefined;
}

/** What two places leave of a length: the stretches between faults and pieces, at least one saw cut away from a piece. */
function stretches(from: number, to: number, taken: readonly { from: number; to: number }[]): [number, number][] {
  const left: [number, number][] = [];
  let at = from;
  for (const each of [...taken].sort((a, b) => a.from - b.from)) {
    if (each.from > at) left.push([at, each.from]);
    at = Math.max(at, each.to);
  }
  if (to > at) left.push([at, to]);
  return left;
}

/** What remains of a plate that is worth keeping: whole between its sections, and beside the pieces within them. */
function offcutsOf(plate: Plate, kerf: number, way: Way): Rectangle[] {
  const { from, to, low, high } = plate.usable;
  const sections = sectionsOf(way);
  const apart = (place: { from: number; to: number }) => ({ from: place.from - kerf, to: place.to + kerf });
  const crossing = (a: number, b: number) => plate.faults.filter((fault) => fault.from < b && fault.to > a);
  const whole = stretches(from, to, [...sections.map(apart), ...plate.faults]).map(([a, b]) => ({
    from: a,
    to: b,
    low,
    high,
  }));
  const beside = sections.flatMap((section) =>
    stretches(low, high, [
      ...section.pieces.map(({ place }) => apart({ from: place.low, to: place.high })),
      ...crossing(section.from, section.to).map((fault) => ({ from: fault.low, to: fault.high })),
    ]).map(([a, b]) => ({ from: section.from, to: section.to, low: a, high: b })),
  );
  return [...whole, ...beside];
}

const inMillimetres = ({ from, to, low, high }: Rectangle): Place => ({
  from: millimetres(from),
  to: millimetres(to),
  low: millimetres(low),
  high: millimetres(high),
});

/** A way to cut a plate, without the pieces of which there are enough: they stay in the board, whole. */
function wantedOf(way: Way, wanted: number[]): Way {
  if (!way.first) return way;
  const pieces = way.first.pieces.filter(({ kind }) => {
    wanted[kind] = (wanted[kind] as number) - 1;
    return (wanted[kind] as number) >= 0;
  });
  const rest = way.rest ? wantedOf(way.rest, wanted) : undefined;
  if (pieces.length === 0) return rest ?? { counts: way.counts, area: 0, offcut: 0 };
  return { ...way, first: { ...way.first, pieces }, ...(rest ? { rest } : {}) };
}

/** Lay a plan out on its boards. More of a blank than is wanted is left in the board. */
function laidOut({ first }: YieldRequest, problem: Problem, plan: RackPlan): CutBoard[] {
  const turn = first === 'rip' ? turned : (same: Rectangle) => same;
  const wanted = problem.kinds.map(({ count }) => count);
  return [...plan.ways]
    .sort(([a], [b]) => a - b)
    .map(([board, full]) => {
      const way = wantedOf(full, wanted);
      const cuts = sectionsOf(way).flatMap(({ pieces }, section) =>
        pieces.map(
          ({ kind, place }): Cut => ({
            blank: (problem.kinds[kind] as Kind).blank,
            section: section + 1,
            ...inMillimetres(turn(place)),
          }),
        ),
      );
      const offcuts = offcutsOf(problem.plates[board] as Plate, problem.kerf, way)
        .map((place) => inMillimetres(turn(place)))
        .filter((place) => place.to - place.from >= worthKeeping.length && place.high - place.low >= worthKeeping.width)
        .sort((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from || a.low - b.low);
      return { board, cuts, offcuts };
    })
    .filter(({ cuts }) => cuts.length > 0);
}

/**
 * Say which blanks come from which boards, cut by a saw that goes right through: boards are crosscut into sections which are ripped,
 * or ripped into strips which are crosscut, and a piece shorter or narrower than its section is trimmed. Blanks keep their length
 * along the grain.
 *
 * The plan gives the most blank area that the rack holds, then cuts into the least area of board. Racks of a few boards and sizes
 * are solved over all such plans and said to be; larger ones are planned board by board, with a bound beside the plan. The work is
 * counted in steps, the same on every machine, so that the answer never varies.
 *
 * @param request sizes in mm
 * @returns the plan, with what was proved of it; refusals name the boards or the blanks
 */
export function boardYield(request: YieldRequest): Outcome<YieldPlan> {
  const wrong = refusal(request);
  if (wrong) return wrong;
  const problem = yieldProblem(request);
  const plan = planRack(problem);
  const boards = laidOut(request, problem, plan);
  const cut = request.blanks.map((_, at) => plan.counts[at] as number);
  const squared = stepsPerMillimetre ** 2;
  const blankArea = problem.kinds.reduce((sum, { area }, at) => sum + area * (plan.counts[at] as number), 0);
  const boardArea = boards.reduce((sum, { board }) => sum + (problem.plates[board] as Plate).area, 0);
  const { mostArea, leastStock } = bounds(problem, blankArea);
  const missing = request.blanks.map((blank, at) => blank.count - (cut[at] as number));
  return answer({
    first: request.first,
    boards,
    cut,
    missing,
    blankArea: blankArea / squared,
    boardArea: boardArea / squared,
    leastBoardArea: (plan.proved ? boardArea : leastStock) / squared,
    mostBlankArea: (plan.proved ? blankArea : mostArea) / squared,
    longestOffcut: Math.max(0, ...boards.map(({ offcuts }) => (offcuts[0] ? offcuts[0].to - offcuts[0].from : 0))),
    mostYield: plan.proved || missing.every((count) => count === 0) || blankArea >= mostArea,
    proved: plan.proved,
  });
}

export { lengthTaken };
