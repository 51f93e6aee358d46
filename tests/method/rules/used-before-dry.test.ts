import { expect, test } from 'vitest';
import { told } from './base.ts';

/** Mineral oil, whose record has 24 h to handling and use. */
const givenAfter = (least: string) => `
steps:
  oiling:
    calculations:
      coats:
        use: finish-coats
        with: { shape: rounded-rectangle, cornerRadius: 20 mm, length: 400 mm, width: 250 mm, thickness: 19 mm, boards: 2, finish: { from: /parameters/finish }, coats: 1 }
  give: { after: [{ step: oiling, least: ${least} }] }
`;

test('a tray that is given away on the evening of its oil', async () => {
  expect(await told(givenAfter('4 h'))).toMatchInlineSnapshot(`
    [
      "used-before-dry at /steps/give: “Hand it over” may begin 4 h after “Oil it” is done; the finish may be used 12 h after its first coat. Let it wait for the time to use of finish-coats; the can comes first.",
    ]
  `);
});

test('one that is given away when the oil may be used', async () => {
  expect(await told(givenAfter('{ from: /calculations/coats/figures/use }'))).toEqual([]);
});
