import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { advised, planOf } from '../../../src/method/plan/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { smallMethod, worked } from '../case/base.ts';

/** Two steps, one after the other, with nothing but their times. */
function twoSteps(first: string, second: string, link: object): string {
  const data = parse(smallMethod);
  data.materials = {};
  data.tools = {};
  const step = (title: string, setUp: string) => ({
    title,
    act: 'gather',
    does: 'It.',
    hands: { setUp },
    interrupt: 'never',
  });
  data.steps = {
    rest: step('Let it rest', first),
    plane: { ...step('Plane it', second), after: [{ step: 'rest', ...link }] },
  };
  return stringify(data);
}

const tuesdays = { zone: 'Europe/Helsinki', week: { tue: ['18:30-21:00'] } };

async function missed(text: string, options: object = {}): Promise<string[]> {
  const method = await worked(text, { pieces: 1 });
  const plan = await planOf(method, { start: '2027-01-12', hours: tuesdays, people: 1, ...options });
  return (await advised(plan)).findings
    .filter(({ rule }) => rule.includes('-just-too-'))
    .map(
      ({ rule, step, message, wayOut }) => `${rule} ${step}: ${inReaderUnits(`${message} ${wayOut}`, defaultUnits)}`,
    );
}

test('an evening that is two minutes too short pushes a step by a week', async () => {
  // By hand: 80 and 72 min are 152, and an evening has 150.
  expect(await missed(twoSteps('80 min', '72 min', {}))).toMatchInlineSnapshot(`
    [
      "session-just-too-short plane: The session of Tue 2027-01-12 18:30 is 2 min too short for “Plane it”. With 2 min more in the session of Tue 2027-01-12 18:30 the plan ends 6.94 d earlier. Stay 2 min longer, or have something of it done beforehand.",
    ]
  `);
  expect(await missed(twoSteps('80 min', '70 min', {}))).toEqual([]);
});

test('a wait of seven days that ends twenty minutes too late for the evening', async () => {
  // By hand: rested from 18:30 to 20:00, ready at 20:00 a week later; an hour and twenty minutes from there is 20 min past nine.
  const text = twoSteps('90 min', '80 min', { least: '7 d' });
  expect(await missed(text.replace('setUp: 80 min', 'each: 80 min'))).toMatchInlineSnapshot(`
    [
      "wait-just-too-long plane: The wait of 7 d after “Let it rest” counts by the clock, and ends 20 min too late for “Plane it” in the session of Tue 2027-01-19 18:30. With 20 min more in the session of Tue 2027-01-19 18:30 the plan ends 6.94 d earlier. Begin “Let it rest” 20 min earlier, or stay 20 min longer. Where it is no cure and no drying, write the wait as the hours that it needs; a cure is not shortened.",
    ]
  `);
  // Setting up goes on while the wait runs.
  expect(await missed(text)).toEqual([]);
});

test('a session that is missed by more than an hour, and a plan that gains less than a day', async () => {
  expect(await missed(twoSteps('100 min', '112 min', {}))).toEqual([]);
  const daily = { zone: 'Europe/Helsinki', week: { tue: ['18:30-21:00'], wed: ['18:30-21:00'] } };
  expect(await missed(twoSteps('80 min', '72 min', {}), { hours: daily })).toEqual([]);
});

test('planned back from a wanted end it says how much later the plan could begin', async () => {
  const [told] = await missed(twoSteps('80 min', '72 min', {}), { end: '2027-01-26' });
  expect(told).toContain('With 2 min more in the session of Tue 2027-01-26 18:30 the plan begins');
});
