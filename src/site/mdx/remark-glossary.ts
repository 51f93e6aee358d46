import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { nameKey } from '../../model/quantity/index.ts';
import { root } from '../../store/index.ts';

/** As much of a Markdown node as is looked at here. */
export interface TableTree {
  type: string;
  value?: string;
  name?: string;
  attributes?: { type: string; name: string; value: string }[];
  children?: TableTree[];
  data?: { hProperties?: Record<string, unknown> };
}

const textOf = (node: TableTree): string => `${node.value ?? ''}${(node.children ?? []).map(textOf).join('')}`;

/** Ids of a row: `word-stickers` for what its first cell calls first. */
const idOf = (cell: string): string => `word-${nameKey(cell.split(/[,;(]/)[0] ?? '').replaceAll(' ', '-')}`;

/** A word of the glossary, as a page may write it. */
export interface GlossaryWord {
  word: string;
  /** The place of its row: `word-stickers`. */
  id: string;
}

/**
 * Words that everybody knows, or that mean here what any reader takes them to mean, or mean two things: a page that linked them would say nothing,
 * or the wrong thing.
 */
const plain = new Set(
  (
    '4/4, 5/4, 8/4, 12 %, allowance, bearing, blank, bow, clearance, collar, crook, cup, cure, dam, downhill, drier, edge, end grain, face, flush, gel, ' +
    'band, basis, batch, crosscut, fault, grade, green, grit, jointer, lot, method, neck, note, place, session, stop, warning, panel, part A, part B, planer, radial, rift, rip, sled, soak, stave, swing, tally, tangential, template, test cup, ' +
    'twist, uphill, viscosity, window'
  ).split(', '),
);

/** The words that a page links where it first uses them, the longer ones first: in ‘moisture content’ stands no ‘moisture’. */
export function glossaryWords(text: string): GlossaryWord[] {
  return text
    .split('\n')
    .filter((line) => /^\| (?!Word \||---)/.test(line))
    .flatMap((line) => {
      const cell = line.split('|')[1]?.trim() ?? '';
      const names = cell.replace(/\([^)]*\)/g, '').split(/[,;]/);
      return names.map((name) => ({ word: name.trim(), id: idOf(cell) }));
    })
    .filter(({ word }) => word.length > 2 && !plain.has(word) && !/^of /.test(word))
    .sort((one, other) => other.word.length - one.word.length);
}

let words: GlossaryWord[] | undefined;
const wordsOfPages = (): GlossaryWord[] => {
  words ??= glossaryWords(readFileSync(join(root, 'docs', 'glossary.mdx'), 'utf8'));
  return words;
};

/** Where no word is linked: headings, what is a link already, code, tables’ heads, and what has words of its own. */
const left = new Set([
  'heading',
  'link',
  'inlineCode',
  'code',
  'math',
  'inlineMath',
  'mdxjsEsm',
  'mdxJsxFlowElement',
  'mdxJsxTextElement',
  'strong',
]);

/**
 * Lead each word of the trade to its row of the glossary where a page first uses it in its running text: never in a heading, a link, code, bold
 * words or a table, nor in what stands under the cautions of the page.
 */
export function linkWords(tree: TableTree, known: readonly GlossaryWord[]): void {
  const open = new Map(known.map((one) => [one.word, one]));
  const linked = new Set<string>();
  let cautions = false;
  const visit = (node: TableTree): void => {
    node.children = (node.children ?? []).flatMap((child) => (child.type === 'text' ? withLinks(child) : [child]));
    for (const child of node.children) {
      if (child.type === 'heading') cautions = /\bhurt\b/i.test(textOf(child));
      if (!cautions && !left.has(child.type) && child.type !== 'table') visit(child);
    }
  };
  const withLinks = (node: TableTree): TableTree[] => {
    const text = node.value ?? '';
    let first: { at: number; one: GlossaryWord; length: number } | undefined;
    for (const one of open.values()) {
      if (linked.has(one.id)) continue;
      const found = new RegExp(`(?<![\\w-])${escaped(one.word)}s?(?![\\w-])`, 'iu').exec(text);
      if (found && (first === undefined || found.index < first.at))
        first = { at: found.index, one, length: found[0].length };
    }
    if (!first) return [node];
    const { at, one, length } = first;
    linked.add(one.id);
    const link: TableTree = {
      type: 'mdxJsxTextElement',
      name: 'Term',
      attributes: [{ type: 'mdxJsxAttribute', name: 'id', value: one.id }],
      children: [{ type: 'text', value: text.slice(at, at + length) }],
    };
    return [
      ...(at > 0 ? [{ type: 'text', value: text.slice(0, at) }] : []),
      link,
      ...withLinks({ type: 'text', value: text.slice(at + length) }),
    ].filter(({ type, value }) => type !== 'text' || value !== '');
  };
  visit(tree);
}

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/**
 * Give each row of the glossary an id by its word, so that an address can lead to it, and the search too; a word of two trades has its second as
 * `word-window-2`. On every other page of the handbook its words lead there where they are first used.
 */
export function remarkGlossary() {
  return (tree: TableTree, file: { path?: string }): void => {
    const page = basename(file.path ?? '', '.mdx');
    if (page !== 'glossary') {
      if (page !== 'index') linkWords(tree, wordsOfPages());
      return;
    }
    const taken = new Map<string, number>();
    const visit = (node: TableTree): void => {
      if (node.type !== 'table') {
        for (const child of node.children ?? []) visit(child);
        return;
      }
      for (const row of (node.children ?? []).slice(1)) {
        const word = textOf(row.children?.[0] ?? { type: 'text' });
        const id = idOf(word);
        const count = (taken.get(id) ?? 0) + 1;
        taken.set(id, count);
        row.data = { ...row.data, hProperties: { ...row.data?.hProperties, id: count === 1 ? id : `${id}-${count}` } };
      }
    };
    visit(tree);
  };
}
