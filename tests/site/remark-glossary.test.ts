import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { remarkGlossary, type TableTree } from '../../src/site/mdx/remark-glossary.ts';
import { root } from '../../src/store/index.ts';

const cell = (value: string): TableTree => ({ type: 'tableCell', children: [{ type: 'text', value }] });
const row = (...cells: string[]): TableTree => ({ type: 'tableRow', children: cells.map(cell) });

/** A page of one table whose words are the first cells of a text's rows. */
const pageOf = (words: readonly string[]): TableTree => ({
  type: 'root',
  children: [{ type: 'table', children: [row('Word', 'What we mean'), ...words.map((word) => row(word, 'x'))] }],
});

const idsOf = (page: TableTree, path: string) => {
  remarkGlossary()(page, { path });
  return page.children?.[0]?.children?.map(({ data }) => data?.hProperties?.id) ?? [];
};

test('each row of the glossary can be led to, by the first word of it', () => {
  expect(idsOf(pageOf(['stickers', 'S1S, S2S', 'collar, guide bush', 'end grain']), '/docs/glossary.mdx')).toEqual([
    undefined,
    'word-stickers',
    'word-s1s',
    'word-collar',
    'word-end-grain',
  ]);
});

test('rows of other pages have none', () => {
  expect(idsOf(pageOf(['stickers']), '/docs/care.mdx')).toEqual([undefined, undefined]);
});

test('the words of the pages are among them, each once', () => {
  const rows = readFileSync(join(root, 'docs', 'glossary.mdx'), 'utf8')
    .split('\n')
    .filter((line) => /^\| (?!Word \||---)/.test(line))
    .map((line) => line.split('|')[1]?.trim() ?? '');
  const ids = idsOf(pageOf(rows), '/docs/glossary.mdx');
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ['word-stickers', 'word-proud', 'word-kerf']) expect(ids).toContain(id);
});

test('a word of two trades has two places', () => {
  expect(idsOf(pageOf(['window', 'window, of time']), '/docs/glossary.mdx')).toEqual([
    undefined,
    'word-window',
    'word-window-2',
  ]);
});
