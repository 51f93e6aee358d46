import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { type DatesReading, readDates } from './readings/dates.ts';
import { readList, withTemperatureUnit } from './readings/list.ts';
import { readLog } from './readings/log.ts';
import { meansOf, rowsKept } from './readings/means.ts';
import { type Amount, celsiusOf, type TemperatureUnit } from './readings/quantities.ts';
import { cleanLabel, exampleReading, quoted, type RawReading, type RawReadings } from './readings/raw.ts';
import type { AirReading } from './rooms.ts';

/** Air that is taken as a reading: °C, and % relative humidity with what a wet sensor may show above 100. */
const allowed = { coldest: -40, warmest: 60, dampest: 105 } as const;
/** Above this, numbers without a unit are °F: no room or shed stands at 45 °C. */
const warmestCelsius = 45;
/** Readings without dates cannot be averaged; more than this are too many to show. */
const undatedRows = 60;

/** Own readings, and how they were read: units assumed, rows averaged or left out. */
export interface ReadingsRead {
  readings: AirReading[];
  note: string;
}

/**
 * Read a person's own readings of temperature and relative humidity.
 *
 * Takes readings typed one a line or with semicolons between (`Jan 20 C 30 %; Jul, 75 °F, 58 %`), or a logger's file with a header
 * row: columns in any order, `;`, `,` or tab between them, decimal point or comma, °C or °F from the cell, the header
 * or, said in the note, from what is plausible. Up to 24 rows are kept as they are; more become daily, weekly or
 * monthly means by their dates. The text is only read, never run, and nothing in it makes this throw.
 *
 * @param text as typed, pasted or loaded
 * @returns readings of -40 to 60 °C and 0 to 100 %, or an error for the field `readings` that names the line, what was
 *   read, what is allowed and a way out
 */
export function parseReadings(text: string): Outcome<ReadingsRead> {
  const lines = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const raw = readLog(lines) ?? readList(lines);
  if ('problem' in raw) return refuse('readings', raw.problem, raw.wayOut);
  const settled = settle(raw);
  if (!settled.ok) return settled;
  const { rows, notes } = settled.value;
  if (rows.length <= rowsKept) {
    const readings = rows.map((row, index) => ({ ...row, label: row.label || `Reading ${index + 1}` }));
    const count = `${rows.length} ${rows.length === 1 ? 'reading' : 'readings'}, kept as given.`;
    return answer({ readings, note: [count, ...notes].join(' ') });
  }
  const dates = readDates(rows.map(({ label }) => label));
  if (dates.ok) {
    const means = meansOf(rows, dates.days);
    return answer({ readings: means.readings, note: [means.note, ...notes, dates.note ?? ''].join(' ').trim() });
  }
  if (rows.length <= undatedRows && dates.reason === 'not-a-date') {
    const readings = rows.map((row, index) => ({ ...row, label: row.label || `Reading ${index + 1}` }));
    return answer({ readings, note: [`${rows.length} readings, kept as given.`, ...notes].join(' ') });
  }
  return refuseDates(raw.rows[dates.index] as RawReading, rows.length, dates);
}

function refuseDates(row: RawReading, count: number, dates: DatesReading & { ok: false }) {
  const label = row.label === '' ? 'an empty label' : quoted(row.label);
  if (dates.reason === 'orders-disagree') {
    return refuse(
      'readings',
      `Line ${row.line}: ${label} does not fit the other dates, some of which put the day first and some the month`,
      'Write every date as 2024-03-27.',
    );
  }
  return refuse(
    'readings',
    `Line ${row.line}: ${label} is not a date, and without dates ${count} rows cannot be averaged by month; at most ${undatedRows} are kept as they are`,
    `Give every row a date, such as 2024-03-27, or type the monthly means: ${exampleReading}.`,
  );
}

/** Settle units and check ranges. */
function settle({ rows, headerUnit, notes }: RawReadings): Outcome<{ rows: AirReading[]; notes: string[] }> {
  const said = [...notes];
  const unit = bareUnit(rows, headerUnit, said);
  const share = rows.every(({ humidity }) => humidity.unit === undefined && Math.abs(humidity.value) <= 1);
  const shares = share && rows.some(({ humidity }) => humidity.value > 0);
  if (shares) said.push('Humidity from 0 to 1 was taken as a share: 0.45 as 45 %.');
  let overFull = 0;
  const settled: AirReading[] = [];
  for (const row of rows) {
    const temperature = celsius(row.temperature, unit);
    const humidity = shares ? Math.round(row.humidity.value * 1e8) / 1e6 : row.humidity.value;
    if (temperature < allowed.coldest || temperature > allowed.warmest) {
      return refuse(
        'readings',
        `Line ${row.line}: ${quoted(row.temperature.text)} is ${temperature.toFixed(1)} °C, outside the −40 to 60 °C (−40 to 140 °F) that is taken as air around wood`,
        'Correct it, name its unit as °C or °F, or remove the row.',
      );
    }
    if (humidity < 0 || humidity > allowed.dampest) {
      return refuse(
        'readings',
        `Line ${row.line}: ${quoted(row.humidity.text)} is not a relative humidity, which lies from 0 to 100 %`,
        'Correct it, or remove the row.',
      );
    }
    if (humidity > 100) overFull += 1;
    // Adding 0 turns a typed -0 into 0.
    settled.push({ label: row.label, temperature: temperature + 0, humidity: Math.min(humidity, 100) + 0 });
  }
  if (overFull > 0) {
    said.push(
      `Humidity above 100 %, as a wet sensor shows, was taken as 100 % in ${overFull} ${overFull === 1 ? 'row' : 'rows'}.`,
    );
  }
  return answer({ rows: settled, notes: said });
}

/** The unit of temperatures that carry none: the header's, that of the others, or the plausible one; said where assumed. */
function bareUnit(
  rows: readonly RawReading[],
  headerUnit: TemperatureUnit | undefined,
  said: string[],
): TemperatureUnit {
  const bare = rows.filter(({ temperature }) => temperature.unit === undefined);
  if (headerUnit !== undefined || bare.length === 0) return headerUnit ?? 'C';
  const others = new Set(rows.map(({ temperature }) => temperature.unit).filter((unit) => unit !== undefined));
  const [only] = others;
  if (others.size === 1 && (only === 'C' || only === 'F')) {
    said.push(`Temperatures without a unit were taken as °${only}, like the others.`);
    return only;
  }
  let coldest = Number.POSITIVE_INFINITY;
  let warmest = Number.NEGATIVE_INFINITY;
  for (const { temperature } of bare) {
    coldest = Math.min(coldest, temperature.value);
    warmest = Math.max(warmest, temperature.value);
  }
  const unit = warmest > warmestCelsius ? 'F' : 'C';
  const which = coldest === warmest ? `the temperature ${coldest}` : `temperatures from ${coldest} to ${warmest}`;
  said.push(`No unit was given for ${which}: taken as °${unit}. Write °C or °F to be sure.`);
  return unit;
}

function celsius(amount: Amount, bare: TemperatureUnit): number {
  return (amount.unit ?? bare) === 'F' ? celsiusOf(amount.value) : amount.value;
}

/**
 * Typed readings with °F behind every temperature that names no unit, as a reader means them who counts in °F. A logger's file, and a
 * list in which some temperature has a unit, stay as they are: they say of themselves how they are to be read.
 */
export function readingsInFahrenheit(text: string): string {
  const lines = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  return readLog(lines) === undefined ? withTemperatureUnit(lines, 'F') : text;
}

/**
 * Readings as short text for an address or a file: `Jan, 20.1 °C, 45 %; Feb, …`. `parseReadings` reads the same
 * values back (up to 24 readings; labels on one line, at most 40 characters).
 */
export function writeReadings(readings: readonly AirReading[]): string {
  return readings
    .map(({ label, temperature, humidity }) => writeReading(label, `${temperature} °C`, `${humidity} %`))
    .join('; ');
}

/** One reading as text, its temperature and humidity as texts with their units; the label may be empty. */
export function writeReading(label: string, temperature: string, humidity: string): string {
  return `${writeLabel(label)}, ${temperature}, ${humidity}`;
}

function writeLabel(label: string): string {
  const clean = cleanLabel(label);
  return clean === '' || /[",;]/.test(clean) ? `"${clean.replaceAll('"', '""')}"` : clean;
}
