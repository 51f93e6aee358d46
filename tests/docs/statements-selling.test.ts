import { expect } from 'vitest';
import { densityAt } from '../../src/model/species/equations.ts';
import { speciesById } from '../../src/model/species/index.ts';
import { methodOf, numberAt } from './methods.ts';
import { hold } from './statements.ts';

// Numbers in the pages on sending a board out, worked out again from the class's tray.

const tray = await methodOf('class-of-twelve');
const size = (name: string) => numberAt(tray, `/parameters/${name}`);
const days = (pointer: string) => Math.round(numberAt(tray, pointer) / 86_400);

/** kg: the wood as a rectangle, channel and corners not taken off. */
const weight = () => {
  const gravity = speciesById('sugar-maple')?.figures.specificGravity12?.value ?? Number.NaN;
  return size('length') * size('width') * size('thickness') * 1e-9 * densityAt(gravity, 12);
};

hold({
  'signing-photographing-and-packing': [
    [
      'the cure of the class’s resin',
      () =>
        `| ${days('/calculations/clock/figures/fullCure')} days at ${size('dayTemperature')} °C by day and ${size('nightTemperature')} °C by night |`,
    ],
    [
      'the weight of a tray',
      () => {
        // With box and paper less than the two kilograms reckoned.
        expect(weight() + 0.6).toBeLessThan(2);
        return `The class’s tray weighs about ${weight().toFixed(1)} kg`;
      },
    ],
  ],
});
