import { type PaperName, papers } from './tiles.ts';

/** A sheet of labels as it is sold: how many, how large, how far apart. All mm. From memory; common sizes of the trade in paper. */
export interface LabelGrid {
  id: string;
  paper: PaperName;
  columns: number;
  rows: number;
  width: number;
  height: number;
  /** White between two columns. */
  gutter: number;
}

const inch = 25.4;

/** Sheets that are sold everywhere, the smallest labels first. Rows touch; the grid stands in the middle of the sheet. */
export const labelGrids: readonly LabelGrid[] = [
  { id: 'a4-21', paper: 'a4', columns: 3, rows: 7, width: 63.5, height: 38.1, gutter: 2.5 },
  { id: 'a4-14', paper: 'a4', columns: 2, rows: 7, width: 99.1, height: 38.1, gutter: 2.5 },
  { id: 'a4-8', paper: 'a4', columns: 2, rows: 4, width: 99.1, height: 67.7, gutter: 2.5 },
  { id: 'letter-30', paper: 'letter', columns: 3, rows: 10, width: 2.625 * inch, height: inch, gutter: inch / 8 },
  { id: 'letter-10', paper: 'letter', columns: 2, rows: 5, width: 4 * inch, height: 2 * inch, gutter: (3 / 16) * inch },
  {
    id: 'letter-6',
    paper: 'letter',
    columns: 2,
    rows: 3,
    width: 4 * inch,
    height: (10 / 3) * inch,
    gutter: (3 / 16) * inch,
  },
];

/** A label of a sheet: its place from the upper left corner of the paper, mm. */
export interface LabelPlace {
  left: number;
  top: number;
}

/** How many labels a sheet holds. */
export const labelsOn = ({ columns, rows }: Pick<LabelGrid, 'columns' | 'rows'>): number => columns * rows;

/** How many are printed so that there are enough of them and no sheet is left in part: at least one sheet. */
export const wholeSheets = (needed: number, each: number): number => each * Math.max(1, Math.ceil(needed / each));

/** Where each label of a sheet lies, row by row. */
export function labelPlaces({ paper, columns, rows, width, height, gutter }: LabelGrid): LabelPlace[] {
  const page = papers[paper];
  const left = (page.width - columns * width - (columns - 1) * gutter) / 2;
  const top = (page.height - rows * height) / 2;
  return Array.from({ length: rows * columns }, (_, at) => ({
    left: left + (at % columns) * (width + gutter),
    top: top + Math.floor(at / columns) * height,
  }));
}

/**
 * Which label is printed where: `count` of them from the label numbered `start`, since a sheet is seldom used up at once.
 *
 * @param count labels wanted, a whole number
 * @param start the first that is still on its sheet, from 1; beyond the sheet's last it counts from the first again
 * @returns a list a sheet: the number of the label wanted, from 0, at each of its places, nothing where none is printed
 */
export function labelSheets(grid: LabelGrid, count: number, start = 1): (number | undefined)[][] {
  const each = labelsOn(grid);
  const before = (Math.max(1, start) - 1) % each;
  const sheets = Math.max(1, Math.ceil((before + count) / each));
  return Array.from({ length: sheets }, (_, sheet) =>
    Array.from({ length: each }, (__, at) => {
      const label = sheet * each + at - before;
      return label >= 0 && label < count ? label : undefined;
    }),
  );
}
