import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bitLeaves,
  findNecks,
  isInWood,
  leastInsideRadius,
  leftToSand,
  meshOf,
  movedShape,
  type Outline,
  parametricOutlines,
} from '../../../src/model/outline/index.ts';
import {
  boundary,
  difference,
  distance,
  drawn,
  grown,
  pointsOf,
  referenceOf,
  sound,
  wavyOutline,
} from './reference.ts';

const outline = (outer: string, ...holes: string[]): Outline => ({ outer, holes });

const radiusOf = (drawing: Outline) => {
  const shape = sound(drawing);
  return leastInsideRadius(shape, meshOf(shape));
};

/** An arc of a bay in the right side, as a chain of short straight lines that a tracing programme would give. */
function sampledBay(radius: number, pieces: number): string {
  const arc = Array.from({ length: pieces - 1 }, (_, k) => {
    const angle = Math.PI / 2 + ((k + 1) / pieces) * Math.PI;
    return `L${(200 + radius * Math.cos(angle)).toFixed(4)} ${(80 - radius * Math.sin(angle)).toFixed(4)}`;
  });
  return `M0 0H200V${80 - radius}${arc.join('')}L200 ${80 + radius}V200H0Z`;
}

describe('the least inside radius', () => {
  test.each([
    ['a paddle without a hole: its shoulders of 20 mm', drawn('paddle', { holeDiameter: 0 }), 20, 'curve'],
    ['a paddle with a hole of 12 mm', drawn('paddle'), 6, 'curve'],
    ['a square inside corner', outline('M0 0H100V50H50V100H0Z'), 0, 'corner'],
    ['a bay of 30 mm drawn by 60 straight pieces', outline(sampledBay(30, 60)), 30, 'curve'],
    ['a slot of 10 mm with a round end', outline('M0 0H100V40H60A5 5 0 0 0 60 50H100V100H0Z'), 5, 'curve'],
    ['a bay of an ellipse, tightest at its end', outline('M0 0H200V60A50 20 0 0 0 200 100V200H0Z'), 8, 'curve'],
    // In its middle the curve's velocity is (0, 60) and its acceleration (300, 0): 60² / 300.
    ['a bay of a cubic curve', outline('M0 0H200V60C150 60 150 100 200 100V200H0Z'), 12, 'curve'],
  ])('of %s', (_what, drawing, radius, kind) => {
    const found = radiusOf(drawing);
    expect(found?.kind).toBe(kind);
    // Chords of a sampled curve lie off it, and a circle may leave a tenth of a millimetre there.
    expect(Math.abs((found?.radius ?? -1) - radius)).toBeLessThan(0.1);
  });

  test.each(['rounded-rectangle', 'oval', 'half-moon', 'leaf'])('is not told of a %s, which has no hollow', (id) => {
    expect(radiusOf(drawn(id))).toBeUndefined();
  });

  test('counts a gap between two bulges that is narrower than any hollow', () => {
    // Two round noses face each other across 6 mm at the mouth of a wide bay.
    const found = radiusOf(outline('M0 0H200V60A20 20 0 0 1 180 97A40 40 0 1 0 180 143A20 20 0 0 1 200 180V240H0Z'));
    expect(found).toBeDefined();
    const keyhole = radiusOf(
      outline('M0 0H200V57A20 20 0 0 1 160 57V60A30 30 0 1 0 160 100V63A20 20 0 0 1 200 63V160H0Z'),
    );
    expect(keyhole?.radius).toBeLessThan(3.2);
  });

  test('of a curve that only bends outwards at a sharp corner is not told', () => {
    expect(radiusOf(outline('M0 0H100V100H0Z'))).toBeUndefined();
  });
});

describe('a bit', () => {
  test.each([6, 9.5, 12, 25.4])('of %d mm leaves (√2 − 1) r in a square corner, and (1 − π/4) r²', (diameter) => {
    const [left] = bitLeaves(sound(outline('M0 0H200V100H100V200H0Z')), diameter);
    const r = diameter / 2;
    expect(left?.depth).toBeCloseTo((Math.SQRT2 - 1) * r, 2);
    expect(left?.area).toBeCloseTo((1 - Math.PI / 4) * r * r, 0);
    expect(left?.at.x).toBeCloseTo(100, 6);
    expect(left?.at.y).toBeCloseTo(-100, 6);
  });

  test.each([
    [39.5, 0],
    [41, 2],
  ])('of %d mm at shoulders of 20 mm radius leaves %d pieces', (diameter, pieces) => {
    expect(bitLeaves(sound(drawn('paddle', { holeDiameter: 0, shoulderRadius: 20 })), diameter)).toHaveLength(pieces);
  });

  test.each([
    [11.8, []],
    [12.7, ['hole']],
  ])('of %d mm and a hole of 12 mm: %j', (diameter, kinds) => {
    expect(bitLeaves(sound(drawn('paddle')), diameter).map(({ kind }) => kind)).toEqual(kinds);
  });

  test('rests over the mouth of a slot that it does not enter, and leaves the whole slot', () => {
    const [left] = bitLeaves(sound(outline('M0 0H100V40H50V50H100V100H0Z')), 12);
    expect(left?.depth).toBeGreaterThan(46);
    expect(left?.area).toBeGreaterThan(480);
  });

  test('leaves nothing where it is no wider than the tightest hollow', () => {
    fc.assert(
      fc.property(wavyOutline, (drawing) => {
        const shape = sound(drawing);
        const least = leastInsideRadius(shape, meshOf(shape));
        fc.pre(least !== undefined && least.radius > 1 && least.radius < 60);
        expect(
          bitLeaves(shape, 2 * (least?.radius ?? 0) * 0.95).filter(({ depth }) => (depth ?? 1) > leftToSand + 0.06),
        ).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test('leaves what growing and shrinking again by its radius adds, by a second geometry library', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: 6, max: 30, noNaN: true }), (drawing, diameter) => {
        const shape = sound({ outer: drawing.outer, holes: [] });
        const reference = referenceOf(shape);
        const closed = grown(grown(reference, diameter / 2), -diameter / 2);
        const expected = difference(closed, reference).getArea();
        const ours = bitLeaves(shape, diameter).reduce((sum, { area }) => sum + area, 0);
        // Pieces thinner than what sanding takes are not told.
        expect(Math.abs(ours - expected)).toBeLessThan(0.02 * expected + leftToSand * reference.getLength());
      }),
      { numRuns: 30 },
    );
  });
});

describe('necks', () => {
  const necksOf = (drawing: Outline, grain = 0, below = 60) => {
    const shape = sound(drawing);
    return findNecks(shape, meshOf(shape), grain, below);
  };

  test.each(['rounded-rectangle', 'oval', 'half-moon', 'leaf'])('a %s has none', (id) => {
    expect(necksOf(drawn(id)).necks).toEqual([]);
  });

  test('a handle is one, as wide as it is drawn', () => {
    const parts = necksOf(drawn('paddle', { holeDiameter: 0, handleWidth: 38, endRadius: 15 })).necks;
    expect(parts).toHaveLength(1);
    expect(parts[0]?.length).toBeCloseTo(38, 2);
    expect(parts[0]?.toGrain).toBeCloseTo(90, 0);
  });

  test('a dumb-bell has one, at its waist', () => {
    const [neck] = necksOf(outline('M0 0H100C100 45 200 45 200 0H300V160H200C200 115 100 115 100 160H0Z')).necks;
    expect(neck?.length).toBeCloseTo(160 - 2 * 33.75, 1);
    expect(Math.abs(((neck?.from.x ?? 0) + (neck?.to.x ?? 0)) / 2 - 150)).toBeLessThan(2);
  });

  test.each([
    [0, 0],
    [30, 0],
    [60, 1],
    [90, 1],
    [150, 0],
  ])('a handle along x is short-grained with the grain at %d°: %d', (grain, count) => {
    expect(necksOf(drawn('paddle', { holeDiameter: 0 }), grain).shortGrain).toHaveLength(count);
  });

  test('a wide handle is not short-grained below its width', () => {
    expect(necksOf(drawn('paddle', { holeDiameter: 0, handleWidth: 60 }), 90, 59).shortGrain).toEqual([]);
    expect(necksOf(drawn('paddle', { holeDiameter: 0, handleWidth: 58 }), 90, 59).shortGrain).toHaveLength(1);
  });

  test('the least wood between hole and edge agrees with a second geometry library', () => {
    fc.assert(
      fc.property(
        wavyOutline,
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (drawing, dx, dy) => {
          const around = sound({ outer: drawing.outer, holes: [] });
          const reach = Math.min(...pointsOf(around.outer).map(({ x, y }) => Math.hypot(x, y)));
          const [cx, cy, r] = [dx * reach, dy * reach, reach * 0.2];
          const hole = `M${cx - r} ${cy}a${r} ${r} 0 0 1 ${2 * r} 0a${r} ${r} 0 0 1 ${-2 * r} 0Z`;
          const shape = sound({ outer: drawing.outer, holes: [hole] });
          const expected = distance(
            boundary(pointsOf(shape.outer)),
            boundary(pointsOf(shape.holes[0] ?? around.outer)),
          );
          const found = findNecks(shape, meshOf(shape), 0, 60).holeToEdge;
          expect(found?.length).toBeCloseTo(expected, 2);
          const middle = {
            x: ((found?.from.x ?? 0) + (found?.to.x ?? 0)) / 2,
            y: ((found?.from.y ?? 0) + (found?.to.y ?? 0)) / 2,
          };
          expect(isInWood(shape, middle.x, middle.y)).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('lie in the wood and turn with the outline and its grain', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...parametricOutlines),
        fc.double({ min: 0, max: 180, noNaN: true }),
        ({ id }, degrees) => {
          const drawing = drawn(id);
          const before = necksOf(drawing, 20);
          const shape = movedShape(sound(drawing), { degrees });
          const after = findNecks(shape, meshOf(shape), 20 + degrees, 60);
          expect(after.necks.map(({ kind }) => kind)).toEqual(before.necks.map(({ kind }) => kind));
          after.necks.forEach((neck, index) => {
            expect(neck.length).toBeCloseTo(before.necks[index]?.length ?? 0, 1);
            expect(isInWood(shape, (neck.from.x + neck.to.x) / 2, (neck.from.y + neck.to.y) / 2)).toBe(true);
          });
        },
      ),
      { numRuns: 40 },
    );
  });
});

test.each([
  ['M0 0H400V100H100V300H0Z', 100],
  ['M0 0H500V100H100V500H0Z', 100],
  ['M0 0H300V60H60V400H0Z', 60],
  ['M0 0H700V100H100V420H0Z', 100],
  ['M0 0H530V75H75V910H0Z', 75],
])('the narrowest neck of an angle bar is as wide as the bar, exactly: %s', (path, width) => {
  const shape = sound(outline(path));
  const [neck] = findNecks(shape, meshOf(shape), 0, 60).necks;
  expect(neck?.length).toBeCloseTo(width, 6);
});
