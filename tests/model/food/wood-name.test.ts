import { expect, test } from 'vitest';
import { labelWords, woodInSentence } from '../../../src/model/food/index.ts';

test.each([
  ['Sugar maple', 'sugar maple'],
  ['Black cherry', 'black cherry'],
  ['Western redcedar', 'western redcedar'],
  ['Coast Douglas-fir', 'coast Douglas-fir'],
  ['American beech', 'American beech'],
  ['Brazilian rosewood', 'Brazilian rosewood'],
  ['East African olive', 'East African olive'],
  ['Port-Orford-cedar', 'Port-Orford-cedar'],
  ['Osage-orange', 'Osage-orange'],
  ['Engelmann spruce', 'Engelmann spruce'],
])('%s is %s within a sentence', (name, within) => {
  expect(woodInSentence(name)).toBe(within);
});

test('a label keeps the capital of a wood that is called after a country', () => {
  const wood = { name: 'American beech', level: 'with-care', reasons: [] } as never;
  const facts = { market: 'eu', food: 'dry', woods: [wood], bare: true, allergens: [] } as const;
  expect(labelWords(facts).made[0]).toBe('Made of American beech.');
});
