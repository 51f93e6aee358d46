import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { massToMix, readingError } from './dose.ts';
import { mixedDensity, partsOfMass, volumeRatioOfWeight, weightRatioOfVolume } from './ratio.ts';
import { footprintOf } from './shapes.ts';

const byHand = (
  id: string,
  what: string,
  published: number,
  unit: string,
  tolerance: number,
  working: string,
  ours: () => number,
): CheckValue => ({
  id,
  what,
  published,
  ours,
  unit,
  tolerance,
  reason: 'Half of the last digit worked out by hand.',
  citation: { source: 'kerf-and-cure', locator: working },
});

/** A board’s channel of 600 ml, mixed 2:1 by volume with 1.16 and 1.00 g/ml: 400 ml are 464 g, 200 ml are 200 g. */
const tray = () => {
  const weight = weightRatioOfVolume(1 / 2, 1.16, 1);
  return partsOfMass(600 * mixedDensity(weight, 1.16, 1), weight, 1.16, 1);
};

/** Dosing is arithmetic: its checks are cases worked out on paper, since there is nothing else for it to agree with. */
export const doseChecks: readonly CheckSet[] = [
  {
    id: 'resin-dose',
    title: 'Resin doses worked by hand',
    kind: 'check',
    about:
      'Cases worked on paper: ratios by volume turned to ratios by weight, the parts of a fill, what a scale can err. They show that the arithmetic is right; they say nothing of any resin.',
    values: [
      byHand(
        'coating-1-1',
        'Hardener to 100 of resin by weight, 1:1 by volume, 1.16 and 0.97 g/ml',
        83.62,
        '1',
        0.005,
        '97 / 1.16',
        () => 100 * weightRatioOfVolume(1, 1.16, 0.97),
      ),
      byHand(
        'casting-2-1',
        'Hardener to 100 of resin by weight, 2:1 by volume, 1.16 and 1.00 g/ml',
        43.1,
        '1',
        0.05,
        '100 / (2 × 1.16)',
        () => 100 * weightRatioOfVolume(1 / 2, 1.16, 1),
      ),
      byHand(
        'casting-back',
        'Hardener to 100 of resin by volume, 100:43.1 by weight, 1.16 and 1.00 g/ml',
        50,
        '1',
        0.05,
        '43.1 × 1.16',
        () => 100 * volumeRatioOfWeight(0.431, 1.16, 1),
      ),
      byHand(
        'mixed-2-1',
        'Density of the mix, 2:1 by volume, 1.16 and 1.00 g/ml',
        1.1067,
        'g/mL',
        0.00005,
        '(2 × 1.16 + 1) / 3',
        () => mixedDensity(weightRatioOfVolume(1 / 2, 1.16, 1), 1.16, 1),
      ),
      byHand('tray-a', 'Part A of 600 ml, 2:1 by volume', 464, 'g', 0.5, '400 ml × 1.16', () => tray().massA),
      byHand('tray-b', 'Part B of 600 ml, 2:1 by volume', 200, 'g', 0.5, '200 ml × 1.00', () => tray().massB),
      byHand(
        'tray-volume-a',
        'Part A of 600 ml, 2:1 by volume',
        400,
        'mL',
        0.5,
        'two thirds of 600',
        () => tray().volumeA,
      ),
      byHand(
        'ring',
        'Area of a ring of 200 mm across with a middle of 160 mm',
        11_310,
        'mm2',
        0.5,
        'π × (100² − 80²)',
        () => footprintOf({ kind: 'ring', outer: 200, inner: 160 }).area,
      ),
      byHand('to-mix', 'To mix for 190 g with 4 % left in the cup and no spare', 197.9, 'g', 0.05, '190 / 0.96', () =>
        massToMix(190, 0, { drip: 0, residue: 4, spare: 0 }),
      ),
      byHand('scale', 'Error that a scale of 1 g allows on 20 g of hardener', 2.5, '%', 0.05, '0.5 / 20', () =>
        readingError(1, 20),
      ),
    ],
  },
];
