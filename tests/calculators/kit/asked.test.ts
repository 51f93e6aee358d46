import { describe, expect, test } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import { answerTo, fieldsOf } from '../../../src/calculators/kit/answer.ts';
import { askedWords } from '../../../src/calculators/kit/asked.ts';
import type { RawInputs } from '../../../src/calculators/kit/calculator.ts';
import type { Result } from '../../../src/model/evidence/index.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';

/** The numbers and the sentence of an answer: notes may say whose a value is. */
const told = (outcome: ReturnType<typeof answerTo>) => {
  if (!outcome.ok) return outcome;
  const { figures, verdict, tables = [] }: Result = outcome.value;
  return {
    figures: Object.entries(figures).map(([name, { value, low, high }]) => [name, value, low, high]),
    rows: tables.map(({ id, rows }) => [id, rows]),
    level: verdict.level,
  };
};

const without = (raw: RawInputs, name: string): RawInputs =>
  Object.fromEntries(Object.entries(raw).filter(([field]) => field !== name));

const cases = calculators.flatMap((calculator) =>
  (['metric', 'inch'] as const).flatMap((system) => {
    const example = calculator.example[system];
    return Object.keys(calculator.taken?.(example) ?? {}).map((name) => ({ calculator, name, example, system }));
  }),
);

describe('what is taken where a field is empty', () => {
  test.each(cases)('$calculator.id, $name, $system', ({ calculator, name, example }) => {
    expect(Object.keys(fieldsOf(calculator))).toContain(name);
    // An address is metric for everybody.
    const empty = without(example, name);
    const taken = calculator.taken?.(empty)[name] as string;
    expect(told(answerTo(calculator, { ...empty, [name]: taken }))).toEqual(told(answerTo(calculator, empty)));
  });
});

const order = calculators.find(({ id }) => id === 'stock-order') as (typeof calculators)[number];
const dose = calculators.find(({ id }) => id === 'resin-dose') as (typeof calculators)[number];
const grits = calculators.find(({ id }) => id === 'grit-sequence') as (typeof calculators)[number];

test('paper says what was entered and what was taken, each once', () => {
  const raw = { length: '420', width: '220 mm', thickness: '19 mm', count: '12', surfacing: 's2s', spare: ' ' };
  const { given, taken } = askedWords(order, raw, defaultUnits);
  expect(given.map(({ label, words }) => `${label} ${words}`)).toEqual([
    'Finished length 420 mm',
    'Finished width 220 mm',
    'Finished thickness 19 mm',
    'Pieces wanted 12',
    'Bought Planed on two faces (S2S)',
  ]);
  expect(taken.map(({ name, words }) => [name, words])).toEqual([
    ['clearFaces', 'Both'],
    ['endTrim', '2 in'],
    ['outlineClearance', '1/8 in'],
    ['planing', '0 in'],
    ['spare', '10 %'],
    ['kerf', '3.2 mm'],
  ]);
});

test('a resin is named, a list stands on one line, and nothing is taken for a weight that was given', () => {
  const raw = { resin: 'slow-casting-2-1', shapes: 'channel, 280 mm, 18 mm\nchannel, 100, 18', depth: '6 mm' };
  const { given, taken } = askedWords(dose, raw, defaultUnits);
  expect(given.map(({ words }) => words)).toEqual([
    'slow casting, 2 : 1',
    'channel, 280 mm, 18 mm; channel, 100 mm, 18 mm',
    '6 mm',
  ]);
  expect(taken.map(({ name }) => name)).toEqual(['residue', 'spare']);
  expect(askedWords(dose, { mass: '300 g' }, defaultUnits).taken).toEqual([]);
  // Beside a ratio that was typed the kind's own is not said.
  const typed = askedWords(dose, { resin: 'slow-casting-2-1', mixRatio: '100:43' }, defaultUnits).given;
  expect(typed.map(({ words }) => words)).toEqual(['slow casting', '100:43']);
  expect(askedWords(dose, { resin: '{"name":"Ours"}' }, defaultUnits).given[0]?.words).toBe('Ours');
});

test('a number that another calculation gave is said in the digits that it deserves', () => {
  const words = (units: typeof defaultUnits) =>
    askedWords(grits, { area: '207231.50383789756 mm²' }, units).given[0]?.words;
  expect(words(defaultUnits)).toBe('2070 cm²');
  expect(words({ ...defaultUnits, system: 'inch' })).toBe('2.23 ft²');
});

test('a reader of inches is told in inches what was taken, also where no fraction is the same case', () => {
  const inches = { ...defaultUnits, system: 'inch' as const };
  const lengths = cases.flatMap(({ calculator, example, name }) => {
    const empty = { ...example, [name]: '' };
    return askedWords(calculator, empty, inches).taken.filter(({ words }) => /\d mm\b/.test(words));
  });
  expect(lengths).toEqual([]);
});
