import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';

/** What each kind of line is, in a word or two; '' where it needs none. */
export const keyWords: Record<DrawingShape['role'], string> = {
  'outline-now': 'as it is now',
  'outline-dry': 'at its driest',
  'outline-wet': 'at its wettest',
  ring: 'growth rings',
  pith: 'pith',
  stave: 'stave',
  inlay: 'inlay',
  axis: '',
  board: 'board',
  blank: 'blank',
  defect: 'cut out',
  offcut: 'left over',
  place: '',
  edge: 'clean: along the grain or downhill',
  uphill: 'uphill',
  'uphill-steep': 'steeply uphill',
  'end-grain': 'end grain',
  finished: 'finished edge',
  rough: 'rough line: saw',
  left: 'left by the bit',
  grain: 'grain',
};

/** The kinds of line of a drawing that need a word. */
export const keyRoles = (shapes: readonly DrawingShape[]): DrawingShape['role'][] =>
  [...new Set(shapes.map(({ role }) => role))].filter((role) => keyWords[role]);

/** Letters are about so wide as a share of their height. */
const letter = 0.55;

/** Words of a picture, whose y runs downwards. */
export interface WordsMark {
  x: number;
  y: number;
  size: number;
  anchor: 'start' | 'middle' | 'end';
  text: string;
}

/** A line of a picture, as the path of an SVG. */
export interface LineMark {
  role: DrawingShape['role'];
  path: string;
}

/** A drawing as lines and words, in mm, y downwards: what the screen, the printer and a file draw alike. */
export interface DrawingMarks {
  lines: readonly LineMark[];
  words: readonly WordsMark[];
}

const round = (value: number) => Math.round(value * 100) / 100;

function pathOf(shape: DrawingShape): string {
  const steps = shape.points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(-y)}`);
  return `${steps.join('')}${shape.closed ? 'Z' : ''}`;
}

/** Roles whose label is written into the drawing. */
const written: ReadonlySet<DrawingShape['role']> = new Set(['board', 'blank', 'defect', 'offcut', 'place']);

/**
 * The label of a shape in its middle; a place carries it beside itself, on the side where there is room before the edge of the picture, a
 * board at its upper edge.
 */
function wordsOf(shape: DrawingShape, size: number, edge: number): WordsMark[] {
  if (!shape.label || !written.has(shape.role)) return [];
  const xs = shape.points.map(([x]) => x);
  const ys = shape.points.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)];
  const wide = shape.label.length * size * letter;
  const fits = right + size * 0.4 + wide <= edge;
  const place =
    shape.role === 'board'
      ? { x: left, y: -top - size * 0.4, anchor: 'start' as const }
      : shape.role === 'place'
        ? {
            x: fits ? right + size * 0.4 : left - size * 0.4,
            y: -top - size * 0.4,
            anchor: fits ? ('start' as const) : ('end' as const),
          }
        : { x: (left + right) / 2, y: -(bottom + top) / 2 + size * 0.35, anchor: 'middle' as const };
  // Words that would not fit stay in the table.
  if (place.anchor === 'middle' && wide > right - left) return [];
  return [{ x: round(place.x), y: round(place.y), size: round(size), anchor: place.anchor, text: shape.label }];
}

/**
 * The shapes of a drawing and the words in them.
 *
 * @param size height of the letters, mm of the drawing
 * @param edge x of the right edge of the picture, mm
 */
export function drawingMarks(drawing: Drawing, size: number, edge: number): DrawingMarks {
  return {
    lines: drawing.shapes.map((shape) => ({ role: shape.role, path: pathOf(shape) })),
    words: drawing.shapes.flatMap((shape) => wordsOf(shape, size, edge)),
  };
}

/** Where the shapes of a drawing lie, mm. */
export interface Extent {
  left: number;
  bottom: number;
  width: number;
  height: number;
}

/** Where some shapes lie. */
export function extentOf(shapes: readonly DrawingShape[]): Extent {
  const points = shapes.flatMap((shape) => shape.points);
  const least = (at: 0 | 1) => points.reduce((low, point) => Math.min(low, point[at]), Number.POSITIVE_INFINITY);
  const most = (at: 0 | 1) => points.reduce((high, point) => Math.max(high, point[at]), Number.NEGATIVE_INFINITY);
  const [left, bottom] = [least(0), least(1)];
  return { left, bottom, width: most(0) - left, height: most(1) - bottom };
}

/** A drawing within a picture: what is cut off, how large the letters are. */
export interface Picture {
  /** x, y, width and height of the picture, mm, y downwards. */
  box: readonly [number, number, number, number];
  marks: DrawingMarks;
}

/** A drawing as a picture with a little room around it; growth rings run out of it. */
export function pictureOf(drawing: Drawing): Picture {
  const { left, bottom, width, height } = extentOf(drawing.shapes.filter(({ role }) => role !== 'ring'));
  const pad = Math.max(width, height) * 0.04;
  return {
    box: [left - pad, -(bottom + height) - pad, width + 2 * pad, height + 2 * pad],
    marks: drawingMarks(drawing, Math.max(width, height) * 0.028, left + width + pad),
  };
}

/** A drawing with its title, its description and the words in it in the reader's units. Whoever draws one calls this first: points hold no words. */
export function drawingInReaderUnits(drawing: Drawing, units: ReaderUnits): Drawing {
  return {
    ...drawing,
    title: inReaderUnits(drawing.title, units),
    description: inReaderUnits(drawing.description, units),
    shapes: drawing.shapes.map((shape) =>
      shape.label === undefined ? shape : { ...shape, label: inReaderUnits(shape.label, units) },
    ),
  };
}

/** What is said below a drawing: what it shows and how differences are drawn; to scale on paper, where room is short, how differences are drawn and the scale. */
export function drawingWords({ description, exaggeration }: Drawing, scale?: number): string {
  return [
    ...(scale === undefined ? [description] : []),
    ...(exaggeration && exaggeration > 1 ? [`Differences are drawn ${exaggeration} times as large.`] : []),
    ...(scale === undefined ? [] : [scale === 1 ? 'Drawn at true size.' : `Drawn at 1 : ${scale}.`]),
  ].join(' ');
}
