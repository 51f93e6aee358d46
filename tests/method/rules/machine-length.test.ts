import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a blank that is shorter than the planer may be fed', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { length: 304 mm } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "machine-length at /steps/thickness/piece/length: The piece is 304 mm long, shorter than the 305 mm that the tool may be fed (thickness planer). Work it while it is still part of a larger piece, fix it to a sled that is large enough, and say so under wayRound.",
    ]
  `);
});

test('a blank that is just long enough', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { length: 305 mm } } }
`),
  ).toEqual([]);
});
