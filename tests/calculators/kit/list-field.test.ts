import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { explicitText } from '../../../src/calculators/kit/address.ts';
import { readInputs } from '../../../src/calculators/kit/answer.ts';
import { fieldMeta } from '../../../src/calculators/kit/fields.ts';
import { type ListRow, listField } from '../../../src/calculators/kit/list-field.ts';

type Names = 'name' | 'length' | 'count' | 'faults';

const fault = z.strictObject({ from: z.number(), to: z.number() });
const strips = listField<Names, readonly ListRow<Names>[]>(
  {
    label: 'Strips',
    noun: 'strip',
    columns: [
      { name: 'name', label: 'Name', example: 'ash', leading: true },
      { name: 'length', label: 'Length', example: '400 mm', measure: 'length' },
      { name: 'count', label: 'How many', example: '2', optional: true },
      {
        name: 'faults',
        label: 'Faults',
        example: '100 to 120 mm',
        measure: 'span',
        optional: true,
        rest: { object: fault, written: ({ from, to }: z.output<typeof fault>) => `${from} to ${to} mm` },
      },
    ],
    examples: ['ash, 400 mm, 2'],
  },
  (rows) => ({ ok: true, value: rows }),
);
const pairs = listField<'x' | 'y', readonly ListRow<'x' | 'y'>[]>(
  {
    label: 'Places',
    noun: 'place',
    columns: [
      { name: 'x', label: 'Along', example: '1 mm', measure: 'length' },
      { name: 'y', label: 'Across', example: '2 mm', measure: 'length', optional: true },
    ],
    examples: ['1, 2'],
  },
  (rows) => ({ ok: true, value: rows }),
);
const asking = { inputs: z.strictObject({ strips: z.optional(strips), pairs: z.optional(pairs) }) };

const cellsOf = (given: unknown) => {
  const read = readInputs(asking, { strips: given });
  return read.ok ? read.value.strips?.map(({ cells }) => Object.values(cells)) : read.errors[0]?.message;
};

describe('a text and a list of objects mean the same', () => {
  test.each<[unknown, string[][]]>([
    [
      'ash, 400 mm, 2; 300, 1',
      [
        ['ash', '400 mm', '2', ''],
        ['', '300', '1', ''],
      ],
    ],
    ['ash, 1,5 m,', [['ash', '1,5 m', '', '']]],
    ['ash, 400, 2, 100 to 120 mm, 200 to 210 mm', [['ash', '400', '2', '100 to 120 mm, 200 to 210 mm']]],
    [[{ name: 'ash', length: 400, count: 2 }], [['ash', '400', '2', '']]],
    [
      [{ length: '400 mm', faults: ['5 to 9 mm', { from: 100, to: 120 }] }],
      [['', '400 mm', '', '5 to 9 mm, 100 to 120 mm']],
    ],
  ])('%j', (given, cells) => {
    expect(cellsOf(given)).toEqual(cells);
  });
});

describe('what a list of objects lacks is named by entry', () => {
  test.each<[unknown, string]>([
    [[{ length: 400 }, { name: 'ash' }], 'Strip 2 has no length. Give it as, for example, 400 mm.'],
    [
      [{ lenght: 400 }],
      'Strip 1 has a “lenght”, which is not known. Did you mean length? Its names are name, length, count, faults.',
    ],
    [[{ length: true }], 'Strip 1: true cannot be read as length. Give it as, for example, 400 mm.'],
    [[[400]], 'Strip 1, [400], is not an object. Its names are name, length, count, faults.'],
  ])('%j', (given, message) => {
    expect(cellsOf(given)).toBe(message);
  });

  test('more parts than columns are refused, not lost', () => {
    const read = readInputs(asking, { pairs: '1, 2, 3' });
    expect(read.ok ? '' : read.errors[0]?.message).toBe(
      'Place 1: “1, 2, 3” has more parts than along, across. Write one place a line.',
    );
  });
});

describe('rows of a page', () => {
  const { rows } = fieldMeta(strips) ?? {};
  test('are written back as they were split', () => {
    const text = 'ash, 400 mm, 2, 100 to 120 mm, 200 to 210 mm\n300 mm, 1';
    expect(rows?.join(rows.split(text) ?? [])).toBe(text);
  });

  test('a name that reads as a number is told apart by what it names', () => {
    expect(rows?.join([['2', '400 mm', '', '']])).toBe('strip 2, 400 mm');
  });

  test('a comma or line end in a cell of words parts nothing', () => {
    expect(rows?.split(rows.join([['ash, old\nand; grey', '1,5 m', '', '']]))).toEqual([
      ['ash  old and  grey', '1,5 m', '', ''],
    ]);
  });

  test('an empty row is no entry', () => {
    expect(
      rows?.join([
        ['ash', '400 mm', '', ''],
        ['', '', '', ''],
      ]),
    ).toBe('ash, 400 mm');
  });

  test('there are none where an entry has more parts than columns: nothing typed is lost', () => {
    expect(fieldMeta(pairs)?.rows?.split('1, 2, 3')).toBeUndefined();
  });
});

test('bare numbers get the reader’s unit by their column', () => {
  const meta = fieldMeta(strips);
  const reader = { system: 'inch', inches: 'thirty-seconds' } as const;
  expect(meta && explicitText(meta, 'ash, 16, 2, 4 to 5; 12, 1', reader)).toBe('ash, 16 in, 2, 4 in to 5 in; 12 in, 1');
});
