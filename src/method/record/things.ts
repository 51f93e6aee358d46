import * as z from 'zod/mini';
import type { Dimension } from '../../model/quantity/index.ts';
import { machineKinds } from '../shop/machines.ts';
import { line, methodName, quantityText } from './names.ts';
import { bandEnd, pointer, quantityOrReference } from './reference.ts';

/** What a material is, for the rules that ask: gloves beside resin, a respirator beside dust. */
export const materialKinds = [
  'wood',
  'resin',
  'pigment',
  'finish',
  'solvent',
  'glue',
  'abrasive',
  'sheet-stock',
  'dam-and-tape',
  'cup-and-stick',
  'gloves',
  'mask-filter',
  'cloth',
  'label',
  'packing',
  'other',
] as const;
export type MaterialKind = (typeof materialKinds)[number];

/** What a tool is. Those of the shop record's machines stand first: what limits them is taken from there. */
export const toolKinds = [
  ...machineKinds,
  'hand-saw',
  'jigsaw',
  'scroll-saw',
  'router-bit',
  'hand-drill',
  'drill-bit',
  'sanding-block',
  'scraper',
  'clamp',
  'caul',
  'mould',
  'template',
  'scale',
  'moisture-meter',
  'thermometer',
  'metal-detector',
  'straightedge',
  'winding-sticks',
  'heat-gun',
  'torch',
  'polisher',
  'air-cleaner',
  'ventilation',
  'respirator',
  'eye-protection',
  'hearing-protection',
  'apron',
  'rag-can',
  'eye-wash',
  'fire-extinguisher',
  'brush',
  'other',
] as const;
export type ToolKind = (typeof toolKinds)[number];

/** Limits of a tool, by the names that the shop record has for them; which of them a rule asks for depends on its kind. */
export const limitNames = [
  'width',
  'mostLength',
  'thickness',
  'leastLength',
  'leastWidth',
  'leastThickness',
  'depthOfCut',
  'ripWidth',
  'throat',
  'travel',
  'bitDiameter',
  'diameter',
  'cuttingLength',
  'mostTurns',
  'rimSpeed',
  'division',
  'capacity',
] as const;
export type LimitName = (typeof limitNames)[number];

const measuredBy: Readonly<Partial<Record<LimitName, Dimension>>> = {
  mostTurns: 'turns',
  rimSpeed: 'speed',
  division: 'mass',
  capacity: 'mass',
};

/** What a limit measures, in the shop record too: a length, but for what a plate or a pan says. */
export const limitMeasures = (name: LimitName): Dimension => measuredBy[name] ?? 'length';

const per = z.enum(['piece', 'batch']).check(z.describe('Whether it is what one piece takes or the whole batch.'));

/** How much of a material is needed, and how it was come by. */
export const need = z.union(
  [
    z.strictObject({
      amount: quantityText.check(z.describe('A quantity, or a number of things.')),
      per,
    }),
    z.strictObject({
      from: pointer,
      take: z.exactOptional(bandEnd),
      per,
    }),
  ],
  { error: 'A need is { amount: 2, per: piece } or { from: /calculations/dose/uses/part-a, per: batch }.' },
);
export type Need = z.output<typeof need>;

/** Something that is used up. */
export const material = z.strictObject({
  what: line.check(z.describe('As it would stand on a bill: Sugar maple, 5/4 rough.')),
  kind: z.enum(materialKinds).check(z.describe('What it is: the rules go by it.')),
  item: z.exactOptional(
    methodName.check(z.describe('Under which id the shop record has it; its own name where left out.')),
  ),
  salvaged: z.exactOptional(
    z
      .boolean()
      .check(z.describe('True for wood that had another life: metal, paint and treatment are then looked for.')),
  ),
  needs: z.array(need).check(z.minLength(1), z.describe('How much of it is needed, all of them together.')),
  spare: z.exactOptional(quantityText.check(z.describe('A share for mishaps, such as 10 %.'))),
  note: z.exactOptional(line.check(z.describe('What else is to be known of it.'))),
});
export type Material = z.output<typeof material>;

/** Something that is needed and stays. */
export const tool = z.strictObject({
  what: line.check(z.describe('As a list of tools would name it.')),
  kind: z.enum(toolKinds).check(z.describe('What it is: the rules go by it.')),
  item: z.exactOptional(
    methodName.check(
      z.describe('Which one of the shop record it is, by its id there; the only one of its kind where left out.'),
    ),
  ),
  count: z.exactOptional(
    z.int().check(z.minimum(1), z.describe('How many there are; 1 unless told, or as the shop record says.')),
  ),
  limits: z.exactOptional(
    z
      .partialRecord(z.enum(limitNames), quantityOrReference)
      .check(z.describe('What it takes, as its manual and plate say; what is left out comes from the shop record.')),
  ),
  note: z.exactOptional(line.check(z.describe('What else is to be known of it.'))),
});
export type Tool = z.output<typeof tool>;
