import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { explicitLog, readTemperatureLog } from '../../../src/model/resin/temperature-log.ts';

const read = (text: string) => {
  const outcome = readTemperatureLog(text);
  if (!outcome.ok) throw new Error(`${outcome.problem}. ${outcome.wayOut}`);
  return outcome.value;
};
const points = (text: string) => read(text).points.map(({ time, celsius }) => [time / 3600, celsius]);

describe('what is read', () => {
  test.each([
    [
      'waits',
      '0 h, 21 °C; 8 h, 20 °C; 12 h, 14 °C',
      [
        [0, 21],
        [8, 20],
        [12, 14],
      ],
    ],
    [
      'bare hours and degrees, decimal commas',
      '0, 20,5\n6, 14,25',
      [
        [0, 20.5],
        [6, 14.25],
      ],
    ],
    [
      'other units of time and °F',
      '30 min, 68 °F; 1.5 h, 50 °F; 1 d, 77 °F',
      [
        [0, 20],
        [1, 10],
        [23.5, 25],
      ],
    ],
    [
      'dates with the time of day',
      '2026-03-27 14:30, 20.5\n2026-03-28 02:00, 12',
      [
        [0, 20.5],
        [11.5, 12],
      ],
    ],
    [
      'a logger’s file',
      'Time,Temp (°F),RH\n27/03/2026 14:30,68,40\n27/03/2026 15:30,50,41',
      [
        [0, 20],
        [1, 10],
      ],
    ],
    [
      'tabs, and the temperature after the humidity',
      'Date/Time\tHumidity %\tTemperature °C\n3/27/2026 11:30 PM\t40\t20,5\n3/28/2026 12:30 AM\t41\t19',
      [
        [0, 20.5],
        [1, 19],
      ],
    ],
    [
      'a comma right after the time of day',
      '2026-03-27 14:30,20.5\n2026-03-27 15:30,19,5',
      [
        [0, 20.5],
        [1, 19.5],
      ],
    ],
  ])('%s', (_, text, expected) => expect(points(text)).toEqual(expected));

  test('the note says what was assumed', () => {
    expect(read('0, 20; 4, 18').note).toContain('read as °C');
    expect(read('0 h, 20 °C').note).not.toContain('read as °C');
    expect(read('0 h, 20 °C').note).toContain('1 reading;');
  });
});

describe('what is refused', () => {
  test.each([
    ['', 'no reading'],
    ['time, temperature', 'no reading'],
    ['8 h', 'Row 1'],
    ['0 h, 20 °C; soon, 18 °C', 'Row 2'],
    ['0 h, 20 °C; 4 h, warm', 'Row 2'],
    ['0 h, 20 °C; 4 h, 45 %', 'Row 2'],
    ['0 h, 20 °C; 4 h, 300 °C', 'outside'],
    ['4 h, 20 °C; 4 h, 19 °C', 'not later'],
    ['time,t\n2026-03-27 14:30,20,5', '3 cells'],
    ['2026-03-27, 20 °C; 2026-03-28, 19 °C', 'no time'],
    ['0 h, 21 °C; 8 h 20 °C', 'Row 2: “8 h 20 °C” has no comma'],
    ['0 h, 21 °C, 8 h, 20 °C', 'has 4 parts'],
    ['0 h, 62; 8 h, 60', 'Row 1: “62” does not say whether it is °C or °F'],
    [Array.from({ length: 3002 }, (_, at) => `${at}, 20`).join('\n'), '3002 rows'],
  ])('%s', (text, words) => {
    const outcome = readTemperatureLog(text);
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.problem).toContain(words);
  });

  test('the way out shows the log as it should be', () => {
    const wayOut = (text: string) => {
      const outcome = readTemperatureLog(text);
      return outcome.ok ? 'read' : outcome.wayOut;
    };
    expect(wayOut('0 h 21 °C')).toContain('Perhaps 0 h, 21 °C.');
    expect(wayOut('0 h, 21 °C, 8 h, 20 °C')).toContain('Perhaps 0 h, 21 °C; 8 h, 20 °C.');
    expect(wayOut('0 h, 62')).toContain('Write 62 °C or 62 °F');
  });

  test('a degree sign without a scale gets that of the reader', () => {
    expect(points('0 h, 21°; 8 h, 20 º')).toEqual([
      [0, 21],
      [8, 20],
    ]);
    expect(explicitLog('0 h, 62°; 8 h, 60°', { ...defaultUnits, system: 'inch' })).toBe('0 h, 62 °F; 8 h, 60 °F');
    expect(explicitLog('0 h, 21°', defaultUnits)).toBe('0 h, 21 °C');
  });

  test('no text makes it throw', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => typeof readTemperatureLog(text).ok === 'boolean'));
  });
});

test('times and temperatures written out come back', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: -20, max: 60 })), {
        minLength: 1,
        maxLength: 20,
      }),
      (steps) => {
        let hours = 0;
        const rows = steps.map(([step, celsius], at) => {
          if (at > 0) hours += step;
          return [hours, celsius];
        });
        expect(points(rows.map(([h, c]) => `${h} h, ${c} °C`).join('; '))).toEqual(rows);
      },
    ),
  );
});
