import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  humidityRatio,
  magnusOverWater,
  relativeHumidity,
  saturationPressure,
} from '../../../src/model/moisture/index.ts';

const pressure = fc.double({ min: 60_000, max: 105_000, noNaN: true });
const temperature = fc.double({ min: -45, max: 60, noNaN: true });

describe('saturation over water', () => {
  test('the two forms meet at the triple point', () => {
    const below = saturationPressure(0.01) as number;
    const above = saturationPressure(0.0101) as number;
    // 0.003 % between the forms, and 0.0007 % for the 0.0001 °C between the two temperatures.
    expect(Math.abs(above / below - 1)).toBeLessThan(3.7e-5);
  });

  test('rises with temperature through the whole range', () => {
    let last = 0;
    for (let t = -45; t <= 200; t += 0.25) {
      const now = saturationPressure(t) as number;
      expect(now, `${t} °C`).toBeGreaterThan(last);
      last = now;
    }
  });

  test('below freezing it is over water, not over ice', () => {
    expect(saturationPressure(-13)).toBe(magnusOverWater(-13));
    // Over ice the handbook's Table 3 has 103.24 Pa at -20 °C.
    expect((saturationPressure(-20) as number) / 103.24).toBeCloseTo(1.22, 2);
  });

  test.each([-45.1, 200.1, Number.NaN, Number.NEGATIVE_INFINITY])('has no answer at %d °C', (t) => {
    expect(saturationPressure(t)).toBeNull();
  });
});

describe('humidity ratio and relative humidity', () => {
  test('undo each other', () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0.01, max: 100, noNaN: true }), pressure, (t, h, p) => {
        const ratio = humidityRatio(t, h, p);
        expect(ratio).not.toBeNull();
        // Air drier than 0.0001 g/kg is where the library's floor lies; below it the way back is not kept.
        fc.pre((ratio as number) > 1e-4);
        expect(relativeHumidity(t, ratio as number, p) as number).toBeCloseTo(h, 8);
      }),
    );
  });

  test('warming air without adding water dries it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 30, noNaN: true }),
        fc.double({ min: 5, max: 100, noNaN: true }),
        (t, h) => {
          const ratio = humidityRatio(t, h, 101_325) as number;
          expect(relativeHumidity(t + 5, ratio, 101_325) as number).toBeLessThan(h);
        },
      ),
    );
  });

  test('perfectly dry air has none', () => {
    expect(humidityRatio(20, 0, 101_325)).toBe(0);
    expect(relativeHumidity(20, 0, 101_325)).toBe(0);
  });

  test('more than saturated is told, not capped', () => {
    const full = humidityRatio(20, 100, 101_325) as number;
    expect(relativeHumidity(10, full, 101_325) as number).toBeGreaterThan(150);
  });

  test('either gives a finite number or none, whatever is asked', () => {
    const anything = fc.double();
    fc.assert(
      fc.property(anything, anything, anything, (one, two, three) => {
        for (const answer of [
          saturationPressure(one),
          humidityRatio(one, two, three),
          relativeHumidity(one, two, three),
        ]) {
          expect(answer === null || Number.isFinite(answer)).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    { t: 20, h: 101, p: 101_325, why: 'humidity above 100 %' },
    { t: 20, h: -1, p: 101_325, why: 'humidity below 0 %' },
    { t: 120, h: 100, p: 101_325, why: 'vapour above the whole pressure' },
    { t: 20, h: 50, p: Number.POSITIVE_INFINITY, why: 'endless pressure' },
    { t: 20, h: 50, p: Number.NaN, why: 'no pressure' },
  ])('no ratio for $why', ({ t, h, p }) => {
    expect(humidityRatio(t, h, p)).toBeNull();
  });

  test('no humidity for less than no water', () => {
    expect(relativeHumidity(20, -1, 101_325)).toBeNull();
    expect(relativeHumidity(20, 5, 0)).toBeNull();
  });
});
