import { type Basis, basisOfSeen, type Seen, type SourceId, type Table, type TableRow } from '../evidence/index.ts';

/** A grading of coated abrasives: FEPA P (also ISO 6344) or ANSI B74.18. */
export type Grading = 'P' | 'ANSI';

/** A grade and its grain size. */
export interface Grade {
  /** `P120`, or `ANSI 120`. */
  id: string;
  grading: Grading;
  number: number;
  /** Grain size used, µm. */
  micrometres: number;
  /** Ends of what the texts that were read give, with 10 % either way for what one number leaves out, µm. */
  low: number;
  high: number;
  basis: Basis;
  seen: Seen;
  /** The text that the figure comes from, and how many were read. */
  source: SourceId;
  texts: number;
}

/** A pair of grades that a text prints in one row. */
export interface PrintedPair {
  ansi: number;
  p: number;
  source: SourceId;
}

export interface GradeData {
  grades: readonly Grade[];
  pairs: readonly PrintedPair[];
}

/** One number of a grade leaves out its distribution and the way it was measured: figures compare to about this share. */
export const spread = 0.1;

/**
 * Which text is taken where several give a grade: for P the table of medians, which has decimals, then the comparison table;
 * for ANSI the comparison table, which goes furthest, then the dictionary. Memory only where nothing was read.
 */
const preference: Readonly<Record<Grading, readonly SourceId[]>> = {
  P: ['grit-particle-sizes', 'grit-comparison-table', 'grit-units-dictionary', 'grit-craft-glossary'],
  ANSI: ['grit-comparison-table', 'grit-units-dictionary'],
};

const gradingOf: Readonly<Record<string, Grading>> = { 'FEPA P': 'P', 'ANSI B74.18': 'ANSI' };

function gradeOf(grading: Grading, printed: string, rows: readonly TableRow[]): Grade {
  const size = (row: TableRow) => row.cells.micrometres as number;
  const read = rows.filter((row) => row.cells.seen !== 'memory');
  const rank = (row: TableRow) => {
    const at = preference[grading].indexOf(row.cells.source as SourceId);
    return at < 0 ? preference[grading].length : at;
  };
  const used = [...(read.length > 0 ? read : rows)].sort((a, b) => rank(a) - rank(b))[0] as TableRow;
  const sizes = (read.length > 0 ? read : rows).map(size);
  const seen = used.cells.seen as Seen;
  const number = Number(printed.replace(/^P/, ''));
  const round = (value: number) => Number(value.toPrecision(4));
  return {
    id: grading === 'P' ? `P${number}` : `ANSI ${number}`,
    grading,
    number,
    micrometres: size(used),
    low: round(Math.min(...sizes, size(used) * (1 - spread))),
    high: round(Math.max(...sizes, size(used) * (1 + spread))),
    basis: basisOfSeen(seen),
    seen,
    source: used.cells.source as SourceId,
    texts: read.length,
  };
}

/**
 * One grain size for each grade of coated abrasives, coarsest first, from the texts that give it.
 *
 * @param sizes the table `grain-sizes`
 * @param equivalents the table `grit-equivalents`
 */
export function gradeData(sizes: Table, equivalents: Table): GradeData {
  const groups = new Map<string, TableRow[]>();
  for (const row of sizes.rows) {
    const key = `${row.cells.system}|${row.cells.grade}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  const grades = [...groups].flatMap(([key, rows]) => {
    const [system = '', printed = ''] = key.split('|');
    const grading = gradingOf[system];
    return grading ? [gradeOf(grading, printed, rows)] : [];
  });
  return {
    grades: grades.sort((a, b) => b.grading.localeCompare(a.grading) || a.number - b.number),
    pairs: equivalents.rows.map(({ cells }) => ({
      ansi: Number(cells.ansi),
      p: Number(String(cells.p).replace(/^P/, '')),
      source: cells.source as SourceId,
    })),
  };
}

/** The text of `grades.json`: one grade a line, so that a change of one figure is one line. */
export function gradesJson(data: GradeData): string {
  const rows = (items: readonly unknown[]) => items.map((item) => `    ${JSON.stringify(item)}`).join(',\n');
  return `{\n  "grades": [\n${rows(data.grades)}\n  ],\n  "pairs": [\n${rows(data.pairs)}\n  ]\n}\n`;
}
