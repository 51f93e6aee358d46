import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { problemLine } from '../../../src/model/data/problem.ts';
import { readYamlRecord } from '../../../src/model/data/yaml.ts';

describe('what a schema refuses is told in plain words', () => {
  const schema = z.strictObject({
    step: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('pour'), depth: z.number() }),
      z.strictObject({ kind: z.enum(['wait', 'sand']), note: z.string() }),
    ]),
    either: z.optional(z.union([z.string(), z.array(z.string()), z.strictObject({ litres: z.number() })])),
    rates: z.optional(z.record(z.string().check(z.regex(/^a/, 'A rate is named by a.')), z.number())),
    list: z.optional(z.array(z.number()).check(z.minLength(1), z.maxLength(2))),
    whole: z.optional(z.int()),
    half: z.optional(z.number().check(z.multipleOf(0.5), z.positive())),
    yes: z.optional(z.literal(true)),
    short: z.optional(z.string().check(z.minLength(1), z.maxLength(5))),
    done: z.optional(z.boolean()),
    quantity: z.optional(
      z.union([z.union([z.string().check(z.minLength(1)), z.number()]), z.strictObject({ from: z.string() })], {
        error: 'Write a quantity, or refer to one.',
      }),
    ),
    any: z.optional(z.union([z.array(z.number()), z.string(), z.number(), z.boolean()])),
  });
  const needy = z.strictObject({ a: z.union([z.string(), z.number()], { error: 'Write a quantity.' }) });
  test('a union with words of its own, missing', () => {
    expect(readYamlRecord('b: 1', needy, 'f').problems.map(problemLine)).toContain(
      'f:1:1 a: the field is missing. Write a quantity.',
    );
  });
  const good = 'step: { kind: pour, depth: 1 }\n';
  test.each([
    [
      'a word of no kind',
      'step: { kind: por }',
      ['f:1:15 step.kind: “por” is not one of pour, wait, sand. Did you mean “pour”?'],
    ],
    ['no word', 'step: { depth: 1 }', ['f:1:1 step.kind: the field is missing. Write one of pour, wait, sand.']],
    [
      'a field of another kind',
      'step: { kind: wait, note: "", depth: 1 }',
      ['f:1:31 step.depth: “depth” is not a field of “step”. Remove it, or correct its spelling.'],
    ],
    [
      'a field misspelt',
      'step: { kind: pour, dept: 1 }',
      [
        'f:1:1 step.depth: the field is missing. Add it: it takes a number.',
        'f:1:21 step.dept: “dept” is not a field of “step”. Did you mean “depth”?',
      ],
    ],
    [
      'none of three kinds',
      `${good}either: 3`,
      ['f:2:9 either: 3 is a number, and a text or a list or a group of fields is needed here. Put it in quotes: "3".'],
    ],
    [
      'nearly one of three kinds',
      `${good}either: [a, 3]`,
      ['f:2:13 either.1: 3 is a number, and a text is needed here. Put it in quotes: "3".'],
    ],
    ['a name not allowed', `${good}rates: { b: 1 }`, ['f:2:10 rates.b: “b” cannot be used. A rate is named by a.']],
    ['an empty list', `${good}list: []`, ['f:2:7 list: the list holds 0; it takes at least 1. Add to it.']],
    ['a long list', `${good}list: [1, 2, 3]`, ['f:2:7 list: the list holds 3; it takes at most 2. Take some out.']],
    [
      'dashes without a space',
      `${good}list:\n  -a\n  -b`,
      ['f:3:3 list: “-a -b” is a text, and a list is needed here. Put a space behind each dash.'],
    ],
    ['half of a whole', `${good}whole: 1.5`, ['f:2:8 whole: 1.5 is not a whole number. Write digits alone.']],
    ['a third of a half', `${good}half: 0.3`, ['f:2:7 half: 0.3 is not a whole multiple of 0.5. Round it to one.']],
    ['nothing where more is needed', `${good}half: 0`, ['f:2:7 half: 0 is not more than 0. Give more.']],
    [
      'no number',
      `${good}half: .nan`,
      ['f:2:7 half: this is no number that can be counted with. Write digits with a decimal point, without a unit.'],
    ],
    [
      'a number in quotes',
      `${good}half: "1.5"`,
      ['f:2:7 half: “1.5” is a text, and a number is needed here. Write it without quotes: 1.5.'],
    ],
    [
      'a comma for a point',
      `${good}half: 1,5`,
      ['f:2:7 half: “1,5” is a text, and a number is needed here. Write 1.5, with a decimal point.'],
    ],
    [
      'a unit too many',
      `${good}half: 20 mm`,
      [
        'f:2:7 half: “20 mm” is a text, and a number is needed here. Write digits with a decimal point, without a unit.',
      ],
    ],
    ['one word alone', `${good}yes: no`, ['f:2:6 yes: “no” cannot stand here, only true. Write true.']],
    [
      'yes for true',
      `${good}done: yes`,
      ['f:2:7 done: “yes” is a text, and true or false is needed here. Write true or false, without quotes.'],
    ],
    [
      'an empty text',
      `${good}short: ""`,
      ['f:2:8 short: the text is empty. Write it between the quotes, or remove the field if it may be left out.'],
    ],
    [
      'a long text',
      `${good}short: abcdefgh`,
      ['f:2:8 short: the text is 8 characters long; it takes at most 5. Shorten it.'],
    ],
    [
      'a text in braces',
      `${good}short: {/a}`,
      [
        'f:2:8 short: {"/a":null} is a group of fields, and a text is needed here. Write it in one line, in double quotes where it holds : # [ ] { or }.',
      ],
    ],
    [
      'a word in quotes that is none',
      `${good}yes: "true"`,
      ['f:2:6 yes: “true” is a text here. Write it without quotes: true.'],
    ],
    [
      'a part misspelt of one of two kinds',
      `${good}quantity: { frm: /a }`,
      [
        'f:2:1 quantity.from: the field is missing. Add it: it takes a text.',
        'f:2:13 quantity.frm: “frm” is not a field of “quantity”. Did you mean “from”?',
      ],
    ],
    [
      'no kind of it, in the words of the schema',
      `${good}quantity: true`,
      ['f:2:11 quantity: true cannot be used. Write a quantity, or refer to one.'],
    ],
    [
      'one kind of it, but empty',
      `${good}quantity: ""`,
      ['f:2:11 quantity: the text is empty. Write it between the quotes, or remove the field if it may be left out.'],
    ],
    [
      'none of it where a schema has words',
      `${good}quantity:`,
      ['f:2:10 quantity: the field is empty. Write a quantity, or refer to one.'],
    ],
    [
      'a name with its value',
      'step: { kind:pour, depth: 1 }',
      ['f:1:1 step.kind: the field is missing. Write one of pour, wait, sand.'],
    ],
    [
      'a colon without a space in brackets',
      'step: { kind: pour, depth: 1, on:1 }',
      ['f:1:31 step.on:1: “on:1” is not a field of “step”. Write a space behind its colon.'],
    ],
    [
      'no number, where more than numbers fit',
      `${good}any: .inf`,
      ['f:2:6 any: this is no number that can be counted with. Write digits with a decimal point, without a unit.'],
    ],
    ['empty, where much fits', `${good}any:`, ['f:2:5 any: the field is empty. Write its value behind the colon.']],
    [
      'a field left empty',
      `${good}list:\n`,
      ['f:2:6 list: the field is empty, and it takes a list. Write [one, two], or lines below that begin with “- ”.'],
    ],
    [
      'a list for a record',
      '- a',
      [
        'f:1:1 ["a"] is a list, and a group of fields is needed here. Write its fields in lines below, each “name: value”, indented by two spaces.',
      ],
    ],
    [
      'faults in the order of the text',
      `${good}zzzz: 1\nhalf: 0\n`,
      [
        'f:2:1 zzzz: “zzzz” is not a field of this record. Remove it, or correct its spelling; the fields not yet written are either, rates, list, whole, yes, short, done, quantity, any.',
        'f:3:7 half: 0 is not more than 0. Give more.',
      ],
    ],
  ])('%s', (_what, text, expected) => {
    expect(readYamlRecord(text, schema, 'f').problems.map(problemLine)).toEqual(expected);
  });
});
