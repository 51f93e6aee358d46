import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { MethodQuestion } from '../../src/method/page/types.ts';

/** What the page asked, in place of the worker that would answer. */
const questions: MethodQuestion[] = [];
vi.mock('../../src/site/page/Page.tsx', () => ({
  Page: ({ children }: { children: React.ReactNode }) => <main>{children}</main>,
}));
vi.mock('../../src/site/method/use-method.ts', () => ({
  useMethod: (question?: MethodQuestion) => {
    if (question) questions.push(question);
    return { page: undefined, problems: [], pending: question ? 'numbers' : 'nothing', failed: false };
  },
}));
const { default: SheetsPage } = await import('../../src/site/sheets/SheetsPage.tsx');

const hours = { zone: 'America/Chicago', sessions: ['2027-01-12 18:30-21:00', '2027-01-05 18:30-21:00'] };
const method = readFileSync('methods/class-of-twelve.yaml', 'utf8');

beforeEach(() => {
  questions.length = 0;
  vi.stubGlobal('fetch', async (address: string) =>
    address === '/data/methods/class-of-twelve.yaml'
      ? new Response(method)
      : address === '/data/methods/calendars.json'
        ? Response.json([{ id: 'six-tuesdays', title: 'Six Tuesdays', hours }])
        : new Response('', { status: 404 }),
  );
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function show(query: string): void {
  window.history.replaceState(null, '', `/sheets?${query}`);
  render(<SheetsPage />);
}

test('the sheets are planned in the hours that the address names, with the people of the class', async () => {
  show('method=class-of-twelve&calendar=six-tuesdays&which=teacher');
  await waitFor(() => expect(questions.length).toBeGreaterThan(0), { timeout: 20_000 });
  for (const question of questions) expect(question).toMatchObject({ hours, start: '2027-01-05', people: 14 });
});

test('without them they are planned as the shop works', async () => {
  show('method=class-of-twelve');
  await waitFor(() => expect(questions.length).toBeGreaterThan(0), { timeout: 20_000 });
  for (const question of questions) expect(question).not.toHaveProperty('hours');
});

test('hours that are not there, and a count that is none, are said and nothing is worked out', async () => {
  show('method=class-of-twelve&calendar=mondays&pieces=dozen');
  await waitFor(
    () =>
      expect(document.body.textContent).toContain('There is no calendar “mondays” here. Those that are: six-tuesdays.'),
    { timeout: 20_000 },
  );
  expect(screen.getByText(/“dozen” is not a whole number/)).toBeDefined();
  expect(questions).toEqual([]);
});
