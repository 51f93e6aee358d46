import { type Basis, basisOfSeen, type Seen, type SourceId, type Table } from '../evidence/index.ts';
import { parseQuantity } from '../quantity/index.ts';

/** A nominal thickness of the hardwood trade and what is left of it after surfacing, mm. */
export interface NominalThickness {
  /** What the trade calls it, for example `4/4`; below that, the inches as printed. */
  name: string;
  rough: number;
  /** Surfaced on one face; null where not published. */
  s1s: number | null;
  /** Surfaced on two faces. */
  s2s: number;
  basis: Basis;
  seen: Seen;
  remark: string | null;
}

/** A hardwood grade and the clear share of its faces. */
export interface HardwoodGrade {
  id: string;
  name: string;
  /** Least size of a board, mm. */
  leastWidth: number;
  leastLength: number;
  /** Least clear share of the better and the poorer face, 0 to 1. */
  clearBetter: number;
  clearPoorer: number;
  basis: Basis;
  seen: Seen;
  source: SourceId;
}

/** What is known of lumber, made from the tables. */
export interface LumberData {
  thicknesses: readonly NominalThickness[];
  grades: readonly HardwoodGrade[];
}

const millimetres = (inches: string | number, unit = '[in_i]'): number => {
  const read = parseQuantity(String(inches), { dimension: 'length', bareUnit: unit });
  if (!read.ok) throw new Error(`A table holds a length that cannot be read: ${inches}. ${read.problem}`);
  return Number(read.value.toFixed(4));
};

function thicknessOf(cells: Table['rows'][number]['cells']): NominalThickness {
  const seen = cells.seen as Seen;
  return {
    name: (cells.quarter as string | null) ?? `${cells.rough} in`,
    rough: millimetres(cells.rough as string),
    s1s: cells.s1s === null ? null : millimetres(cells.s1s as string),
    s2s: millimetres(cells.s2s as string),
    basis: basisOfSeen(seen),
    seen,
    remark: cells.remark as string | null,
  };
}

/** Units of 12 in² in a square foot of face. */
const unitsInFace = 12;

function gradesOf(table: Table): HardwoodGrade[] {
  const unitsOf = (name: string) =>
    table.rows.find((row) => row.cells.name === name)?.cells.units_per_measure as number | null | undefined;
  return table.rows.map(({ cells }) => {
    const own = cells.units_per_measure as number | null;
    const share = (face: 'better_face' | 'poor_face') => (own ?? unitsOf(cells[face] as string) ?? 0) / unitsInFace;
    const seen = cells.seen as Seen;
    return {
      id: cells.grade as string,
      name: cells.name as string,
      leastWidth: millimetres(cells.least_width_in as number),
      leastLength: millimetres(cells.least_length_ft as number, '[ft_i]'),
      clearBetter: share('better_face'),
      clearPoorer: share('poor_face'),
      basis: basisOfSeen(seen),
      seen,
      source: cells.source as SourceId,
    };
  });
}

/**
 * What the model keeps of the lumber tables.
 *
 * @param thickness the table `hardwood-thickness`
 * @param grades the table `hardwood-grades`
 */
export function lumberData(thickness: Table, grades: Table): LumberData {
  return { thicknesses: thickness.rows.map((row) => thicknessOf(row.cells)), grades: gradesOf(grades) };
}

/** The text of `lumber.json`: one row a line, so that a change of one figure is one line. */
export function lumberJson(data: LumberData): string {
  const rows = (items: readonly unknown[]) => items.map((item) => `    ${JSON.stringify(item)}`).join(',\n');
  return `{\n  "thicknesses": [\n${rows(data.thicknesses)}\n  ],\n  "grades": [\n${rows(data.grades)}\n  ]\n}\n`;
}
