import type { Point } from './types.ts';

/** Paper that tiles are printed on, in mm, upright. */
export const papers = {
  a4: { label: 'A4', width: 210, height: 297 },
  letter: { label: 'Letter', width: 215.9, height: 279.4 },
} as const;

/** The name of a size of paper. */
export type PaperName = keyof typeof papers;

/** How a sheet is cut into pages. */
export interface Tiling {
  paper: PaperName;
  columns: number;
  rows: number;
  /** Size of the part of a page that carries the drawing, in mm. */
  tileWidth: number;
  tileHeight: number;
  /** Width of the strip that two neighbours both show, in mm. */
  overlap: number;
  /** Place of the drawing's part on the page, from its lower left corner, in mm. */
  left: number;
  bottom: number;
  tiles: readonly Tile[];
  /** Places on the sheet, in mm, where crosses help to lay the pages over one another. */
  marks: readonly Point[];
}

/** One page of a sheet that is cut into pages. */
export interface Tile {
  /** From 1, left to right and top to bottom. */
  column: number;
  row: number;
  /** Lower left corner of its part of the sheet, in mm. */
  x: number;
  y: number;
}

/** Edge of a page that printers leave white, and the strip at the foot for the bar and the page's name, in mm. */
const border = 10;
const foot = 12;
const usualOverlap = 10;

/** Pages for a sheet of some size in mm: as few as cover it, the drawing in the middle of them. */
export function tilesFor(width: number, height: number, paper: PaperName, overlap: number = usualOverlap): Tiling {
  const page = papers[paper];
  const part = { width: page.width - 2 * border, height: page.height - 2 * border - foot };
  return { paper, ...partsOf(width, height, part, overlap), left: border, bottom: border + foot };
}

/**
 * A sheet cut into parts of a size, as few as cover it, the drawing in the middle of them.
 *
 * @param width of the sheet, mm
 * @param height of the sheet, mm
 * @param part largest size that a page shows of it, mm
 * @param overlap strip that two neighbours both show, mm
 */
export function partsOf(
  width: number,
  height: number,
  { width: tileWidth, height: tileHeight }: Readonly<{ width: number; height: number }>,
  overlap: number = usualOverlap,
): Omit<Tiling, 'paper' | 'left' | 'bottom'> {
  const count = (whole: number, tile: number) => Math.max(1, Math.ceil((whole - overlap) / (tile - overlap) - 1e-9));
  const columns = count(width, tileWidth);
  const rows = count(height, tileHeight);
  const [stepX, stepY] = [tileWidth - overlap, tileHeight - overlap];
  const startX = (width - (columns * stepX + overlap)) / 2;
  const startY = (height - (rows * stepY + overlap)) / 2;
  const tiles: Tile[] = [];
  for (let row = 1; row <= rows; row++) {
    for (let column = 1; column <= columns; column++) {
      tiles.push({ column, row, x: startX + (column - 1) * stepX, y: startY + (rows - row) * stepY });
    }
  }
  // In the middle of every strip that is shown twice, two marks to a page's side.
  const marks: Point[] = [];
  const seams = (from: number, step: number, parts: number) =>
    Array.from({ length: parts - 1 }, (_, k) => from + (k + 1) * step + overlap / 2);
  for (const x of seams(startX, stepX, columns)) {
    for (let row = 0; row < rows; row++) {
      for (const share of [0.2, 0.8]) marks.push({ x, y: startY + row * stepY + share * tileHeight });
    }
  }
  for (const y of seams(startY, stepY, rows)) {
    for (let column = 0; column < columns; column++) {
      for (const share of [0.2, 0.8]) marks.push({ x: startX + column * stepX + share * tileWidth, y });
    }
  }
  return { columns, rows, tileWidth, tileHeight, overlap, tiles, marks };
}

/**
 * What a sheet of A4 and one of Letter both leave within the margins of a page, mm, with the strip up its left side for one bar to measure
 * and the strip at its foot for the other and for the sheet's name.
 */
export const eitherPaper = { width: 180, height: 244, side: 6, foot: 8 } as const;

/** The part of such a sheet that shows a drawing, mm. */
export const eitherPart = {
  width: eitherPaper.width - eitherPaper.side,
  height: eitherPaper.height - eitherPaper.foot,
};

/**
 * Sheets for a drawing that are the same on A4 and Letter: as few as cover it, the drawing turned by a quarter where that takes fewer.
 *
 * @param width of the drawing, mm
 * @param height of the drawing, mm
 */
export function tilesForEither(width: number, height: number): ReturnType<typeof partsOf> & { turned: boolean } {
  const upright = partsOf(width, height, eitherPart);
  const across = partsOf(height, width, eitherPart);
  const turned = across.tiles.length < upright.tiles.length;
  return { ...(turned ? across : upright), turned };
}
