import { expect, test } from 'vitest';
import { told } from './base.ts';

const hole = (does: string) => `
parameters: { hole: { kind: quantity, label: Size of the hole, default: 12 mm, least: 8 mm, most: 30 mm } }
steps: { hole: { does: "${does}" } }
`;

test('a number that all but repeats the figure beside it', async () => {
  expect(await told(hole('Bore {/parameters/hole}, which is 14 mm, into waste.'))).toMatchInlineSnapshot(`
    [
      "words-beside at /steps/hole/does: The sentence says 14 mm beside “Size of the hole”, which is 12 mm here. Leave the written quantity out, or say what else it is.",
    ]
  `);
});

test('the same number, and one far from it', async () => {
  expect(await told(hole('Bore {/parameters/hole}, which is 12 mm, into waste.'))).toEqual([]);
  expect(await told(hole('Bore {/parameters/hole}, and stop 3 mm (1/8 in) before the end.'))).toEqual([]);
  expect(await told(hole('Bore {/parameters/hole} and no more than 15.1 mm.'))).toEqual([]);
});

test('a number in another sentence or of another dimension', async () => {
  expect(await told(hole('Bore {/parameters/hole} wide. A bit of 14 mm is too large.'))).toEqual([]);
  expect(await told(hole('Bore {/parameters/hole} within 13 min.'))).toEqual([]);
});

test('a number inside the band of a figure, and one just outside', async () => {
  // Mineral oil soaks for 40 min, 30 to 45 min.
  const soak = (number: string) => `
steps:
  oiling:
    does: "Let it soak for {/calculations/coats/figures/soak}, or ${number}."
    calculations:
      coats:
        use: finish-coats
        with: { shape: rounded-rectangle, cornerRadius: 20 mm, length: 400 mm, width: 250 mm, thickness: 19 mm, boards: 2, finish: mineral-oil, coats: 1 }
  give: { after: [{ step: oiling, least: { from: /calculations/coats/figures/use, take: high } }] }
`;
  expect(await told(soak('45 min'))).toEqual([]);
  expect(await told(soak('47 min'))).toHaveLength(1);
});
