import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { type BoardPoint, heightOf, type Plane, spansArea, thickestSlab } from './flatten-plane.ts';

/** A place where the measured face stands so high, mm. */
export interface MeasuredPoint {
  x: number;
  y: number;
  /** Above any flat reference: from a bench upwards, or minus the gap under a straightedge. */
  height: number;
  /** Thickness of the board there, where it was measured; that of the board otherwise. */
  thickness?: number;
}

/** A board to be made flat. */
export interface FlattenRequest {
  points: readonly MeasuredPoint[];
  /** Thickness of the board, mm: the least, where it differs. */
  thickness: number;
  /** Thickness wanted, mm. */
  target: number;
  /** Wood taken in one pass, mm. */
  depthOfCut: number;
}

/** What is done at one place, mm. */
export interface FlattenedPoint extends MeasuredPoint {
  /** Cut from the measured face and from the other. */
  cut: number;
  cutBelow: number;
  /** Height of the shim under the board there, for the first face on a flat sled. */
  shim: number;
}

/** How to flatten a board with the least loss. */
export interface FlattenPlan {
  /** The flat face to cut first. */
  plane: Plane;
  /** Greatest thickness that two flat faces can leave, mm. */
  thicknessLeft: number;
  /** Whether the target is met, and by how much it is missed, mm. */
  meetsTarget: boolean;
  shortfall: number;
  /** Thickness of the board as planned: the target, or what is left where that is less, mm. */
  thickness: number;
  /** Deepest cut of the measured face and of the other, mm. */
  deepest: number;
  deepestBelow: number;
  passes: number;
  passesBelow: number;
  /** Highest shim, mm. */
  highestShim: number;
  points: readonly FlattenedPoint[];
}

/** Fewer points do not show a board; more than this slow the arithmetic without saying more. */
export const pointCount = { least: 4, most: 2000 };

/** Cuts thinner than this are rounding, not shavings, mm. */
const nothing = 1e-6;

function passesFor(depth: number, depthOfCut: number): number {
  return depth <= nothing ? 0 : Math.ceil(depth / depthOfCut - 1e-9);
}

function problem(request: FlattenRequest): ReturnType<typeof refuse> | undefined {
  const { points, thickness, target, depthOfCut } = request;
  if (points.length < pointCount.least || points.length > pointCount.most) {
    return refuse(
      'heights',
      `${points.length} heights were given; a plane needs ${pointCount.least} to ${pointCount.most}`,
      'Measure the four corners at least, better also the middle and the edges.',
    );
  }
  const broken = points.findIndex((point) =>
    [point.x, point.y, point.height, point.thickness ?? thickness].some((value) => !(Math.abs(value) <= 1e5)),
  );
  if (broken >= 0) {
    return refuse(
      'heights',
      `Point ${broken + 1} is not on any board: it is not a number, or more than 100 m away`,
      'Correct it.',
    );
  }
  if (!spansArea(points)) {
    return refuse(
      'heights',
      'All points lie on one line, and a board could still be twisted about it',
      'Measure at places that span the length and the width, the four corners at least.',
    );
  }
  for (const [field, value, noun] of [
    ['thickness', thickness, 'thickness'],
    ['target', target, 'target thickness'],
    ['depthOfCut', depthOfCut, 'depth of cut'],
  ] as const) {
    if (!(value > 0 && value <= 1e5))
      return refuse(field, `A ${noun} of ${amount(value, 'mm')} cannot be`, 'Give a value above 0.');
  }
  return undefined;
}

/**
 * Plan the flattening of a board: the plane that leaves most thickness, and, where the board is thicker than wanted, equal
 * cuts of both faces down to the target, which keeps the moisture of the two faces alike.
 *
 * @param request heights and sizes in mm
 * @returns the plan; a refusal where the points do not show a board, or where no flat slab lies inside it
 */
export function flattenPlan(request: FlattenRequest): Outcome<FlattenPlan> {
  const wrong = problem(request);
  if (wrong) return wrong;
  const own: BoardPoint[] = request.points.map((point) => ({
    x: point.x,
    y: point.y,
    top: point.height,
    bottom: point.height - (point.thickness ?? request.thickness),
  }));
  const slab = thickestSlab(own);
  if (!slab || slab.thickness <= nothing) {
    return refuse(
      'heights',
      `The faces are further out of flat than the board is thick: no flat slab is left of its ${amount(request.thickness, 'mm')}`,
      'Cut the board into shorter and narrower pieces first: half the width has a quarter of the cup.',
    );
  }
  const thickness = Math.min(request.target, slab.thickness);
  const spare = slab.thickness - thickness;
  const plane = { ...slab.plane, a: slab.plane.a - spare / 2 };
  const lowest = Math.min(...own.map((point) => point.bottom - heightOf(plane, point)));
  const points = own.map((point, at): FlattenedPoint => {
    const level = heightOf(plane, point);
    return {
      ...(request.points[at] as MeasuredPoint),
      cut: Math.max(0, point.top - level),
      cutBelow: Math.max(0, level - thickness - point.bottom),
      shim: Math.max(0, point.bottom - level - lowest),
    };
  });
  const most = (pick: (point: FlattenedPoint) => number) =>
    points.reduce((high, point) => Math.max(high, pick(point)), 0);
  const deepest = most((point) => point.cut);
  const deepestBelow = most((point) => point.cutBelow);
  return answer({
    plane,
    thicknessLeft: slab.thickness,
    meetsTarget: slab.thickness >= request.target - nothing,
    shortfall: Math.max(0, request.target - slab.thickness),
    thickness,
    deepest,
    deepestBelow,
    passes: passesFor(deepest, request.depthOfCut),
    passesBelow: passesFor(deepestBelow, request.depthOfCut),
    highestShim: most((point) => point.shim),
    points,
  });
}
