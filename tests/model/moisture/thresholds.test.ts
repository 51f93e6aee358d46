import { describe, expect, test } from 'vitest';
import { type Climate, humidityRatio, indoorAir, parseReadings } from '../../../src/model/moisture/index.ts';

// Each limit of this room that decides something, with an input just below it and one just above.

/** A log of one row a day from 1 January, or of so many rows a day. */
function log(days: number, rowsADay = 1): string {
  const rows = Array.from({ length: days * rowsADay }, (_, at) => {
    const day = new Date(Date.UTC(2025, 0, 1 + Math.floor(at / rowsADay))).toISOString().slice(0, 10);
    return `${day},20,40`;
  });
  return ['date,temperature °C,humidity %', ...rows].join('\n');
}

const read = (text: string) => {
  const outcome = parseReadings(text);
  if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
  return outcome.value;
};

describe('a log', () => {
  test('is kept as it is up to 24 rows', () => {
    expect(read(log(24)).readings).toHaveLength(24);
    expect(read(log(25)).note).toContain('weekly means');
  });

  test('is shown by day up to 10 days, by week below 70, by month from there on', () => {
    const means = (days: number) => /as (\w+) means/.exec(read(log(days, 3)).note)?.[1];
    expect([10, 11, 69, 70].map(means)).toEqual(['daily', 'weekly', 'weekly', 'monthly']);
  });

  test('names a month of fewer than ten days', () => {
    // 68 days: January, February and the first nine days of March; a day more makes ten.
    expect(read(log(31 + 28 + 31 + 9)).note).toContain('Few days in Apr (9 days)');
    expect(read(log(31 + 28 + 31 + 10)).note).not.toContain('Few days');
  });

  test('is in °F where no unit stands and it reaches above 45', () => {
    const warmest = (value: number) => read(`Jul ${value} 50 %`).readings[0]?.temperature as number;
    expect(warmest(45)).toBe(45);
    expect(warmest(46)).toBeCloseTo((46 - 32) / 1.8, 1);
  });

  test.each([
    ['-40 C 50 %', true],
    ['-40.1 C 50 %', false],
    ['60 C 50 %', true],
    ['60.1 C 50 %', false],
    ['20 C 105 %', true],
    ['20 C 105.1 %', false],
  ])('%s is taken: %s', (text, taken) => {
    expect(parseReadings(`Jul ${text}`).ok).toBe(taken);
  });
});

test('a house keeps all of its moisture gain at 0 °C and below, and none at 20 °C and above', () => {
  const climate = (celsius: number): Climate =>
    ({
      id: 'invented',
      place: 'Invented',
      country: 'Nowhere',
      temperature: Array.from({ length: 12 }, () => celsius),
      pressure: 101_325,
      humidity: Array.from({ length: 12 }, () => 40),
    }) as unknown as Climate;
  const gained = (celsius: number) => {
    const air = (moistureGain: number) => {
      const [month] = indoorAir(climate(celsius), { heatTo: 22, coolTo: 30, moistureGain });
      return humidityRatio(month?.temperature as number, month?.humidity as number, 101_325) as number;
    };
    return air(2) - air(0);
  };
  const whole = gained(-1);
  expect(whole).toBeGreaterThan(0);
  expect(gained(0) / whole).toBeCloseTo(1, 2);
  expect(gained(2) / whole).toBeCloseTo(0.9, 2);
  expect(gained(18) / whole).toBeCloseTo(0.1, 2);
  expect(gained(20) / whole).toBeCloseTo(0, 2);
});
