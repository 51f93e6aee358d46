import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { DocumentView } from '../../src/calculators/view/DocumentView.tsx';
import type { ResultDocument } from '../../src/model/evidence/index.ts';
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

test('columns that are called alike both stand, and React is told which is which', () => {
  const told = vi.spyOn(console, 'error').mockImplementation(() => {});
  show({
    id: 'cuts',
    title: 'Cuts',
    form: 'sheet',
    blocks: [
      {
        kind: 'table',
        table: {
          id: 'cuts',
          title: 'Cutting list',
          columns: [
            { id: 'from', label: 'Along, from', unit: 'mm' },
            { id: 'to', label: 'to', unit: 'mm' },
            { id: 'low', label: 'Across, from', unit: 'mm' },
            { id: 'high', label: 'to', unit: 'mm' },
          ],
          rows: [[0, 528, 0, 226]],
          basis: 'derived',
        },
      },
    ],
  });
  expect(screen.getAllByRole('columnheader', { name: 'to' })).toHaveLength(2);
  expect(told).not.toHaveBeenCalled();
  told.mockRestore();
});

test('a sheet is printed once, with its title, and alone', async () => {
  show(sheet);
  await print();
  expect(within(paper()).getAllByText('Mixing sheet')).toHaveLength(1);
  expect(paper().parentElement).toBe(document.body);
  expect(window.print).toHaveBeenCalledOnce();
});

test('what the answer shows already is folded on the page, and printed whole', async () => {
  show({ ...sheet, folded: true });
  expect(screen.getByText('What stands on it').closest('details')?.open).toBe(false);
  await print();
  expect(within(paper()).getByText('Cups')).toBeTruthy();
});

const rectangle = (width: number, height: number): ResultDocument => ({
  id: 'template',
  title: 'Template: tray',
  form: 'true-size',
  blocks: [
    {
      kind: 'drawing',
      drawing: {
        id: 'outline',
        title: 'Outline',
        description: 'A rectangle.',
        shapes: [
          {
            role: 'finished',
            closed: true,
            points: [
              [0, 0],
              [width, 0],
              [width, height],
              [0, height],
            ],
          },
          { role: 'rough', closed: false, points: [[0, 0]] },
        ],
      },
    },
  ],
});
const sheets = () => [...paper().querySelectorAll<SVGSVGElement>('div > svg')];

test('a drawing at true size is cut into sheets, a millimetre of it to a millimetre of paper', async () => {
  // 400 mm by 200 mm on parts of 174 mm by 236 mm that overlap by 10 mm: three across, one up.
  show(rectangle(400, 200));
  await print();
  expect(sheets()).toHaveLength(3);
  for (const sheet of sheets()) {
    expect(sheet.getAttribute('viewBox')).toBe('0 0 180 244');
    expect([sheet.style.width, sheet.style.height]).toEqual(['180mm', '244mm']);
    const part = sheet.querySelector('svg') as SVGSVGElement;
    const [, , width, height] = (part.getAttribute('viewBox') ?? '').split(' ');
    expect([width, height]).toEqual([part.getAttribute('width'), part.getAttribute('height')]);
  }
  const lefts = sheets().map((sheet) => Number(sheet.querySelector('svg')?.getAttribute('viewBox')?.split(' ')[0]));
  expect(lefts.map((left) => left - (lefts[0] as number))).toEqual([0, 164, 328]);
  expect(lefts[0]).toBeLessThan(0);
});

test('each sheet bears its place, its name, what its lines are, how it laps, and a bar of 100 mm each way', async () => {
  show(rectangle(400, 200));
  await print();
  for (const [at, sheet] of sheets().entries()) {
    const words = [...sheet.querySelectorAll('text')].map((text) => text.textContent).join('|');
    expect(words).toContain(`Row 1 of 1, column ${at + 1} of 3|Template: tray`);
    expect(words).toContain('lay cross on cross: neighbours share 10 mm');
    expect(words).toContain('finished edge|rough line: saw');
    const bars = [...sheet.querySelectorAll('path')].map((path) => path.getAttribute('d') ?? '');
    expect(bars.filter((bar) => bar.includes('h100'))).toHaveLength(1);
    expect(bars.filter((bar) => bar.includes('v-100'))).toHaveLength(1);
  }
});

test.each([
  // A tray of 610 mm by 229 mm with 3 mm around it.
  [616, 235, 4],
  [235, 616, 4],
  [170, 230, 1],
  [230, 170, 1],
])('%d mm by %d mm takes %d sheets, lying whichever way takes fewer', async (width, height, count) => {
  show(rectangle(width, height));
  await print();
  expect(sheets()).toHaveLength(count);
});
