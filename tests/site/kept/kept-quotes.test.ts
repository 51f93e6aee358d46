import { expect, test } from 'vitest';
import { readKeptQuotes, withoutDraft } from '../../../src/site/kept/kept-quotes.ts';

const nothing = { maker: '', drafts: {} };

test.each([null, '', '{', '[]', '7', '"text"', '{"maker":7,"drafts":[]}'])('%j is nothing kept', (text) => {
  expect(readKeptQuotes(text)).toMatchObject(nothing);
});

test('only texts under names that are known come back', () => {
  const kept = readKeptQuotes(
    '{"maker":"A","drafts":{"tray":{"price":"95","customer":7,"__proto__":{"x":1},"evil":"y"},"other":[]}}',
  );
  expect(kept).toEqual({ maker: 'A', drafts: { tray: { price: '95' }, other: {} } });
  expect(readKeptQuotes(JSON.stringify({ maker: 'x'.repeat(30_000), drafts: {} })).maker).toHaveLength(20_000);
});

test('a draft is forgotten by itself', () => {
  const before = { maker: 'A', drafts: { tray: {}, board: { number: '7' } }, lasting: true };
  expect(withoutDraft(before, 'tray')).toEqual({ maker: 'A', drafts: { board: { number: '7' } } });
});
