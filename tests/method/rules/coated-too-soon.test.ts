import { expect, test } from 'vitest';
import { told } from './base.ts';

/** Two coats of mineral oil, whose record has 12 h from one to the next. */
const twoCoats = (least: string) => `
steps:
  oiling:
    calculations:
      coats:
        use: finish-coats
        with: { shape: rounded-rectangle, cornerRadius: 20 mm, length: 400 mm, width: 250 mm, thickness: 19 mm, boards: 2, finish: { from: /parameters/finish }, coats: 2 }
  oil-again:
    title: Oil it again
    act: oil
    does: As before.
    after: [{ step: oiling, least: ${least} }]
    uses: [oil, cloth]
  give: { after: [oil-again, { step: oiling, least: { from: /calculations/coats/figures/use, take: high } }] }
`;

test('a second coat the same afternoon', async () => {
  expect(await told(twoCoats('11 h'))).toMatchInlineSnapshot(`
    [
      "coated-too-soon at /steps/oil-again: “Oil it again” may begin 11 h after “Oil it” is done; the finish takes its next coat after 12 h. Let it wait for the recoat time of finish-coats; the can comes first.",
    ]
  `);
});

test('a second coat after the recoat time', async () => {
  expect(await told(twoCoats('12 h'))).toEqual([]);
});
