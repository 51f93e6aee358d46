import * as z from 'zod/mini';
import { listed } from '../../model/quantity/index.ts';
import { addressNames, reservedNames } from './address-names.ts';
import { line, methodName, quantityText } from './names.ts';

/** The name of a parameter: any of a method, but those that an address has for the case, or for what is done with it. */
export const parameterName = methodName.check(
  z.regex(
    new RegExp(`^(?!(${reservedNames.join('|')})$)`),
    `The names ${listed(reservedNames)} belong to the case itself, in addresses and on the command line. Give the parameter another, such as ${reservedNames[0]}Asked.`,
  ),
  z.regex(
    new RegExp(`^(?!(${addressNames.join('|')})$)`),
    `The names ${listed(addressNames)} belong to addresses: to those of sheets, batches, classes and the bench. Give the parameter another, such as ${addressNames[0]}Asked.`,
  ),
);

const asked = {
  /** As a student would understand it: `Length of the tray`. */
  label: line.check(z.describe('What is asked, as a student would understand it: Length of the tray.')),
  help: z.exactOptional(line.check(z.describe('What helps to answer.'))),
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

/** The word that says what a parameter holds. */
const kindOf = <Kind extends string>(kind: Kind) => z.literal(kind).check(z.describe('What it holds.'));

const id = z.string().check(z.minLength(1), z.maxLength(80));
const measures = z.record(z.string(), quantityText);

/** What may be changed from one making to the next, by kind. */
export const parameter = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({
      kind: kindOf('quantity'),
      ...asked,
      default: quantityText.check(z.describe('What it is unless the maker says otherwise, with its unit: 400 mm.')),
      least: quantityText.check(z.describe('The least that may be asked for, with its unit.')),
      most: quantityText.check(z.describe('The most that may be asked for, with its unit.')),
    }),
    z.strictObject({
      kind: kindOf('count'),
      ...asked,
      default: z.int().check(z.describe('What it is unless the maker says otherwise.')),
      least: z.int().check(z.describe('Fewest that may be asked for.')),
      most: z.int().check(z.describe('Most that may be asked for.')),
    }),
    z.strictObject({
      kind: kindOf('wood'),
      ...asked,
      default: id.check(z.describe('Id of a wood record, such as sugar-maple.')),
      among: z.exactOptional(
        z.array(id).check(z.describe('Woods that the method is written for; every wood where left out.')),
      ),
    }),
    z.strictObject({
      kind: kindOf('resin'),
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
    z.strictObject({
      kind: kindOf('finish'),
      ...asked,
      default: id.check(z.describe('Id of a finish record, such as mineral-oil.')),
      among: z.exactOptional(
        z.array(id).check(z.describe('Finishes that the method is written for; every one where left out.')),
      ),
    }),
    z.strictObject({
      kind: kindOf('outline'),
      ...asked,
      default: z
        .intersection(z.object({ shape: id.check(z.describe('Id of a shape of the template calculator.')) }), measures)
        .check(
          z.describe(
            'shape, and its measures by the names that the template calculator has: length, width, cornerRadius …',
          ),
        ),
    }),
    z.strictObject({
      kind: kindOf('place'),
      ...asked,
      default: id.check(z.describe('Id of a place of the climate tables, such as duluth-mn.')),
    }),
    z.strictObject({
      kind: kindOf('readings'),
      ...asked,
      default: z.string().check(z.minLength(1), z.describe('Readings as the calculators take them, one a line.')),
    }),
    z.strictObject({
      kind: kindOf('choice'),
      ...asked,
      default: id.check(z.describe('Value of one of the options.')),
      options: z
        .array(
          z.strictObject({
            value: id.check(z.describe('What the calculations are told.')),
            label: line.check(z.describe('What the maker reads.')),
          }),
        )
        .check(z.minLength(2), z.describe('What may be chosen.')),
    }),
  ],
  { error: 'kind is one of quantity, count, wood, resin, finish, outline, place, readings, choice.' },
);
export type Parameter = z.output<typeof parameter>;
export type ParameterKind = Parameter['kind'];
