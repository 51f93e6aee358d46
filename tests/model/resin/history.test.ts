import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayAndNight, logged, steady, timeOfAge } from '../../../src/model/resin/history.ts';

const hour = 3600;
const day = 24 * hour;

describe('day and night', () => {
  const { at, nextCorner } = dayAndNight({ warm: 21, cool: 14 }, 10, 4);
  test.each([
    [0, 21],
    [3.9, 21],
    [4.1, 14],
    [17.9, 14],
    [18.1, 21],
    [27.9, 21],
    [28.1, 14],
  ])('after %d h it is %d °C', (hours, expected) => expect(at(hours * hour)).toBe(expected));
  test('corners lie where it changes over, and each leads on to the next', () => {
    const corners = [0, 0, 0, 0].reduce<number[]>((all) => [...all, nextCorner(all.at(-1) ?? 0)], []);
    for (const [index, hours] of [4, 18, 28, 42].entries()) expect((corners[index] ?? 0) / hour).toBeCloseTo(hours, 3);
  });
});

describe('log', () => {
  const { at, nextCorner, lowest, highest } = logged([
    { time: 0, celsius: 20 },
    { time: 10 * hour, celsius: 10 },
  ]);
  test('runs straight from reading to reading and stays at its last', () => {
    expect(at(5 * hour)).toBeCloseTo(15, 9);
    expect(at(50 * hour)).toBe(10);
    expect(nextCorner(0)).toBe(10 * hour);
    expect(nextCorner(10 * hour)).toBe(Number.POSITIVE_INFINITY);
    expect([lowest, highest]).toEqual([10, 20]);
  });
});

describe('time of an age', () => {
  test('at half the speed takes twice as long', () => {
    expect(timeOfAge(steady(10), 7 * day, () => 0.5)).toBe(14 * day);
  });
  test('counts days and nights, whole ones and the rest', () => {
    // Twelve hours at full speed and twelve at half are three quarters of a day: nine days make 6.75, and a quarter of a day is left.
    const history = dayAndNight({ warm: 20, cool: 10 }, 12);
    expect((timeOfAge(history, 7 * day, (celsius) => (celsius === 20 ? 1 : 0.5)) ?? 0) / day).toBeCloseTo(9.25, 6);
  });
  test('over a slope is the integral of the speed', () => {
    // From 0 to 20 °C in 20 h with a speed of a tenth per degree: t²/(2·10 h) of age, so 5 h of age come after 10 h.
    const history = logged([
      { time: 0, celsius: 0 },
      { time: 20 * hour, celsius: 20 },
    ]);
    expect((timeOfAge(history, 5 * hour, (celsius) => celsius / 10) ?? 0) / hour).toBeCloseTo(10, 1);
  });
  test('beyond three years is too far off to plan for', () => {
    expect(timeOfAge(steady(0), 365 * day, () => 0.1)).toBeNull();
    expect(timeOfAge(dayAndNight({ warm: 1, cool: 0 }, 12), 365 * day, () => 0.1)).toBeNull();
  });
  test('comes sooner the warmer the day, the longer it is and the more of it is left', () => {
    const speed = (celsius: number) => Math.exp(celsius / 14);
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 25, noNaN: true }),
        fc.double({ min: 2, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        (warm, hours, age) => {
          const time = (w: number, length: number, left: number) =>
            timeOfAge(dayAndNight({ warm: w, cool: 5 }, length, left), age * hour, speed) ?? Number.NaN;
          const plain = time(warm, hours, hours);
          expect(time(warm + 3, hours, hours)).toBeLessThan(plain);
          expect(time(warm, hours + 2, hours + 2)).toBeLessThanOrEqual(plain + 1);
          expect(time(warm, hours, 0)).toBeGreaterThanOrEqual(plain - 1);
        },
      ),
    );
  });
});
