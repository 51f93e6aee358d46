import { axisBox } from './measure.ts';
import { type Nest, placedShape } from './nest.ts';
import { offsetShape } from './offset.ts';
import { polygonPath, writePathData } from './path.ts';
import type { Loop, Point, Shape } from './types.ts';

/** What a line on a template sheet is; each has its own width and dash pattern. */
export type LineRole = 'outline' | 'rough' | 'centre' | 'grain' | 'scale' | 'edge';

/** A line of a sheet in mm, y upwards from the sheet's lower left corner. */
export interface SheetLine {
  role: LineRole;
  closed: boolean;
  points: readonly Point[];
  /** The same line as SVG path data with true curves, y down from the sheet's upper left corner. */
  data: string;
}

/** A line of text on a sheet. */
export interface SheetText {
  text: string;
  /** Left end of its base line, in mm, y upwards. */
  at: Point;
  /** Height of its letters, in mm. */
  size: number;
}

/** A template at true size: what the SVG and the PDF are made from. */
export interface Sheet {
  /** mm */
  width: number;
  height: number;
  lines: readonly SheetLine[];
  texts: readonly SheetText[];
}

/** Length of the bar to measure after printing, in mm. */
export const scaleBar = 100;

/** Width in mm and dash pattern in mm of each kind of line. */
export const lineStyle: Readonly<Record<LineRole, { width: number; dashes: readonly number[] }>> = {
  outline: { width: 0.25, dashes: [] },
  rough: { width: 0.2, dashes: [4, 2] },
  centre: { width: 0.15, dashes: [] },
  grain: { width: 0.2, dashes: [8, 2, 1, 2] },
  scale: { width: 0.2, dashes: [] },
  edge: { width: 0.15, dashes: [1, 2] },
};

/** Room around the drawing and height of the strip with the scale bar, in mm. */
const margin = 8;
const strip = 18;
/** Room around the drawing on pages, in mm: enough that no line lies on the cut. */
const paperMargin = 2;

/** What is drawn around an outline; the grain by its angle from the x axis, degrees. */
export interface SheetOptions {
  /** Clearance of the rough line in mm; none is drawn at 0. */
  clearance: number;
  grainDegrees: number;
}

/** A sheet with one outline: its line, the rough line, crosses at the holes' middles and the outline's, the grain, and a bar to measure. */
export function templateSheet(shape: Shape, options: SheetOptions): Sheet {
  const box = axisBox(shape.outer);
  const { clearance } = options;
  const width = Math.max(box.right - box.left + 2 * clearance, scaleBar) + 2 * margin;
  const height = box.top - box.bottom + 2 * clearance + 2 * margin + strip;
  const dx = (width - (box.right - box.left)) / 2 - box.left;
  const dy = margin + strip + clearance - box.bottom;
  const lines = shapeLines(shape, options, dx, dy, height);
  return { width, height, ...withScale(lines, height) };
}

/** A sheet with nested copies and its own edge, which is as long as the template blank; sizes and clearance in mm. */
export function nestedSheet(nest: Nest, size: { length: number; width: number }, clearance: number): Sheet {
  const height = size.width + 2 * margin + strip;
  const width = Math.max(size.length, scaleBar) + 2 * margin;
  const [dx, dy] = [margin, margin + strip];
  const corner = (x: number, y: number) => ({ x: x + dx, y: y + dy });
  const edge = [corner(0, 0), corner(size.length, 0), corner(size.length, size.width), corner(0, size.width)];
  const lines = [polyline('edge', true, edge, height)];
  for (const placement of nest.placements) {
    lines.push(...shapeLines(placedShape(nest, placement), { clearance, grainDegrees: 0 }, dx, dy, height));
  }
  return { width, height, ...withScale(lines, height) };
}

function shapeLines(shape: Shape, options: SheetOptions, dx: number, dy: number, height: number): SheetLine[] {
  const lines = shape.loops.map((loop) => loopLine(loop, dx, dy, height));
  if (options.clearance > 0) {
    for (const { points } of offsetShape(shape, options.clearance)) {
      lines.push(
        polyline(
          'rough',
          true,
          points.map(({ x, y }) => ({ x: x + dx, y: y + dy })),
          height,
        ),
      );
    }
  }
  for (const hole of shape.holes) lines.push(...cross(centroid(hole), 4, dx, dy, height));
  const box = axisBox(shape.outer);
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  lines.push(...cross(middle, 6, dx, dy, height));
  // The grain line runs through the middle, an eighth of the smaller side to either end.
  const reach = Math.min(box.right - box.left, box.top - box.bottom) / 4;
  const turn = (options.grainDegrees * Math.PI) / 180;
  const [c, s] = [Math.cos(turn) * reach, Math.sin(turn) * reach];
  const ends = [
    { x: middle.x - c + dx, y: middle.y - s + dy },
    { x: middle.x + c + dx, y: middle.y + s + dy },
  ];
  lines.push(polyline('grain', false, ends, height));
  return lines;
}

function loopLine(loop: Loop, dx: number, dy: number, height: number): SheetLine {
  const points = Array.from(loop.x, (x, i) => ({ x: x + dx, y: (loop.y[i] as number) + dy }));
  return { role: 'outline', closed: true, points, data: writePathData(loop.segments, dx, dy - height) };
}

function polyline(role: LineRole, closed: boolean, points: readonly Point[], height: number): SheetLine {
  const down = points.map(({ x, y }) => ({ x, y: y - height }));
  const data = polygonPath(down);
  return { role, closed, points, data: closed ? data : data.slice(0, -1) };
}

function cross(at: Point, arm: number, dx: number, dy: number, height: number): SheetLine[] {
  const [x, y] = [at.x + dx, at.y + dy];
  return [
    polyline(
      'centre',
      false,
      [
        { x: x - arm, y },
        { x: x + arm, y },
      ],
      height,
    ),
    polyline(
      'centre',
      false,
      [
        { x, y: y - arm },
        { x, y: y + arm },
      ],
      height,
    ),
  ];
}

/** The middle of the area that a closed polyline encloses. */
export function centroid(line: { x: Float64Array; y: Float64Array }): Point {
  const { x, y } = line;
  // Sums about the first point keep their digits far from the origin.
  const [ox, oy] = [x[0] as number, y[0] as number];
  let [twice, mx, my] = [0, 0, 0];
  for (let i = 0; i < x.length; i++) {
    const j = i + 1 === x.length ? 0 : i + 1;
    const [ax, ay, bx, by] = [
      (x[i] as number) - ox,
      (y[i] as number) - oy,
      (x[j] as number) - ox,
      (y[j] as number) - oy,
    ];
    const swept = ax * by - bx * ay;
    twice += swept;
    mx += (ax + bx) * swept;
    my += (ay + by) * swept;
  }
  return Math.abs(twice) < 1e-12 ? { x: ox, y: oy } : { x: ox + mx / (3 * twice), y: oy + my / (3 * twice) };
}

function withScale(lines: readonly SheetLine[], height: number): Pick<Sheet, 'lines' | 'texts'> {
  const left = margin;
  const base = margin;
  const bar = [
    polyline(
      'scale',
      false,
      [
        { x: left, y: base },
        { x: left + scaleBar, y: base },
      ],
      height,
    ),
    ...[0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100].map((at) =>
      polyline(
        'scale',
        false,
        [
          { x: left + at, y: base },
          { x: left + at, y: base + (at % 50 === 0 ? 4 : 2) },
        ],
        height,
      ),
    ),
  ];
  const texts = [{ text: '100 mm: measure this bar before you cut', at: { x: left, y: base + 6 }, size: 3 }];
  return { lines: [...lines, ...bar], texts };
}

/** The same sheet without its bar, its words and the room for them: pages that carry bars of their own need no second. */
export function withoutScale(sheet: Sheet): Sheet {
  const lines = sheet.lines.filter(({ role }) => role !== 'scale');
  const points = lines.flatMap(({ points: own }) => own);
  const least = (pick: (point: Point) => number) =>
    points.reduce((low, point) => Math.min(low, pick(point)), Number.POSITIVE_INFINITY) - paperMargin;
  const most = (pick: (point: Point) => number) =>
    points.reduce((high, point) => Math.max(high, pick(point)), Number.NEGATIVE_INFINITY) + paperMargin;
  const [left, bottom] = [least(({ x }) => x), least(({ y }) => y)];
  const moved = lines.map((line) => ({
    ...line,
    points: line.points.map(({ x, y }) => ({ x: x - left, y: y - bottom })),
  }));
  return { width: most(({ x }) => x) - left, height: most(({ y }) => y) - bottom, lines: moved, texts: [] };
}
