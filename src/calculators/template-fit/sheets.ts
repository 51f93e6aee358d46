import type { Drawing, DrawingShape, ResultDocument } from '../../model/evidence/index.ts';
import { axisBox, centroid, nestedSheet, type Ring, type Sheet, templateSheet } from '../../model/outline/index.ts';
import { amount, defaultUnits, inReaderUnits } from '../../model/quantity/index.ts';
import { outlineOfFields } from '../kit/outline-fields.ts';
import { grainLine, tuples } from './drawing.ts';
import { nestOf } from './find.ts';
import type { Found } from './found.ts';
import { type Inputs, usual } from './inputs.ts';

/** What is given to a machine, or printed in tiles: one outline, or the copies on their template blank. */
export type SheetKind = 'template' | 'nested';

/** The sheet of an outline or of its copies with true curves, for files, and its name; undefined where the inputs give none. */
export function sheetOf(given: Inputs, kind: SheetKind): { sheet: Sheet; title: string } | undefined {
  const outline = outlineOfFields(given);
  if (!outline.ok) return undefined;
  const { shape } = outline.value;
  // A file is in millimetres, whoever asks for it.
  const title = inReaderUnits(nameOf({ given, shape }), defaultUnits);
  const clearance = given.clearance ?? usual.clearance;
  if (kind === 'template') {
    return { sheet: templateSheet(shape, { clearance, grainDegrees: given.grain ?? usual.grain }), title };
  }
  const nest = nestOf(given, shape);
  const { sheetLength: length = 0, sheetWidth: width = 0 } = given;
  return nest && { sheet: nestedSheet(nest, { length, width }, clearance), title };
}

/** Name and sizes, so that a template found in a drawer can be told from another. */
function nameOf({ given, shape }: Pick<Found, 'given' | 'shape'>): string {
  const { left, right, bottom, top } = axisBox(shape.outer);
  const name = given.shape === 'drawing' ? 'own drawing' : given.shape.replaceAll('-', ' ');
  return `${name} ${amount(right - left, 'mm', 4)} × ${amount(top - bottom, 'mm', 4)}, face up`;
}

/**
 * The template to print at true size.
 *
 * @param rough the rough line, at the clearance outside the outline
 */
export function templateDocument(found: Found, rough: readonly Ring[]): ResultDocument {
  return {
    id: 'template',
    title: `Template: ${nameOf(found)}`,
    form: 'true-size',
    help: 'The full line is the finished edge that the bearing follows; outside the dashed line saws the saw.',
    folded: true,
    blocks: [{ kind: 'drawing', drawing: templateDrawing(found, rough) }],
  };
}

function templateDrawing(found: Found, rough: readonly Ring[]): Drawing {
  const { shape, grain } = found;
  const loops = shape.loops.map(
    ({ x, y }): DrawingShape => ({
      role: 'finished',
      closed: true,
      points: Array.from(x, (at, index) => [at, y[index] as number] as const),
    }),
  );
  return {
    id: 'template',
    title: 'Template',
    description: `The outline, ${found.clearance > 0 ? `the rough line ${amount(found.clearance, 'mm')} outside it, ` : ''}the grain${
      shape.holes.length > 0 ? ', and a cross at the middle of each hole' : ''
    }.`,
    shapes: [
      ...(found.clearance > 0
        ? rough.map(({ points }): DrawingShape => ({ role: 'rough', closed: true, points: tuples(points) }))
        : []),
      ...loops,
      ...shape.holes.flatMap((hole) => cross(centroid(hole))),
      { role: 'grain', closed: false, points: grainLine(found, grain) },
    ],
  };
}

/** Half the arms of a cross, mm. */
const arm = 4;

const cross = ({ x, y }: { x: number; y: number }): DrawingShape[] => [
  {
    role: 'axis',
    closed: false,
    points: [
      [x - arm, y],
      [x + arm, y],
    ],
  },
  {
    role: 'axis',
    closed: false,
    points: [
      [x, y - arm],
      [x, y + arm],
    ],
  },
];
