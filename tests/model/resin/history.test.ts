import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changedAfter, dayAndNight, logGoesOn, logged, steady, timeOfAge } from '../../../src/model/resin/history.ts';

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

describe('one change', () => {
  const { at, nextCorner, lowest, highest } = changedAfter(12 * hour, 12, 21);
  test('keeps each temperature on its side of it', () => {
    expect([at(0), at(12 * hour - 1), at(12 * hour), at(100 * hour)]).toEqual([12, 12, 21, 21]);
    expect([lowest, highest]).toEqual([12, 21]);
  });
  test('has that one corner', () => {
    expect([nextCorner(0), nextCorner(12 * hour)]).toEqual([12 * hour, Number.POSITIVE_INFINITY]);
  });
});

describe('log', () => {
  const short = [
    { time: 0, celsius: 10 },
    { time: 10 * hour, celsius: 20 },
  ];
  test('runs straight from reading to reading', () => {
    const { at, nextCorner, lowest, highest } = logged(short);
    expect(at(5 * hour)).toBeCloseTo(15, 9);
    expect(nextCorner(0)).toBe(10 * hour);
    expect([lowest, highest]).toEqual([10, 20]);
  });

  test('of less than a day goes on at its coldest, not at a last warm reading', () => {
    const { at, nextCorner, period } = logged(short);
    expect(logGoesOn(short)).toEqual({ as: 'coldest', celsius: 10 });
    expect(at(10 * hour)).toBe(10);
    expect(at(50 * hour)).toBe(10);
    expect(nextCorner(10 * hour)).toBe(Number.POSITIVE_INFINITY);
    expect(period).toBeUndefined();
  });

  const cycle = [
    [0, 15],
    [6, 21],
    [12, 20],
    [18, 12],
    [24, 14],
    [30, 19],
  ].map(([hours, celsius]) => ({ time: (hours ?? 0) * hour, celsius: celsius ?? 0 }));
  test('of a day or more repeats its last day, night and all', () => {
    const { at, period, repeatsFrom } = logged(cycle);
    expect(logGoesOn(cycle)).toEqual({ as: 'last-day' });
    expect([period, repeatsFrom]).toEqual([day, 30 * hour]);
    for (const later of [6.5, 12, 15, 18, 23, 29.9]) {
      for (const days of [1, 2, 40]) expect(at(later * hour + days * day)).toBeCloseTo(at(later * hour), 9);
    }
  });
  test('its corners lead on for ever, none at the time asked from', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100 * day, noNaN: true }), (time) => {
        const corner = logged(cycle).nextCorner(time);
        expect(corner).toBeGreaterThan(time);
        expect(corner - time).toBeLessThanOrEqual(day);
      }),
    );
  });
  test('with readings every minute keeps to the half hours of its day', () => {
    const minutes = Array.from({ length: 2 * 1440 + 1 }, (_, at) => ({
      time: at * 60,
      celsius: 17 + 4 * Math.sin((2 * Math.PI * at) / 1440),
    }));
    const { at, nextCorner } = logged(minutes);
    expect(at(10.3 * day)).toBeCloseTo(at(1.3 * day), 1);
    expect(nextCorner(10 * day) - 10 * day).toBe(1800);
  });
  test('a repeated day ages as the same day written out', () => {
    const speed = (celsius: number) => Math.exp(celsius / 14) / 5;
    const once = cycle.slice(0, 5).map(({ time, celsius }) => ({ time, celsius: time === day ? 15 : celsius }));
    const written = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((days) =>
      once.slice(days === 0 ? 0 : 1).map(({ time, celsius }) => ({ time: time + days * day, celsius })),
    );
    const [short, long] = [once, written].map((points) => timeOfAge(logged(points), 4 * day, speed) ?? 0);
    expect(short).toBeGreaterThan(2 * day);
    expect((short ?? 0) / (long ?? 1)).toBeCloseTo(1, 9);
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
