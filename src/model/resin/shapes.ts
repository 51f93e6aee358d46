/** A place to fill, seen from above; lengths in mm. */
export type FillShape =
  | { kind: 'rectangle' | 'oval' | 'channel'; length: number; width: number }
  | { kind: 'ring'; outer: number; inner: number };

/** What is filled, seen from above: area in mm² and length of its edge in mm. */
export interface Footprint {
  area: number;
  edge: number;
}

/**
 * Area and edge of one shape.
 *
 * A rectangle and an oval have a length and a width; a ring has two diameters. A channel has the length of its middle line,
 * straight or curved, and its width; its ends count as square, which is a little too much where a bit left them round
 * (0.11 of the width squared for each).
 */
export function footprintOf(shape: FillShape): Footprint {
  if (shape.kind === 'ring') {
    const { outer, inner } = shape;
    return { area: (Math.PI / 4) * (outer ** 2 - inner ** 2), edge: Math.PI * (outer + inner) };
  }
  const { length, width } = shape;
  if (shape.kind === 'oval') return { area: (Math.PI / 4) * length * width, edge: ellipseEdge(length / 2, width / 2) };
  return { area: length * width, edge: 2 * (length + width) };
}

/** Edge of an ellipse with these half axes after Ramanujan's second formula, which is exact to 0.04 % for any. */
function ellipseEdge(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

/** Several footprints as one. */
export function sumFootprints(all: readonly Footprint[]): Footprint {
  return all.reduce((sum, { area, edge }) => ({ area: sum.area + area, edge: sum.edge + edge }), { area: 0, edge: 0 });
}

/** How deep a place is: depths in mm, each with its share of the area; the shares sum to 1. */
export type DepthProfile = readonly { depth: number; share: number }[];

/** Mean depth in mm. */
export function meanDepth(profile: DepthProfile): number {
  return profile.reduce((sum, { depth, share }) => sum + depth * share, 0);
}

/** Greatest depth in mm. */
export function deepest(profile: DepthProfile): number {
  return profile.reduce((most, { depth }) => Math.max(most, depth), 0);
}

/**
 * Share of the fill that each of some layers of equal thickness takes, the lowest first. Where the floor is uneven the
 * lower layers cover less of it.
 *
 * @returns shares that sum to 1
 */
export function layerShares(profile: DepthProfile, layers: number): number[] {
  const thickness = deepest(profile) / layers;
  const mean = meanDepth(profile);
  return Array.from({ length: layers }, (_, layer) => {
    // Measured from the surface: the lowest layer is the deepest part of every place that reaches it.
    const from = (layers - 1 - layer) * thickness;
    const filled = profile.reduce(
      (sum, { depth, share }) => sum + share * Math.min(thickness, Math.max(0, depth - from)),
      0,
    );
    return filled / mean;
  });
}
