import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { roundedRectangle } from './drawn.ts';
import { axisBox } from './measure.ts';
import { isInWood, outlineOf, prepare } from './shape.ts';
import type { Shape } from './types.ts';

/** Least wood between a window in a template and the template's edge, mm. Common practice: a narrower frame bends under a bearing. */
export const leastFrame = 20;

/**
 * The template of a piece with a window in its middle, over what stands proud of the face; the window's ends are round.
 *
 * @param shape the piece, which has no window itself
 * @param window length and width of the window, mm
 * @param field name of the input that an error names
 * @returns a refusal where less than the least frame would stay around the window
 */
export function withWindow(shape: Shape, window: { length: number; width: number }, field: string): Outcome<Shape> {
  const { length, width } = window;
  const box = axisBox(shape.outer);
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  const reach = slotAbout(middle, length + 2 * leastFrame, width + 2 * leastFrame);
  const around = reach.ok ? prepare({ outer: reach.value, holes: [] }, shape.tolerance, field) : reach;
  if (!around.ok) return around;
  const { x, y } = around.value.outer;
  if (!x.every((at, index) => isInWood(shape, at, y[index] as number))) {
    return refuse(
      field,
      `A window of ${Math.round(length)} × ${Math.round(width)} mm leaves less than ${leastFrame} mm of template around it`,
      'Give a smaller inlay or less room around it; or leave it empty and level the inlay before the edge is trimmed.',
    );
  }
  const slot = slotAbout(middle, length, width);
  if (!slot.ok) return slot;
  const outline = outlineOf(shape);
  return prepare({ outer: outline.outer, holes: [...outline.holes, slot.value] }, shape.tolerance, field);
}

/** Path data of a slot with round ends about a place. */
function slotAbout({ x, y }: { x: number; y: number }, length: number, width: number): Outcome<string> {
  const drawn = prepare({ outer: roundedRectangle(length, width, Math.min(length, width) / 2), holes: [] });
  if (!drawn.ok) return drawn;
  const box = axisBox(drawn.value.outer);
  return answer(outlineOf(drawn.value, { x: (box.left + box.right) / 2 - x, y: (box.bottom + box.top) / 2 - y }).outer);
}
