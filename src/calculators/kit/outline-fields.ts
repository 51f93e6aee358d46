import * as z from 'zod/mini';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { type Outline, parametricOutline, prepare, readDrawing, type Shape } from '../../model/outline/index.ts';
import { choiceField, readField, shownWhen } from './fields.ts';
import { lengthField } from './stock-fields.ts';

/** A measure of some of our outlines, in mm; empty, it takes the outline's usual value. */
function measure(
  group: string,
  label: string,
  shapes: readonly string[],
  range: { minimum: number; maximum: number },
  examples: readonly string[],
  help?: string,
) {
  return z.optional(
    shownWhen(lengthField({ label, group, examples, ...(help ? { help } : {}) }, range), {
      field: 'shape',
      is: shapes,
    }),
  );
}

/** The fields that name an outline: one of ours with its measures, or a drawing. `shape` is required; the rest may be empty. */
export function outlineFields(group: string) {
  return {
    shape: choiceField({
      label: 'Outline',
      group,
      options: [
        { value: 'rounded-rectangle', label: 'Rounded rectangle' },
        { value: 'oval', label: 'Oval' },
        { value: 'half-moon', label: 'Half-moon' },
        { value: 'leaf', label: 'Leaf' },
        { value: 'paddle', label: 'Paddle' },
        { value: 'drawing', label: 'My own drawing' },
      ],
      examples: ['paddle'],
    }),
    length: measure(
      group,
      'Length',
      ['rounded-rectangle', 'oval', 'half-moon', 'leaf', 'paddle'],
      { minimum: 20, maximum: 3000 },
      ['400 mm', '16 in'],
      'Of a half-moon the straight edge, of a paddle the blade.',
    ),
    width: measure(group, 'Width', ['rounded-rectangle', 'oval', 'leaf', 'paddle'], { minimum: 20, maximum: 1500 }, [
      '250 mm',
      '10 in',
    ]),
    rise: measure(group, 'Rise', ['half-moon'], { minimum: 10, maximum: 1500 }, ['200 mm', '8 in']),
    cornerRadius: measure(
      group,
      'Corner radius',
      ['rounded-rectangle', 'half-moon', 'paddle'],
      { minimum: 0, maximum: 750 },
      ['25 mm', '1 in'],
    ),
    tipRadius: measure(group, 'Tip radius', ['leaf'], { minimum: 0, maximum: 500 }, ['12 mm', '1/2 in']),
    handleLength: measure(group, 'Handle length', ['paddle'], { minimum: 20, maximum: 800 }, ['130 mm', '5 in']),
    handleWidth: measure(group, 'Handle width', ['paddle'], { minimum: 10, maximum: 400 }, ['45 mm', '1 3/4 in']),
    shoulderRadius: measure(group, 'Shoulder radius', ['paddle'], { minimum: 0, maximum: 400 }, ['20 mm', '3/4 in']),
    endRadius: measure(group, 'Handle end radius', ['paddle'], { minimum: 0, maximum: 200 }, ['20 mm', '3/4 in']),
    holeDiameter: measure(group, 'Hole diameter', ['paddle'], { minimum: 0, maximum: 100 }, ['12 mm', '1/2 in']),
    holeFromEnd: measure(group, 'Hole from end', ['paddle'], { minimum: 5, maximum: 400 }, ['25 mm', '1 in']),
    drawing: z.optional(
      shownWhen(
        readField(z.string(), (text) => ({ ok: true, value: text }), {
          kind: 'drawing',
          label: 'Drawing',
          group,
          help: 'SVG path data in millimetres, or the text of an SVG file. Only its numbers are read.',
          examples: ['M0 0H320V120A30 30 0 0 1 290 150H60Q0 150 0 90Z', 'M0 0H10V5H0Z'],
        }),
        { field: 'shape', is: ['drawing'] },
      ),
    ),
    drawingWidth: measure(
      group,
      'Width of the finished outline',
      ['drawing'],
      { minimum: 5, maximum: 10_000 },
      ['320 mm', '12 1/2 in'],
      'From left to right in the drawing. Needed where the drawing has no size of its own; given, it overrules that size.',
    ),
  };
}

/** What the fields of an outline hold once read: its kind, its measures in mm, and the text of a drawing. */
export interface OutlineGiven {
  shape: z.output<ReturnType<typeof outlineFields>['shape']>;
  drawing?: string | undefined;
}

/** The outline that some inputs name, ready to be measured. */
export interface GivenOutline {
  shape: Shape;
  /** As path data in mm; written when it is asked for. */
  readonly outline: Outline;
  /** How a drawing was read; empty for an outline of ours. */
  notes: readonly string[];
}

const measures = Object.keys(outlineFields('')).filter((name) => name !== 'shape' && name !== 'drawing');

/** Draw or read the outline that some inputs name. Errors name the inputs. */
export function outlineOfFields(given: OutlineGiven): Outcome<GivenOutline> {
  const numbers = Object.entries(given).filter(
    (entry): entry is [string, number] => measures.includes(entry[0]) && typeof entry[1] === 'number',
  );
  const { drawingWidth, ...values } = Object.fromEntries(numbers) as Record<string, number>;
  if (given.shape === 'drawing') return fromDrawing(given.drawing, drawingWidth);
  const drawn = parametricOutline(given.shape)?.draw(values);
  if (!drawn) return refuse('shape', `There is no outline ${given.shape}`, 'Pick one of the list.');
  if (!drawn.ok) return drawn;
  const ready = prepare(drawn.value, undefined, 'shape');
  return ready.ok ? answer({ shape: ready.value, outline: drawn.value, notes: [] }) : ready;
}

function fromDrawing(drawing: string | undefined, width: number | undefined): Outcome<GivenOutline> {
  if (drawing === undefined) {
    return refuse('drawing', 'No drawing was given', 'Load an SVG file, or paste path data in millimetres.');
  }
  return readDrawing(drawing, {
    field: 'drawing',
    widthField: 'drawingWidth',
    ...(width === undefined ? {} : { width }),
    // The field asks for path data in millimetres; a file has a unit of its own, or none.
    ...(drawing.trim().startsWith('<') ? {} : { unit: 'mm' as const }),
  });
}
