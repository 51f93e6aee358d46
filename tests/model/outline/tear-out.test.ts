import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fitOnBoard,
  hair,
  movedShape,
  parametricOutlines,
  pointsOfArc,
  remediesFor,
  tearOut,
  usualLimits,
} from '../../../src/model/outline/index.ts';
import { drawn, sound, wavyOutline } from './reference.ts';

const circle = { outer: 'M0 100A100 100 0 0 1 200 100A100 100 0 0 1 0 100Z', holes: [] };

describe('where the edge tears', () => {
  test('on a circle with the grain along x a handheld router runs uphill on the right above and the left below', () => {
    const uphill = tearOut(sound(circle), 0, 'handheld').arcs.filter(({ meeting }) => meeting === 'uphill');
    expect(uphill).toHaveLength(2);
    // The circle's middle is at (100, −100), y upwards.
    for (const { middle } of uphill) expect((middle.x - 100) * (middle.y + 100)).toBeGreaterThan(0);
  });

  test('a table runs uphill on the other two quarters', () => {
    const uphill = tearOut(sound(circle), 0, 'table').arcs.filter(({ meeting }) => meeting === 'uphill');
    for (const { middle } of uphill) expect((middle.x - 100) * (middle.y + 100)).toBeLessThan(0);
  });

  test('around a hole the cutter meets the grain the other way round', () => {
    const ring = sound({ outer: circle.outer, holes: ['M60 100A40 40 0 0 1 140 100A40 40 0 0 1 60 100Z'] });
    const inner = tearOut(ring, 0, 'handheld').arcs.filter(({ meeting, loop }) => meeting === 'uphill' && loop === 1);
    expect(inner).toHaveLength(2);
    for (const { middle } of inner) expect((middle.x - 100) * (middle.y + 100)).toBeGreaterThan(0);
  });

  test('a straight side rising at 20° into the grain is uphill over its length, with its angle told', () => {
    // A rectangle whose grain rises by 20° against its long sides.
    const { arcs } = tearOut(sound(drawn('rounded-rectangle', { cornerRadius: 0 })), 20, 'handheld');
    const sides = arcs.filter(({ length }) => length > 300);
    expect(sides.map(({ meeting }) => meeting).sort()).toEqual(['uphill', 'uphill'].sort());
    for (const side of sides) {
      expect(side.meanAngle).toBeCloseTo(20, 6);
      expect(side.steepness).toBe('marked');
    }
    const turned = tearOut(sound(drawn('rounded-rectangle', { cornerRadius: 0 })), -20, 'handheld');
    expect(turned.arcs.filter(({ length }) => length > 300).every(({ meeting }) => meeting === 'downhill')).toBe(true);
  });

  test('end grain is left at its end by a handheld router, and at its start by a table', () => {
    const shape = sound(drawn('rounded-rectangle', { cornerRadius: 0 }));
    const [hand, table] = [tearOut(shape, 0, 'handheld'), tearOut(shape, 0, 'table')];
    // Counter-clockwise the right side is run upwards: it ends at the upper right corner.
    expect(hand.exits).toContainEqual({ x: 400, y: 0 });
    expect(hand.exits).toContainEqual({ x: 0, y: -250 });
    expect(table.exits).toContainEqual({ x: 400, y: -250 });
    expect(table.exits).toContainEqual({ x: 0, y: 0 });
  });

  test('arcs cover each loop once, and shares add up to 1', () => {
    fc.assert(
      fc.property(
        wavyOutline,
        fc.double({ min: -180, max: 360, noNaN: true }),
        fc.constantFrom('handheld' as const, 'table' as const),
        (outline, grain, routing) => {
          const shape = sound(outline);
          const { arcs, shares, outerUphill } = tearOut(shape, grain, routing);
          shape.loops.forEach((loop, index) => {
            const covered = arcs.filter((arc) => arc.loop === index).reduce((sum, { length }) => sum + length, 0);
            expect(covered).toBeCloseTo(loop.along[loop.x.length] as number, 6);
          });
          expect(shares.along + shares.downhill + shares.uphill + shares['end-grain']).toBeCloseTo(1, 9);
          expect(outerUphill).toBeGreaterThanOrEqual(0);
          expect(outerUphill).toBeLessThanOrEqual(1);
          for (const arc of arcs) {
            expect(arc.meanAngle).toBeLessThanOrEqual(90);
            expect(arc.steepness === undefined).toBe(arc.meeting !== 'uphill');
            expect(pointsOfArc(shape, arc).length).toBeGreaterThanOrEqual(2);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('turning the outline and the grain together changes nothing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...parametricOutlines),
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: 0, max: 180, noNaN: true }),
        ({ id }, degrees, grain) => {
          const before = tearOut(sound(drawn(id)), grain, 'handheld').shares;
          const after = tearOut(movedShape(sound(drawn(id)), { degrees }), grain + degrees, 'handheld').shares;
          // A piece of polyline may fall on the other side of a dividing angle.
          for (const meeting of ['along', 'downhill', 'uphill', 'end-grain'] as const)
            expect(after[meeting]).toBeCloseTo(before[meeting], 1);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('turned over, and from a handheld router to a table, uphill and downhill change places', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: 0, max: 180, noNaN: true }), (outline, grain) => {
        const shape = sound(outline);
        const hand = tearOut(shape, grain, 'handheld');
        const table = tearOut(shape, grain, 'table');
        const over = tearOut(movedShape(sound(outline), { mirrored: true }), 180 - grain, 'handheld');
        expect(table.shares.uphill).toBeCloseTo(hand.shares.downhill, 9);
        expect(over.shares.uphill).toBeCloseTo(hand.shares.downhill, 2);
        expect(over.shares['end-grain']).toBeCloseTo(hand.shares['end-grain'], 2);
      }),
      { numRuns: 60 },
    );
  });

  test('the sense of the grain does not matter, only its line', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: 0, max: 180, noNaN: true }), (outline, grain) => {
        const shape = sound(outline);
        expect(tearOut(shape, grain + 180, 'handheld').shares.uphill).toBeCloseTo(
          tearOut(shape, grain, 'handheld').shares.uphill,
          9,
        );
      }),
      { numRuns: 30 },
    );
  });

  test('remedies: climbing is never offered at a table, and nothing is offered where the cut is clean', () => {
    for (const routing of ['handheld', 'table'] as const) {
      for (const arc of tearOut(sound(drawn('leaf')), 15, routing, usualLimits).arcs) {
        const offered = remediesFor(arc, routing).map(({ id }) => id);
        expect(offered.includes('climb')).toBe(arc.meeting === 'uphill' && routing === 'handheld');
        expect(offered.length === 0).toBe(arc.meeting === 'along' || arc.meeting === 'downhill');
      }
    }
  });
});

describe('on a board', () => {
  const options = { grainDegrees: 0, clearance: 3, boardLength: 500, boardWidth: 280, mostSwing: 10 };

  test('an outline that fits as drawn is not swung', () => {
    expect(fitOnBoard(sound(drawn('oval')), options)).toMatchObject({ fits: true, swing: 0, length: 426, width: 266 });
  });

  test('one that is too long as drawn is swung by the least angle that helps', () => {
    // 600 × 20: 606 long; swung by a it takes 600 cos a + 20 sin a + 6.
    const plank = sound({ outer: 'M0 0H600V20H0Z', holes: [] });
    const fit = fitOnBoard(plank, { ...options, boardLength: 600, boardWidth: 200, mostSwing: 15 });
    expect(fit.fits).toBe(true);
    const takes = (degrees: number) =>
      600 * Math.cos((degrees * Math.PI) / 180) + 20 * Math.sin((degrees * Math.PI) / 180) + 6;
    expect(takes(Math.abs(fit.swing))).toBeLessThanOrEqual(600 + hair + 1e-6);
    expect(takes(Math.abs(fit.swing) - 0.002)).toBeGreaterThan(600 + hair);
  });

  test('the least swing is found to a thousandth of a degree', () => {
    // A rectangle 400 × 100, its grain at 45°, on a board just as wide as it takes when it is swung to 24.67°: 400 sin a + 100 cos a.
    const bar = sound({ outer: 'M0 0H400V100H0Z', holes: [] });
    const angle = ((45 - 20.33) * Math.PI) / 180;
    const boardWidth = 400 * Math.sin(angle) + 100 * Math.cos(angle);
    const fit = fitOnBoard(bar, { grainDegrees: 45, clearance: 0, boardLength: 900, boardWidth, mostSwing: 45 });
    expect(fit.fits).toBe(true);
    expect(Math.abs(Math.abs(fit.swing) - 20.33)).toBeLessThan(2e-3);
  });

  test('a board that is short by what no tape reads is large enough, at the cost of the clearance alone', () => {
    // 24 × 9 in written as 610 × 229 mm, with 3 mm around it, on the 28 1/4 × 9 1/4 in that it was ordered for.
    const tray = sound({ outer: 'M0 0H610V229H0Z', holes: [] });
    const board = { ...options, boardLength: 28.25 * 25.4, boardWidth: 9.25 * 25.4, mostSwing: 5 };
    expect(fitOnBoard(tray, board)).toMatchObject({ fits: true, swing: 0, spareWidth: expect.closeTo(-0.05, 9) });
    expect(fitOnBoard(tray, { ...board, boardWidth: 234.8 }).fits).toBe(false);
    expect(fitOnBoard(tray, { ...board, clearance: 0, boardWidth: 228.95 }).fits).toBe(false);
  });

  test('beyond the limit on the grain it does not fit, and says by how much', () => {
    const fit = fitOnBoard(sound(drawn('rounded-rectangle')), { ...options, boardLength: 390 });
    expect(fit.fits).toBe(false);
    expect(Math.abs(fit.swing)).toBeLessThanOrEqual(10);
    expect(Math.min(fit.spareLength, fit.spareWidth)).toBeLessThan(0);
  });

  test('a larger board, a smaller clearance or a wider limit never make a fitting outline unfit', () => {
    fc.assert(
      fc.property(
        wavyOutline,
        fc.double({ min: 100, max: 500, noNaN: true }),
        fc.double({ min: 100, max: 500, noNaN: true }),
        fc.integer({ min: 0, max: 40 }),
        (outline, boardLength, boardWidth, mostSwing) => {
          const shape = sound(outline);
          const at = { grainDegrees: 25, clearance: 4, boardLength, boardWidth, mostSwing };
          if (!fitOnBoard(shape, at).fits) return;
          expect(fitOnBoard(shape, { ...at, boardLength: boardLength + 5, boardWidth: boardWidth + 5 }).fits).toBe(
            true,
          );
          expect(fitOnBoard(shape, { ...at, clearance: 2 }).fits).toBe(true);
          expect(fitOnBoard(shape, { ...at, mostSwing: mostSwing + 3 }).fits).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });
});
