import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { type Allowances, piecesWithSpares, type RoughSize, roughSize } from './allowances.ts';
import { boardFeet, foot, inch, tallyBoardFeet } from './lumber.ts';
import type { HardwoodGrade, NominalThickness } from './lumber-data.ts';
import { nominalFor, nominalThicknesses, roughShortfall, type Surfacing } from './nominal.ts';

/** What is to be made, and how the wood is bought. */
export interface OrderRequest {
  /** Finished size: length along the grain, width and thickness, mm. */
  finished: RoughSize;
  /** Good pieces wanted. */
  count: number;
  allowances: Allowances;
  surfacing: Surfacing;
  /** Width of a saw cut, mm. */
  kerf: number;
  /** Boards as the yard sells them, mm; where absent, 8 ft by the rough width rounded up to a whole inch, and no narrower than the yard's. */
  board?: { length: number; width: number };
  /** Where given, the boards are also counted by the clear share that the grade promises. */
  grade?: HardwoodGrade;
  /** Faces that must be clear, which decides the share of the grade that counts. */
  clearFaces?: 'one' | 'both';
  price?: { rate: number; per: 'board-foot' | 'cubic-metre' };
}

/** What to ask the yard for. */
export interface OrderPlan {
  rough: RoughSize;
  pieces: number;
  spares: number;
  nominal: NominalThickness;
  /** Thickness that the nominal thickness leaves over what is needed, mm. */
  spareThickness: number;
  /** Whether a rough board 1/16 in under its nominal thickness would be too thin. */
  thinIfShort: boolean;
  board: { length: number; width: number; assumed: boolean };
  /** Pieces along and across one board. */
  along: number;
  across: number;
  boards: number;
  /** Boards by layout alone and, where a grade was given, by its clear share. */
  boardsByLayout: number;
  boardsByGrade: number | null;
  /** Board feet of the pieces themselves, with fractions. */
  boardFeetPieces: number;
  /** Board feet of the boards, with fractions. */
  boardFeet: number;
  /** Board feet of the boards as a grader tallies them, through surface measure. */
  boardFeetTally: number;
  /** mL (cm³), at nominal thickness. */
  volume: number;
  /** Share of the boards that becomes finished pieces, by volume, spares not counted as waste. */
  used: number;
  /**
   * In the currency of the rate: by fractional board feet, and as the tally has it; by true volume alone where the rate is for a
   * cubic metre, since a tally counts thin stock as an inch thick and is no volume.
   */
  cost: { sum: number; tally?: number } | null;
}

/** Boards are sold from 4 ft, in whole feet; 8 ft is the length that every yard has. */
const usualLength = 8 * foot;

/**
 * No yard counts on boards narrower than this, mm: the widest grade takes none under 3 in, and most boards of a pack are wider. Common
 * practice. Narrow parts are ripped from it side by side.
 */
const leastBoardWidth = 4 * inch;

/** A board is so near to a size that the grade takes it for that, mm. */
const near = 0.5;

function fitting(space: number, piece: number, kerf: number): number {
  return Math.floor((space + kerf) / (piece + kerf) + 1e-9);
}

/**
 * Work out what to order.
 *
 * @param request sizes in mm
 * @returns the order, or why there is none: a thickness beyond the trade's, or a board too small for one piece
 */
export function stockOrder(request: OrderRequest): Outcome<OrderPlan> {
  const { finished, count, allowances, surfacing, kerf } = request;
  const pieces = piecesWithSpares(count, allowances.spare);
  const rough = roughSize(finished, allowances);
  const nominal = nominalFor(rough.thickness, surfacing);
  if (!nominal) {
    const thickest = nominalThicknesses.at(-1) as NominalThickness;
    return refuse(
      'thickness',
      `${amount(rough.thickness, 'mm')} before planing is more than the thickest lumber of the trade leaves, ${thickest.name} (${amount(surfacing === 'rough' ? thickest.rough : thickest.s2s, 'mm')})`,
      'Make the piece thinner, or glue it up from two layers.',
    );
  }
  const { grade } = request;
  const board = request.board ?? {
    length: Math.max(usualLength, Math.ceil(rough.length / foot - 1e-9) * foot, grade?.leastLength ?? 0),
    width: Math.max(leastBoardWidth, Math.ceil(rough.width / inch - 1e-9) * inch, grade?.leastWidth ?? 0),
  };
  if (grade) {
    const narrow = board.width < grade.leastWidth - near;
    if (narrow || board.length < grade.leastLength - near) {
      return refuse(
        narrow ? 'boardWidth' : 'boardLength',
        `${amount(narrow ? board.width : board.length, 'mm', 4)} ${narrow ? 'wide' : 'long'} is less than ${grade.name} has: its boards are at least ${amount(grade.leastWidth, 'mm', 4)} wide and ${amount(grade.leastLength, 'mm', 4)} long`,
        'Give a larger board, or ask for another grade.',
      );
    }
  }
  const along = fitting(board.length, rough.length, kerf);
  const across = fitting(board.width, rough.width, kerf);
  if (along < 1 || across < 1) {
    const long = along < 1;
    return refuse(
      long ? 'boardLength' : 'boardWidth',
      `A board ${amount(long ? board.length : board.width, 'mm', 4)} ${long ? 'long' : 'wide'} does not hold one piece, which is ${amount(long ? rough.length : rough.width, 'mm', 4)} ${long ? 'long' : 'wide'} before it is worked`,
      long
        ? 'Give a longer board, or less extra length at the ends of a piece.'
        : 'Give a wider board, or glue the piece up from two.',
    );
  }
  const boardsByLayout = Math.ceil(pieces / (along * across));
  const share = request.grade
    ? request.clearFaces === 'one'
      ? request.grade.clearBetter
      : request.grade.clearPoorer
    : null;
  const boardsByGrade =
    share === null
      ? null
      : Math.ceil((pieces * rough.length * rough.width) / (board.length * board.width * share) - 1e-9);
  const boards = Math.max(boardsByLayout, boardsByGrade ?? 0);
  const thickness = nominal.rough;
  const fractional = boards * boardFeet(board.length, board.width, thickness);
  const tally = tallyBoardFeet(
    Array.from({ length: boards }, () => board),
    thickness,
  );
  const cubicMillimetres = boards * board.length * board.width * thickness;
  const volume = cubicMillimetres / 1000;
  const rate = request.price?.rate;
  return answer({
    rough,
    pieces,
    spares: pieces - count,
    nominal,
    spareThickness: (surfacing === 'rough' ? nominal.rough : nominal.s2s) - rough.thickness,
    thinIfShort: surfacing === 'rough' && nominal.rough - roughShortfall < rough.thickness - 1e-6,
    board: { ...board, assumed: request.board === undefined },
    along,
    across,
    boards,
    boardsByLayout,
    boardsByGrade,
    boardFeetPieces: pieces * boardFeet(rough.length, rough.width, thickness),
    boardFeet: fractional,
    boardFeetTally: tally,
    volume,
    used: (pieces * finished.length * finished.width * finished.thickness) / cubicMillimetres,
    cost:
      rate === undefined
        ? null
        : request.price?.per === 'cubic-metre'
          ? { sum: (rate * volume) / 1e6 }
          : { sum: rate * fractional, tally: rate * tally },
  });
}
