import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculatorById, calculators } from '../../../src/calculators/index.ts';
import { startingInputs } from '../../../src/calculators/kit/address.ts';
import { fieldsOf, readInputs } from '../../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { carriedFrom, onwardOf, sharedInputs } from '../../../src/calculators/kit/carry.ts';
import { type FieldMeta, fieldMeta } from '../../../src/calculators/kit/fields.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { texts } from '../arbitrary.ts';

const fieldOf = (id: string, name: string) => fieldsOf(calculatorById(id) as Calculator)[name];
const metaOf = (id: string, name: string): FieldMeta | undefined => {
  const schema = fieldOf(id, name);
  return schema && fieldMeta(schema);
};

/** Every two fields between which a value is carried. */
const pairs = sharedInputs.flatMap(({ what, fields }) => {
  const all = Object.entries(fields);
  return all.flatMap(([one, name]) =>
    all.filter(([other]) => other !== one).map(([other, there]) => [what, one, name, other, there] as const),
  );
});

test('every name exists in its calculator, and none is carried in two ways', () => {
  const places = sharedInputs.flatMap(({ fields }) => Object.entries(fields));
  expect(places.filter(([id, name]) => metaOf(id, name) === undefined)).toEqual([]);
  expect(pairs.length).toBeGreaterThan(150);
  const ways = pairs.map(([, ...way]) => way.join(' '));
  expect(ways.filter((way, at) => ways.indexOf(way) !== at)).toEqual([]);
});

test.each(pairs)('%s: %s.%s and %s.%s are of one kind and one dimension', (_, one, name, other, there) => {
  const [from, to] = [metaOf(one, name), metaOf(other, there)];
  expect([to?.kind, to?.dimension, to?.whole ?? false]).toEqual([from?.kind, from?.dimension, from?.whole ?? false]);
});

test('what both read is read as the same', () => {
  for (const [what, one, name, other, there] of pairs) {
    const [from, to] = [fieldOf(one, name), fieldOf(other, there)];
    fc.assert(
      fc.property(texts(metaOf(one, name) as FieldMeta), (text) => {
        const [here, then] = [from?.safeParse(text), to?.safeParse(text)];
        if (here?.success && then?.success) expect(then.data, `${what}: ${one} to ${other}`).toEqual(here.data);
      }),
      { numRuns: 5 },
    );
  }
});

test('no area is carried: it is of all faces here, of one there, of the pour elsewhere', () => {
  const dimensions = pairs.map(([, one, name]) => metaOf(one, name)?.dimension);
  expect(dimensions).not.toContain('area');
});

describe('a case that goes on', () => {
  const onward = (id: string) => onwardOf(calculatorById(id) as Calculator, calculators);

  test('takes along what the other asks for too, under the name that it has there', () => {
    const asked = { length: '400 mm', width: '250 mm', thickness: '20 mm', count: '12', kerf: '3 mm' };
    const cases = carriedFrom(asked, onward('stock-order'));
    expect(cases.find(({ id }) => id === 'finish-coats')?.inputs).toMatchObject({ thickness: '20 mm', boards: '12' });
    expect(cases.find(({ id }) => id === 'seasonal-movement')).toMatchObject({
      title: 'Movement through the year',
      what: ['width', 'thickness'],
      inputs: { width: '250 mm', thickness: '20 mm' },
    });
    expect(cases.find(({ id }) => id === 'pour-heat')).toBeUndefined();
  });

  test('takes nothing of the worked case of the other board that may be left empty: no days since a pour that nobody told', () => {
    const [card] = carriedFrom({ finish: 'mineral-oil' }, onward('finish-coats')).filter(
      ({ id }) => id === 'care-card',
    );
    const raw = startingInputs(
      calculatorById('care-card') as Calculator,
      {},
      defaultUnits,
      `?${new URLSearchParams(card?.inputs)}`,
    );
    expect(raw.finish).toBe('mineral-oil');
    expect([raw.resin, raw.shopName].map((text) => text ?? '')).toEqual(['', '']);
    const [label] = carriedFrom({ finish: 'mineral-oil' }, onward('finish-coats')).filter(
      ({ id }) => id === 'food-contact',
    );
    const told = startingInputs(
      calculatorById('food-contact') as Calculator,
      {},
      defaultUnits,
      `?${new URLSearchParams(label?.inputs)}`,
    );
    expect([told.daysSincePour, told.daysSinceCoat, told.resin].map((text) => text ?? '')).toEqual(['', '', '']);
  });

  test('leaves behind what is empty and what the other does not take', () => {
    const cases = carriedFrom({ species: ' ', finish: 'none', market: 'eu' }, onward('food-contact'));
    expect(cases.map(({ id, inputs }) => [id, Object.entries(inputs).filter(([, text]) => text !== '')])).toEqual([
      ['care-card', Object.entries({ finish: 'none', market: 'eu' }).sort()],
    ]);
  });

  test.each(calculators.map((each) => [each.id, each] as const))(
    'the worked case of %s is read wherever it goes',
    (_, each) => {
      const asked = startingInputs(each, {}, defaultUnits, '');
      for (const { id, inputs } of carriedFrom(asked, onwardOf(each, calculators))) {
        const other = calculatorById(id) as Calculator;
        const raw = startingInputs(other, {}, defaultUnits, `?${new URLSearchParams(inputs)}`);
        const read = readInputs(other, raw);
        expect(read.ok ? [] : read.errors, `${each.id} to ${id}`).toEqual([]);
      }
    },
  );
});
