import MiniSearch, { type SearchResult } from 'minisearch';
import { findWoods, type WoodNames } from '../../model/species/find-woods.ts';
import { type Kind, kinds, type SearchFile, type Shown, type Stretch, searchOptions, wordsOf } from './index-format.ts';

/** A page that holds what is looked for, and where in it. */
export interface FoundPage extends Shown {
  /** How well it meets what was typed, against others of the same search. */
  score: number;
}

/** What a search finds, the likeliest first. */
export interface Found {
  woods: readonly WoodNames[];
  groups: readonly { kind: Kind; pages: readonly FoundPage[] }[];
  /** True where nothing holds all the words, and what holds some of them is shown. */
  some: boolean;
}

/** A search that can be asked: the index as it came, read once. */
export interface Searching {
  woods: readonly WoodNames[];
  index: MiniSearch<Stretch>;
}

/** Read the index as the build wrote it. */
export const searching = ({ woods, stretches }: SearchFile): Searching => ({
  woods,
  index: MiniSearch.loadJS<Stretch>(stretches as never, searchOptions),
});

const nothing: Found = { woods: [], groups: [], some: false };

/** One result a page, at its best stretch. */
function pagesOf(results: readonly (SearchResult & Partial<Shown>)[]): FoundPage[] {
  const best = new Map<string, FoundPage>();
  for (const { to, page, heading, kind, score } of results as (SearchResult & Shown)[]) {
    const address = to.split('#')[0] as string;
    // Each word of the glossary, each act and rule is a thing of its own, though they share a page.
    const key = kind === 'word' || kind === 'rule' ? to : address;
    const known = best.get(key);
    if (!known || known.score < score) best.set(key, { to, page, heading, kind, score });
  }
  return [...best.values()].sort((one, other) => other.score - one.score);
}

/**
 * What the site holds under some words: woods by any of their names, and pages, calculators, methods, words and rules, each at the
 * place where it is spoken of. Endings, accents and slips of spelling do not matter; where nothing holds every word, what holds most of them is given.
 *
 * @param text as typed; one without a word finds nothing
 */
export function find({ woods, index }: Searching, text: string): Found {
  const words = wordsOf(text);
  if (words.length === 0) return nothing;
  const foundWoods = findWoods(woods, text);
  const all = index.search(text);
  // Two words that others write as one, or a letter too many: looked for anew before any word is given up.
  const joined = all.length === 0 && words.length > 1 ? index.search(words.join('')) : [];
  const whole = all.length > 0 ? all : joined;
  const some = whole.length === 0 && foundWoods.length === 0;
  const results = some
    ? index.search(text, { combineWith: 'OR', fuzzy: (term) => (term.length > 3 ? 0.34 : 0) })
    : whole;
  const pages = pagesOf(results);
  const groups = kinds
    .map((kind) => ({ kind, pages: pages.filter((page) => page.kind === kind) }))
    .filter((group) => group.pages.length > 0)
    .sort((one, other) => (other.pages[0]?.score ?? 0) - (one.pages[0]?.score ?? 0));
  return { woods: foundWoods, groups, some: some && groups.length > 0 };
}
