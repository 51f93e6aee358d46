/** What of a case stands in an address: parameters under their own names, measures of an outline as `outline.length`. */
export interface AddressedCase {
  set?: Readonly<Record<string, string>>;
  pieces?: number;
  start?: string;
  end?: string;
  people?: number;
  /** Name of the hours that were chosen for the plan: `six-tuesdays`. */
  calendar?: string;
}

/** A case as the query of an address: what was not asked is left out. */
export function caseQuery({ pieces, start, end, people, calendar, set = {} }: AddressedCase): URLSearchParams {
  const asked = { pieces, start, end, people, calendar, ...set };
  return new URLSearchParams(
    Object.entries(asked).flatMap(([name, value]) => (value === undefined ? [] : [[name, `${value}`]])),
  );
}

const withQuery = (path: string, query: string) => (query === '' ? path : `${path}?${query}`);

/** Path of the page of a method that shows a case: `/methods/first-tray?pieces=6`. */
export const methodAddress = (id: string, asked: AddressedCase): string =>
  withQuery(`/methods/${id}`, `${caseQuery(asked)}`);

/**
 * Path of the page that prints the sheets of a case.
 *
 * @param which names of the sheets; all where left out
 */
export function sheetsAddress(id: string, asked: AddressedCase, which?: readonly string[]): string {
  const query = new URLSearchParams([['method', id], ...caseQuery(asked)]);
  if (which) query.set('which', which.join(','));
  return `/sheets?${query}`;
}

/** Path of the page that offers the pieces of a case: quote, listing, label. */
export const quoteAddress = (id: string, asked: AddressedCase): string =>
  `/quote?${new URLSearchParams([['method', id], ...caseQuery(asked)])}`;
