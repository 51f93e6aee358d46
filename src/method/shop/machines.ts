import * as z from 'zod/mini';
import type { MachineLimits } from '../../model/stock/machines.ts';
import { countOf, ownId, ownName, priceOfOne, quantityText } from './fields.ts';

const length = (label: string, examples: readonly string[], help?: string) =>
  quantityText({ label, examples, ...(help ? { help } : {}), dimension: 'length', minimum: 0.1, maximum: 20_000 });
const turns = (label: string, examples: readonly string[]) =>
  quantityText({ label, examples, dimension: 'turns', minimum: 1, maximum: 100_000 });

/** What limits a machine. Each kind of machine has those that mean something of it. */
const limitFields = {
  width: length('Greatest width of a board', ['305 mm', '12 in']),
  thickness: length('Greatest thickness of a board', ['150 mm', '6 in']),
  leastThickness: length('Least thickness of a board', ['6 mm', '1/4 in']),
  leastWidth: length('Least width of a board', ['75 mm', '3 in']),
  leastLength: length('Least length of a board', ['305 mm', '12 in']),
  mostLength: length('Greatest length of a board', ['1200 mm', '48 in']),
  depthOfCut: length('Deepest cut in one pass', ['1.6 mm', '1/16 in']),
  ripWidth: length('Greatest width between blade and fence', ['760 mm', '30 in']),
  throat: length('From the blade or bit to the frame', ['430 mm', '17 in']),
  travel: length('How far the spindle goes down', ['80 mm', '3 1/4 in']),
  disc: length('Diameter of the disc', ['125 mm', '5 in']),
  bitDiameter: length('Greatest diameter of a bit', ['50 mm', '2 in']),
  rimSpeed: quantityText({
    label: 'Greatest speed of the cutting edge',
    examples: ['40 m/s', '8000 ft/min'],
    dimension: 'speed',
    minimum: 0.1,
    maximum: 200,
  }),
  leastTurns: turns('Slowest speed', ['8000/min', '8000 rpm']),
  mostTurns: turns('Fastest speed', ['24000/min', '24000 rpm']),
  collets: z
    .array(length('A collet', ['1/4 in', '8 mm']))
    .check(z.minLength(1), z.maxLength(12), z.describe('Diameters of the shanks that it takes.')),
} as const;

/** A limit of a machine, by name. */
export type LimitName = keyof typeof limitFields;

/** Kinds of machine, as the trade names them, and what limits each. */
const limitsOfKind = {
  planer: ['width', 'thickness', 'leastThickness', 'leastLength', 'depthOfCut'],
  jointer: ['width', 'leastThickness', 'leastLength', 'depthOfCut'],
  'drum-sander': ['width', 'thickness', 'leastThickness', 'leastLength', 'depthOfCut'],
  'table-saw': ['ripWidth', 'depthOfCut', 'leastLength', 'mostTurns', 'rimSpeed'],
  'mitre-saw': ['width', 'thickness', 'leastLength', 'mostTurns', 'rimSpeed'],
  'track-saw': ['depthOfCut', 'mostLength', 'mostTurns', 'rimSpeed'],
  'band-saw': ['thickness', 'throat', 'rimSpeed'],
  'router-table': ['collets', 'bitDiameter', 'leastTurns', 'mostTurns', 'rimSpeed', 'leastLength'],
  'plunge-router': ['collets', 'bitDiameter', 'leastTurns', 'mostTurns', 'rimSpeed', 'depthOfCut'],
  'router-sled': ['width', 'mostLength', 'thickness', 'depthOfCut'],
  'drill-press': ['throat', 'travel', 'bitDiameter', 'leastTurns', 'mostTurns'],
  'random-orbit-sander': ['disc', 'leastTurns', 'mostTurns'],
  'belt-sander': ['width', 'rimSpeed'],
  'spindle-sander': ['thickness', 'mostTurns'],
  'dust-extractor': [],
} as const satisfies Record<string, readonly LimitName[]>;

/** A kind of machine: `planer`, `router-table`. */
export type MachineKind = keyof typeof limitsOfKind;

/** Every kind of machine that a record may name. */
export const machineKinds = Object.keys(limitsOfKind) as MachineKind[];

/** What limits a kind of machine. */
export const limitsOf = (kind: MachineKind): readonly LimitName[] => limitsOfKind[kind];

/** A machine of the shop. */
export interface Machine {
  id: string;
  kind: MachineKind;
  name?: string;
  /** How many like it. */
  count: number;
  /** Lengths in mm, turns per minute, rim speed in m/s; what is not stated is left out. */
  limits: Partial<Record<Exclude<LimitName, 'collets'>, number>> & { collets?: number[] };
  /** Power that it draws at work, kW. */
  power?: number;
  /** What one more costs, in the currency of the shop. */
  price?: number;
}

const machineOf = (kind: MachineKind) => {
  const names: readonly LimitName[] = limitsOfKind[kind];
  return z.strictObject({
    id: ownId,
    kind: z.literal(kind).check(z.describe('What machine it is; its limits depend on it.')),
    name: z.exactOptional(ownName),
    count: z._default(countOf('How many like it.', 50), 1),
    limits: z._default(
      z
        .strictObject(Object.fromEntries(names.map((name) => [name, z.exactOptional(limitFields[name])])))
        .check(z.describe('What it takes, as its own manual and plate say.')),
      {},
    ),
    power: z.exactOptional(
      quantityText({
        label: 'Power at work',
        help: 'From its plate; it is taken as drawn the whole time that the machine runs.',
        examples: ['1.5 kW', '750 W'],
        dimension: 'power',
        minimum: 0.01,
        maximum: 50,
      }),
    ),
    price: priceOfOne,
  });
};

const [first, ...others] = machineKinds.map(machineOf);

/** A machine as it stands in a shop record: what limits it depends on its kind. */
export const machineSchema = z.discriminatedUnion('kind', [
  first as ReturnType<typeof machineOf>,
  ...others,
]) as unknown as z.ZodMiniType<Machine>;

/** The machines of a kind, of which there is at least one. */
export function machinesOf(machines: readonly Machine[], kind: MachineKind): Machine[] {
  return machines.filter((machine) => machine.kind === kind && machine.count > 0);
}

/**
 * What the jointers and planers of a shop take, mm, as the calculators ask it: the widest of each kind, with that machine's own limits. A
 * machine that the shop does not have, or whose limit is not stated, is left out.
 */
export function machineLimits(machines: readonly Machine[]): Partial<MachineLimits> {
  const widest = (kind: MachineKind) =>
    machinesOf(machines, kind).reduce<Machine['limits']>(
      (best, { limits }) => ((limits.width ?? 0) > (best.width ?? -1) ? limits : best),
      {},
    );
  const [jointer, planer] = [widest('jointer'), widest('planer')];
  const stated = {
    jointerWidth: jointer.width,
    jointerLeastLength: jointer.leastLength,
    jointerLeastThickness: jointer.leastThickness,
    planerWidth: planer.width,
    planerLeastLength: planer.leastLength,
    planerLeastThickness: planer.leastThickness,
  };
  return Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined));
}
