import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Rest } from '../../../src/site/offline/rest.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** When the rest comes, ms from now; `Infinity` where it does not within ten seconds. */
async function whenItComes(rest: Rest): Promise<number> {
  const begun = performance.now();
  let came = Number.POSITIVE_INFINITY;
  void rest.comes().then(() => {
    came = performance.now() - begun;
  });
  await vi.advanceTimersByTimeAsync(10_000);
  return came;
}

test('where no page is in use nothing waits', async () => {
  expect(await whenItComes(new Rest())).toBe(0);
});

test('what is kept for later waits until the page has not been used for a second', async () => {
  const rest = new Rest();
  rest.used();
  await vi.advanceTimersByTimeAsync(300);
  expect(await whenItComes(rest)).toBe(700);
  expect(await whenItComes(rest)).toBe(0);
});

test('a page that is used without a pause is kept all the same', async () => {
  const rest = new Rest();
  const use = setInterval(() => rest.used(), 200);
  rest.used();
  expect(await whenItComes(rest)).toBe(3000);
  clearInterval(use);
});
