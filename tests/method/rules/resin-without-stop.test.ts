import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a mix that may be left overnight', async () => {
  expect(
    await told(withResin, 'steps: { stir: { interrupt: anywhere }, fill: { interrupt: null } }'),
  ).toMatchInlineSnapshot(`
    [
      "resin-without-stop at /steps/stir: “Mix the resin” may be left at any point, with mixed resin standing in its cup. Write interrupt: never into the step.",
      "resin-without-stop at /steps/fill: “Pour the inlay” may be left between two pieces, with mixed resin standing in its cup. Write interrupt: never into the step.",
    ]
  `);
});

test('resin that is mixed and poured in one go', async () => {
  expect(await told(withResin)).toEqual([]);
});
