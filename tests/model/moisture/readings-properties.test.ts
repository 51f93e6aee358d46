import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AirReading, parseReadings, writeReadings } from '../../../src/model/moisture/index.ts';

/** Labels made of what might be taken for something else. */
const nasty = fc
  .array(
    fc.constantFrom(
      'a',
      'Jan',
      '20',
      '°C',
      '%',
      ' ',
      ',',
      ';',
      '"',
      '\t',
      '.',
      '-',
      '−',
      'RH',
      'Temp',
      '2024-01-02',
      '=',
      'é',
      '🪵',
      '1/2/2024',
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));
const label = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), nasty);
const reading: fc.Arbitrary<AirReading> = fc.record({
  label,
  temperature: fc.oneof(
    fc.double({ min: -40, max: 60, noNaN: true }),
    fc.integer({ min: -400, max: 600 }).map((tenths) => tenths / 10),
  ),
  humidity: fc.oneof(
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10),
  ),
});
const year = fc.array(reading, { minLength: 1, maxLength: 24 });

/** Pieces of logs and lists, so that many texts almost parse. */
const pieces = fc
  .array(
    fc.constantFrom(
      'date',
      'temp',
      'RH',
      'T',
      '%',
      '°C',
      '°F',
      ',',
      ';',
      '\t',
      '\n',
      '\r\n',
      '"',
      '""',
      '20',
      '20,5',
      '-3.5',
      '1e5',
      '1e-5',
      'NaN',
      '2024-01-01',
      '31/12/2023',
      '1/2/24',
      ' ',
      'Jan',
      '100',
      '105',
      '0',
      '.',
      '999999999999',
      'Infinity',
      '\ufeff',
      '\u0000',
    ),
    { maxLength: 60 },
  )
  .map((parts) => parts.join(''));

/** Checks that whatever was made of a text is whole: finite readings in range, or an error in words. */
function expectWhole(text: string): void {
  const outcome = parseReadings(text);
  if (!outcome.ok) {
    expect(outcome.errors).toHaveLength(1);
    expect(outcome.errors[0]?.field).toBe('readings');
    expect(outcome.errors[0]?.message).toMatch(/[^.]\. [A-Z].*\.$/s);
    return;
  }
  const { readings, note } = outcome.value;
  expect(readings.length).toBeGreaterThan(0);
  expect(note.length).toBeGreaterThan(0);
  for (const { label: name, temperature, humidity } of readings) {
    expect(name.length).toBeGreaterThan(0);
    expect(temperature >= -40 && temperature <= 60).toBe(true);
    expect(humidity >= 0 && humidity <= 100).toBe(true);
  }
}

describe('writing readings and reading them back', () => {
  test('gives the same temperatures and humidities, whatever the labels', () => {
    fc.assert(
      fc.property(year, (readings) => {
        const outcome = parseReadings(writeReadings(readings));
        expect(outcome.ok).toBe(true);
        if (!outcome.ok) return;
        const values = (all: readonly AirReading[]) =>
          all.map(({ temperature, humidity }) => [temperature + 0, humidity + 0]);
        expect(values(outcome.value.readings)).toEqual(values(readings));
      }),
      { numRuns: 1000 },
    );
  });

  test('gives the same labels once they have been read', () => {
    fc.assert(
      fc.property(year, (readings) => {
        const once = parseReadings(writeReadings(readings));
        if (!once.ok) throw new Error('not read');
        const text = writeReadings(once.value.readings);
        expect(parseReadings(text)).toMatchObject({ ok: true, value: { readings: once.value.readings } });
        expect(() => encodeURIComponent(text)).not.toThrow();
      }),
      { numRuns: 1000 },
    );
  });

  test('keeps the means of a log', () => {
    const rows = Array.from({ length: 700 }, (_, index) => {
      const time = new Date(Date.UTC(2023, 5, 1) + index * 12 * 3_600_000);
      return `${time.toISOString()};${String(18 + (index % 70) / 10).replace('.', ',')};${30 + (index % 40)}`;
    });
    const outcome = parseReadings(['zeit;temp °C;rh', ...rows].join('\n'));
    if (!outcome.ok) throw new Error('not read');
    expect(outcome.value.readings).toHaveLength(12);
    const back = parseReadings(writeReadings(outcome.value.readings));
    expect(back).toMatchObject({ ok: true, value: { readings: outcome.value.readings } });
  });

  test('is short enough for an address', () => {
    const readings = Array.from({ length: 12 }, () => ({ label: 'Jan', temperature: 20.15, humidity: 45.25 }));
    expect(encodeURIComponent(writeReadings(readings)).length).toBeLessThan(700);
  });
});

describe('any text gives readings or an error in words, and never throws', () => {
  test('any string', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' })), expectWhole), { numRuns: 2000 });
  });

  test('pieces of logs and lists', () => {
    fc.assert(fc.property(pieces, expectWhole), { numRuns: 5000 });
  });

  test('a good log with something broken in it', () => {
    const good = [
      'date,temp °C,rh',
      ...Array.from({ length: 40 }, (_, day) => `2024-01-${(day % 28) + 1},${day / 2},${40 + day}`),
    ].join('\n');
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(12), fc.oneof(pieces, fc.string()), (at, cut, put) => {
        expectWhole(good.slice(0, at) + put + good.slice(at + cut));
      }),
      { numRuns: 2000 },
    );
  });
});
