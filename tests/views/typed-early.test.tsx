import { act, cleanup } from '@testing-library/react';
import { type ReactNode, useEffect, useState } from 'react';
import { hydrateRoot } from 'react-dom/client';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import Home from '../../src/site/home/Home.tsx';
import { useTypedEarly } from '../../src/site/page/use-typed-early.ts';
import ResinSheets from '../../src/site/resin/ResinSheets.tsx';
import SearchPage from '../../src/site/search/SearchPage.tsx';
import WoodsIndex from '../../src/site/woods/WoodsIndex.tsx';

/** What surrounds every page, as far as this goes. */
function Around({ children }: { children: ReactNode }) {
  useTypedEarly();
  return children;
}

// No server stands behind these pages: the search says so, which is an answer to what was typed.
beforeEach(() => vi.stubGlobal('fetch', async () => new Response('', { status: 404 })));
afterEach(() => {
  vi.unstubAllGlobals();
  cleanup();
  document.body.replaceChildren();
  window.history.replaceState(null, '', '/');
  keepUnits(defaultUnits);
});

/** What was typed into fields of a page while its scripts were on their way, once they have come. */
async function comesAlive(page: ReactNode, typed: Record<string, string>, meanwhile = () => {}) {
  keepUnits(defaultUnits);
  const whole = <Around>{page}</Around>;
  const sent = renderToString(whole);
  const box = document.body.appendChild(document.createElement('div'));
  box.innerHTML = sent;
  const fields = Object.entries(typed).map(([name, text]) => {
    const field = box.querySelector<HTMLInputElement>(name);
    if (!field) throw new Error(`no field ${name}`);
    field.value = text;
    return [name, text] as const;
  });
  meanwhile();
  const root = await act(async () => hydrateRoot(box, whole));
  await act(() => new Promise((resolve) => setTimeout(resolve)));
  for (const [name, text] of fields) expect(box.querySelector<HTMLInputElement>(name)?.value, name).toBe(text);
  return { box, done: () => act(async () => root.unmount()) };
}

test('the search takes over what was typed before it was alive', async () => {
  const { box, done } = await comesAlive(<SearchPage />, { 'input[name=q]': 'sassafras' });
  // It is looked for, not only shown.
  expect(box.querySelector('[role=status]')?.textContent).not.toBe('');
  await done();
});

test('so does the first page, with its search and the width of its board, in whichever units it wakes', async () => {
  const { box, done } = await comesAlive(
    <Home usual={[]} count={320} />,
    { 'input[name=q]': 'sassafras', 'input[id$=-width]': '14' },
    () => keepUnits({ ...defaultUnits, system: 'inch' }),
  );
  expect(box.querySelector('search [role=status]')?.textContent).not.toBe('');
  await done();
});

test('so does the list of woods', async () => {
  const { done } = await comesAlive(<WoodsIndex woods={[]} />, { 'input[name=q]': 'sassafras' });
  expect(window.location.search).toBe('?q=sassafras');
  await done();
});

test('so does the form of a data sheet, beside what was kept of it before', async () => {
  localStorage.setItem('kerf-resin-sheet-draft', JSON.stringify({ raw: { potLife: '40 min' }, began: null }));
  const { box, done } = await comesAlive(<ResinSheets />, { '[data-field=name] input': 'Lakeside amber' });
  expect(box.querySelector<HTMLInputElement>('[data-field=potLife] input')?.value).toBe('40 min');
  expect(JSON.parse(localStorage.getItem('kerf-resin-sheet-draft') ?? '{}').raw).toEqual({
    potLife: '40 min',
    name: 'Lakeside amber',
  });
  localStorage.clear();
  await done();
});

/** A form with every kind of control, whose texts are all drawn anew as soon as it is alive. */
function EveryKind() {
  const [shown, setShown] = useState({ text: 'a', area: '', list: 'one', box: false, radio: 'x' });
  const set = (patch: Partial<typeof shown>) => setShown((before) => ({ ...before, ...patch }));
  useEffect(() => setShown((before) => ({ ...before })), []);
  return (
    <form>
      <input name="text" value={shown.text} onChange={(event) => set({ text: event.target.value })} />
      <textarea name="area" value={shown.area} onChange={(event) => set({ area: event.target.value })} />
      <select name="list" value={shown.list} onChange={(event) => set({ list: event.target.value })}>
        <option>one</option>
        <option>two</option>
      </select>
      <input name="box" type="checkbox" checked={shown.box} onChange={(event) => set({ box: event.target.checked })} />
      {['x', 'y'].map((each) => (
        <input
          key={each}
          name="radio"
          type="radio"
          value={each}
          checked={shown.radio === each}
          onChange={() => set({ radio: each })}
        />
      ))}
      <output>{JSON.stringify(shown)}</output>
    </form>
  );
}

test('so does any page, whatever kind of control it is', async () => {
  const { box, done } = await comesAlive(
    <EveryKind />,
    { '[name=text]': 'ash 40 mm', '[name=area]': 'two\nlines', '[name=list]': 'two' },
    () => {
      document.querySelector<HTMLInputElement>('[name=box]')?.click();
      document.querySelector<HTMLInputElement>('[value=y]')?.click();
    },
  );
  expect(JSON.parse(box.querySelector('output')?.textContent ?? '')).toEqual({
    text: 'ash 40 mm',
    area: 'two\nlines',
    list: 'two',
    box: true,
    radio: 'y',
  });
  await done();
});

test('a search that stands in the address stays', async () => {
  const { box, done } = await comesAlive(<SearchPage />, {}, () => window.history.replaceState(null, '', '/?q=oak'));
  expect(box.querySelector<HTMLInputElement>('input[name=q]')?.value).toBe('oak');
  expect(window.location.search).toBe('?q=oak');
  await done();
});
