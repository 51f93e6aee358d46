import { expect } from 'vitest';
import { densityAt } from '../../src/model/species/equations.ts';
import { speciesById } from '../../src/model/species/index.ts';
import { methodOf, numberAt } from './methods.ts';
import { hold, mm, worked } from './statements.ts';

// Numbers in the pages on sending a board out, worked out again from the class's tray.

const tray = await methodOf('class-of-twelve');
const size = (name: string) => numberAt(tray, `/parameters/${name}`);
const days = (pointer: string) => Math.round(numberAt(tray, pointer) / 86_400);

/** kg: the wood as a rectangle, channel and corners not taken off. */
const weight = () => {
  const gravity = speciesById('sugar-maple')?.figures.specificGravity12?.value ?? Number.NaN;
  return size('length') * size('width') * size('thickness') * 1e-9 * densityAt(gravity, 12);
};
/** The same in pounds, 0.45359237 kg by definition. */
const pounds = () => (weight() / 0.45359237).toFixed(1);

hold({
  'oily-rags': [
    [
      'the cloths of a class',
      () => {
        const { needs } = tray.materials['cloths'] ?? { needs: [] };
        // Of its needs the first and the second are those of a coat each.
        const [cloths = Number.NaN, again] = needs.map(({ amount }) => amount);
        expect(again).toBe(cloths);
        return `A class of twelve with three each has ${cloths} out, ${cloths} back.`;
      },
    ],
  ],
  'what-may-be-promised': [
    [
      'the tray as it is',
      () =>
        `${size('length')} × ${size('width')} × ${size('thickness')} mm, about ${weight().toFixed(1)} kg (${pounds()} lb) | | inlay | amber epoxy resin in a channel ${size('channelLength')} × ${size('channelWidth')} mm`,
    ],
    [
      'the movement in words',
      () => {
        const swing = worked('what-may-be-promised', 'swing').value;
        expect(swing).toBeCloseTo(numberAt(tray, '/calculations/year/figures/swing'), 6);
        return `This board is ${size('width')} mm wide. In a heated home in Duluth it becomes up to ${mm(swing)} mm narrower in winter than in late summer`;
      },
    ],
    [
      'the coats of oil',
      () => `mineral oil, ${['no', 'one', 'two'][numberAt(tray, '/calculations/coats/figures/coats')]} coats`,
    ],
  ],
  'signing-photographing-and-packing': [
    [
      'the cure of the class’s resin',
      () =>
        `| ${days('/calculations/clock/figures/fullCure')} d at ${size('dayTemperature')} °C by day and ${size('nightTemperature')} °C by night |`,
    ],
    [
      'the weight of a tray',
      () => {
        // With box and paper less than the two kilograms reckoned.
        expect(weight() + 0.6).toBeLessThan(2);
        return `The class’s tray weighs about ${weight().toFixed(1)} kg (${pounds()} lb)`;
      },
    ],
  ],
});
