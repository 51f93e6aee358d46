import { axisBox } from './measure.ts';
import { movedShape } from './motion.ts';
import { offsetShape } from './offset.ts';
import type { Polyline, Shape } from './types.ts';

/** Where a copy lies on the sheet: the shape, turned so that its grain runs along the sheet, then turned and moved. */
export interface Placement {
  /** 0, or 180 where the copy lies the other way round. */
  degrees: 0 | 180;
  /** Added to the copy's coordinates after it was turned about the middle of its own box, in mm, y upwards. */
  dx: number;
  dy: number;
}

/** A sheet, and how copies of an outline are to lie on it. */
export interface NestOptions {
  /** Angle from the x axis to the grain of the outline, in degrees. The grain runs along the sheet's length. */
  grainDegrees: number;
  /** mm */
  sheetLength: number;
  sheetWidth: number;
  /** Least distance between two copies, and from a copy to the sheet's edge, in mm. */
  spacing: number;
  /** As many copies as are wanted; as many as fit where absent. */
  copies?: number;
}

/** Copies of an outline as they lie on a sheet. */
export interface Nest {
  placements: readonly Placement[];
  /** What the placed copies take of the sheet's length, spacing at both ends included, in mm. */
  usedLength: number;
  /** The shape with its grain along the x axis and the middle of its box at the origin, on which placements act. */
  turned: Shape;
}

/** No sheet is filled with more copies than this. */
const mostCopies = 500;

/** Height of the bands in which two neighbours are compared, as a share of the copy's height. */
const bands = 120;

/**
 * Lay copies of an outline on a sheet, in straight rows, each copy as drawn or turned by 180°, so that the grain stays.
 *
 * Neighbours in a row are pushed together until their edges are the spacing apart, band by band; rows are as high as the
 * copy. Rows along and across the sheet are tried, with all copies alike and with every second one turned, and the one
 * with the most copies is taken, then the one that uses the least length. It is simple and safe, and not the best possible:
 * a patient hand with paper copies may find room for more.
 */
export function nestCopies(shape: Shape, options: NestOptions): Nest {
  const turned = middled(movedShape(shape, { degrees: -options.grainDegrees }));
  const wanted = Math.min(options.copies ?? mostCopies, mostCopies);
  const { spacing } = options;
  const inner = { along: options.sheetLength - 2 * spacing, across: options.sheetWidth - 2 * spacing };
  let best: { placements: Placement[]; used: number } = { placements: [], used: 0 };
  const ring = grownBy(turned, spacing);
  for (const upright of [false, true]) {
    const spread = profilesOf(turned, ring, spacing, upright);
    const [runs, stack] = upright ? [inner.across, inner.along] : [inner.along, inner.across];
    for (const alternating of [false, true]) {
      const placements = rows(spread, runs, stack, spacing, alternating, wanted).map(
        ({ degrees, run, level }): Placement => {
          const [x, y] = upright ? [level, run] : [run, level];
          return { degrees, dx: x + spacing, dy: y + spacing };
        },
      );
      const used = usedLength(placements, turned, spacing);
      if (
        placements.length > best.placements.length ||
        (placements.length === best.placements.length && used < best.used - 1e-6)
      ) {
        best = { placements, used };
      }
    }
  }
  return { placements: best.placements, usedLength: best.used, turned };
}

/** A shape with the middle of its box at the origin. */
function middled(shape: Shape): Shape {
  const box = axisBox(shape.outer);
  return movedShape(shape, { dx: -(box.left + box.right) / 2, dy: -(box.bottom + box.top) / 2 });
}

function usedLength(placements: readonly Placement[], shape: Shape, spacing: number): number {
  const box = axisBox(shape.outer);
  const ends = placements.map(({ dx }) => dx + (box.right - box.left) / 2 + spacing);
  return ends.length > 0 ? Math.max(...ends) : 0;
}

/**
 * For each band across the row, how far the copy reaches to either side along the row: as drawn, and grown by the spacing.
 * Index 0 for the copy as drawn, 1 for it turned by 180°.
 */
interface Profiles {
  length: number;
  height: number;
  plain: readonly [Profile, Profile];
  grown: readonly [Profile, Profile];
}

interface Profile {
  low: Float64Array;
  high: Float64Array;
}

/** The outer edges of a shape grown by the spacing. */
function grownBy(shape: Shape, spacing: number): Polyline[] {
  return offsetShape(shape, spacing)
    .filter(({ hole }) => !hole)
    .map(({ points }) => ({ x: Float64Array.from(points, (p) => p.x), y: Float64Array.from(points, (p) => p.y) }));
}

function profilesOf(shape: Shape, ring: readonly Polyline[], spacing: number, upright: boolean): Profiles {
  const box = axisBox(shape.outer);
  const [wide, tall] = [box.right - box.left, box.top - box.bottom];
  const [length, height] = upright ? [tall, wide] : [wide, tall];
  const along = ({ x, y }: Polyline): Polyline => (upright ? { x: y, y: x } : { x, y });
  const plain = profile([along(shape.outer)], height, spacing);
  const grown = profile(ring.map(along), height, spacing);
  return { length, height, plain: [plain, turnedProfile(plain)], grown: [grown, turnedProfile(grown)] };
}

/** Bands run over the copy's height and the spacing on either side. */
function profile(lines: readonly Polyline[], height: number, spacing: number): Profile {
  const low = new Float64Array(bands).fill(Number.POSITIVE_INFINITY);
  const high = new Float64Array(bands).fill(Number.NEGATIVE_INFINITY);
  const bottom = -height / 2 - spacing - 0.1;
  const band = (height + 2 * spacing + 0.2) / bands;
  const add = (k: number, value: number) => {
    if (k < 0 || k >= bands) return;
    if (value < (low[k] as number)) low[k] = value;
    if (value > (high[k] as number)) high[k] = value;
  };
  for (const { x, y } of lines) {
    for (let i = 0; i < x.length; i++) {
      const j = i + 1 === x.length ? 0 : i + 1;
      const [ax, ay, bx, by] = [x[i], y[i], x[j], y[j]] as [number, number, number, number];
      const [first, last] = [
        Math.floor((Math.min(ay, by) - bottom) / band),
        Math.floor((Math.max(ay, by) - bottom) / band),
      ];
      for (let k = first; k <= last; k++) {
        // The edge's ends within this band.
        for (const level of [bottom + k * band, bottom + (k + 1) * band]) {
          const clamped = Math.min(Math.max(ay, by), Math.max(Math.min(ay, by), level));
          add(k, ay === by ? ax : ax + ((bx - ax) * (clamped - ay)) / (by - ay));
        }
        if (ay === by) add(k, bx);
      }
    }
  }
  return { low, high };
}

function turnedProfile({ low, high }: Profile): Profile {
  return {
    low: high
      .slice()
      .reverse()
      .map((value) => -value),
    high: low
      .slice()
      .reverse()
      .map((value) => -value),
  };
}

/** The least distance along the row between the middles of two neighbours, so that they stay the spacing apart. */
function pitch(before: Profile, after: Profile): number {
  let most = 0;
  for (let k = 0; k < bands; k++) {
    const need = (before.high[k] as number) - (after.low[k] as number);
    if (need > most && Number.isFinite(need)) most = need;
  }
  return most;
}

function rows(
  spread: Profiles,
  runs: number,
  stack: number,
  spacing: number,
  alternating: boolean,
  wanted: number,
): { degrees: 0 | 180; run: number; level: number }[] {
  const { length, height, plain, grown } = spread;
  const placed: { degrees: 0 | 180; run: number; level: number }[] = [];
  if (length > runs + 1e-9 || height > stack + 1e-9) return placed;
  for (
    let level = height / 2;
    level + height / 2 <= stack + 1e-9 && placed.length < wanted;
    level += height + spacing
  ) {
    const row: { way: 0 | 1; run: number }[] = [];
    let way: 0 | 1 = 0;
    let run = length / 2;
    while (run + length / 2 <= runs + 1e-9 && placed.length < wanted) {
      placed.push({ degrees: way === 0 ? 0 : 180, run, level });
      row.push({ way, run });
      way = alternating && way === 0 ? 1 : 0;
      // The copy before the last may reach further than the last.
      run = Math.max(...row.slice(-4).map((before) => before.run + pitch(grown[before.way], plain[way])), run + 1);
    }
  }
  return placed;
}

/** A placed copy. */
export function placedShape(nest: Nest, placement: Placement): Shape {
  return movedShape(nest.turned, placement);
}
