import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { viewOf } from './view-of.tsx';

const CareCard = await viewOf('care-card');
const FoodContact = await viewOf('food-contact');

const paper = () => document.querySelector('[data-part="paper"]') as HTMLElement;
const print = async () => userEvent.click(screen.getByRole('button', { name: 'Print this sheet' }));

beforeEach(() => {
  window.history.replaceState(null, '', '/page');
  vi.stubGlobal('print', vi.fn());
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

test('the server writes the worked cases', () => {
  expect(renderToString(<CareCard />)).toContain('Care of your board');
  expect(renderToString(<FoodContact />)).toContain('Made of sugar maple.');
  expect(renderToString(<FoodContact />)).toContain('href="/reference/food-rules"');
});

test('what is typed as markup stays text, on the card and on the sheet', async () => {
  window.history.replaceState(null, '', `/page?shop=${encodeURIComponent('<img src=x onerror=alert(1)>')}`);
  render(<CareCard />);
  await print();
  expect(within(paper()).getAllByText('<img src=x onerror=alert(1)>')).toHaveLength(2);
  expect(document.querySelector('img')).toBeNull();
});

test('a sheet holds two folded cards, and the page steps aside only while it is printed', async () => {
  render(<CareCard />);
  expect(paper()).toBeNull();
  expect(document.documentElement.hasAttribute('data-printing')).toBe(false);
  await print();
  expect(within(paper()).getAllByText('Care of your board')).toHaveLength(2);
  expect(window.print).toHaveBeenCalledOnce();
  expect(document.documentElement.getAttribute('data-printing')).toBe('document');
  window.dispatchEvent(new Event('afterprint'));
  expect(document.documentElement.hasAttribute('data-printing')).toBe(false);
  await vi.waitFor(() => expect(paper()).toBeNull());
});

test('the sheet goes with the calculator', async () => {
  const { unmount } = render(<CareCard />);
  await print();
  unmount();
  expect(paper()).toBeNull();
  expect(document.documentElement.hasAttribute('data-printing')).toBe(false);
});

test('the label is a sheet of labels with lines to write on, and text to copy', async () => {
  render(<FoodContact />);
  await userEvent.click(screen.getByRole('button', { name: 'Copy' }));
  const copied = await navigator.clipboard.readText();
  expect(copied.split('\n')[0]).toBe('Made of sugar maple.');
  expect(copied).toMatch(/Maker, address: _+\nBatch: _+\nMade on: _+$/);
  await print();
  for (const line of ['Maker, address', 'Batch', 'Made on', 'Made of sugar maple.'])
    expect(within(paper()).getAllByText(line), line).toHaveLength(14);
});

test('labels are printed from the one that is asked for, with what the maker typed for their lines', async () => {
  render(<FoodContact />);
  await userEvent.selectOptions(screen.getByLabelText('Sheet of labels'), 'a4-8');
  await userEvent.clear(screen.getByLabelText('Start at label'));
  await userEvent.type(screen.getByLabelText('Start at label'), '7');
  await userEvent.clear(screen.getByLabelText('How many'));
  await userEvent.type(screen.getByLabelText('How many'), '3');
  await userEvent.type(screen.getByLabelText('Batch'), 'B-12');
  await print();
  // Two on what is left of the first sheet, one on the next.
  const sheets = paper().querySelectorAll('[data-part="label-sheet"]');
  expect([...sheets].map((sheet) => sheet.querySelectorAll('[data-part="label"]').length)).toEqual([2, 1]);
  expect(within(paper()).getAllByText('B-12')).toHaveLength(3);
  expect(within(paper()).queryByText('Batch')).toBeNull();
});

test('a number of labels that is none is said to be so, and the last good one counts', async () => {
  render(<FoodContact />);
  const start = screen.getByLabelText('Start at label');
  await userEvent.clear(start);
  await userEvent.type(start, '40');
  expect(screen.getByText(/“40” is not a whole number from 1 to 14/)).toBeTruthy();
  expect((start as HTMLInputElement).value).toBe('40');
});

test('words that no eye could read on a label are not printed', async () => {
  window.history.replaceState(null, '', '/page');
  render(<FoodContact />);
  await userEvent.selectOptions(screen.getByLabelText('Sheet of labels'), 'letter-30');
  expect(screen.getByText(/Take a larger label/)).toBeTruthy();
  expect((screen.getByRole('button', { name: 'Print this sheet' }) as HTMLButtonElement).disabled).toBe(true);
});
