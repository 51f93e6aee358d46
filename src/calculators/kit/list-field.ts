import * as z from 'zod/mini';
import {
  excerpt,
  listUnits,
  nearest,
  type PartMeasure,
  parseQuantity,
  type Read,
  type ReaderUnits,
  splitEntries,
  splitParts,
} from '../../model/quantity/index.ts';
import { type FieldMeta, fieldRegistry, isBare, type PickOption, readField } from './fields.ts';

/** What the parts of each entry of a list are: the cells of its row on a page, the names of its object in a file. */
export interface ListColumn<Name extends string = string> {
  name: Name;
  /** Sentence case; it heads the cells. */
  label: string;
  /** Stands in an empty cell, and in the published schema. */
  example: string;
  /** What a bare number in it measures; absent for words and for counts. */
  measure?: PartMeasure;
  /** True where an entry may end before it, or where it may be empty. */
  optional?: boolean;
  /** First column only: it may be left out in front of a length, as the name of a board. */
  leading?: boolean;
  /** Last column only: it takes every part that is left; in a file a list. */
  rest?: {
    /** What one part of it may be in a file, beside a text. */
    object: z.ZodMiniType;
    /** The text of such an object. */
    written: (part: never) => string;
  };
  /** True where words need a line of their own. */
  wide?: boolean;
  /** The many that it is picked from. */
  pick?: readonly PickOption[];
  /** The few words that it may be. */
  options?: readonly { value: string; label: string }[];
}

/** One entry as it was given: a text a column ('' where there is none), and all of it as a text, for messages. */
export interface ListRow<Name extends string = string> {
  cells: Readonly<Record<Name, string>>;
  entry: string;
}

/** What a page needs to know of a column. */
export type ShownColumn = Omit<ListColumn, 'rest'> & { rest?: unknown };

/** How a list stands in rows: what a page needs to show it so, and to write it back as the text of an address. */
export interface ListRows {
  /** What one entry is: `board`. */
  noun: string;
  columns: readonly ShownColumn[];
  /** The cells of a text, or undefined where it does not fall into the columns. */
  split: (text: string) => string[][] | undefined;
  /** The text that `split` reads back. */
  join: (rows: readonly (readonly string[])[]) => string;
}

interface ListWords<Name extends string> extends Omit<FieldMeta, 'kind' | 'rows' | 'explicit'> {
  noun: string;
  columns: readonly ListColumn<Name>[];
  /** Puts another way of writing the whole list into entries with commas, before anything reads it: `in: 0 0 1/8` into `0 in, 0 in, 1/8 in`. */
  plain?: (text: string) => string;
}

const cellText = z.union([z.string(), z.number()]);

/** Whether a part is no length in either system, and no row of numbers: then it is the name of its entry. */
const isName = (part: string) =>
  part !== '' && !isBare(part) && !parseQuantity(part, { dimension: 'length', bareUnit: '[in_i]' }).ok;

/** A text that stays one part of an entry. */
const onePart = (text: string) => text.replaceAll(/[;\n\r]+/g, ' ').replaceAll(/,(?!\d)|(?<!\d),/g, ' ');

/**
 * A field for a list whose entries have the same parts: `name, length, width`, one a line or parted by semicolons; in a file also a list
 * of objects named by the columns. The page shows it in rows to fill.
 *
 * @param words label, help and examples as of every field; what one entry is, and its columns
 * @param read reads the rows, which have at most as many parts as there are columns; its refusals become the field's error
 */
export function listField<Name extends string, Out>(
  words: ListWords<Name>,
  read: (rows: readonly ListRow<Name>[]) => Read<Out>,
): z.ZodMiniType<Out, string | ListEntry[]> {
  const { noun, columns, plain = (text: string) => text, ...meta } = words;
  const rows = rowsOf(noun, columns, plain);
  const explicit = listUnits((parts) => measuresOf(parts, columns));
  const named = (cells: readonly string[], entry: string): ListRow<Name> => ({
    cells: Object.fromEntries(columns.map(({ name }, at) => [name, cells[at] ?? ''])) as Record<Name, string>,
    entry,
  });
  const fromText = (text: string): Read<ListRow<Name>[]> => {
    const found: ListRow<Name>[] = [];
    for (const [at, entry] of splitEntries(plain(text)).entries()) {
      const cells = place(splitParts(entry), columns);
      if (!cells) return tooManyParts(noun, at + 1, entry, columns);
      found.push(named(cells, entry));
    }
    return { ok: true, value: found };
  };
  const fromObject = (object: ListEntry): ListRow<Name> => {
    const cells = columns.map((column) => cellOf(object[column.name], column));
    return named(cells, rows.join([cells]));
  };
  return readField(
    z.union([z.string(), z.array(objectOf(columns))]),
    (value) => {
      if (typeof value !== 'string') return read(value.map(fromObject));
      const readText = (text: string): Read<Out> => {
        const texts = fromText(text);
        return texts.ok ? read(texts.value) : texts;
      };
      const found = readText(value);
      return found.ok ? found : (semicolonsForCommas(value, noun, readText) ?? found);
    },
    {
      ...meta,
      kind: 'list',
      rows,
      ...(columns.some(({ measure }) => measure)
        ? { explicit: (text: string, reader: ReaderUnits) => explicit(plain(text), reader) }
        : {}),
    },
  );
}

/** What is wrong with `ash; 96 in; 10 in`, whose parts stand as entries of their own: the very text with commas, where that reads. */
function semicolonsForCommas(
  text: string,
  noun: string,
  read: (text: string) => Read<unknown>,
): { ok: false; problem: string; wayOut: string } | undefined {
  if (!text.includes(';')) return undefined;
  const mended = text.replaceAll(/[^\S\n]*;[^\S\n]*/g, ', ').trim();
  if (!read(mended).ok) return undefined;
  return {
    ok: false,
    problem: `“${excerpt(text)}” has semicolons between the parts of a ${noun}, and a semicolon ends one`,
    wayOut: `Put commas between them: ${excerpt(mended.replaceAll('\n', '; '), 200)}.`,
  };
}

/** The parts of an entry, each in its column; undefined where there are more than columns. */
function place(parts: readonly string[], columns: readonly ShownColumn[]): string[] | undefined {
  const [first] = columns;
  const whole = first?.leading && !isName(parts[0] ?? '') ? ['', ...parts] : [...parts];
  while (whole.at(-1) === '') whole.pop();
  const last = columns.at(-1);
  if (last?.rest) {
    const before = columns.length - 1;
    return [...whole.slice(0, before), whole.slice(before).filter(Boolean).join(', ')];
  }
  return whole.length > columns.length ? undefined : whole;
}

function measuresOf(parts: readonly string[], columns: readonly ShownColumn[]): PartMeasure[] {
  const skipped = columns[0]?.leading && !isName(parts[0] ?? '') ? 1 : 0;
  return parts.map((_, at) => {
    const column = columns[at + skipped] ?? columns.at(-1);
    return at + skipped < columns.length || column?.rest ? column?.measure : undefined;
  });
}

function rowsOf(noun: string, columns: readonly ShownColumn[], plain = (text: string) => text): ListRows {
  return {
    noun,
    columns,
    split: (text) => {
      const placed = splitEntries(plain(text)).map((entry) => place(splitParts(entry), columns));
      if (placed.some((cells) => cells === undefined)) return undefined;
      return placed.map((cells) => columns.map((_, at) => cells?.[at] ?? ''));
    },
    join: (rows) =>
      rows
        .map((cells) => entryOf(cells, noun, columns))
        .filter(Boolean)
        .join('\n'),
  };
}

/** The text of a row: a name that would be taken for a length is told apart by what it names. */
function entryOf(cells: readonly string[], noun: string, columns: readonly ShownColumn[]): string {
  const parts = columns.map((column, at) => {
    const cell = (cells[at] ?? '').trim();
    return column.rest ? cell.replaceAll(/[;\n\r]+/g, ', ') : onePart(cell).trim();
  });
  while (parts.at(-1) === '') parts.pop();
  if (columns[0]?.leading && parts.length > 0) {
    const [name = '', ...others] = parts;
    if (name === '') return others.join(', ');
    return [isName(name) ? name : `${noun} ${name}`, ...others].join(', ');
  }
  return parts.join(', ');
}

/** An entry as an object of a file. */
export type ListEntry = Readonly<Record<string, unknown>>;

/** Columns of a list whose entries are objects in a file, and which stays a text on a page: a grid of numbers, a logger’s file. */
export function objectRows(noun: string, columns: readonly ListColumn[]): ListRows {
  return { ...rowsOf(noun, columns), split: () => undefined };
}

/** The schema of an entry as an object; its names, labels and examples stand in the published schema. */
export function objectOf(columns: readonly ListColumn[]): z.ZodMiniType<ListEntry, ListEntry> {
  return z.strictObject(
    Object.fromEntries(
      columns.map((column) => {
        const cell: z.ZodMiniType = column.rest
          ? z.array(z.union([z.string(), column.rest.object]))
          : column.options
            ? z.string()
            : z.union([z.string(), z.number()]);
        fieldRegistry.add(cell, {
          kind: 'text',
          label: column.label,
          examples: column.rest ? [] : [column.example],
        });
        return [column.name, column.optional || column.leading ? z.optional(cell) : cell];
      }),
    ),
  );
}

function cellOf(value: unknown, { rest }: ListColumn): string {
  if (value === undefined) return '';
  if (!rest || !Array.isArray(value)) return String(value);
  return value.map((part) => (typeof part === 'string' ? part : rest.written(part as never))).join(', ');
}

/**
 * A list of a file as the text that says the same.
 *
 * @param value entries: objects named by the columns, texts, or lists of numbers
 * @param rows how the list stands in rows; absent for a grid of numbers
 */
export function rowsText(value: readonly unknown[], rows: ListRows | undefined): string {
  const cells = (entry: unknown): string[] => {
    if (Array.isArray(entry)) return entry.map((cell) => cells(cell).join(', '));
    if (typeof entry !== 'object' || entry === null) return [String(entry ?? '')];
    return (rows?.columns ?? []).map((column) => cellOf((entry as ListEntry)[column.name], column as ListColumn));
  };
  return rows ? rows.join(value.map(cells)) : value.map((entry) => cells(entry).join(', ')).join('; ');
}

const partsWords = (columns: readonly ShownColumn[]) => columns.map(({ label }) => label.toLowerCase()).join(', ');

const sentenceCase = (noun: string) => `${noun.charAt(0).toUpperCase()}${noun.slice(1)}`;

function tooManyParts(noun: string, at: number, entry: string, columns: readonly ShownColumn[]): Read<never> {
  return {
    ok: false,
    problem: `${sentenceCase(noun)} ${at}: “${excerpt(entry)}” has more parts than ${partsWords(columns)}`,
    wayOut: `Write one ${noun} a line.`,
  };
}

/**
 * What is wrong with a list of objects whose shape the schema refuses: the first entry that is no object, that has a name that is not
 * known, or that lacks one.
 *
 * @returns a sentence with the way out, or undefined where nothing is found
 */
export function rowsProblem(value: unknown, { noun, columns }: ListRows): string | undefined {
  if (!Array.isArray(value)) return undefined;
  const names = columns.map(({ name }) => name);
  const wayOut = `Its names are ${names.join(', ')}.`;
  for (const [index, row] of value.entries()) {
    const where = `${sentenceCase(noun)} ${index + 1}`;
    if (typeof row !== 'object' || row === null || Array.isArray(row))
      return `${where}, ${excerpt(JSON.stringify(row) ?? 'this')}, is not an object. ${wayOut}`;
    const strange = Object.keys(row).find((name) => !names.includes(name));
    if (strange !== undefined) {
      const near = nearest(strange, names);
      return `${where} has a “${excerpt(strange)}”, which is not known. ${near ? `Did you mean ${near}? ` : ''}${wayOut}`;
    }
    const cells = row as Readonly<Record<string, unknown>>;
    for (const column of columns) {
      const cell = cells[column.name];
      if (cell === undefined) {
        if (column.optional || column.leading) continue;
        return `${where} has no ${column.name}. Give it as, for example, ${column.example}.`;
      }
      if (!column.rest && !cellText.safeParse(cell).success)
        return `${where}: ${excerpt(JSON.stringify(cell) ?? 'this')} cannot be read as ${column.name}. Give it as, for example, ${column.example}.`;
    }
  }
  return undefined;
}
