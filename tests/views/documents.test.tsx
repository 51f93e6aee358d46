import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { DocumentView } from '../../src/calculators/view/DocumentView.tsx';
import type { DrawingShape, ResultDocument } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

const show = (document: ResultDocument) =>
  render(<DocumentView document={document} units={defaultUnits} headingLevel={3} />);
const paper = () => document.querySelector('[data-part="paper"]') as HTMLElement;
const print = async () => userEvent.click(screen.getByRole('button', { name: 'Print this sheet' }));

beforeEach(() => vi.stubGlobal('print', vi.fn()));
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const sheet: ResultDocument = {
  id: 'sheet',
  title: 'Mixing sheet',
  form: 'sheet',
  blocks: [
    { kind: 'heading', text: 'Cups' },
    { kind: 'warning', level: 'danger', text: 'Gloves on.' },
    { kind: 'ticks', items: ['Scale at zero'] },
    { kind: 'blanks', labels: ['Piece'] },
    {
      kind: 'table',
      ticks: ['a'],
      large: ['a'],
      write: ['Empty by'],
      table: {
        id: 'cups',
        title: 'Cups in turn',
        columns: [
          { id: 'cup', label: 'Cup' },
          { id: 'a', label: 'Part A', unit: 'g' },
        ],
        rows: [
          [1, 100],
          [2, null],
        ],
        basis: 'derived',
      },
    },
  ],
};

test('a sheet is named, its headings lie under its name, and every box has a name', () => {
  show(sheet);
  expect(screen.getByRole('heading', { level: 3 }).textContent).toBe('Mixing sheet');
  expect(screen.getByRole('heading', { level: 4 }).textContent).toBe('Cups');
  expect(screen.getByText('Gloves on.', { exact: false }).textContent).toBe('Danger. Gloves on.');
  expect(screen.getByLabelText('Scale at zero')).toBeTruthy();
  // A cell that holds nothing has no box.
  expect(screen.getAllByRole('checkbox', { name: /Part A/ }).map((box) => box.getAttribute('aria-label'))).toEqual([
    '1, Part A',
  ]);
  expect(screen.getByText('100 g').tagName).toBe('STRONG');
  expect(screen.getAllByRole('columnheader').map((one) => one.textContent)).toEqual(['Cup', 'Part A', 'Empty by']);
});

test('a sheet is printed once, with its title, and alone', async () => {
  show(sheet);
  await print();
  expect(within(paper()).getAllByText('Mixing sheet')).toHaveLength(1);
  expect(paper().parentElement).toBe(document.body);
  expect(window.print).toHaveBeenCalledOnce();
});

const line = (points: DrawingShape['points'], closed = true): DrawingShape => ({
  role: 'outline-now',
  closed,
  points,
});

test('a drawing at true size is cut into sheets, a millimetre of it to a millimetre of paper', async () => {
  // 400 mm by 200 mm on parts of 180 mm by 228 mm that overlap by 10 mm: three across, one up.
  const corners = [
    [0, 0],
    [400, 0],
    [400, 200],
    [0, 200],
  ] as const;
  show({
    id: 'template',
    title: 'Template',
    form: 'true-size',
    blocks: [
      {
        kind: 'drawing',
        drawing: { id: 'outline', title: 'Outline', description: 'A rectangle.', shapes: [line(corners)] },
      },
    ],
  });
  await print();
  const tiles = [...paper().querySelectorAll('svg')].filter((one) => one.querySelector('path[d^="M0 0"]'));
  expect(tiles).toHaveLength(3);
  const boxes = tiles.map((tile) => (tile.getAttribute('viewBox') ?? '').split(' ').map(Number));
  for (const [at, [, , width, height]] of boxes.entries()) {
    expect(`${width}mm ${height}mm`).toBe(`${tiles[at]?.style.width} ${tiles[at]?.style.height}`);
  }
  expect(boxes.map(([x]) => x)).toEqual([-60, 110, 280]);
  expect(within(paper()).getByText(/row 1 of 1, column 3 of 3/)).toBeTruthy();
  // The bar is drawn as long as it says.
  expect(paper().querySelector('path[d*="h100"]')?.closest('svg')?.getAttribute('viewBox')).toBe('0 0 180 16');
});
