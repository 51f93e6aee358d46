import { describe, expect, test } from 'vitest';
import { cautionById } from '../../../src/model/evidence/cautions.ts';
import { coatingResistance } from '../../../src/model/finish/excluding.ts';
import { finishById, finishes, finishIds } from '../../../src/model/finish/kinds.ts';
import { foodRuleIds } from '../../../src/model/food/types.ts';
import { minute } from '../../../src/model/quantity/seconds.ts';

const named = finishes.map((finish) => [finish.id, finish] as const);
const wipingOils: readonly string[] = [
  'mineral-oil',
  'linseed-oil',
  'tung-oil',
  'walnut-oil',
  'polymerised-oil',
  'oil-with-driers',
];

test('every id has its record, once and in order', () => {
  expect(finishes.map(({ id }) => id)).toEqual(finishIds);
  expect(finishById('tung-oil')?.name).toBe('Raw tung oil');
  expect(finishById('toString')).toBeUndefined();
});

// Common practice: no source says it, and the records mark it so.
describe('oils go on in two to three coats, each soaking for 30 to 45 minutes and wiped', () => {
  test.each(wipingOils)('%s', (id) => {
    const finish = finishById(id);
    expect(finish?.figures.coats).toMatchObject({ low: 2, high: 3, basis: 'shop-practice' });
    expect(finish?.figures.soak).toMatchObject({ low: 30 * minute, high: 45 * minute, basis: 'shop-practice' });
    expect(finish?.wiped).toBe(true);
  });
});

describe('an epoxy coat waits about 24 hours for the next stage', () => {
  test('and the record marks it as common practice', () => {
    expect(finishById('film-epoxy')?.figures.recoat).toMatchObject({ value: 24 * 60 * minute, basis: 'shop-practice' });
  });
});

describe.each(named)('%s', (_, finish) => {
  test('every figure lies in its band, says what the band means and how it is known', () => {
    for (const [name, figure] of Object.entries(finish.figures)) {
      if (!figure) continue;
      expect(figure.low, name).toBeLessThanOrEqual(figure.value);
      expect(figure.high, name).toBeGreaterThanOrEqual(figure.value);
      expect(figure.low, name).toBeGreaterThan(0);
      expect(figure.band, name).toBeTruthy();
      // Only what was read may be called published, and then it says where.
      if (figure.basis === 'published') expect(figure.citation?.seen, name).toMatch(/source-text|quoted/);
      else expect(['memory', 'shop-practice'], name).toContain(figure.basis);
    }
  });
  test('further coats go further than the first, and curing follows handling', () => {
    const { spreadingFirst, spreadingNext, lightUse, fullCure } = finish.figures;
    expect(spreadingNext.value).toBeGreaterThan(spreadingFirst.value);
    if (fullCure) expect(fullCure.value).toBeGreaterThan(lightUse.value);
    expect(fullCure === null).toBe(finish.sets === 'never');
  });
  test('what is wiped soaks, and what is not does not', () => {
    expect(finish.figures.soak !== null).toBe(finish.wiped);
  });
  test('its cautions and food rules exist', () => {
    for (const id of finish.cautions) expect(cautionById(id), id).toBeDefined();
    for (const rule of finish.food.rules) expect(foodRuleIds).toContain(rule);
    expect(finish.food.conditions.length).toBeGreaterThan(0);
    expect(finish.food.summary).not.toMatch(/\.$|safe for food|food[- ]safe/i);
  });
  test('warns of rags wherever oil is in it', () => {
    if (finish.wiped || finish.rags.hazard === 'self-heating')
      expect(finish.cautions.some((id) => id === 'oily-rags' || id === 'hardener-sawdust')).toBe(true);
    if (finish.sets === 'by-oxygen') expect(finish.rags.hazard).toBe('self-heating');
  });
  test('says so where nothing in the table of moisture is its own', () => {
    if (!finish.excluding.measured) expect(finish.excluding.note).toMatch(/table/i);
    if (finish.excluding.class)
      expect(coatingResistance(finish.excluding.class, 2).resistance).toBeGreaterThanOrEqual(0);
  });
});

test('nut oil is marked for those who must not touch it', () => {
  expect(finishById('walnut-oil')?.origin).toBe('nut-oil');
  expect(finishById('tung-oil')?.origin).toBe('tung-oil');
  expect(finishById('polymerised-oil')?.origin).toBe('blend');
  expect(finishById('walnut-oil')?.cautions).toContain('nut-oils');
});
