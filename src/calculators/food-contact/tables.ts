import type { ResultTable } from '../../model/evidence/index.ts';
import { type BoardForFood, type FoodFinding, type FoodStatement, foodLevelWords } from '../../model/food/index.ts';

const partWords: Readonly<Record<FoodFinding['part'], string>> = {
  wood: 'Wood',
  resin: 'Resin',
  finish: 'Finish',
  cure: 'Cure',
  use: 'Use',
};

/** The findings, what the label must not say, the papers and the rules. */
export function tablesOf(board: BoardForFood, statement: FoodStatement): ResultTable[] {
  const { findings, mustNotSay, papers, allergens, rules } = statement;
  const table = (
    id: string,
    title: string,
    columns: readonly (readonly [id: string, label: string])[],
    rows: ResultTable['rows'],
    basis: ResultTable['basis'] = 'shop-practice',
  ): ResultTable[] =>
    rows.length === 0
      ? []
      : [{ id, title, columns: columns.map(([column, label]) => ({ id: column, label })), rows, basis }];
  const standing = board.finish?.standing;
  const conditions = (board.finish?.declared ? standing?.inUse : standing?.conditions) ?? [];
  return [
    ...table(
      'not',
      'Not on the label',
      [
        ['words', 'Words'],
        ['why', 'Why not'],
      ],
      mustNotSay.map(({ words, why }) => [words, why]),
    ),
    ...table(
      'parts',
      'What each part says',
      [
        ['part', 'Part'],
        ['level', 'Level'],
        ['text', 'What was found'],
      ],
      findings.map(({ part, level, text }) => [partWords[part], foodLevelWords[level], text]),
    ),
    ...table(
      'conditions',
      'What must be true of the finish',
      [['condition', `${board.finish?.name ?? 'Finish'}: condition`]],
      conditions.map((condition) => [condition]),
      board.finish?.standing.basis,
    ),
    ...table(
      'papers',
      'Papers to ask for, and keep',
      [
        ['title', 'Paper'],
        ['from', 'From'],
        ['says', 'It must say'],
      ],
      papers.map(({ title, from, says }) => [title, from, says]),
    ),
    ...table(
      'allergens',
      'Allergies',
      [['text', 'What is known, and what is not']],
      allergens.map(({ text }) => [text]),
    ),
    ...table(
      'rules',
      'Rules that speak, in our words',
      [
        ['rule', 'Rule'],
        ['asks', 'Asks'],
      ],
      rules.map(({ short, asks }) => [short, asks.join(' ')]),
      'published',
    ),
  ];
}
