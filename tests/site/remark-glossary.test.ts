import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { glossaryWords, linkWords, remarkGlossary, type TableTree } from '../../src/site/mdx/remark-glossary.ts';
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

const glossary = glossaryWords(readFileSync(join(root, 'docs', 'glossary.mdx'), 'utf8'));
const text = (value: string): TableTree => ({ type: 'text', value });
const block = (type: string, ...children: TableTree[]): TableTree => ({ type, children });

/** What a page leads to, as `word → id`, in order. */
function ledTo(...children: TableTree[]): string[] {
  const page = block('root', ...children);
  linkWords(page, glossary);
  const found = (node: TableTree): string[] =>
    node.name === 'Term'
      ? [`${node.children?.[0]?.value} → ${node.attributes?.[0]?.value}`]
      : (node.children ?? []).flatMap(found);
  return found(page);
}

test('a word leads to its row where a page first uses it, and no more', () => {
  const once = block('paragraph', text('Lay the stickers a forearm apart. A sticker that leans lets the stack fall.'));
  expect(ledTo(once, block('paragraph', text('Stickers again.')))).toEqual(['stickers → word-stickers']);
  // The longer word wins, and a second name of a row counts as the first.
  expect(ledTo(block('paragraph', text('Its moisture content, its MC and EMC; the guide bush.')))).toEqual([
    'moisture content → word-moisture-content',
    'EMC → word-equilibrium-moisture-content',
    'guide bush → word-collar',
  ]);
});

test('no text is lost or changed by it', () => {
  const said = 'Seal coat first: a seal coat keeps pores shut. Pot life is not working time.';
  const page = block('root', block('paragraph', text(said)));
  linkWords(page, glossary);
  const words = (node: TableTree): string => node.value ?? (node.children ?? []).map(words).join('');
  expect(words(page)).toBe(said);
});

test.each(['heading', 'link', 'inlineCode', 'strong', 'table', 'mdxJsxFlowElement'])(
  'none leads there from a %s',
  (type) => {
    expect(ledTo(block(type, text('The recoat window, the kerf and the stickers.')))).toEqual([]);
  },
);

test('nor from what stands under the cautions of a page', () => {
  const cautions = [
    block('heading', text('What can hurt')),
    block('paragraph', text('A climb cut snatches the work.')),
  ];
  expect(ledTo(...cautions)).toEqual([]);
  expect(ledTo(...cautions, block('heading', text('Step 1')), block('paragraph', text('No climb cut.')))).toEqual([
    'climb cut → word-climb-cut',
  ]);
});

test('words in other words, and words that everybody knows, lead nowhere', () => {
  expect(ledTo(block('paragraph', text('A proudly pithy template, a cup, the face, green paint.')))).toEqual([]);
});

test('each word that leads has a row', () => {
  const rows = new Set(
    readFileSync(join(root, 'docs', 'glossary.mdx'), 'utf8')
      .split('\n')
      .filter((line) => /^\| (?!Word \||---)/.test(line))
      .map(
        (line) =>
          `word-${(line.split('|')[1] ?? '')
            .trim()
            .split(/[,;(]/)[0]
            ?.trim()
            .toLowerCase()
            .replaceAll(/[^a-z0-9]+/g, '-')}`,
      ),
  );
  for (const { id } of glossary) expect(rows, id).toContain(id);
});
