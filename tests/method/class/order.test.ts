import fc from 'fast-check';
import { expect, test } from 'vitest';
import { workMethod } from '../../../src/method/case/work.ts';
import { answerClass } from '../../../src/method/class/class.ts';
import { forPieces } from '../../../src/method/class/places.ts';
import type { ClassPage, ClassQuestion } from '../../../src/method/class/types.ts';
import { billOfCase } from '../../../src/method/plan/bill.ts';
import { readMethod } from '../../../src/method/read.ts';
import { readShop } from '../../../src/method/shop/index.ts';
import { alike, classOf, fileText, methodText, springPlaces } from './files.ts';

async function pageOf(question: ClassQuestion): Promise<ClassPage> {
  const answer = await answerClass(question, memo);
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer.page;
}

const memo = new Map<string, unknown>();
const shop = readShop(fileText('shop.yaml')).shop;

async function workedAlone(id: string, set: Record<string, string>, pieces: number) {
  const working = await workMethod(forPieces(readMethod(methodText(id), id), pieces), {
    set,
    pieces,
    memo,
    ...(shop ? { shop } : {}),
  });
  if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
  return working.worked;
}

/** Needs of single plans by material, with the wood that is chosen; what the method writes as one amount for a batch is needed once. */
function sumsOf(all: Awaited<ReturnType<typeof workedAlone>>[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const [at, { record, materials, parameters }] of all.entries())
    for (const [name, { kind, item = name, needs }] of Object.entries(record.materials))
      for (const [which, need] of needs.entries()) {
        if (at > 0 && 'amount' in need && need.per === 'batch') continue;
        const id = kind === 'wood' ? item.replace('sugar-maple', String(parameters['wood']?.raw)) : item;
        const { amount = Number.NaN, unit } = materials[name]?.needs[which] ?? {};
        sums[`${id} ${unit}`] = (sums[`${id} ${unit}`] ?? 0) + amount;
      }
  return sums;
}

test('a class whose places are all alike orders what the method orders for so many pieces', async () => {
  const page = await pageOf(classOf('class-of-twelve', { places: alike(12), shop: true }));
  const bill = billOfCase(await workedAlone('class-of-twelve', {}, 12), shop);
  if (!bill.ok || !shop) throw new Error('There is no bill.');
  expect(
    page.order.lines.map(({ id, need, unit, buy, packs, cost }) => ({ id, need, unit, buy, packs, cost })),
  ).toEqual(bill.value.lines.map(({ id, need, unit, buy, packs, cost }) => ({ id, need, unit, buy, packs, cost })));
  expect(page.order.bought).toBe(bill.value.bought);
});

test('the order of any few places that share nothing is the sum of their single plans, before packs', async () => {
  // Every place has a length of its own, so that no calculator is asked the same for two of them.
  const lengths = ['380 mm', '400 mm', '420 mm', '15 in'];
  const wood = fc.constantFrom('sugar-maple', 'black-cherry', 'american-beech');
  await fc.assert(
    fc.asyncProperty(fc.array(wood, { minLength: 1, maxLength: 4 }), async (woods) => {
      const places = woods.map((id, at) => ({ id: String(at + 1), set: { wood: id, length: lengths[at] as string } }));
      const { order } = await pageOf(classOf('first-tray', { places, shop: true }));
      const singles = await Promise.all(places.map(({ set }) => workedAlone('first-tray', set, 1)));
      const sums = sumsOf(singles);
      expect(order.lines.flatMap(({ unknown }) => unknown)).toEqual([]);
      expect(order.lines.map(({ id, unit }) => `${id} ${unit}`).sort()).toEqual(Object.keys(sums).sort());
      for (const { id, unit, from } of order.lines) {
        const sum = from.reduce((total, { amount }) => total + amount, 0);
        expect([id, sum]).toEqual([id, expect.closeTo(sums[`${id} ${unit}`] as number, 6)]);
      }
    }),
    { numRuns: 6 },
  );
});

test('each place has the numbers that the method gives for it alone', async () => {
  const places = [
    { id: '1', set: {} },
    { id: '2', set: { wood: 'black-cherry', length: '15 in' } },
    { id: '3', set: { wood: 'american-beech', width: '200 mm' } },
  ];
  const page = await pageOf(classOf('first-tray', { places }));
  for (const { id, uses } of page.places) {
    const worked = await workMethod(readMethod(methodText('first-tray'), 'x'), {
      set: places.find((place) => place.id === id)?.set ?? {},
      pieces: 1,
      memo,
    });
    if (!worked.ok) throw new Error('It is not worked out.');
    expect(uses).toEqual(
      Object.values(worked.worked.materials).flatMap(({ record: { what }, needs }) =>
        needs.map(({ amount, unit }) => ({ what, amount, unit })),
      ),
    );
  }
});

test('the class of the demonstration orders each wood and each colour apart, and says for whom', async () => {
  const page = await pageOf(classOf('class-of-twelve', { places: springPlaces(), shop: true }));
  const line = (id: string) => page.order.lines.find((each) => each.id === id);
  const placesOf = (id: string) =>
    line(id)
      ?.from.flatMap(({ places }) => places)
      .sort((one, two) => Number(one) - Number(two));
  expect(placesOf('sugar-maple')).toEqual(['1', '2', '4', '5', '7', '9', '10', '11']);
  expect(placesOf('yellow-birch')).toEqual(['3', '8']);
  expect(placesOf('american-beech')).toEqual(['6', '12']);
  expect(line('yellow-birch')?.missing).toContain('no price');
  expect(placesOf('pigment')).toEqual(['1', '3', '4', '6', '7', '9', '10', '11']);
  expect(line('pigment: moss green')?.onHand).toBe(0);
  expect(page.order.without).toHaveLength(2);
});

test('resin is mixed by colour, and the order takes what the mixes take', async () => {
  const page = await pageOf(classOf('class-of-twelve', { places: springPlaces() }));
  const fills = page.mixes.filter(({ calculation }) => calculation === 'dose');
  expect(fills.map(({ colour, places, asked }) => [colour, places.length, asked])).toEqual([
    ['amber', 8, 'shapes'],
    ['moss green', 4, 'shapes'],
  ]);
  expect(
    page.mixes.filter(({ calculation }) => calculation === 'seal-dose').map(({ places }) => places.length),
  ).toEqual([12]);
  const parts = page.mixes.flatMap(({ figures }) => [figures['massA']?.value ?? 0, figures['massB']?.value ?? 0]);
  const resin = page.order.lines.find(({ id }) => id === 'casting-resin');
  expect(resin?.need).toBeCloseTo(
    parts.reduce((sum, part) => sum + part, 0),
    6,
  );
});

test('channels of several depths are added up by weight, and a dose that is refused is told and not ordered', async () => {
  const depths = ['4 mm', '5 mm', '6 mm', '6 mm', '6 mm', '6 mm'];
  const places = depths.map((channelDepth, at) => ({ id: String(at + 1), set: { channelDepth } }));
  const page = await pageOf(classOf('class-of-twelve', { places }));
  const [fill] = page.mixes.filter(({ calculation }) => calculation === 'dose');
  expect(fill?.asked).toBe('mass');
  const single = async (channelDepth: string, pieces: number) =>
    (await workedAlone('class-of-twelve', { channelDepth }, pieces)).calculations['dose']?.result?.figures['mass']
      ?.value ?? 0;
  const sum = (await single('4 mm', 1)) + (await single('5 mm', 1)) + (await single('6 mm', 4));
  expect(fill?.figures['mass']?.value).toBeCloseTo(sum, 6);

  const text = methodText('class-of-twelve').replace('proud: 0.6 mm', 'proud: 0.6 mm\n          cupMass: 1 g');
  const refused = await pageOf(classOf('class-of-twelve', { places, text }));
  const [mix] = refused.mixes.filter(({ calculation }) => calculation === 'dose');
  expect(mix?.errors.join(' ')).toContain('1 g is less than this takes');
  const resin = refused.order.lines.find(({ id }) => id === 'casting-resin');
  expect(resin?.unknown.flatMap(({ places: who }) => who)).toContain('1');
});

test('a place that cannot be used is told, and nothing is ordered for it', async () => {
  const places = [...alike(6), { id: '7', set: { width: 'wide', wood: 'teak' } }];
  const page = await pageOf(classOf('class-of-twelve', { places }));
  expect(page.places[6]?.problems.map(({ field }) => field)).toEqual(['width', 'wood']);
  expect(page.order.errors.join()).toContain('place 7');
  expect(page.order.lines.flatMap(({ from }) => from.flatMap(({ places: who }) => who))).not.toContain('7');
});

test.each([
  ['no place', { places: [] }, 'places'],
  ['a parameter of all that is wrong', { places: alike(6), set: { width: '9 m' } }, 'common'],
  ['a session that is none', { places: alike(6), sessions: '2027-02-30 18:30-21:00' }, 'sessions'],
  ['a method that cannot be read', { places: alike(6), text: 'method: 1\n' }, 'method'],
])('a class with %s says so', async (_, differs, where) => {
  const answer = await answerClass(classOf('class-of-twelve', differs));
  expect(answer.ok).toBe(false);
  if (!answer.ok) expect(answer.problems.map((problem) => problem.where)).toContain(where);
});
