import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer, readInputs } from '../../../src/calculators/kit/answer.ts';
import { seasonalMovementCalculator } from '../../../src/calculators/seasonal-movement/calculator.ts';
import { defaultUnits, nearest, wordsInReaderUnits } from '../../../src/model/quantity/index.ts';
import { sample } from './sample.ts';

describe('reading inputs', () => {
  test('texts, numbers and blanks', () => {
    expect(readInputs(sample, { width: '30 cm', length: 600, paces: '  ', face: ' Both ' })).toEqual({
      ok: true,
      value: { width: 300, length: 600, face: 'both' },
    });
  });

  test.each([
    ['nothing given', {}, 'width', 'Nothing was given for width. Give it as, for example, 300 mm.'],
    [
      'out of range',
      { width: '3 m' },
      'width',
      '3 m is more than this takes: 1 mm to 1000 mm. Give a value in that range.',
    ],
    [
      'not a value of the choice',
      { width: 5, face: 'none' },
      'face',
      '“none” is not one of one, both. Pick one of them.',
    ],
    [
      'not a text or a number',
      { width: { a: 1 } },
      'width',
      '{"a":1} cannot be read as width. Give it as, for example, 300 mm.',
    ],
    [
      'a misspelt name',
      { wdith: 5 },
      'wdith',
      'There is no input of this name; the inputs are width, length, paces, face. Did you mean width?',
    ],
  ])('%s', (_, raw, field, message) => {
    expect(wordsInReaderUnits(readInputs(sample, raw), defaultUnits)).toEqual({
      ok: false,
      errors: [{ field, message }],
    });
  });

  test('anything at all gives an answer or field errors', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('width', 'length', 'paces', 'face', 'x'), fc.jsonValue()), (raw) => {
        const outcome = answer(sample, raw);
        if (outcome.ok) expect(Number.isFinite(outcome.value.result.figures.area?.value)).toBe(true);
        else for (const error of outcome.errors) expect(error.message).toMatch(/\.$|\?$/);
      }),
    );
  });
});

test.each([
  ['suger-maple', 'sugar-maple'],
  ['widht', 'width'],
  ['xyzzy', undefined],
])('nearest name to %s is %s', (name, expected) => {
  expect(nearest(name, ['width', 'sugar-maple', 'white-ash'])).toBe(expected);
});

test('of several inputs that say nothing alone, those given are told apart by commas', () => {
  const asked = { ...seasonalMovementCalculator.example.metric, place: '', indoors: '', heatTo: '' };
  const given = { dryTemperature: '20 °C', dryHumidity: '30 %', wetTemperature: '24 °C' };
  const outcome = answer(seasonalMovementCalculator, { ...asked, ...given });
  const [error] = outcome.ok ? [] : outcome.errors;
  expect(error?.field).toBe('wetHumidity');
  expect(error?.message).toMatch(/or leave “[^”]+”, “[^”]+” and “[^”]+” empty\.$/);
});

test('what an answer makes only when it is looked at is not made by answering, and once where it is', () => {
  let drawn = 0;
  const lazy = {
    ...sample,
    compute: (inputs: Parameters<typeof sample.compute>[0]) => {
      const computed = sample.compute(inputs);
      if (!computed.ok) return computed;
      let drawings: [] | undefined;
      const value = {
        ...computed.value,
        get drawings() {
          if (!drawings) drawn += 1;
          drawings ??= [];
          return drawings;
        },
      };
      return { ok: true as const, value };
    },
  };
  const answered = answer(lazy, { width: '30 cm', length: 600, face: 'both' });
  if (!answered.ok) throw new Error(JSON.stringify(answered.errors));
  expect(drawn).toBe(0);
  expect(Object.keys(answered.value.result)).toContain('drawings');
  expect([answered.value.result.drawings, answered.value.result.drawings, drawn]).toEqual([[], [], 1]);
  expect(structuredClone({ ...answered.value.result }).drawings).toEqual([]);
});
