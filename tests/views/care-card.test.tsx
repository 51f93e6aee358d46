import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import CareCard from '../../src/calculators/care-card/View.tsx';
import FoodContact from '../../src/calculators/food-contact/View.tsx';

const sheet = () => document.querySelector('[data-part="care-cards"]') as HTMLElement;

beforeEach(() => window.history.replaceState(null, '', '/page'));
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

test('the server writes the worked cases', () => {
  expect(renderToString(<CareCard />)).toContain('Care of your board');
  expect(renderToString(<FoodContact />)).toContain('The label as text');
  expect(renderToString(<FoodContact />)).toContain('href="/reference/food-rules"');
});

test('what is typed as markup stays text, on the card and on the sheet', () => {
  window.history.replaceState(null, '', `/page?shop=${encodeURIComponent('<img src=x onerror=alert(1)>')}`);
  render(<CareCard />);
  expect(within(sheet()).getAllByText('<img src=x onerror=alert(1)>')).toHaveLength(4);
  expect(document.querySelector('img')).toBeNull();
});

test('a sheet holds four cards, and the page steps aside only while it is printed', async () => {
  const print = vi.fn();
  vi.stubGlobal('print', print);
  render(<CareCard />);
  expect(within(sheet()).getAllByText('Care of your board')).toHaveLength(4);
  expect(document.documentElement.hasAttribute('data-printing')).toBe(false);
  await userEvent.click(screen.getByRole('button', { name: 'Print four to a sheet' }));
  expect(print).toHaveBeenCalledOnce();
  expect(document.documentElement.getAttribute('data-printing')).toBe('care-cards');
  window.dispatchEvent(new Event('afterprint'));
  expect(document.documentElement.hasAttribute('data-printing')).toBe(false);
  vi.unstubAllGlobals();
});

test('the sheet goes with the calculator', () => {
  const { unmount } = render(<CareCard />);
  unmount();
  expect(sheet()).toBeNull();
});

test('the label is text to copy', async () => {
  const user = userEvent.setup();
  render(<FoodContact />);
  const label = screen.getByLabelText<HTMLTextAreaElement>('The label as text');
  expect(label.value).toContain('\n');
  await user.click(screen.getByRole('button', { name: 'Copy the label' }));
  expect(await navigator.clipboard.readText()).toBe(label.value);
});
