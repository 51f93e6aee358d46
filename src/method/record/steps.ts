import * as z from 'zod/mini';
import { calculatorIds } from '../../calculators/registry.ts';
import { actIds } from '../acts/ids.ts';
import { line, markdown, methodName } from './names.ts';
import { quantityOrReference, reference } from './reference.ts';

/** An input of a calculation: a value in the words of its calculator, or a reference. */
export const inputValue = z.union([
  reference,
  z.string(),
  z.number(),
  z.boolean(),
  z.array(z.unknown()),
  z.record(z.string(), z.unknown()),
]);
export type InputValue = z.output<typeof inputValue>;

/** A calculator that is asked, and what it is told. */
export const calculation = z.strictObject({
  use: z.enum(calculatorIds as [string, ...string[]]).check(z.describe('Id of a calculator.')),
  with: z
    .record(z.string(), inputValue)
    .check(z.describe('Its inputs by name: values, a quantity with its unit, or { from: pointer }.')),
  note: z.exactOptional(line.check(z.describe('What else is to be known of it.'))),
});
export type Calculation = z.output<typeof calculation>;

/** What is done where a window was missed, so that the work may go on all the same. */
export const secondWay = z.strictObject({
  do: line.check(z.describe('What is done then: Abrade with P320 and wipe clean.')),
  adds: z.exactOptional(quantityOrReference.check(z.describe('Hands-on time that it adds, for each piece.'))),
  abrades: z.exactOptional(
    z.boolean().check(z.describe('True where it abrades the face, which opens it for another coat.')),
  ),
});
export type SecondWay = z.output<typeof secondWay>;

/** What a step waits for. */
export const link = z.strictObject({
  step: methodName.check(z.describe('Name of the earlier step.')),
  /** Of the earlier step; its end unless told. */
  counts: z.exactOptional(
    z
      .enum(['start', 'end'])
      .check(z.describe('From which end of the earlier step the times count; its end unless told.')),
  ),
  least: z.exactOptional(quantityOrReference.check(z.describe('At least so long in between: a cure, a drying.'))),
  most: z.exactOptional(quantityOrReference.check(z.describe('At most so long: where a window closes.'))),
  missed: z.exactOptional(
    secondWay.check(z.describe('What is done where the window was missed; without it the step must be in time.')),
  ),
});
export type Link = z.output<typeof link>;

/** A tool that stays taken after the step: a mould until the piece comes out, clamps until the glue holds. */
export const hold = z.strictObject({
  tool: methodName.check(z.describe('Name of the tool.')),
  until: methodName.check(z.describe('The step at whose end it is free again.')),
  each: z.exactOptional(z.int().check(z.minimum(1), z.describe('How many a piece takes; 1 unless told.'))),
});
export type Hold = z.output<typeof hold>;

/** What an inspection looks for. */
export const inspectionChecks = [
  'metal',
  'old-paint',
  'treatment',
  'rot',
  'insects',
  'moisture',
  'cracks',
  'defects',
] as const;

/** One step. A step without `after` follows the one that is written above it. */
export const step = z.strictObject({
  title: line.check(z.describe('What is done, as a heading.')),
  act: z
    .enum(actIds)
    .check(z.describe('What is done, in the words of the trade; it brings cautions and protection with it.')),
  does: markdown.check(z.describe('What to do.')),
  why: z.exactOptional(markdown.check(z.describe('Why it is done so.'))),
  tell: z.exactOptional(markdown.check(z.describe('How to tell that it is right.'))),
  wrong: z.exactOptional(markdown.check(z.describe('What goes wrong, and how it shows.'))),
  hands: z.exactOptional(
    z
      .strictObject({
        setUp: z.exactOptional(quantityOrReference.check(z.describe('Once for all pieces.'))),
        each: z.exactOptional(quantityOrReference.check(z.describe('For each piece.'))),
      })
      .check(z.describe('Time that hands are at it.')),
  ),
  people: z.exactOptional(z.int().check(z.minimum(1), z.describe('Hands that it takes at once; 1 unless told.'))),
  interrupt: z.exactOptional(
    z
      .enum(['anywhere', 'between-pieces', 'never'])
      .check(z.describe('Where it may be left overnight; between pieces unless told.')),
  ),
  after: z.exactOptional(
    z
      .array(z.union([methodName, link], { error: 'Name a step, or { step, least, most }.' }))
      .check(z.describe('Steps that it waits for; the one written above it where left out.')),
  ),
  uses: z.exactOptional(z.array(methodName).check(z.describe('Names of materials.'))),
  tools: z.exactOptional(
    z.array(methodName).check(z.describe('Names of tools; each is taken for as long as the step runs.')),
  ),
  holds: z.exactOptional(z.array(hold).check(z.describe('Tools that stay taken after the step.'))),
  piece: z.exactOptional(
    z
      .strictObject({
        length: z.exactOptional(quantityOrReference.check(z.describe('Its length.'))),
        width: z.exactOptional(quantityOrReference.check(z.describe('Its width.'))),
        thickness: z.exactOptional(quantityOrReference.check(z.describe('Its thickness.'))),
      })
      .check(z.describe('Size of the piece as it comes to the machine.')),
  ),
  wayRound: z.exactOptional(
    line.check(z.describe('How a piece is taken that the machine by itself does not take: on a sled, in two halves.')),
  ),
  looksFor: z.exactOptional(z.array(z.enum(inspectionChecks)).check(z.describe('What an inspection looks for.'))),
  backed: z.exactOptional(z.boolean().check(z.describe('True where a hole or cut goes through into a backing board.'))),
  blind: z.exactOptional(
    z.boolean().check(z.describe('True where a hole or recess ends within the wood and comes out of no face or edge.')),
  ),
  calculations: z.exactOptional(
    z
      .record(methodName, calculation)
      .check(z.describe('What is worked out for the step, each under a name that the method has once.')),
  ),
});
export type Step = z.output<typeof step>;
