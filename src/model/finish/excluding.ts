import { type Basis, type Citation, derivedBasis } from '../evidence/index.ts';
import { listed } from '../quantity/index.ts';
import committed from './excluding.json' with { type: 'json' };
import type { ExcludingClass } from './excluding-classes.ts';
import type { ExcludingRow } from './excluding-data.ts';

/** Every row of the table of moisture-excluding effectiveness with its fitted resistance, in the table's order. */
export const measuredFinishes: readonly ExcludingRow[] = committed as ExcludingRow[];

/** Names under which the rows of a class are printed. */
const printedAs: Readonly<Record<ExcludingClass, readonly string[]>> = {
  'linseed-oil': ['Linseed oil'],
  'tung-oil': ['Tung oil'],
  'furniture-wax': ['Furniture wax'],
  lacquer: ['Lacquer', 'Nitrocellulose lacquer'],
  shellac: ['Shellac'],
  'spar-varnish': ['Spar varnish'],
  'urethane-varnish': ['Urethane varnish'],
  epoxy: ['Two-part epoxy', 'Epoxy finish clear'],
};

/** A resistance within a class of finishes scatters by this factor either way. */
export const resistanceScatter = 1.5;

/** The resistance of a coating of so many coats, and how it was come by. */
export interface CoatingResistance {
  /** s/m on moisture content, of each coated face. */
  resistance: number;
  low: number;
  high: number;
  /** In words: the row of the table, or the rows that it was reckoned from. */
  how: string;
  basis: Basis;
  citation: Citation;
}

interface Known {
  coats: number;
  resistance: number;
  row: ExcludingRow;
}

/** Rows of a class, fewest coats first; of two with as many coats the one with more readings. */
function knownOf(excluding: ExcludingClass): Known[] {
  const rows = measuredFinishes
    .filter((row) => printedAs[excluding].includes(row.finish))
    .sort((a, b) => a.coats - b.coats || b.readings.length - a.readings.length);
  const known: Known[] = [];
  for (const row of rows) {
    // A finish that kept nothing out after 14 days, with no other reading, resists too little to tell from bare wood.
    const resistance = row.resistance ?? (row.readings.every(({ printed }) => printed < 5) ? 0 : null);
    if (resistance === null || known.some(({ coats }) => coats === row.coats)) continue;
    // A single reading too small to fit says less than rows that were fitted.
    if (row.resistance === null && rows.some((other) => other.resistance !== null)) continue;
    known.push({ coats: row.coats, resistance, row });
  }
  return known;
}

/**
 * Resistance of a coating: that of the table’s row where it has one with so many coats; between two rows on a straight line;
 * beyond the last, each further coat adding as much as the last step; below the first, in proportion to the coats.
 *
 * @param excluding class of finish
 * @param coats whole number, from 1
 */
export function coatingResistance(excluding: ExcludingClass, coats: number): CoatingResistance {
  const known = knownOf(excluding);
  const first = known[0] as Known;
  const last = known[known.length - 1] as Known;
  const before = known.findLast((row) => row.coats <= coats);
  const after = known.find((row) => row.coats >= coats);
  const name = first.row.finish.toLowerCase();
  const rowsWords = (rows: readonly Known[]) => listed(rows.map((row) => `${row.coats}`));
  const found = (resistance: number, how: string, near: Known): CoatingResistance => ({
    resistance,
    low: resistance / resistanceScatter,
    high: resistance * resistanceScatter,
    how,
    basis: derivedBasis(['memory']),
    citation: {
      source: near.row.source,
      ...(near.row.source === 'fpl-gtr-190' ? { locator: 'Table 16-3' } : {}),
      seen: near.row.seen,
    },
  });
  if (before && before.coats === coats) {
    const how =
      before.resistance === 0
        ? `${before.row.finish}, ${coats} coats: too little to tell from bare wood`
        : `fitted to ${name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}`;
    return found(before.resistance, how, before);
  }
  if (before && after) {
    const share = (coats - before.coats) / (after.coats - before.coats);
    const resistance = before.resistance + share * (after.resistance - before.resistance);
    return found(resistance, `between ${name} of ${rowsWords([before, after])} coats`, before);
  }
  if (!before) {
    return found(
      (first.resistance * coats) / first.coats,
      `in proportion to ${name} of ${first.coats} coats; a first coat sinks in and may give less`,
      first,
    );
  }
  const previous = known[known.length - 2];
  const step = previous
    ? (last.resistance - previous.resistance) / (last.coats - previous.coats)
    : last.resistance / last.coats;
  return found(
    last.resistance + step * (coats - last.coats),
    last.resistance === 0
      ? `${last.row.finish}, ${last.coats} coats: too little to tell from bare wood`
      : `carried on from ${name} of ${previous ? rowsWords([previous, last]) : last.coats} coats`,
    last,
  );
}
