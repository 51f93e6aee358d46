import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a panel that is planed a day too soon', async () => {
  expect(
    await told(`
materials: { glue: { what: Wood glue, kind: glue, needs: [{ amount: 30 mL, per: piece }] } }
tools: { clamps: { what: Bar clamps, kind: clamp } }
steps:
  glue: { title: Glue the panel, act: glue-up, does: Spread glue and clamp., after: [look], uses: [glue], tools: [clamps], holds: [{ tool: clamps, until: release }] }
  release: { title: Take the clamps off, act: clear-up, does: Loosen them by turns., after: [{ step: glue, least: 1 h }] }
  thickness: { after: [{ step: release, least: 143 h }] }
`),
  ).toMatchInlineSnapshot(`
    [
      "planed-too-soon at /steps/thickness: “Plane to thickness” may begin 6 d after the panel is glued; 7 d is usual before it is brought to its final thickness. Leave a little thickness for a last pass a week later, or let the step wait.",
    ]
  `);
});

test('a panel that is planed a week later', async () => {
  expect(
    await told(`
materials: { glue: { what: Wood glue, kind: glue, needs: [{ amount: 30 mL, per: piece }] } }
tools: { clamps: { what: Bar clamps, kind: clamp } }
steps:
  glue: { title: Glue the panel, act: glue-up, does: Spread glue and clamp., after: [look], uses: [glue], tools: [clamps], holds: [{ tool: clamps, until: release }] }
  release: { title: Take the clamps off, act: clear-up, does: Loosen them by turns., after: [{ step: glue, least: 1 h }] }
  thickness: { after: [{ step: release, least: 167 h }] }
`),
  ).toEqual([]);
});
