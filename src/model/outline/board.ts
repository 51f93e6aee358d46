import type { Point, Shape } from './types.ts';

/** How an outline lies on a board whose length runs along the grain. */
export interface BoardFit {
  fits: boolean;
  /** How far the outline is swung from its own grain line, counter-clockwise, in degrees: the least that fits, or the best try. */
  swing: number;
  /** What it takes of the board at that swing, clearance included, in mm. */
  length: number;
  width: number;
  /** Board left over in each direction, in mm; negative where it falls short, or where a hair of the clearance is given up. */
  spareLength: number;
  spareWidth: number;
}

/**
 * What a board may fall short of outline and clearance together and still count as large enough, in mm: no tape reads it, and sizes lose
 * as much when inches are written as whole millimetres. It comes off the clearance, never off the outline.
 */
export const hair = 0.1;

/** A board, and how an outline is to lie on it. */
export interface BoardFitOptions {
  /** Angle from the x axis to the grain of the outline, counter-clockwise, in degrees. */
  grainDegrees: number;
  /** Wood left around the line on every side, in mm. */
  clearance: number;
  /** mm */
  boardLength: number;
  boardWidth: number;
  /** Largest swing to either side that the grain may bear, in degrees. */
  mostSwing: number;
}

/** Swings are tried in steps of this, in degrees; between the last that does not fit and the first that does, the least is searched. */
const step = 0.05;

/**
 * Lay an outline on a board, swung as little as possible.
 *
 * The box of the outline with its clearance is the box of its convex hull, enlarged by the clearance on every side. Swings
 * are tried outwards from none, up to the limit on either side, and the least that fits is then searched to a thousandth of a degree.
 */
export function fitOnBoard(shape: Shape, options: BoardFitOptions): BoardFit {
  const hull = convexHull(shape.outer);
  const tries = Math.floor(options.mostSwing / step + 1e-9);
  let best: BoardFit | undefined;
  let shortBy = Number.POSITIVE_INFINITY;
  for (let k = 0; k <= tries; k++) {
    for (const swing of k === 0 ? [0] : [k * step, -k * step]) {
      const fit = at(hull, swing, options);
      if (fit.fits) return k === 0 ? fit : least(hull, swing - Math.sign(swing) * step, fit, options);
      const short = Math.max(-fit.spareLength, -fit.spareWidth);
      if (short < shortBy - 1e-9) {
        shortBy = short;
        best = fit;
      }
    }
  }
  return best as BoardFit;
}

/** The least swing that fits between one that does not and one that does. */
function least(hull: readonly Point[], without: number, fitting: BoardFit, options: BoardFitOptions): BoardFit {
  let [out, best] = [without, fitting];
  while (Math.abs(best.swing - out) > 1e-3) {
    const tried = at(hull, (out + best.swing) / 2, options);
    if (tried.fits) best = tried;
    else out = tried.swing;
  }
  return best;
}

function at(hull: readonly Point[], swing: number, options: BoardFitOptions): BoardFit {
  const turn = ((options.grainDegrees - swing) * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  let [least, most, low, high] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const { x, y } of hull) {
    const u = x * c + y * s;
    const v = y * c - x * s;
    if (u < least) least = u;
    if (u > most) most = u;
    if (v < low) low = v;
    if (v > high) high = v;
  }
  const length = most - least + 2 * options.clearance;
  const width = high - low + 2 * options.clearance;
  const spareLength = options.boardLength - length;
  const spareWidth = options.boardWidth - width;
  const short = Math.min(hair, 2 * options.clearance) + 1e-9;
  return { fits: spareLength >= -short && spareWidth >= -short, swing, length, width, spareLength, spareWidth };
}

/** The corners of the convex hull of a polyline, counter-clockwise (Andrew's monotone chain). */
export function convexHull({ x, y }: { x: Float64Array; y: Float64Array }): Point[] {
  const points = Array.from(x, (px, i) => ({ x: px, y: y[i] as number })).sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (run: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const point of run) {
      while (chain.length >= 2) {
        const [a, b] = [chain[chain.length - 2] as Point, chain[chain.length - 1] as Point];
        if ((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x) > 0) break;
        chain.pop();
      }
      chain.push(point);
    }
    chain.pop();
    return chain;
  };
  return [...half(points), ...half(points.reverse())];
}
