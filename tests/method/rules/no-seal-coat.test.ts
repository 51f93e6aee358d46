import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

const walnut = 'parameters: { wood: { default: black-walnut } }';
const sealed = `
steps:
  seal:
    title: Seal the pocket
    act: seal
    does: Brush it on thin.
    after: [rehearse]
    uses: [resin, gloves, cups]
    tools: [scale, goggles, window]
    interrupt: never
  fill:
    after:
      - stir
      - { step: seal, least: { from: /calculations/clock/figures/recoatOpens, take: high }, most: { from: /calculations/clock/figures/recoatCloses, take: low } }
`;
const withoutFood = (lines: readonly string[]) => lines.filter((line) => !line.startsWith('wood-for-food'));

test('open pores without a seal coat', async () => {
  expect(withoutFood(await told(withResin, walnut))).toMatchInlineSnapshot(`
    [
      "no-seal-coat at /steps/fill: “Pour the inlay” pours into black walnut, whose pores are open, without a seal coat. Brush a thin coat of the same resin on floor and walls first (act: seal), and pour while its window is open.",
    ]
  `);
});

test('open pores with one', async () => {
  expect(withoutFood(await told(withResin, walnut, sealed))).toEqual([]);
});

test('a crack, which the first drops seal, and a slot just wider', async () => {
  const wide = (width: string) => `steps: { fill: { calculations: { heat: { with: { width: ${width} } } } } }`;
  expect(withoutFood(await told(withResin, walnut, wide('3 mm')))).toEqual([]);
  expect(withoutFood(await told(withResin, walnut, wide('3.5 mm')))).toHaveLength(1);
});
