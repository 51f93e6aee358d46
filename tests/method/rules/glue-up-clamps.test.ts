import { expect, test } from 'vitest';
import { told } from './base.ts';

test('clamps that may come off too soon', async () => {
  expect(
    await told(`
materials: { glue: { what: Wood glue, kind: glue, needs: [{ amount: 30 mL, per: piece }] } }
tools: { clamps: { what: Bar clamps, kind: clamp } }
steps:
  glue: { title: Glue the panel, act: glue-up, does: Spread glue and clamp., after: [look], uses: [glue], tools: [clamps], holds: [{ tool: clamps, until: release }] }
  release: { title: Take the clamps off, act: clear-up, does: Loosen them by turns., after: [{ step: glue, least: 29 min }] }
  thickness: { after: [{ step: release, least: 7 d }] }
`),
  ).toMatchInlineSnapshot(`
    [
      "glue-up-clamps at /steps/glue/holds: Clamps of “Glue the panel” may come off after 29 min; 30 min is the least that is usual. Let the step that takes them off wait as long as the label of the glue says (after: least).",
    ]
  `);
});

test('clamps that stay half an hour', async () => {
  expect(
    await told(`
materials: { glue: { what: Wood glue, kind: glue, needs: [{ amount: 30 mL, per: piece }] } }
tools: { clamps: { what: Bar clamps, kind: clamp } }
steps:
  glue: { title: Glue the panel, act: glue-up, does: Spread glue and clamp., after: [look], uses: [glue], tools: [clamps], holds: [{ tool: clamps, until: release }] }
  release: { title: Take the clamps off, act: clear-up, does: Loosen them by turns., after: [{ step: glue, least: 30 min }] }
  thickness: { after: [{ step: release, least: 7 d }] }
`),
  ).toEqual([]);
});

test('clamps that nothing holds', async () => {
  expect(
    await told(`
materials: { glue: { what: Wood glue, kind: glue, needs: [{ amount: 30 mL, per: piece }] } }
tools: { clamps: { what: Bar clamps, kind: clamp } }
steps:
  glue: { title: Glue the panel, act: glue-up, does: Spread glue and clamp., after: [look], uses: [glue], tools: [clamps] }
  release: { title: Take the clamps off, act: clear-up, does: Loosen them by turns., after: [{ step: glue, least: 1 h }] }
  thickness: { after: [{ step: release, least: 7 d }] }
`),
  ).toMatchInlineSnapshot(`
    [
      "glue-up-clamps at /steps/glue: “Glue the panel” takes its clamps off as soon as it is done. List the clamps under holds, until the step at whose end they come off, and let that step wait for the glue.",
    ]
  `);
});
