import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPrinted, tidy } from '../../../src/model/species/printed.ts';
import { tableNamed } from './world.ts';

describe('a printed value', () => {
  test.each([
    ['0.53', { value: 0.53 }],
    ['0.55; printed as about', { value: 0.55, note: 'Printed as about.' }],
    ['0.80 to 0.91', { value: 0.855, low: 0.8, high: 0.91 }],
    ['7.4-9.1', { value: 8.25, low: 7.4, high: 9.1 }],
    ['0.30 to 0.60, averaging about 0.40', { value: 0.4, low: 0.3, high: 0.6 }],
    ['8 to 14, averaging 10 in the trade', { value: 10, low: 8, high: 14 }],
    [
      '1860 to 3920; single reports 1860 and 2520',
      { value: 2890, low: 1860, high: 3920, note: 'Single reports 1860 and 2520.' },
    ],
    ['0.84 Honduras and Venezuela; 0.75 Brazil and Colombia', { value: 0.795, low: 0.75, high: 0.84 }],
    ['3540; another report 3330', { value: 3540, note: 'Another report 3330.' }],
    ['0.48 (0.45 in the Wood Handbook)', { value: 0.48, note: '0.45 in the Wood Handbook.' }],
  ])('%s', (printed, expected) => {
    expect(readPrinted(printed)).toMatchObject(expected);
  });

  test.each(['very durable', 'without odor, stain or taste', '', '12 or so'])(
    'that is words gives null: “%s”',
    (printed) => {
      expect(readPrinted(printed)).toBeNull();
    },
  );

  test('with ends says what they mean, and holds its value between them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 9999 }), (one, other) => {
        const read = readPrinted(`${one} to ${other}`);
        expect(read?.band).toBeTruthy();
        expect(read?.low).toBeLessThanOrEqual(read?.value ?? 0);
        expect(read?.high).toBeGreaterThanOrEqual(read?.value ?? Number.POSITIVE_INFINITY);
      }),
    );
  });
});

test('every numeric row of the other documents is read; only words are not', () => {
  const words = ['heartwood decay resistance', 'durability', 'taste', 'flavor given to food'];
  const unread = tableNamed('other-sources').rows.filter(
    (row) => !words.includes(String(row.cells.property)) && readPrinted(String(row.cells.value)) === null,
  );
  expect(unread.map((row) => `line ${row.line}: ${row.cells.value}`)).toEqual([]);
});

test('tidy rounds away binary noise and nothing else', () => {
  expect(tidy(0.1 + 0.2)).toBe(0.3);
  expect(tidy(4448.2216152605)).toBe(4448.22);
});
