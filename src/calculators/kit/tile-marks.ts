import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import { eitherPart as part, eitherPaper as sheet, tilesForEither } from '../../model/outline/tiles.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import {
  type DrawingMarks,
  drawingInReaderUnits,
  drawingMarks,
  extentOf,
  keyRoles,
  keyWords,
  type WordsMark,
} from './drawing-marks.ts';
import { widthOf } from './type-fit.ts';

/** Length of the bars to measure, mm. */
export const barLength = 100;
/** Height of the letters at the foot, mm. */
const letters = 2.3;

/** A kind of line and its word, where they stand on the sheet. */
export interface KeyMark extends WordsMark {
  role: DrawingShape['role'];
  path: string;
}

/** One sheet of a drawing at true size, mm from its upper left corner: `eitherPaper` large. */
export interface TileMarks {
  column: number;
  row: number;
  /** The part of the drawing that it shows: x, y, width, height in the drawing, y downwards. It lies at `sheet.side`, 0. */
  window: readonly [number, number, number, number];
  drawing: DrawingMarks;
  /** Crosses where neighbours lap, in the drawing. */
  crosses: readonly string[];
  /** Frame to cut along: x, y, width, height on the sheet. */
  cut: readonly [number, number, number, number];
  /** Bars to measure, on the sheet. */
  bars: readonly string[];
  words: readonly WordsMark[];
  key: readonly KeyMark[];
}

/** Base lines of the three lines of words at the foot. */
const baseLine = (line: number) => part.height + letters + line * 2.65;

/** A line of words at the foot; one that is long for its room is set smaller and never cut. */
const footLine = (text: string, x: number, line: number): WordsMark => ({
  x,
  y: baseLine(line),
  size: Math.min(letters, Math.floor((100 * (sheet.width - x)) / widthOf(text)) / 100),
  anchor: 'start' as const,
  text,
});

/** What each kind of line is. */
function keyOf(shapes: readonly DrawingShape[], at: number): KeyMark[] {
  const y = baseLine(2);
  let x = at;
  return keyRoles(shapes).map((role) => {
    const from = x;
    const text = keyWords[role];
    x += 10 + widthOf(text) * letters;
    return {
      role,
      path: `M${from} ${y - letters / 3}h7`,
      x: from + 8,
      y,
      size: letters,
      anchor: 'start' as const,
      text,
    };
  });
}

const quarterTurn = (drawing: Drawing): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.map((shape) => ({ ...shape, points: shape.points.map(([x, y]) => [-y, x] as const) })),
});

/**
 * A drawing at true size, cut into sheets that overlap: a bar to measure along and another up the side of each, crosses where
 * neighbours lap, and at its foot which sheet it is, of what, and what its lines are.
 */
export function tileMarks(marked: Drawing, title: string, units: ReaderUnits): TileMarks[] {
  const drawing = drawingInReaderUnits(marked, units);
  const whole = extentOf(drawing.shapes);
  const { tiles, marks, columns, rows, overlap, turned } = tilesForEither(whole.width, whole.height);
  const shown = turned ? quarterTurn(drawing) : drawing;
  const { left, bottom } = turned ? extentOf(shown.shapes) : whole;
  const beside = [
    `${formatQuantity(barLength, 'mm', units)} along and up the side: print at 100 %, measure both.`,
    tiles.length > 1
      ? `Cut at the dotted line, lay cross on cross: neighbours share ${formatQuantity(overlap, 'mm', units)}.`
      : 'All on this one sheet.',
  ];
  // What stands below the bar needs less room than it: the rest is for the name.
  const next = sheet.side + Math.max(...beside.map(widthOf)) * letters + 4;
  return tiles.map(({ x: tileX, y: tileY, row, column }) => {
    // Its upper left corner in the picture, whose y runs downwards.
    const [x, y] = [left + tileX, -(bottom + tileY + part.height)];
    return {
      row,
      column,
      window: [x, y, part.width, part.height],
      drawing: drawingMarks(shown, 4, x + part.width),
      crosses: marks.map((mark) => `M${left + mark.x - 4} ${-(bottom + mark.y)}h8m-4 -4v8`),
      cut: [sheet.side, 0, part.width, part.height],
      bars: [
        `M${sheet.side} ${part.height + 3}v-2m0 1h${barLength}m0 -1v2m${-barLength / 2} -2v2`,
        `M${sheet.side - 3} ${part.height}h-2m1 0v${-barLength}m-1 0h2m-2 ${barLength / 2}h2`,
      ],
      words: [
        ...beside.map((text, at) => footLine(text, sheet.side, at + 1)),
        footLine(`Row ${row} of ${rows}, column ${column} of ${columns}`, sheet.side + barLength + 4, 0),
        footLine(title, next, 1),
      ],
      key: keyOf(drawing.shapes, next),
    };
  });
}
