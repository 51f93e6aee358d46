import type { Use } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { OrderPlan, Surfacing } from '../../model/stock/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import { type Price, sumWords } from './price.ts';
import { boardWords } from './verdict.ts';

/** What the figures of an order are. */
export const figures = {
  boards: { label: 'Boards to buy', unit: '{count}', digits: 6 },
  boardLength: { label: 'Length of a board', unit: 'mm', digits: 4 },
  boardWidth: { label: 'Width of a board', unit: 'mm', digits: 4 },
  nominal: {
    label: 'Nominal thickness',
    unit: 'mm',
    digits: 4,
    help: 'As sawn and sold, before it is planed.',
  },
  boardFeet: {
    label: 'Board feet, with fractions',
    unit: '[bf_i]',
    digits: 4,
    help: 'What most shops reckon.',
  },
  boardFeetTally: {
    label: 'Board feet, as a grader tallies them',
    unit: '[bf_i]',
    digits: 6,
    help: 'Through surface measure, rounded to whole square feet a board: what a graded pack is invoiced by.',
  },
  volume: { label: 'Volume', unit: 'm3', digits: 3, help: 'At nominal thickness.' },
  cost: { label: 'Cost', unit: '{money}', digits: 9 },
  costTally: { label: 'Cost, as a grader tallies', unit: '{money}', digits: 9 },
  pieces: { label: 'Blanks to cut', unit: '{count}', digits: 6 },
  roughLength: {
    label: 'Length of a blank',
    unit: 'mm',
    digits: 3,
    help: 'Its end trim is in it: a cutting plan of these blanks trims the ends of the boards no further.',
  },
  roughWidth: { label: 'Width of a blank', unit: 'mm', digits: 3 },
  roughThickness: { label: 'Thickness of a blank before planing', unit: 'mm', digits: 4 },
  perBoard: { label: 'Blanks from one board', unit: '{count}', digits: 6 },
  used: {
    label: 'Wood used',
    unit: '%',
    digits: 2,
    help: 'By volume, of the boards as bought.',
  },
} as const satisfies Record<string, FigureDeclaration>;

/** The figures of an order. */
export function figuresOf(
  plan: OrderPlan,
  grade: string | undefined,
  price: Price | undefined,
): Partial<Record<keyof typeof figures, FigureValue>> {
  const practice = (value: number, note?: string): FigureValue => ({
    value,
    basis: 'shop-practice',
    ...(note ? { note } : {}),
  });
  const money = (value: number, note: string): FigureValue =>
    practice(
      Math.round(value * 100) / 100,
      `${note}${price?.currency ? `: ${sumWords(value, price)}` : ', in the currency of the price'}.`,
    );
  const { nominal, cost } = plan;
  return {
    boards: practice(plan.boards, boardsNote(plan, grade)),
    boardLength: practice(plan.board.length),
    boardWidth: practice(plan.board.width),
    nominal: {
      value: nominal.rough,
      basis: nominal.basis,
      citation: { source: 'hardwood-dimensions-table', locator: nominal.name, seen: nominal.seen },
      note: `${nominal.name} by the name of the trade; planed on two faces it is ${amount(nominal.s2s, 'mm')}.`,
    },
    boardFeet: { value: plan.boardFeet, basis: 'derived' },
    boardFeetTally: { value: plan.boardFeetTally, basis: 'derived' },
    volume: { value: plan.volume / 1e6, basis: 'derived' },
    ...(cost
      ? {
          cost: money(cost.sum, cost.tally === undefined ? 'Of the volume' : 'Of the board feet with fractions'),
          ...(cost.tally === undefined ? {} : { costTally: money(cost.tally, 'Of the whole board feet of the tally') }),
        }
      : {}),
    pieces: practice(plan.pieces, `${plan.spares} of them spare.`),
    roughLength: practice(plan.rough.length),
    roughWidth: practice(plan.rough.width),
    roughThickness: practice(plan.rough.thickness),
    perBoard: practice(plan.along * plan.across, `${plan.along} along, ${plan.across} across.`),
    used: practice(100 * plan.used),
  };
}

function boardsNote(plan: OrderPlan, grade: string | undefined): string {
  const each = `Each ${boardWords(plan.board)}${plan.board.assumed ? ', the board taken where none is given' : ''}.`;
  return plan.boardsByGrade !== null && plan.boardsByGrade > plan.boardsByLayout
    ? `${each} By layout ${plan.boardsByLayout} would do; the clear share of ${grade} asks for ${plan.boardsByGrade}.`
    : each;
}

/** What is bought: so many boards, and the same boards as they are priced. */
export function usesOf(plan: OrderPlan, surfacing: Surfacing): Use[] {
  const kind = `${plan.nominal.name} ${surfacing === 's2s' ? 'planed on two faces' : 'rough'}`;
  return [
    {
      id: 'boards',
      what: `Boards, ${kind}, ${boardWords(plan.board)}`,
      amount: plan.boards,
      unit: '{count}',
      basis: 'shop-practice',
    },
    {
      id: 'board-feet',
      what: `Lumber, ${kind}`,
      amount: plan.boardFeet,
      unit: '[bf_i]',
      within: ['boards'],
      basis: 'derived',
      note: 'The same boards as they are priced, with fractions.',
    },
  ];
}
