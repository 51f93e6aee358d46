import { expect, test } from 'vitest';
import { told } from './base.ts';

test('wood that is wetter than two points above the middle of its year', async () => {
  expect(
    await told(`
steps: { look: { calculations: { year: { with: { moistureNow: 11 % } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "stock-moisture at /steps/look/calculations/year: The wood is worked at 11 %; where it will live it goes from 4.5 % to 12.8 % through the year. That is 2.3 points above the 8.7 % in the middle of its year; up to 2 are usual. Let it dry to between 6.7 % and 10.7 % first, in air that is kept so.",
    ]
  `);
});

test('wood that is drier than two points below it', async () => {
  expect(
    await told(`
steps: { look: { calculations: { year: { with: { moistureNow: 4 % } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "stock-moisture at /steps/look/calculations/year: The wood is worked at 4 %; where it will live it goes from 4.5 % to 12.8 % through the year. That is 4.7 points below the 8.7 % in the middle of its year; up to 2 are usual. Let it take up moisture to between 6.7 % and 10.7 % first, in air that is kept so.",
    ]
  `);
});

test('wood within two points of it', async () => {
  expect(
    await told(`
steps: { look: { calculations: { year: { with: { moistureNow: 10.6 % } } } } }
`),
  ).toEqual([]);
});

test('wood of which nobody says how dry it is', async () => {
  expect(
    await told(`
steps: { look: { looksFor: [cracks], calculations: null } }
`),
  ).toMatchInlineSnapshot(`
    [
      "stock-moisture at /materials/maple: Nowhere is it said how dry the wood is when it is worked. Ask for the movement through the year (seasonal-movement) with the moisture of the wood and the place, or measure the wood in an inspection that looks for moisture.",
    ]
  `);
});

test('a calculation that has no answer is told by its own rule alone', async () => {
  expect(
    await told(`
steps: { look: { looksFor: [cracks], calculations: { year: { with: { moistureNow: null } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "calculation-refuses at /steps/look/calculations/year/with: It was not said how dry the board is. Give a meter’s reading such as 8 %, or temperature and humidity of the shop. Give moistureNow of year; the page of seasonal-movement says what it asks.",
    ]
  `);
});

test('an inspection that measures it is enough', async () => {
  expect(
    await told(`
steps: { look: { calculations: null } }
`),
  ).toEqual([]);
});

test('a moisture that is handed on is told once', async () => {
  const found = await told(`
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 5.5 %, temperature: 20 °C, relativeHumidity: 25 % } }
      year: { with: { moistureNow: { from: /calculations/settling/figures/balance } } }
`);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/^stock-moisture at \/steps\/look\/calculations\/year: The wood is worked at 5\.4 %/);
});
