import { describe, expect, test } from 'vitest';
import { sources } from '../../../src/model/evidence/index.ts';
import { foodRuleById, foodRuleRecords, limitsDoNotCompare, rulesOfMarket } from '../../../src/model/food/rules.ts';
import { foodRuleIds, markets } from '../../../src/model/food/types.ts';
import { convert, unitByCode } from '../../../src/model/quantity/index.ts';

const known = new Set<string>(sources.map(({ id }) => id));

test('every id has one rule, and every rule an id', () => {
  expect(foodRuleRecords.map(({ id }) => id).sort()).toEqual([...foodRuleIds].sort());
  for (const id of foodRuleIds) expect(foodRuleById(id).id).toBe(id);
});

describe.each(foodRuleRecords.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test('says what it asks, of whom, what it says of wood, and which copy was read', () => {
    expect(rule.asks.length).toBeGreaterThan(0);
    for (const text of [...rule.asks, rule.onWood, rule.binds, rule.edition]) expect(text).toMatch(/\.$/);
  });

  test('was read, at a source of the list', () => {
    expect(rule.citation.seen).toMatch(/^(source-text|quoted)$/);
    expect(known).toContain(rule.citation.source);
    for (const { citation, basis } of rule.figures) {
      expect(basis).toBe('published');
      expect(citation?.locator).toBeTruthy();
      expect(known).toContain(citation?.source);
    }
  });

  test('never calls anything safe, approved or non-toxic', () => {
    const { asks, onWood, binds, title } = rule;
    expect([...asks, onWood, binds, title].join(' ')).not.toMatch(/\bsafe|approved?\b|non-?toxic/i);
  });
});

test('units of the limits are known where they are weights on an area', () => {
  for (const figure of foodRuleRecords.flatMap(({ figures }) => figures)) {
    if (/^mg\/[d[]/.test(figure.unit)) expect(unitByCode(figure.unit)?.dimension).toBe('mass-per-area');
  }
});

test('the limit of a board is that for repeated use, 36 times the one often quoted', () => {
  const figures = foodRuleById('cfr-21-175-300').figures;
  const [board, , , small] = figures.map(({ value }) => value);
  expect(board).toBe(18);
  expect((board ?? 0) / (small ?? 1)).toBe(36);
  expect(figures[0]?.citation?.locator).toBe('(c)(4)');
});

test('numbers in the words on both limits are those of the rules', () => {
  const fda = foodRuleById('cfr-21-175-300').figures[0]?.value ?? Number.NaN;
  const eu = foodRuleById('eu-10-2011').figures[0]?.value ?? Number.NaN;
  expect(limitsDoNotCompare).toContain(`${eu} mg/dm²`);
  expect(limitsDoNotCompare).toContain(`${fda} mg/in² (${convert(fda, 'mg/[sin_i]', 'mg/dm2').toFixed(0)} mg/dm²)`);
});

test.each(markets)('a market has its own rules only: %s', (market) => {
  const rules = rulesOfMarket(foodRuleIds, market);
  expect(rules.length).toBeGreaterThan(3);
  expect(rules.every((rule) => rule.market === market)).toBe(true);
  expect(rulesOfMarket(['eu-2024-3190', 'eu-2024-3190', 'cfr-21-175-300'], market)).toHaveLength(1);
});
