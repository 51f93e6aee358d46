import * as z from 'zod/mini';
import { answer, refuse } from '../../model/evidence/index.ts';
import {
  flattenPlan,
  type MachineLimits,
  type MeasuredPoint,
  machineDefaults,
  routerDepthOfCut,
} from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, shownWhen } from '../kit/fields.ts';
import { lengthField } from '../kit/stock-fields.ts';
import { depthOf, flattenCautions, limitsOf, ways } from './cautions.ts';
import { gridField, type HeightGrid, offTheBoard, type PlacedHeight, placesField } from './fields.ts';
import { evidenceOf, figuresOf, placesTable, planDrawing, verdictOf } from './result.ts';

const machines = 'Your machines';

const machineField = (id: keyof MachineLimits, examples: readonly string[]) => {
  const setting = machineDefaults.find((one) => one.id === id);
  const field = lengthField(
    { label: setting?.label ?? id, help: setting?.why ?? '', examples, group: machines },
    { minimum: 0, maximum: 3000 },
  );
  return z.optional(
    shownWhen(field, { field: 'way', is: id.startsWith('jointer') ? ['', 'machines'] : ['', 'machines', 'sled'] }),
  );
};

export const flattenPlanCalculator = calculator({
  id: 'flatten-plan',
  title: 'Flattening a board',
  question: 'How much of this cupped or twisted board is left when it is flat, and how do I shim it?',
  summary:
    'From heights measured over a board and the thickness wanted: what is left when it is flat, the shims and the passes.',
  inputs: z.strictObject({
    length: lengthField(
      { label: 'Length of the board', examples: ['900 mm', '36 in'] },
      { minimum: 10, maximum: 10_000 },
    ),
    width: lengthField(
      { label: 'Width of the board', examples: ['260 mm', '10 1/4 in'] },
      { minimum: 10, maximum: 3000 },
    ),
    thickness: lengthField(
      { label: 'Thickness now', help: 'The least, where it differs.', examples: ['32 mm', '1 1/4 in'] },
      { minimum: 1, maximum: 300 },
    ),
    target: lengthField({ label: 'Thickness wanted', examples: ['22 mm', '7/8 in'] }, { minimum: 0.5, maximum: 300 }),
    measured: z.optional(
      choiceField({
        label: 'Measured',
        help: 'Heights: of the upper face above a flat bench, or of the gaps under the board on it. Gaps: under a straightedge across the face, all from one level, as winding sticks show it.',
        options: [
          { value: 'heights', label: 'Heights from a bench' },
          { value: 'gaps', label: 'Gaps under a straightedge' },
        ],
        examples: ['heights'],
      }),
    ),
    way: z.optional(
      choiceField({
        label: 'How it is flattened',
        help: 'Left open, machines are asked about only where you give their sizes.',
        options: ways,
        examples: ['router', 'sled'],
      }),
    ),
    grid: z.optional(
      gridField({
        label: 'Heights, evenly spaced',
        help: 'One row across the board a line, from one end to the other, at even distances, with commas between.',
      }),
    ),
    places: z.optional(
      placesField({ label: 'Heights at places', help: 'One place a line: distance along, distance across, height.' }),
    ),
    depthOfCut: z.optional(
      lengthField(
        {
          label: 'Depth of one pass',
          help: `With a router on rails ${routerDepthOfCut} mm, else 1/16 in, unless given. ${machineDefaults.find((one) => one.id === 'depthOfCut')?.why ?? ''}`,
          examples: ['1.5 mm', '1/16 in'],
        },
        { minimum: 0.05, maximum: 10 },
      ),
    ),
    jointerWidth: machineField('jointerWidth', ['150 mm', '6 in']),
    jointerLeastLength: machineField('jointerLeastLength', ['300 mm', '12 in']),
    jointerLeastThickness: machineField('jointerLeastThickness', ['12 mm', '1/2 in']),
    planerWidth: machineField('planerWidth', ['330 mm', '13 in']),
    planerLeastLength: machineField('planerLeastLength', ['300 mm', '12 in']),
    planerLeastThickness: machineField('planerLeastThickness', ['6 mm', '1/4 in']),
  }),
  alternatives: [
    {
      label: 'Where it was measured',
      sets: [
        { label: 'On an even grid', fields: ['grid'] },
        { label: 'At places of my own', fields: ['places'] },
      ],
    },
  ],
  example: {
    metric: {
      length: '900 mm',
      width: '260 mm',
      thickness: '32 mm',
      target: '22 mm',
      measured: 'heights',
      way: 'router',
      grid: '3, 1, 0, 2\n2, 0, 0, 1.5\n2.5, 0.5, 1, 3',
    },
    inch: {
      length: '35 7/16 in',
      width: '10 1/4 in',
      thickness: '1 1/4 in',
      target: '7/8 in',
      measured: 'heights',
      way: 'router',
      grid: 'in: 1/8, 1/32, 0, 3/32\n3/32, 0, 0, 1/16\n3/32, 1/32, 1/32, 1/8',
    },
  },
  figures: {
    thicknessLeft: { label: 'Thickness that two flat faces leave' },
    shortfall: { label: 'Lacking from the thickness wanted' },
    deepest: { label: 'Deepest cut, measured face' },
    passes: { label: 'Passes, measured face' },
    deepestBelow: { label: 'Deepest cut, other face' },
    passesBelow: { label: 'Passes, other face' },
    highestShim: { label: 'Highest shim' },
  },
  compute(inputs) {
    const { length, width, thickness, target, measured = 'heights', grid, places } = inputs;
    if (grid !== undefined && places !== undefined) {
      return refuse('places', 'Both a grid of heights and heights at places were given', 'Leave one of them empty.');
    }
    const named = grid !== undefined ? 'grid' : 'places';
    const raw = grid !== undefined ? gridPoints(grid, length, width) : places;
    if (raw === undefined)
      return refuse('grid', 'No heights were given', 'Measure the four corners at least, such as 0, 2; 1, 0.');
    const off = offTheBoard(places ?? [], length, width);
    if (off) return refuse('places', off.problem, off.wayOut);
    const sign = measured === 'gaps' ? -1 : 1;
    const points = raw.map((point): MeasuredPoint => ({ ...point, height: sign * point.height }));
    const depthOfCut = depthOf(inputs);
    const outcome = flattenPlan({ points, thickness, target, depthOfCut });
    if (!outcome.ok) {
      return {
        ok: false,
        errors: outcome.errors.map((error) => ({ ...error, field: error.field === 'heights' ? named : error.field })),
      };
    }
    const plan = outcome.value;
    const cautions = flattenCautions({ length, width, thickness, finished: plan.thickness }, plan, target, inputs);
    return answer({
      verdict: verdictOf(plan, target, cautions),
      figures: figuresOf(plan, target, inputs.depthOfCut === undefined ? 'shop-practice' : 'derived'),
      tables: [placesTable(plan, raw)],
      drawings: [planDrawing(plan, length, width)],
      cautions,
      evidence: evidenceOf(limitsOf(inputs).taken, inputs.depthOfCut === undefined ? depthOfCut : undefined),
    });
  },
});

/** Places of a grid: rows along the length, heights across the width, the outermost at the edges. */
function gridPoints(grid: HeightGrid, length: number, width: number): PlacedHeight[] {
  return grid.flatMap((row, i) =>
    row.map((height, j) => ({ x: (length * i) / (grid.length - 1), y: (width * j) / (row.length - 1), height })),
  );
}
