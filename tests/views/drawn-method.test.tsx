import { act, cleanup, fireEvent } from '@testing-library/react';
import { hydrateRoot, type Root } from 'react-dom/client';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { answerNumbers } from '../../src/method/page/answer.ts';
import type { MethodPage, MethodQuestion } from '../../src/method/page/types.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import type { DrawnMethod, LiveMethod } from '../../src/site/method/drawn-method.ts';
import { readMethodTexts } from '../../src/store/index.ts';

/** Workers begun, with the code that they are of. */
const begun: string[] = [];
class IdleWorker {
  onerror: unknown = null;
  constructor(of: URL) {
    begun.push(String(of));
  }
}

/** What the page asked, in place of the worker that would answer. */
const questions: MethodQuestion[] = [];
vi.mock('../../src/site/page/Page.tsx', () => ({
  Page: ({ children }: { children: React.ReactNode }) => <main>{children}</main>,
}));
vi.mock('../../src/site/method/use-method.ts', () => ({
  useMethod: (question: MethodQuestion | undefined, first: MethodPage) => {
    if (question) questions.push(question);
    return { page: first, problems: [], pending: question ? 'numbers' : 'nothing', failed: false };
  },
}));
const { default: MethodRoute } = await import('../../src/site/method/MethodRoute.tsx');
const { MethodLive } = await import('../../src/site/method/MethodLive.tsx');

const text = readMethodTexts().find(({ id }) => id === 'first-tray')?.text ?? '';
let live: LiveMethod;
beforeAll(async () => {
  const answered = await answerNumbers({ text, file: 'methods/first-tray.yaml' });
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  live = { page: JSON.parse(JSON.stringify(answered.page)), calendars: [], View: MethodLive };
});

/** What the page says to programs, where it is written. */
const Head = () => null;

let root: Root;
let page: HTMLElement;
let complaints: unknown[];
let count = 0;
/** A page as sent, and come to life without the method's data and code. Each has a name of its own: what one fetched the next would find. */
async function sent(load: DrawnMethod['load'], read: () => void = () => undefined): Promise<void> {
  count += 1;
  const method: DrawnMethod = { id: `first-tray-${count}`, title: 'First tray', for: 'A beginner', load };
  page = document.createElement('div');
  document.body.append(page);
  const here = { ...live, Head };
  page.innerHTML = renderToString(<MethodRoute method={{ ...method, here }} />);
  read();
  complaints = [];
  await act(async () => {
    root = hydrateRoot(page, <MethodRoute method={method} />, {
      onRecoverableError: (problem) => complaints.push(problem),
    });
  });
}
const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));
const never = () => new Promise<LiveMethod>(() => undefined);
const lengthField = () => page.querySelector<HTMLInputElement>('[data-field="length"] input') as HTMLInputElement;
const figureIn = (step: string) =>
  page.querySelector<HTMLButtonElement>(`#step-${step} button[aria-controls]`) as HTMLButtonElement;
const behind = (button: Element) => document.getElementById(button.getAttribute('aria-controls') ?? '') as HTMLElement;
function type(control: HTMLInputElement, value: string): void {
  control.focus();
  control.value = value;
  control.dispatchEvent(new Event('input', { bubbles: true }));
}

beforeEach(() => {
  window.localStorage.clear();
  act(() => keepUnits(defaultUnits));
  window.localStorage.clear();
  window.history.replaceState(null, '', '/methods/first-tray');
  questions.length = 0;
  vi.stubGlobal('Worker', IdleWorker);
  vi.stubGlobal('fetch', async (address: string) =>
    String(address).endsWith('.yaml') ? new Response(text) : new Response('', { status: 404 }),
  );
});
afterEach(() => {
  act(() => root?.unmount());
  page?.remove();
  cleanup();
  vi.unstubAllGlobals();
});

test('whoever only reads a method, and unfolds what its figures rest on, fetches neither its data nor its code', async () => {
  const load = vi.fn(never);
  await sent(load);
  expect(complaints).toEqual([]);
  const figure = figureIn('stack');
  figure.click();
  expect(figure.getAttribute('aria-expanded')).toBe('true');
  expect(behind(figure).hasAttribute('data-open')).toBe(true);
  figure.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  expect(behind(figure).hasAttribute('data-open')).toBe(false);
  const more = [...page.querySelectorAll('button')].find((button) => /^More:/.test(button.textContent ?? ''));
  const words = () =>
    [...(more?.querySelectorAll<HTMLElement>('[data-when]') ?? [])]
      .filter(({ hidden }) => !hidden)
      .map(({ textContent }) => textContent);
  expect(words()).toEqual([expect.stringMatching(/^More: /)]);
  more?.click();
  expect(words()).toEqual(['Less']);
  expect(behind(more as Element).hasAttribute('data-open')).toBe(true);
  page.querySelector<HTMLElement>('#step-stack')?.dispatchEvent(new Event('pointerdown', { bubbles: true }));
  expect(load).not.toHaveBeenCalled();
});

test('what was typed into its form before the code was there is asked, and what was unfolded stays so', async () => {
  let give: (fetched: LiveMethod) => void = () => undefined;
  const load = vi.fn(
    () =>
      new Promise<LiveMethod>((resolve) => {
        give = resolve;
      }),
  );
  await sent(load);
  figureIn('stack').click();
  type(lengthField(), '420 mm');
  await vi.waitFor(() => expect(load).toHaveBeenCalledOnce());
  await act(async () => {
    give(live);
    await wait(100);
  });
  // It comes once nobody types, and the address behind that.
  for (let turns = 0; turns < 40 && window.location.search === ''; turns += 1) await act(() => wait(50));
  expect(window.location.search).toBe('?length=420+mm');
  expect(page.querySelector('[data-part="sent"]')).toBeNull();
  expect(lengthField().value).toBe('420 mm');
  expect(questions.at(-1)?.set).toEqual({ length: '420 mm' });
  expect(figureIn('stack').getAttribute('aria-expanded')).toBe('true');
});

test.each([
  ['a case in the address', () => window.history.replaceState(null, '', '/methods/first-tray?pieces=4')],
  ['inches', () => keepUnits({ ...defaultUnits, system: 'inch' })],
  ['a shop record of the reader’s own', () => window.localStorage.setItem('kerf-shop', '{"text":"shop: 1"}')],
])('%s asks for another case than was sent: the code comes at once', async (_, set) => {
  act(set);
  const load = vi.fn(never);
  await sent(load);
  await vi.waitFor(() => expect(load).toHaveBeenCalledOnce());
});

test('a link of a case that the page as sent does not know waits for the live one, and leads to that case', async () => {
  window.history.replaceState(null, '', '/methods/first-tray?pieces=4');
  let give: (method: LiveMethod) => void = () => undefined;
  const load = vi.fn(() => new Promise<LiveMethod>((resolve) => (give = resolve)));
  await sent(load);
  await vi.waitFor(() => expect(load).toHaveBeenCalledOnce());
  const quote = () =>
    [...page.querySelectorAll('a')].find(({ textContent }) => textContent?.startsWith('Sell it')) as HTMLAnchorElement;
  const click = new MouseEvent('click', { bubbles: true, cancelable: true });
  quote().dispatchEvent(click);
  expect(click.defaultPrevented).toBe(true);
  const pressed: string[] = [];
  page.addEventListener('click', (event) => {
    pressed.push((event.target as Element).closest('a')?.getAttribute('href') ?? '');
    event.preventDefault();
  });
  await act(async () => {
    give(live);
    await wait(300);
  });
  expect(pressed).toEqual([expect.stringMatching(/pieces=4/)]);
});

test('its links lead to what was typed, also where the answer is long in coming', async () => {
  await sent(async () => live);
  type(lengthField(), '420 mm');
  const quote = () =>
    [...page.querySelectorAll('a')].find(({ textContent }) => textContent?.startsWith('Sell it'))?.getAttribute('href');
  const leadsTo = async (length: string) => {
    for (let turns = 0; turns < 40 && !quote()?.includes(length); turns += 1) await act(() => wait(50));
    expect(quote()).toContain(length);
  };
  await leadsTo('length=420');
  fireEvent.input(lengthField(), { target: { value: '430 mm' } });
  await leadsTo('length=430');
});

const notice = () => page.querySelector<HTMLElement>('[data-part="not-yours"]');
/** What a browser does with the script beside the words, which runs as the page is read. */
function asRead(): void {
  const script = [...page.querySelectorAll('script')].find((each) =>
    each.textContent?.includes('previousElementSibling.hidden'),
  );
  Object.defineProperty(document, 'currentScript', { value: script, configurable: true });
  new Function(script?.textContent ?? '')();
  Object.defineProperty(document, 'currentScript', { value: null, configurable: true });
}

const readers: readonly [string, () => void, boolean][] = [
  ['a shop record', () => window.localStorage.setItem('kerf-shop', '{"text":"shop: 1"}'), true],
  ['a case in the address', () => window.history.replaceState(null, '', '/methods/first-tray?pieces=4'), true],
  [
    'a shop record that is set aside',
    () => window.localStorage.setItem('kerf-shop', '{"text":"shop: 1","aside":true}'),
    false,
  ],
  ['nothing of their own', () => undefined, false],
];
describe.each(readers)('to a reader with %s', (_, set, isOther) => {
  test(`the page as sent ${isOther ? 'says that it is not theirs before anything else can' : 'says nothing of it'}`, async () => {
    act(set);
    await sent(never, asRead);
    expect(complaints).toEqual([]);
    expect(notice()?.hidden).toBe(!isOther);
    expect(notice()?.textContent).toMatch(/^What stands here is still the method’s own case/);
  });
});

test('once its code is there the page goes on saying so until the own case has come, and fetches both ahead', async () => {
  window.history.replaceState(null, '', '/methods/first-tray?pieces=4');
  const fetched: string[] = [];
  vi.stubGlobal('fetch', async (address: string) => {
    fetched.push(String(address));
    return new Response(text);
  });
  let give: (its: LiveMethod) => void = () => undefined;
  const load = vi.fn(
    () =>
      new Promise<LiveMethod>((resolve) => {
        give = resolve;
      }),
  );
  await sent(load, asRead);
  await vi.waitFor(() => expect(load).toHaveBeenCalledOnce());
  // The code of the page has not come: the method and its worker are on their way all the same.
  expect(fetched.filter((address) => address.endsWith('.yaml'))).toHaveLength(1);
  // One for all pages of a visit.
  expect(begun).toEqual([expect.stringContaining('worker.ts')]);
  await act(async () => {
    give(live);
    await wait(100);
  });
  const isSent = () => page.querySelector('[data-part="sent"]') !== null;
  for (let turns = 0; turns < 100 && isSent(); turns += 1) await act(() => wait(50));
  expect(isSent()).toBe(false);
  expect([...page.querySelectorAll('[data-part="not-yours"]')]).toHaveLength(1);
  expect(notice()?.hidden).toBe(false);
  for (let turns = 0; turns < 100 && questions.length === 0; turns += 1) await act(() => wait(50));
  expect(questions.length).toBeGreaterThan(0);
  expect(fetched.filter((address) => address.endsWith('.yaml'))).toHaveLength(1);
});
