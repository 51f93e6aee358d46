import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { problemLine } from '../../../src/model/data/problem.ts';
import { readYamlRecord } from '../../../src/model/data/yaml.ts';

const schema = z.strictObject({
  id: z.string().check(z.regex(/^[a-z-]+$/)),
  kind: z.enum(['hardwood', 'softwood']),
  rows: z.record(z.string(), z.string()),
  density: z.optional(z.number().check(z.minimum(100), z.maximum(1400))),
  names: z.optional(z.array(z.string())),
});
const problemsOf = (text: string) => readYamlRecord(text, schema, 'wood.yaml').problems.map(problemLine);
const good = 'id: white-ash\nkind: hardwood\nrows:\n  shrinkage: "Ash: White"\n';

test('a record that fits comes back as data', () => {
  expect(readYamlRecord(good, schema, 'wood.yaml').record).toEqual({
    id: 'white-ash',
    kind: 'hardwood',
    rows: { shrinkage: 'Ash: White' },
  });
});

describe('what is wrong is reported at its place', () => {
  test.each([
    [
      'a word outside the list',
      good.replace('hardwood', 'hard'),
      'wood.yaml:2:7 kind: “hard” is not one of hardwood, softwood. Did you mean “hardwood”?',
    ],
    [
      'a number for a text',
      good.replace('"Ash: White"', '7'),
      'wood.yaml:4:14 rows.shrinkage: 7 is a number, and a text is needed here. Put it in quotes: "7".',
    ],
    [
      'a field too many',
      `${good}colour: pale\n`,
      'wood.yaml:5:1 colour: “colour” is not a field of this record. Remove it, or correct its spelling; the fields not yet written are density, names.',
    ],
    [
      'a field too few',
      good.replace('kind: hardwood\n', ''),
      'wood.yaml:1:1 kind: the field is missing. Write one of hardwood, softwood.',
    ],
    [
      'too little',
      `${good}density: 60\n`,
      'wood.yaml:5:10 density: 60 is less than the least allowed, 100. Give more.',
    ],
    [
      'too much',
      `${good}density: 6000\n`,
      'wood.yaml:5:10 density: 6000 is more than the most allowed, 1400. Give less.',
    ],
    [
      'a wrong form',
      good.replace('white-ash', 'White_Ash'),
      'wood.yaml:1:5 id: “White_Ash” does not have the form /^[a-z-]+$/. Rewrite it in that form.',
    ],
    [
      'an item of a list',
      `${good}names:\n  - ash\n  - 3\n`,
      'wood.yaml:7:5 names.1: 3 is a number, and a text is needed here. Put it in quotes: "3".',
    ],
  ])('%s', (_what, text, expected) => {
    expect(problemsOf(text)).toEqual([expected]);
  });
});
