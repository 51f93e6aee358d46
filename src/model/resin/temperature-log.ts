import { readDates } from '../moisture/readings/dates.ts';
import {
  celsiusOf,
  readAmount,
  type TemperatureUnit,
  unitOfHeader,
  withoutSign,
} from '../moisture/readings/quantities.ts';
import { asTyped, excerpt, parseQuantity, type Read, type ReaderUnits } from '../quantity/index.ts';
import { readAll, splitEntries, splitParts } from '../quantity/lists.ts';
import { day } from '../quantity/seconds.ts';
import type { LogPoint } from './history.ts';

/** Rows that are read: two weeks at ten minutes, and more. */
const mostRows = 3000;
const range = { lowest: -30, highest: 70 };
/** No shop stands hotter, °C: a number above it that names no unit is more likely °F. */
const warmestShop = 45;

/** Times and temperatures as read, with a note that says how. */
export interface TemperatureLog {
  /** s from the first reading, growing. */
  points: LogPoint[];
  note: string;
}

type Cells = readonly string[];
type Row = { cells: Cells; line: number };

const clock = /(?:^|[T\s])(\d{1,2}):(\d{2})(?::(\d{2}))?\s*([ap]m)?/i;
const temperatureName = /temp|celsius|fahrenheit|[°º]\s*[cf]|[℃℉]/i;
const otherName = /dew|humid|hum\b|rh\b/i;

/**
 * Read a log of temperatures: lines or entries of a time and a temperature. Times are counted from the first, as `0 h`, `8 h`, or are dates
 * with the time of day as loggers write them; a header may name the unit, and columns beyond the first temperature are passed over.
 */
export function readTemperatureLog(text: string): Read<TemperatureLog> {
  const { entries, names, rows, column, unit } = rowsOf(text);
  if (entries.length > mostRows + 1) {
    return {
      ok: false,
      problem: `The log has ${entries.length} rows, more than the ${mostRows} that are read`,
      wayOut: 'Keep one row an hour.',
    };
  }
  const long = names && rows.find(({ cells }) => cells.length > names.length);
  if (names && long) {
    return {
      ok: false,
      problem: `Row ${long.line} has ${long.cells.length} cells and the header ${names.length}`,
      wayOut: 'Write decimals with a point, or leave the header out.',
    };
  }
  if (rows.length === 0) {
    return {
      ok: false,
      problem: 'The log holds no reading',
      wayOut: 'Give a time and a temperature, such as 0 h, 21 °C; 12 h, 15 °C.',
    };
  }
  const apart = misparted(rows, names);
  if (apart) return apart;
  const temperatures = readAll(rows, (row) => readTemperature(row, column, unit));
  if (!temperatures.ok) return temperatures;
  const times = readTimes(rows);
  if (!times.ok) return times;
  const start = times.value[0] as number;
  const points = times.value.map(
    (time, at): LogPoint => ({ time: time - start, celsius: temperatures.value[at] as number }),
  );
  const back = points.findIndex(({ time }, at) => at > 0 && time <= (points[at - 1] as LogPoint).time);
  if (back > 0) {
    return {
      ok: false,
      problem: `Row ${(rows[back] as Row).line}: “${excerpt((rows[back] as Row).cells[0] ?? '')}” is not later than the row before`,
      wayOut: 'Put the rows in the order of time, each at a time of its own.',
    };
  }
  const bare = unit === undefined && rows.every(({ cells }) => readAmount(cells[column] ?? '')?.unit === undefined);
  return {
    ok: true,
    value: {
      points,
      note: `${rows.length} ${rows.length === 1 ? 'reading' : 'readings'}; the first is taken as the time of mixing.${bare ? ' Temperatures without a unit were read as °C.' : ''}`,
    },
  };
}

interface Table {
  entries: string[];
  /** Names of the columns, where the first row holds them. */
  names: Cells | undefined;
  rows: Row[];
  /** Where the temperatures stand, and the unit that its name gives them. */
  column: number;
  unit: TemperatureUnit | undefined;
}

function rowsOf(text: string): Table {
  const entries = splitEntries(text);
  const names = entries[0] !== undefined && isHeader(entries[0]) ? cellsOf(entries[0]) : undefined;
  // Under a header with commas every comma parts columns; elsewhere one between digits is a decimal comma.
  const plain = names !== undefined && !/[\t]/.test(entries[0] as string);
  const rows = entries
    .map(
      (entry, index): Row => ({
        cells: plain ? entry.split(',').map((cell) => cell.trim()) : cellsOf(entry),
        line: index + 1,
      }),
    )
    .slice(names ? 1 : 0);
  const column = names ? columnOf(names) : 1;
  return { entries, names, rows, column, unit: names && unitOfHeader(names[column] ?? '') };
}

/**
 * The log with a unit behind every bare temperature: that of the others where they agree, else the reader's. A header that names
 * a unit speaks for all.
 */
export function explicitLog(text: string, reader: ReaderUnits): string {
  const { entries, names, rows, column, unit } = rowsOf(text);
  const amounts = rows.map(({ cells }) => readAmount(cells[column] ?? ''));
  if (unit !== undefined || !amounts.some((amount) => amount && amount.unit === undefined)) return text;
  const [other, ...others] = new Set(amounts.map((amount) => amount?.unit).filter((one) => one !== undefined));
  const agreed = others.length === 0 && other !== '%' ? other : undefined;
  const label = `°${agreed ?? (reader.system === 'inch' ? 'F' : 'C')}`;
  const written = rows.map(({ cells }, at) => {
    const entry = entries[at + (names ? 1 : 0)] as string;
    if (!amounts[at] || amounts[at].unit !== undefined) return entry;
    // The cells are pieces of the row, in order.
    const end = cells.slice(0, column + 1).reduce((from, cell) => entry.indexOf(cell, from) + cell.length, 0);
    return `${withoutSign(entry.slice(0, end))} ${label}${entry.slice(end)}`;
  });
  return [...(names ? [entries[0] as string] : []), ...written].join(text.includes('\n') ? '\n' : '; ');
}

/** Whether a row names its columns: it starts with a word, and no number ends it. */
function isHeader(entry: string): boolean {
  return /^\s*[a-z]/i.test(entry) && !/\d\s*(?:[°º]?\s*[cf])?\s*$/i.test(entry) && cellsOf(entry).length > 1;
}

/** Cells of a row, parted by tabs or by commas that are no decimal commas; the comma after a time of day is none. */
function cellsOf(entry: string): string[] {
  if (entry.includes('\t')) return entry.split('\t').map((cell) => cell.trim());
  const [, time, rest] = /^(.*?\d:\d{2}(?:\s*[ap]m)?)\s*,(.*)$/i.exec(entry) ?? [];
  return time !== undefined && rest !== undefined ? [time.trim(), ...splitParts(rest)] : splitParts(entry);
}

/** The column of temperatures by its name; the second where none is named. */
function columnOf(names: Cells): number {
  const found = names.findIndex((name) => temperatureName.test(name) && !otherName.test(name));
  return found < 0 ? 1 : found;
}

/**
 * A row whose time and temperature no comma parts, and readings in one row that should be a row each; undefined where neither is so. What
 * stands behind the temperature of a row is passed over, so that the rest of such a row would be lost without a word.
 */
function misparted(rows: readonly Row[], names: Cells | undefined): Read<never> | undefined {
  if (names) return undefined;
  const [first] = rows;
  const run = first && rows.length === 1 && first.cells.length >= 4 && first.cells.length % 2 === 0 ? first.cells : [];
  if (run.length > 0 && run.every((cell) => /\d/.test(cell))) {
    const pairs = run.flatMap((cell, at) => (at % 2 === 0 ? [`${cell}, ${run[at + 1]}`] : []));
    return {
      ok: false,
      problem: `Row 1: “${excerpt(run.join(', '))}” has ${run.length} parts, where a reading has a time and a temperature`,
      wayOut: `Write one reading a line or part them by semicolons. Perhaps ${excerpt(pairs.join('; '), 200)}.`,
    };
  }
  const bare = rows.find(({ cells }) => cells.length === 1 && /\d.*\s[-\u2212]?\d/.test(cells[0] ?? ''));
  if (!bare) return undefined;
  return {
    ok: false,
    problem: `Row ${bare.line}: “${excerpt(bare.cells[0] ?? '')}” has no comma, so its parts cannot be told apart`,
    wayOut: `Put one between: time, temperature. Perhaps ${excerpt((bare.cells[0] ?? '').replace(/\s+(?=[-\u2212]?\d\S*(?:\s*[°º]?\s*[cf])?\s*[°º]?$)/i, ', '), 200)}.`,
  };
}

function readTemperature({ cells, line }: Row, column: number, unit: TemperatureUnit | undefined): Read<number> {
  const cell = cells[column] ?? '';
  const amount = readAmount(cell);
  const wayOut = `Write a time and a temperature, such as 8 h, ${asTyped({ metric: '15 °C', inch: '59 °F' })}.`;
  if (!amount || amount.unit === '%')
    return { ok: false, problem: `Row ${line}: “${excerpt(cell || cells.join(', '))}” is no temperature`, wayOut };
  if ((amount.unit ?? unit) === undefined && amount.value > warmestShop) {
    return {
      ok: false,
      problem: `Row ${line}: “${excerpt(cell)}” does not say whether it is °C or °F`,
      wayOut: `Write ${amount.value} °C or ${amount.value} °F, or name the unit in a header.`,
    };
  }
  const celsius = (amount.unit ?? unit) === 'F' ? celsiusOf(amount.value) : amount.value;
  if (celsius < range.lowest || celsius > range.highest) {
    return {
      ok: false,
      problem: `Row ${line}: “${excerpt(cell)}” is outside ${range.lowest} to ${range.highest} °C`,
      wayOut: 'Look at its unit.',
    };
  }
  return { ok: true, value: celsius };
}

/** Times in s: waits such as 8 h, or dates with a time of day. */
function readTimes(rows: readonly Row[]): Read<number[]> {
  const cells = rows.map((row) => row.cells[0] ?? '');
  const waits = readAll(rows, ({ cells: [cell = ''], line }) => {
    const read = parseQuantity(cell, { dimension: 'time', bareUnit: 'h' });
    if (read.ok && read.value >= 0) return { ok: true, value: read.value };
    return {
      ok: false,
      problem: `Row ${line}: “${excerpt(cell)}” is no time`,
      wayOut: 'Write 8 h, or a date and time such as 2026-03-27 14:30.',
    };
  });
  if (waits.ok) return waits;
  const dates = readDates(cells);
  const timed = cells.map((cell) => clock.exec(cell));
  if (!dates.ok || timed.some((match) => match === null)) return waits;
  return {
    ok: true,
    value: dates.days.map((date, at) => date * day + secondsOf(timed[at] as RegExpExecArray)),
  };
}

function secondsOf([, hours, minutes, seconds, half]: RegExpExecArray): number {
  const late = half?.toLowerCase();
  const hour = late ? (Number(hours) % 12) + (late === 'pm' ? 12 : 0) : Number(hours);
  return hour * 3600 + Number(minutes) * 60 + Number(seconds ?? 0);
}
