import { isOracle, type Seen, type Table } from '../evidence/index.ts';
import { fromTrees } from './from-trees.ts';
import type { SpeciesRecord } from './record.ts';
import { indexRows, type JoinedRow, joinRows, number, seenOf, text } from './rows.ts';

/** One comparison of two printed numbers, or of a printed number with an equation. */
export interface CheckRow {
  id: string;
  /** Labels of the rows compared. */
  row: string;
  /** What ours is computed from. */
  inputs: readonly number[];
  published: number;
  /** How the weaker of the two sides was read. */
  seen: Seen;
}

/** Comparisons by kind. */
export interface CheckRows {
  coefficients: readonly CheckRow[];
  newtons: readonly CheckRow[];
  volumes: readonly CheckRow[];
  paintingGravity: readonly CheckRow[];
  paintingShrinkage: readonly CheckRow[];
  factSheets: readonly CheckRow[];
  trees: readonly CheckRow[];
}

const marks: readonly Seen[] = ['source-text', 'quoted', 'memory'];

function weaker(...seen: readonly Seen[]): Seen {
  return seen.reduce((weak, each) => (marks.indexOf(each) > marks.indexOf(weak) ? each : weak));
}

/** The own rows of a wood in one table. */
type Find = (table: JoinedRow['table']) => JoinedRow[];

function coefficients(id: string, find: Find): CheckRow[] {
  const [shrinkage] = find('shrinkage-domestic');
  const [row] = find('dimensional-change-coefficients');
  if (!shrinkage || !row) return [];
  const start = number(row, 'shrinkage_start_mc_pct') ?? 30;
  const sides = [
    ['radial', 'radial_pct', 'cr_per_pct_mc'],
    ['tangential', 'tangential_pct', 'ct_per_pct_mc'],
  ] as const;
  return sides.flatMap(([side, from, to]): CheckRow[] => {
    const inputs = number(shrinkage, from);
    const published = number(row, to);
    if (inputs === null || published === null) return [];
    const seen = weaker(seenOf(shrinkage), seenOf(row));
    return [{ id: `${id}-${side}`, row: row.label, inputs: [inputs, start], published, seen }];
  });
}

function newtons(id: string, find: Find): CheckRow[] {
  const domestic = find('hardness-domestic').flatMap((row) =>
    (['green', '12pct'] as const).flatMap((state): CheckRow[] => {
      const published = number(row, `side_hardness_${state}_N`);
      const pounds = number(row, `side_hardness_${state}_lbf`);
      if (published === null || pounds === null) return [];
      const seen = weaker(seenOf(row), seenOf(row, 'seen_lbf'));
      return [{ id: `${id}-${state}`, row: row.label, inputs: [pounds], published, seen }];
    }),
  );
  const imported = find('hardness-imported').flatMap((row): CheckRow[] => {
    const published = number(row, 'side_hardness_N');
    const pounds = number(row, 'side_hardness_lbf');
    if (published === null || pounds === null) return [];
    const state = (text(row, 'moisture_content') ?? '').replace('%', 'pct');
    return [{ id: `${id}-${state}`, row: row.label, inputs: [pounds], published, seen: seenOf(row) }];
  });
  return [...domestic, ...imported];
}

function volumes(id: string, find: Find): CheckRow[] {
  return [...find('shrinkage-domestic'), ...find('shrinkage-imported')].flatMap((row): CheckRow[] => {
    const radial = number(row, 'radial_pct');
    const tangential = number(row, 'tangential_pct');
    const published = number(row, 'volumetric_pct');
    if (radial === null || tangential === null || published === null) return [];
    return [{ id, row: row.label, inputs: [radial, tangential], published, seen: seenOf(row) }];
  });
}

function painting(
  id: string,
  find: Find,
  table: JoinedRow['table'],
  columns: readonly (readonly [string, string, string])[],
): CheckRow[] {
  const [row] = find('porosity-table-16-1');
  const [other] = find(table);
  if (!row || !other) return [];
  return columns.flatMap(([name, column, painted]): CheckRow[] => {
    const ours = number(other, column);
    const published = Number(row.cells[painted]);
    if (ours === null || !Number.isFinite(published)) return [];
    return [
      { id: `${id}-${name}`, row: row.label, inputs: [ours], published, seen: weaker(seenOf(row), seenOf(other)) },
    ];
  });
}

function factSheets(id: string, find: Find): CheckRow[] {
  const [row] = find('shrinkage-imported');
  if (!row) return [];
  return (['radial', 'tangential', 'volumetric'] as const).flatMap((side): CheckRow[] => {
    const sheet = find('other-sources').find(
      (each) =>
        text(each, 'property') === `${side} shrinkage` &&
        text(each, 'condition') === 'green to ovendry' &&
        text(each, 'document')?.startsWith('FPL Wood Technical Fact Sheet'),
    );
    const published = Number(sheet?.cells.value);
    const ours = number(row, `${side}_pct`);
    if (!sheet || ours === null || !Number.isFinite(published)) return [];
    return [
      { id: `${id}-${side}`, row: row.label, inputs: [ours], published, seen: weaker(seenOf(row), seenOf(sheet)) },
    ];
  });
}

/** The handbook's volume against the mean over trees that another institute measured one by one. */
function trees(id: string, find: Find): CheckRow[] {
  const [row] = [...find('shrinkage-imported'), ...find('shrinkage-domestic')];
  const measured = fromTrees(find('cirad-wood-density')).find((each) => each.name === 'volumetricShrinkage')?.figure;
  const ours = row ? number(row, 'volumetric_pct') : null;
  if (!row || !measured || ours === null) return [];
  return [{ id, row: row.label, inputs: [ours], published: measured.value, seen: seenOf(row) }];
}

/**
 * Every comparison that the tables allow, for `check-rows.json`.
 *
 * @param records the woods, which join the rows that are compared
 * @param tables parsed tables by name
 */
export function checkRows(records: readonly SpeciesRecord[], tables: ReadonlyMap<string, Table>): CheckRows {
  const index = indexRows(tables);
  const of = (make: (id: string, find: Find) => CheckRow[]) =>
    records.flatMap((record) => {
      const own = joinRows(record, index).filter((row) => !row.group);
      return make(record.id, (table) => own.filter((row) => row.table === table));
    });
  return {
    coefficients: of(coefficients),
    newtons: of(newtons),
    volumes: of(volumes),
    paintingGravity: of((id, find) =>
      painting(id, find, 'hardness-domestic', [
        ['green', 'sg_green', 'sg_green'],
        ['12pct', 'sg_12pct', 'sg_dry'],
      ]),
    ),
    paintingShrinkage: of((id, find) =>
      painting(id, find, 'shrinkage-domestic', [
        ['radial', 'radial_pct', 'radial_pct'],
        ['tangential', 'tangential_pct', 'tangential_pct'],
      ]),
    ),
    factSheets: of(factSheets),
    trees: of(trees),
  };
}

/** The text of `check-rows.json`: one comparison a line. */
export function checkRowsJson(rows: CheckRows): string {
  const kinds = Object.entries(rows).map(
    ([kind, all]: [string, readonly CheckRow[]]) =>
      `"${kind}":[\n${all.map((each) => JSON.stringify(each)).join(',\n')}\n]`,
  );
  return `{${kinds.join(',\n')}}\n`;
}

/** The comparisons whose both sides were read, and those that rest on memory. */
export function bySeen(rows: readonly CheckRow[]): { read: CheckRow[]; remembered: CheckRow[] } {
  return { read: rows.filter((row) => isOracle(row.seen)), remembered: rows.filter((row) => !isOracle(row.seen)) };
}
