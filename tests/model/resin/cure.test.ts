import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classGlass, gelPoint, glassTransition, timeToConversion } from '../../../src/model/resin/clock.ts';
import { cureUnder } from '../../../src/model/resin/cure.ts';
import { dayAndNight, logged, steady } from '../../../src/model/resin/history.ts';
import { classKinetics } from '../../../src/model/resin/kinetics.ts';

const hour = 3600;
const week = 7 * 24 * hour;

// A film of 1 mm after a week, as another program ran it.
test.each([
  ['fast', 15, 0.894],
  ['fast', 20, 0.921],
  ['fast', 25, 0.944],
  ['slow', 15, 0.904],
  ['slow', 20, 0.934],
  ['slow', 25, 0.957],
] as const)('the %s class at %d °C has come to %d after a week', (name, celsius, expected) => {
  const course = cureUnder(classKinetics[name], classGlass[name], steady(celsius), week);
  expect(Math.abs(course.at(week) - expected)).toBeLessThan(0.0011);
});

test('a resin that never turns glassy keeps the closed form', () => {
  const rubber = { fresh: -200, cured: -150, lambda: 0.45 };
  const course = cureUnder(classKinetics.slow, rubber, steady(22), 4 * week);
  for (const conversion of [0.2, gelPoint, 0.75, 0.8, 0.9]) {
    const exact = timeToConversion(conversion, 22, classKinetics.slow);
    expect(Math.abs((course.timeOf(conversion) ?? 0) / exact - 1)).toBeLessThan(1e-3);
  }
});

test('the window shuts at 1.47 to 1.72 times the time to gel', () => {
  const gel = timeToConversion(gelPoint, 25, classKinetics.fast);
  expect(timeToConversion(0.75, 25, classKinetics.fast) / gel).toBeCloseTo(1.47, 2);
  expect(timeToConversion(0.8, 25, classKinetics.fast) / gel).toBeCloseTo(1.72, 2);
});

describe('temperature', () => {
  const at = (celsius: number) => cureUnder(classKinetics.fast, classGlass.fast, steady(celsius), week);
  test('a day and night lie between their temperatures, and a flat log is steady', () => {
    const swing = cureUnder(classKinetics.fast, classGlass.fast, dayAndNight({ warm: 22, cool: 14 }, 10), week);
    const gel = (course: ReturnType<typeof at>) => course.timeOf(gelPoint) ?? Number.NaN;
    expect(swing.at(week)).toBeLessThan(at(22).at(week));
    expect(swing.at(week)).toBeGreaterThan(at(14).at(week));
    // Mixed as the day begins, it gels within the warm hours.
    expect(gel(swing)).toBeCloseTo(gel(at(22)), 0);
    const flat = logged([0, 5, 9, 30].map((hours) => ({ time: hours * hour, celsius: 18 })));
    const course = cureUnder(classKinetics.fast, classGlass.fast, flat, week);
    expect(course.at(week)).toBeCloseTo(at(18).at(week), 5);
  });

  test('warmer is never less cured, at any time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0.5, max: 15, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (celsius, more, share) => {
          expect(at(celsius + more).at(share * week)).toBeGreaterThanOrEqual(at(celsius).at(share * week) - 1e-4);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('the cure stalls where the glass transition has overtaken the shop by 10 to 30 °C', () => {
    for (const celsius of [5, 15, 25]) {
      const above = glassTransition(at(celsius).at(week), classGlass.fast) - celsius;
      expect(above).toBeGreaterThan(10);
      expect(above).toBeLessThan(30);
    }
  });

  test('warming it once makes up for a cold week', () => {
    const warmed = logged([
      { time: 0, celsius: 12 },
      { time: week, celsius: 12 },
      { time: week + hour, celsius: 30 },
      { time: week + 25 * hour, celsius: 30 },
    ]);
    const course = cureUnder(classKinetics.fast, classGlass.fast, warmed, week + 25 * hour);
    expect(course.at(week)).toBeLessThan(0.89);
    expect(course.at(week + 25 * hour)).toBeGreaterThan(0.93);
  });
});

test('what lies beyond the run is not reached', () => {
  const course = cureUnder(classKinetics.slow, classGlass.slow, steady(5), 10 * hour);
  expect(course.timeOf(gelPoint)).toBeNull();
  expect(course.first((conversion) => conversion > 0.5)).toBeNull();
  expect(course.at(20 * hour)).toBe(course.at(10 * hour));
});

// Both once ran backwards without end: a stage of a step overshot full cure, where the rate turns below zero.
test.each([
  [
    'very fast, steep with warmth, over warm days',
    { k2At25C: 0.0926, activationEnergy: 150_000, k1OverK2: 2, m: 0, n: 1 },
    dayAndNight({ warm: 60, cool: -5 }, 23),
  ],
  [
    'very fast, slow to begin',
    { k2At25C: 0.1, activationEnergy: 58_600, k1OverK2: 1e-4, m: 1, n: 3 },
    dayAndNight({ warm: 21, cool: 0 }, 10),
  ],
] as const)('a cure comes to its end and never runs backwards: %s', (_, kinetics, history) => {
  const course = cureUnder({ ...classKinetics.slow, ...kinetics }, classGlass.slow, history, 4 * week);
  expect(course.end).toBe(4 * week);
  let before = 0;
  for (let time = 0; time <= 4 * week; time += hour) {
    const now = course.at(time);
    expect(now).toBeGreaterThanOrEqual(before);
    expect(now).toBeLessThanOrEqual(1);
    before = now;
  }
});
