import type { Drawing, DrawingShape, ResultDocument } from '../../model/evidence/index.ts';
import { axisBox, centroid, nestedSheet, offsetShape, type Sheet, templateSheet } from '../../model/outline/index.ts';
import { amount, defaultUnits, inReaderUnits } from '../../model/quantity/index.ts';
import { outlineOfFields } from '../kit/outline-fields.ts';
import { grainLine, nestDrawing, tuples } from './drawing.ts';
import { nestOf, templateOf, windowOf } from './find.ts';
import type { Found } from './found.ts';
import { type Inputs, usual } from './inputs.ts';

/** What is given to a machine, or printed in tiles: one outline, or the copies on their template blank. */
export type SheetKind = 'template' | 'nested';

/** The sheet of an outline or of its copies with true curves, for files, and its name; undefined where the inputs give none. */
export function sheetOf(given: Inputs, kind: SheetKind): { sheet: Sheet; title: string } | undefined {
  const outline = outlineOfFields(given);
  if (!outline.ok) return undefined;
  const ready = templateOf(given, outline.value.shape);
  if (!ready.ok) return undefined;
  const shape = ready.value;
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
  const window = windowOf(given);
  const { left, right, bottom, top } = axisBox(shape.outer);
  const size = `${amount(right - left, 'mm', 4)} × ${amount(top - bottom, 'mm', 4)}, face up`;
  // A tile has little room for a name: with a window its size stands for the shape, which is seen.
  if (window) return `${size}, window ${amount(window.length, 'mm', 3)} × ${amount(window.width, 'mm', 3)}`;
  return `${given.shape === 'drawing' ? 'own drawing' : given.shape.replaceAll('-', ' ')} ${size}`;
}

/** The template to print at true size. */
export function templateDocument(found: Found): ResultDocument {
  return {
    id: 'template',
    title: `Template: ${nameOf(found)}`,
    form: 'true-size',
    help: 'The full line is the finished edge that the bearing follows; outside the dashed line saws the saw.',
    folded: true,
    blocks: [{ kind: 'drawing', drawing: templateDrawing(found) }],
  };
}

/** Where each copy lies on its template blank, with the blank drawn; none where no copy fits. */
export function copiesDocument(found: Found): ResultDocument[] {
  const { nest, given, clearance } = found;
  const { sheetLength: length = 0, sheetWidth: width = 0, spacing = usual.spacing } = given;
  const [drawing] = nestDrawing(nest, length, width);
  if (!nest || !drawing) return [];
  const { left, right, bottom, top } = axisBox(nest.turned.outer);
  const [halfLength, halfWidth] = [(right - left) / 2, (top - bottom) / 2];
  const count = nest.placements.length;
  return [
    {
      id: 'copies',
      title: `Copies on a template blank: ${nameOf(found)}`,
      form: 'sheet',
      help: 'To lay the template out on the blank: tick each copy as it is marked.',
      folded: true,
      blocks: [
        {
          kind: 'text',
          text: `${count === 1 ? 'One copy' : `${count} copies`} on a blank of ${amount(length, 'mm', 4)} by ${amount(width, 'mm', 4)}, the grain along its length.`,
          large: true,
        },
        {
          kind: 'text',
          text: `Each copy is ${amount(2 * halfLength, 'mm', 4)} along the blank and ${amount(2 * halfWidth, 'mm', 4)} across, and ${amount(spacing, 'mm')} or more from the next and from the edge. Measured to its left end and its lower side, from the lower left corner of the blank.${
            clearance > 0 ? ` Saw ${amount(clearance, 'mm')} outside its line.` : ''
          }`,
        },
        { kind: 'drawing', drawing },
        {
          kind: 'table',
          ticks: ['copy'],
          table: {
            id: 'copies',
            title: 'Where each copy lies',
            columns: [
              { id: 'copy', label: 'Copy' },
              { id: 'along', label: 'From the left end', unit: 'mm', digits: 4 },
              { id: 'across', label: 'From the lower side', unit: 'mm', digits: 4 },
              { id: 'lies', label: 'It lies' },
            ],
            rows: nest.placements.map(({ dx, dy, degrees }, at) => [
              `${at + 1}`,
              dx - halfLength,
              dy - halfWidth,
              degrees === 0 ? 'as drawn' : 'turned by half',
            ]),
            basis: 'derived',
          },
        },
      ],
    },
  ];
}

function templateDrawing(found: Found): Drawing {
  const { template: shape, grain } = found;
  const rough = offsetShape(shape, found.clearance);
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
    }${found.window ? ', and the middle lines beside its window' : ''}.`,
    shapes: [
      ...(found.clearance > 0
        ? rough.map(({ points }): DrawingShape => ({ role: 'rough', closed: true, points: tuples(points) }))
        : []),
      ...loops,
      ...shape.holes.flatMap((hole) => cross(centroid(hole))),
      ...middleLines(found),
      { role: 'grain', closed: false, points: grainLine(found, grain) },
    ],
  };
}

/** How far a middle line stands off the window, and how far it runs on from there, mm: it must be left when the window is cut out. */
const besideWindow = [4, 16] as const;

/** The middle lines of the outline beside the window, where they stay on the template. */
function middleLines({ shape, window }: Found): DrawingShape[] {
  if (!window) return [];
  const { left, right, bottom, top } = axisBox(shape.outer);
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  const [off, end] = besideWindow;
  const line = (points: [[number, number], [number, number]]): DrawingShape => ({
    role: 'axis',
    closed: false,
    points,
  });
  return [-1, 1].flatMap((side) => {
    const [length, width] = [(side * window.length) / 2, (side * window.width) / 2];
    return [
      line([
        [x + length + side * off, y],
        [x + length + side * end, y],
      ]),
      line([
        [x, y + width + side * off],
        [x, y + width + side * end],
      ]),
    ];
  });
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
