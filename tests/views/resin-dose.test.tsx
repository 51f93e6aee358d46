import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import ResinDose from '../../src/calculators/resin-dose/View.tsx';

const sheet = () => document.querySelector('[data-part="drum-sheet"]') as HTMLElement;
const rows = () =>
  [...sheet().querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent?.trim()));

const at = (inputs: Record<string, string>) =>
  window.history.replaceState(null, '', `/page?${new URLSearchParams(inputs)}`);

beforeEach(() => localStorage.clear());
afterEach(cleanup);

test('the server writes the worked case with its drum sheet', () => {
  const page = renderToString(<ResinDose />);
  expect(page).toContain('Drum sheet');
  expect(page).toContain('moss green');
});

describe('the drum sheet', () => {
  test('gives the running readings of the scale: tare, after A, after the pigment, after B', () => {
    // 2:1 by weight: 100 of A, 3 % of 150 g stirred into it, as the guides say, then 50 of B.
    at({
      mass: '150 g',
      mixRatio: '2:1',
      mixRatioBy: 'weight',
      colours: 'moss green, paste 3 %',
      scaleDivision: '0.1 g',
    });
    render(<ResinDose />);
    expect(rows()).toEqual([['Fill'], ['1moss green', '', '100.0 g', '104.5 g+ 4.5 g', '154.5 g+ 50.0 g', '', '']]);
  });

  test('has a box for the tare, for each part and for the pigment, each with a name', async () => {
    at({ mass: '150 g', colours: 'moss green, paste 3 %', scaleDivision: '0.1 g' });
    render(<ResinDose />);
    const boxes = within(sheet()).getAllByRole('checkbox');
    expect(boxes.map((box) => box.getAttribute('aria-label'))).toEqual([
      'Cup 1 tared',
      'Cup 1, part A',
      'Cup 1, pigment',
      'Cup 1, part B',
    ]);
    await userEvent.click(boxes[1] as HTMLElement);
    expect((boxes[1] as HTMLInputElement).checked).toBe(true);
  });

  test('measured by volume gives each part by itself, and no tare', () => {
    at({ volume: '150 ml', measureBy: 'volume', volumeDivision: '5 ml', colours: '' });
    render(<ResinDose />);
    expect(rows()).toEqual([['Fill'], ['1clear', '100 ml', '50 ml', '', '']]);
  });

  test('speaks of skin and heat before the cups', () => {
    render(<ResinDose />);
    const text = sheet().textContent ?? '';
    expect(text.indexOf('Danger.')).toBeGreaterThan(-1);
    expect(text.indexOf('Danger.')).toBeLessThan(text.indexOf('Part A'));
  });

  test('prints by itself, and leaves the page as it was afterwards', async () => {
    const print = vi.fn(() => expect(document.documentElement.dataset.print).toBe('drum-sheet'));
    vi.stubGlobal('print', print);
    render(<ResinDose />);
    await userEvent.click(screen.getByRole('button', { name: 'Print the drum sheet' }));
    expect(print).toHaveBeenCalledOnce();
    window.dispatchEvent(new Event('afterprint'));
    expect(document.documentElement.dataset.print).toBeUndefined();
    vi.unstubAllGlobals();
  });
});
