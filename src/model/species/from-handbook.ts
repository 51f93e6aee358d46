import type { Citation } from '../evidence/index.ts';
import { type Candidate, candidate } from './candidates.ts';
import { readPrinted } from './printed.ts';
import { type JoinedRow, number, seenOf, text } from './rows.ts';
import type { FigureName } from './types.ts';

/** The handbook's editions by year; the tables have the same numbers in the last two. */
const editions: Readonly<Record<string, Citation['source']>> = {
  '2021': 'fpl-gtr-282',
  '2010': 'fpl-gtr-190',
  '1999': 'fpl-gtr-113',
};

/** Where a row, or the columns that a second mark covers, was read; a table without editions is that of 2010. */
function cite(row: JoinedRow, table: string, { seen = 'seen', edition = 'edition' } = {}): Citation {
  const source = editions[text(row, edition) ?? ''] ?? 'fpl-gtr-190';
  return { source, locator: `${table}, ${row.label}`, seen: seenOf(row, seen) };
}

/** The marks of the columns in pounds of a domestic row. */
const pounds = { seen: 'seen_lbf', edition: 'edition_lbf' };

const shrinkages: readonly (readonly [FigureName, string])[] = [
  ['radialShrinkage', 'radial_pct'],
  ['tangentialShrinkage', 'tangential_pct'],
  ['volumetricShrinkage', 'volumetric_pct'],
];

/** Shrinkage of a row of Table 4-3 or 4-4. */
export function fromShrinkage(row: JoinedRow): Candidate[] {
  const table = row.table === 'shrinkage-domestic' ? 'Table 4-3' : 'Table 4-4';
  return shrinkages.flatMap(([name, column]) => {
    const value = number(row, column);
    if (value === null) return [];
    const citation = cite(row, table);
    return [candidate({ name, printed: { value }, unit: '%', seen: seenOf(row), citation, group: row.group })];
  });
}

/** The printed pair of coefficients of a row of Table 13-5. */
export function fromCoefficients(row: JoinedRow): Candidate[] {
  const pairs = [
    ['radialCoefficient', 'cr_per_pct_mc'],
    ['tangentialCoefficient', 'ct_per_pct_mc'],
  ] as const;
  return pairs.flatMap(([name, column]) => {
    const value = number(row, column);
    if (value === null) return [];
    const citation = cite(row, 'Table 13-5');
    return [candidate({ name, printed: { value }, unit: '1', seen: seenOf(row), citation, group: row.group })];
  });
}

/** Specific gravity and side hardness of a row of Tables 5-3a and 5-3b; newtons come before pounds. */
export function fromDomesticHardness(row: JoinedRow): Candidate[] {
  const columns = [
    ['specificGravityGreen', 'sg_green', '1', `Table ${text(row, 'sg_table')}`, {}],
    ['specificGravity12', 'sg_12pct', '1', `Table ${text(row, 'sg_table')}`, {}],
    ['sideHardnessGreen', 'side_hardness_green_N', 'N', 'Table 5-3a', {}],
    ['sideHardness12', 'side_hardness_12pct_N', 'N', 'Table 5-3a', {}],
    ['sideHardnessGreen', 'side_hardness_green_lbf', 'lbf', 'Table 5-3b', pounds],
    ['sideHardness12', 'side_hardness_12pct_lbf', 'lbf', 'Table 5-3b', pounds],
  ] as const;
  return columns.flatMap(([name, column, unit, table, marks]) => {
    const value = number(row, column);
    if (value === null) return [];
    const citation = cite(row, table, marks);
    const seen = citation.seen ?? seenOf(row);
    return [candidate({ name, printed: { value }, unit, seen, citation, group: row.group })];
  });
}

/** Specific gravity and side hardness of one line of Tables 5-5a and 5-5b. */
export function fromImportedHardness(row: JoinedRow): Candidate[] {
  const moisture = text(row, 'moisture_content') ?? '';
  const name: FigureName = moisture === 'green' ? 'sideHardnessGreen' : 'sideHardness12';
  const dryNote = moisture === '15%' ? 'At 15 % moisture content, not 12 %.' : undefined;
  const columns = [
    ['specificGravityGreen', 'specific_gravity', '1', 'Table 5-5', 'edition', undefined],
    [name, 'side_hardness_N', 'N', 'Table 5-5a', 'edition', dryNote],
    [name, 'side_hardness_lbf', 'lbf', 'Table 5-5b', 'edition_lbf', dryNote],
  ] as const;
  return columns.flatMap(([figure, column, unit, table, edition, note]) => {
    const value = number(row, column);
    if (value === null) return [];
    const citation = cite(row, table, { edition });
    const given = { name: figure, printed: { value }, unit, seen: seenOf(row), citation };
    return [candidate({ ...given, group: row.group, ...(note ? { note } : {}) })];
  });
}

/** Specific gravity and shrinkage that Table 16-1 repeats for painters. */
export function fromPainting(row: JoinedRow): Candidate[] {
  const columns = [
    ['specificGravityGreen', 'sg_green', '1', undefined],
    ['specificGravity12', 'sg_dry', '1', 'The column is headed dry; taken as 12 % moisture content.'],
    ['tangentialShrinkage', 'tangential_pct', '%', undefined],
    ['radialShrinkage', 'radial_pct', '%', undefined],
  ] as const;
  return columns.flatMap(([name, column, unit, note]) => {
    const printed = readPrinted(String(row.cells[column] ?? ''));
    if (printed === null) return [];
    const given = { name, printed, unit, seen: seenOf(row), citation: cite(row, 'Table 16-1') };
    return [candidate({ ...given, group: row.group, ...(note ? { note } : {}) })];
  });
}

/** Machining results, all from memory: shown among the other figures, never chosen for anything. */
export function fromMachining(row: JoinedRow): Candidate[] {
  const columns = [
    ['planing_perfect_pct', 'Planing: perfect pieces'],
    ['shaping_good_to_excellent_pct', 'Shaping: good to excellent pieces'],
    ['turning_fair_to_excellent_pct', 'Turning: fair to excellent pieces'],
    ['boring_good_to_excellent_pct', 'Boring: good to excellent pieces'],
    ['mortising_fair_to_excellent_pct', 'Mortising: fair to excellent pieces'],
    ['sanding_good_to_excellent_pct', 'Sanding: good to excellent pieces'],
    ['steam_bending_unbroken_pct', 'Steam bending: unbroken pieces'],
    ['nail_splitting_free_pct', 'Nailing: pieces free from complete splits'],
    ['screw_splitting_free_pct', 'Screwing: pieces free from complete splits'],
  ] as const;
  const citation: Citation = { source: 'fpl-gtr-113', locator: `chapter 3, ${row.label}`, seen: seenOf(row) };
  return columns.flatMap(([column, label]) => {
    const value = number(row, column);
    if (value === null) return [];
    const given = { name: 'other' as const, label, printed: { value }, unit: '%', seen: seenOf(row), citation };
    return [candidate({ ...given, group: row.group })];
  });
}
