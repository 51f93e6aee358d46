import { describe, expect, test } from 'vitest';
import { calculatorById, calculators } from '../../src/calculators/index.ts';
import { startingInputs } from '../../src/calculators/kit/address.ts';
import { answer, fieldsOf, readInputs } from '../../src/calculators/kit/answer.ts';
import type { Calculator, RawInputs } from '../../src/calculators/kit/calculator.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import { type Dimension, defaultUnits, inReaderUnits, type ReaderUnits } from '../../src/model/quantity/index.ts';
import { workedCases } from '../docs/how-to.ts';

/*
 * A switch of units changes the display and never the case: what a form starts from describes one board to both readers.
 */

const inch: ReaderUnits = { system: 'inch', inches: 'thirty-seconds' };

/** Rounding of a length to the nearest sixteenth of an inch, mm: 1/32 in, 0.8 mm. */
const shopFraction = 0.8;

/** How far two readings of one quantity may lie apart, in its canonical unit. */
function apart(dimension: Dimension | undefined, value: number): number {
  if (dimension === 'length') return shopFraction;
  // A thermometer is read to the degree Fahrenheit, and half of one is 0.28 °C.
  if (dimension === 'temperature') return 0.28;
  return 0.01 * Math.abs(value);
}

/** Every number in which two values differ by more than their rounding, by its place; and all else that differs. */
function differences(first: unknown, second: unknown, dimension: Dimension | undefined, place: string): string[] {
  if (typeof first === 'number' && typeof second === 'number') {
    return Math.abs(first - second) <= apart(dimension, first) + 1e-9 ? [] : [`${place}: ${first} and ${second}`];
  }
  if (typeof first === 'object' && typeof second === 'object' && first !== null && second !== null) {
    const names = [...new Set([...Object.keys(first), ...Object.keys(second)])];
    return names.flatMap((name) =>
      differences(
        (first as Record<string, unknown>)[name],
        (second as Record<string, unknown>)[name],
        // The numbers of a list of boards or pockets are lengths, and counts that do not differ.
        dimension ?? 'length',
        `${place}.${name}`,
      ),
    );
  }
  return first === second ? [] : [`${place}: ${JSON.stringify(first)} and ${JSON.stringify(second)}`];
}

function compare(calculator: Calculator, metric: RawInputs, inches: RawInputs): string[] {
  const [first, second] = [readInputs(calculator, metric), readInputs(calculator, inches)];
  if (!first.ok || !second.ok) return [JSON.stringify([first, second])];
  const fields = fieldsOf(calculator);
  const names = new Set([...Object.keys(metric), ...Object.keys(inches)]);
  return [...names].flatMap((name) => {
    const schema = fields[name];
    const dimension = schema && fieldMeta(schema)?.dimension;
    const of = (inputs: unknown) => (inputs as Record<string, unknown>)[name];
    return differences(of(first.value), of(second.value), dimension, name);
  });
}

describe('one board for both readers', () => {
  test.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
    'the worked case of %s',
    (_, calculator) => {
      expect(compare(calculator, calculator.example.metric, calculator.example.inch)).toEqual([]);
    },
  );

  test.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
    'the worked case of %s is told in one sentence',
    (_, calculator) => {
      const [metric, inches] = (['metric', 'inch'] as const).map((system) => {
        const outcome = answer(calculator, calculator.example[system]);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
        const { verdict, cautions } = outcome.value.result;
        // What an order says beside its inches is for the reader who measures in millimetres.
        const text = inReaderUnits(verdict.text, defaultUnits).replace(/ \([^)]*mm\)| \([^)]*m³\)/g, '');
        const words = text.replace(/[\d\s.,/]+ ?(?:mm|g|kg|ml|h|min|d|°C|%)?(?![a-z])/g, ' # ');
        return { level: verdict.level, words, own: cautions.filter(({ own }) => own).map(({ id }) => id) };
      });
      expect(inches).toEqual(metric);
    },
  );

  test.each(workedCases)('$page: the case of $calculator $inputs', ({ calculator: id, inputs }) => {
    const calculator = calculatorById(id);
    if (!calculator) throw new Error(`no calculator ${id}`);
    const [metric, inches] = [defaultUnits, inch].map((units) => startingInputs(calculator, inputs, units, ''));
    expect(compare(calculator, metric as RawInputs, inches as RawInputs)).toEqual([]);
    expect(Object.keys(inches as RawInputs).sort()).toEqual(Object.keys(metric as RawInputs).sort());
  });

  test.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
    'a link to %s that leaves all but one input out',
    (_, calculator) => {
      const [name = '', text = ''] = Object.entries(calculator.example.metric)[0] ?? [];
      const search = `?${new URLSearchParams({ [name]: text })}`;
      const [metric, inches] = [defaultUnits, inch].map((units) => startingInputs(calculator, {}, units, search));
      expect(inches?.[name]).toBe(text);
      expect(compare(calculator, metric as RawInputs, inches as RawInputs)).toEqual([]);
    },
  );
});
