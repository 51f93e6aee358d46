import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkExceptions, checkRooms } from '../../model/checks.ts';
import {
  type CheckOutcome,
  type CheckReport,
  countChecks,
  type EquationRecord,
  type Figure,
  isOwn,
  runChecks,
  type Table,
} from '../../model/evidence/index.ts';
import { figureLabels } from '../../model/species/labels.ts';
import { figureNames, type SpeciesDossier } from '../../model/species/types.ts';
import { root } from '../../store/index.ts';
import type {
  CheckEntry,
  CheckRoomEntry,
  CheckRow,
  ChecksSummary,
  EquationEntry,
  EquationsRoomEntry,
  EvidenceEntry,
  SchemaEntry,
  TableEntry,
  TableSummary,
} from '../reference/data.ts';
import { partOfLine } from '../reference/table-parts.ts';
import { equationRooms } from './equations.ts';
import { typeset } from './formula.ts';

/** Every equation with its formula typeset, by room. */
export function gatherEquations(): EquationsRoomEntry[] {
  return equationRooms.map(({ id, title, equations }) => ({ id, title, equations: equations.map(equationEntry) }));
}

const equationEntry = (record: EquationRecord): EquationEntry => ({
  record,
  formula: typeset(record.tex, true),
  symbols: record.symbols.map((symbol) => ({
    tex: symbol.tex,
    formula: typeset(symbol.tex, false),
    meaning: symbol.meaning,
    unit: symbol.unit,
  })),
});

/** Every check, run now: a room a page, and what all of them come to. */
export function gatherChecks(): { summary: ChecksSummary; rooms: CheckRoomEntry[] } {
  const run = checkRooms.map((room) => ({
    ...room,
    reports: room.sets.map((set) => runChecks(set, checkExceptions)),
  }));
  const rooms = run.map(({ id, title, reports }) => ({
    id,
    title,
    counts: countChecks(reports),
    sets: reports.map(checkEntry),
  }));
  return {
    rooms,
    summary: {
      counts: countChecks(run.flatMap(({ reports }) => reports)),
      rooms: rooms.map((room) => ({
        ...room,
        sets: room.sets.map(({ rows, ...entry }) => entry),
      })),
    },
  };
}

function checkEntry(report: CheckReport): CheckEntry {
  const { id, title, kind, about } = report.set;
  const rows = report.outcomes.map((outcome) => checkRow(outcome, kind));
  return {
    set: { id, title, kind, about },
    values: rows.length,
    rows,
    failures: report.failures,
    exceptions: rows.filter((row) => row.verdict === 'known difference').length,
    worst: report.worst?.difference ?? null,
    published: report.outcomes.filter(({ value }) => !isOwn(value)).length,
  };
}

function checkRow(
  { value, ours, difference, within, exception }: CheckOutcome,
  kind: 'check' | 'comparison',
): CheckRow {
  const { id, what, published, tolerance, reason, unit, citation } = value;
  const verdict = kind === 'comparison' ? 'compared' : within ? 'within' : exception ? 'known difference' : 'fails';
  return {
    id,
    what,
    published,
    ours,
    difference,
    tolerance,
    reason,
    unit,
    citation,
    verdict,
    ...(verdict === 'known difference' && exception ? { exception: exception.reason } : {}),
  };
}

/** A table as its own pages show it, one after the other: a long one has several. */
export function tableEntries({ definition, rows }: Table): TableEntry[] {
  const onPage = new Map<number, TableEntry['rows'][number][]>();
  for (const { line, cells } of rows) {
    const part = partOfLine(line, definition.columns.length);
    onPage.set(part, [...(onPage.get(part) ?? []), { line, cells }]);
  }
  const firstColumn = definition.columns[0]?.name ?? '';
  const words = (row: TableEntry['rows'][number] | undefined) => String(row?.cells[firstColumn] ?? row?.line ?? '');
  const parts = [...onPage].map(([part, held]) => ({
    part,
    from: rows.findIndex(({ line }) => line === held[0]?.line) + 1,
    first: words(held[0]),
    last: words(held.at(-1)),
    rows: held.length,
  }));
  return [...onPage].map(([part, held]) => ({ definition, part, parts, rows: held }));
}

/** A table as the list of tables shows it: how many of its rows were read, and how. */
export function tableSummary({ definition, rows }: Table): TableSummary {
  const count = (mark: string) => rows.filter((row) => row.cells.seen === mark).length;
  const { name, title, locator, source } = definition;
  return {
    name,
    title,
    ...(locator ? { locator } : {}),
    ...(source ? { source } : {}),
    rows: rows.length,
    seen: { 'source-text': count('source-text'), quoted: count('quoted'), memory: count('memory') },
  };
}

/** How the figures of all woods are known, and which are still from memory. */
export function gatherEvidence(woods: readonly SpeciesDossier[]): EvidenceEntry {
  const counts = figureNames.map((name) => {
    const figures = woods.map((wood) => wood.figures[name]);
    const of = (basis: Figure['basis']) => figures.filter((figure) => figure?.basis === basis).length;
    return {
      name,
      label: figureLabels[name],
      published: of('published'),
      derived: of('derived'),
      memory: of('memory'),
      none: figures.filter((figure) => figure === null).length,
    };
  });
  const toCheck = woods.flatMap((wood) => {
    const figures = figureNames.flatMap((name) => {
      const figure = wood.figures[name];
      if (figure?.basis !== 'memory') return [];
      const { label, value, unit, citation, digits } = figure;
      return [{ label, value, unit, ...(citation ? { citation } : {}), ...(digits ? { digits } : {}) }];
    });
    return figures.length > 0 ? [{ id: wood.id, name: wood.name, figures }] : [];
  });
  return { woods: woods.length, counts, toCheck };
}

/** The committed schemas, by file. */
export function gatherSchemas(): SchemaEntry[] {
  const folder = join(root, 'schemas');
  return readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => {
      const schema = JSON.parse(readFileSync(join(folder, file), 'utf8')) as { title?: string; description?: string };
      return { file, title: schema.title ?? '', description: schema.description ?? '' };
    });
}
