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

/** How much less a kind is meant than another, where both hold the words: who asks at the bench wants to be told what to do. */
const weightOf = (kind: Kind): number => (kind === 'reference' || kind === 'rule' ? 0.25 : 1);

/** What is named by just these words is meant more surely than what holds them apart. */
const asOne = { page: 12, names: 16, heading: 6, text: 2 };

/** One result a page, at its best stretch. */
function pagesOf(results: readonly (SearchResult & Partial<Shown>)[]): FoundPage[] {
  const best = new Map<string, FoundPage>();
  for (const { to, page, heading, kind, score: met } of results as (SearchResult & Shown)[]) {
    const score = met * weightOf(kind);
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
  // Two words that are one thing of the trade, or that others write as one, are looked for as one too: what says so comes first.
  const whole =
    words.length > 1
      ? index.search({
          combineWith: 'OR',
          queries: [
            { queries: [text], combineWith: 'AND' },
            { queries: [words.join('')], prefix: false, boost: asOne },
          ],
        })
      : index.search(text);
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
