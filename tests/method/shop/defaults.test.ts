import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import { overlay } from '../../../src/calculators/kit/address.ts';
import { answerTo, fieldsOf } from '../../../src/calculators/kit/answer.ts';
import { readShopDefaults } from '../../../src/calculators/kit/read-shop-defaults.ts';
import { shopInputs } from '../../../src/calculators/kit/shop-defaults.ts';
import { shopDefaults } from '../../../src/method/shop/defaults.ts';
import { readShop } from '../../../src/method/shop/index.ts';

const text = readFileSync('methods/shop.yaml', 'utf8');

function defaultsOf(source: string) {
  const { shop, reading, problems } = readShop(source);
  if (!shop) throw new Error(problems.map(({ message }) => message).join('\n'));
  return shopDefaults({ shop, reading });
}
const head = 'shop: 1\nname: Barn\nzone: Europe/Oslo\ncurrency: NOK\n';

describe('what calculators begin with of a shop record', () => {
  const sample = defaultsOf(text);

  test('stands as it was written, in the units of the shop', () => {
    expect(sample.shop).toBe('Lakeside community workshop');
    expect(sample.inputs['flatten-plan']).toMatchObject({ planerWidth: '13 in', jointerWidth: '6 in' });
    expect(sample.inputs['resin-dose']).toMatchObject({ scaleDivision: '1 g', shopTemperature: '20 °C' });
    expect(sample.inputs['cure-clock']).toMatchObject({ dayTemperature: '20 °C', nightTemperature: '17 °C' });
    expect(sample.inputs['grit-sequence']).toEqual({ drawer: 'P80, P100, P120, P150, P180, P220, P320, P400' });
    expect(sample.inputs['care-card']).toMatchObject({ shop: 'Lakeside community workshop' });
  });

  test.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
    '%s answers its worked case with them',
    (_, calculator) => {
      const own = shopInputs(calculator, sample);
      for (const name of Object.keys(own)) expect(Object.keys(fieldsOf(calculator))).toContain(name);
      for (const system of ['metric', 'inch'] as const) {
        const outcome = answerTo(calculator, overlay(calculator, calculator.example[system], own));
        expect(outcome.ok ? [] : outcome.errors).toEqual([]);
      }
    },
  );

  test('every calculator that is named asks for every input that is named', () => {
    for (const [id, inputs] of Object.entries(sample.inputs)) {
      const calculator = calculators.find((each) => each.id === id);
      expect(Object.keys(inputs).filter((name) => !Object.hasOwn(fieldsOf(calculator as never), name))).toEqual([]);
    }
  });

  test('a record that says nothing gives nothing but its name', () => {
    expect(defaultsOf(head)).toEqual({ shop: 'Barn', inputs: { 'care-card': { shop: 'Barn' } } });
  });

  test('of two resins none is taken: nobody but the maker knows which is poured', () => {
    const resin = (id: string) => `  - { id: ${id}, sheet: { name: ${id}, kind: slow-casting-2-1 } }\n`;
    expect(
      JSON.parse(defaultsOf(`${head}resins:\n${resin('one')}`).inputs['pour-heat']?.['resin'] ?? ''),
    ).toMatchObject({ name: 'one' });
    expect(defaultsOf(`${head}resins:\n${resin('one')}${resin('two')}`).inputs['pour-heat']).toBeUndefined();
  });

  test('without a night the shop is taken to be even; own readings go before the nearest place', () => {
    const even = defaultsOf(`${head}air: { day: 68 °F, place: oslo-no, readings: "January, 20 °C, 30 %" }\n`);
    expect(even.inputs['pour-heat']).toEqual({ shopTemperature: '68 °F' });
    expect(even.inputs['finish-and-moisture']).toEqual({ readings: 'January, 20 °C, 30 %' });
  });

  test('the mix is weighed on the scale that carries most; of scales that do not say, on the coarsest', () => {
    const scales = (...all: string[]) => defaultsOf(`${head}scales:\n${all.map((one) => `  - ${one}\n`).join('')}`);
    const fine = '{ id: fine, division: 0.1 g, capacity: 500 g }';
    expect(scales(fine, '{ id: big, division: 2 g, capacity: 5 kg }').inputs['resin-dose']).toEqual({
      scaleDivision: '2 g',
    });
    expect(scales('{ id: a, division: 0.1 g }', '{ id: b, division: 1 g }').inputs['resin-dose']).toEqual({
      scaleDivision: '1 g',
    });
  });

  test('a board without resin gets none', () => {
    const calculator = { ...(calculators.find(({ id }) => id === 'care-card') as (typeof calculators)[number]) };
    const bare = { ...calculator, example: { metric: {}, inch: {} } };
    expect('resin' in shopInputs(calculator, sample)).toBe(true);
    expect('resin' in shopInputs(bare, sample)).toBe(false);
  });
});

describe('what a browser kept of them', () => {
  test('comes back through JSON', () => {
    const sample = defaultsOf(text);
    expect(readShopDefaults(JSON.parse(JSON.stringify(sample)))).toEqual(sample);
  });

  test.each<unknown>([null, 7, 'x', [], {}, { shop: 1, inputs: {} }, { shop: 'x' }, { shop: 'x', inputs: [] }])(
    'and %j is none',
    (kept) => expect(readShopDefaults(kept)).toBeUndefined(),
  );

  test('inputs that are no texts are left out, and names of the language reach nothing', () => {
    const kept = JSON.parse('{"shop":"x","inputs":{"a":{"b":1},"__proto__":{"c":"d"},"cure-clock":{"resin":"y"}}}');
    const read = readShopDefaults(kept);
    expect(read?.inputs['cure-clock']).toEqual({ resin: 'y' });
    expect(Object.hasOwn(read?.inputs ?? {}, 'a')).toBe(false);
    expect(({} as Record<string, unknown>)['c']).toBeUndefined();
  });
});
