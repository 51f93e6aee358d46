import { act, cleanup } from '@testing-library/react';
import type { ReactNode } from 'react';
import { hydrateRoot } from 'react-dom/client';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import Home from '../../src/site/home/Home.tsx';
import SearchPage from '../../src/site/search/SearchPage.tsx';
import WoodsIndex from '../../src/site/woods/WoodsIndex.tsx';

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
  const sent = renderToString(page);
  const box = document.body.appendChild(document.createElement('div'));
  box.innerHTML = sent;
  const fields = Object.entries(typed).map(([name, text]) => {
    const field = box.querySelector<HTMLInputElement>(name);
    if (!field) throw new Error(`no field ${name}`);
    field.value = text;
    return [name, text] as const;
  });
  meanwhile();
  const root = await act(async () => hydrateRoot(box, page));
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

test('a search that stands in the address stays', async () => {
  const { box, done } = await comesAlive(<SearchPage />, {}, () => window.history.replaceState(null, '', '/?q=oak'));
  expect(box.querySelector<HTMLInputElement>('input[name=q]')?.value).toBe('oak');
  expect(window.location.search).toBe('?q=oak');
  await done();
});
