import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { boardYieldCalculator } from '../../src/calculators/board-yield/calculator.ts';
import { fieldsOf } from '../../src/calculators/kit/answer.ts';
import { exampleFor } from '../../src/calculators/kit/example.ts';
import { type FieldMeta, fieldMeta } from '../../src/calculators/kit/fields.ts';
import type { ListRows } from '../../src/calculators/kit/list-field.ts';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { viewOf } from './view-of.tsx';

const BoardYield = await viewOf('board-yield');

const settle = () => act(() => new Promise((resolve) => setTimeout(resolve, 320)));
const addressed = (name: string) => new URLSearchParams(window.location.search).get(name);
const open = (search = '?boards=A,+1000+mm,+300+mm&blanks=x,+400+mm,+140+mm,+4') => {
  window.history.replaceState(null, '', `/page${search}`);
  render(<BoardYield />);
};
const field = (name: string) => within(document.querySelector(`[data-field="${name}"]`) as HTMLElement);
const cell = (name: string) => screen.getByLabelText<HTMLInputElement>(name);
const paste = (into: HTMLElement, text: string) => fireEvent.paste(into, { clipboardData: { getData: () => text } });

beforeEach(() => act(() => keepUnits(defaultUnits)));
afterEach(() => {
  cleanup();
  act(() => keepUnits(defaultUnits));
});

describe('a list in rows', () => {
  test('shows the text of the address, one input a cell, each with a name', () => {
    open();
    expect(cell('Name, board 1').value).toBe('A');
    expect(cell('Length, board 1').value).toBe('1000 mm');
    expect(cell('How many, blank 1').value).toBe('4');
    expect(screen.getByRole('group', { name: 'Boards' })).toBeTruthy();
  });

  test('what is typed into a new row reaches the answer and the address, with its unit', async () => {
    open();
    await userEvent.click(field('boards').getByText('Add a board'));
    await userEvent.type(cell('Name, board 2'), '2');
    await userEvent.type(cell('Length, board 2'), '1,2 m');
    await userEvent.type(cell('Width, board 2'), '150');
    await userEvent.type(cell('Places to cut out, board 2'), 'knot 100 to 150, check 1100 to 1200');
    await settle();
    expect(cell('Name, board 2').value).toBe('2');
    expect(addressed('boards')).toBe(
      'A, 1000 mm, 300 mm\nboard 2, 1,2 m, 150 mm, knot 100 mm to 150 mm, check 1100 mm to 1200 mm',
    );
    const drawn = screen.getByText(/blanks on/).closest('figure');
    expect(drawn?.querySelector('[role="img"]')?.textContent).toContain('A');
    expect(document.querySelector('[data-field="boards"]')?.textContent).not.toContain('✗');
    expect(document.querySelector('[data-figure="blanksCut"]')?.textContent).toContain('Of 4 wanted.');
  });

  test('a key in a cell reads the list, not the examples of its cells anew', async () => {
    open('?boards=A,+1000+mm,+300+mm;B,+900+mm,+300+mm;C,+800+mm,+200+mm&blanks=x,+400+mm,+140+mm,+4');
    const meta = fieldMeta(fieldsOf(boardYieldCalculator).boards as never) as FieldMeta;
    const split = vi.spyOn(meta.rows as ListRows, 'split');
    fireEvent.change(cell('Name, board 2'), { target: { value: 'BB' } });
    await settle();
    const texts = split.mock.calls.map(([text]) => text);
    expect(cell('Name, board 2').value).toBe('BB');
    expect(texts).not.toContain(exampleFor(meta, defaultUnits));
    split.mockRestore();
  });

  test('a row is taken away, and the last one stays', async () => {
    open('?boards=A,+1000+mm,+300+mm;B,+900+mm,+300+mm&blanks=x,+400+mm,+140+mm,+4');
    await userEvent.click(screen.getByLabelText('Remove board 1'));
    expect(cell('Name, board 1').value).toBe('B');
    expect(screen.getByLabelText<HTMLButtonElement>('Remove board 1').disabled).toBe(true);
    await settle();
    expect(addressed('boards')).toBe('B, 900 mm, 300 mm');
  });

  test('several lines of a clipboard spread over rows, as do the cells of a spreadsheet', async () => {
    open();
    paste(cell('Name, board 1'), 'B, 2000 mm, 200 mm, knot 10 to 20 mm\nC, 1500 mm, 210 mm');
    expect([1, 2, 3].map((row) => cell(`Name, board ${row}`).value)).toEqual(['A', 'B', 'C']);
    expect(cell('Places to cut out, board 2').value).toBe('knot 10 to 20 mm');
    await userEvent.click(field('blanks').getByText('Add a blank'));
    paste(cell('Name, blank 2'), 'tray\t450 mm\t240 mm\t6\r\npaddle\t600 mm\t200 mm\t2\r\n');
    await settle();
    expect(addressed('blanks')).toBe('x, 400 mm, 140 mm, 4\ntray, 450 mm, 240 mm, 6\npaddle, 600 mm, 200 mm, 2');
  });

  test('stands as text too, and comes back', async () => {
    open();
    await userEvent.click(field('blanks').getByText('As text'));
    const text = field('blanks').getByRole<HTMLTextAreaElement>('textbox', { name: 'Blanks wanted' });
    expect(text.value).toBe('x, 400 mm, 140 mm, 4');
    fireEvent.change(text, { target: { value: 'y, 300 mm, 140 mm' } });
    await userEvent.click(field('blanks').getByText('In rows'));
    expect(cell('Name, blank 1').value).toBe('y');
  });

  test('a text with more parts than columns stays a text: nothing typed is lost', () => {
    open('?boards=A,+1000+mm,+300+mm&blanks=x,+400+mm,+140+mm,+4,+oak');
    expect(field('blanks').getByRole<HTMLTextAreaElement>('textbox').value).toBe('x, 400 mm, 140 mm, 4, oak');
    expect(field('blanks').getByText(/has more parts than name, length, width, how many/)).toBeTruthy();
  });

  test('a reader of inches types inches, and sees examples in them', async () => {
    act(() => keepUnits({ system: 'inch', inches: 'thirty-seconds' }));
    open();
    await userEvent.clear(cell('Length, board 1'));
    expect(cell('Length, board 1').placeholder).toBe('8 ft');
    await userEvent.type(cell('Length, board 1'), '40 1/2');
    await settle();
    expect(addressed('boards')).toBe('A, 40 1/2 in, 300 mm');
    expect(cell('Length, board 1').value).toBe('40 1/2');
  });
});
