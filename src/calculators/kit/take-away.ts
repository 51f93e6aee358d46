import { basisWords, cautionWords, type Figure, type Result, verdictWords } from '../../model/evidence/index.ts';
import {
  canonicalUnit,
  columnUnit,
  inReaderUnits,
  numberIn,
  type ReaderUnits,
  unitLabel,
  wordsInReaderUnits,
} from '../../model/quantity/index.ts';
import { withUnits } from './address.ts';
import { fieldsOf, isOptional, readInputs } from './answer.ts';
import type { Calculator, RawInputs } from './calculator.ts';
import { type FieldMeta, fieldMeta } from './fields.ts';
import {
  codeOf,
  seriesTable,
  type Taken,
  type TakenTable,
  tableOf,
  timelineTable,
  unitAlone,
  usesTable,
} from './taken-tables.ts';

/** What was asked, what came of it, and when and where. */
export interface TakenAnswer {
  calculator: Calculator;
  /** As they were given: texts of a form or an address, values of a file. */
  inputs: Readonly<Record<string, unknown>>;
  result: Result;
  units: ReaderUnits;
  /** Day, 2026-11-29. */
  day: string;
  /** Address of the page that gives this very answer; none where nobody knows the site. */
  address?: string;
}

/** `resin-dose-2026-11-29.csv`; a further table has its own name behind the day. */
export function takenName(calculator: string, day: string, table: string, ending: 'csv' | 'xlsx' | 'json'): string {
  const further = table === 'answer' ? '' : `-${table.replace(/[^a-z0-9-]+/gi, '-').toLowerCase()}`;
  return `${calculator}-${day}${further}.${ending}`;
}

/** Longest text of an input that a cell repeats, characters; a log of ten years is in the address and the JSON. */
const longestGiven = 400;

const headings = [
  'Part',
  'What',
  'Value',
  'Unit',
  'From',
  'To',
  'Unit code (UCUM)',
  'How it is known',
  'In words',
] as const;

type Row = readonly [
  part: string,
  what: string,
  value?: Taken,
  unit?: string,
  from?: Taken,
  to?: Taken,
  code?: string,
  known?: string,
  words?: string,
];

const row = (cells: Row): Taken[] => headings.map((_, at) => cells[at] ?? null);

/** A field that says what is taken where it is left empty. */
const saysWhatElse = /\bempty\b|\bunless\b/i;

/**
 * An answer as tables: first one that says by itself what was asked, what came of it and what to mind, then each chart and table, what happens
 * when and what is used up. Numbers stand in the reader's units with the digits that they deserve; sentences as that reader reads them.
 */
export function takenTables(taken: TakenAnswer): TakenTable[] {
  const result = wordsInReaderUnits(taken.result, taken.units);
  return [
    answerTable({ ...taken, result }),
    ...(result.tables ?? []).map((table) => tableOf(table, taken.units)),
    ...(result.series ?? []).map((series) => seriesTable(series, taken.units)),
    ...timelineTable(result, taken.units),
    ...usesTable(result, taken.units),
  ];
}

function answerTable({ calculator, inputs, result, units, day, address }: TakenAnswer): TakenTable {
  const { verdict, figures, cautions } = result;
  return {
    id: 'answer',
    title: calculator.title,
    headings,
    rows: [
      row(['Answer', calculator.title, verdictWords[verdict.level], '', null, null, '', '', verdict.text]),
      row(['Question', 'Day', day]),
      ...(address ? [row(['Question', 'Address of this answer', address])] : []),
      ...inputRows(calculator, inputs, units),
      ...Object.values(figures).map((figure) => figureRow(figure, units)),
      ...cautions.map(({ level, text, basis }) =>
        row(['To mind', cautionWords[level], null, '', null, null, '', basisWords[basis], text]),
      ),
    ],
  };
}

function figureRow({ label, value, unit, low, high, basis, band, note, digits, kept }: Figure, units: ReaderUnits) {
  const to = unitAlone(value, unit, units, kept);
  const end = (of: number | undefined) => (of === undefined ? null : numberIn(of, unit, to, digits, value));
  const words = [note, low === undefined && high === undefined ? undefined : band].filter(Boolean).join(' ');
  return row([
    'Figure',
    label,
    numberIn(value, unit, to, digits),
    unitLabel(to),
    end(low),
    end(high),
    codeOf(to),
    basisWords[basis],
    words,
  ]);
}

/** Each input: what was taken, and as it was given. What was left empty says so, with what its field says of that. */
function inputRows(calculator: Calculator, inputs: Readonly<Record<string, unknown>>, units: ReaderUnits): Taken[][] {
  const read = readInputs(calculator, inputs);
  const values = (read.ok ? read.value : {}) as Readonly<Record<string, unknown>>;
  const texts = Object.fromEntries(
    Object.entries(inputs).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  ) as RawInputs;
  return Object.entries(fieldsOf(calculator)).flatMap(([name, schema]) => {
    const meta = fieldMeta(schema);
    if (!meta || !isAsked(meta, inputs)) return [];
    const text = givenText(inputs[name], withUnits(calculator, texts, units)[name]);
    if (text === '') {
      if (!isOptional(calculator, name) || !saysWhatElse.test(meta.help ?? '')) return [];
      return [
        row(['Question', meta.label, 'not given', '', null, null, '', '', inReaderUnits(meta.help ?? '', units)]),
      ];
    }
    return [takenRow(meta, text, values[name], units)];
  });
}

const isAsked = ({ when }: FieldMeta, inputs: Readonly<Record<string, unknown>>): boolean =>
  !when ||
  when.is.includes(
    String(inputs[when.field] ?? '')
      .trim()
      .toLowerCase(),
  );

function givenText(value: unknown, explicit: string | undefined): string {
  if (value === undefined || value === null) return '';
  const text = explicit ?? (typeof value === 'object' ? JSON.stringify(value) : String(value));
  const line = text.trim().replace(/\s*[\r\n]+\s*/g, ' / ');
  return line.length > longestGiven ? `${line.slice(0, longestGiven)} …` : line;
}

function takenRow(meta: FieldMeta, text: string, value: unknown, units: ReaderUnits): Taken[] {
  const { label, kind, dimension, options, pick } = meta;
  if (kind === 'quantity' && dimension && typeof value === 'number') {
    const from = canonicalUnit[dimension];
    // Scales are marked in grams, whatever boards are measured in; a time has the unit that people say it in.
    const to =
      dimension === 'time' ? columnUnit([value], from, units) : unitAlone(value, from, units, dimension === 'mass');
    return row([
      'Question',
      label,
      // As fine as anybody types; the text stands beside it.
      numberIn(value, from, to, 6),
      unitLabel(to),
      null,
      null,
      codeOf(to),
      'given',
      text,
    ]);
  }
  const id = text.toLowerCase();
  const named = [...(options ?? []), ...(pick ?? [])].find((option) => option.value === id)?.label ?? nameOf(value);
  return row(['Question', label, named ?? text, '', null, null, '', 'given', named === undefined ? '' : text]);
}

/** The name of a wood, a resin or a place that was read. */
function nameOf(value: unknown): string | undefined {
  const name = typeof value === 'object' && value !== null && 'name' in value ? value.name : undefined;
  return typeof name === 'string' && name !== '' ? name : undefined;
}
