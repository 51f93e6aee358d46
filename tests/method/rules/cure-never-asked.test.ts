import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

const guessed =
  'steps: { fill: { why: null, calculations: { clock: null } }, smooth: { after: [{ step: fill, least: 14 d }] } }';

test('resin whose cure is guessed', async () => {
  expect(await told(withResin, guessed)).toMatchInlineSnapshot(`
    [
      "cure-never-asked at /steps/fill: “Pour the inlay” lays resin, and nothing asks when it has cured in this shop. Ask cure-clock, with the resin and the temperatures of the shop, and let sanding, oil and hand-over wait for its figures.",
    ]
  `);
});

test('the same with the clock asked in the step before', async () => {
  expect(
    await told(
      withResin,
      guessed,
      `
steps:
  stir:
    why: "{/calculations/clock/verdict}"
    calculations: { clock: { use: cure-clock, with: { resin: slow-casting-2-1, shopTemperature: 20 °C } } }
`,
    ),
  ).toEqual([]);
});
