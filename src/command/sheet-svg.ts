import { type DrawingMarks, keyRoles, keyWords, pictureOf, type WordsMark } from '../calculators/kit/drawing-marks.ts';
import { tileMarks } from '../calculators/kit/tile-marks.ts';
import type { AddressCode, Drawing, DrawingShape } from '../model/evidence/index.ts';
import { eitherPaper as sheet } from '../model/outline/tiles.ts';
import type { ReaderUnits } from '../model/quantity/index.ts';

/** A text as it may stand in HTML or SVG: nothing in it is a mark any more, and no control character is left. */
export const escaped = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffe\uffff]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

/** How a kind of line is drawn: width on paper, mm; dashes, mm; how dark it is filled. */
interface LineStyle {
  width: number;
  dashes?: readonly number[];
  fill?: number;
  opacity?: number;
}

const usual: LineStyle = { width: 0.35 };
const lineStyles: Partial<Record<DrawingShape['role'], LineStyle>> = {
  ring: { width: 0.2, opacity: 0.45 },
  'outline-now': { width: 0.5 },
  'outline-dry': { width: 0.35, dashes: [1.8, 1] },
  'outline-wet': { width: 0.35, dashes: [0.5, 0.8] },
  inlay: { width: 0.35, fill: 0.15 },
  stave: { width: 0.25 },
  pith: { width: 0.25 },
  axis: { width: 0.25 },
  board: { width: 0.5 },
  blank: { width: 0.35, fill: 0.1 },
  defect: { width: 0.35, dashes: [0.5, 0.8] },
  offcut: { width: 0.25, dashes: [1.8, 1] },
  place: { width: 0.5 },
  uphill: { width: 1, dashes: [2.6, 1] },
  'uphill-steep': { width: 1.5, dashes: [0.8, 0.8] },
  'end-grain': { width: 1.3 },
  finished: { width: 0.25 },
  rough: { width: 0.25, dashes: [1.3, 1] },
  left: { width: 0.25, fill: 1 },
  grain: { width: 0.25, dashes: [3, 0.8, 0.5, 0.8] },
};

/** Attributes of a line; `zoom` is how many mm of the drawing make one on paper. */
function lineAttributes(role: DrawingShape['role'], zoom: number): string {
  const { width, dashes, fill, opacity } = lineStyles[role] ?? usual;
  const at = (value: number) => Number((value * zoom).toFixed(3));
  return [
    `stroke="#000" stroke-width="${at(width)}"`,
    fill === undefined ? 'fill="none"' : `fill="#000" fill-opacity="${fill}"`,
    ...(dashes ? [`stroke-dasharray="${dashes.map(at).join(' ')}"`] : []),
    ...(opacity === undefined ? [] : [`stroke-opacity="${opacity}"`]),
  ].join(' ');
}

const wordsSvg = ({ x, y, size, anchor, text }: WordsMark, face: string) =>
  `<text x="${x}" y="${y}" font-size="${size}" font-family="${face}" text-anchor="${anchor}" fill="#000">${escaped(text)}</text>`;

const shapesSvg = ({ lines, words }: DrawingMarks, zoom: number, face: string) =>
  [
    ...lines.map(({ role, path }) => `<path d="${path}" ${lineAttributes(role, zoom)}/>`),
    ...words.map((each) => wordsSvg(each, face)),
  ].join('');

/** An SVG whose width and height on paper are in mm, in the unit that its reader takes. */
export interface SvgSize {
  /** Written behind the number: `mm` for a browser. */
  unit: string;
  /** How many of it are a millimetre. */
  perMm: number;
  /** Face of its letters. */
  face: string;
}

const head = (
  [x, y, width, height]: readonly number[],
  [wide, high]: readonly [number, number],
  { unit, perMm }: SvgSize,
) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${width} ${height}" width="${(wide * perMm).toFixed(3)}${unit}" height="${(high * perMm).toFixed(3)}${unit}">`;

/** Size of a drawing on paper at 1 to `scale`, mm. */
export function drawnSize(drawing: Drawing, scale: number): [number, number] {
  const [, , width, height] = pictureOf(drawing).box;
  return [width / scale, height / scale];
}

/** A drawing at 1 to `scale`. */
export function drawingSvg(drawing: Drawing, scale: number, size: SvgSize): string {
  const { box, marks } = pictureOf(drawing);
  return `${head(box, drawnSize(drawing, scale), size)}${shapesSvg(marks, scale, size.face)}</svg>`;
}

/** What the lines of a drawing are, in words: `dashed` is of more use than a name alone, so each stands behind a piece of its line. */
export function keySvg(drawing: Drawing, size: SvgSize): { svg: string; text: string }[] {
  return keyRoles(drawing.shapes).map((role) => ({
    svg: `${head([0, 0, 8, 2], [8, 2], size)}<path d="M0 1h8" ${lineAttributes(role, 1)}/></svg>`,
    text: keyWords[role],
  }));
}

/** A drawing at true size, an SVG a sheet of paper; see `tileMarks`. */
export function tileSvgs(drawing: Drawing, title: string, units: ReaderUnits, size: SvgSize): string[] {
  return tileMarks(drawing, title, units).map((tile) => {
    const [cutX, cutY, cutWidth, cutHeight] = tile.cut;
    const fine = 'fill="none" stroke="#000"';
    return [
      head([0, 0, sheet.width, sheet.height], [sheet.width, sheet.height], size),
      `<svg x="${cutX}" y="${cutY}" width="${cutWidth}" height="${cutHeight}" viewBox="${tile.window.join(' ')}">`,
      shapesSvg(tile.drawing, 1, size.face),
      ...tile.crosses.map((path) => `<path d="${path}" ${fine} stroke-width="0.3"/>`),
      '</svg>',
      `<rect x="${cutX}" y="${cutY}" width="${cutWidth}" height="${cutHeight}" ${fine} stroke-width="0.15" stroke-dasharray="0.4 2"/>`,
      ...tile.bars.map((path) => `<path d="${path}" ${fine} stroke-width="0.3"/>`),
      ...tile.words.map((words) => wordsSvg(words, size.face)),
      ...tile.key.map(
        ({ role, path, ...words }) => `<path d="${path}" ${lineAttributes(role, 1)}/>${wordsSvg(words, size.face)}`,
      ),
      '</svg>',
    ].join('');
  });
}

/** An address as a code, `mm` wide with its white edge. */
export function codeSvg({ size: modules, path }: AddressCode, mm: number, size: SvgSize): string {
  return `${head([0, 0, modules, modules], [mm, mm], size)}<path d="${path}" fill="#000"/></svg>`;
}
