import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checks } from '../../../src/model/finish/checks.ts';
import { coatingResistance, measuredFinishes } from '../../../src/model/finish/excluding.ts';
import { excludingClasses } from '../../../src/model/finish/excluding-classes.ts';
import { fitResistance, moistureExcluding, specimen } from '../../../src/model/finish/excluding-fit.ts';
import { tables } from '../../../src/model/finish/tables.ts';
import { readTable } from '../../../src/store/index.ts';

const table = readTable(tables[0] as (typeof tables)[number]);

/** The table typed a second time, apart from the file: finish, then 1, 7 and 14 days for one coat and each more. */
const typedAgain: readonly (readonly [finish: string, first: number, rows: string])[] = [
  ['Linseed oil', 1, '12 0 0, 22 0 0, 33 2 0'],
  ['Water repellent', 1, '12 0 0, 46 2 0, 78 27 11'],
  ['Latex flat wall paint', 1, '5 0 0, 11 0 0, 22 0 0'],
  ['Latex primer wall paint', 1, '78 37 20, 86 47 27, 88 55 33'],
  ['Alkyd flat wall paint', 1, '9 1 0, 21 2 0, 37 5 0'],
  ['Acrylic latex house primer paint', 1, '43 6 1, 66 14 2, 72 20 4'],
  ['Acrylic latex flat house paint', 1, '52 12 5, 77 28 11, 84 39 16'],
  ['Solid-color latex stain', 1, '5 0 0, 38 4 0, 50 6 0'],
  ['Solid-color oil-based stain', 1, '45 7 1, 84 48 26, 90 64 42'],
  ['Semitransparent oil-based stain', 1, '7 0 0, 13 0 0, 21 1 0'],
  ['Alkyd house primer paint', 1, '85 46 24, 93 70 49, 95 78 60'],
  ['Urethane varnish', 1, '55 10 2, 83 43 23, 90 64 44, 91 68 51, 93 72 57, 93 76 62'],
  ['Polyurethane paint, gloss', 1, '91 66 44, 94 79 62, 96 86 74'],
  ['Tung oil', 2, '46 2 0, - - 2'],
  ['Lacquer', 2, '70 22 8'],
  ['Shellac', 2, '84 43 20, - - 42'],
  ['Spar varnish', 2, '80 36 15, - - 30'],
  ['Gloss enamel paint', 2, '91 64 43'],
  ['Polyurethane varnish', 2, '90 66 46'],
  ['Two-part epoxy', 2, '98 93 88'],
  ['Paraffin wax dipped', 3, '- - 95'],
  ['Epoxy finish clear', 3, '- - 91'],
  ['Paraffin wax brushed', 3, '- - 69'],
  ['Polyurethane finish clear', 3, '- - 66'],
  ['Enamel paint, gloss', 3, '- - 59'],
  ['Oil-based house paint', 3, '- - 41'],
  ['Nitrocellulose lacquer', 3, '- - 10'],
  ['Furniture wax', 3, '- - 0'],
];

describe('the table', () => {
  test.each(typedAgain)('%s is the same typed twice', (finish, first, rows) => {
    const inFile = table.rows
      .filter(({ cells }) => cells.finish === finish)
      .map(({ cells: { coats, day_1, day_7, day_14 } }) => `${coats}: ${day_1 ?? '-'} ${day_7 ?? '-'} ${day_14}`);
    expect(inFile.sort()).toEqual(rows.split(', ').map((row, index) => `${first + index}: ${row}`));
  });
  test('no row is left out of the second', () => {
    const rows = typedAgain.reduce((sum, [, , text]) => sum + text.split(', ').length, 0);
    expect(rows).toBe(table.rows.length);
  });
  test('no finish keeps out more after longer, and further coats never less, but for one quoted pair', () => {
    for (const { finish, coats, readings } of measuredFinishes) {
      for (const [index, { printed }] of readings.slice(1).entries())
        expect(printed, `${finish} ${coats}`).toBeLessThanOrEqual(readings[index]?.printed as number);
      const more = measuredFinishes.find((row) => row.finish === finish && row.coats === coats + 1);
      for (const { days, printed } of more?.readings ?? []) {
        const before = readings.find((reading) => reading.days === days)?.printed ?? 0;
        expect(printed, `${finish} ${coats + 1}, day ${days}`).toBeGreaterThanOrEqual(before);
      }
    }
  });
});

describe('moisture-excluding effectiveness', () => {
  test('is nothing for bare wood, whenever', () => {
    for (const days of [0.1, 1, 7, 14, 100]) expect(moistureExcluding(0, days)).toBe(0);
  });
  test('rises with resistance and falls with time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 11, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        fc.double({ min: 1.05, max: 4, noNaN: true }),
        (logarithm, more, days, longer) => {
          const here = moistureExcluding(10 ** logarithm, days);
          expect(here).toBeGreaterThanOrEqual(0);
          expect(here).toBeLessThan(100);
          expect(moistureExcluding(10 ** (logarithm + more), days)).toBeGreaterThanOrEqual(here - 1e-9);
          expect(moistureExcluding(10 ** logarithm, days * longer)).toBeLessThanOrEqual(here + 1e-9);
        },
      ),
    );
  });
  test('a fit finds the resistance that made the readings', () => {
    fc.assert(
      fc.property(fc.double({ min: 6, max: 9.5, noNaN: true }), (logarithm) => {
        const readings = [1, 7, 14].map((days) => ({ days, printed: moistureExcluding(10 ** logarithm, days) }));
        const fit = fitResistance(readings);
        expect(Math.log10(fit.resistance)).toBeCloseTo(logarithm, 4);
        expect(fit.misfit).toBeLessThan(0.01);
      }),
      { numRuns: 30 },
    );
  });
});

describe('resistance of a coating', () => {
  const days = (resistance: number) => (resistance * specimen.halfThickness * 1e-3) / 86_400;

  // The handbook’s text: no finish stops moisture; its table: oils are next to nothing, epoxy the best of the clear ones.
  test('oils delay a board of 16 mm by less than two days, two coats of epoxy by a season', () => {
    for (const oil of ['linseed-oil', 'tung-oil'] as const)
      for (const coats of [1, 2, 3])
        expect(days(coatingResistance(oil, coats).resistance), `${oil} ${coats}`).toBeLessThan(2);
    expect(days(coatingResistance('epoxy', 2).resistance)).toBeGreaterThan(100);
    expect(days(coatingResistance('epoxy', 2).resistance)).toBeLessThan(110);
    expect(coatingResistance('furniture-wax', 3).resistance).toBe(0);
  });
  test.each(excludingClasses)('%s: more coats never resist less, and the band holds the value', (excluding) => {
    let last = 0;
    for (let coats = 1; coats <= 12; coats += 1) {
      const { resistance, low, high, how } = coatingResistance(excluding, coats);
      expect(resistance).toBeGreaterThanOrEqual(last);
      expect(low).toBeLessThanOrEqual(resistance);
      expect(high).toBeGreaterThanOrEqual(resistance);
      expect(how.length).toBeGreaterThan(10);
      last = resistance;
    }
  });
  test('is the row’s own where there is one, between two rows, and carried on beyond', () => {
    const urethane = (coats: number) => coatingResistance('urethane-varnish', coats);
    const row = measuredFinishes.find(({ finish, coats }) => finish === 'Urethane varnish' && coats === 3);
    expect(urethane(3).resistance).toBe(row?.resistance);
    expect(urethane(7).resistance - urethane(6).resistance).toBeCloseTo(
      urethane(6).resistance - urethane(5).resistance,
      0,
    );
    expect(urethane(7).how).toMatch(/carried on/);
    expect(coatingResistance('epoxy', 1).resistance).toBeCloseTo(coatingResistance('epoxy', 2).resistance / 2, 0);
  });
});

test('the rows fitted twice are met no worse than the other fit met them', () => {
  const [misfit] = checks.find(({ id }) => id === 'moisture-excluding-misfit')?.values ?? [];
  expect(misfit?.ours()).toBeLessThanOrEqual(misfit?.published as number);
});
