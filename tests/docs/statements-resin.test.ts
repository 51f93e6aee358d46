import { expect } from 'vitest';
import { weightRatioOfVolume } from '../../src/model/resin/index.ts';
import { hold } from './statements.ts';

// Numbers in the pages on resin, worked out again.

const whole = (value: number) => value.toFixed(0);

/** Parts of hardener to a hundred of resin by weight. */
const toHundred = (volumeRatio: number, densityA: number, densityB: number) =>
  100 * weightRatioOfVolume(volumeRatio, densityA, densityB);

/** Half a division of the scale, as a part of what is weighed, in percent. */
const scaleError = (division: number, grams: number) => (100 * division) / 2 / grams;

/** Stokes’s law for a bubble in resin of 1.1 g/mL and 1,000 mPa·s: metres in a second. */
const rise = (millimetresAcross: number) => ((2 / 9) * 1100 * 9.81 * (millimetresAcross / 2000) ** 2) / 1;
const through = (millimetresAcross: number) => 0.006 / rise(millimetresAcross);

hold({
  'dosing-and-mixing-resin': [
    ['1 : 1 by weight', () => `| 1 : 1 | 1.16, 0.97 | 100 : ${toHundred(1, 1.16, 0.97).toFixed(1)} |`],
    ['2 : 1 by weight', () => `| 2 : 1 | 1.16, 1.00 | 100 : ${toHundred(1 / 2, 1.16, 1).toFixed(1)} |`],
    [
      'a 1 : 1 ratio weighed as if it were by weight',
      () => {
        const wanted = toHundred(1, 1.16, 0.97) / 2;
        expect(50 / wanted).toBeCloseTo(1.2, 2);
        return `50 g of A want ${wanted.toFixed(1)} g, so there is a fifth too much of it.`;
      },
    ],
    ...[10, 20, 50].map((grams): [string, () => string] => [
      `what the scale allows at ${grams} g`,
      () => `| ${grams} g | ± ${scaleError(1, grams)} % | ± ${scaleError(0.1, grams)} % |`,
    ]),
    [
      '143 g at 2 : 1',
      () => {
        const share = toHundred(1 / 2, 1.16, 1) / 100;
        return `(1) ${whole(143 / (1 + share))} g of A and ${whole((143 * share) / (1 + share))} g of B.`;
      },
    ],
    ['30 cm² at 5 mm', () => `(3) ${30 * 0.5} mL, about ${whole(30 * 0.5 * 1.1)} g.`],
  ],
  'colour-and-pigment': [
    ['pigment in a cup', () => `(1) ${(143 * 0.03).toFixed(1)} g. (2) ${whole(toHundred(1 / 2, 1.16, 1))} g`],
    ['a tenth of a percent', () => `On a tray’s 70 g of resin 0.1 % is ${(70 * 0.001).toFixed(2)} g`],
  ],
  bubbles: [
    ['1 mm', () => `| 1 mm | ${(rise(1) * 1000).toFixed(1)} mm in a second | ${whole(through(1))} s |`],
    ['0.3 mm', () => `| 0.3 mm | ${whole(rise(0.3) * 60_000)} mm in a minute | ${whole(through(0.3) / 60)} min |`],
    [
      '0.1 mm',
      () => `| 0.1 mm | ${(rise(0.1) * 60_000).toFixed(1)} mm in a minute | ${whole(through(0.1) / 60)} min |`,
    ],
    [
      '0.03 mm',
      () => `| 0.03 mm | ${whole(rise(0.03) * 3_600_000)} mm in an hour | ${whole(through(0.03) / 3600)} h |`,
    ],
    ['twice as thick', () => `(2) About ${whole(2 * through(1))} s.`],
  ],
  'resin-and-moving-wood': [
    [
      'shrinkage of 40 mm',
      () => `| ${((40 * 0.02) / 3).toFixed(2)} to ${((40 * 0.05) / 3).toFixed(2)} mm if it were free |`,
    ],
    ['cooling by 20 °C', () => `60 millionths per °C | ${(40 * 20 * 60e-6).toFixed(2)} mm |`],
  ],
});
