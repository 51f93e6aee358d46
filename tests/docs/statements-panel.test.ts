import { expect } from 'vitest';
import { methodOf, numberAt } from './methods.ts';
import { figure, hold, mm, worked } from './statements.ts';

// Numbers in the page on gluing up a panel, worked out again from the panel of its method.

const panel = await methodOf('panel-moss-channel');
const size = (name: string) => numberAt(panel, `/parameters/${name}`);
const [outer, middle, thickness] = [size('outerStave'), size('middleStave'), size('thickness')];
const roughLength = numberAt(panel, '/calculations/outer-order/figures/roughLength');
/** m², of one seam, as it is glued: 3 mm are left on the thickness. */
const seam = roughLength * (thickness + 3) * 1e-6;

hold({
  'gluing-up-a-panel': [
    [
      'the staves and the panel of the method',
      () =>
        `hard maple, cherry, hard maple, ${outer}, ${middle} and ${outer} mm wide. Trimmed, the panel is ${size('length')} × ${size('width')} × ${thickness} mm.`,
    ],
    [
      'how far apart the clamps stand',
      () =>
        `From a 90 mm stave that is ${2 * outer} mm; a caul 30 mm wide along the edge makes it ${2 * (outer + 30)} mm. The panel is ${roughLength.toFixed(0)} mm long while it is rough, so it takes three.`,
    ],
    [
      'three clamps reach along that panel',
      () => {
        const apart = 2 * (outer + 30);
        expect(3 * apart).toBeGreaterThanOrEqual(roughLength);
        expect(2 * apart).toBeLessThan(roughLength);
        return 'so it takes three';
      },
    ],
    ['the glue of two seams', () => `The two seams here take ${(200 * 2 * seam).toFixed(0)} g;`],
    ['the force on a seam', () => `over one seam of this panel at least ${((1.2e6 * seam) / 1000).toFixed(0)} kN`],
    [
      'what the panel gains',
      () => {
        const asGlued = worked('gluing-up-a-panel', 'swing').value;
        const board = figure(
          'seasonal-movement',
          {
            species: 'sugar-maple',
            width: `${2 * outer + middle} mm`,
            thickness: `${thickness} mm`,
            cut: 'flatsawn',
            moistureNow: '9 %',
            place: 'duluth-mn',
            indoors: 'heated',
            heatTo: '20 °C',
          },
          'swing',
        ).value;
        return `As glued it moves ${mm(asGlued)} mm over the year in Duluth. One flatsawn maple board as wide would move ${mm(board)} mm`;
      },
    ],
    ['the exercise on the clamps', () => `(1) ${2 * 70} mm.`],
  ],
});
