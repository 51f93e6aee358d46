import { describe, expect, test } from 'vitest';
import { parseTable } from '../../../src/model/data/csv.ts';
import { problemLine } from '../../../src/model/data/problem.ts';
import type { TableDefinition } from '../../../src/model/evidence/index.ts';

const definition: TableDefinition = {
  name: 'example',
  room: 'species',
  title: 'An example',
  notes: [],
  columns: [
    { name: 'wood', kind: 'text', title: 'Wood', required: true },
    { name: 'radial_pct', kind: 'number', unit: '%', title: 'Radial', required: false },
    { name: 'seen', kind: 'seen', title: 'How read', required: true },
  ],
};
const header = 'wood,radial_pct,seen';
const problemsOf = (text: string) => parseTable(text, definition, 'example.csv').problems.map(problemLine);

test('rows come with their line, texts trimmed, numbers parsed, an empty cell null', () => {
  const { table, problems } = parseTable(
    `${header}\r\n"Ash, white",4.9,source-text\n Alder ,,memory\n`,
    definition,
    'example.csv',
  );
  expect(problems).toEqual([]);
  expect(table.rows).toEqual([
    { line: 2, cells: { wood: 'Ash, white', radial_pct: 4.9, seen: 'source-text' } },
    { line: 3, cells: { wood: 'Alder', radial_pct: null, seen: 'memory' } },
  ]);
});

describe('what is wrong is reported at its place', () => {
  test.each([
    [
      'a word for a number',
      `${header}\n"Ash, white",4.9,quoted\n"Ash, black",five,quoted`,
      'example.csv:3:14 radial_pct: “five” is not a number. Write digits with a decimal point, or leave the cell empty where nothing is published.',
    ],
    [
      'an unknown mark',
      `${header}\nAsh,4.9,guessed`,
      'example.csv:2:9 seen: “guessed” does not say how the row was read. Use source-text, quoted, memory.',
    ],
    [
      'an empty cell that must be filled',
      `${header}\n,4.9,quoted`,
      'example.csv:2:1 wood: the cell is empty. Every row must fill this column: enter what the source prints.',
    ],
    [
      'a comma without quotes',
      `${header}\nAsh, white,4.9,quoted`,
      'example.csv:2:1 the row has 4 cells and the table 3 columns. Put a text with commas between quotes.',
    ],
    [
      'a misspelt header',
      'wood,radial,seen\nAsh,4.9,quoted',
      'example.csv:1:6 the header has “radial” where “radial_pct” stands in the definition. The columns are wood,radial_pct,seen.',
    ],
    [
      'a header cut short',
      'wood,radial_pct\n',
      'example.csv:1:16 the header has “the end of the line” where “seen” stands in the definition. The columns are wood,radial_pct,seen.',
    ],
    ['an empty file', '', 'example.csv:1:1 the file is empty. It starts with the header wood,radial_pct,seen.'],
  ])('%s', (_what, text, expected) => {
    expect(problemsOf(text)).toEqual([expected]);
  });

  test('an open quote', () => {
    expect(problemsOf(`${header}\n"Ash,4.9,quoted`)[0]).toMatch(/^example\.csv:2:1 .*Close every quote/);
  });

  test('all problems at once, and the good rows still come', () => {
    const { table, problems } = parseTable(
      `${header}\nAsh,x,quoted\nOak,4,quoted\nElm,y,z\n`,
      definition,
      'example.csv',
    );
    expect(problems.map((problem) => [problem.line, problem.field])).toEqual([
      [2, 'radial_pct'],
      [4, 'radial_pct'],
      [4, 'seen'],
    ]);
    expect(table.rows.map((row) => row.line)).toEqual([3]);
  });
});
