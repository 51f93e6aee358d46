import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { type Outline, type Point, parametricOutlines, prepare, type Shape } from '../../../src/model/outline/index.ts';
import type { Polyline } from '../../../src/model/outline/types.ts';

// A second geometry library, to measure the same things by other means.

const factory = new GeometryFactory();

/** A geometry of the second library, as far as these tests use it. */
export interface Reference {
  getArea(): number;
  getLength(): number;
  isEmpty(): boolean;
}

function ring(points: readonly Point[]) {
  const coordinates = [...points, points[0] as Point].map(({ x, y }) => new Coordinate(x, y));
  return factory.createLinearRing(coordinates);
}

export function pointsOf({ x, y }: Polyline): Point[] {
  return Array.from(x, (px, i) => ({ x: px, y: y[i] as number }));
}

/** A polygon of the second library. */
export function polygon(outer: readonly Point[], holes: readonly (readonly Point[])[] = []): Reference {
  return factory.createPolygon(ring(outer), holes.map(ring)) as unknown as Reference;
}

export function referenceOf(shape: Shape): Reference {
  return polygon(pointsOf(shape.outer), shape.holes.map(pointsOf));
}

/** The boundary of a closed polyline. */
export function boundary(points: readonly Point[]): Reference {
  return ring(points) as unknown as Reference;
}

export function grown(reference: Reference, by: number): Reference {
  return BufferOp.bufferOp(reference as never, by, 64) as unknown as Reference;
}

export function distance(a: Reference, b: Reference): number {
  return DistanceOp.distance(a as never, b as never);
}

export function difference(a: Reference, b: Reference): Reference {
  return OverlayOp.difference(a as never, b as never) as unknown as Reference;
}

/** A shape that must be sound. */
export function sound(outline: Outline): Shape {
  const shape = prepare(outline);
  if (!shape.ok) throw new Error(shape.errors.map(({ message }) => message).join(' '));
  return shape.value;
}

/** One of our outlines with some of its measures. */
export function drawn(id: string, values: Record<string, number> = {}): Outline {
  const outline = parametricOutlines.find((each) => each.id === id)?.draw(values);
  if (!outline?.ok) throw new Error(`${id} cannot be drawn`);
  return outline.value;
}

/** A closed outline around the origin whose radius swings: star-shaped, so it never crosses itself. Points 1 to 2 mm apart. */
export const wavyOutline: fc.Arbitrary<Outline> = fc
  .record({
    radius: fc.double({ min: 60, max: 200, noNaN: true }),
    waves: fc.array(
      fc.record({
        order: fc.integer({ min: 1, max: 9 }),
        swing: fc.double({ min: 0, max: 0.12, noNaN: true }),
        phase: fc.double({ min: 0, max: 6.28, noNaN: true }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    points: fc.integer({ min: 120, max: 500 }),
    hole: fc.boolean(),
  })
  .map(({ radius, waves, points, hole }) => ({
    outer: wavyPath(radius, waves, points),
    holes: hole ? [wavyPath(radius / 5, waves, 60)] : [],
  }));

export function wavyPath(
  radius: number,
  waves: readonly { order: number; swing: number; phase: number }[],
  points: number,
): string {
  const steps = Array.from({ length: points }, (_, k) => {
    const angle = (2 * Math.PI * k) / points;
    const r = radius * waves.reduce((sum, { order, swing, phase }) => sum + swing * Math.cos(order * angle + phase), 1);
    return `${k === 0 ? 'M' : 'L'}${(r * Math.cos(angle)).toFixed(4)} ${(r * Math.sin(angle)).toFixed(4)}`;
  });
  return `${steps.join('')}Z`;
}
