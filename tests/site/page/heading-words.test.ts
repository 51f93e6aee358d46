import { expect, test } from 'vitest';
import { headingWords } from '../../../src/site/page/heading-words.ts';

test.each([
  ['Step 1: wash', 'Step 1: wash'],
  ['What <code>kerf</code> says of <em>cups</em>', 'What kerf says of cups'],
  ['Wood &amp; resin: &lt; 8 &quot;wide&quot;, the maker&#39;s', 'Wood & resin: < 8 "wide", the maker\'s'],
  ['&amp;lt; stays as it was written', '&lt; stays as it was written'],
  ['&unheard; of', '&unheard; of'],
])('%s is read as words', (html, words) => {
  expect(headingWords(html)).toBe(words);
});
