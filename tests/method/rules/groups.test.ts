import { expect, test } from 'vitest';
import { allTimeRules } from '../../../src/method/plan/time-rules.ts';
import { ruleGroups, rules } from '../../../src/method/rules/index.ts';

test('every rule stands in one group, under an id that no other rule and no group has', () => {
  const ids = [...[...rules, ...allTimeRules].map(({ id }) => id), ...ruleGroups.map(({ id }) => id)];
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  expect(ruleGroups.filter((group) => group.rules.length === 0)).toEqual([]);
});

test('a measure in the words of a rule follows the reader’s units', () => {
  const unmarked = (text: string) => text.replace(/⟦[^⟧]*⟧/g, '');
  const written = [...rules, ...allTimeRules].filter(({ looksAt, why }) =>
    /\d\s?(?:mm|cm|in|°C|kg)\b/.test(unmarked(looksAt + why)),
  );
  expect(written.map(({ id }) => id)).toEqual([]);
});
