import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { type Outline, parametricOutline, prepare, readDrawing, type Shape } from '../../model/outline/index.ts';
import type { Inputs } from './inputs.ts';

/** The outline that the inputs name, ready to be measured. */
export interface GivenOutline {
  shape: Shape;
  /** As path data in mm; written when it is asked for. */
  readonly outline: Outline;
  /** How a drawing was read; empty for an outline of ours. */
  notes: readonly string[];
}

/** Draw or read the outline of some inputs. Errors name the inputs. */
export function outlineOfInputs(given: Inputs): Outcome<GivenOutline> {
  if (given.shape === 'drawing') return fromDrawing(given);
  const { shape, drawing: _drawing, ...rest } = given;
  const values: Record<string, number> = {};
  for (const [name, value] of Object.entries(rest)) if (typeof value === 'number') values[name] = value;
  const drawn = parametricOutline(shape)?.draw(values);
  if (!drawn) return refuse('shape', `There is no outline ${shape}`, 'Pick one of the list.');
  if (!drawn.ok) return drawn;
  const ready = prepare(drawn.value, undefined, 'shape');
  return ready.ok ? answer({ shape: ready.value, outline: drawn.value, notes: [] }) : ready;
}

function fromDrawing({ drawing, drawingWidth }: Inputs): Outcome<GivenOutline> {
  if (drawing === undefined) {
    return refuse('drawing', 'No drawing was given', 'Load an SVG file, or paste path data in millimetres.');
  }
  const read = readDrawing(drawing, {
    field: 'drawing',
    widthField: 'drawingWidth',
    ...(drawingWidth === undefined ? {} : { width: drawingWidth }),
    // The field asks for path data in millimetres; a file has a unit of its own, or none.
    ...(drawing.trim().startsWith('<') ? {} : { unit: 'mm' as const }),
  });
  return read;
}
