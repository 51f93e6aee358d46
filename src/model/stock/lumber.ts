import { equation } from '../evidence/index.ts';

/** mm in an inch and in a foot, exact by definition. */
export const inch = 25.4;

/** mm in a foot, exact by definition. */
export const foot = 12 * inch;
/** mm³ in a board foot: 1 ft × 1 ft × 1 in. */
export const boardFoot = foot * foot * inch;

/** Decimal noise of a conversion from millimetres, in inches or feet: nothing shorter is a difference between boards. */
const noise = 1e-6;

/** Round to the nearest whole number, a half upwards. */
function nearestWhole(value: number): number {
  return Math.floor(value + 0.5 + noise);
}

/** Board feet of a piece, with fractions. */
export const boardFeet = equation(
  {
    id: 'board-foot',
    title: 'Board feet of a piece, with fractions',
    tex: '\\mathrm{BF} = \\frac{W \\, L \\, T}{12}',
    symbols: [
      { tex: 'W', meaning: 'width', unit: 'in' },
      { tex: 'L', meaning: 'length', unit: 'ft' },
      { tex: 'T', meaning: 'nominal thickness; under 1 in counts as 1 in', unit: 'in' },
    ],
    validity: 'Any piece of hardwood lumber. 423.776 board feet are a cubic metre.',
    basis: 'published',
    citation: { source: 'ahec-grading-guide', locator: 'Measurement', seen: 'source-text' },
    remarks:
      'Shops reckon every board so, fractions and all. A grader’s tally rounds surface measure first; the two differ, and an answer must say which it is.',
  },
  /**
   * Board feet of a piece, not rounded.
   *
   * @param length mm
   * @param width mm
   * @param thickness nominal thickness, mm; counted as 1 in where it is less
   */
  (length: number, width: number, thickness: number): number =>
    (length * width * Math.max(thickness, inch)) / boardFoot,
);

/** Surface measure of a board, whole square feet as the grading rules count them. */
export const surfaceMeasure = equation(
  {
    id: 'surface-measure',
    title: 'Surface measure of a board',
    tex: '\\mathrm{SM} = \\left[ \\frac{W \\lfloor L \\rfloor}{12} \\right]',
    symbols: [
      { tex: 'W', meaning: 'width, with its fractions', unit: 'in' },
      { tex: '\\lfloor L \\rfloor', meaning: 'length in whole feet, odd parts dropped', unit: 'ft' },
      { tex: '[\\,]', meaning: 'rounded to the nearest whole square foot', unit: 'ft²' },
    ],
    validity: 'Rough or surfaced hardwood boards of the trade, 4 ft and longer.',
    basis: 'published',
    citation: { source: 'ahec-grading-guide', locator: 'Measurement', seen: 'source-text' },
    remarks:
      'The texts read do not say what becomes of an exact half. It is taken upwards here; a grader takes them up and down in turn (from memory), which evens out over a pack.',
  },
  /**
   * Surface measure as the grading rules tally it.
   *
   * @param length mm
   * @param width mm
   * @returns whole square feet
   */
  (length: number, width: number): number => nearestWhole(((width / inch) * Math.floor(length / foot + noise)) / 12),
);

/** Board feet of a bundle, as the grading rules tally it. */
export const tallyBoardFeet = equation(
  {
    id: 'board-foot-tally',
    title: 'Board feet of a bundle, as the grading rules tally it',
    tex: '\\mathrm{BF} = \\left[ T \\sum \\mathrm{SM} \\right]',
    symbols: [
      { tex: 'T', meaning: 'nominal thickness; under 1 in counts as 1 in', unit: 'in' },
      {
        tex: '\\textstyle\\sum \\mathrm{SM}',
        meaning: 'surface measures of all boards of that thickness, each rounded',
        unit: 'ft²',
      },
      { tex: '[\\,]', meaning: 'rounded to the nearest whole board foot', unit: '' },
    ],
    validity: 'Boards of one thickness.',
    basis: 'published',
    citation: { source: 'lumber-inspector-article', locator: 'bundle tally', seen: 'quoted' },
    remarks: 'The same text counts stock under 1 in thick as 1 in.',
  },
  /**
   * Board feet of a bundle of boards of one thickness.
   *
   * @param boards length and width of each, mm
   * @param thickness nominal thickness, mm; counted as 1 in where it is less
   * @returns whole board feet
   */
  (boards: readonly { length: number; width: number }[], thickness: number): number => {
    const measure = boards.reduce((sum, board) => sum + surfaceMeasure(board.length, board.width), 0);
    return nearestWhole((measure * Math.max(thickness, inch)) / inch);
  },
);

/**
 * Share of a gross tally that arrives: lumber measured before kiln-drying comes about 7 % short in board feet.
 * Common practice; the clause of the rules was not read.
 */
export const netOfGrossTally = 0.93;
