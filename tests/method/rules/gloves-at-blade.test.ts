import { expect, test } from 'vitest';
import { told } from './base.ts';

test('gloves at the drill press', async () => {
  expect(
    await told(`
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps: { hole: { uses: [maple, gloves] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "gloves-at-blade at /steps/hole: “Bore the hanging hole” lists gloves beside a machine with a blade (drill press). Take the gloves out of the step; what needs gloves is a step of its own, before or after.",
    ]
  `);
});

test('gloves where nothing turns', async () => {
  expect(
    await told(`
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps: { oiling: { uses: [oil, cloth, gloves] } }
`),
  ).toEqual([]);
});
