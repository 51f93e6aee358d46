import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { timeFindings } from '../../../src/method/plan/findings.ts';
import { planOf } from '../../../src/method/plan/index.ts';
import { timetableOf } from '../../../src/method/plan/timetable.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { smallMethod, worked } from '../case/base.ts';

/** A seal coat and a pour, with nothing but their times. */
function sealAndPour(link: object): string {
  const data = parse(smallMethod);
  data.materials = {};
  data.tools = {};
  data.steps = {
    seal: { title: 'Seal it', act: 'gather', does: 'It.', hands: { setUp: '30 min' }, interrupt: 'never' },
    pour: {
      title: 'Pour it',
      act: 'gather',
      does: 'It.',
      hands: { each: '10 min' },
      interrupt: 'never',
      after: [{ step: 'seal', ...link }],
    },
  };
  return stringify(data);
}

const days = { zone: 'Europe/Helsinki', week: { mon: ['09:00-17:00'], tue: ['09:00-17:00'], wed: ['09:00-17:00'] } };
const options = { start: '2027-01-11', hours: days, people: 2 };

async function told(link: object): Promise<string[]> {
  const method = await worked(sealAndPour(link), { pieces: 1 });
  return timeFindings(method, await timetableOf(method, options)).map(
    ({ rule, level, path, step, message, wayOut }) =>
      `${level} ${rule} at /${path.join('/')} (${step}): ${inReaderUnits(`${message} ${wayOut}`, defaultUnits)}`,
  );
}

test('a window that no hours meet: the second way is said', async () => {
  const missed = { do: 'Sand it dull and pour', adds: '5 min', abrades: true };
  expect(await told({ least: '10 h', most: '12 h', missed })).toMatchInlineSnapshot(`
    [
      "warn second-way-taken at /steps/pour/after/0/missed (pour): In these hours the window between “Seal it” and “Pour it” (12 h) cannot be kept; the plan takes the second way: Sand it dull and pour. Open the shop so that somebody is there in time, or keep to the second way, 5 min more for each piece.",
    ]
  `);
});

test('a wait that ends at night, and a window that all but closes in the morning', async () => {
  // Sealed by 9:30, it is ready at 20:30; the shop opens again after 23.5 h.
  expect(await told({ least: '11 h', most: '23 h 40 min' })).toMatchInlineSnapshot(`
    [
      "note window-nearly-closed at /steps/pour/after/0/most (pour): “Pour it” has 10 min to spare before its window after “Seal it” closes, Tue 2027-01-12 09:10. Be there, with all that it takes laid out; nothing may run late before it.",
      "note wait-ends-closed at /steps/pour/after/0/least (pour): “Seal it” is ready for “Pour it” Mon 2027-01-11 20:30, when nobody is there; the window closes Tue 2027-01-12 09:10. The plan has it at Tue 2027-01-12 09:00. Whoever opens then goes to it first.",
    ]
  `);
});

test('the same with a quarter of an hour to spare, and with a minute less', async () => {
  const tight = async (most: string) => (await told({ least: '11 h', most })).filter((line) => line.includes('nearly'));
  expect(await tight('23 h 45 min')).toEqual([]);
  expect(await tight('23 h 44 min')).toHaveLength(1);
});

test('a wait that ends in open hours, and a wait without a window', async () => {
  expect(await told({ least: '2 h', most: '4 h' })).toEqual([]);
  expect(await told({ least: '11 h' })).toEqual([]);
});

test('a plan has them among its findings', async () => {
  const method = await worked(sealAndPour({ least: '11 h', most: '3 d' }), { pieces: 1 });
  const { findings } = await planOf(method, options);
  expect(findings.map(({ rule }) => rule)).toContain('wait-ends-closed');
});

test('where there is no plan nothing is said of its times', async () => {
  expect(await told({ least: '10 h', most: '12 h' })).toEqual([]);
});

test('a wait that ends at night is parted into the wait and the closed hours behind it', async () => {
  const method = await worked(sealAndPour({ least: '11 h', most: '3 d' }), { pieces: 1 });
  const { limits } = await planOf(method, options);
  // By hand: sealed from 9:00 to 9:30, ready at 20:30, open again at 9:00: 12 h 30 min closed; poured in 10 min.
  expect(limits).toEqual({ work: 40, waits: 660, closed: 750, resources: {} });
});
