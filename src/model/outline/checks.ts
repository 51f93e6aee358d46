import type { CheckSet, CheckValue, Citation } from '../evidence/index.ts';
import { circlePath, oval, roundedRectangle } from './drawn.ts';
import { leastInsideRadius } from './inside-radius.ts';
import { areaOfShape, boxAlongGrain, perimeterOfShape } from './measure.ts';
import { meshOf } from './mesh.ts';
import { findNecks } from './necks.ts';
import { offsetShape, ringArea, ringLength } from './offset.ts';
import { parametricOutline } from './parametric.ts';
import { bitLeaves } from './reach.ts';
import { prepare } from './shape.ts';
import { tearOut } from './tear-out.ts';
import type { Outline, Shape } from './types.ts';

const own = (locator: string): Citation => ({ source: 'kerf-and-cure', locator });

/** A shape that is known to be sound. */
function sound(outline: Outline): Shape {
  const shape = prepare(outline);
  if (!shape.ok) throw new Error('A check of the outline room draws a broken outline.');
  return shape.value;
}

const circle = sound({ outer: circlePath(150, 150, 150), holes: [] });
const ring = sound({ outer: circlePath(150, 150, 150), holes: [circlePath(150, 150, 40)] });
const rectangle = sound({ outer: roundedRectangle(400, 250, 25), holes: [] });
const ellipse = sound({ outer: oval(420, 260), holes: [] });

/**
 * Perimeter of an ellipse by the arithmetic-geometric mean: with a₀ = a, b₀ = b and c² = a² − b² at each step,
 * 2π/M(a, b) · (a² − Σ 2ⁿ⁻¹ c²).
 */
export function ellipsePerimeter(a: number, b: number): number {
  let [x, y] = [a, b];
  let sum = (a * a - b * b) / 2;
  let weight = 1;
  while (Math.abs(x - y) > 1e-14 * x) {
    const half = (x - y) / 2;
    [x, y] = [(x + y) / 2, Math.sqrt(x * y)];
    sum += weight * half * half;
    weight *= 2;
  }
  return ((2 * Math.PI) / x) * (a * a - sum);
}

function area(points: Parameters<typeof ringArea>[0] | undefined): number {
  return points ? ringArea(points) : Number.NaN;
}

const roundingOnly = 'Rounding: the answer comes from the curves themselves, not from a polyline.';

const closedForms: CheckSet = {
  id: 'outline-closed-forms',
  title: 'Area and perimeter of outlines against closed forms',
  kind: 'check',
  about:
    'Shapes whose area and perimeter follow from school geometry, and the perimeter of an ellipse by the arithmetic-geometric mean, none of which the tool uses: it sums over the pieces of the path.',
  values: [
    value(
      'circle-area',
      'Area of a circle of 300 mm',
      Math.PI * 150 ** 2,
      () => areaOfShape(circle),
      'mm2',
      1e-6,
      roundingOnly,
      'π r²',
    ),
    value(
      'circle-perimeter',
      'Perimeter of the same circle',
      2 * Math.PI * 150,
      () => perimeterOfShape(circle),
      'mm',
      1e-6,
      roundingOnly,
      '2 π r',
    ),
    value(
      'ring-area',
      'Area of the same circle with a hole of 80 mm',
      Math.PI * (150 ** 2 - 40 ** 2),
      () => areaOfShape(ring),
      'mm2',
      1e-6,
      roundingOnly,
      'π (R² − r²)',
    ),
    value(
      'rounded-area',
      'Area of a rectangle of 400 × 250 mm with corners of 25 mm',
      400 * 250 - (4 - Math.PI) * 25 ** 2,
      () => areaOfShape(rectangle),
      'mm2',
      1e-6,
      roundingOnly,
      'l w − (4 − π) r²',
    ),
    value(
      'rounded-perimeter',
      'Perimeter of the same rectangle',
      2 * (400 + 250) - (8 - 2 * Math.PI) * 25,
      () => perimeterOfShape(rectangle),
      'mm',
      1e-6,
      roundingOnly,
      '2 (l + w) − (8 − 2π) r',
    ),
    value(
      'ellipse-area',
      'Area of an oval of 420 × 260 mm',
      Math.PI * 210 * 130,
      () => areaOfShape(ellipse),
      'mm2',
      1e-6,
      roundingOnly,
      'π a b',
    ),
    value(
      'ellipse-perimeter',
      'Perimeter of the same oval',
      ellipsePerimeter(210, 130),
      () => perimeterOfShape(ellipse),
      'mm',
      1e-6,
      'Rounding, and quadrature to nine digits.',
      'Complete elliptic integral, by the arithmetic-geometric mean',
    ),
    value(
      'ellipse-box',
      'Length along a grain at 30° of the same oval',
      2 * Math.hypot(210 * Math.cos(Math.PI / 6), 130 * Math.sin(Math.PI / 6)),
      () => boxAlongGrain(ellipse, 30).length,
      'mm',
      1e-6,
      roundingOnly,
      '2 √(a² cos² + b² sin²)',
    ),
  ],
};

const withinTolerance = (perimeter: number) => 0.06 * perimeter;
const offsetReason =
  'The offset is a polyline within 0.06 mm of the true one; over the perimeter that is this much area.';

const offsets: CheckSet = {
  id: 'outline-offsets',
  title: 'Rough outline at a clearance against closed forms',
  kind: 'check',
  about:
    'Steiner’s formulas: grown by d, a convex outline gains P d + π d² of area and 2 π d of perimeter. A hole shrinks as the wood grows.',
  values: [
    value(
      'rounded-grown',
      'Area of the rectangle of 400 × 250 mm grown by 3 mm',
      400 * 250 - (4 - Math.PI) * 25 ** 2 + 3 * (1300 - (8 - 2 * Math.PI) * 25) + Math.PI * 9,
      () => area(offsetShape(rectangle, 3)[0]?.points),
      'mm2',
      withinTolerance(1276),
      offsetReason,
      'A + P d + π d²',
    ),
    value(
      'rounded-grown-perimeter',
      'Perimeter of the same',
      1300 - (8 - 2 * Math.PI) * 25 + 6 * Math.PI,
      () => ringLength(offsetShape(rectangle, 3)[0]?.points ?? []),
      'mm',
      0.3,
      'Chords of corners of 28 mm within 0.06 mm are up to 0.1 % shorter than their arcs.',
      'P + 2 π d',
    ),
    value(
      'ellipse-grown',
      'Area of the oval of 420 × 260 mm grown by 10 mm',
      Math.PI * 210 * 130 + 10 * ellipsePerimeter(210, 130) + Math.PI * 100,
      () => area(offsetShape(ellipse, 10)[0]?.points),
      'mm2',
      withinTolerance(ellipsePerimeter(220, 140)),
      offsetReason,
      'A + P d + π d²',
    ),
    value(
      'hole-shrunk',
      'Area of the hole of 80 mm in the ring, with the wood grown by 3 mm',
      Math.PI * 37 ** 2,
      () => -area(offsetShape(ring, 3).find(({ hole }) => hole)?.points),
      'mm2',
      withinTolerance(2 * Math.PI * 37),
      offsetReason,
      'π (r − d)²',
    ),
  ],
};

const paddle = sound(drawn('paddle', {}));
const corner = sound({ outer: 'M0 0H200V100H100V200H0Z', holes: [] });

function drawn(id: string, values: Record<string, number>): Outline {
  const outline = parametricOutline(id)?.draw(values);
  if (!outline?.ok) throw new Error(`A check of the outline room cannot draw ${id}.`);
  return outline.value;
}

const places: CheckSet = {
  id: 'outline-places',
  title: 'Tight and thin places against closed forms',
  kind: 'check',
  about:
    'A paddle whose measures are known by its drawing; a square inside corner, in which a bit of radius r leaves a piece of (1 − π/4) r² and stays (√2 − 1) r from the corner; and an ellipse, on whose edge the share that runs uphill follows from where its tangent meets the grain at the two dividing angles.',
  values: [
    value(
      'paddle-hole-radius',
      'Least inside radius of the paddle: half of its hole of 12 mm',
      6,
      () => leastInsideRadius(paddle, meshOf(paddle))?.radius ?? Number.NaN,
      'mm',
      1e-6,
      roundingOnly,
      'By its drawing',
    ),
    value(
      'paddle-handle',
      'Narrowest neck of the paddle: its handle',
      45,
      () => findNecks(paddle, meshOf(paddle), 0, 60).necks.find(({ kind }) => kind === 'part')?.length ?? Number.NaN,
      'mm',
      0.02,
      'The tolerance of the polyline.',
      'By its drawing',
    ),
    value(
      'paddle-web',
      'Least wood between the paddle’s hole and its edge',
      16.5,
      () => findNecks(paddle, meshOf(paddle), 0, 60).holeToEdge?.length ?? Number.NaN,
      'mm',
      0.02,
      'The tolerance of the polyline.',
      '(45 − 12) / 2',
    ),
    value(
      'corner-depth',
      'A bit of 12.7 mm in a square inside corner: distance to the corner',
      (Math.SQRT2 - 1) * 6.35,
      () => bitLeaves(corner, 12.7)[0]?.depth ?? Number.NaN,
      'mm',
      0.01,
      'The tolerance of the offset.',
      '(√2 − 1) r',
    ),
    value(
      'corner-area',
      'The same: area of the piece left',
      (1 - Math.PI / 4) * 6.35 ** 2,
      () => bitLeaves(corner, 12.7)[0]?.area ?? Number.NaN,
      'mm2',
      0.05,
      'The bit’s arc is drawn by chords.',
      '(1 − π/4) r²',
    ),
    value(
      'circle-uphill',
      'Share of a circle’s edge that runs uphill, between 5° and 75° to the grain',
      (100 * 140) / 360,
      () => 100 * tearOut(circle, 0, 'handheld').shares.uphill,
      '%',
      0.9,
      'The polyline of the circle turns by 1.9° at each point, at four ends of stretches.',
      'Two arcs of 70° of a whole turn',
    ),
  ],
};

function value(
  id: string,
  what: string,
  published: number,
  ours: () => number,
  unit: string,
  tolerance: number,
  reason: string,
  locator: string,
): CheckValue {
  return { id, what, published, ours, unit, tolerance, reason, citation: own(locator) };
}

/** Measures of outlines against formulas that the tool does not use. */
export const checks: readonly CheckSet[] = [closedForms, offsets, places];
