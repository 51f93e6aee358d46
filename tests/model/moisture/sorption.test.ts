import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  equilibriumMoisture,
  equilibriumMoisture2021,
  relativeHumidityFor,
  relativeHumidityFor2021,
  sorptionTemperatures,
  sorptionValidity,
} from '../../../src/model/moisture/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

const temperature = fc.double({ min: sorptionTemperatures.minimum, max: sorptionTemperatures.maximum, noNaN: true });
const humidity = fc.double({ min: 0, max: 100, noNaN: true });
/** Every 2 °C and every 1 % of the whole range. */
const sweep = Array.from({ length: 86 }, (_, step) => -40 + 2 * step).map((t) => ({
  t,
  moistures: Array.from({ length: 101 }, (_, h) => equilibriumMoisture(t, h)),
}));

describe('Eq. 4-5', () => {
  test('is 0 in perfectly dry air', () => {
    for (const { t, moistures } of sweep) expect(moistures[0], `${t} °C`).toBe(0);
  });

  test('is finite and rises with humidity at every temperature from -40 to 130 °C', () => {
    for (const { t, moistures } of sweep) {
      for (let h = 1; h <= 100; h += 1) {
        expect(moistures[h], `${t} °C, ${h} %`).toBeGreaterThan(moistures[h - 1] as number);
      }
      expect(moistures[100], `${t} °C, 100 %`).toBeLessThan(35);
    }
  });

  test('rises with humidity between any two humidities', () => {
    fc.assert(
      fc.property(temperature, humidity, humidity, (t, one, other) => {
        const [low, high] = one < other ? [one, other] : [other, one];
        expect(equilibriumMoisture(t, high)).toBeGreaterThanOrEqual(equilibriumMoisture(t, low));
      }),
    );
  });

  test('solved for humidity gives the humidity back', () => {
    fc.assert(
      fc.property(temperature, humidity, (t, h) => {
        expect(relativeHumidityFor(t, equilibriumMoisture(t, h))).toBeCloseTo(h, 8);
      }),
    );
  });

  test('solved for humidity and put back gives the moisture content', () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0, max: 1, noNaN: true }), (t, share) => {
        const moisture = share * equilibriumMoisture(t, 100);
        const found = relativeHumidityFor(t, moisture);
        expect(found).not.toBeNull();
        expect(equilibriumMoisture(t, found as number)).toBeCloseTo(moisture, 8);
      }),
    );
  });

  test.each([
    { t: 20, moisture: 30, why: 'above saturated air' },
    { t: 130, moisture: 14, why: 'above saturated air when hot' },
    { t: 20, moisture: -0.1, why: 'below nothing' },
    { t: 20, moisture: Number.NaN, why: 'not a number' },
    { t: 20, moisture: Number.POSITIVE_INFINITY, why: 'endless' },
  ])('no humidity gives $moisture % at $t °C ($why)', ({ t, moisture }) => {
    expect(relativeHumidityFor(t, moisture)).toBeNull();
  });

  test('the ends of the range are found', () => {
    expect(relativeHumidityFor(20, 0)).toBeCloseTo(0, 9);
    expect(relativeHumidityFor(20, equilibriumMoisture(20, 100))).toBeCloseTo(100, 9);
  });
});

describe('Eq. 4-6 and 4-7', () => {
  test('undo each other', () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0, max: 99.9, noNaN: true }), (t, h) => {
        const moisture = equilibriumMoisture2021(t, h);
        expect(moisture).not.toBeNull();
        expect(relativeHumidityFor2021(t, moisture as number)).toBeCloseTo(h, 7);
      }),
    );
  });

  test('rise with humidity', () => {
    fc.assert(
      fc.property(temperature, fc.integer({ min: 0, max: 98 }), (t, h) => {
        const drier = equilibriumMoisture2021(t, h) as number;
        expect(equilibriumMoisture2021(t, h + 1) as number).toBeGreaterThan(drier);
      }),
    );
  });

  test.each([100, 100.1, -0.1, Number.NaN])('have no moisture content for %d %%', (h) => {
    expect(equilibriumMoisture2021(20, h)).toBeNull();
  });

  test.each([-1, Number.NaN])('have no humidity for %d %% moisture', (moisture) => {
    expect(relativeHumidityFor2021(20, moisture)).toBeNull();
  });

  test('tend to saturated air for any higher moisture content', () => {
    expect(relativeHumidityFor2021(20, 1e9)).toBe(100);
  });
});

describe('words about air outside the table', () => {
  test.each([
    [-1.1, 5],
    [20, 50],
    [132, 95],
  ])('none at %d °C and %d %%, inside', (t, h) => {
    expect(sorptionValidity(t, h)).toBeNull();
  });

  test.each([
    { t: -11.1, h: 50, says: '10 °C colder than its −1.1 °C' },
    { t: 133.5, h: 50, says: '1.5 °C warmer than its 132 °C' },
    { t: 20, h: 3, says: '2 points of humidity below its 5 %' },
    { t: 20, h: 100, says: '5 points of humidity above its 95 %' },
    { t: 20, h: 95.01, says: 'less than 0.1 points of humidity above its 95 %' },
    { t: -11.1, h: 99, says: '10 °C colder than its −1.1 °C, and 4 points of humidity above its 95 %' },
  ])('at $t °C and $h %: $says', ({ t, h, says }) => {
    expect(inReaderUnits(sorptionValidity(t, h) ?? '', defaultUnits)).toContain(says);
  });
});
