import type { FieldKind, FieldMeta } from './fields.ts';

/*
 * How much is read of what somebody hands in. Each limit is asked before anything parses, so that a slip of the clipboard, a wrong file or a
 * hostile one is refused in words at once and holds up nobody.
 */

/** Characters that a text of each kind of field may have. */
const longestText: Readonly<Record<FieldKind, number>> = {
  quantity: 200,
  choice: 200,
  species: 200,
  climate: 200,
  text: 2000,
  resin: 50_000,
  list: 200_000,
  readings: 2_000_000,
  // As large as a drawing's file: what reads it says so in its own words.
  drawing: 5 * 1024 * 1024,
};

/** Characters that a field reads at most. */
export const longestOf = (meta: Pick<FieldMeta, 'kind' | 'longest'>): number => meta.longest ?? longestText[meta.kind];

/** Whether a text is longer than a field reads. */
export const isTooLong = (meta: Pick<FieldMeta, 'kind' | 'longest'>, text: string): boolean =>
  text.length > longestOf(meta);

/** Characters of the inputs of a calculator as JSON. */
export const longestJson = 10_000_000;

/** Bytes of a logger's file: a reading a minute through a winter is about 8 MB. */
export const largestLog = 10_000_000;

/** Bytes of a list of a class: twelve places, or a whole school. */
export const largestClassList = 1_000_000;
