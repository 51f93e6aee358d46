import type { Drawing } from '../../model/evidence/index.ts';
import { pictureOf } from './drawing-marks.ts';

/** Scales that a rule is read off easily at: 1 to these. */
const scales = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100];

/** Room for a drawing on paper, mm. */
export interface DrawingRoom {
  width: number;
  height: number;
}

/** Room on a sheet that holds more than the drawing: within the margins of A4 and Letter, and at most half of their height. */
export const sheetRoom: DrawingRoom = { width: 178, height: 120 };

/** The largest scale, 1 to this, at which a drawing fits into some room on paper. */
export function scaleFor(drawing: Drawing, room: DrawingRoom): number {
  const [, , width, height] = pictureOf(drawing).box;
  return (
    scales.find((scale) => width / scale <= room.width && height / scale <= room.height) ??
    Math.ceil(Math.max(width / room.width, height / room.height) / 50) * 50
  );
}
