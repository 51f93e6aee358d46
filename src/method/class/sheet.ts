import Papa from 'papaparse';
import { excerpt } from '../../model/quantity/index.ts';
import { orThese } from '../case/or-these.ts';
import { parametersOf } from '../case/parameters.ts';
import { pointerOf } from '../pointer.ts';
import type { MethodRecord } from '../record/index.ts';
import type { Shop } from '../shop/index.ts';
import { type ClassPlace, mostPlaces } from './record.ts';

/** A cell of a list of places that cannot be used: where it stands, what was read, what is allowed and a way out. */
export interface SheetFault {
  /** Row of the file as a spreadsheet numbers it, from 1; the heading is row 1. */
  row: number;
  /** Heading of the column; empty where the row as a whole is meant. */
  column: string;
  message: string;
}

/** A list of places as read: what could be read of it as it stands, and everything that is wrong with it. */
export interface SheetReading {
  places: ClassPlace[];
  faults: SheetFault[];
  /** How many cells with something in them, or rows where there are too many, are left out of `places`. */
  leftOut: number;
}

const longest = 200_000;
/** So many faults are told; a list of the wrong kind has one in each cell. */
const mostFaults = 60;

const plain = (text: string) => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** The column of the places and that of the names. */
const fixed = { id: 'place', name: 'name' } as const;

interface Column {
  heading: string;
  /** Where its cells go. */
  to: { kind: 'id' } | { kind: 'name' } | { kind: 'set'; key: string };
}

/** How a parameter is headed: by its label where no other column is called so, else by its pointer. */
function headingOf(record: MethodRecord, key: string): string {
  const parameter = record.parameters[key];
  if (!parameter) return key;
  const taken = [
    ...Object.values(fixed),
    ...Object.entries(record.parameters).flatMap(([name, { label }]) => (name === key ? [] : [name, label])),
  ].map(plain);
  return taken.includes(plain(parameter.label)) || parameter.label !== parameter.label.trim()
    ? pointerOf(['parameters', key])
    : parameter.label;
}

function columnOf(record: MethodRecord, heading: string): Column['to'] | undefined {
  const word = plain(heading);
  if (word === fixed.id) return { kind: 'id' };
  if (word === fixed.name) return { kind: 'name' };
  const names = Object.keys(record.parameters);
  const [measured = '', measure] = heading.trim().split('.');
  if (measure !== undefined && record.parameters[measured]?.kind === 'outline')
    return { kind: 'set', key: `${measured}.${measure}` };
  const key =
    names.find((name) => name === heading.trim()) ??
    names.find((name) => pointerOf(['parameters', name]) === heading.trim()) ??
    names.find((name) => plain(name) === word) ??
    names.find((name) => plain(record.parameters[name]?.label ?? '') === word);
  return key === undefined ? undefined : { kind: 'set', key };
}

/** A cell that a spreadsheet would take for a formula, and one that begins as what shields it does. */
const formula = /^'*[=+\-@\t\r]/;

/** The text of a cell without what shields it. */
const unshielded = (text: string) => (text.startsWith("'") && formula.test(text) ? text.slice(1) : text);

/** The value of an option by its label, as a reader writes it; any other text as it stands. */
function asValue(record: MethodRecord, key: string, text: string): string {
  const parameter = record.parameters[key];
  if (parameter?.kind !== 'choice') return text;
  return parameter.options.find(({ label }) => plain(label) === plain(text))?.value ?? text;
}

/** An option as it is read: its label; any other value as it stands. */
function asLabel(record: MethodRecord, key: string, text: string): string {
  const parameter = record.parameters[key];
  if (parameter?.kind !== 'choice') return text;
  const label = parameter.options.find(({ value }) => value === text)?.label ?? text;
  return asValue(record, key, label) === text ? label : text;
}

/** What is wrong with the parameters of a place, by the name of the parameter. */
export function placeFaults(
  record: MethodRecord,
  set: Readonly<Record<string, string>>,
  shop?: Shop,
): { key: string; message: string }[] {
  return Object.entries(set).flatMap(([key, text]) =>
    parametersOf(record, { set: { [key]: text }, ...(shop ? { shop } : {}) })
      .faults.filter(({ path }) => path[1] === undefined || path[1] === key.split('.')[0])
      .map(({ message }) => ({ key, message })),
  );
}

/**
 * Read a list of places as a spreadsheet gives it: CSV (RFC 4180) with commas, semicolons or tabs, with or without a byte-order mark.
 *
 * The first row names the columns: `place`, `name`, and one for each parameter that differs, by its label or its name. An empty cell leaves what is
 * common. A cell that cannot be used is kept as typed, and told.
 */
export function readPlaces(text: string, record: MethodRecord): SheetReading {
  const faults: SheetFault[] = [];
  const tell = (row: number, column: string, message: string) => {
    if (faults.length < mostFaults) faults.push({ row, column, message });
  };
  const none = (message: string): SheetReading => ({
    places: [],
    faults: [{ row: 1, column: '', message }],
    leftOut: 0,
  });
  if (text.length > longest)
    return none(
      `The list has ${text.length} characters, more than ${longest}. Keep the columns that the class needs, and one row a place.`,
    );
  if (text.includes('\0'))
    return none('This is no text. Save the table as CSV (comma-separated values, UTF-8), and open that file.');
  const table = text.replace(/^\uFEFF/, '');
  const parsed = Papa.parse<string[]>(table, { delimiter: delimiterOf(table, record), skipEmptyLines: false });
  const broken = parsed.errors.find(({ type }) => type === 'Quotes');
  if (broken)
    return none(
      `A quotation mark in row ${(broken.row ?? 0) + 1} opens a cell and does not close it, or closes it before its end. Write " twice inside a cell, or save the table anew as CSV.`,
    );
  const isBlank = (cells: readonly string[]) => cells.every((cell) => cell.trim() === '');
  const rows = parsed.data.map((cells, at) => ({ cells, row: at + 1 })).filter(({ cells }) => !isBlank(cells));
  const [head, ...body] = rows;
  if (!head) return none('The list is empty. Its first row names the columns, such as place, name, and a parameter.');

  const columns = columnsOf(head.cells, record, (column, message) => tell(head.row, column, message));
  if (body.length === 0) tell(head.row, '', 'There is no row below the headings. Write one for each place.');
  if (body.length > mostPlaces)
    tell(
      body[mostPlaces]?.row ?? head.row,
      '',
      `The list has ${body.length} rows, and a class has ${mostPlaces} places at most. The rows from here on are left out: plan them as a class of their own.`,
    );
  const places: ClassPlace[] = [];
  // Every row beyond the last place is left out as a whole.
  let leftOut = Math.max(0, body.length - mostPlaces);
  const taken = new Map<string, number>();
  const idColumn = columns.findIndex((column) => column?.to.kind === 'id');
  const written = body.flatMap(({ cells }) => unshielded((cells[idColumn] ?? '').trim()) || []);
  for (const { cells, row } of body.slice(0, mostPlaces)) {
    const beyond = cells.slice(head.cells.length).find((cell) => cell.trim() !== '');
    if (beyond !== undefined)
      tell(row, '', `“${excerpt(beyond)}” stands beyond the last heading. Give its column a heading, or take it out.`);
    leftOut += cells.filter((cell, at) => cell.trim() !== '' && !columns[at]).length;
    const set: Record<string, string> = {};
    let id = '';
    let name: string | undefined;
    for (const [at, column] of columns.entries()) {
      const cell = unshielded((cells[at] ?? '').trim());
      if (!column || cell === '') continue;
      if (column.to.kind === 'id') id = cell;
      else if (column.to.kind === 'name') name = cell.slice(0, 80);
      else set[column.to.key] = asValue(record, column.to.key, cell.slice(0, 4000));
    }
    if (id !== '' && !/^[^\s\p{Cc}]{1,12}$/u.test(id)) {
      tell(
        row,
        fixed.id,
        `“${excerpt(id)}” is too long for a place or has a space. Write up to 12 characters, such as 7.`,
      );
      id = '';
      leftOut += 1;
    }
    if (taken.has(id)) {
      tell(row, fixed.id, `“${id}” is also the place of row ${taken.get(id)}. Give each place a name of its own.`);
      id = '';
      leftOut += 1;
    }
    if (id === '') id = freeId([...taken.keys(), ...written], places.length + 1);
    taken.set(id, row);
    for (const { key, message } of placeFaults(record, set)) tell(row, headingOf(record, key), message);
    places.push({ id, ...(name === undefined ? {} : { name }), set });
  }
  return { places, faults, leftOut };
}

/** A number that no place has yet. */
export function freeId(taken: readonly string[], from = taken.length + 1): string {
  let number = from;
  while (taken.includes(String(number))) number += 1;
  return String(number);
}

/** What parts the cells: of those that spreadsheets write, the one with which the heading has most columns that are known. */
function delimiterOf(text: string, record: MethodRecord): string {
  const known = (delimiter: string) =>
    Papa.parse<string[]>(text, { delimiter, preview: 1, skipEmptyLines: 'greedy' })
      .data.flat()
      .filter((heading) => columnOf(record, heading) !== undefined).length;
  return [',', ';', '\t'].reduce((best, other) => (known(other) > known(best) ? other : best));
}

function columnsOf(
  headings: readonly string[],
  record: MethodRecord,
  tell: (column: string, message: string) => void,
): (Column | undefined)[] {
  const seen = new Map<string, string>();
  return headings.map((heading): Column | undefined => {
    if (heading.trim() === '') return undefined;
    const to = columnOf(record, heading);
    if (!to) {
      const known = [...Object.values(fixed), ...Object.keys(record.parameters)];
      tell(
        excerpt(heading),
        `No parameter of the method is called “${excerpt(heading)}”, so this column is left out. ${orThese(heading.trim(), known, 'heading')} The columns that there are: ${known.join(', ')}.`,
      );
      return undefined;
    }
    const key = to.kind === 'set' ? `set ${to.key}` : to.kind;
    const before = seen.get(key);
    if (before !== undefined) {
      tell(
        excerpt(heading),
        `The columns “${excerpt(before)}” and “${excerpt(heading)}” mean the same, and this one is left out. Keep one of them.`,
      );
      return undefined;
    }
    seen.set(key, heading);
    return { heading, to };
  });
}

/**
 * A list of places as CSV (RFC 4180) that `readPlaces` reads back: a column for the place, one for the name, and one for each parameter
 * that any place sets. A cell that a spreadsheet would take for a formula begins with an apostrophe.
 */
export function placesText(places: readonly ClassPlace[], record: MethodRecord): string {
  const keys = [...new Set(places.flatMap(({ set }) => Object.keys(set)))];
  const order = Object.keys(record.parameters);
  const rank = (key: string) => {
    const at = order.indexOf(key.split('.')[0] ?? key);
    return at < 0 ? order.length : at;
  };
  keys.sort((one, two) => rank(one) - rank(two));
  const shielded = (text: string) => (formula.test(text) ? `'${text}` : text);
  const rows = [
    [fixed.id, fixed.name, ...keys.map((key) => headingOf(record, key))],
    ...places.map(({ id, name = '', set }) => [
      id,
      name,
      ...keys.map((key) => (Object.hasOwn(set, key) ? asLabel(record, key, set[key] ?? '') : '')),
    ]),
  ];
  return `${Papa.unparse(
    rows.map((row) => row.map(shielded)),
    { newline: '\r\n' },
  )}\r\n`;
}
