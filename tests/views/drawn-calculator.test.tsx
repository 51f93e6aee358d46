import { act, cleanup } from '@testing-library/react';
import { hydrateRoot, type Root } from 'react-dom/client';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { turnScript } from '../../src/calculators/view/both-units.tsx';
import { CalculatorAhead, CalculatorView } from '../../src/calculators/view/CalculatorView.tsx';
import { giveTo, openGroups, takeFrom } from '../../src/calculators/view/carry-over.ts';
import { DrawnCalculator } from '../../src/calculators/view/DrawnCalculator.tsx';
import type { Drawn, Live } from '../../src/calculators/view/drawn.ts';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { sample } from '../calculators/kit/sample.ts';

const live: Live = { shown: { calculator: sample }, CalculatorView, CalculatorAhead };
/** Each test has a calculator of its own: what one has fetched, the next would find. */
let count = 0;
function drawn(load: Drawn['load']): Drawn {
  count += 1;
  return { id: `sample-${count}`, title: 'Sample', summary: 'A sample.', asksMarket: false, load };
}

let root: Root;
let page: HTMLElement;
let complaints: unknown[];
/** A page as sent, and come to life without the calculator's code. */
async function sent(load: Drawn['load']): Promise<void> {
  const calculator = drawn(load);
  page = document.createElement('main');
  document.body.append(page);
  page.innerHTML = renderToString(<DrawnCalculator calculator={{ ...calculator, live }} prefix="" />);
  // Nothing runs in markup that is set as text.
  const currentScript = page.querySelector('template + script');
  new Function('document', turnScript)({ currentScript, documentElement: document.documentElement });
  complaints = [];
  await act(async () => {
    root = hydrateRoot(page, <DrawnCalculator calculator={calculator} prefix="" />, {
      onRecoverableError: (problem) => complaints.push(problem),
    });
  });
}

/** A promise that the test keeps. */
function held() {
  let give: () => void = () => undefined;
  const promise = new Promise<Live>((resolve) => {
    give = () => resolve(live);
  });
  return {
    load: () => promise,
    give: async () => {
      give();
      await comes();
    },
  };
}
/** As long as a busy machine takes to work the live one out and to draw it; where it must not come, some waiting shows that it does not. */
async function comes(): Promise<void> {
  for (let turns = 0; turns < 20 && page.querySelector('[data-part="sent"]'); turns += 1) await act(() => wait(40));
  await act(() => wait(80));
}
const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));
const width = () => page.querySelector<HTMLInputElement>('[data-field="width"] input') as HTMLInputElement;
/** What the page shows of the answer. */
const headline = () => page.querySelector('[data-figure] output')?.textContent;
function type(control: HTMLInputElement, text: string): void {
  control.focus();
  control.value = text;
  control.dispatchEvent(new Event('input', { bubbles: true }));
}

beforeEach(() => {
  window.localStorage.clear();
  act(() => keepUnits(defaultUnits));
  window.localStorage.clear();
  window.history.replaceState(null, '', '/page');
});
afterEach(() => {
  act(() => root?.unmount());
  page?.remove();
  cleanup();
});

test('the page as sent stands as it is, without an error and without its code, until somebody comes near', async () => {
  const load = vi.fn(held().load);
  await sent(load);
  expect(headline()).toMatch(/\d/);
  expect(width().value).not.toBe('');
  expect(complaints).toEqual([]);
  expect(load).not.toHaveBeenCalled();
  await act(async () => width().dispatchEvent(new Event('pointerdown', { bubbles: true })));
  window.dispatchEvent(new Event('pointerup'));
  await vi.waitFor(() => expect(load).toHaveBeenCalledOnce());
});

test('the answer stands while the code is on its way, and what was typed meanwhile is answered once it is there', async () => {
  const { load, give } = held();
  await sent(load);
  const before = headline();
  type(width(), '123 mm');
  await act(() => wait(20));
  expect(headline()).toBe(before);
  await give();
  await act(() => wait(400));
  expect(width().value).toBe('123 mm');
  expect(headline()).not.toBe(before);
  expect(window.location.search).toContain('width=123+mm');
});

test('whoever was in a field is there still, with the same place in its text', async () => {
  const { load, give } = held();
  await sent(load);
  type(width(), '123 mm');
  width().setSelectionRange(3, 3);
  await give();
  expect(document.activeElement).toBe(width());
  expect([width().selectionStart, width().selectionEnd]).toEqual([3, 3]);
});

test('what has come while somebody types takes its place when they pause, but not for ever', async () => {
  const clock = vi.spyOn(performance, 'now').mockReturnValue(1000);
  const { load, give } = held();
  await sent(load);
  type(width(), '123 mm');
  await give();
  const standsAsSent = () => page.querySelector('[data-part="sent"]') !== null;
  expect(standsAsSent()).toBe(true);
  // Typed on and on, each time before a pause.
  for (const now of [1400, 1800]) {
    clock.mockReturnValue(now);
    type(width(), `${now} mm`);
    await act(() => wait(80));
    expect(standsAsSent()).toBe(true);
  }
  clock.mockReturnValue(1800 + 600);
  await act(() => wait(200));
  clock.mockRestore();
  await act(() => wait(200));
  expect(standsAsSent()).toBe(false);
  expect(width().value).toBe('1800 mm');
});

test('whoever enters a field writes over what stands in it, and a form that is not live is not sent', async () => {
  await sent(held().load);
  act(() => width().focus());
  expect([width().selectionStart, width().selectionEnd]).toEqual([0, width().value.length]);
  const submit = new Event('submit', { bubbles: true, cancelable: true });
  width().dispatchEvent(submit);
  expect(submit.defaultPrevented).toBe(true);
});

test('keys that pick are pressed again, in their order, after the text', async () => {
  const { load, give } = held();
  await sent(load);
  type(width(), '123 mm');
  for (const key of ['ArrowDown', 'Enter']) width().dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
  const heard: string[] = [];
  document.addEventListener('keydown', ({ key }) => heard.push(key));
  await give();
  await act(() => wait(100));
  expect(heard).toEqual(['ArrowDown', 'Enter']);
});

test('a button that was pressed meanwhile is pressed', async () => {
  const { load, give } = held();
  await sent(load);
  type(width(), '123 mm');
  const reset = [...page.querySelectorAll('button')].find(({ textContent }) => textContent === 'Start again');
  reset?.click();
  expect(reset).toBeDefined();
  await give();
  await act(() => wait(400));
  expect(width().value).not.toBe('123 mm');
});

test('whoever has come to a button is on it in the live form: the next key is meant for it', async () => {
  const { load, give } = held();
  await sent(load);
  const button = () => [...page.querySelectorAll('button')].find(({ textContent }) => textContent === 'Start again');
  const was = button();
  act(() => was?.focus());
  await give();
  await act(() => wait(100));
  expect(button()).not.toBe(was);
  expect(document.activeElement).toBe(button());
});

test('whoever pressed a button is on it still when it is pressed', async () => {
  const { load, give } = held();
  await sent(load);
  const button = () => [...page.querySelectorAll('button')].find(({ textContent }) => textContent === 'Start again');
  button()?.focus();
  const was = button();
  was?.click();
  const at: (Element | null)[] = [];
  document.addEventListener('click', () => at.push(document.activeElement), { capture: true });
  await give();
  await act(() => wait(400));
  expect(at).toHaveLength(1);
  expect(at[0]?.textContent).toBe('Start again');
  expect(at[0]).not.toBe(was);
});

test('words come where somebody waits, over what stands there; where nothing can be fetched they say so, and one can try again', async () => {
  let works = false;
  const load = vi.fn(async () => {
    if (!works) throw new Error('no connection');
    return live;
  });
  await sent(load);
  type(width(), '123 mm');
  await act(() => wait(60));
  expect(page.textContent).toContain('could not be fetched');
  expect(width().value).toBe('123 mm');
  works = true;
  const again = [...page.querySelectorAll('button')].find(({ textContent }) => textContent === 'Try again');
  await act(async () => again?.click());
  await act(() => wait(80));
  expect(page.textContent).not.toContain('could not be fetched');
  expect(width().value).toBe('123 mm');
});

test.each([
  ['a case in the address', () => window.history.replaceState(null, '', '/page?width=100+mm')],
  ['inches in other steps', () => keepUnits({ system: 'inch', inches: 'decimal' })],
])('%s asks for another answer than was sent: the code comes at once', async (_, set) => {
  act(set);
  const load = vi.fn(async () => live);
  await sent(load);
  await act(() => wait(80));
  expect(load).toHaveBeenCalledOnce();
  expect(page.querySelector('[data-part="fetching"]')).toBeNull();
});

test('a reader of inches has them in the page as sent: the code comes for another system only', async () => {
  act(() => keepUnits({ ...defaultUnits, system: 'inch' }));
  const load = vi.fn(async () => live);
  await sent(load);
  await act(() => wait(80));
  expect(width().value).toBe('12 in');
  expect(load).not.toHaveBeenCalled();
  await act(async () => keepUnits(defaultUnits));
  await comes();
  expect(load).toHaveBeenCalledOnce();
  expect(width().value).toBe('300 mm');
});

test('what a reader of inches typed into the page as sent is answered in inches', async () => {
  act(() => keepUnits({ ...defaultUnits, system: 'inch' }));
  const { load, give } = held();
  await sent(load);
  type(width(), '10');
  await give();
  await act(() => wait(400));
  expect(width().value).toBe('10');
  expect(window.location.search).toContain('width=10+in');
});

test('what was typed into a page that was left before its code came stands there when it is loaded anew, and is answered', async () => {
  window.sessionStorage.clear();
  await sent(held().load);
  type(width(), '287 mm');
  act(() => void window.dispatchEvent(new Event('pagehide')));
  act(() => root.unmount());
  page.remove();
  const ways = vi.spyOn(performance, 'getEntriesByType').mockReturnValue([{ type: 'reload' } as never]);
  // The same calculator comes again.
  count -= 1;
  const { load, give } = held();
  await sent(load);
  expect(width().value).toBe('287 mm');
  await give();
  await act(() => wait(400));
  expect(width().value).toBe('287 mm');
  expect(window.location.search).toContain('width=287+mm');
  ways.mockRestore();
});

test.each([
  ['a group that stood closed as it was sent says nothing', false, false, true],
  ['one that was opened by hand is open', false, true, true],
  ['one that was closed by hand is closed', true, false, false],
])('%s, whatever the live form opened', (_, asSent, left, then) => {
  const form = (open: boolean) => {
    const part = document.createElement('div');
    part.innerHTML = '<details><summary>For experts</summary></details>';
    (part.firstChild as HTMLDetailsElement).open = open;
    return part;
  };
  const drawnForm = form(asSent);
  const before = openGroups(drawnForm);
  (drawnForm.firstChild as HTMLDetailsElement).open = left;
  // As where the address fills a field of the group.
  const liveForm = form(true);
  giveTo(liveForm, takeFrom(drawnForm, undefined, [], before));
  expect((liveForm.firstChild as HTMLDetailsElement).open).toBe(then);
});
