import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { labelGrids, labelPlaces, labelSheets, labelsOn } from '../../../src/model/outline/label-grids.ts';
import { papers } from '../../../src/model/outline/tiles.ts';

describe.each(labelGrids.map((grid) => [grid.id, grid] as const))('%s', (_, grid) => {
  const page = papers[grid.paper];
  const places = labelPlaces(grid);

  test('all of its labels lie on the paper, in its middle, and none on another', () => {
    expect(places).toHaveLength(labelsOn(grid));
    for (const { left, top } of places) {
      expect(left).toBeGreaterThan(0);
      expect(top).toBeGreaterThan(0);
      expect(left + grid.width).toBeLessThan(page.width);
      expect(top + grid.height).toBeLessThan(page.height);
    }
    const [first, last] = [places[0], places.at(-1)] as [(typeof places)[0], (typeof places)[0]];
    expect(first.left).toBeCloseTo(page.width - last.left - grid.width, 6);
    expect(first.top).toBeCloseTo(page.height - last.top - grid.height, 6);
    for (const [at, one] of places.entries())
      for (const other of places.slice(at + 1)) {
        const apart =
          Math.abs(one.left - other.left) >= grid.width - 1e-9 || Math.abs(one.top - other.top) >= grid.height - 1e-9;
        expect(apart).toBe(true);
      }
  });

  test('columns, gutters and margins add up to the width of the paper, rows and margins to its height', () => {
    const { left, top } = places[0] as (typeof places)[0];
    expect(2 * left + grid.columns * grid.width + (grid.columns - 1) * grid.gutter).toBeCloseTo(page.width, 6);
    expect(2 * top + grid.rows * grid.height).toBeCloseTo(page.height, 6);
  });
});

test('every label wanted is printed once, in order, and none before the first that is left', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...labelGrids),
      fc.integer({ min: 1, max: 120 }),
      fc.integer({ min: 1, max: 30 }),
      (grid, count, start) => {
        const sheets = labelSheets(grid, count, start);
        const all = sheets.flat();
        expect(all.filter((label) => label !== undefined)).toEqual(Array.from({ length: count }, (_, at) => at));
        expect(all.indexOf(0)).toBe((start - 1) % labelsOn(grid));
        expect(sheets.every((sheet) => sheet.some((label) => label !== undefined))).toBe(true);
      },
    ),
  );
});

test('twelve labels from the thirteenth of fourteen take two sheets', () => {
  const grid = labelGrids.find(({ id }) => id === 'a4-14') as (typeof labelGrids)[number];
  const [first, second] = labelSheets(grid, 12, 13);
  expect(first?.filter((label) => label !== undefined)).toEqual([0, 1]);
  expect(second?.filter((label) => label !== undefined)).toHaveLength(10);
});
