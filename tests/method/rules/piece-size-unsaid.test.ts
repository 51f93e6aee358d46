import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a planer that is not told how long its piece is', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { length: null } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "piece-size-unsaid at /steps/thickness: “Plane to thickness” does not say how long the piece is, which its tool limits (thickness planer). Give length under piece, as the piece comes to the machine.",
    ]
  `);
});

test('a saw that draws nothing in need not be told', async () => {
  expect(
    await told(`
tools: { planer: null, saw: { what: Mitre saw, kind: mitre-saw, limits: { width: 305 mm } } }
steps: { thickness: { act: saw, tools: [saw, extractor, goggles, muffs], piece: null } }
`),
  ).toEqual([]);
});

test('a way round answers for it', async () => {
  expect(
    await told(`
steps: { thickness: { piece: null, wayRound: On a sled with stops at both ends. } }
`),
  ).toEqual([]);
});
