import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { kerf } from './run.ts';

const schema = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../schemas/${name}.json`, import.meta.url), 'utf8'));
const ajv = new Ajv2020({ strict: true });
const isReport = ajv.compile(schema('result'));

describe.each(calculators.map((calculator) => ({ id: calculator.id, calculator })))(
  'calc $id',
  ({ id, calculator }) => {
    const isInput = ajv.compile(schema(`calculator-${id}`));

    test.each(['metric', 'inch'] as const)('answers its %s example in the published shape', async (system) => {
      const inputs = calculator.example[system];
      expect(isInput(inputs), JSON.stringify(isInput.errors)).toBe(true);
      const { code, out, err } = await kerf('calc', id, '--json', JSON.stringify(inputs));
      expect([code, err]).toEqual([0, '']);
      const report = JSON.parse(out);
      expect(isReport(report), JSON.stringify(isReport.errors)).toBe(true);
      expect(report.calculator).toBe(id);
      expect(Object.keys(report.inputs).sort()).toEqual(Object.keys(inputs).sort());
      expect(Object.keys(report.figures).length).toBeGreaterThan(0);
      expect(Object.keys(report.figures).filter((name) => !Object.hasOwn(calculator.figures, name))).toEqual([]);
    });

    test('explains itself', async () => {
      const { code, out } = await kerf('calc', id, '--help');
      expect(code).toBe(0);
      expect(out).toContain(calculator.title);
      expect(out).toContain(`kerf calc ${id} --json '`);
      expect(out).not.toMatch(/undefined|NaN/);
    });
  },
);

describe('the schema of the inputs refuses two ways to say the same', () => {
  const every = new Ajv2020({ strict: true, allErrors: true });

  test.each(
    calculators.filter(({ alternatives }) => alternatives).map(({ id, alternatives }) => ({ id, alternatives })),
  )('$id', ({ id, alternatives = [] }) => {
    const check = every.compile(schema(`calculator-${id}`));
    const barred = (...fields: string[]) => {
      check(Object.fromEntries(fields.map((field) => [field, ''])));
      const refused = check.errors?.filter(({ keyword }) => keyword === 'false schema' || keyword === 'const') ?? [];
      return refused.map(({ instancePath }) => instancePath.slice(1));
    };
    for (const { sets } of alternatives) {
      const deciding = sets.map((set) => set.deciding ?? set.fields);
      deciding.forEach((one, at) => {
        for (const a of one) {
          expect(barred(a)).toEqual([]);
          for (const b of deciding.slice(at + 1).flat())
            expect([[a], [b]], `${a} and ${b}`).toContainEqual(barred(a, b));
        }
      });
    }
  });
});

describe('calc', () => {
  const board = { species: 'white-ash', width: '240 mm', moistureFrom: '14 %', moistureTo: '8 %', cut: 'flatsawn' };
  const ask = (inputs: object) => kerf('calc', 'width-change', '--json', JSON.stringify(inputs));

  test('takes numbers in the default unit, and says so in its answer', async () => {
    const texts = JSON.parse((await ask(board)).out);
    const numbers = JSON.parse((await ask({ ...board, width: 240, moistureFrom: 14, moistureTo: 8 })).out);
    expect(numbers).toEqual(texts);
    expect(numbers.inputs).toMatchObject({ width: '240 mm', moistureFrom: '14 %' });
  });

  test('takes inches', async () => {
    const report = JSON.parse((await ask({ ...board, width: '9 1/2 in' })).out);
    expect(report.inputs.width).toBe('9 1/2 in');
    const inMillimetres = JSON.parse((await ask({ ...board, width: 241.3 })).out);
    expect(report.figures).toEqual(inMillimetres.figures);
  });

  test.each([
    ['an unknown wood', { ...board, species: 'white-asch' }, /^species: .*“white-asch”.*white-ash\?\n$/],
    [
      'a width that is no length',
      { ...board, width: 'wide' },
      /^width: “wide” is not a length\. Write a length such as .*\n$/,
    ],
    ['a width out of range', { ...board, width: '90 m' }, /^width: 90 m is more than this takes: .* mm\. .*\n$/],
    ['a misspelt input', { ...board, widht: '240 mm' }, /^widht: .*Did you mean width\?\n$/],
    ['a missing input', { ...board, width: undefined }, /^width: Nothing was given .*\n$/],
  ])('refuses %s', async (_what, inputs, message) => {
    const { code, out, err } = await ask(inputs);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });

  test('names every field that is wrong, one a line', async () => {
    const { err } = await ask({ ...board, width: 'wide', moistureTo: '8 mm' });
    expect(
      err
        .trim()
        .split('\n')
        .map((line) => line.split(':')[0]),
    ).toEqual(['width', 'moistureTo']);
  });

  test.each([
    [['calc'], /^calc: no calculator was named; there are .*width-change/],
    [
      ['calc', 'width-chance'],
      /^calc: “width-chance” is not a calculator; there are .* Did you mean width-change\?\n$/,
    ],
    [['calc', 'zzz'], /^calc: “zzz” is not a calculator; there are .* Pick one of them\.\n$/],
    [
      ['calc', 'width-change'],
      /^calc width-change: no inputs were given\. Write, for example: kerf calc width-change --json '\{/,
    ],
    [['calc', 'width-change', '--json', '{species'], /^--json: the text is not JSON \(.*\)\. Write, for example: /],
    [
      ['calc', 'width-change', '--json', '[1]'],
      /^--json: \[1\] is not an object of inputs by name\. Write, for example: /,
    ],
    [['calc', 'width-change', '240 mm'], /^calc: “240 mm” was not expected after width-change\. /],
    [['calc', 'width-change', '--jsn', '{}'], /^calc: --jsn is not an option/],
    [
      ['calk', 'width-change'],
      /^kerf: “calk” is not a command; there are calc, check, new, plan, sheet, species, checks, validate\. Did you mean calc\?\n$/,
    ],
    [['frobnicate'], /^kerf: “frobnicate” is not a command; .*Write kerf --help\.\n$/],
  ])('%j is refused with a way out', async (args, message) => {
    const { code, out, err } = await kerf(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });
});

test.each([['--help'], ['help'], ['-h']])('kerf %s lists the commands', async (flag) => {
  const { code, out, err } = await kerf(flag);
  expect([code, err]).toEqual([0, '']);
  for (const name of ['calc', 'species', 'validate', 'checks']) expect(out).toContain(`kerf ${name}`);
});

test('what is printed of an answer stands in it, as blocks and as text', async () => {
  const inputs = JSON.stringify({ species: 'sugar-maple', finish: 'mineral-oil', market: 'us', resinPlace: 'none' });
  const { out } = await kerf('calc', 'care-card', '--json', inputs);
  const report = JSON.parse(out);
  expect(isReport(report), JSON.stringify(isReport.errors)).toBe(true);
  expect(report.documents.map(({ id, form }: { id: string; form: string }) => [id, form])).toEqual([['card', 'card']]);
  const text = (await kerf('calc', 'care-card', '--text', '--json', inputs)).out;
  expect(text).toContain('== The card ==\n\nShop: ________________\n\nCare of your board\nMade of sugar maple');
  expect(text).toContain('Made on, batch: ____');
});
