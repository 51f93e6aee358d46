import leven from 'leven';
import { nameKey } from './names.ts';

/** The names of one thing: the one that it goes by, and any others. */
export interface Named {
  name: string;
  others: readonly string[];
}

interface Keys {
  name: string;
  others: readonly string[];
  /** All names, each word with a space before it. */
  all: string;
  /** Each name with its spaces taken out. */
  squeezed: readonly string[];
  words: readonly string[];
}

const known = new WeakMap<object, Keys>();

function keysOf<T extends object>(item: T, namesOf: (item: T) => Named): Keys {
  const before = known.get(item);
  if (before) return before;
  const { name, others } = namesOf(item);
  const keys = [name, ...others].map(nameKey).filter(Boolean);
  const found: Keys = {
    name: nameKey(name),
    others: keys.slice(1),
    all: ` ${keys.join(' ')}`,
    squeezed: keys.map((key) => key.replaceAll(' ', '')),
    words: [...new Set(keys.flatMap((key) => key.split(' ')))],
  };
  known.set(item, found);
  return found;
}

/** Slips allowed in a word of so many letters. */
const slips = (length: number) => (length < 4 ? 0 : length < 6 ? 1 : 2);

/** Whether a typed word is a known one, or the beginning of one, but for a slip or two. */
function nearly(typed: string, word: string): boolean {
  const allowed = slips(typed.length);
  if (allowed === 0 || typed[0] !== word[0]) return false;
  return (
    leven(typed, word) <= allowed || (word.length > typed.length && leven(typed, word.slice(0, typed.length)) < allowed)
  );
}

/** Rank of an item that holds every word typed, or the beginning of it; undefined where it does not. */
function rankOf(wanted: string, words: readonly string[], { name, others, all }: Keys): number | undefined {
  if (!words.every((word) => all.includes(` ${word}`))) return undefined;
  if (name === wanted) return 0;
  if (others.includes(wanted)) return 1;
  if (name.startsWith(wanted)) return 2;
  return words.every((word) => ` ${name}`.includes(` ${word}`)) ? 3 : 4;
}

/**
 * Items of which every word typed begins a word of one of their names, the likeliest first: a whole name, then the beginning of a
 * name, then words of it, then words of other names. Where nothing is found so, spaces and hyphens are left out of account, and then
 * a slip or two in each word: `blackwalnut`, `purple heart` and `sasafras` find what they mean.
 *
 * @param items in the order in which equals are to stand; a search remembers the names of each
 * @param text as typed; an empty text finds every item
 */
export function findNamed<T extends object>(items: readonly T[], text: string, namesOf: (item: T) => Named): T[] {
  const wanted = nameKey(text.slice(0, 80));
  if (wanted === '') return [...items];
  const words = wanted.split(' ');
  const ranked = (rank: (keys: Keys) => number | undefined) =>
    items
      .flatMap((item) => {
        const at = rank(keysOf(item, namesOf));
        return at === undefined ? [] : [{ item, at }];
      })
      .sort((a, b) => a.at - b.at)
      .map(({ item }) => item);
  const plain = ranked((keys) => rankOf(wanted, words, keys));
  if (plain.length > 0) return plain;
  const squeezed = wanted.replaceAll(' ', '');
  const together = ranked(({ squeezed: names }) => {
    if (names.includes(squeezed)) return 0;
    return names.some((name) => name.startsWith(squeezed)) ? 1 : undefined;
  });
  if (together.length > 0) return together;
  return ranked(({ words: own, all, squeezed: names }) => {
    if (!words.every((word) => all.includes(` ${word}`) || own.some((each) => nearly(word, each)))) {
      return names.some((name) => nearly(squeezed, name)) ? 1 : undefined;
    }
    return 0;
  });
}

/**
 * The one item that a text surely names: the only one that bears it as a whole name or, where none does, the only one of which every
 * word typed begins a word. What several bear, and what was found by a slip of spelling, is nobody's until the reader picks.
 *
 * @param found what the text found
 */
export function surelyNamed<T extends object>(
  found: readonly T[],
  text: string,
  namesOf: (item: T) => Named,
): T | undefined {
  const wanted = nameKey(text);
  if (wanted === '') return undefined;
  const keys = found.map((item) => ({ item, ...keysOf(item, namesOf) }));
  const bearers = keys.filter(({ name, others }) => name === wanted || others.includes(wanted));
  const words = wanted.split(' ');
  const [first, second] =
    bearers.length > 0 ? bearers : keys.filter((each) => rankOf(wanted, words, each) !== undefined);
  return second ? undefined : first?.item;
}
