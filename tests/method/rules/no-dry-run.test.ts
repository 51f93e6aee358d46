import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a pour that nobody rehearsed', async () => {
  expect(await told(withResin, 'steps: { rehearse: null, stir: { after: [hole] } }')).toMatchInlineSnapshot(`
    [
      "no-dry-run at /steps/stir: Nothing is rehearsed before “Mix the resin”. Add a step (act: brief) that walks through it with empty cups, and says where a hot cup goes.",
    ]
  `);
});

test('a pour that is rehearsed', async () => {
  expect(await told(withResin)).toEqual([]);
});
