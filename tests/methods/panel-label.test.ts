import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answerNumbers } from '../../src/method/page/answer.ts';

const ask = async (set: Record<string, string>) => {
  const file = 'methods/panel-moss-channel.yaml';
  const answered = await answerNumbers({ text: readFileSync(file, 'utf8'), file, set });
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  const calculations = answered.page.steps.flatMap((step) => step.calculations);
  return (use: string) => calculations.filter((calculation) => calculation.use === use);
};

test('label and care card of the panel name the wood of its middle stave too', async () => {
  const of = await ask({});
  for (const use of ['food-contact', 'care-card'])
    for (const { documents } of of(use))
      expect(JSON.stringify(documents), use).toMatch(/Made of [a-z ]*maple and [a-z ]*cherry/);
});

test('a middle stave of a tree that bears nuts is named as one', async () => {
  const of = await ask({ middleWood: 'black-walnut' });
  expect(JSON.stringify(of('food-contact').map(({ tables }) => tables))).toContain('a tree that bears nuts');
});
