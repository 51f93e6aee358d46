import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { advised, planOf } from '../../../src/method/plan/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { smallMethod, worked } from '../case/base.ts';

/** Mix for all boards, then flood them by two people before the cup must be empty. */
function mixAndFlood(window: string): string {
  const data = parse(smallMethod);
  data.materials = {};
  data.tools = {};
  const step = { act: 'gather', does: 'It.', interrupt: 'never' };
  data.steps = {
    mix: { ...step, title: 'Mix', hands: { setUp: '7 min' } },
    flood: {
      ...step,
      title: 'Flood',
      hands: { setUp: '2 min', each: '4 min' },
      people: 2,
      after: [{ step: 'mix', counts: 'start', most: window }],
    },
  };
  return stringify(data);
}

const days = { zone: 'Europe/Helsinki', week: { mon: ['09:00-17:00'], tue: ['09:00-17:00'] } };

async function changes(window: string, pieces: number, people: number): Promise<readonly string[]> {
  const method = await worked(mixAndFlood(window), { pieces });
  const plan = await planOf(method, { start: '2027-01-11', hours: days, people });
  // Why is known at once; what would help is planned with first.
  expect(plan.impossible?.changes ?? []).toEqual([]);
  const { impossible } = await advised(plan);
  return (impossible?.changes ?? []).map((change) => inReaderUnits(change, defaultUnits));
}

test('a cup that must be empty before the last board is flooded: more hands or fewer boards come before a longer window', async () => {
  // By hand: the third board is begun 7 + 2 + 2 × 4 = 17 min after the mixing began, and 13 are allowed. Two boards at a time, or two boards: 13.
  const told = await changes('13 min', 3, 3);
  expect(told.slice(0, 2)).toEqual(['4 people instead of 3', '2 pieces in a batch instead of 3']);
  for (const change of told.filter((each) => each.startsWith('a window longer')))
    expect(change).toContain('only where the data sheet allows it');
  expect(await changes('17 min', 3, 3)).toEqual([]);
});

test('a window that not even one board keeps: neither is offered', async () => {
  const told = await changes('8 min', 2, 3);
  expect(told.filter((each) => each.includes('instead of'))).toEqual([]);
});
