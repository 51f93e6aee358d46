import * as z from 'zod/mini';
import { amount } from '../../model/quantity/index.ts';
import { type MachineLimits, machineDefaults, routerDepthOfCut } from '../../model/stock/index.ts';
import type { Alternatives } from '../kit/calculator.ts';
import { choiceField, shownWhen } from '../kit/fields.ts';
import { lengthField } from '../kit/stock-fields.ts';
import { ways } from './cautions.ts';
import { gridField, placesField } from './fields.ts';

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

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
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
        help: `With a router on rails ${amount(routerDepthOfCut, 'mm', 1)}, else 1/16 in, unless given. ${machineDefaults.find((one) => one.id === 'depthOfCut')?.why ?? ''}`,
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
});

/** Where the heights were measured. */
export const alternatives: readonly Alternatives[] = [
  {
    label: 'Where it was measured',
    sets: [
      { label: 'On an even grid', fields: ['grid'] },
      { label: 'At places of my own', fields: ['places'] },
    ],
  },
];

/** The worked case: a cupped board of salvaged ash. */
export const example = {
  metric: {
    length: '915 mm',
    width: '260 mm',
    thickness: '32 mm',
    target: '22 mm',
    measured: 'heights',
    way: 'router',
    grid: '3, 1, 0, 2\n2, 0, 0, 1.5\n2.5, 0.5, 1, 3',
  },
  inch: {
    length: '36 in',
    width: '10 1/4 in',
    thickness: '1 1/4 in',
    target: '7/8 in',
    measured: 'heights',
    way: 'router',
    grid: 'in: 1/8, 1/32, 0, 3/32\n3/32, 0, 0, 1/16\n3/32, 1/32, 1/32, 1/8',
  },
} as const;
