import Delaunator from 'delaunator';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { meshOf, parametricOutlines } from '../../../src/model/outline/index.ts';
import { EdgeTriangulation } from '../../../src/model/outline/mesh.ts';
import { drawn, sound, wavyOutline } from './reference.ts';

/** What is triangulated of a shape: its points one after another. */
function coordinatesOf(shape: Parameters<typeof meshOf>[0], points: number): Float64Array {
  const { x, y } = meshOf(shape, points);
  return Float64Array.from({ length: 2 * x.length }, (_, at) => (at % 2 === 0 ? x : y)[at >> 1] as number);
}

function expectSameTriangles(coordinates: Float64Array): void {
  const [ours, plain] = [new EdgeTriangulation(coordinates), new Delaunator(coordinates)];
  expect(ours.triangles).toEqual(plain.triangles);
  expect(ours.halfedges).toEqual(plain.halfedges);
}

test.each(parametricOutlines.map(({ id }) => id))('the triangles of a %s are those of the library', (id) => {
  for (const points of [120, 900]) expectSameTriangles(coordinatesOf(sound(drawn(id)), points));
});

test('the triangles of any outline are those of the library', () => {
  fc.assert(
    fc.property(wavyOutline, fc.integer({ min: 60, max: 600 }), (drawing, points) => {
      expectSameTriangles(coordinatesOf(sound(drawing), points));
    }),
    { numRuns: 40 },
  );
});

test('every walk round the hull begins beside the new point', () => {
  const library = Object.getPrototypeOf(EdgeTriangulation.prototype) as { _legalize(half: number): number };
  const begun: boolean[] = [];
  const walk = vi.spyOn(library, '_legalize').mockImplementation(function (this: unknown, half: number) {
    const { _hullStart, _triangles } = this as { _hullStart: number; _triangles: Uint32Array };
    begun.push(_hullStart === _triangles[half]);
    return half;
  });
  try {
    new EdgeTriangulation(coordinatesOf(sound(drawn('oval')), 60));
  } finally {
    walk.mockRestore();
  }
  expect(begun.length).toBeGreaterThan(50);
  expect(begun.every(Boolean)).toBe(true);
});
