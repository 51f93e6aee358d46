import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

/** Alcohol that wipes the pocket, and a torch over the pour. */
const wiped = (after: string) => `
materials: { alcohol: { what: Alcohol, kind: solvent, needs: [{ amount: 20 mL, per: piece }] } }
tools: { torch: { what: Torch, kind: torch } }
steps:
  wipe:
    title: Wipe the pocket
    act: clean
    does: Wipe it.
    after: [hole]
    uses: [alcohol, gloves, cloth]
    tools: [goggles, window]
  rehearse: { after: [wipe] }
  fill: { after: ${after}, tools: [goggles, window, torch] }
`;

test('a torch just after a solvent', async () => {
  expect(await told(withResin, wiped('[stir, wipe]'))).toMatchInlineSnapshot(`
    [
      "solvent-near-heat at /steps/fill: “Pour the inlay” has a torch at hand just after “Wipe the pocket”, with vapour of alcohol in the air. Do it without heat, or let all vapour go first, out of doors or across the room, in a step between.",
    ]
  `);
});

test('a torch in the step that uses it', async () => {
  expect(
    await told(withResin, wiped('[stir]'), 'steps: { fill: { uses: [resin, gloves, alcohol] } }'),
  ).toMatchInlineSnapshot(`
    [
      "solvent-near-heat at /steps/fill: “Pour the inlay” has a torch at hand, with vapour of alcohol in the air. Do it without heat, or let all vapour go first, out of doors or across the room, in a step between.",
    ]
  `);
});

test('a torch two steps later', async () => {
  expect(await told(withResin, wiped('[stir]'))).toEqual([]);
});
