import * as z from 'zod/mini';
import { line, quantityText } from './names.ts';

const asked = {
  /** As a student would understand it: `Length of the tray`. */
  label: line,
  help: z.exactOptional(line),
  /** Where the shop record holds it, as a JSON Pointer into that record: `/air/day`. The shop's own value then stands for the default. */
  shop: z.exactOptional(
    z
      .string()
      .check(
        z.regex(/^(\/[^/]+)+$/, 'A JSON Pointer into the shop record, such as /air/day.'),
        z.describe('JSON Pointer into the shop record; its value stands for the default where a record is given.'),
      ),
  ),
};

const id = z.string().check(z.minLength(1), z.maxLength(80));
const measures = z.record(z.string(), quantityText);

/** What may be changed from one making to the next, by kind. */
export const parameter = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({
      kind: z.literal('quantity'),
      ...asked,
      default: quantityText,
      least: quantityText,
      most: quantityText,
    }),
    z.strictObject({ kind: z.literal('count'), ...asked, default: z.int(), least: z.int(), most: z.int() }),
    z.strictObject({
      kind: z.literal('wood'),
      ...asked,
      default: id.check(z.describe('Id of a wood record, such as sugar-maple.')),
      among: z.exactOptional(
        z.array(id).check(z.describe('Woods that the method is written for; every wood where left out.')),
      ),
    }),
    z.strictObject({
      kind: z.literal('resin'),
      ...asked,
      default: z
        .union([id, z.record(z.string(), z.unknown())])
        .check(z.describe('Id of a generic kind, such as slow-casting-2-1, or the entries of a data sheet.')),
      among: z.exactOptional(
        z
          .array(id)
          .check(
            z.describe(
              'Generic kinds that the method is written for. A data sheet is always taken: the calculators judge it.',
            ),
          ),
      ),
    }),
    z.strictObject({ kind: z.literal('finish'), ...asked, default: id, among: z.exactOptional(z.array(id)) }),
    z.strictObject({
      kind: z.literal('outline'),
      ...asked,
      default: z
        .intersection(z.object({ shape: id }), measures)
        .check(
          z.describe(
            'shape, and its measures by the names that the template calculator has: length, width, cornerRadius …',
          ),
        ),
    }),
    z.strictObject({
      kind: z.literal('place'),
      ...asked,
      default: id.check(z.describe('Id of a place of the climate tables, such as duluth-mn.')),
    }),
    z.strictObject({ kind: z.literal('readings'), ...asked, default: z.string().check(z.minLength(1)) }),
    z.strictObject({
      kind: z.literal('choice'),
      ...asked,
      default: id,
      options: z.array(z.strictObject({ value: id, label: line })).check(z.minLength(2)),
    }),
  ],
  { error: 'kind is one of quantity, count, wood, resin, finish, outline, place, readings, choice.' },
);
export type Parameter = z.output<typeof parameter>;
export type ParameterKind = Parameter['kind'];
