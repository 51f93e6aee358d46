import { pictureOf } from '../../calculators/kit/drawing-marks.ts';
import type { Drawing } from '../../model/evidence/index.ts';

/** Scales that a rule is read off easily at: 1 to these. */
const scales = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100];

/** Room for a drawing in a step, which stands in one of two columns, mm. */
const room = { width: 80, height: 40 };

/** The largest scale, 1 to this, at which a drawing fits into a step. */
export function scaleBeside(drawing: Drawing): number {
  const [, , width, height] = pictureOf(drawing).box;
  return (
    scales.find((scale) => width / scale <= room.width && height / scale <= room.height) ??
    Math.ceil(Math.max(width / room.width, height / room.height) / 50) * 50
  );
}

/** Whether a drawing is in true proportion, so that its scale means something. */
export const isTrue = ({ exaggeration = 1 }: Drawing): boolean => exaggeration <= 1;
