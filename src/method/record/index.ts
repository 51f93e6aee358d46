import * as z from 'zod/mini';
import { line, markdown, methodName, quantityText } from './names.ts';
import { parameter, parameterName } from './parameters.ts';
import { step } from './steps.ts';
import { material, tool } from './things.ts';

export { addressNames, reservedNames } from './address-names.ts';
export type { Parameter, ParameterKind } from './parameters.ts';
export { isReference, type QuantityOrReference, type Reference } from './reference.ts';
export type { Calculation, Hold, InputValue, Link, SecondWay, Step } from './steps.ts';
export {
  type LimitName,
  limitMeasures,
  limitNames,
  type Material,
  type MaterialKind,
  materialKinds,
  type Need,
  type Tool,
  type ToolKind,
  toolKinds,
} from './things.ts';

/** A departure from a rule, with the reason for it. It is printed, and is an error once the rule no longer asks for it. */
export const exception = z.strictObject({
  rule: z.string().check(z.minLength(1), z.describe('Id of the rule.')),
  step: z.exactOptional(methodName.check(z.describe('The step that departs; the method as a whole where left out.'))),
  reason: line.check(
    z.minLength(20, 'Say in a sentence why the work is sound all the same.'),
    z.describe('Why the work is sound all the same.'),
  ),
});
export type Exception = z.output<typeof exception>;

const source = z.strictObject({
  text: line.check(z.describe('What it is: a handbook and its chapter, a data sheet, our own practice.')),
  url: z.exactOptional(
    z
      .string()
      .check(z.regex(/^https?:\/\/\S+$/, 'An address begins with https://.'), z.describe('Where it can be read.')),
  ),
});

/**
 * A shop method as its YAML file holds it: what is made, of what, in which steps.
 *
 * `parameters`, `materials`, `tools` and `steps` are maps by name, so that a JSON Pointer names the same thing in every version of the
 * file. Steps are done in the order in which they stand, unless `after` says otherwise.
 */
export const methodRecord = z.strictObject({
  method: z.literal(1).check(z.describe('Version of the format.')),
  title: line.check(z.describe('What the method is called.')),
  for: line.check(z.describe('Who it is for, and what they can do already.')),
  about: z.exactOptional(markdown),
  language: z
    .string()
    .check(
      z.regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'A language tag (BCP 47), such as en or en-GB.'),
      z.describe('Language of its texts, as a tag (BCP 47) such as en or en-GB.'),
    ),
  version: z.exactOptional(
    z
      .string()
      .check(
        z.regex(/^\d{4}-\d{2}-\d{2}$/, 'The day of this version, as 2027-01-12; write it between quotes.'),
        z.describe('The day of this version, as 2027-01-12, between quotes.'),
      ),
  ),
  makes: z
    .strictObject({
      what: line.check(z.describe('The piece, with its measures.')),
      pieces: z
        .strictObject({
          default: z
            .int()
            .check(z.minimum(1), z.maximum(200), z.describe('How many are made unless the maker says otherwise.')),
          least: z.int().check(z.minimum(1), z.describe('Fewest that the method is written for.')),
          most: z.int().check(z.maximum(200), z.describe('Most that the method is written for.')),
        })
        .check(z.describe('How many are made in one go.')),
    })
    .check(z.describe('What is made.')),
  taught: z.exactOptional(
    z
      .strictObject({
        calendar: z
          .string()
          .check(
            z.regex(
              /^[a-z0-9]+(-[a-z0-9]+)*$/,
              'Name a file of methods/calendars without its ending, such as six-tuesdays.',
            ),
            z.maxLength(60),
            z.describe('When the class meets: a file of methods/calendars, by its name without the ending.'),
          ),
        people: z
          .int()
          .check(z.minimum(1), z.maximum(100), z.describe('How many work at it: students, teachers and helpers.')),
        evenings: z
          .int()
          .check(
            z.minimum(1),
            z.maximum(60),
            z.describe(
              'At how many sessions of the calendar, the last of it, the students are there; before them the teacher prepares.',
            ),
          ),
      })
      .check(z.describe('How it is taught to a class, where it is: with which calendar and how many people.')),
  ),
  food: z.exactOptional(
    z
      .strictObject({
        claim: line.check(z.describe('What is said of the piece to whoever gets it: For bread, fruit and cheese.')),
        touches: z.enum(['wood', 'resin', 'wood-and-resin', 'nothing']).check(z.describe('What food lies on.')),
        market: z.enum(['us', 'eu']).check(z.describe('Whose rules on food contact hold: American or European.')),
        papers: z.exactOptional(line.check(z.describe('What was got in writing from the makers of resin and finish.'))),
      })
      .check(z.describe('What the piece is for, where food touches it.')),
  ),
  sources: z.array(source).check(z.minLength(1), z.describe('Where the method comes from.')),
  parameters: z
    .record(parameterName, parameter)
    .check(z.describe('What may be different from one making to the next, each by a name of its own.')),
  materials: z.record(methodName, material).check(z.describe('What is used up, by name.')),
  tools: z.record(methodName, tool).check(z.describe('What is needed and stays, by name.')),
  steps: z
    .record(methodName, step)
    .check(z.describe('What is done, by name, in the order in which it is written unless “after” says otherwise.')),
  exceptions: z.exactOptional(
    z.array(exception).check(z.describe('Rules that the method departs from, each with its reason.')),
  ),
});

/** A method as its file writes it, once it has been read: every field as the schema has it. */
export type MethodRecord = z.output<typeof methodRecord>;

export { quantityText };
