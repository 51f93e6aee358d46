import { lastEnd, layersOf } from './label.ts';
import { madeOf } from './page.ts';
import { type BatchRecord, batchesFile, batchesText } from './record.ts';
import type { WorkedBatch } from './state.ts';

/** A column of the log, as a table schema has it. */
interface LogColumn {
  name: string;
  type: 'string' | 'integer' | 'datetime' | 'boolean';
  title: string;
  required?: boolean;
}

/** Columns of the log: one line for each batch. */
export const logColumns = [
  { name: 'id', type: 'string', title: 'Id of the batch', required: true },
  { name: 'title', type: 'string', title: 'Title', required: true },
  { name: 'method', type: 'string', title: 'Title of the method' },
  { name: 'version', type: 'string', title: 'Version of the method' },
  { name: 'opened', type: 'datetime', title: 'Opened', required: true },
  { name: 'pieces', type: 'integer', title: 'Pieces' },
  { name: 'begun', type: 'datetime', title: 'First work, universal time' },
  { name: 'finished', type: 'boolean', title: 'Every step is done' },
  { name: 'ended', type: 'datetime', title: 'Last work, universal time' },
  { name: 'last_pour', type: 'datetime', title: 'Last resin, universal time' },
  { name: 'last_coat', type: 'datetime', title: 'Last coat, universal time' },
  { name: 'wood', type: 'string', title: 'Wood' },
  { name: 'resin', type: 'string', title: 'Resin' },
  { name: 'finish', type: 'string', title: 'Finish' },
  { name: 'lots', type: 'string', title: 'Lots, each after its material' },
  { name: 'deviations', type: 'integer', title: 'Deviations written down' },
  { name: 'to_put_right', type: 'integer', title: 'Things in the record that cannot be so' },
] as const satisfies readonly LogColumn[];

export type LogLine = Readonly<Record<(typeof logColumns)[number]['name'], string | number | boolean | null>>;

const instant = (time: number | undefined) => (time === undefined ? null : new Date(time).toISOString());

/** The line of a batch; of one whose method cannot be read what stands in the record itself. */
export function logLine(record: BatchRecord, batch: WorkedBatch | undefined): LogLine {
  const base = { id: record.id, title: record.title, opened: record.opened };
  const lots = record.entries.flatMap((entry) =>
    entry.kind === 'lot' ? [`${entry.what ?? entry.material ?? 'something'}: ${entry.lot}`] : [],
  );
  if (!batch)
    return {
      ...base,
      method: null,
      version: null,
      pieces: record.case.pieces ?? null,
      begun: null,
      finished: null,
      ended: null,
      last_pour: null,
      last_coat: null,
      wood: null,
      resin: null,
      finish: null,
      lots: lots.join('; '),
      deviations: record.entries.filter(({ kind }) => kind === 'deviation').length,
      to_put_right: null,
    };
  const { measured, standing, done, state } = batch;
  const { resin, finish } = layersOf(batch);
  const times = done.runs.flatMap(({ start, end, doubt }) =>
    doubt === undefined ? [start ?? [], end ?? []].flat() : [],
  );
  const lastOf = (steps: readonly { id: string }[]) => {
    const ends = steps.flatMap(({ id }) => lastEnd(batch, id) ?? []);
    return ends.length > 0 ? Math.max(...ends) : undefined;
  };
  const holding = standing.holding.flatMap((entry) =>
    entry.kind === 'lot'
      ? [
          `${entry.what ?? measured.worked.materials[entry.material ?? '']?.record.what ?? entry.material ?? 'something'}: ${entry.lot}`,
        ]
      : [],
  );
  return {
    ...base,
    method: measured.worked.record.title,
    version: measured.worked.record.version ?? null,
    pieces: measured.worked.pieces,
    begun: instant(times.length > 0 ? Math.min(...times) : undefined),
    finished: state.finished,
    ended: instant(state.finished ? Math.max(...times) : undefined),
    last_pour: instant(lastOf(resin)),
    last_coat: instant(lastOf(finish)),
    ...madeOf(batch),
    lots: holding.join('; '),
    deviations: standing.holding.filter(({ kind }) => kind === 'deviation').length,
    to_put_right: state.problems.length,
  };
}

/** Columns of the entries, one line for each of every batch. */
const entryColumns = [
  { name: 'batch', type: 'string', title: 'Id of the batch', required: true },
  { name: 'id', type: 'string', title: 'Id of the entry', required: true },
  { name: 'kind', type: 'string', title: 'What it is', required: true },
  { name: 'written', type: 'datetime', title: 'Written down', required: true },
  { name: 'when', type: 'datetime', title: 'When it happened' },
  { name: 'step', type: 'string', title: 'Step' },
  { name: 'first_piece', type: 'integer', title: 'First piece' },
  { name: 'last_piece', type: 'integer', title: 'Last piece' },
  { name: 'calculation', type: 'string', title: 'Calculation of a reading' },
  { name: 'input', type: 'string', title: 'Its input' },
  { name: 'value', type: 'string', title: 'As it was read' },
  { name: 'material', type: 'string', title: 'Material of a lot' },
  { name: 'lot', type: 'string', title: 'Lot' },
  { name: 'text', type: 'string', title: 'Deviation, or why another entry is struck' },
  { name: 'strikes', type: 'string', title: 'Id of the entry that is struck' },
] as const satisfies readonly LogColumn[];

function entryRows({ id: batch, entries }: BatchRecord): (string | number | null)[][] {
  return entries.map((entry) => {
    const { pieces } = 'pieces' in entry ? entry : {};
    const texts: Record<string, string | number | null> = {
      ...(entry as unknown as Record<string, string>),
      batch,
      written: entry.at,
      first_piece: pieces?.[0] ?? null,
      last_piece: pieces?.[1] ?? null,
      material: entry.kind === 'lot' ? (entry.material ?? entry.what ?? null) : null,
      text: entry.kind === 'deviation' ? entry.text : entry.kind === 'correction' ? entry.why : null,
    };
    return entryColumns.map(({ name }) => texts[name] ?? null);
  });
}

/** Rows as CSV (RFC 4180) under the names of their columns. Text stands as it was typed. */
function csv(columns: readonly LogColumn[], rows: readonly (readonly (string | number | boolean | null)[])[]): string {
  const cell = (value: string | number | boolean | null) => {
    const text = value === null ? '' : String(value);
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return [columns.map(({ name }) => name), ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

const profile = 'https://datapackage.org/profiles/2.0/';

function resource(name: string, title: string, columns: readonly LogColumn[]) {
  return {
    name,
    type: 'table',
    title,
    path: `${name}.csv`,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    schema: {
      $schema: `${profile}tableschema.json`,
      fields: columns.map(({ name: field, type, title: label, required }) => ({
        name: field,
        type,
        title: label,
        ...(required ? { constraints: { required } } : {}),
      })),
      missingValues: [''],
    },
  };
}

/**
 * The log as the files of a Frictionless Data Package (2.0), by name: one line for each batch, one for each entry, and the batches whole.
 *
 * @param all each batch with what it comes to, where its method could be read
 */
export function logPackage(
  all: readonly { record: BatchRecord; batch: WorkedBatch | undefined }[],
): Record<string, string> {
  const lines = all.map(({ record, batch }) => logLine(record, batch));
  const descriptor = {
    $schema: `${profile}datapackage.json`,
    name: 'batches',
    title: 'Record of what was made',
    description:
      'One line for each batch, one for each entry of its record, and in batches.json the batches whole, with the method, the case and the shop record as they were. Photographs are not kept.',
    resources: [
      resource('batches', 'Batches', logColumns),
      resource('entries', 'Entries', entryColumns),
      {
        name: 'records',
        title: 'The batches whole',
        path: batchesFile,
        format: 'json',
        mediatype: 'application/json',
        encoding: 'utf-8',
      },
    ],
  };
  return {
    'datapackage.json': `${JSON.stringify(descriptor, null, 2)}\n`,
    'batches.csv': csv(
      logColumns,
      lines.map((line) => logColumns.map(({ name }) => line[name])),
    ),
    'entries.csv': csv(
      entryColumns,
      all.flatMap(({ record }) => entryRows(record)),
    ),
    [batchesFile]: batchesText(all.map(({ record }) => record)),
  };
}
