import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { viewOf } from './view-of.tsx';

const Acclimatise = await viewOf('acclimatise');
const BoardYield = await viewOf('board-yield');
const CutterSpeed = await viewOf('cutter-speed');
const FlattenPlan = await viewOf('flatten-plan');
const GritSequence = await viewOf('grit-sequence');
const StockOrder = await viewOf('stock-order');

// The worked case: an address that another file left behind is none of it.
beforeEach(() => window.history.replaceState(null, '', '/page'));
afterEach(cleanup);

test.each([
  ['acclimatise', Acclimatise, 'Time until within 1 % of balance'],
  ['board-yield', BoardYield, 'Cutting list'],
  ['cutter-speed', CutterSpeed, 'The highest for bits up to'],
  ['flatten-plan', FlattenPlan, 'Cuts and shims, place by place'],
  ['grit-sequence', GritSequence, 'Step by step'],
  ['stock-order', StockOrder, 'Boards to buy'],
] as const)('the server writes the worked case of %s', (_, View, words) => {
  expect(renderToString(<View />)).toContain(words);
});

describe('tables, drawings and long lists', () => {
  test('a table has a head, a row an entry and a name for its region', () => {
    render(<BoardYield />);
    const region = screen.getByRole('region', { name: 'Cutting list' });
    expect(region.getAttribute('tabindex')).toBe('0');
    expect([...region.querySelectorAll('thead th')].map((head) => head.textContent)).toEqual([
      'Board',
      'Section',
      'Piece',
      'Along, from',
      'to',
      'Across, from',
      'to',
    ]);
    expect(region.querySelectorAll('tbody tr').length).toBeGreaterThan(8);
  });

  test('a drawing of boards names what fits and explains its patterns', () => {
    render(<BoardYield />);
    const drawing = screen.getByText(/blanks on/).closest('figure') as HTMLElement;
    expect([...drawing.querySelectorAll('text')].map((text) => text.textContent)).toContain('ash B');
    expect(screen.getByText('cut out')).toBeTruthy();
  });

  test('a list is typed in a text area too; a mistake keeps the last good answer', () => {
    render(<BoardYield />);
    const field = document.querySelector<HTMLElement>('[data-field="blanks"]');
    if (field) fireEvent.click(within(field).getByText('As text'));
    const list = screen.getByLabelText<HTMLTextAreaElement>(/^Blanks wanted/);
    expect(list.tagName).toBe('TEXTAREA');
    fireEvent.change(list, { target: { value: 'tray, 450 mm' } });
    expect(list.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText(/Blank 1, width/)).toBeTruthy();
    expect(screen.getByRole('region', { name: 'Cutting list' })).toBeTruthy();
  });

  test('a chart against time writes round numbers, and its table names the unit', () => {
    render(<Acclimatise />);
    const chart = screen.getByRole('img', { name: /half-way in/ });
    expect(chart.querySelectorAll('text').length).toBeLessThan(20);
    expect(screen.getByText(/^Time in the room, d$/)).toBeTruthy();
  });

  test('fields of the other kind of work stay hidden', () => {
    render(<CutterSpeed />);
    expect(screen.queryByLabelText(/^Cutting length/)).toBeTruthy();
    expect(screen.queryByText('Kind of bit')).toBeNull();
    fireEvent.click(screen.getByLabelText('Boring a hole'));
    expect(screen.queryByLabelText(/^Cutting length/)).toBeNull();
    expect(screen.queryByText(/^Kind of bit/)).toBeTruthy();
  });
});
