import { expect, test } from 'vitest';
import { readShop } from '../../../src/method/shop/index.ts';
import { findingsIn, told } from './base.ts';

test('a blank that is wider than the planer', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { width: 331 mm } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "machine-width at /steps/thickness/piece/width: The piece is 331 mm wide, wider than the 330 mm that the tool takes (thickness planer). Take another tool, cut the piece down first, or say under wayRound how it is taken all the same.",
    ]
  `);
});

test('a blank that just goes in', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { width: 330 mm } } }
`),
  ).toEqual([]);
});

test('a way round it', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { width: 331 mm }, wayRound: In two halves that are glued afterwards. } }
`),
  ).toEqual([]);
});

test('the width of a template says nothing of the piece', async () => {
  expect(
    await told(`
tools: { bit: { limits: { diameter: 12 mm } } }
`),
  ).toEqual([]);
});

test('the planer of the shop stands before that of the method', async () => {
  const { shop } = readShop(`
shop: 1
name: A small shop
zone: America/Chicago
currency: USD
machines: [{ id: small-planer, kind: planer, limits: { width: 250 mm } }]
`);
  expect(shop).toBeDefined();
  const findings = await findingsIn(shop ? { shop } : {});
  expect(findings).toMatchObject([{ rule: 'machine-width', step: 'thickness' }]);
  expect(findings[0]?.message).toContain('in this shop');
});
