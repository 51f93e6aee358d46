import svgpath from 'svgpath';
import type { ArcSegment, CubicSegment, Segment } from './types.ts';

/** A run of segments of one subpath, y upwards, as drawn; `closed` where the data closes it. */
export interface Subpath {
  segments: Segment[];
  closed: boolean;
  startX: number;
  startY: number;
}

/** What path data holds. */
export interface PathReading {
  subpaths: Subpath[];
  /** What the parser could not read; what stood before it was read. */
  problem?: string;
}

/** Six numbers (a, b, c, d, e, f) of an affine map, as SVG writes them. */
export type Matrix = readonly [number, number, number, number, number, number];

/** Segments shorter than this, in mm, are points and are left out. */
const shortest = 1e-7;

/**
 * Read SVG path data into segments whose y points up.
 *
 * @param data path data, any commands
 * @param matrix map from the data's own axes (y down) to mm (y down); none where the data is in mm
 */
export function readPathData(data: string, matrix?: Matrix): PathReading {
  const parsed = svgpath(brokenUp(data)) as ReturnType<typeof svgpath> & { err: string };
  const problem = parsed.err ? parsed.err.replace(/^SvgPath: /, '') : undefined;
  const subpaths: Subpath[] = [];
  let current: Subpath | undefined;
  if (matrix) parsed.matrix([...matrix]);
  parsed
    .scale(1, -1)
    .abs()
    .unshort()
    .iterate((step, _index, x, y) => {
      switch (step[0]) {
        case 'M':
          current = { segments: [], closed: false, startX: step[1], startY: step[2] };
          subpaths.push(current);
          return;
        case 'Z':
        case 'z': {
          if (!current) return;
          addLine(current, x, y, current.startX, current.startY);
          current.closed = true;
          // A command after Z starts a new subpath at the same place.
          current = { segments: [], closed: false, startX: current.startX, startY: current.startY };
          subpaths.push(current);
          return;
        }
        case 'L':
          if (current) addLine(current, x, y, step[1], step[2]);
          return;
        case 'H':
          if (current) addLine(current, x, y, step[1], y);
          return;
        case 'V':
          if (current) addLine(current, x, y, x, step[1]);
          return;
        case 'C':
          if (current) addCubic(current, cubic(x, y, step[1], step[2], step[3], step[4], step[5], step[6]));
          return;
        case 'Q': {
          const [, qx, qy, ex, ey] = step;
          const raise = (end: number, control: number) => end + (2 / 3) * (control - end);
          if (current) addCubic(current, cubic(x, y, raise(x, qx), raise(y, qy), raise(ex, qx), raise(ey, qy), ex, ey));
          return;
        }
        case 'A': {
          if (!current) return;
          const [, rx, ry, turn, large, sweep, ex, ey] = step;
          // After a reflection the parser's library hands the flags over as text.
          const arc = arcThrough(x, y, rx, ry, turn, Number(large) !== 0, Number(sweep) !== 0, ex, ey);
          if (arc) current.segments.push(arc);
          else addLine(current, x, y, ex, ey);
          return;
        }
      }
    });
  const drawn = subpaths.filter((subpath) => subpath.segments.length > 0);
  return problem === undefined ? { subpaths: drawn } : { subpaths: drawn, problem };
}

/** Numbers that each command takes at a time, without arcs. */
const numbersOf: Readonly<Record<string, number>> = { m: 2, l: 2, t: 2, h: 1, v: 1, q: 4, s: 4, c: 6 };

/** Runs of numbers shorter than this, in characters, are left as they are. */
const longRun = 2000;

/**
 * The same path data with the command letter repeated in long runs of numbers after one command, which take the parsing
 * library a time that grows with the square of their length.
 */
function brokenUp(data: string): string {
  if (data.length < longRun) return data;
  return data.replace(/([mlhvcsqt])([^a-df-z]+)/gi, (whole, letter: string, list: string) => {
    if (list.length < longRun) return whole;
    const numbers: string[] = [];
    const rest = list.replace(/[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi, (number) => {
      numbers.push(number);
      return ' ';
    });
    // Anything else in the list is a mistake, which the parser names.
    if (!/^[\s,]*$/.test(rest)) return whole;
    const each = numbersOf[letter.toLowerCase()] as number;
    const parts: string[] = [];
    for (let at = 0; at < numbers.length; at += 32 * each) {
      const command = at === 0 ? letter : letter === 'm' ? 'l' : letter === 'M' ? 'L' : letter;
      parts.push(command, numbers.slice(at, at + 32 * each).join(' '));
    }
    return parts.join('');
  });
}

function addLine(subpath: Subpath, x0: number, y0: number, x1: number, y1: number): void {
  if (Math.hypot(x1 - x0, y1 - y0) > shortest) subpath.segments.push({ kind: 'line', x0, y0, x1, y1 });
}

function cubic(...n: [number, number, number, number, number, number, number, number]): CubicSegment {
  const [x0, y0, ax, ay, bx, by, x1, y1] = n;
  return { kind: 'cubic', x0, y0, ax, ay, bx, by, x1, y1 };
}

function addCubic(subpath: Subpath, curve: CubicSegment): void {
  const { x0, y0, ax, ay, bx, by, x1, y1 } = curve;
  const span = Math.hypot(ax - x0, ay - y0) + Math.hypot(bx - ax, by - ay) + Math.hypot(x1 - bx, y1 - by);
  if (span > shortest) subpath.segments.push(curve);
}

/**
 * An arc by its end points, as SVG gives it, turned into its centre form (SVG 2, appendix "Elliptical arc implementation
 * notes"). Radii too small to span the ends are enlarged, as that appendix says.
 *
 * @returns undefined where the arc is a straight line or a point
 */
function arcThrough(
  x0: number,
  y0: number,
  rxGiven: number,
  ryGiven: number,
  turnDegrees: number,
  large: boolean,
  counterClockwise: boolean,
  x1: number,
  y1: number,
): ArcSegment | undefined {
  let rx = Math.abs(rxGiven);
  let ry = Math.abs(ryGiven);
  if (rx < shortest || ry < shortest || Math.hypot(x1 - x0, y1 - y0) < shortest) return undefined;
  const turn = (turnDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const hx = (x0 - x1) / 2;
  const hy = (y0 - y1) / 2;
  const u = cos * hx + sin * hy;
  const v = -sin * hx + cos * hy;
  const stretch = (u * u) / (rx * rx) + (v * v) / (ry * ry);
  if (stretch > 1) {
    rx *= Math.sqrt(stretch);
    ry *= Math.sqrt(stretch);
  }
  const over = Math.max(0, 1 / Math.min(1, stretch) - 1);
  const root = Math.sqrt(over) * (large === counterClockwise ? -1 : 1);
  const cu = (root * rx * v) / ry;
  const cv = (-root * ry * u) / rx;
  const from = Math.atan2((v - cv) / ry, (u - cu) / rx);
  const to = Math.atan2((-v - cv) / ry, (-u - cu) / rx);
  let sweep = to - from;
  if (counterClockwise && sweep < 0) sweep += 2 * Math.PI;
  if (!counterClockwise && sweep > 0) sweep -= 2 * Math.PI;
  return {
    kind: 'arc',
    x0,
    y0,
    x1,
    y1,
    cx: cos * cu - sin * cv + (x0 + x1) / 2,
    cy: sin * cu + cos * cv + (y0 + y1) / 2,
    rx,
    ry,
    cos,
    sin,
    from,
    sweep,
  };
}

/** Decimals of a millimetre that path data is written with. */
const decimals = 4;

/** A number as path data writes it: at most so many decimals, no exponent, no `-0`. */
export function pathNumber(value: number, places: number = decimals): string {
  const rounded = Number(value.toFixed(places));
  return String(rounded === 0 ? 0 : rounded);
}

/**
 * Write a closed run of segments as SVG path data, y down, in mm.
 *
 * @param dx added to every x, in mm
 * @param dy added to every y (upwards), in mm
 */
export function writePathData(segments: readonly Segment[], dx = 0, dy = 0): string {
  const at = (x: number, y: number) => `${pathNumber(x + dx)} ${pathNumber(-(y + dy))}`;
  const first = segments[0];
  if (!first) return '';
  const parts = [`M${at(first.x0, first.y0)}`];
  segments.forEach((segment, index) => {
    if (segment.kind === 'line') {
      // The last straight side is drawn by Z.
      if (index < segments.length - 1) parts.push(`L${at(segment.x1, segment.y1)}`);
    } else if (segment.kind === 'cubic') {
      parts.push(`C${at(segment.ax, segment.ay)} ${at(segment.bx, segment.by)} ${at(segment.x1, segment.y1)}`);
    } else {
      const turn = pathNumber((-Math.atan2(segment.sin, segment.cos) * 180) / Math.PI);
      const large = Math.abs(segment.sweep) > Math.PI ? 1 : 0;
      const clockwiseOnPaper = segment.sweep < 0 ? 1 : 0;
      parts.push(
        `A${pathNumber(segment.rx)} ${pathNumber(segment.ry)} ${turn} ${large} ${clockwiseOnPaper} ${at(segment.x1, segment.y1)}`,
      );
    }
  });
  return `${parts.join('')}Z`;
}

/** The polygon through some points (y up) as path data, y down. */
export function polygonPath(points: readonly { x: number; y: number }[], places = 3): string {
  const steps = points.map(
    ({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${pathNumber(x, places)} ${pathNumber(-y, places)}`,
  );
  return `${steps.join('')}Z`;
}
