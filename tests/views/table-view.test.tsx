// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { TableView } from '../../src/calculators/view/TableView.tsx';
import type { ResultTable } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

afterEach(cleanup);

const table = (rows: ResultTable['rows']): ResultTable => ({
  id: 'papers',
  title: 'Papers to ask for',
  columns: [
    { id: 'paper', label: 'Paper' },
    { id: 'mass', label: 'Weight', unit: 'g' },
  ],
  rows,
  basis: 'shop-practice',
});
const long = 'A sentence of more than forty letters that needs room to be read.';

describe('rows of an answer', () => {
  test('numbers stand in the reader’s units, nothing stands where nothing is known', () => {
    render(
      <TableView
        table={table([
          ['one', 28.349523125],
          ['two', null],
        ])}
        units={{ ...defaultUnits, system: 'inch' }}
      />,
    );
    expect(screen.getAllByRole('cell').map((cell) => cell.textContent)).toEqual(['one', '1 oz', 'two', '']);
  });

  test('a column that is kept is metric for every reader', () => {
    const kept = { ...table([['one', 28.3]]), columns: [{ id: 'mass', label: 'A', unit: 'g', kept: true }] };
    render(<TableView table={{ ...kept, rows: [[28.3]] }} units={{ ...defaultUnits, system: 'inch' }} />);
    expect(screen.getAllByRole('cell').map((cell) => cell.textContent)).toEqual(['28.3 g']);
  });

  test.each([
    ['numbers', [['one', 1] as const, ['two', 2] as const], false],
    ['one sentence among many numbers', [[long, 1], ...Array.from({ length: 5 }, (_, at) => ['short', at])], false],
    ['sentences', [[long, 1] as const, ['two', 2] as const], true],
    ['no rows', [], false],
  ] as const)('a table of %s stands as a list on a phone: %#', (_, rows, wordy) => {
    render(<TableView table={table(rows as ResultTable['rows'])} units={defaultUnits} />);
    expect(screen.getByRole('table').hasAttribute('data-wordy')).toBe(wordy);
  });

  test('each cell carries the name of its column for the list', () => {
    render(<TableView table={table([[long, 1]])} units={defaultUnits} />);
    const cells = within(screen.getByRole('table')).getAllByRole('cell');
    expect(cells.map((cell) => cell.getAttribute('data-label'))).toEqual(['Paper', 'Weight']);
  });
});
