import { type Basis, basisWords, type Result, type ResultTable, type Series } from '../../model/evidence/index.ts';
import {
  columnUnit,
  type Dimension,
  numberIn,
  type ReaderUnits,
  readerUnit,
  unitByCode,
  unitLabel,
} from '../../model/quantity/index.ts';

/** What stands in a cell of a table that is taken away: a number stays one, so that it can be added up. */
export type Taken = string | number | null;

/** A table of an answer as somebody takes it into a spreadsheet: one line of headings, then rows as long as it. */
export interface TakenTable {
  /** Stable name: `answer`, or the id of a table or chart. */
  id: string;
  title: string;
  headings: readonly string[];
  rows: readonly (readonly Taken[])[];
}

/** What is weighed and measured into cups is added up: it stays in the unit of the scale, grams or ounces, however much of it there is. */
const addedUp: readonly (Dimension | undefined)[] = ['mass', 'volume'];

/** The unit of a number that stands alone, in the reader's units. */
export function unitAlone(value: number, unit: string, units: ReaderUnits, kept = false): string {
  const known = unitByCode(unit);
  if (!known || known.kept || !addedUp.includes(known.dimension)) return columnUnit([value], unit, units, kept);
  return readerUnit(known.dimension, kept ? { ...units, system: 'metric' } : units);
}

/** A unit code that says something: things, money and bare numbers have none. */
export const codeOf = (unit: string): string => (/^(1|\{.*\})$/.test(unit) ? '' : unit);

/** A heading with its unit as people write it, and the code where that is another. */
function heading(label: string, unit: string | undefined): string {
  const [written, code] = unit === undefined ? ['', ''] : [unitLabel(unit), codeOf(unit)];
  if (written === '') return label;
  return code === '' || code === written ? `${label} (${written})` : `${label} (${written}; UCUM ${code})`;
}

/** No two columns of a table bear one heading. */
function distinct(labels: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return labels.map((label) => {
    const count = (seen.get(label) ?? 0) + 1;
    seen.set(label, count);
    return count === 1 ? label : `${label}, ${count}`;
  });
}

interface Column {
  label: string;
  unit?: string | undefined;
  digits?: number | undefined;
  kept?: boolean | undefined;
  values: readonly Taken[];
}

/** Columns side by side, the numbers of each in one unit of the reader's. */
function columnsTable(
  { id, title }: Pick<TakenTable, 'id' | 'title'>,
  columns: readonly Column[],
  count: number,
  units: ReaderUnits,
): TakenTable {
  const told = columns.map(({ label, unit, digits, kept, values }) => {
    const numbers = values.filter((value): value is number => typeof value === 'number');
    const from = unit ?? '1';
    const to = columnUnit(numbers, from, units, kept);
    return {
      heading: heading(label, numbers.length > 0 ? to : undefined),
      cell: (value: Taken) => (typeof value === 'number' ? numberIn(value, from, to, digits) : value),
      values,
    };
  });
  return {
    id,
    title,
    headings: distinct(told.map((column) => column.heading)),
    rows: Array.from({ length: count }, (_, at) => told.map(({ cell, values }) => cell(values[at] ?? null))),
  };
}

const knownColumn = (basis: Basis, count: number): Column => ({
  label: 'How it is known',
  values: Array.from({ length: count }, () => basisWords[basis]),
});

export function tableOf({ id, title, columns, rows, basis }: ResultTable, units: ReaderUnits): TakenTable {
  return columnsTable(
    { id, title },
    [
      ...columns.map((column, at) => ({ ...column, values: rows.map((cells) => cells[at] ?? null) })),
      knownColumn(basis, rows.length),
    ],
    rows.length,
    units,
  );
}

export function seriesTable({ id, title, axis, lines }: Series, units: ReaderUnits): TakenTable {
  return columnsTable(
    { id, title },
    [
      { label: axis.label, unit: axis.unit, digits: 4, values: axis.values },
      ...lines.flatMap(({ label, unit, values, low, high }): Column[] => [
        { label, unit, digits: 4, values },
        ...(low ? [{ label: `${label}, from`, unit, digits: 4, values: low }] : []),
        ...(high ? [{ label: `${label}, to`, unit, digits: 4, values: high }] : []),
      ]),
    ],
    axis.values.length,
    units,
  );
}

export function timelineTable({ timeline }: Result, units: ReaderUnits): TakenTable[] {
  if (!timeline || timeline.events.length === 0) return [];
  const { zero, events } = timeline;
  // Earliest and latest in the unit of the time itself.
  const all = columnUnit(
    events.flatMap(({ at, low = at, high = at }) => [at, low, high]),
    's',
    units,
  );
  const times = (of: (event: (typeof events)[number]) => number | undefined): Taken[] =>
    events.map((event) => {
      const time = of(event);
      return time === undefined ? null : numberIn(time, 's', all, 3, event.at);
    });
  const inUnit = (label: string, values: readonly Taken[]): Column => ({
    label: heading(label, all),
    values: values.map((value) => value),
  });
  return [
    columnsTable(
      { id: 'timeline', title: `What happens when, counted from ${zero}` },
      [
        { label: 'What happens', values: events.map(({ label }) => label) },
        inUnit(
          `After ${zero}`,
          times(({ at }) => at),
        ),
        inUnit(
          'Earliest',
          times(({ low }) => low),
        ),
        inUnit(
          'Latest',
          times(({ high }) => high),
        ),
        { label: 'How it is known', values: events.map(({ basis }) => basisWords[basis]) },
        { label: 'In words', values: events.map(({ note }) => note ?? null) },
      ],
      events.length,
      units,
    ),
  ];
}

export function usesTable({ uses = [] }: Result, units: ReaderUnits): TakenTable[] {
  if (uses.length === 0) return [];
  const inUnits = uses.map(({ amount, unit, low, high }) => {
    // Resin, pigment and glue are weighed in grams by every reader.
    const to = unitAlone(amount, unit, units, unitByCode(unit)?.dimension === 'mass');
    const end = (of: number | undefined) => (of === undefined ? null : numberIn(of, unit, to, 4, amount));
    return { to, amount: numberIn(amount, unit, to, 4), low: end(low), high: end(high) };
  });
  return [
    {
      id: 'uses',
      title: 'What it uses up',
      headings: ['What', 'Amount', 'Unit', 'From', 'To', 'Unit code (UCUM)', 'How it is known', 'In words'],
      rows: uses.map(({ what, basis, note }, at) => {
        const { to = '1', amount = null, low = null, high = null } = inUnits[at] ?? {};
        return [what, amount, unitLabel(to), low, high, codeOf(to), basisWords[basis], note ?? null];
      }),
    },
  ];
}
