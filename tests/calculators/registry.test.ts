import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculatorById, calculators } from '../../src/calculators/index.ts';
import { answer, fieldsOf } from '../../src/calculators/kit/answer.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';

const folders = readdirSync('src/calculators', { withFileTypes: true })
  .filter(
    (entry) => entry.isDirectory() && entry.name !== 'kit' && existsSync(`src/calculators/${entry.name}/calculator.ts`),
  )
  .map((entry) => entry.name)
  .sort();

test('every folder with a calculator is in the list and has a view, and nothing else is', () => {
  expect(calculators.map((calculator) => calculator.id).sort()).toEqual(folders);
  expect(folders.filter((folder) => !existsSync(`src/calculators/${folder}/View.tsx`))).toEqual([]);
});

test('a calculator is found by its id and no other word', () => {
  expect(calculatorById('width-change')?.title).toBe('Change of width');
  expect(calculatorById('toString')).toBeUndefined();
});

describe.each(calculators.map((calculator) => [calculator.id, calculator] as const))('%s', (_, calculator) => {
  test('question and summary are a plain sentence each, short enough for a phone, without talk of methods', () => {
    const { question, summary } = calculator;
    expect(question.length).toBeLessThanOrEqual(100);
    expect(question).toMatch(/^[^.?!]+\?$/);
    expect(summary.length).toBeLessThanOrEqual(140);
    expect(summary).toMatch(/^[^.?!]+\.$/);
    // How it is worked out stands beside the answer, in its evidence.
    expect(summary).not.toMatch(/equation|handbook|fitted|Fick|conduction|clock|model|law of/i);
  });

  test('every field has a label and an example that it can read', () => {
    for (const [name, schema] of Object.entries(fieldsOf(calculator))) {
      const meta = fieldMeta(schema);
      expect(meta?.label, name).toBeTruthy();
      for (const example of meta?.examples ?? [])
        expect(schema.safeParse(example).success, `${name}: ${example}`).toBe(true);
      expect(meta?.examples.length, name).toBeGreaterThan(0);
    }
  });

  test.each(['metric', 'inch'] as const)('the worked case in %s units has an answer with its headline', (system) => {
    const outcome = answer(calculator, calculator.example[system]);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    const [headline] = Object.keys(calculator.figures);
    expect(Object.keys(outcome.value.result.figures)).toContain(headline);
  });

  test('every figure of the answer is declared, and every band says what it means', () => {
    const outcome = answer(calculator, calculator.example.metric);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    for (const [name, figure] of Object.entries(outcome.value.result.figures)) {
      expect(Object.keys(calculator.figures), name).toContain(name);
      if (figure.low !== undefined || figure.high !== undefined) expect(figure.band, name).toBeTruthy();
    }
  });

  test('alternatives name fields that exist', () => {
    for (const { sets } of calculator.alternatives ?? []) {
      for (const field of sets.flatMap((set) => set.fields)) expect(Object.keys(fieldsOf(calculator))).toContain(field);
    }
  });
});
