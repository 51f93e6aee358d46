import { type DrawingRoom, scaleFor } from '../../calculators/kit/drawing-scale.ts';
import type { Drawing } from '../../model/evidence/index.ts';

/** Room for a drawing in a step, which stands in one of two columns, mm. */
const room: DrawingRoom = { width: 80, height: 40 };

/** The largest scale, 1 to this, at which a drawing fits into a step. */
export const scaleBeside = (drawing: Drawing): number => scaleFor(drawing, room);

/** Whether a drawing is in true proportion, so that its scale means something. */
export const isTrue = ({ exaggeration = 1 }: Drawing): boolean => exaggeration <= 1;
