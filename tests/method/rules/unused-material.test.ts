import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a material that no step takes', async () => {
  expect(
    await told(`
materials: { tape: { what: Masking tape, kind: dam-and-tape, needs: [{ amount: 1 m, per: batch }] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "unused-material at /materials/tape: “Masking tape” (tape) is used in no step. List it under uses of the step that takes it, or take it out.",
    ]
  `);
});
