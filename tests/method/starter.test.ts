import { expect, test } from 'vitest';
import { workMethod } from '../../src/method/case/work.ts';
import { readMethod } from '../../src/method/read.ts';
import { starterMethod } from '../../src/method/record/starter.ts';
import { judge } from '../../src/method/rules/judge.ts';
import { kindsAt } from '../../src/method/rules/kit.ts';

const working = await workMethod(readMethod(starterMethod, 'first.yaml'));
if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
const { worked } = working;

test('the method to begin from does what its own dangers ask: a can and gloves wherever cloths are wet with oil', () => {
  const withRags = worked.steps.filter(({ cautions }) => cautions.some(({ id }) => id === 'oily-rags'));
  expect(withRags.map(({ id }) => id)).toEqual(['oil', 'wipe', 'oil-again', 'wipe-again']);
  for (const step of withRags)
    expect([...kindsAt(worked, step)]).toEqual(expect.arrayContaining(['rag-can', 'gloves']));
});

test('wiping is a step with its window, after each coat', () => {
  for (const [wipe, coat] of [
    ['wipe', 'oil'],
    ['wipe-again', 'oil-again'],
  ]) {
    const [link] = worked.steps.find(({ id }) => id === wipe)?.after ?? [];
    expect(link).toMatchObject({ step: coat, least: expect.any(Number), most: 60 });
    expect(link?.least).toBeLessThan(link?.most ?? 0);
  }
});

test('the rules find nothing in it', () => {
  expect(judge(worked)).toEqual([]);
});
