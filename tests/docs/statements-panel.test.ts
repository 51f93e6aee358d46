import { expect } from 'vitest';
import { methodOf, numberAt } from './methods.ts';
import { figure, hold, mm, worked } from './statements.ts';

// Numbers in the pages on panels and on edges, worked out again from the panel of its method and from the class's tray.

const panel = await methodOf('panel-moss-channel');
const size = (name: string) => numberAt(panel, `/parameters/${name}`);
const [outer, middle, thickness] = [size('outerStave'), size('middleStave'), size('thickness')];
const roughLength = numberAt(panel, '/calculations/outer-order/figures/roughLength');
/** m², of one seam, as it is glued: 3 mm are left on the thickness. */
const seam = roughLength * (thickness + 3) * 1e-6;

const tray = await methodOf('class-of-twelve');
const [width, board, channel, depth] = ['width', 'thickness', 'channelWidth', 'channelDepth'].map((name) =>
  numberAt(tray, `/parameters/${name}`),
) as [number, number, number, number];
const swing = numberAt(tray, '/calculations/year/figures/swing');

hold({
  'edges-feet-and-handles': [
    [
      'the flat between two rounded edges',
      () => `On the class’s tray, ${board} mm thick, 3 mm on both faces leaves a flat of ${board - 2 * 3} mm`,
    ],
    ['the strip beyond a slot', () => `${2 * board} mm of a board of ${board} mm (common practice)`],
    [
      'a screw and the floor of the channel',
      () => {
        expect(12).toBeLessThan(board - depth);
        return `They go 12 mm into a board of ${board} mm at the most, **and none under the channel**, where ${board - depth} mm are left.`;
      },
    ],
    [
      'what two screws see of the year',
      () => {
        const seen = (swing * 160) / width;
        expect(seen).toBeLessThan(6);
        return `while the tray swings by ${mm(swing)} mm over the year in Duluth. Two screws 160 mm apart see ${mm(seen)} mm of it.`;
      },
    ],
    ['from edge to channel', () => `the long edge is ${(width - channel) / 2} mm from the channel`],
    ['the exercise on a third', () => `1. ${Math.floor(16 / 3)} mm.`],
    ['the exercise on the slot', () => `3. No: ${2 * 20} mm.`],
  ],
  'gluing-up-a-panel': [
    [
      'the staves and the panel of the method',
      () =>
        `hard maple, cherry, hard maple, ${outer} mm, ${middle} mm and ${outer} mm wide. Trimmed, the panel is ${size('length')} × ${size('width')} × ${thickness} mm.`,
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
    ['the exercise on the clamps', () => `1. ${2 * 70} mm.`],
  ],
});
