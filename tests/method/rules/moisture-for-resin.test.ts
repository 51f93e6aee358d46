import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

const moist = (percent: string) => `
steps:
  look: { calculations: { year: { with: { moistureNow: ${percent} } } } }
exceptions: [{ rule: stock-moisture, reason: It is dried in its shape }]
`;

test('wood at barn moisture under resin', async () => {
  expect(
    (await told(withResin, moist('12.5 %'))).filter((line) => !line.startsWith('stock-moisture')),
  ).toMatchInlineSnapshot(`
    [
      "moisture-for-resin at /steps/look/calculations/year: The wood is worked at 12.5 %; up to 12 % is usual under resin. Let it dry in the air of the shop until its weight stands still, and ask the sheet of the resin.",
    ]
  `);
});

test('the same just dry enough', async () => {
  expect((await told(withResin, moist('12 %'))).filter((line) => !line.startsWith('stock-moisture'))).toEqual([]);
});

test('the same without resin', async () => {
  expect((await told(moist('12.5 %'))).filter((line) => !line.startsWith('stock-moisture'))).toEqual([]);
});

test('wood that comes wet and settles in the shop first', async () => {
  const settling = (air: string) => `
steps:
  settle:
    title: Stack it in the shop
    act: acclimatise
    does: On stickers. {/calculations/settling/verdict}
    after: [look]
    uses: [maple]
    calculations:
      settling:
        use: acclimatise
        with: { thickness: 25 mm, moistureNow: 14 %, temperature: 20 °C, relativeHumidity: ${air}, species: sugar-maple }
  thickness: { after: [{ step: settle, least: { from: /calculations/settling/figures/withinOne } }] }
`;
  const wet = async (air: string) =>
    (await told(withResin, moist('12.5 %'), settling(air))).filter((line) => line.startsWith('moisture-for-resin'));
  expect(await wet('45 %')).toEqual([]);
  expect(await wet('70 %')).toHaveLength(1);
});
