import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import MiniSearch from 'minisearch';
import type { WoodNames } from '../../model/species/find-woods.ts';
import { type Kind, type SearchFile, type Stretch, searchFile, searchOptions } from '../search/index-format.ts';
import { tradeWordsOf } from '../trade-words.ts';
import { type PageText, readPageText } from './page-text.ts';

/** How much of a page is searched: every stretch under its heading, the headings alone, or its title with what it is about. */
type Depth = 'stretches' | 'headings' | 'title';

/** What is made of the pages under an address; the first that fits counts. Woods are found by their names. */
const taken: readonly (
  | readonly [address: RegExp, kind: Kind, depth: Depth]
  | readonly [address: RegExp, nothing: null]
)[] = [
  [/^\/(?:404|search)$|^\/$|^\/woods\//, null],
  [/^\/how-to\/glossary$/, 'word', 'stretches'],
  [/^\/how-to(?:\/|$)/, 'how-to', 'stretches'],
  [/^\/calculators\//, 'calculator', 'title'],
  [/^\/methods\//, 'method', 'title'],
  [/^\/reference\/(?:rules|acts)\/[^/]+$/, 'rule', 'stretches'],
  [/^\/reference\/(?:equations\/[^/]+|food-rules)$/, 'reference', 'stretches'],
  [/^\/reference\/(?:method-format|shop-record)$/, 'reference', 'headings'],
  // Parts of a long table, beyond its first.
  [/^\/reference\/tables\/[^/]+\/\d+$/, null],
  [/^\/reference(?:\/|$)/, 'reference', 'title'],
  [/^\//, 'room', 'title'],
];

/** The anchor of a calculator folded into a page, made up anew at each build: it is found under its own address. */
const madeUp = /^«/;

/** The stretches of one page, without their numbers. */
export function stretchesOf(address: string, page: PageText): Omit<Stretch, 'id'>[] {
  const rule = taken.find(([pattern]) => pattern.test(address));
  const kind = rule?.[1];
  if (!rule || !kind) return [];
  const names = tradeWordsOf(address);
  const about = { to: address, page: page.title, kind, heading: '' };
  const [first, ...others] = page.passages.filter(({ anchor }) => !madeUp.test(anchor));
  if (rule[2] === 'title') return [{ ...about, names, text: page.description }];
  return [
    { ...about, names, text: `${page.description} ${first?.text ?? ''}` },
    ...others.map(({ anchor, heading, text }) => ({
      to: `${address}#${anchor}`,
      page: page.title,
      heading,
      kind,
      names: '',
      text: rule[2] === 'headings' ? '' : text,
    })),
  ];
}

/** Every address of a built site with the file that answers it. */
function builtPages(outDir: string): { address: string; file: string }[] {
  return readdirSync(outDir, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .map((name) => ({
      address: `/${name.split(sep).join('/')}`.replace(/(?:\/index)?\.html$/, '') || '/',
      file: join(outDir, name),
    }))
    .sort((one, other) => (one.address < other.address ? -1 : 1));
}

/** What the site sends to a search, made of its pages as they were built and of the names of the woods. */
export function searchFileOf(
  pages: readonly { address: string; page: PageText }[],
  woods: readonly WoodNames[],
): SearchFile {
  const index = new MiniSearch<Stretch>(searchOptions);
  const all = pages.flatMap(({ address, page }) => stretchesOf(address, page));
  index.addAll(all.map((stretch, id) => ({ ...stretch, id })));
  return {
    woods: woods.map(({ id, name, botanical, tradeNames }) => ({ id, name, botanical, tradeNames })),
    stretches: index.toJSON(),
  };
}

/** Write the search of a built site into it. */
export function writeSearchFile(outDir: string, woods: readonly WoodNames[]): void {
  const pages = builtPages(outDir)
    .filter(({ address }) => taken.find(([pattern]) => pattern.test(address))?.[1])
    .map(({ address, file }) => ({ address, page: readPageText(readFileSync(file, 'utf8')) }));
  writeFileSync(join(outDir, searchFile), JSON.stringify(searchFileOf(pages, woods)));
}
