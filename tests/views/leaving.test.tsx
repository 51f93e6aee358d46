import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { goOnWithAddress } from '../../src/calculators/view/address-bar.ts';
import { forgetAll } from '../../src/calculators/view/kept-cases.ts';
import { viewOf } from './view-of.tsx';

const Movement = await viewOf('seasonal-movement');

const width = () => screen.getByLabelText<HTMLInputElement>(/^Width across/);
const type = (text: string) => fireEvent.change(width(), { target: { value: text } });
const kept = () => window.localStorage.getItem('kerf-remembered') ?? '';
const leave = () => act(() => void window.dispatchEvent(new Event('pagehide')));
const hide = () => {
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
  act(() => void document.dispatchEvent(new Event('visibilitychange')));
};
/** The page comes again, in this way, at this address. */
function comeAgain(way: 'reload' | 'navigate', address: string): void {
  cleanup();
  window.history.replaceState(null, '', address);
  vi.spyOn(performance, 'getEntriesByType').mockReturnValue([{ type: way } as never]);
  goOnWithAddress();
  render(<Movement remembers="cases" />);
}

beforeEach(() => {
  vi.useFakeTimers();
  window.localStorage.clear();
  window.sessionStorage.clear();
  act(forgetAll);
  window.history.replaceState(null, '', '/page');
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.restoreAllMocks();
});

test.each([
  ['left', leave],
  ['hidden', hide],
])('a page that is %s writes what was typed a moment before, into the address and among the kept cases', (_, go) => {
  render(<Movement remembers="cases" />);
  type('287 mm');
  expect(window.location.search).toBe('');
  expect(kept()).not.toContain('287 mm');
  go();
  expect(window.location.search).toContain('width=287+mm');
  expect(kept()).toContain('287 mm');
});

test('what cannot be read is not kept as a case, but stays in the address', () => {
  render(<Movement remembers="cases" />);
  type('wide');
  leave();
  expect(window.location.search).toContain('width=wide');
  expect(kept()).not.toContain('wide');
});

test('a page that is loaded anew under its old address shows what was typed last, and only then', () => {
  render(<Movement remembers="cases" />);
  const worked = width().value;
  type('287 mm');
  leave();
  comeAgain('reload', '/page');
  expect(width().value).toBe('287 mm');
  // It is given once.
  comeAgain('reload', '/page');
  expect(width().value).toBe(worked);
});

test.each([
  ['another way', 'navigate', '/page'],
  ['another address', 'reload', '/page?width=111+mm'],
  ['another page', 'reload', '/other'],
] as const)('whoever comes by %s gets what the address says', (_, way, address) => {
  render(<Movement remembers="cases" />);
  const worked = width().value;
  type('287 mm');
  leave();
  comeAgain(way, address);
  expect(width().value).toBe(address.includes('111') ? '111 mm' : worked);
});

test('a page that nothing was typed in is left as it came', () => {
  render(<Movement remembers="cases" />);
  leave();
  expect(window.location.search).toBe('');
  expect(kept()).toBe('{"habits":{},"last":{}}'.slice(0, kept().length));
  expect(window.sessionStorage.length).toBe(0);
});
