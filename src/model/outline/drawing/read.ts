import { answer, type FieldError, type Outcome, refuse } from '../../evidence/index.ts';
import { usualTolerance } from '../flatten.ts';
import { largestSize } from '../limits.ts';
import { axisBox } from '../measure.ts';
import { type Matrix, readPathData, type Subpath } from '../path.ts';
import { liesWithin, reachOf } from '../segments.ts';
import { outlineOf, shapeOf } from '../shape.ts';
import type { Outline, Segment, Shape } from '../types.ts';
import { chooseLoops } from './choose.ts';
import { type DrawnShape, readMarkup } from './markup.ts';
import { closeRuns } from './runs.ts';
import { compose, identity, isPhysical, viewBoxMap } from './transform.ts';
import { inUserUnits, type LengthUnit, millimetresIn, readLength } from './units.ts';

/** What the reader of a drawing says that the file does not. */
export interface DrawingOptions {
  /** Width of the finished outline in mm, along the drawing's x axis. It overrules every unit in the file. */
  width?: number;
  /** What one unit of path data, or of a drawing without physical units, is. */
  unit?: LengthUnit;
  /** Names of the inputs that errors name. */
  field?: string;
  widthField?: string;
}

/** A drawing as read: its outline in mm. */
export interface DrawingReading {
  /** What was read, to be measured, where it lay in the drawing. */
  shape: Shape;
  /** The same as path data, moved so that its left and upper edges touch the axes; written when it is asked for. */
  readonly outline: Outline;
  /** Box of the outline in the drawing's own axes, in mm. */
  width: number;
  height: number;
  holes: number;
  /** How the size was taken, what was mended and what was left out, one sentence each. */
  notes: readonly string[];
}

/** Largest drawing that is read, in characters. */
export const largestDrawing = 5 * 1024 * 1024;

/** A finished outline larger or smaller than this, in mm, has the wrong scale. */
const smallestWidth = 5;

/**
 * Read an outline from an SVG file or from pasted path data.
 *
 * The size comes from the width asked for, else from the file's physical width and height with its `viewBox`, else from
 * the unit given; without any of them it is asked for. Groups, transforms, inner drawings, curves, arcs and all basic
 * shapes are honoured; definitions, texts, pictures and hidden objects are not outlines. The largest closed path is the
 * outline and those inside it are holes. Only numbers leave the file: nothing in it is run, fetched or shown.
 *
 * @returns the outline in mm with notes, or what is wrong with the text; never throws
 */
export function readDrawing(text: string, options: DrawingOptions = {}): Outcome<DrawingReading> {
  const field = options.field ?? 'drawing';
  const widthField = options.widthField ?? 'drawingWidth';
  if (text.length > largestDrawing) {
    return refuse(
      field,
      `The drawing is ${(text.length / 1024 / 1024).toFixed(1)} MB long; at most 5 MB are read`,
      'Simplify it or save only the outline.',
    );
  }
  const plain = text.replace(/^\uFEFF/, '').trim();
  if (plain === '')
    return refuse(field, 'The drawing is empty', 'Choose an SVG file or paste path data that starts with M.');
  const sized = options.width;
  if (sized !== undefined && !(sized >= smallestWidth && sized <= largestSize)) {
    return refuse(
      widthField,
      `A width of ${sized} mm is outside ${smallestWidth} to ${largestSize} mm`,
      'Give the width of the finished outline.',
    );
  }
  const source = plain.startsWith('<') ? fromMarkup(plain, options, field) : fromPathData(plain, options);
  if (!source.ok) return source;
  const { shapes, notes } = source.value;
  let { root } = source.value;
  if (!root && sized === undefined) {
    return refuse(
      widthField,
      'The drawing does not say how large it is: it has no width in mm, cm or inches',
      'Give the width of the finished outline.',
    );
  }
  root ??= identity;
  if (sized !== undefined) {
    const first = outlineFrom(shapes, provisional(shapes, root), field, widthField);
    if (!first.ok) return first;
    const scale = sized / first.value.width;
    root = compose([scale, 0, 0, scale, 0, 0], first.value.root);
    notes.push(`Sized so that the outline is ${sized} mm wide.`);
  }
  const read = outlineFrom(shapes, root, field, widthField);
  if (!read.ok) return read;
  const { width, height, shape } = read.value;
  if (Math.max(width, height) < smallestWidth || Math.max(width, height) > largestSize) {
    return notABoard(width, height, widthField);
  }
  return answer({
    shape,
    get outline() {
      const box = axisBox(shape.outer);
      return outlineOf(shape, { x: box.left, y: box.top });
    },
    width,
    height,
    holes: shape.holes.length,
    notes: [...notes, ...read.value.notes],
  });
}

function notABoard(width: number, height: number, widthField: string): { ok: false; errors: FieldError[] } {
  return refuse(
    widthField,
    `The outline comes out at ${size(width)} × ${size(height)} mm, which is no board`,
    'Give the width of the finished outline.',
  );
}

function size(value: number): string {
  return value >= 10 ? value.toFixed(0) : value.toPrecision(2);
}

interface Source {
  shapes: readonly DrawnShape[];
  /** Map from the drawing's root axes to mm; absent where its size is not known. */
  root: Matrix | undefined;
  notes: string[];
}

function scaled(factor: number): Matrix {
  return [factor, 0, 0, factor, 0, 0];
}

function fromPathData(text: string, options: DrawingOptions): Outcome<Source> {
  const root = options.unit ? scaled(millimetresIn[options.unit]) : undefined;
  return answer({ shapes: [{ data: text, matrix: identity, line: 0 }], root, notes: [] });
}

function fromMarkup(text: string, options: DrawingOptions, field: string): Outcome<Source> {
  const markup = readMarkup(text, field);
  if (!markup.ok) return markup;
  const { width, height, viewBox, preserveAspectRatio, shapes } = markup.value;
  const notes = [...markup.value.notes];
  if (shapes.length === 0)
    return refuse(field, 'The drawing holds no shapes', 'Save the outline as a path in a plain SVG file.');
  const [wide, high] = [isPhysical(width), isPhysical(height)];
  if (!wide && !high) {
    const root = options.unit ? scaled(millimetresIn[options.unit]) : undefined;
    return answer({ shapes, root, notes });
  }
  if (readLength(width)?.unit === 'px' || readLength(height)?.unit === 'px') {
    notes.push('Its size is given in pixels, which SVG takes as 96 to the inch. Check the width.');
  }
  // Without a viewBox the units inside are pixels, whatever the width says.
  if (!viewBox) return answer({ shapes, root: scaled(millimetresIn.px), notes });
  const [, , boxWidth = 1, boxHeight = 1] = viewBox;
  const across = wide ? (inUserUnits(width) as number) * millimetresIn.px : undefined;
  const down = high ? (inUserUnits(height) as number) * millimetresIn.px : undefined;
  const map = viewBoxMap(
    viewBox,
    across ?? ((down as number) * boxWidth) / boxHeight,
    down ?? ((across as number) * boxHeight) / boxWidth,
    preserveAspectRatio,
  );
  return answer({ shapes, root: map, notes });
}

/** A scale at which the whole drawing is a few hundred millimetres wide, so that distances in mm mean something. */
function provisional(shapes: readonly DrawnShape[], root: Matrix): Matrix {
  const runs = shapes.flatMap((shape) =>
    readPathData(shape.data, compose(root, shape.matrix)).subpaths.map(({ segments }) => segments),
  );
  const { width, height } = largestExtent(runs);
  const most = Math.max(width, height);
  return most > 0 ? compose(scaled(300 / most), root) : root;
}

/** Width and height of the run that reaches furthest, in mm. */
function largestExtent(runs: readonly (readonly Segment[])[]): { width: number; height: number } {
  let best = { width: 0, height: 0 };
  for (const segments of runs) {
    const span = (dx: number, dy: number) =>
      segments.reduce((most, segment) => Math.max(most, reachOf(segment, dx, dy)), Number.NEGATIVE_INFINITY) +
      segments.reduce((most, segment) => Math.max(most, reachOf(segment, -dx, -dy)), Number.NEGATIVE_INFINITY);
    const extent = { width: span(1, 0), height: span(0, 1) };
    const reach = Math.max(extent.width, extent.height);
    if (Number.isFinite(reach) && reach > Math.max(best.width, best.height)) best = extent;
  }
  return best;
}

interface Found {
  shape: Shape;
  width: number;
  height: number;
  root: Matrix;
  notes: string[];
}

/** Read all shapes at a scale, and pick the outline among them. */
function outlineFrom(shapes: readonly DrawnShape[], root: Matrix, field: string, widthField: string): Outcome<Found> {
  const subpaths: Subpath[] = [];
  const notes: string[] = [];
  for (const shape of shapes) {
    const { subpaths: read, problem } = readPathData(shape.data, compose(root, shape.matrix));
    const bounded = read.filter(({ segments }) => segments.every((segment) => liesWithin(segment, 1e6)));
    for (const subpath of bounded) subpaths.push(subpath);
    if (bounded.length < read.length) notes.push('A path that reaches further than a kilometre was left out.');
    if (problem !== undefined)
      notes.push(
        `${shape.line > 0 ? `Line ${shape.line}: a` : 'A'} path breaks off: ${problem}. What stands before that was read.`,
      );
  }
  const runs = closeRuns(subpaths);
  notes.push(...runs.notes);
  if (runs.closed.length === 0) {
    const gap = runs.openGaps.length > 0 ? Math.min(...runs.openGaps) : undefined;
    const why = notes.find((note) => note.includes('breaks off'));
    return gap === undefined
      ? refuse(
          field,
          why ? why.replace(/ What stands.*$/, '').replace(/\.$/, '') : 'The drawing holds no outline',
          'Give a closed path that goes around the wood.',
        )
      : refuse(
          field,
          `No path in the drawing is closed; the smallest gap is ${size(gap)} mm wide`,
          'Close the path, or bring the ends of its pieces together, and try again.',
        );
  }
  const extent = largestExtent(runs.closed);
  if (Math.max(extent.width, extent.height) < smallestWidth / 2)
    return notABoard(extent.width, extent.height, widthField);
  if (runs.openGaps.length > 0)
    notes.push(
      `${runs.openGaps.length === 1 ? 'An open path was' : `${runs.openGaps.length} open paths were`} left out.`,
    );
  const chosen = chooseLoops(runs.closed, usualTolerance, field);
  if (!chosen.ok) return chosen;
  notes.push(...chosen.value.notes);
  const shape = shapeOf(chosen.value.outer, chosen.value.holes);
  const box = axisBox(shape.outer);
  return answer({
    shape,
    width: box.right - box.left,
    height: box.top - box.bottom,
    root,
    notes,
  });
}
