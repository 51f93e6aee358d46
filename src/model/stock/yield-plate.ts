/** A board on the rack, mm. */
export interface YieldBoard {
  name: string;
  length: number;
  width: number;
  /** Places that no blank may hold: knots, checks, nail lines, sapwood. */
  defects: readonly YieldDefect[];
}

/** A place to cut out, mm from one end and, where it does not run right across, from the edge that the reader measures from. */
export interface YieldDefect {
  from: number;
  to: number;
  acrossFrom?: number;
  acrossTo?: number;
  kind?: string;
}

/** Blanks of one size, mm; the length runs along the grain. */
export interface YieldBlank {
  name: string;
  length: number;
  width: number;
  count: number;
}

/** Which cut a shop makes first: boards crosscut into sections that are then ripped, or ripped into strips that are then crosscut. */
export type CutFirst = 'crosscut' | 'rip';

/** What is to be cut from what. */
export interface YieldRequest {
  boards: readonly YieldBoard[];
  blanks: readonly YieldBlank[];
  /** Width of a saw cut, mm. */
  kerf: number;
  /** Cut off each end of every board, mm. */
  endTrim: number;
  /** Taken off each edge of every board, mm. */
  edgeTrim: number;
  /** Length that the planer spoils at an end, mm. */
  snipe: number;
  /** Whether boards are planed before they are cut up, which spoils their ends, or each blank after, which spoils its own. */
  planed: 'boards' | 'blanks';
  first: CutFirst;
}

/** A rectangle in steps: along the axis that is cut first, and across it. */
export interface Rectangle {
  from: number;
  to: number;
  low: number;
  high: number;
}

/** A board as the search sees it: the usable rectangle and what must not be used of it, the first cut across `from` to `to`. */
export interface Plate {
  usable: Rectangle;
  faults: readonly Rectangle[];
  /** Whole face, steps². */
  area: number;
  /** Plates of one signature are interchangeable. */
  signature: string;
}

/** Blanks of one size as the search sees them. */
export interface Kind {
  /** Which of the sizes asked for. */
  blank: number;
  /** Along the axis of `Rectangle.from`, and across it, steps. */
  long: number;
  wide: number;
  count: number;
  /** Face area of the blank itself, steps². */
  area: number;
}

/** What is searched: whole numbers throughout, so that sums are exact. */
export interface Problem {
  kerf: number;
  plates: readonly Plate[];
  kinds: readonly Kind[];
}

/**
 * Steps in a millimetre. One step, 0.003125 mm, goes a whole number of times into a tenth of a millimetre (32) and into a
 * sixty-fourth of an inch (127), so that sizes in either are exact.
 */
export const stepsPerMillimetre = 320;

export const steps = (millimetres: number): number => Math.round(millimetres * stepsPerMillimetre);
export const millimetres = (count: number): number => count / stepsPerMillimetre;

/** Length that a blank takes of a board, mm: its own and, where blanks are planed by themselves, the ends that are spoiled. */
export function lengthTaken(blank: YieldBlank, request: Pick<YieldRequest, 'planed' | 'snipe'>): number {
  return blank.length + (request.planed === 'blanks' ? 2 * request.snipe : 0);
}

/** The rectangle with its axes exchanged. */
export const turned = ({ from, to, low, high }: Rectangle): Rectangle => ({ from: low, to: high, low: from, high: to });

function plateOf(board: YieldBoard, request: YieldRequest): Plate {
  const end = steps(Math.max(request.endTrim, request.planed === 'boards' ? request.snipe : 0));
  const edge = steps(request.edgeTrim);
  const [long, wide] = [steps(board.length), steps(board.width)];
  const turn = request.first === 'rip' ? turned : (same: Rectangle) => same;
  const faults = board.defects.map(({ from, to, acrossFrom = 0, acrossTo = board.width }) => ({
    from: steps(Math.min(from, to)),
    to: steps(Math.max(from, to)),
    low: steps(Math.min(acrossFrom, acrossTo)),
    high: steps(Math.max(acrossFrom, acrossTo)),
  }));
  return {
    usable: turn({ from: end, to: long - end, low: edge, high: wide - edge }),
    faults: faults.map(turn),
    area: long * wide,
    signature: JSON.stringify([long, wide, faults]),
  };
}

/** Put a request in whole numbers, along the axis that is cut first. */
export function yieldProblem(request: YieldRequest): Problem {
  return {
    kerf: steps(request.kerf),
    plates: request.boards.map((board) => plateOf(board, request)),
    kinds: request.blanks.map((blank, index): Kind => {
      const [long, wide] = [steps(lengthTaken(blank, request)), steps(blank.width)];
      return {
        blank: index,
        long: request.first === 'rip' ? wide : long,
        wide: request.first === 'rip' ? long : wide,
        count: blank.count,
        area: steps(blank.length) * wide,
      };
    }),
  };
}
