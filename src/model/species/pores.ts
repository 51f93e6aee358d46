import { basisOfSeen, type Citation } from '../evidence/index.ts';
import { sourceOfDocument } from './documents.ts';
import type { SpeciesRecord } from './record.ts';
import { type JoinedRow, seenOf, text } from './rows.ts';
import { statement } from './statements.ts';
import type { PoreArrangement, PoreOpenness, Species, Statement } from './types.ts';

/** What one row says of the pores. */
interface Reading {
  statement: Statement;
  isTyloses: boolean;
  arrangement: PoreArrangement | null;
  openness: PoreOpenness | null;
  /** Lower is firmer: read before remembered, the wood's own before its group's. */
  rank: number;
}

const arrangements: readonly PoreArrangement[] = ['ring-porous', 'semi-ring-porous', 'diffuse-porous'];
const opennesses: readonly PoreOpenness[] = ['closed', 'plugged', 'open'];
/** Letters of Table 16-1 that stand for an arrangement of the pores; its others are of softwoods. */
const coded: Readonly<Record<string, PoreArrangement>> = {
  R: 'ring-porous',
  SR: 'semi-ring-porous',
  D: 'diffuse-porous',
};

/** A cell that holds one of a few words; null where it is empty. */
const oneOf = <Word extends string>(words: readonly Word[], cell: string | null): Word | null =>
  words.find((word) => word === cell) ?? null;

/** Rows of a work named in full: its key, and the place in it. */
function citePores(row: JoinedRow): Citation | undefined {
  if (row.table === 'oak-pores-mo-312')
    return { source: 'mo-312', locator: text(row, 'section') ?? 'chapter 3', seen: seenOf(row) };
  const work = text(row, 'source') ?? '';
  const source = sourceOfDocument(work);
  if (source === undefined) return undefined;
  const place = /^FPL-GTR-190 (.+)$/.exec(work)?.[1] ?? /(p\. \d+)$/.exec(work)?.[1] ?? row.label;
  return { source, locator: place, seen: seenOf(row) };
}

function readingOf(row: JoinedRow): Reading | null {
  const rank = (basisOfSeen(seenOf(row)) === 'memory' ? 2 : 0) + (row.group ? 1 : 0);
  if (row.table === 'porosity-table-16-1') {
    const words = text(row, 'transition_meaning') ?? '';
    const arrangement = coded[text(row, 'transition_code') ?? ''] ?? null;
    const said = arrangement ? words : `earlywood to latewood ${words}`;
    const citation: Citation = { source: 'fpl-gtr-190', locator: `Table 16-1, ${row.label}`, seen: seenOf(row) };
    return { statement: statement(row, said, citation), isTyloses: false, arrangement, openness: null, rank };
  }
  if (row.table !== 'pores-and-tyloses' && row.table !== 'oak-pores-mo-312') return null;
  const trait = text(row, 'trait') ?? '';
  const value = text(row, 'value') ?? '';
  const said = trait === 'porosity' || value.includes(trait) ? value : `${trait}: ${value}`;
  return {
    statement: statement(row, said, citePores(row)),
    isTyloses: trait === 'tyloses' || trait === 'pores',
    arrangement: oneOf(arrangements, text(row, 'arrangement')),
    openness: oneOf(opennesses, text(row, 'openness')),
    rank,
  };
}

function firmest<T>(readings: readonly Reading[], value: (reading: Reading) => T | null): T | null {
  const found = readings.filter((reading) => value(reading) !== null);
  const best = found.reduce<Reading | null>((least, each) => (least && least.rank <= each.rank ? least : each), null);
  return best ? value(best) : null;
}

/**
 * What is known of a wood's pores, and of tyloses in them.
 *
 * Softwoods have no pores. For the rest the wood's own statements come before its group's, read ones before remembered
 * ones, and what is said of tyloses before what is said of size; the record's own words stand where all are silent.
 */
export function poresOf(record: SpeciesRecord, rows: readonly JoinedRow[]): Pick<Species, 'pores' | 'tyloses'> {
  const readings = rows.flatMap((row) => readingOf(row) ?? []);
  const own: Statement[] = record.pores ? [{ text: record.pores.text, basis: record.pores.basis }] : [];
  const statements = [...readings.filter((each) => !each.isTyloses).map((each) => each.statement), ...own];
  if (record.kind === 'softwood')
    return { pores: { arrangement: 'none', openness: 'none', statements }, tyloses: null };
  const ofTyloses = readings.filter((each) => each.isTyloses);
  return {
    pores: {
      arrangement: firmest(readings, (each) => each.arrangement) ?? record.pores?.arrangement ?? null,
      openness:
        firmest(ofTyloses, (each) => each.openness) ??
        firmest(readings, (each) => each.openness) ??
        record.pores?.openness ??
        null,
      statements,
    },
    tyloses: firmest(ofTyloses, (each) => each.statement),
  };
}
