import { expect, test } from 'vitest';
import { howTo } from './how-to.ts';

/** Pages that speak of the six evenings, and what they link there. */
const evenings: readonly (readonly [page: string, address: string])[] = [
  ['one-tray', '/methods/class-of-twelve?calendar=six-tuesdays'],
  ['one-tray', '/sheets?method=class-of-twelve&calendar=six-tuesdays'],
  ['lesson-plans', '/methods/class-of-twelve?calendar=six-tuesdays'],
  ['a-room-and-a-class', '/methods/class-of-twelve?calendar=six-tuesdays'],
  ['teaching-with-sheets', '/methods/class-of-twelve?calendar=six-tuesdays'],
];

test.each(evenings)('%s leads to %s, planned on its evenings', (page, address) => {
  expect(howTo(page).text).toContain(`](${address})`);
});
