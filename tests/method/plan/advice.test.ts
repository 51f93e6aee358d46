import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { advised, planOf } from '../../../src/method/plan/index.ts';
import { readShop } from '../../../src/method/shop/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { smallMethod, worked } from '../case/base.ts';
import { faultsOf } from './checker.ts';

/** Pour four boards in dams, let each set overnight, take the dams off. */
function poured(each = 1): string {
  const data = parse(smallMethod);
  data.materials = {};
  data.tools = { dam: { what: 'Dam about a tray', kind: each === 1 ? 'mould' : 'clamp' } };
  data.steps = {
    pour: {
      title: 'Pour it',
      act: 'gather',
      does: 'It.',
      hands: { setUp: '25 min', each: '10 min' },
      holds: [{ tool: 'dam', until: 'strip', each }],
    },
    strip: {
      title: 'Take the dam off',
      act: 'gather',
      does: 'It.',
      hands: { setUp: '5 min', each: '4 min' },
      after: [{ step: 'pour', least: '20 h' }],
    },
  };
  return stringify(data);
}

function shopWith(dams: string, more = 'people: [{ id: maker, rate: 20 }]\nmargin: 30 %\n'): string {
  return `shop: 1\nname: A bench\nzone: Europe/Helsinki\ncurrency: EUR\n${dams}\n${more}`;
}

async function planned(
  dams: string,
  { pieces = 4, each = 1, more }: { pieces?: number; each?: number; more?: string } = {},
) {
  const { shop } = readShop(shopWith(dams, more));
  if (!shop) throw new Error('The shop record cannot be read.');
  const method = await worked(poured(each), { pieces, shop });
  const week = Object.fromEntries(['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, ['09:00-17:00']]));
  const hours = { zone: 'Europe/Helsinki', week };
  const plan = await advised(await planOf(method, { start: '2027-01-11', hours, people: 1 }));
  const dam = plan.advice.find(({ resource }) => resource === 'dam');
  return { plan, method, dam, said: inReaderUnits(dam?.words ?? '', defaultUnits) };
}

test('pieces go in rounds where there are too few moulds, and each round is set up', async () => {
  const { plan, method } = await planned('moulds: [{ id: dam, count: 2, price: 18.00 }]');
  expect(plan.timetable.ok).toBe(true);
  if (!plan.timetable.ok) return;
  expect(faultsOf(method, plan.timetable, 1)).toEqual([]);
  // By hand: two rounds of 25 + 2 × 10 and 5 + 2 × 4 min.
  expect(plan.timetable.steps.map(({ id, hands }) => [id, hands])).toEqual([
    ['pour', 90],
    ['strip', 26],
  ]);
  const pours = plan.timetable.steps.find(({ id }) => id === 'pour')?.work.map(({ pieces }) => pieces);
  expect(pours).toEqual([
    [1, 2],
    [3, 4],
  ]);
});

test('one mould more that saves no round is no help to the hands', async () => {
  const { said } = await planned('moulds: [{ id: dam, count: 2, price: 18.00 }]');
  // Three at a time are still two rounds.
  expect(said).toMatchInlineSnapshot(
    `"Dam about a tray, one more: the plan ends 4 min earlier. It saves waiting and no hands-on work, so that at €18.00 it never pays for itself by the hours."`,
  );
});

test('one mould more that saves a round is paid for by the set-ups that it saves', async () => {
  const { dam, said } = await planned('moulds: [{ id: dam, count: 3, price: 18.00 }]');
  // By hand: 25 + 5 min at 20 an hour are 10 a time; 18 are paid for by the second.
  expect(dam?.paysBack).toMatchObject({ price: 18, savedMinutes: 30, saved: 10, paysAfter: 2 });
  expect(said).toMatchInlineSnapshot(
    `"Dam about a tray, one more: the plan ends 23.8 h earlier. It saves 30 min of hands-on work each time that 4 pieces are made, worth €10.00: at €18.00 it has paid for itself when they have been made 2 times."`,
  );
});

test('clamps are added by as many as a piece takes', async () => {
  const { dam } = await planned('clamps: [{ id: bar, count: 10, price: 23.50 }]', { each: 3 });
  // By hand: ten clamps hold three pieces at three each; two more hold the fourth.
  expect(dam).toMatchObject({ more: 2, paysBack: { price: 47, savedMinutes: 30, paysAfter: 5 } });
});

test.each([
  ['moulds: [{ id: dam, count: 3 }]', undefined, 'give “dam” a price, under moulds of the shop record'],
  ['moulds: [{ id: dam, count: 3, price: 18.00 }]', 'margin: 30 %\n', 'give people of the shop record a rate'],
])('where %s stands what is missing is said', async (dams, more, words) => {
  const { said } = await planned(dams, more === undefined ? {} : { more });
  expect(said).toContain(words);
});

test('enough moulds, and none is advised', async () => {
  expect((await planned('moulds: [{ id: dam, count: 4, price: 18.00 }]')).dam).toBeUndefined();
});

test('a price of a tool is paid in coin', () => {
  const { problems } = readShop(shopWith('clamps: [{ id: bar, count: 2, price: 2.999 }]'));
  expect(problems.map(({ message }) => message).join()).toContain('2.999 has more decimals than EUR');
});
