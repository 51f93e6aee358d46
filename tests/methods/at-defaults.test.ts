import { describe, expect, test } from 'vitest';
import type { CaseQuantity, WorkedMethod } from '../../src/method/case/types.ts';
import { workMethod } from '../../src/method/case/work.ts';
import { judge } from '../../src/method/rules/judge.ts';
import { readText } from '../../src/method/text.ts';
import { readAnyQuantity } from '../../src/model/quantity/read-any.ts';
import { methodFiles } from './files.ts';

/** Every text of a method that a reader sees, by its place. */
function textsIn({ record }: WorkedMethod): [place: string, text: string][] {
  const fields = ['title', 'does', 'why', 'tell', 'wrong'] as const;
  return [
    ['about', record.about ?? ''],
    ...Object.entries(record.steps).flatMap(([id, step]) =>
      fields.flatMap((field): [string, string][] => (step[field] ? [[`${id}.${field}`, step[field]]] : [])),
    ),
  ];
}

/** What a text types out with its unit, references left out: `20 cm`, `1.5 mm`, `0.2 %`. */
function typedIn(text: string): string[] {
  const plain = text.replace(/\{\/[^}]*\}/g, ' ');
  return [...plain.matchAll(/(?<![\d/.])\d+(?:\.\d+)?\s?(?:mm|cm|m|g|kg|ml|l|°C|%|h|min|d)(?![\p{L}/])/gu)].map(
    ([it]) => it,
  );
}

/** Every quantity that changes with the case: parameters, and figures of answers that are more than an input handed back. */
function quantitiesOf(worked: WorkedMethod): { name: string; value: number; unit: string }[] {
  const parameters = Object.values(worked.parameters).flatMap(({ name, value }) =>
    value.kind === 'quantity' ? [{ name, value: value.value, unit: value.unit }] : [],
  );
  const figures = Object.values(worked.calculations).flatMap(({ name, inputs, result }) =>
    Object.entries(result?.figures ?? {})
      .filter(([, { value }]) => !Object.values(inputs ?? {}).includes(value))
      .map(([figure, { value, unit }]) => ({ name: `${name}.${figure}`, value, unit })),
  );
  return [...parameters, ...figures];
}

describe.each(methodFiles)('$name', ({ text, read }) => {
  const working = workMethod(read);
  /** The method as worked out, which a test of its own holds. */
  const workedOut = async (): Promise<WorkedMethod> => {
    const outcome = await working;
    if (!outcome.ok) throw new Error('It is not worked out.');
    return outcome.worked;
  };

  test('reads without a problem', () => {
    expect(read.problems).toEqual([]);
  });

  test('is worked out at its defaults: every reference leads somewhere, every calculator answers', async () => {
    const outcome = await working;
    expect(outcome.ok ? [] : outcome.problems).toEqual([]);
    const worked = await workedOut();
    expect(worked.gaps).toEqual([]);
    const refused = Object.values(worked.calculations).filter(({ result }) => !result);
    expect(refused.map(({ name, errors }) => ({ name, errors }))).toEqual([]);
  });

  test('meets every rule, or says why not', async () => {
    const worked = await workedOut();
    const open = judge(worked).filter(({ level, excepted }) => level !== 'note' && excepted === undefined);
    expect(open.map(({ rule, step, message }) => ({ rule, step, message }))).toEqual([]);
  });

  test('has texts that can be printed, whose references all lead somewhere', async () => {
    const worked = await workedOut();
    for (const [place, one] of textsIn(worked)) {
      const { faults, pointers } = readText(one);
      expect(faults, place).toEqual([]);
      for (const { pointer } of pointers) expect(worked.at(pointer), `${place} ${pointer}`).toBeDefined();
    }
  });

  test('types no number that its case works out or lets the reader change', async () => {
    const worked = await workedOut();
    const changing = quantitiesOf(worked);
    const copied = textsIn(worked).flatMap(([place, one]) =>
      typedIn(one).flatMap((typed) => {
        const quantity = readAnyQuantity(typed);
        if (!quantity.ok) return [];
        return changing
          .filter(({ value, unit }) => quantity.value.some((same) => same.unit === unit && isSame(same, value)))
          .map(({ name }) => `${place}: ${typed} is ${name}`);
      }),
    );
    expect(copied).toEqual([]);
  });

  test('has twelve to thirty steps, each with how to tell and what goes wrong', () => {
    const steps = Object.entries(read.record?.steps ?? {});
    expect(steps.length).toBeGreaterThanOrEqual(12);
    expect(steps.length).toBeLessThanOrEqual(30);
    const unsaid = steps.filter(([, { tell, wrong, hands }]) => !tell || !wrong || !hands).map(([id]) => id);
    expect(unsaid).toEqual([]);
  });

  test('says whose its invented times are, and names no maker', () => {
    expect(read.record?.sources.some((source) => /our own practice/i.test(source.text))).toBe(true);
    expect(text).not.toMatch(/[®™]/);
  });
});

function isSame({ value }: Pick<CaseQuantity, 'value'>, other: number): boolean {
  return Math.abs(value - other) <= 1e-6 * Math.abs(other);
}
