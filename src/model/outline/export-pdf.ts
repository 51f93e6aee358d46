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
import { lineStyle, type Sheet, type SheetLine, scaleBar } from './sheet.ts';
import { type PaperName, papers, type Tile, type Tiling, tilesFor } from './tiles.ts';
import type { Point } from './types.ts';

/** Points of a PDF in a millimetre. */
const pointsPerMm = 72 / 25.4;

/** Half the arm of a registration mark, in mm. */
const arm = 3;

/**
 * A sheet as a PDF at true size on several pages: neighbours overlap, carry the same crosses where they do, and every page
 * has a bar of 100 mm to measure. Print it at 100 %, without fitting to the page.
 *
 * The library behind it is large: load this module only when a PDF is wanted.
 *
 * @returns the bytes of the file; the same sheet always gives the same bytes
 */
export async function sheetPdf(sheet: Sheet, paper: PaperName): Promise<Uint8Array<ArrayBuffer>> {
  const tiling = tilesFor(sheet.width, sheet.height, paper);
  // Without dates of its own the file does not change from one printing to the next.
  const document = await PDFDocument.create({ updateMetadata: false });
  document.setTitle('Template at true size');
  const font = await document.embedFont(StandardFonts.Helvetica);
  const { width, height } = papers[paper];
  for (const tile of tiling.tiles) {
    const page = document.addPage([width * pointsPerMm, height * pointsPerMm]);
    drawTile(page, font, sheet, tiling, tile);
  }
  return new Uint8Array(await document.save());
}

function drawTile(page: PDFPage, font: PDFFont, sheet: Sheet, tiling: Tiling, tile: Tile): void {
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
  drawFoot(page, font, tiling, tile);
}

/** Below the drawing: a frame's lower line, the page's name, and the bar. */
function drawFoot(page: PDFPage, font: PDFFont, tiling: Tiling, tile: Tile): void {
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
  page.pushOperators(
    ...styled('scale'),
    ...path(
      [
        { x: left, y: level },
        { x: left + scaleBar, y: level },
      ],
      false,
      onPage,
    ),
    stroke(),
  );
  for (const at of [0, scaleBar / 2, scaleBar]) {
    page.pushOperators(
      ...path(
        [
          { x: left + at, y: level },
          { x: left + at, y: level + 3 },
        ],
        false,
        onPage,
      ),
      stroke(),
    );
  }
  page.pushOperators(popGraphicsState());
  const size = 3 * pointsPerMm;
  const [x, y] = onPage({ x: left, y: level - 4 });
  page.drawText('100 mm. Print at 100 %, not fitted to the page, and measure.', { x, y, size, font });
  const name = `Row ${tile.row} of ${rows}, column ${tile.column} of ${columns}`;
  const wide = font.widthOfTextAtSize(name, size);
  page.drawText(name, { x: (left + tileWidth) * pointsPerMm - wide, y: level * pointsPerMm, size, font });
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
