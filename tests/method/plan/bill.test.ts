import { expect, test } from 'vitest';
import { workMethod } from '../../../src/method/case/work.ts';
import { billOfCase } from '../../../src/method/plan/bill.ts';
import { readMethod } from '../../../src/method/read.ts';
import { readShop } from '../../../src/method/shop/index.ts';
import { fileText, methodText } from '../class/files.ts';

const shop = readShop(fileText('shop.yaml')).shop;
const memo = new Map<string, unknown>();

async function linesOf(id: string, set: Record<string, string>) {
  const working = await workMethod(readMethod(methodText(id), id), { set, memo, ...(shop ? { shop } : {}) });
  if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
  const bill = billOfCase(working.worked, shop);
  if (!bill.ok) throw new Error(bill.errors.map(({ message }) => message).join('\n'));
  return bill.value.lines;
}

test('the wood that is chosen is bought by its own price, and not by that of the wood which the method takes for usual', async () => {
  const usual = (await linesOf('wide-cherry-flood', {})).find(({ id }) => id === 'black-cherry');
  const chosen = await linesOf('wide-cherry-flood', { wood: 'sugar-maple' });
  const maple = chosen.find(({ id }) => id === 'sugar-maple');
  expect(chosen.some(({ id }) => id === 'black-cherry')).toBe(false);
  // In board feet, with the prices of the shop of the demonstration: maple at 9.00, cherry at another.
  expect(maple?.cost).toBeCloseTo((maple?.buy ?? Number.NaN) * 9, 6);
  expect((usual?.cost ?? Number.NaN) / (usual?.buy ?? Number.NaN)).not.toBeCloseTo(9, 1);
});

test('a wood that the shop has no price for is bought without one, and the bill says so', async () => {
  const lines = await linesOf('class-of-twelve', { wood: 'yellow birch' });
  const birch = lines.find(({ id }) => id === 'yellow-birch');
  expect(birch).toMatchObject({ cost: null, onHand: 0, what: expect.stringContaining('yellow birch') });
  expect(birch?.missing).toContain('no price');
  expect(lines.some(({ id }) => id === 'sugar-maple')).toBe(false);
});

test('the other colour of a paste is sold as the usual one is, and none of it is on the shelf', async () => {
  const paste = (await linesOf('class-of-twelve', { colour: 'moss green, 100 %, paste 2 %' })).find(({ id }) =>
    id.startsWith('pigment'),
  );
  expect(paste).toMatchObject({ onHand: 0 });
  expect(paste?.cost).toBeGreaterThan(0);
});
