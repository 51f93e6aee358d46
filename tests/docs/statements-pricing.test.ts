import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { workMethod } from '../../src/method/case/work.ts';
import { advised, assumedHours, planOf } from '../../src/method/plan/index.ts';
import { planText } from '../../src/method/plan/text.ts';
import { readMethod } from '../../src/method/read.ts';
import { readShop } from '../../src/method/shop/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { hold } from './statements.ts';

const read = (file: string) => readFileSync(file, 'utf8');
const { shop } = readShop(read('methods/shop.yaml'));
if (!shop) throw new Error('methods/shop.yaml cannot be read');

const working = await workMethod(readMethod(read('methods/first-tray.yaml'), 'first-tray.yaml'), { shop, pieces: 6 });
if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
const plan = await planOf(working.worked, {
  start: '2027-01-12',
  hours: shop.calendar ?? assumedHours(shop.zone),
  people: shop.people.reduce((sum, { count }) => sum + count, 0),
});
/** What the plan of six plain trays says of cost and price. */
const told = planText(await advised(plan), defaultUnits);
const inPlan = (pattern: RegExp): string => {
  const [, found] = pattern.exec(told) ?? [];
  if (found === undefined) throw new Error(`${pattern} is not in\n${told.slice(told.indexOf('To buy'))}`);
  return found;
};

hold({
  'pricing-a-board': [
    [
      'what is used up',
      () =>
        `Materials, by what is used: ${inPlan(/Materials, by what is used: .*?, (\$[\d.]+) a piece/)} a piece. Consumables, discs and cloths and gloves: ${inPlan(/Consumables, by what is used: .*?, (\$[\d.]+) a piece/)}.`,
    ],
    [
      'the hours and what goes by them',
      () =>
        `Hands-on work of ${inPlan(/Hands-on work, (\d+ h)/)} in all: ${inPlan(/Hands-on work.*?, (\$[\d.]+) a piece/)} a piece. Overhead by those hours: ${inPlan(/Overhead.*?, (\$[\d.]+) a piece/)}. Energy: ${inPlan(/Energy.*?, (\$[\d.]+) a piece/)}.`,
    ],
    [
      'cost and price',
      () =>
        `A piece costs ${inPlan(/A piece costs (\$\d+\.\d\d)/)}. With the stall and the card it sells for ${inPlan(/sells for (\$\d+\.\d\d)/)}.`,
    ],
    ['the break-even', () => `The batch is paid for when ${inPlan(/(\d of \d) pieces are sold/)} pieces are sold.`],
    ['what is paid now', () => `here ${inPlan(/To pay now (\$[\d.]+)/)} for a batch`],
    [
      'margin and mark-up',
      () => `${inPlan(/(\d+ % of the price)/)} is a mark-up of ${inPlan(/mark-up of ([\d.]+ %)/)} on the cost here`,
    ],
    [
      'the batch',
      () =>
        `a batch of ${inPlan(/a batch of (\d+) is cheapest/)} costs ${inPlan(/cheapest: .*? and (\$[\d.]+) a piece/)} a piece here, one tray by itself ${inPlan(/against .*? and (\$[\d.]+) for one/)}.`,
    ],
    ['the fee of the card', () => `Whoever adds ${shop.fees.find(({ id }) => id === 'card-payment')?.percent} %`],
  ],
});

test('the number of good pieces moves the price most, then the margin, the hours of a month and the wood', () => {
  const bars = told.slice(told.indexOf('What moves the price most')).split('\n').slice(1, 5);
  expect(bars.map((line) => line.trim().split(':')[0])).toEqual([
    'Good pieces from the same batch',
    'Margin',
    'Hours worked in a month',
    'Materials',
  ]);
});
