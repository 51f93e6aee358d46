import Papa from 'papaparse';
import { isTypedLine } from './list.ts';
import { readAmount, unitOfHeader } from './quantities.ts';
import { cleanLabel, exampleReading, quoted, type RawReading, type RawReadings, type ReadingProblem } from './raw.ts';

/** A header is looked for in so many lines: loggers write their own particulars above it. */
const headerWithin = 60;
const delimiters = ['\t', ';', ','] as const;

const temperatureName = /temp|celsius|fahrenheit|[°º]\s*[cf](?![a-z])|[℃℉]|^\s*t(?:\s*\d)?\s*(?:$|[([_])/i;
const humidityName = /hum|humed|umid|feucht|(?:^|[^a-z])r\.?\s?h\.?(?![a-z])|^\s*%/i;
const otherName =
  /dew|frost|wet.?bulb|taupunkt|ros[ée]e|roc[ií]o|heat.?index|chill|feels|absol|specific|mixing|g\/|soil|alarm|cpu|batt/i;
const extremeName = /min|max|low|high/i;
const dateName = /date|time|datum|zeit|fecha|hora|heure|stamp|(?:^|[^a-z])day(?![a-z])/i;
const labelName = /label|month|name|season|room|period|place|week|monat|mois|mes(?![a-z])/i;
const counterName = /^\s*(?:#|no\.?|nr\.?|id|index|record|row)\s*$/i;
/** What loggers write where a sensor gave nothing. */
const nothing = /^(?:|-+|\*+|n\/?a|nan|null|none|err(?:or)?|ol|over|fail|\?)$/i;

interface Columns {
  names: string[];
  temperature: number;
  humidity: number;
  label: number | undefined;
}

/** Whether a cell can be a column's name: no number in front, and no amount in it as in `humidity 30 %`; `Temp 1 °C` can. */
function isName(cell: string): boolean {
  return (
    !/^\s*[-+.,\u2212]?\d/.test(cell) &&
    !/\d[\d.,]*\d\s*(?:[°º℃℉%]|[CF](?![a-zA-Z]))/.test(cell) &&
    (cell.match(/\d\s*[°º℃℉%]/g) ?? []).length < 2
  );
}

/** The first column that a name fits, an average before a minimum or maximum. */
function columnNamed(names: readonly string[], wanted: RegExp, taken: readonly number[]): number | undefined {
  const fits = [...names.keys()].filter((index) => {
    const name = names[index] as string;
    return !taken.includes(index) && isName(name) && wanted.test(name) && !otherName.test(name);
  });
  return fits.find((index) => !extremeName.test(names[index] as string)) ?? fits[0];
}

function columnsOf(names: string[]): Columns | undefined {
  // Humidity first: '%' and 'RH' are plainer than a 'T', and 'Temp & humidity sensor: RH' is humidity.
  const humidity = columnNamed(names, humidityName, []);
  if (humidity === undefined) return undefined;
  const temperature = columnNamed(names, temperatureName, [humidity]);
  if (temperature === undefined) return undefined;
  const taken = [humidity, temperature];
  const other = [...names.keys()].filter((index) => !taken.includes(index));
  const named = (pattern: RegExp) => other.find((index) => pattern.test(names[index] as string));
  const label =
    named(/date|datum|fecha|stamp/i) ??
    named(dateName) ??
    named(labelName) ??
    other.find((index) => !counterName.test(names[index] as string) && !otherName.test(names[index] as string));
  return { names, temperature, humidity, label };
}

function cellsOfLine(line: string, delimiter: string): string[] {
  return Papa.parse<string[]>(line, { delimiter, newline: '\n' }).data[0] ?? [];
}

interface Header {
  /** Index of its line. */
  at: number;
  delimiter: string;
  columns: Columns;
}

function findHeader(lines: readonly string[]): Header | undefined {
  for (const [at, line] of lines.slice(0, headerWithin).entries()) {
    if (line.length > 4000) continue;
    for (const delimiter of delimiters) {
      if (!line.includes(delimiter)) continue;
      const columns = columnsOf(cellsOfLine(line, delimiter).map((name) => name.trim()));
      if (columns && !isTypedLine(line)) return { at, delimiter, columns };
    }
  }
  return undefined;
}

/**
 * Read a logger's file: a header row that names a temperature and a humidity column, in any order, then one row a reading.
 *
 * @param text with line ends as \n
 * @returns undefined where no line looks like such a header
 */
export function readLog(text: string): RawReadings | ReadingProblem | undefined {
  const lines = text.split('\n');
  const header = findHeader(lines);
  if (header === undefined) return undefined;
  const { at, delimiter, columns } = header;
  const { names, temperature, humidity, label } = columns;
  const body = lines.slice(at + 1).join('\n');
  const parsed = Papa.parse<string[]>(body, { delimiter, newline: '\n' });
  const rows: RawReading[] = [];
  let left = 0;
  let line = at + 2;
  for (const cells of parsed.data) {
    const here = line;
    line += 1 + cells.reduce((ends, cell) => ends + (cell.split('\n').length - 1), 0);
    if (cells.every((cell) => cell.trim() === '')) continue;
    const beyond = cells.slice(names.length).some((cell) => cell.trim() !== '');
    if (beyond && delimiter === ',') {
      return {
        problem: `Line ${here} has ${cells.length} cells and the header ${names.length}`,
        wayOut: 'Where numbers have a decimal comma, put ; between the columns, or a point in the numbers.',
      };
    }
    const cellsRead = [cells[temperature]?.trim() ?? '', cells[humidity]?.trim() ?? ''] as const;
    if (cellsRead.some((cell) => nothing.test(cell))) {
      left += 1;
      continue;
    }
    const [warm, damp] = cellsRead.map(readAmount);
    if (warm === undefined || warm.unit === '%') {
      return notRead(here, cellsRead[0], 'a temperature', names[temperature], 'such as 20.5 or 20,5 °C');
    }
    if (damp === undefined || (damp.unit !== undefined && damp.unit !== '%')) {
      return notRead(here, cellsRead[1], 'a relative humidity', names[humidity], 'such as 45 or 45 %');
    }
    const name = label === undefined ? '' : cleanLabel(cells[label] ?? '');
    rows.push({ line: here, label: name, temperature: warm, humidity: damp });
  }
  if (rows.length === 0) {
    return {
      problem: `The header on line ${at + 1} is followed by no row with a temperature and a humidity`,
      wayOut: `Add rows below it, or type readings such as ${exampleReading}.`,
    };
  }
  const notes = [
    `Temperature from column ${quoted(names[temperature] ?? '')}, humidity from ${quoted(names[humidity] ?? '')}.`,
  ];
  if (left > 0) notes.push(`${left} ${left === 1 ? 'row' : 'rows'} without a value left out.`);
  return { rows, headerUnit: unitOfHeader(names[temperature] ?? ''), notes };
}

function notRead(line: number, cell: string, kind: string, name: string | undefined, example: string): ReadingProblem {
  return {
    problem: `Line ${line}: ${quoted(cell)} in column ${quoted(name ?? '')} is not ${kind}`,
    wayOut: `Write a number, ${example}, or leave the cell empty.`,
  };
}
