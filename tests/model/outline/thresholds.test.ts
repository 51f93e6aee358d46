import { describe, expect, test } from 'vitest';
import { findNecks, meshOf, tearOut, usualLimits } from '../../../src/model/outline/index.ts';
import { sound } from './reference.ts';

// Each limit of this room that decides something, with an input just below it and one just above.

const path = (points: readonly (readonly [x: number, y: number])[]) =>
  `M${points.map(([x, y]) => `${x} ${y}`).join('L')}Z`;

describe('necks', () => {
  /** Half of the width along a board with two waists, 40 and 42 mm wide, and a swelling between them. */
  const halfWidth = (x: number, swelling: number): number => {
    const smooth = (from: number, to: number, share: number) =>
      from + ((to - from) * (1 - Math.cos(Math.PI * share))) / 2;
    if (x <= 250) return smooth(90, 20, x / 250);
    if (x <= 350) return smooth(20, swelling, (x - 250) / 100);
    if (x <= 450) return smooth(swelling, 21, (x - 350) / 100);
    return smooth(21, 90, (x - 450) / 250);
  };
  const waists = (swelling: number) => {
    const along = Array.from({ length: 141 }, (_, at) => 5 * at);
    const shape = sound({
      outer: path([
        ...along.map((x) => [x, -halfWidth(x, swelling)] as const),
        ...along.toReversed().map((x) => [x, halfWidth(x, swelling)] as const),
      ]),
      holes: [],
    });
    return findNecks(shape, meshOf(shape), 0, 1000).necks.filter(({ length }) => length < 45);
  };

  test('two waists are two where the wood widens by 1.25 between them', () => {
    expect(waists(1.2 * 21).map(({ length }) => Math.round(length))).toEqual([40]);
    expect(waists(1.3 * 21).map(({ length }) => Math.round(length))).toEqual([40, 42]);
  });

  test('a waist is short-grained below 45° between the line across it and the grain', () => {
    const at = (grain: number) => {
      const shape = sound({
        outer: path([
          ...Array.from({ length: 141 }, (_, i) => [5 * i, -halfWidth(5 * i, 21)] as const),
          ...Array.from({ length: 141 }, (_, i) => [700 - 5 * i, halfWidth(700 - 5 * i, 21)] as const),
        ]),
        holes: [],
      });
      return findNecks(shape, meshOf(shape), grain, 41).shortGrain.length;
    };
    // The line across stands at 90°.
    expect([at(44), at(60)].map((count) => count > 0)).toEqual([false, true]);
  });
});

describe('tearing', () => {
  /** A strip with the grain along it, so high at its ends. */
  const strip = (height: number) =>
    sound({
      outer: path([
        [0, 0],
        [100, 0],
        [100, height],
        [0, height],
      ]),
      holes: [],
    });

  test('end grain breaks out from 5 mm on', () => {
    expect(tearOut(strip(4.9), 0, 'handheld').exits).toHaveLength(0);
    expect(tearOut(strip(5.1), 0, 'handheld').exits).toHaveLength(2);
  });

  test('a stretch of edge counts from 2 mm on', () => {
    const chamfered = (length: number) => {
      const leg = length / Math.SQRT2;
      return sound({
        outer: path([
          [0, 0],
          [100, 0],
          [100, 60],
          [leg, 60],
          [0, 60 - leg],
        ]),
        holes: [],
      });
    };
    const slanting = (length: number) =>
      tearOut(chamfered(length), 0, 'handheld').arcs.filter(
        ({ meeting }) => meeting !== 'along' && meeting !== 'end-grain',
      );
    expect(slanting(1.9)).toHaveLength(0);
    expect(slanting(2.1)).toHaveLength(1);
  });

  test.each([
    ['along', 4.9, 'along', 5.1, 'uphill'],
    ['end grain', 74.9, 'uphill', 75.1, 'end-grain'],
  ])('%s', (_, below, belowMeeting, above, aboveMeeting) => {
    const longSide = (grain: number) =>
      tearOut(strip(30), grain, 'handheld').arcs.find(({ length }) => length > 90)?.meeting;
    expect([longSide(below), longSide(above)]).toEqual([belowMeeting, aboveMeeting]);
  });

  test('an uphill stretch is marked from 12° and steep from 25°', () => {
    const longSide = (grain: number) =>
      tearOut(strip(30), grain, 'handheld').arcs.find(({ length }) => length > 90)?.steepness;
    expect([11.9, 12.1, 24.9, 25.1].map(longSide)).toEqual(['slight', 'marked', 'marked', 'steep']);
    expect(usualLimits).toEqual({ along: 5, endGrain: 75, marked: 12, steep: 25 });
  });
});
