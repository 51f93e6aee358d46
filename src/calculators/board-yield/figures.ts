import type { ResultTable, Use } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { worthKeeping, type YieldBlank, type YieldBoard, type YieldPlan } from '../../model/stock/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import { missingWords, shortName, total } from './words.ts';

/** What the figures of a plan are. */
export const figures = {
  blanksCut: { label: 'Blanks cut', unit: '{count}', digits: 6 },
  blanksMissing: { label: 'Blanks missing', unit: '{count}', digits: 6 },
  boardsUsed: { label: 'Boards cut into', unit: '{count}', digits: 6 },
  yield: { label: 'Share of those boards that becomes blanks', unit: '%', help: 'By face area.' },
  longestOffcut: { label: 'Longest piece left over', unit: 'mm', digits: 4 },
  couldBeSaved: {
    label: 'Of the boards cut into, another plan might save at most',
    unit: '%',
    digits: 2,
    minor: true,
    help: 'By face area, against a bound that no plan reaches: what is clear of the boards, without saw cuts.',
  },
} as const satisfies Record<string, FigureDeclaration>;

/** The figures of a plan. */
export function figuresOf(
  plan: YieldPlan,
  blanks: readonly YieldBlank[],
): Partial<Record<keyof typeof figures, FigureValue>> {
  const derived = (value: number, note?: string): FigureValue => ({
    value,
    basis: 'derived',
    ...(note ? { note } : {}),
  });
  const missing = missingWords(plan, blanks);
  const { boardArea } = plan;
  return {
    blanksCut: derived(total(plan.cut), `Of ${total(plan.cut) + total(plan.missing)} wanted.`),
    blanksMissing: derived(total(plan.missing), missing ? `${missing}.` : undefined),
    boardsUsed: derived(plan.boards.length),
    yield: derived(boardArea > 0 ? (100 * plan.blankArea) / boardArea : 0),
    longestOffcut: derived(
      plan.longestOffcut,
      `Clear, on a board that is cut into, at least ${amount(worthKeeping.width, 'mm', 2)} wide.`,
    ),
    ...(plan.proved || boardArea === 0
      ? {}
      : { couldBeSaved: derived((100 * Math.max(0, boardArea - plan.leastBoardArea)) / boardArea) }),
  };
}

const sentenceCase = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** The boards that are cut into, each by its name. */
export function usesOf(plan: YieldPlan, boards: readonly YieldBoard[]): Use[] {
  return plan.boards.map(({ board }, at) => {
    const { name, length, width } = boards[board] as YieldBoard;
    return {
      id: `board-${at + 1}`,
      what: `${/^board\b/i.test(name) ? sentenceCase(shortName(name)) : `Board ${shortName(name)}`}, ${amount(length, 'mm', 5)} × ${amount(width, 'mm', 5)}`,
      amount: 1,
      unit: '{count}',
      basis: 'derived',
    };
  });
}

/** A place on a board, mm, to the tenth: nobody marks or saws wood closer. */
const toTheTenth = (place: number) => Math.round(10 * place) / 10;

/** Where to cut: one row a piece, by board and by first cut. */
export function cutTable(plan: YieldPlan, boards: readonly YieldBoard[], blanks: readonly YieldBlank[]): ResultTable {
  const rip = plan.first === 'rip';
  return {
    id: 'cuts',
    title: 'Cutting list',
    columns: [
      { id: 'board', label: 'Board' },
      { id: 'section', label: rip ? 'Strip' : 'Section' },
      { id: 'piece', label: 'Piece' },
      { id: 'from', label: 'Along, from', unit: 'mm', digits: 6 },
      { id: 'to', label: 'to', unit: 'mm', digits: 6 },
      { id: 'low', label: 'Across, from', unit: 'mm', digits: 5 },
      { id: 'high', label: 'to', unit: 'mm', digits: 5 },
    ],
    rows: plan.boards.flatMap(({ board, cuts, offcuts }) => {
      const { name } = boards[board] as YieldBoard;
      return [
        ...cuts.map(({ blank, section, from, to, low, high }) => [
          name,
          section,
          (blanks[blank] as YieldBlank).name,
          ...[from, to, low, high].map(toTheTenth),
        ]),
        ...offcuts.map(({ from, to, low, high }) => [
          name,
          null,
          'left over',
          ...[from, to, low, high].map(toTheTenth),
        ]),
      ];
    }),
    basis: 'derived',
  };
}
