import { excerpt, nearest } from '../../model/quantity/index.ts';

/** A name in an address that nothing is called, and the one that was likely meant. */
export interface StrangeName {
  name: string;
  /** Only where it does not stand in the address besides. */
  meant?: string;
}

/** So many are told of: an address with more was made for something else. */
const most = 4;

/**
 * The names in the query part of an address that nothing is called here: a slip of the pen would else be left out without a word.
 *
 * @param search for example `?lenght=400+mm`
 * @param known the names that are
 * @param prefix of the names that belong to this calculator; '' on its own page, where names with another's prefix are left alone
 * @param others names of other uses of the same address
 */
export function strangeNames(
  search: string,
  known: readonly string[],
  { prefix = '', others = [] }: { prefix?: string; others?: readonly string[] } = {},
): StrangeName[] {
  const query = new URLSearchParams(search);
  const start = prefix === '' ? '' : `${prefix}.`;
  const own = [...new Set(query.keys())].filter((key) =>
    prefix === '' ? !key.includes('.') || known.includes(key) : key.startsWith(start),
  );
  const names = own.map((key) => key.slice(start.length));
  return names
    .filter((name) => !known.includes(name) && !others.includes(name))
    .slice(0, most)
    .map((name) => {
      const meant = nearest(name, known);
      return { name, ...(meant === undefined || names.includes(meant) ? {} : { meant }) };
    });
}

/** The query part with one name in the place of another; its value and its place stay. */
export function renamed(search: string, from: string, to: string): string {
  const pairs = [...new URLSearchParams(search)].map(([key, value]) => [key === from ? to : key, value]);
  return `?${new URLSearchParams(pairs)}`;
}

/** What is said of a strange name. */
export const strangeWords = ({ name, meant }: StrangeName): string =>
  `“${excerpt(name)}” stands in the address, and nothing is called so here: it was left aside.${
    meant === undefined ? '' : ` Did you mean “${meant}”?`
  }`;
