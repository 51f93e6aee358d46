import {
  clip,
  closePath,
  endPath,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFOperator,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  StandardFonts,
  setDashPattern,
  setLineWidth,
  stroke,
} from 'pdf-lib';
import { lineStyle, type Sheet, type SheetLine, scaleBar, withoutScale } from './sheet.ts';
import { type PaperName, papers, type Tile, type Tiling, tilesFor } from './tiles.ts';
import type { Point } from './types.ts';

/** Points of a PDF in a millimetre. */
const pointsPerMm = 72 / 25.4;

/** What stands on every page to tell it from others. */
export interface SheetWords {
  /** Name and sizes of the template. */
  title?: string;
  /** Date of the printing, as it is to be written. */
  date?: string;
}

/** Half the arm of a registration mark, in mm. */
const arm = 3;

/**
 * A sheet as a PDF at true size on several pages: neighbours overlap, carry the same crosses where they do, and every page
 * has bars of 100 mm along and across to measure. The sheet's own bar and the room for it are left out. Print it at 100 %, without
 * fitting to the page.
 *
 * The library behind it is large: load this module only when a PDF is wanted.
 *
 * @returns the bytes of the file; the same sheet always gives the same bytes
 */
export async function sheetPdf(
  whole: Sheet,
  paper: PaperName,
  words: SheetWords = {},
): Promise<Uint8Array<ArrayBuffer>> {
  const sheet = withoutScale(whole);
  const tiling = tilesFor(sheet.width, sheet.height, paper);
  // Without dates of its own the file does not change from one printing to the next.
  const document = await PDFDocument.create({ updateMetadata: false });
  document.setTitle(words.title ? `Template at true size: ${words.title}` : 'Template at true size');
  const font = await document.embedFont(StandardFonts.Helvetica);
  const { width, height } = papers[paper];
  for (const tile of tiling.tiles) {
    const page = document.addPage([width * pointsPerMm, height * pointsPerMm]);
    drawTile(page, font, sheet, tiling, tile, words);
  }
  return new Uint8Array(await document.save());
}

function drawTile(page: PDFPage, font: PDFFont, sheet: Sheet, tiling: Tiling, tile: Tile, words: SheetWords): void {
  const { left, bottom, tileWidth, tileHeight } = tiling;
  const place = ({ x, y }: Point): [number, number] => [
    (x - tile.x + left) * pointsPerMm,
    (y - tile.y + bottom) * pointsPerMm,
  ];
  const corners = [
    { x: tile.x, y: tile.y },
    { x: tile.x + tileWidth, y: tile.y },
    { x: tile.x + tileWidth, y: tile.y + tileHeight },
    { x: tile.x, y: tile.y + tileHeight },
  ];
  page.pushOperators(pushGraphicsState(), ...path(corners, true, place), clip(), endPath());
  for (const line of sheet.lines) {
    if (isOn(line, tile, tiling))
      page.pushOperators(...styled(line.role), ...path(line.points, line.closed, place), stroke());
  }
  page.pushOperators(...styled('centre'));
  for (const { x, y } of tiling.marks) {
    for (const [dx, dy] of [
      [arm, 0],
      [0, arm],
    ] as const) {
      const ends = [
        { x: x - dx, y: y - dy },
        { x: x + dx, y: y + dy },
      ];
      page.pushOperators(...path(ends, false, place), stroke());
    }
  }
  page.pushOperators(popGraphicsState());
  for (const { text, at, size } of sheet.texts) {
    const [x, y] = place(at);
    const inside = at.x >= tile.x && at.x <= tile.x + tileWidth && at.y >= tile.y && at.y <= tile.y + tileHeight;
    if (inside) page.drawText(text, { x, y, size: size * pointsPerMm, font });
  }
  drawFoot(page, font, tiling, tile, words);
}

/** Around and below the drawing: the frame to cut along, the page's name, what the lines are, and bars along and across. */
function drawFoot(page: PDFPage, font: PDFFont, tiling: Tiling, tile: Tile, { title, date }: SheetWords): void {
  const { left, bottom, tileWidth, tileHeight, columns, rows } = tiling;
  const onPage = ({ x, y }: Point): [number, number] => [x * pointsPerMm, y * pointsPerMm];
  const frame = [
    { x: left, y: bottom },
    { x: left + tileWidth, y: bottom },
    { x: left + tileWidth, y: bottom + tileHeight },
    { x: left, y: bottom + tileHeight },
  ];
  page.pushOperators(pushGraphicsState(), ...styled('edge'), ...path(frame, true, onPage), stroke());
  const level = bottom - 7;
  const side = left - 4;
  const bar = (from: Point, way: 'x' | 'y') => {
    const to = (at: number, off: number): Point =>
      way === 'x' ? { x: from.x + at, y: from.y + off } : { x: from.x - off, y: from.y + at };
    page.pushOperators(...path([to(0, 0), to(scaleBar, 0)], false, onPage), stroke());
    for (const at of [0, scaleBar / 2, scaleBar])
      page.pushOperators(...path([to(at, 0), to(at, 3)], false, onPage), stroke());
  };
  page.pushOperators(...styled('scale'));
  bar({ x: left, y: level }, 'x');
  bar({ x: side, y: bottom }, 'y');
  page.pushOperators(popGraphicsState());
  const write = (text: string, x: number, y: number, mm: number) => {
    const [px, py] = onPage({ x, y });
    page.drawText(text, { x: px, y: py, size: mm * pointsPerMm, font });
  };
  write(
    '100 mm along and up the side. Print at 100 %, not fitted to the page, and measure both.',
    left,
    level - 4,
    2.6,
  );
  const name = `Row ${tile.row} of ${rows}, column ${tile.column} of ${columns}`;
  const right = (text: string, mm: number) =>
    left + tileWidth - font.widthOfTextAtSize(text, mm * pointsPerMm) / pointsPerMm;
  const large = 3;
  write(name, right(name, large), level, large);
  const legend = 'Full line: finished edge. Dashed: saw. Cut along the dotted frame, lay cross on cross.';
  write(legend, left + scaleBar + 2, level + 4, 1.9);
  const about = [title, date].filter(Boolean).join(', ');
  // Letters that the face has not are left out, since the title may hold the reader's own words.
  const plain = about.replace(/[^\x20-\x7e\u00a0-\u00ff]/g, '');
  if (plain) write(plain, right(plain, 2.2), level - 4, 2.2);
}

function styled(role: SheetLine['role']): PDFOperator[] {
  const { width, dashes } = lineStyle[role];
  return [
    setLineWidth(width * pointsPerMm),
    setDashPattern(
      dashes.map((dash) => dash * pointsPerMm),
      0,
    ),
  ];
}

function path(points: readonly Point[], closed: boolean, place: (point: Point) => [number, number]): PDFOperator[] {
  const steps = points.map((point, index) => (index === 0 ? moveTo(...place(point)) : lineTo(...place(point))));
  return closed ? [...steps, closePath()] : steps;
}

/** Whether any part of a line may fall on a tile: its box meets the tile's. */
function isOn({ points }: SheetLine, tile: Tile, { tileWidth, tileHeight }: Tiling): boolean {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return (
    most(xs) >= tile.x && least(xs) <= tile.x + tileWidth && most(ys) >= tile.y && least(ys) <= tile.y + tileHeight
  );
}
