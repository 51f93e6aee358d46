/**
 * How a figure is known.
 *
 * - `published`: printed in a named source, at a table, section or equation.
 * - `derived`: worked out from published figures by a named equation.
 * - `supplier-sheet`: the maker's own data sheet, entered by the reader.
 * - `shop-practice`: common practice of the trade, no source.
 * - `memory`: written from memory and not yet checked against its source.
 */
export const bases = ['published', 'derived', 'supplier-sheet', 'shop-practice', 'memory'] as const;

/** How a figure is known: one of `bases`. */
export type Basis = (typeof bases)[number];

/**
 * How a row of a table was read: in the work itself, in a text that repeats it, or not at all.
 */
export const seenMarks = ['source-text', 'quoted', 'memory'] as const;

/** How a row of a table was read: one of `seenMarks`. */
export type Seen = (typeof seenMarks)[number];

/** The basis that a row's `seen` mark gives to the figures in it. */
export function basisOfSeen(seen: Seen): Basis {
  return seen === 'memory' ? 'memory' : 'published';
}

/** From the firmest to the weakest; a figure made from others is no firmer than the weakest of them. */
const firmness: readonly Basis[] = ['published', 'derived', 'supplier-sheet', 'shop-practice', 'memory'];

/** The weakest of several bases, for example `weakestBasis(['published', 'memory'])` is `'memory'`. */
export function weakestBasis(all: readonly Basis[]): Basis {
  return all.reduce<Basis>(
    (weakest, basis) => (firmness.indexOf(basis) > firmness.indexOf(weakest) ? basis : weakest),
    'published',
  );
}

/**
 * The basis of a figure computed by an equation from other figures: never firmer than `derived`,
 * and no firmer than the weakest figure that went in.
 */
export function derivedBasis(from: readonly Basis[]): Basis {
  return weakestBasis(['derived', ...from]);
}

/** A basis in the words shown beside a figure. */
export const basisWords: Record<Basis, string> = {
  published: 'published',
  derived: 'derived',
  'supplier-sheet': 'maker’s data sheet',
  'shop-practice': 'common practice',
  memory: 'from memory',
};
