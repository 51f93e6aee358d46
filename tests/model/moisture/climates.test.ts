import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { climateById, climates, climatesJson, searchClimates, tables } from '../../../src/model/moisture/index.ts';
import { readTable, root } from '../../../src/store/index.ts';

const definition = tables.find(({ name }) => name === 'climate-monthly');
if (!definition) throw new Error('climate-monthly is not defined');
const table = readTable(definition);

describe('the committed climates', () => {
  test('are fresh (npm run generate writes them)', () => {
    expect(readFileSync(join(root, 'src/model/moisture/climates.json'), 'utf8')).toBe(climatesJson(table));
  });

  test('are one a row of the table, with ids of their own', () => {
    expect(climates).toHaveLength(96);
    expect(new Set(climates.map(({ id }) => id)).size).toBe(96);
    expect(climates.filter(({ dataset }) => dataset === 'TMY3')).toHaveLength(76);
    expect(climates.filter(({ country }) => country === 'Canada')).toHaveLength(20);
  });

  test('carry twelve plausible months, a pressure that falls with height, and their source', () => {
    for (const climate of climates) {
      expect(climate.temperature).toHaveLength(12);
      expect(climate.humidity).toHaveLength(12);
      for (const t of climate.temperature) expect(Math.abs(t)).toBeLessThan(45);
      for (const h of climate.humidity) expect(h).toBeGreaterThan(5);
      for (const h of climate.humidity) expect(h).toBeLessThan(100);
      // The standard atmosphere, to 0.1 %.
      const standard = 101_325 * (1 - 2.25577e-5 * climate.elevation) ** 5.2559;
      expect(Math.abs(climate.pressure / standard - 1), climate.id).toBeLessThan(1e-3);
      expect(climate.basis).toBe('published');
      expect(climate.citation.source).toBe(climate.dataset === 'TMY3' ? 'tmy3' : 'cwec');
      expect(climate.citation.locator).toMatch(/^Station \d+ /);
    }
  });

  test('name the edition of a Canadian data set', () => {
    expect(climateById('halifax-ns')?.citation.locator).toMatch(/\(CWEC 20(16|20)\)$/);
  });
});

describe('looking a place up', () => {
  test('by id', () => {
    expect(climateById('duluth-mn')?.place).toBe('Duluth, Minnesota');
    expect(climateById('atlantis')).toBeUndefined();
  });

  test.each([
    { text: 'dulu', first: 'duluth-mn' },
    { text: 'Portland, or', first: 'portland-or' },
    { text: 'st john', first: 'st-johns-nl' },
    { text: 'MN minn', first: 'minneapolis-mn' },
  ])('$text finds $first', ({ text, first }) => {
    expect(searchClimates(text)[0]?.id).toBe(first);
  });

  test('a country finds its places, an empty text all, nonsense none', () => {
    expect(searchClimates('canada')).toHaveLength(20);
    expect(searchClimates('  ')).toHaveLength(96);
    expect(searchClimates('zzz')).toEqual([]);
  });
});
