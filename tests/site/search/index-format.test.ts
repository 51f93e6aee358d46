import { expect, test } from 'vitest';
import { termOf, wordsOf } from '../../../src/site/search/index-format.ts';

test.each([
  ['boards', 'board'],
  ['scratches', 'scratch'],
  ['glasses', 'glass'],
  ['epoxies', 'epoxy'],
  ['gloss', 'gloss'],
  ['gas', 'gas'],
  ['the', null],
  ['2027', null],
  ['a', null],
])('“%s” is looked for as %j', (word, term) => {
  expect(termOf(word)).toBe(term);
});

test('accents, capitals and marks do not part two spellings', () => {
  expect(wordsOf('Café-Board, “Sticky” résin')).toEqual(['cafe', 'board', 'sticky', 'resin']);
});
