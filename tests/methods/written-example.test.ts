import { expect, test } from 'vitest';
import { workMethod } from '../../src/method/case/work.ts';
import { readMethod } from '../../src/method/read.ts';
import { judge } from '../../src/method/rules/judge.ts';
import { howTo } from '../docs/how-to.ts';

test('the whole method on the page about writing one reads, is worked out and meets every rule', async () => {
  const blocks = [...howTo('writing-a-method').source.matchAll(/```yaml\n(method: 1\n[\s\S]*?)```/g)];
  expect(blocks).toHaveLength(1);
  const read = readMethod(blocks[0]?.[1] ?? '', 'methods/bread-board.yaml');
  expect(read.problems).toEqual([]);
  const working = await workMethod(read);
  expect(working.ok ? [] : working.problems).toEqual([]);
  if (!working.ok) return;
  expect(working.worked.gaps).toEqual([]);
  expect(judge(working.worked).map(({ rule, step, message }) => ({ rule, step, message }))).toEqual([]);
});
