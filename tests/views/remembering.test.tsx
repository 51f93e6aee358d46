import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { forgetAll } from '../../src/calculators/view/kept-cases.ts';
import { changeKept } from '../../src/calculators/view/kept-sheets.ts';
import { KeptCases } from '../../src/site/kept/KeptCases.tsx';
import { viewOf } from './view-of.tsx';

const Movement = await viewOf('seasonal-movement');
const Coat = await viewOf('flood-coat');

const at = (search = '') => window.history.replaceState(null, '', `/page${search}`);
/** Longer than the address takes to follow and a case must then stand before it is kept. */
const settle = () => act(() => vi.advanceTimersByTimeAsync(1100));
const width = () => screen.getByLabelText<HTMLInputElement>(/^Width across/);
const place = () => screen.getByLabelText<HTMLInputElement>(/^Nearest place/);
const goOn = () => screen.queryByRole('button', { name: 'Go on with your last case' });

beforeEach(() => {
  vi.useFakeTimers();
  window.localStorage.clear();
  act(forgetAll);
  at();
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

describe('the last case', () => {
  test('is offered on a page opened without one, and takes the place of the worked case only when asked', async () => {
    const { unmount } = render(<Movement remembers="cases" />);
    const worked = width().value;
    expect(goOn()).toBeNull();
    fireEvent.change(width(), { target: { value: '217 mm' } });
    await settle();
    unmount();
    at();
    render(<Movement remembers="cases" />);
    expect(width().value).toBe(worked);
    fireEvent.click(goOn() as HTMLElement);
    expect(width().value).toBe('217 mm');
    await settle();
    expect(window.location.search).toContain('width=217+mm');
    expect(goOn()).toBeNull();
  });

  test('is not offered beside a case of a link, and a link is not remembered before something of it is changed', async () => {
    at('?width=111+mm');
    const { unmount } = render(<Movement remembers="cases" />);
    await settle();
    expect(window.localStorage.getItem('kerf-remembered') ?? '').not.toContain('111 mm');
    fireEvent.change(width(), { target: { value: '112 mm' } });
    await settle();
    expect(window.localStorage.getItem('kerf-remembered')).toContain('112 mm');
    unmount();
    at('?width=111+mm');
    render(<Movement remembers="cases" />);
    expect(width().value).toBe('111 mm');
    expect(goOn()).toBeNull();
  });

  test('what cannot be read is not remembered', async () => {
    render(<Movement remembers="cases" />);
    fireEvent.change(width(), { target: { value: 'wide' } });
    await settle();
    expect(window.localStorage.getItem('kerf-remembered')).toBeNull();
  });
});

describe('the reader’s own', () => {
  test('a place is there the next time; the server and a how-to page know nothing of it', async () => {
    const { unmount } = render(<Movement remembers="cases" />);
    fireEvent.change(place(), { target: { value: 'oslo-no' } });
    await settle();
    unmount();
    at();
    expect(renderToString(<Movement remembers="cases" />)).not.toContain('value="Oslo');
    render(<Movement remembers="cases" />);
    expect(place().value).toContain('Oslo');
    cleanup();
    render(<Movement />);
    expect(place().value).not.toContain('Oslo');
  });

  test('the only kept data sheet is chosen by itself, and no longer once it is removed', () => {
    const sheet = { name: 'Lakeside slow', kind: 'slow-casting-2-1' };
    act(() => {
      changeKept(() => [sheet]);
    });
    render(<Coat remembers="cases" />);
    const list = () => document.querySelector<HTMLSelectElement>('select[data-part="resin"]') as HTMLSelectElement;
    expect(list().selectedOptions[0]?.textContent).toBe('Lakeside slow');
    act(() => {
      changeKept(() => []);
    });
    expect(list().value).toBe('fast-coating-1-1');
  });
});

test('all that is kept stands on one page, and is forgotten there', async () => {
  const entry = { id: 'seasonal-movement', title: 'Movement through the year' };
  const { unmount } = render(<Movement remembers="cases" />);
  fireEvent.change(place(), { target: { value: 'oslo-no' } });
  await settle();
  unmount();
  render(<KeptCases calculators={[entry]} />);
  const kept = () => [...document.querySelectorAll('[data-part="kept"] strong')].map((one) => one.textContent);
  expect(kept()).toEqual(['My place', 'Movement through the year']);
  fireEvent.click(screen.getByRole('button', { name: 'Forget: My place' }));
  expect(kept()).toEqual(['Movement through the year']);
  fireEvent.click(screen.getByRole('button', { name: 'Forget all of this' }));
  expect(kept()).toEqual([]);
  expect(screen.getByText(/Nothing of your cases yet/)).toBeTruthy();
  expect(window.localStorage.getItem('kerf-remembered')).toBe('{"habits":{},"last":{}}');
});
