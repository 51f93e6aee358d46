import { describe, expect, test } from 'vitest';
import { type AirReading, parseReadings, readingsInFahrenheit } from '../../../src/model/moisture/index.ts';

/** Readings as [label, °C, %]. */
function read(text: string): { readings: [string, number, number][]; note: string } {
  const outcome = parseReadings(text);
  if (!outcome.ok) throw new Error(outcome.errors.map(({ message }) => message).join(' '));
  const rows = outcome.value.readings.map(({ label, temperature, humidity }): [string, number, number] => [
    label,
    temperature,
    humidity,
  ]);
  return { readings: rows, note: outcome.value.note };
}

function refused(text: string): string {
  const outcome = parseReadings(text);
  if (outcome.ok) throw new Error(`read as ${JSON.stringify(outcome.value)}`);
  expect(outcome.errors.map(({ field }) => field)).toEqual(['readings']);
  return outcome.errors.map(({ message }) => message).join(' ');
}

describe('typed readings', () => {
  test.each<{ text: string; readings: [string, number, number][] }>([
    { text: 'Jan 20 C 30 %', readings: [['Jan', 20, 30]] },
    { text: 'dry, 68 F, 25 %', readings: [['dry', 20, 25]] },
    {
      text: 'dry 25% 68F\nwet 60% 77F',
      readings: [
        ['dry', 20, 25],
        ['wet', 25, 60],
      ],
    },
    {
      text: 'Jan, 20 °C, 25 %; Jul, 24 °C, 58 %',
      readings: [
        ['Jan', 20, 25],
        ['Jul', 24, 58],
      ],
    },
    {
      text: 'Jan 20,5 °C 45,5 %;\n\n  Feb −3.5 °C 80 % ;',
      readings: [
        ['Jan', 20.5, 45.5],
        ['Feb', -3.5, 80],
      ],
    },
    {
      text: 'Jan;20,5;45\nFeb;21;46,2',
      readings: [
        ['Jan', 20.5, 45],
        ['Feb', 21, 46.2],
      ],
    },
    { text: 'Jan\t68 °F\t30', readings: [['Jan', 20, 30]] },
    { text: 'Jan,20,30', readings: [['Jan', 20, 30]] },
    { text: '20 °C 45 %', readings: [['Reading 1', 20, 45]] },
    {
      text: '20 degrees C, 45 % RH; 68 deg F 40 percent',
      readings: [
        ['Reading 1', 20, 45],
        ['Reading 2', 20, 40],
      ],
    },
    { text: 'Jan: temperature 20 C, humidity 30 %', readings: [['Jan', 20, 30]] },
    { text: '20 C 45 % in the kitchen', readings: [['in the kitchen', 20, 45]] },
    { text: 'week 3, 20 C, 45 %', readings: [['week 3', 20, 45]] },
    { text: '2024-01-15 10:30, 20.1, 45', readings: [['2024-01-15 10:30', 20.1, 45]] },
    { text: '"shop; cold, ""north""", 20 °C, 45 %', readings: [['shop; cold, "north"', 20, 45]] },
    { text: '\ufeffJan 20℃ 30％', readings: [['Jan', 20, 30]] },
    {
      text: 'Jan 20 C 30 %\r\nFeb 21 C 31 %\rMar 22 C 32 %',
      readings: [
        ['Jan', 20, 30],
        ['Feb', 21, 31],
        ['Mar', 22, 32],
      ],
    },
  ])('$text', ({ text, readings }) => {
    expect(read(text.replace('％', '%')).readings).toEqual(readings);
  });

  test('a unit that is not given is assumed aloud', () => {
    expect(read('a,64,30; b,78,50').note).toContain('No unit was given for temperatures from 64 to 78: taken as °F');
    expect(read('a,18,30; b,24,50').note).toContain('No unit was given for temperatures from 18 to 24: taken as °C');
    expect(read('a, 20 °C, 30 %; b, 21, 40 %').note).toContain('Temperatures without a unit were taken as °C');
    expect(read('a,20,0.3; b,21,0.45').readings.map(([, , h]) => h)).toEqual([30, 45]);
    expect(read('a,20,0.3; b,21,0.45').note).toContain('taken as a share');
    expect(read('a 20 °C 30 %').note).toBe('1 reading, kept as given.');
  });

  test.each([
    { text: '', says: 'No readings were given' },
    { text: ' \n ; \n', says: 'No readings were given' },
    { text: 'hello', says: 'Line 1, “hello”, is not a reading: no temperature was found in it' },
    { text: 'Jan 20 C 30 %\nFeb 20 C', says: 'Line 2, “Feb 20 C”, is not a reading: no humidity was found in it' },
    { text: 'Jan 20 C 30 %, Feb 20 C 31 %', says: 'more than one temperature' },
    { text: 'Jan,20,5,45', says: 'its commas may be decimal ones' },
    { text: 'Jan 200 C 30 %', says: 'Line 1: “200 C” is 200.0 °C, outside the −40 to 60 °C' },
    { text: 'Jan -41 C 30 %', says: 'outside the −40 to 60 °C' },
    { text: 'Jan 20 C 130 %', says: 'Line 1: “130 %” is not a relative humidity, which lies from 0 to 100 %' },
    { text: 'Jan 20 C -1 %', says: 'not a relative humidity' },
  ])('$text is refused: $says', ({ text, says }) => {
    const message = refused(text);
    expect(message).toContain(says);
    // A way out follows what is wrong.
    expect(message).toMatch(/\. (Write|Correct) .*\.$/);
  });

  test('a sensor above 100 % is taken as 100 %, and said', () => {
    const { readings, note } = read('fog 5 C 103 %; haze 5 C 99 %');
    expect(readings.map(([, , humidity]) => humidity)).toEqual([100, 99]);
    expect(note).toContain('taken as 100 % in 1 row.');
  });

  test('more than 60 without a date are too many', () => {
    const lines = Array.from(
      { length: 61 },
      (_, index) => `place ${String.fromCharCode(65 + (index % 26))}, 20 °C, 45 %`,
    );
    expect(refused(lines.join('\n'))).toContain('61 rows cannot be averaged by month');
    expect(read(lines.slice(0, 60).join('\n')).readings).toHaveLength(60);
  });
});

describe('a logger’s file', () => {
  test.each<{ what: string; text: string; readings: [string, number, number][] }>([
    {
      what: 'columns in another order, °F in the header',
      text: 'Humidity (%),Time,Temperature (°F)\n40,2024-01-01 00:00,68\n41,2024-01-01 01:00,50',
      readings: [
        ['2024-01-01 00:00', 20, 40],
        ['2024-01-01 01:00', 10, 41],
      ],
    },
    {
      what: 'semicolons, decimal commas, German names',
      text: 'Datum;Zeit;Temperatur [°C];rel. Feuchte [%]\n01.02.2024;10:00;20,5;45,1\n01.02.2024;11:00;20,6;45,2',
      readings: [
        ['01.02.2024', 20.5, 45.1],
        ['01.02.2024', 20.6, 45.2],
      ],
    },
    {
      what: 'tabs, short names, a byte-order mark and blank lines',
      text: '\ufeff\nRH\tT\tmonth\n\n45\t20\tJan\n46\t21\tFeb\n\n',
      readings: [
        ['Jan', 20, 45],
        ['Feb', 21, 46],
      ],
    },
    {
      what: 'particulars above the header, quoted names with commas, event rows',
      text: '"Plot Title: shop"\n"#","Date Time, GMT-05:00","Temp, °F (LGR S/N: 10123)","RH, % (LGR S/N: 10123)","Host Connected"\n1,01/15/24 10:00:00 AM,68.0,30.2,\n2,01/15/24 10:05:00 AM,,,Logged\n',
      readings: [['01/15/24 10:00:00 AM', 20, 30.2]],
    },
    {
      what: 'dew point and extremes beside what is wanted',
      text: 'date,dew point (°C),temp min (°C),temp avg (°C),absolute humidity (g/m3),relative humidity\n2024-01-01,5,18,20,8,40',
      readings: [['2024-01-01', 20, 40]],
    },
    {
      what: 'units in the cells',
      text: 'when,temperature,humidity\nJan,"68 °F","45 %"',
      readings: [['Jan', 20, 45]],
    },
    { what: 'camel case', text: 'name,TempF,RelHum\nJan,68,45', readings: [['Jan', 20, 45]] },
    { what: 'snake case', text: 'name,temp_f,rh_pct\nJan,68,45', readings: [['Jan', 20, 45]] },
    {
      what: 'no label at all',
      text: 'T,RH\n20,45\n21,46',
      readings: [
        ['Reading 1', 20, 45],
        ['Reading 2', 21, 46],
      ],
    },
    { what: 'numbered columns', text: 'time,Temp 1 (°C),RH 1 (%)\nJan,20,45', readings: [['Jan', 20, 45]] },
    { what: 'humidity as a share', text: 'month,temp,rh\nJan,20 °C,0.45', readings: [['Jan', 20, 45]] },
  ])('$what', ({ text, readings }) => {
    expect(read(text).readings).toEqual(readings);
  });

  test('says which columns were used and what was left out', () => {
    const { note } = read('time,temp °C,RH %\nJan,20,45\nFeb,---,46\nMar,NaN,NaN');
    expect(note).toBe(
      '1 reading, kept as given. Temperature from column “temp °C”, humidity from “RH %”. 2 rows without a value left out.',
    );
  });

  test.each([
    {
      what: 'a word for a temperature',
      text: 'time,temp,rh\nJan,20,45\nFeb,warm,46',
      says: 'Line 3: “warm” in column “temp” is not a temperature',
    },
    {
      what: 'a word for a humidity',
      text: 'time,temp,rh\nJan,20,dry',
      says: 'Line 2: “dry” in column “rh” is not a relative humidity',
    },
    { what: 'columns swapped by unit', text: 'time,temp,rh\nJan,45 %,20', says: 'is not a temperature' },
    {
      what: 'a temperature where humidity should be',
      text: 'time,temp,rh\nJan,20,20 °C',
      says: 'is not a relative humidity',
    },
    {
      what: 'decimal commas between commas',
      text: 'time,temp,rh\nJan,20,5,45',
      says: 'Line 2 has 4 cells and the header 3',
    },
    { what: 'a header alone', text: 'time,temp,rh\n', says: 'The header on line 1 is followed by no row' },
    {
      what: 'a line number after a cell of two lines',
      text: 'time,temp,rh\n"a\nb",20,45\nc,warm,46',
      says: 'Line 4: “warm”',
    },
    { what: 'a value out of range', text: 'time,temp °C,rh\nJan,20,45\nFeb,200,45', says: 'Line 3: “200” is 200.0 °C' },
  ])('$what: $says', ({ text, says }) => {
    expect(refused(text)).toContain(says);
  });
});

/** A log with a row every so many hours; the temperature is the day's number, the humidity 40 or 50 in turn. */
function log(days: number, date: (day: Date) => string, every = 12, from = Date.UTC(2024, 0, 1)): string {
  const rows = Array.from({ length: (days * 24) / every }, (_, index) => {
    const time = new Date(from + index * every * 3_600_000);
    return `${date(time)},${(index * every) / 24 / 100},${index % 2 === 0 ? 40 : 50}`;
  });
  return ['date,temp °C,rh', ...rows].join('\n');
}
const iso = (time: Date) => time.toISOString();
const dayFirst = (time: Date) => `${time.getUTCDate()}/${time.getUTCMonth() + 1}/${time.getUTCFullYear()}`;
const monthFirst = (time: Date) => `${time.getUTCMonth() + 1}/${time.getUTCDate()}/${time.getUTCFullYear()} 1:00 PM`;

describe('many rows become means', () => {
  test('a year: twelve months, each the mean of its rows', () => {
    const { readings, note } = read(log(366, iso));
    expect(readings.map(([label]) => label)).toEqual('Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' '));
    // January: rows 0 to 61, half a day apart, from day 0 to day 30.5.
    expect(readings[0]).toEqual(['Jan', 0.15, 45]);
    expect(note).toContain('732 rows from 2024-01-01 to 2024-12-31, as monthly means.');
  });

  test('the order of the rows does not matter', () => {
    const [header, ...rows] = log(366, iso).split('\n');
    expect(read([header, ...rows.reverse()].join('\n')).readings).toEqual(read(log(366, iso)).readings);
  });

  test('more than a year keeps the years apart', () => {
    const { readings } = read(log(500, iso));
    expect(readings[0]?.[0]).toBe('Jan 2024');
    expect(readings[12]?.[0]).toBe('Jan 2025');
    expect(readings).toHaveLength(17);
  });

  test('many years become one year', () => {
    const { readings, note } = read(log(365 * 3 + 1, iso, 24));
    expect(readings.map(([label]) => label)).toHaveLength(12);
    expect(note).toContain('as monthly means over 3 years');
  });

  test('a winter from November to March stays in its order, and says where days are few', () => {
    const { readings, note } = read(log(125, iso, 12, Date.UTC(2023, 10, 27)));
    expect(readings.map(([label]) => label)).toEqual(['Nov', 'Dec', 'Jan', 'Feb', 'Mar']);
    expect(note).toContain('Few days in Nov (4 days).');
  });

  test('five weeks become weeks, a week days, a day stays as it is', () => {
    expect(read(log(35, iso)).readings.map(([label]) => label)).toEqual([
      'week of 2024-01-01',
      'week of 2024-01-08',
      'week of 2024-01-15',
      'week of 2024-01-22',
      'week of 2024-01-29',
    ]);
    expect(read(log(7, iso, 3)).readings.map(([label]) => label)[6]).toBe('2024-01-07');
    expect(read(log(1, iso, 1)).readings).toHaveLength(24);
  });

  test.each([
    { order: 'day first', date: dayFirst },
    { order: 'month first', date: monthFirst },
    { order: 'year first with slashes', date: (time: Date) => iso(time).slice(0, 10).replaceAll('-', '/') },
    { order: 'without marks', date: (time: Date) => iso(time).slice(0, 10).replaceAll('-', '') },
    { order: 'month by name', date: (time: Date) => time.toUTCString().slice(5, 16) },
    { order: 'seconds since 1970', date: (time: Date) => String(time.getTime() / 1000) },
    { order: 'milliseconds since 1970', date: (time: Date) => String(time.getTime()) },
    { order: 'short years', date: (time: Date) => dayFirst(time).replace('/2024', '/24') },
  ])('dates with the $order give the same months', ({ date }) => {
    const { readings, note } = read(log(366, date));
    expect(readings).toEqual(read(log(366, iso)).readings);
    expect(note).not.toContain('does not prove');
  });

  test('an order that no date proves is the one that keeps the dates together, and is said', () => {
    const { readings, note } = read(log(8, monthFirst, 4));
    expect(readings.map(([label]) => label)[0]).toBe('2024-01-01');
    expect(readings).toHaveLength(8);
    expect(note).toContain('were read with the month first, which the file does not prove');
    expect(read(log(8, dayFirst, 4)).note).toContain('with the day first');
  });

  test('dates that fit no one order are refused with their line', () => {
    const rows = log(40, dayFirst).split('\n');
    rows[60] = '1/31/2024,20,45';
    expect(refused(rows.join('\n'))).toMatch(/^Line \d+: “.*” does not fit the other dates/);
  });

  test.each(['2024-02-30', 'tomorrow', '', '99/99/2024'])('a date such as “%s” among others is refused', (wrong) => {
    const rows = log(100, iso).split('\n');
    rows[150] = `${wrong},20,45`;
    const message = refused(rows.join('\n'));
    expect(message).toContain('Line 151');
    expect(message).toContain('is not a date');
  });

  test('a year of ten-minute rows is read', () => {
    expect(parseReadings(log(365, iso, 1 / 6)).ok).toBe(true);
  });
});

test.each([
  { what: 'a million spaces', text: `a${' '.repeat(1e6)}b` },
  { what: 'a million digits', text: `date,temp,rh\n${'1'.repeat(1e6)},2,3` },
  { what: 'a hundred thousand quotes', text: '"'.repeat(1e5) },
  { what: 'a hundred thousand semicolons', text: `;`.repeat(1e5) },
  { what: 'a hundred thousand numbers', text: '1 '.repeat(1e5) },
  { what: 'a header of spaces', text: `temp,rh${' '.repeat(3900)}\n20,${' '.repeat(1e6)}x` },
  { what: 'a hundred thousand empty lines', text: '\n'.repeat(1e5) },
])('$what: an answer before the run gives up', ({ text }) => {
  // A pattern that backtracks without end would not come back from any of these.
  expect(typeof parseReadings(text).ok).toBe('boolean');
});

test('readings are plain values: nothing in the text is run', () => {
  const outcome = parseReadings('=1+1, 20 °C, 45 %; process.exit(1), 20 °C, 45 %; <img src=x>, 20 °C, 45 %');
  const expected: AirReading[] = ['=1+1', 'process.exit(1)', '<img src=x>'].map((label) => ({
    label,
    temperature: 20,
    humidity: 45,
  }));
  expect(outcome).toMatchObject({ ok: true, value: { readings: expected } });
});

test('a degree sign without a scale leaves the unit open, for the reader or for what is plausible', () => {
  expect(readingsInFahrenheit('Jan, 62°, 45 %; Jul, 75 °, 58 %')).toBe('Jan, 62 °F, 45 %; Jul, 75 °F, 58 %');
  expect(read('Jan, 21°, 45 %').readings).toEqual([['Jan', 21, 45]]);
  expect(read('Jan, 62°, 45 %').readings[0]?.[1]).toBeCloseTo(16.667, 3);
});
