import type { Options } from 'minisearch';
import { nameKey } from '../../model/quantity/index.ts';
import type { WoodNames } from '../../model/species/find-woods.ts';

/** What may be found, in the order in which it is shown. */
export const kinds = ['how-to', 'calculator', 'method', 'word', 'room', 'rule', 'reference'] as const;
export type Kind = (typeof kinds)[number];

/** A stretch of a page: what stands under one of its headings, or before the first. */
export interface Stretch {
  id: number;
  /** Address within the site, with its anchor where it has one. */
  to: string;
  /** Title of its page. */
  page: string;
  /** Its own heading; empty for what stands before the first. */
  heading: string;
  kind: Kind;
  /** Words of the trade that neither title nor text need say: looked for, never shown. */
  names: string;
  text: string;
}

/** What of a stretch is shown where it was found. */
export type Shown = Pick<Stretch, 'to' | 'page' | 'heading' | 'kind'>;

/** What the site sends when somebody begins to search. */
export interface SearchFile {
  woods: readonly WoodNames[];
  /** The index of all stretches, as the library writes it. */
  stretches: object;
}

/** Where it lies in the built site. */
export const searchFile = '/search.json';

/** Words that stand everywhere and tell nothing apart. */
const small = new Set(
  'a about after all also an and any are as at be been before but by can do does for from had has have how i if in into is it its may more most my no not of off on one only or our out over so some than that the their them then there these they this those to too under until up was we what when where which while who whose why will with without you your'.split(
    ' ',
  ),
);

/** A word as it is compared: without the ending of a plural, or nothing where it tells nothing. A bare number tells nothing either. */
export function termOf(word: string): string | null {
  if (small.has(word) || /^\p{N}+$/u.test(word) || word.length < 2) return null;
  if (/(?:ch|sh|ss|x)es$/.test(word)) return word.slice(0, -2);
  if (/[^s]ies$/.test(word) && word.length > 4) return `${word.slice(0, -3)}y`;
  return /[^su]s$/.test(word) && word.length > 3 ? word.slice(0, -1) : word;
}

/** Thickness in quarters of an inch, `8/4`, as one word: its numbers apart tell nothing. */
const quarters = /(?<![\d/])(\d{1,2})\/4(?![\d/])/g;

/** The words of a text, of one form whoever wrote them. */
export const wordsOf = (text: string): string[] => nameKey(text.replace(quarters, '$1q4')).split(' ').filter(Boolean);

/** The same of a text that is to be found: a word with a hyphen also as whoever leaves it out writes it, `tear-out` as `tearout`. */
export const foundAs = (text: string): string[] => [
  ...wordsOf(text),
  ...(text.match(/\p{L}+(?:-\p{L}+)+/gu) ?? []).flatMap((word) => wordsOf(word.replaceAll('-', ''))),
];

/** How stretches are written and asked: the same in the build and in the browser, or they would not meet. What is asked is taken as typed. */
export const searchOptions: Options<Stretch> = {
  fields: ['page', 'heading', 'names', 'text'],
  storeFields: ['to', 'page', 'heading', 'kind'],
  tokenize: foundAs,
  processTerm: termOf,
  searchOptions: {
    tokenize: wordsOf,
    boost: { page: 6, names: 4, heading: 3, text: 1 },
    prefix: (term) => term.length > 2,
    fuzzy: (term) => (term.length > 3 ? 0.2 : 0),
    combineWith: 'AND',
    weights: { fuzzy: 0.3, prefix: 0.6 },
  },
};
