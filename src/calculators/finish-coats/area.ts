import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { coatedArea } from '../../model/finish/index.ts';
import { areaOfShape, perimeterOfLoop } from '../../model/outline/index.ts';
import { asTyped } from '../../model/quantity/index.ts';
import { outlineOfFields } from '../kit/outline-fields.ts';
import { type Inputs, usual } from './inputs.ts';

/** The area to be coated of one board, and how it was come by. */
export interface GivenArea {
  /** mm². */
  area: number;
  notes: readonly string[];
}

/** Area of one board from its outline and thickness, or as given. */
export function areaOf(given: Inputs): Outcome<GivenArea> {
  const { shape, area, thickness } = given;
  if (area !== undefined) return answer({ area, notes: [] });
  if (shape === undefined) {
    return refuse('shape', 'It was not said how large the board is', 'Give an outline, or the area that is coated.');
  }
  const outline = outlineOfFields({ ...given, shape });
  if (!outline.ok) return outline;
  const sides = given.sides ?? usual.sides;
  const edges = sides === 'all' || sides === 'face-and-edges';
  if (edges && thickness === undefined) {
    return refuse(
      'thickness',
      'The edges are coated, but no thickness was given',
      `Give it, such as ${asTyped({ metric: '20 mm', inch: '3/4 in' })}.`,
    );
  }
  const { shape: measured, notes } = outline.value;
  const perimeter = measured.loops.reduce((sum, loop) => sum + perimeterOfLoop(loop), 0);
  return answer({ area: coatedArea(areaOfShape(measured), perimeter, thickness ?? 0, sides), notes });
}
