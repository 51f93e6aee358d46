import * as z from 'zod/mini';
import { readField } from '../../calculators/kit/fields.ts';
import { readGrade } from '../../model/abrasive/grades.ts';
import { countOf, ownId, ownName, priceOfOne, quantityText } from './fields.ts';

const length = (label: string, examples: readonly string[]) =>
  z.exactOptional(quantityText({ label, examples, dimension: 'length', minimum: 0.1, maximum: 20_000 }));

const count = z._default(countOf('How many like it.', 1000), 1);

/** A mould or dam in which pieces are poured; lengths in mm. */
export const mouldSchema = z.strictObject({
  id: ownId,
  name: z.exactOptional(ownName),
  count,
  holds: z._default(countOf('Pieces that one of it takes at a time.', 1000), 1),
  length: length('Inside length', ['450 mm', '18 in']),
  width: length('Inside width', ['300 mm', '12 in']),
  depth: length('Inside depth', ['30 mm', '1 1/4 in']),
  price: priceOfOne,
});
/** A mould: lengths in mm. */
export type Mould = z.output<typeof mouldSchema>;

/** Clamps of one kind. */
export const clampSchema = z.strictObject({
  id: ownId,
  name: z.exactOptional(ownName),
  count: countOf('How many there are.', 1000),
  opening: length('How wide they open', ['600 mm', '24 in']),
  price: priceOfOne,
});
/** Clamps: their opening in mm. */
export type Clamp = z.output<typeof clampSchema>;

/** A scale. */
export const scaleSchema = z.strictObject({
  id: ownId,
  name: z.exactOptional(ownName),
  division: quantityText({
    label: 'Smallest division',
    examples: ['0.1 g', '1 g'],
    dimension: 'mass',
    minimum: 0.001,
    maximum: 1000,
  }),
  capacity: z.exactOptional(
    quantityText({
      label: 'Most that it weighs',
      examples: ['5 kg', '11 lb'],
      dimension: 'mass',
      minimum: 1,
      maximum: 1e6,
    }),
  ),
  price: priceOfOne,
});
/** A scale: division and capacity in g. */
export type Scale = z.output<typeof scaleSchema>;

/** A router bit. */
export const bitSchema = z.strictObject({
  id: ownId,
  name: z.exactOptional(ownName),
  count,
  diameter: quantityText({
    label: 'Cutting diameter',
    examples: ['12.7 mm', '1/2 in'],
    dimension: 'length',
    minimum: 0.5,
    maximum: 200,
  }),
  cuttingLength: length('Length of the cutting edge, without its bearing', ['25 mm', '1 in']),
  shank: length('Diameter of the shank', ['1/4 in', '8 mm']),
  bearing: z.exactOptional(
    z
      .enum(['none', 'shank', 'tip'])
      .check(z.describe('Where its guide bearing sits: by the shank, at the tip, or nowhere.')),
  ),
  mostTurns: z.exactOptional(
    quantityText({
      label: 'Most turns that are marked on it',
      examples: ['18000/min', '22000 rpm'],
      dimension: 'turns',
      minimum: 1,
      maximum: 100_000,
    }),
  ),
  price: priceOfOne,
});
/** A router bit: lengths in mm, turns per minute. */
export type Bit = z.output<typeof bitSchema>;

/** A grit as printed on the paper: `P120`, `ANSI 120`. */
export const gritSchema = readField(
  z.string({ error: 'Write a grit as it is printed on the paper, with its grading: P120, or ANSI 120.' }),
  (text) => {
    if (/^\s*\d+\s*$/.test(text)) {
      return {
        ok: false,
        problem: `“${text.trim()}” does not say its grading, and above 220 the two differ`,
        wayOut: `Write P${text.trim()} for paper with a P, ANSI ${text.trim()} for paper graded in the United States.`,
      };
    }
    const grade = readGrade(text, 'P');
    return grade.ok ? { ok: true, value: grade.value.id } : grade;
  },
  { kind: 'text', label: 'A grit in the drawer', examples: ['P120', 'ANSI 220'] },
);
