import { answer, equation, type FieldError, type Outcome } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import type { Strains } from './formulas.ts';

/** A point of the end grain, [x, y] in mm: the board's middle at the origin, x along the width, y from heart side to bark side. */
export type Point = readonly [number, number];

/**
 * A board as a rectangle in the log's cross-section. The heart-side face is the one nearer the pith and lies below; the
 * bark-side face lies above.
 */
export interface Section {
  /** mm across the face. */
  width: number;
  /** mm from face to face. */
  thickness: number;
  /**
   * mm from the pith straight up to the plane of the heart-side face. Negative where the pith lies between the planes of
   * the two faces, beyond an edge: at most half the thickness, when it is level with the middle of the board.
   */
  pithDepth: number;
  /** mm sideways from the pith to the middle of the board's width; its sign says to which side. */
  pithOffset: number;
}

/** Sizes that are computed with, mm: least and most of a board, and the furthest pith. */
const sizes = { least: 0.01, most: 100_000, furthest: 1e9 };

/**
 * Check a section that a reader gave.
 *
 * @returns the section, or errors on `width`, `thickness`, `pithDepth` or `pithOffset`
 */
export function checkSection(section: Section): Outcome<Section> {
  const { width, thickness, pithDepth, pithOffset } = section;
  const errors: FieldError[] = [];
  for (const [field, value] of Object.entries({ width, thickness })) {
    if (value >= sizes.least && value <= sizes.most) continue;
    errors.push({
      field,
      message: `A ${field} of ${value} mm was read; it is ${sizes.least} to ${sizes.most} mm. Check the number and its unit.`,
    });
  }
  for (const [field, value] of Object.entries({ pithDepth, pithOffset })) {
    if (Math.abs(value) <= sizes.furthest) continue;
    errors.push({
      field,
      message: `A distance of ${value} mm from the pith was read; it is at most ${sizes.furthest} mm. Where the rings look straight, give the cut instead.`,
    });
  }
  if (errors.length > 0) return { ok: false, errors };
  if (pithDepth < -thickness / 2) {
    const message = `The pith is ${amount(-pithDepth, 'mm')} above the heart-side face, past the middle of the board, so the other face is the heart side. Turn the board over and measure to the face nearer the pith.`;
    return { ok: false, errors: [{ field: 'pithDepth', message }] };
  }
  if (pithDepth < 0 && Math.abs(pithOffset) < width / 2) {
    const message = `The pith is inside the board: ${amount(-pithDepth, 'mm')} above its heart-side face and ${amount(Math.abs(pithOffset), 'mm')} from its middle. Such a board splits to the pith as it dries, which no formula here covers; rip the pith out and give each half by itself.`;
    return { ok: false, errors: [{ field: 'pithDepth', message }] };
  }
  return answer(section);
}

/** The pith as a point of the section. */
export function pithOf(section: Section): Point {
  return [-section.pithOffset, -(section.pithDepth + section.thickness / 2)];
}

/**
 * A section seen from its pith: how far the board's middle is, and in which direction. Angles about the pith are measured
 * from that direction and radii from that distance, so that nothing is lost when the pith is a thousand widths away.
 */
export interface PithView {
  /** mm from the pith to the board's middle. */
  distance: number;
  /** Unit vector from the pith to the board's middle. */
  towards: Point;
}

/** How the middle of a section lies as seen from the pith: its distance, mm, and the direction towards it. */
export function seenFromPith(section: Section): PithView {
  const [x, y] = pithOf(section);
  const distance = Math.sqrt(x * x + y * y);
  return { distance, towards: [-x / distance, -y / distance] };
}

/** A point in the pith's terms. */
export interface PolarPoint {
  /** mm from the pith, less the distance of the board's middle. */
  beyond: number;
  /** mm from the pith. */
  radius: number;
  /** Radians about the pith, counter-clockwise from the board's middle. */
  angle: number;
}

/** A point of the section, mm from its middle, in the pith’s terms. */
export function polarOf(view: PithView, [x, y]: Point): PolarPoint {
  const { distance, towards } = view;
  const along = x * towards[0] + y * towards[1];
  const across = y * towards[0] - x * towards[1];
  // Not Math.hypot, which is many times slower and guards against sizes that `checkSection` keeps out.
  const radius = Math.sqrt((distance + along) ** 2 + across * across);
  // radius - distance, without subtracting two numbers that may be nearly equal.
  const beyond = (2 * distance * along + along * along + across * across) / (radius + distance);
  return { beyond, radius, angle: Math.atan2(across, distance + along) };
}

/** A point of the section, mm from its middle, from the pith’s terms: what `polarOf` gave, put back. */
export function pointOf(view: PithView, { beyond, radius, angle }: PolarPoint): Point {
  const { towards } = view;
  const half = Math.sin(angle / 2);
  const along = beyond - 2 * radius * half * half;
  const across = radius * Math.sin(angle);
  return [along * towards[0] - across * towards[1], along * towards[1] + across * towards[0]];
}

/** Where a point of the log goes when the wood swells or shrinks freely. */
export const ringMap = equation(
  {
    id: 'kerf-ring-map',
    title: 'Free movement of wood with rings about a pith',
    tex: '(r,\\ \\theta) \\;\\mapsto\\; \\left( r\\,(1+\\varepsilon_r),\\ \\theta\\,\\frac{1+\\varepsilon_t}{1+\\varepsilon_r} \\right)',
    symbols: [
      { tex: 'r', meaning: 'distance from the pith', unit: 'mm' },
      { tex: '\\theta', meaning: 'angle about the pith', unit: 'rad' },
      { tex: '\\varepsilon_r', meaning: 'radial strain', unit: '1' },
      { tex: '\\varepsilon_t', meaning: 'tangential strain', unit: '1' },
    ],
    validity:
      'Rings that are circles about one pith, the same moisture content throughout, a board free to move, the pith outside the board or on its face. Not near knots, not reaction or juvenile wood.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure' },
    remarks:
      'Exact and free of stress: every radius stretches by 1 + ε_r, and an arc of radius r and angle θ becomes one of length r(1+ε_r) · θ(1+ε_t)/(1+ε_r) = rθ(1+ε_t). Lengths in both directions come out right at every point, and the two directions stay square to each other.',
  },
  /**
   * @param section the board before the change
   * @param strains radial and tangential, fractions above -1
   * @returns a function from a point of the section to its place after the change, from the board's middle after the change
   */
  (section: Section, strains: Strains): ((point: Point) => Point) => {
    const view = seenFromPith(section);
    const radial = 1 + strains.radial;
    const turn = (1 + strains.tangential) / radial;
    return (point) => {
      const { beyond, radius, angle } = polarOf(view, point);
      return pointOf(view, { beyond: beyond * radial, radius: radius * radial, angle: angle * turn });
    };
  },
);

/** What rule and straight-edge read on a section. Lengths in mm. */
export interface SectionMeasures {
  /** What a rule laid across reads: the mean of the two faces. */
  width: number;
  /** Straight across the bark-side face, from arris to arris. */
  barkFace: number;
  /** Straight across the heart-side face, from arris to arris. */
  heartFace: number;
  /** Bark-side face less heart-side face: above 0 when the bark side is the wider. */
  faceDifference: number;
  /** Mean over the width. */
  thickness: number;
  /**
   * How far each face stands from a straight-edge laid from arris to arris, at most: positive when the board is hollow on
   * its bark side (and humped on its heart side), as a flatsawn board becomes on drying; negative when it is hollow on
   * its heart side.
   */
  cup: { bark: number; heart: number };
}

/**
 * Measure a board after a free change.
 *
 * The area of the section changes by (1+ε_r)(1+ε_t) wherever the board lay in the log; the mean thickness is that area
 * over the mean length of the two faces, each length being its chord c and cup s together, c + 8s²/3c.
 *
 * @param section the board when it was flat and square
 * @param strains from then to now, fractions
 */
export function measureSection(section: Section, strains: Strains): SectionMeasures {
  const bark = measureFace(section, strains, section.thickness / 2);
  const heart = measureFace(section, strains, -section.thickness / 2);
  const area = section.width * section.thickness * (1 + strains.radial) * (1 + strains.tangential);
  return {
    width: (bark.chord + heart.chord) / 2,
    barkFace: bark.chord,
    heartFace: heart.chord,
    faceDifference: bark.chord - heart.chord,
    thickness: (2 * area) / (bark.length + heart.length),
    cup: { bark: bark.cup, heart: heart.cup },
  };
}

interface FaceMeasures {
  chord: number;
  cup: number;
  length: number;
}

/** Measure the face at height y before the change. */
function measureFace(section: Section, strains: Strains, y: number): FaceMeasures {
  const half = section.width / 2;
  const map = ringMap(section, strains);
  const slope = faceSlope(section, strains, y);
  const [ax, ay] = map([-half, y]);
  const [bx, by] = map([half, y]);
  const chord = Math.hypot(bx - ax, by - ay);
  // Unit normal of the chord, on its bark side.
  const normal: Point = [-(by - ay) / chord, (bx - ax) / chord];
  const x = crossing(-half, half, (at) => {
    const [dx, dy] = slope(at);
    return dx * normal[0] + dy * normal[1];
  });
  const [px, py] = map([x, y]);
  const cup = -((px - ax) * normal[0] + (py - ay) * normal[1]);
  return { chord, cup, length: chord + (8 * cup * cup) / (3 * chord) };
}

/** The direction and stretch of a face after the change, at a place x along it before the change. */
function faceSlope(section: Section, strains: Strains, y: number): (x: number) => Point {
  const view = seenFromPith(section);
  const [ex, ey] = view.towards;
  const turn = (1 + strains.tangential) / (1 + strains.radial);
  return (x) => {
    const { angle } = polarOf(view, [x, y]);
    // Parts of a step along the face outward from the pith and around it, before the change …
    const outward = ex * Math.cos(angle) - ey * Math.sin(angle);
    const around = -ex * Math.sin(angle) - ey * Math.cos(angle);
    // … each stretched by its own strain and turned about the pith with its point.
    const [r, t] = [outward * (1 + strains.radial), around * (1 + strains.tangential)];
    const [cos, sin] = [Math.cos(angle * turn), Math.sin(angle * turn)];
    const [along, across] = [r * cos - t * sin, r * sin + t * cos];
    return [along * ex - across * ey, along * ey + across * ex];
  };
}

/**
 * Where a function that changes sign once crosses zero: false position, the end that stays put losing weight (Anderson
 * and Björck's rule), bisection where that stalls. A face bends one way over its whole width, so the place furthest from
 * its chord is the one place where the two run parallel. Where rounding hides the change of sign the face is straight,
 * and any place serves.
 */
function crossing(from: number, to: number, of: (x: number) => number): number {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [of(low), of(high)];
  if (!(atLow * atHigh < 0)) return (low + high) / 2;
  const near = Math.max(Math.abs(atLow), Math.abs(atHigh)) * 1e-8;
  const narrow = (to - from) * 1e-9;
  let moved = 0;
  for (let step = 0; step < 60 && high - low > narrow; step += 1) {
    const x = step < 12 ? (low * atHigh - high * atLow) / (atHigh - atLow) : (low + high) / 2;
    const at = of(x);
    if (Math.abs(at) < near) return x;
    if (at > 0 === atLow > 0) {
      if (moved < 0) atHigh *= weight(at, atLow);
      [low, atLow, moved] = [x, at, -1];
    } else {
      if (moved > 0) atLow *= weight(at, atHigh);
      [high, atHigh, moved] = [x, at, 1];
    }
  }
  return (low + high) / 2;
}

/** The weight left to the end that stayed put twice, from the new value and the one it replaces. */
function weight(next: number, last: number): number {
  const rest = 1 - next / last;
  return rest > 0 ? rest : 0.5;
}
