import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type * as z from 'zod/mini';
import { blanksField, boardsField } from '../../../src/calculators/board-yield/fields.ts';
import { gridField, placesField } from '../../../src/calculators/flatten-plan/fields.ts';
import { calculatorById, calculators } from '../../../src/calculators/index.ts';
import { readAddress, withUnits, writeAddress } from '../../../src/calculators/kit/address.ts';
import { fieldsOf } from '../../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { type FieldMeta, fieldMeta } from '../../../src/calculators/kit/fields.ts';
import { readingsField } from '../../../src/calculators/kit/readings-field.ts';
import { stavesField } from '../../../src/calculators/kit/staves-field.ts';
import { temperatureLogField } from '../../../src/calculators/kit/temperature-log-field.ts';
import { depthsField, shapesField } from '../../../src/calculators/resin-dose/lists.ts';
import { defaultUnits, inReaderUnits, type ReaderUnits } from '../../../src/model/quantity/index.ts';
import { listUnits, readListLength, splitSpan, tightCommas } from '../../../src/model/quantity/lists.ts';

const inch: ReaderUnits = { system: 'inch', inches: 'thirty-seconds' };
const words = { label: 'A list' };

/** Every list that holds lengths or temperatures, and entries of it with `#` where a number stands. */
const fields: Record<string, { field: z.ZodMiniType; entries: readonly string[]; temperature?: true }> = {
  boards: {
    field: boardsField(words),
    entries: ['ash A, #, #, knot # to # across # to #', '#, #', 'b, #, #, # to #, check #–#'],
  },
  blanks: { field: blanksField(words), entries: ['tray, #, #, 4', '#, #', 'paddle, #, #, x2'] },
  heights: { field: gridField(words), entries: ['#, #, #', '-#, #, #', '#, #, −#'] },
  places: { field: placesField(words), entries: ['#, #, #', '#, #, -#'] },
  shapes: { field: shapesField('') as z.ZodMiniType, entries: ['channel, #, #', 'rectangle, #, #, 3', 'oval, #, #'] },
  depths: { field: depthsField('') as z.ZodMiniType, entries: ['#', '#'] },
  staves: {
    field: stavesField(words) as z.ZodMiniType,
    entries: ['white-ash, #, flatsawn', 'sugar-maple, #'],
  },
  readings: {
    field: readingsField(words) as z.ZodMiniType,
    entries: ['Jan, #, 40 %', '#, 45', 'Mar # 38 %'],
    temperature: true,
  },
  log: { field: temperatureLogField(words) as z.ZodMiniType, entries: ['# h, #'], temperature: true },
};

const lengths = fc.constantFrom('1', '2', '3.5', '5', '1/2', '1 1/4', '9-3/8', '12', '7 15/16', '0.75');
const degrees = fc.constantFrom('50', '61', '62.5', '68', '70');

/** One text twice: with bare numbers, and with its unit behind every one of them. */
function twice(name: string): fc.Arbitrary<{ bare: string; full: string }> {
  const { entries, temperature } = fields[name] as (typeof fields)[string];
  const unit = temperature ? ' °F' : ' in';
  return fc
    .tuple(
      fc.array(fc.constantFrom(...entries), { minLength: 2, maxLength: 5 }),
      fc.infiniteStream(temperature ? degrees : lengths),
      fc.constantFrom('; ', ';', '\n'),
    )
    .map(([chosen, numbers, between]) => {
      let hours = 0;
      const lines = chosen.map((entry) => {
        const timed = entry.replace('# h', () => `${hours++} h`);
        const pieces = timed.split('#');
        const values = pieces.slice(1).map(() => numbers.next().value as string);
        const write = (with_: string) =>
          pieces.map((piece, at) => (at === 0 ? piece : `${values[at - 1]}${with_}${piece}`)).join('');
        return { bare: write(''), full: write(unit) };
      });
      return { bare: lines.map((line) => line.bare).join(between), full: lines.map((line) => line.full).join(between) };
    });
}

const metaOf = (field: z.ZodMiniType) => fieldMeta(field) as FieldMeta;
const read = (field: z.ZodMiniType, text: string) => {
  const outcome = field.safeParse(text);
  return outcome.success ? outcome.data : outcome.error.issues.map(({ message }) => message);
};
const withoutNotes = (value: unknown) => JSON.parse(JSON.stringify(value, (key, one) => (key === 'note' ? '' : one)));

describe('bare numbers of a list are in the reader’s unit', () => {
  test.each(Object.keys(fields))('%s: typed in inches, it means the same to a metric reader', (name) => {
    const { field } = fields[name] as (typeof fields)[string];
    const explicit = (text: string) => metaOf(field).explicit?.(text, inch) ?? text;
    fc.assert(
      fc.property(twice(name), ({ bare, full }) => {
        expect(withoutNotes(read(field, explicit(bare)))).toEqual(withoutNotes(read(field, full)));
        expect(explicit(explicit(bare))).toBe(explicit(bare));
      }),
      { numRuns: 60 },
    );
  });

  test.each(Object.keys(fields).filter((name) => !fields[name]?.temperature))(
    '%s: a link of a metric reader means what it meant',
    (name) => {
      const { field } = fields[name] as (typeof fields)[string];
      fc.assert(
        fc.property(twice(name), ({ bare }) => {
          const metric = bare.replace(/(\d+)(?:[ -](\d+\/\d+))/g, '$1').replace(/\d+\/\d+/g, '8');
          const explicit = field.safeParse(metaOf(field).explicit?.(metric, defaultUnits));
          const plain = field.safeParse(metric);
          expect([explicit.success, explicit.data]).toEqual([plain.success, plain.data]);
        }),
        { numRuns: 60 },
      );
    },
  );

  test('every list field of every calculator says how its bare numbers get a unit, but those that hold none', () => {
    const without = calculators.flatMap((calculator) =>
      Object.entries(fieldsOf(calculator))
        .filter(([, schema]) => ['list', 'readings'].includes(metaOf(schema).kind) && !metaOf(schema).explicit)
        .map(([name]) => `${calculator.id}.${name}`),
    );
    expect(without.sort()).toEqual(['grit-sequence.drawer', 'resin-dose.colours', 'resin-dose.pieceNames']);
  });

  test.each([
    ['inches', inch, 'in: 1/8, 1/32; 0, 1/16'],
    ['millimetres', defaultUnits, 'mm: 3, 1; 0, 2'],
  ] as const)('the address of a reader of %s names them, once', (_, units, written) => {
    const flatten = calculatorById('flatten-plan') as Calculator;
    const grid = written.replace(/^\w+: /, '');
    const search = writeAddress(flatten, { grid }, units);
    expect(readAddress(flatten, search)).toEqual({ grid: written });
    expect(withUnits(flatten, { grid: written }, inch)).toEqual({ grid: written });
  });
});

describe('fractions are of inches', () => {
  test.each(Object.keys(fields).filter((name) => !fields[name]?.temperature))(
    '%s: a bare 1/8 in millimetres is refused',
    (name) => {
      const { field, entries } = fields[name] as (typeof fields)[string];
      const text = entries.map((entry) => entry.replaceAll('#', '1/8')).join('; ');
      expect(String(read(field, text))).toMatch(/1\/8.*has a fraction and no unit.*Write .*in for inches, or .* mm/);
    },
  );
});

describe('a span', () => {
  test.each([
    ['knot 5 to 6 ft 3 in', '5 ft', '6 ft 3 in'],
    ['knot 2 to 3 ft 6 in', '2 ft', '3 ft 6 in'],
    ['5 1/2 to 6 ft', '5 1/2 ft', '6 ft'],
    ['knot 600 to 680 mm', '600 mm', '680 mm'],
    ['knot 600 mm to 680', '600 mm', '680 mm'],
    ['23 in to 26 in', '23 in', '26 in'],
    ['check 600-680', '600', '680'],
    ['check 600-680 mm', '600 mm', '680 mm'],
    ['60–63 1/2 in', '60 in', '63 1/2 in'],
    ["knot 5' to 6' 3\"", "5'", '6\' 3"'],
    ['3 to 6\' 3"', "3 '", '6\' 3"'],
    ['knot 5 ft 3 in to 8', '5 ft 3 in', '8'],
    ['600 .. 680', '600', '680'],
  ])('%s', (text, from, to) => {
    expect(splitSpan(text)).toMatchObject({ from, to });
  });

  test('none where there is no second place', () => {
    for (const text of ['knot', 'knot at 600', '', 'to', `knot ${'6'.repeat(500)} to 7`])
      expect(splitSpan(text)).toBeUndefined();
  });

  test('its ends get the reader’s unit, and one unit serves both', () => {
    const explicit = listUnits(() => ['span']);
    expect(explicit('knot 23 to 26', inch)).toBe('knot 23 in to 26 in');
    expect(explicit('knot 23 to 26 across 0 to 2 1/2', inch)).toBe('knot 23 in to 26 in across 0 in to 2 1/2 in');
    expect(explicit('knot 5 to 6 ft 3 in; check 3 to 4', inch)).toBe('knot 5 to 6 ft 3 in; check 3 in to 4 in');
  });

  test('five to six feet three begins at five feet', () => {
    const [board] = read(boardsField(words) as z.ZodMiniType, 'A, 8 ft, 10 in, knot 5 to 6 ft 3 in') as {
      defects: { from: number; to: number }[];
    }[];
    expect(board?.defects).toEqual([{ from: 1524, to: 1905, kind: 'knot' }]);
  });
});

describe('messages of a list', () => {
  test('name the entry, what was read and what is allowed, in the reader’s units', () => {
    const outcome = readListLength('1200', 'Board 2, width', { minimum: 10, maximum: 1000 }, '[in_i]');
    if (outcome.ok) throw new Error('1200 in was taken');
    const said = `${outcome.problem}. ${outcome.wayOut}`;
    expect(inReaderUnits(said, inch)).toMatch(
      /^Board 2, width: “1200” was read as 1200 in; what is taken is 13\/32 in to 39 1\/4 in/,
    );
    expect(inReaderUnits(said, defaultUnits)).toMatch(/was read as 30480 mm; what is taken is 10 mm to 1000 mm/);
  });

  test.each(['3,1,0,2', '0,0,3', '1/8,1/32'])('%s: a comma between digits is a decimal mark', (part) => {
    expect(tightCommas(part, 'Row 1')?.wayOut).toContain(part.replaceAll(',', ', '));
  });

  test.each(['3,5', '1 1/4', '12', ''])('%s has no comma that is wrong', (part) => {
    expect(tightCommas(part, 'Row 1')).toBeUndefined();
  });

  test.each([
    [gridField(words), '3,1,0,2; 2,0,0,1', /Put a blank after each comma: 3, 1, 0, 2/],
    [gridField(words), '3,1; 2,0', /comma between two digits is a decimal mark/],
    [gridField(words), '0 3/16 0; 0 1/8 0', /Put a comma between two heights/],
    [placesField(words), '0,0,3; 900,0,1', /Put a blank after each comma: 0, 0, 3/],
    [boardsField(words), 'A,2400,260', /Put a blank after each comma: 2400, 260/],
    [boardsField(words), 'A 96 10', /Board 1: “A 96 10” has no commas.*Put commas between: name, length, width/],
    [boardsField(words), '96 10', /Put commas between/],
    [boardsField(words), '8 ft 3 in', /width/],
    [blanksField(words), 'tray 18 9 6', /Blank 1: .*Put commas between: name, length, width, count/],
    [blanksField(words), 'x,24,9,4', /Put a blank after each comma: 24, 9, 4/],
  ] as const)('number %#', (field, text, message) => {
    expect(String(read(field as z.ZodMiniType, text))).toMatch(message);
  });

  test('repeat little of what was typed, and a text of a megabyte is refused at once', () => {
    const long = '9'.repeat(1_000_000);
    for (const name of Object.keys(fields)) {
      const { field } = fields[name] as (typeof fields)[string];
      const said = String(read(field, long));
      expect(said.length, name).toBeLessThan(400);
      expect(metaOf(field).explicit?.('1', inch)).toBeDefined();
    }
  });
});
