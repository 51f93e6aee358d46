import * as z from 'zod/mini';
import {
  answer,
  type Basis,
  type Drawing,
  type EvidenceNote,
  type Figure,
  type ResultTable,
  refuse,
} from '../../model/evidence/index.ts';
import {
  defaultMachines,
  type FlattenPlan,
  flattenPlan,
  type MachineLimits,
  type MeasuredPoint,
  machineAdvice,
  machineDefaults,
  machineGuards,
  thickestSlab,
} from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cite } from '../kit/evidence.ts';
import { choiceField } from '../kit/fields.ts';
import { lengthField } from '../kit/stock-fields.ts';
import { gridField, type HeightGrid, type PlacedHeight, placesField } from './fields.ts';

const machines = 'Your machines';

const machineField = (id: keyof MachineLimits, examples: readonly string[]) => {
  const setting = machineDefaults.find((one) => one.id === id);
  return z.optional(
    lengthField(
      { label: setting?.label ?? id, help: setting?.why ?? '', examples, group: machines },
      { minimum: 0, maximum: 3000 },
    ),
  );
};

export const flattenPlanCalculator = calculator({
  id: 'flatten-plan',
  title: 'Flattening a board',
  question: 'How much of this cupped or twisted board is left when it is flat, and how do I shim it?',
  summary:
    'Takes heights measured over a board, its thickness and the thickness wanted, and gives the flat faces that cost least wood, the thickness left, the shim under each place on a sled, the passes, and what the machines allow.',
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
          help: machineDefaults.find((one) => one.id === 'depthOfCut')?.why ?? '',
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
      grid: '3, 1, 0, 2\n2, 0, 0, 1.5\n2.5, 0.5, 1, 3',
    },
    inch: {
      length: '36 in',
      width: '10 1/4 in',
      thickness: '1 1/4 in',
      target: '7/8 in',
      measured: 'heights',
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
    const sign = measured === 'gaps' ? -1 : 1;
    const points = raw.map((point): MeasuredPoint => ({ ...point, height: sign * point.height }));
    const depthOfCut = inputs.depthOfCut ?? defaultMachines.depthOfCut;
    const outcome = flattenPlan({ points, thickness, target, depthOfCut });
    if (!outcome.ok) {
      return {
        ok: false,
        errors: outcome.errors.map((error) => ({ ...error, field: error.field === 'heights' ? named : error.field })),
      };
    }
    const plan = outcome.value;
    const limits = machineLimits(inputs);
    return answer({
      figures: figuresOf(plan, target, inputs.depthOfCut === undefined ? 'shop-practice' : 'derived'),
      tables: [placesTable(plan, raw)],
      drawings: [planDrawing(plan, length, width)],
      cautions: [
        ...(plan.meetsTarget
          ? []
          : [
              {
                id: 'target-missed',
                level: 'warning' as const,
                text: `The board does not give the ${target.toFixed(1)} mm wanted: ${plan.thicknessLeft.toFixed(1)} mm are left. Make the piece thinner, or cut the board to blanks before flattening: half the width has about a quarter of the cup.`,
                basis: 'derived' as const,
              },
            ]),
        ...machineAdvice({ length, width, thickness, finished: plan.thickness }, limits),
        {
          id: 'rest-between',
          level: 'note',
          text: 'Take equal amounts from both faces, and let a thick or damp board rest a day or two between rough and last passes: it moves when its stresses are freed.',
          basis: 'shop-practice',
        },
        ...machineGuards,
      ],
      evidence: evidenceOf(inputs),
    });
  },
});

type Inputs = Partial<Record<keyof MachineLimits | 'depthOfCut', number | undefined>>;

function machineLimits(inputs: Inputs): MachineLimits {
  const entries = (Object.keys(defaultMachines) as (keyof MachineLimits)[]).map((id) => [
    id,
    inputs[id] ?? defaultMachines[id],
  ]);
  return Object.fromEntries(entries) as unknown as MachineLimits;
}

/** Places of a grid: rows along the length, heights across the width, the outermost at the edges. */
function gridPoints(grid: HeightGrid, length: number, width: number): PlacedHeight[] {
  return grid.flatMap((row, i) =>
    row.map((height, j) => ({ x: (length * i) / (grid.length - 1), y: (width * j) / (row.length - 1), height })),
  );
}

function figuresOf(plan: FlattenPlan, target: number, passBasis: Basis): Record<string, Figure> {
  const length = (label: string, value: number, note?: string): Figure => ({
    label,
    value,
    unit: 'mm',
    basis: 'derived',
    digits: 3,
    ...(note ? { note } : {}),
  });
  const passes = (label: string, value: number): Figure => ({ label, value, unit: '1', basis: passBasis, digits: 4 });
  return {
    thicknessLeft: length(
      'Thickness that two flat faces leave',
      plan.thicknessLeft,
      plan.meetsTarget
        ? `Enough for the ${target.toFixed(1)} mm wanted.`
        : `Less than the ${target.toFixed(1)} mm wanted.`,
    ),
    shortfall: length('Lacking from the thickness wanted', plan.shortfall),
    deepest: length('Deepest cut, measured face', plan.deepest),
    passes: passes('Passes, measured face', plan.passes),
    deepestBelow: length('Deepest cut, other face', plan.deepestBelow),
    passesBelow: passes('Passes, other face', plan.passesBelow),
    highestShim: length('Highest shim', plan.highestShim, 'Under the board on a flat sled, measured face up.'),
  };
}

function placesTable(plan: FlattenPlan, measured: readonly PlacedHeight[]): ResultTable {
  const column = (id: string, label: string, digits = 3) => ({ id, label, unit: 'mm', digits });
  return {
    id: 'places',
    title: 'Cuts and shims, place by place',
    columns: [
      { id: 'place', label: 'Place', digits: 5 },
      column('along', 'Along', 4),
      column('across', 'Across', 4),
      column('measured', 'Measured'),
      column('shim', 'Shim under it'),
      column('cut', 'Cut, this face'),
      column('cutBelow', 'Cut, other face'),
    ],
    rows: plan.points.map((point, at) => [
      at + 1,
      point.x,
      point.y,
      measured[at]?.height ?? 0,
      tidy(point.shim),
      tidy(point.cut),
      tidy(point.cutBelow),
    ]),
    basis: 'derived',
  };
}

/** A thousandth of a millimetre is the noise of rounding, not of a board. */
const tidy = (value: number) => Math.round(value * 1000) / 1000;

/** The board from above with its places numbered as in the table. */
function planDrawing(plan: FlattenPlan, length: number, width: number): Drawing {
  const size = Math.max(length, width) * 0.006;
  return {
    id: 'places',
    title: 'Places, seen from above',
    description: `The board from above with ${plan.points.length} places, numbered as in the table. The highest shim is ${plan.highestShim.toFixed(1)} mm, the deepest cut ${plan.deepest.toFixed(1)} mm.`,
    shapes: [
      {
        role: 'board',
        closed: true,
        points: [
          [0, 0],
          [length, 0],
          [length, width],
          [0, width],
        ],
      },
      ...plan.points.map(({ x, y }, at) => ({
        role: 'place' as const,
        closed: true,
        label: `${at + 1}`,
        points: [
          [x - size, y],
          [x, y + size],
          [x + size, y],
          [x, y - size],
        ] as [number, number][],
      })),
    ],
  };
}

function evidenceOf(inputs: Inputs): EvidenceNote[] {
  return [
    cite(thickestSlab, 'Finds both faces at once, exactly at the places measured.'),
    {
      text: 'Where the board is thicker than wanted, both faces are cut by the same amount more.',
      basis: 'shop-practice',
    },
    ...machineDefaults
      .filter(({ id }) => inputs[id] === undefined)
      .map(({ label, value, why, basis }) => ({
        text: `${label}: ${value.toFixed(1)} mm, since none was given. ${why}`,
        basis,
      })),
  ];
}
