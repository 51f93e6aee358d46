import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { allSpecies } from '../../../src/model/species/all.ts';
import { assessFoodContact, type FoodInput, foodRules, foodScope } from '../../../src/model/species/food.ts';
import { root } from '../../../src/store/index.ts';
import { dossier, tableNamed } from './world.ts';

test.each([
  ['sugar-maple', 'usual'],
  ['american-beech', 'usual'],
  ['yellow-birch', 'usual'],
  ['black-cherry', 'with-care'],
  ['black-walnut', 'with-care'],
  ['red-maple', 'with-care'],
  ['white-ash', 'with-care'],
  ['white-oak', 'with-care'],
  ['northern-red-oak', 'with-care'],
  ['yellow-poplar', 'better-not'],
  ['eastern-white-pine', 'better-not'],
  ['western-redcedar', 'better-not'],
  ['cocobolo', 'better-not'],
  ['indian-rosewood', 'better-not'],
  ['iroko', 'better-not'],
  ['teak', 'better-not'],
  ['pacific-yew', 'better-not'],
  ['purpleheart', 'not-enough-known'],
  ['kapur', 'not-enough-known'],
])('%s: %s', (id, level) => {
  expect(dossier(id).food.level).toBe(level);
});

const rulesOf = (id: string, speaks: string) =>
  dossier(id)
    .food.reasons.filter((reason) => reason.speaks === speaks)
    .map((reason) => reason.rule);

test('a copy edit changes no assessment: no rule reads a fact out of words or names', () => {
  const reworded = <Said extends { text: string }>(said: Said): Said => ({ ...said, text: 'Said in other words.' });
  for (const wood of allSpecies) {
    const copy: FoodInput = {
      ...wood,
      name: 'Another name',
      tradeNames: ['hard maple'],
      pores: { ...wood.pores, statements: wood.pores.statements.map(reworded) },
      tyloses: wood.tyloses && reworded(wood.tyloses),
      decay: wood.decay && reworded(wood.decay),
      effects: wood.effects.map(reworded),
      taste: wood.taste && reworded(wood.taste),
    };
    const { level, summary, reasons } = assessFoodContact(copy);
    expect([level, summary], wood.id).toEqual([wood.food.level, wood.food.summary]);
    expect(reasons.map(({ rule, speaks }) => [rule, speaks])).toEqual(
      wood.food.reasons.map(({ rule, speaks }) => [rule, speaks]),
    );
  }
});

test('every statement on dust says whether it is of a sensitiser; where nothing was read neither is said', () => {
  const rows = tableNamed('species-toxicity').rows.map(({ cells }) => cells);
  for (const { kind, sensitising, effect } of rows) {
    expect(['yes', 'no', null], String(effect)).toContain(sensitising);
    expect(sensitising === null).toBe(kind === 'none read');
  }
});

test('hard maple is named by the Code, with the citation', () => {
  expect(dossier('sugar-maple').food.reasons[0]).toMatchObject({
    rule: 'named-by-the-code',
    citation: { source: 'fda-food-code', locator: '4-101.17 (B)' },
  });
  expect(rulesOf('sugar-maple', 'against')).toEqual([]);
});

test('the oaks differ by their tyloses', () => {
  const text = (id: string) => dossier(id).food.reasons.find((reason) => reason.rule === 'close-grained')?.text;
  expect(text('white-oak')).toContain('plugged by tyloses');
  expect(text('northern-red-oak')).toContain('open');
});

test('a sensitiser is named by the list that lists it', () => {
  const reason = dossier('teak').food.reasons.find((each) => each.rule === 'sensitiser');
  expect(reason?.citation?.source).toBe('trgs-907');
});

test('dust at work that is treated as carcinogenic says nothing of a board: maple is on that list too', () => {
  expect(dossier('sugar-maple').effects.map((effect) => effect.citation?.source)).toEqual(['trgs-906']);
  expect(rulesOf('sugar-maple', 'unknown')).toEqual(['effects-unread']);
});

test('koa gives a flavour, sycamore none', () => {
  expect(rulesOf('koa', 'against')).toContain('taste');
  expect(rulesOf('american-sycamore', 'for')).toContain('taste');
});

describe('a wood of which nothing is known', () => {
  const { others: _others, remarks: _remarks, rows: _rows, food: _food, ...maple } = dossier('red-maple');
  const blank: FoodInput = {
    ...maple,
    figures: { ...maple.figures, sideHardness12: null, sideHardnessGreen: null },
    pores: { arrangement: null, openness: null, statements: [] },
    effects: [],
  };

  test('is not guessed', () => {
    const food = assessFoodContact(blank);
    expect(food.level).toBe('not-enough-known');
    expect(food.reasons.every((reason) => reason.speaks === 'unknown')).toBe(true);
    expect(food.summary).toBe('Not enough known: hardness not known; pores not known');
  });

  test('is still refused for what is known against it', () => {
    const effect = { text: 'may cause allergy', sensitising: true as const, basis: 'published' as const };
    expect(assessFoodContact({ ...blank, effects: [effect] }).level).toBe('better-not');
  });

  test('is judged by green hardness where that alone is high enough', () => {
    const green = dossier('white-ash').figures.sideHardnessGreen;
    const food = assessFoodContact({ ...blank, figures: { ...blank.figures, sideHardnessGreen: green } });
    expect(food.reasons[0]).toMatchObject({ rule: 'hard-enough', speaks: 'against' });
    expect(food.reasons[0]?.text).toContain('even green');
  });
});

test('every assessment has reasons, each from a rule that is listed', () => {
  const ids = foodRules.map((rule) => rule.id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const wood of allSpecies) {
    expect(wood.food.reasons.length, wood.id).toBeGreaterThan(1);
    for (const reason of wood.food.reasons) expect(ids).toContain(reason.rule);
  }
  for (const id of ids) {
    expect(
      allSpecies.some((wood) => wood.food.reasons.some((reason) => reason.rule === id)),
      id,
    ).toBe(true);
  }
});

test('the words never call a wood safe, and defer to the local code', () => {
  const source = readFileSync(join(root, 'src', 'model', 'species', 'food.ts'), 'utf8');
  const said = allSpecies.flatMap((wood) => [wood.food.summary, ...wood.food.reasons.map((reason) => reason.text)]);
  for (const text of [source.replace('it never says that a wood is safe', ''), foodScope, ...said]) {
    expect(text).not.toMatch(
      /food[- ]?(safe|grade|approved)|\b(is|are) safe\b|safe (for|to)|non-?toxic|approved for food/i,
    );
  }
  expect(foodScope).toMatch(/local code/);
  expect(foodScope).toMatch(/not a certificate/);
});
