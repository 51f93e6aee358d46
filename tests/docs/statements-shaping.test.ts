import { expect } from 'vitest';
import {
  bitLeaves,
  findNecks,
  leastInsideRadius,
  meshOf,
  parametricOutline,
  prepare,
  tearOut,
  usualLimits,
} from '../../src/model/outline/index.ts';
import { speciesById } from '../../src/model/species/index.ts';
import {
  boringBits,
  boringSpeed,
  inch,
  rimSpeed,
  routerCeilings,
  templateCut,
  usualContact,
  usualDepthOfPass,
} from '../../src/model/stock/index.ts';
import { tray, trayDerived } from '../../src/site/mdx/tray.ts';
import { figure, hold, mm, settled, worked } from './statements.ts';

// Numbers in the pages on templates, routing and boring, worked out again.

const whole = (value: number) => value.toFixed(0);
const drawn = (id: string, measures: Record<string, number>) => {
  const outline = parametricOutline(id)?.draw(measures);
  if (!outline) throw new Error(`no outline ${id}`);
  return settled(prepare(settled(outline)));
};

const paddle = drawn('paddle', { length: 420, width: 220, handleLength: 140, handleWidth: 45, shoulderRadius: 20 });
const mesh = meshOf(paddle);
const percent = (share: number) => `${whole(100 * share)} %`;
const corner = (diameter: number) =>
  Math.max(0, ...bitLeaves(paddle, diameter).map(({ kind, depth }) => (kind === 'corner' ? (depth ?? 0) : 0)));

const thousands = (turns: number) => `${turns / 1000} 000`;
/** The class's bit with its bearing at the wrong end. */
const shankBit = { diameter: 12.7, cuttingLength: inch, bearing: 'shank' as const, stock: 19, contact: 3, beyond: 1 };
const cut = templateCut({ ...shankBit, template: 12, depthOfPass: inch / 4 });

const { channel } = tray;
/** From the pocket to its window, all round. */
const offset = trayDerived.collarOffset;

/** Parts of a whole, in words, by how many make it. */
const parts: Readonly<Record<number, string>> = { 6: 'sixth', 12: 'twelfth' };

const hardMaple = speciesById('sugar-maple')?.figures.sideHardness12?.value ?? Number.NaN;
const bit = (id: string) => {
  const found = boringBits.find((one) => one.id === id);
  if (!found) throw new Error(`no bit ${id}`);
  return found;
};
const turns = (id: string, diameter: number) => whole(boringSpeed(bit(id), diameter, hardMaple).turns);

hold({
  'making-and-using-templates': [
    [
      'the frame of the window',
      () =>
        `the tray ends ${whole(tray.length / 2)} mm from its middle, the blank at ${whole(tray.blank.length / 2)} mm. So cut it ${whole(tray.blank.length)} mm long and ${tray.width} mm wide.`,
    ],
    [
      'the length of the paddle',
      () => {
        const { x } = paddle.outer;
        return `With the handle it is ${whole(Math.max(...x) - Math.min(...x))} mm long.`;
      },
    ],
    [
      'what a wide bit leaves',
      () => {
        // The hole aside: it is bored.
        expect(corner(40)).toBe(0);
        return `any bit up to ${2 * 20} mm follows them. A bit of 44 mm would leave ${mm(corner(44))} mm standing in the deepest place, one of 50 mm ${mm(corner(50))} mm.`;
      },
    ],
    [
      'the least radius is that of the hole',
      () => {
        expect(leastInsideRadius(paddle, mesh)?.radius).toBeCloseTo(6, 1);
        return 'The hole of 12 mm is smaller than the template bit.';
      },
    ],
    [
      'the wood at the hole',
      () => {
        const { shortGrain, holeToEdge } = findNecks(paddle, mesh, 0, 60);
        expect(shortGrain).toHaveLength(1);
        return `stand ${whole(shortGrain[0]?.length ?? 0)} mm of wood with the fibres running straight through from hole to end: the usual place for a paddle to split when it falls. To either side of the hole ${mm(holeToEdge?.length)} mm are left`;
      },
    ],
    [
      'the handle with the grain across it',
      () => {
        const handle = findNecks(paddle, mesh, 90, 60).shortGrain.find(({ kind }) => kind === 'part');
        return `the whole handle of ${whole(handle?.length ?? 0)} mm would be short-grained`;
      },
    ],
    [
      'the tray on its blank',
      () => {
        const asked = (name: string) =>
          worked('making-and-using-templates', name, { shape: 'rounded-rectangle' }).value;
        expect(asked('swing')).toBe(0);
        return `With ${tray.outlineClearance} mm of clearance the tray takes ${whole(asked('roughLength'))} × ${whole(asked('roughWidth'))} mm, and the blank is ${whole(tray.blank.length)} × ${whole(tray.blank.width)} mm`;
      },
    ],
    [
      'the case as embedded',
      () => {
        const asked = (name: string) => worked('making-and-using-templates', name, { shape: 'paddle' }).value;
        expect(asked('leftStanding')).toBe(0);
        expect(asked('insideRadius')).toBeCloseTo(6, 1);
        expect([asked('shortGrain'), asked('holeToEdge'), asked('neck')].map(mm)).toEqual(['19.0', '16.5', '45.0']);
        const copies = worked('making-and-using-templates', 'copies', { shape: 'rounded-rectangle' }).value;
        return `a sheet of 1220 × 610 mm (48 × 24 in) holds ${['', 'one', 'two', 'three', 'four', 'five'][copies]}.`;
      },
    ],
    ['the exercise on a leaf', () => `1. ${2 * 8} mm. 2. ${20 / 2 + 20} mm`],
    ['the exercise on the bar', () => `3. ${whole((tray.length * 97) / 100)} mm: print it again.`],
  ],
  'routing-to-a-template': [
    [
      'the angles',
      () => {
        const { along, endGrain, marked, steep } = usualLimits;
        return `| along the grain | up to ${along}° | clean | | downhill | ${along}° to ${endGrain}°, fibres run out of the wood ahead of the cut | clean | | uphill | ${along}° to ${endGrain}°, fibres run into the wood ahead of the cut | tears; from ${marked}° marked, from ${steep}° steep |`;
      },
    ],
    [
      'an oval',
      () => {
        const oval = drawn('oval', {});
        const [hand, table] = [tearOut(oval, 0, 'handheld'), tearOut(oval, 0, 'table')];
        const quarters = (one: typeof hand) =>
          one.arcs
            .filter(({ meeting }) => meeting === 'uphill')
            .map(({ middle }) => `${middle.x < 210 ? 'left' : 'right'} ${middle.y < -130 ? 'low' : 'high'}`);
        expect(new Set([...quarters(hand), ...quarters(table)]).size).toBe(4);
        return `two quarters of the four run uphill: ${percent(hand.shares.uphill)} of the edge`;
      },
    ],
    [
      'the tray',
      () => {
        const tray = drawn('rounded-rectangle', { length: 420, width: 220, cornerRadius: 25 });
        const torn = tearOut(tray, 0, 'table');
        const uphill = torn.arcs.filter(({ meeting }) => meeting === 'uphill');
        const corners = (arcs: typeof uphill) =>
          arcs.map(({ middle }) => `${middle.x < 210 ? 'left' : 'right'} ${middle.y < -110 ? 'low' : 'high'}`).sort();
        expect([
          ['left high', 'right low'],
          ['left low', 'right high'],
        ]).toContainEqual(corners(uphill));
        const hand = tearOut(tray, 0, 'handheld').arcs.filter(({ meeting }) => meeting === 'uphill');
        expect(new Set([...corners(uphill), ...corners(hand)]).size).toBe(4);
        const asked = worked('routing-to-a-template', 'uphill', { shape: 'rounded-rectangle' });
        expect(asked.value).toBeCloseTo(100 * torn.shares.uphill, 6);
        return `${percent(torn.shares.uphill)} runs uphill, at two corners that lie diagonally opposite`;
      },
    ],
    [
      'the first pass',
      () => {
        expect(cut.steadyFirstPass).toBe(false);
        expect(worked('routing-to-a-template', 'passes', { work: 'routing' }).value).toBe(1);
        return `Edge ${inch} mm, template 12 mm, and ${usualContact} mm of template for the bearing to touch (common practice): the first pass is at least ${mm(cut.leastFirstPass ?? 0)} mm deep. A usual pass is ${(inch / 4).toFixed(2)} mm (1/4 in).`;
      },
    ],
    [
      'the way out of the trap',
      () => {
        return `So: a shorter edge, a thicker template (${whole(cut.thickerTemplate ?? 0)} mm here), or the bearing at the tip.`;
      },
    ],
    ...routerCeilings.map(({ upTo, turns }): [string, () => string] => [
      `the ceiling up to ${upTo} mm`,
      () => `(${whole(upTo)} mm) | ${thousands(turns)} | ${mm(rimSpeed(upTo, turns))} m/s |`,
    ]),
    [
      'the higher ceilings',
      () => {
        const [last, ...rest] = routerCeilings.map(({ most }) => thousands(most)).reverse();
        return `The second text allows ${rest.reverse().join(', ')} and ${last}.`;
      },
    ],
    [
      'the depth of a pass',
      () => {
        expect(usualDepthOfPass(8)).toBe(4);
        expect(usualDepthOfPass(30)).toBe(inch / 4);
        return 'half the diameter of the bit, and no more than 1/4 in (6 mm) (common practice)';
      },
    ],
    [
      'the edge at its speed',
      () => {
        const like = { work: 'routing' };
        const rim = worked('routing-to-a-template', 'rim', like).value;
        expect(rim).toBeLessThan(worked('routing-to-a-template', 'rimAtCeiling', like).value);
        return `At 18 000 turns the class’s bit runs at ${mm(rim)} m/s, well under it.`;
      },
    ],
    ['the exercise on the bearing', () => `until the edge is ${mm(cut.leastFirstPass ?? 0)} mm deep`],
  ],
  'making-the-pocket': [
    [
      'where the screws of the window go: beyond the tray and within the blank, by two centimetres and more',
      () => {
        const [ofTray, ofBlank] = [tray.length / 2, tray.blank.length / 2];
        const screw = 240;
        expect(screw - ofTray).toBeGreaterThanOrEqual(20);
        expect(ofBlank - screw).toBeGreaterThanOrEqual(20);
        return `${screw} mm to either side of the cross line, heads sunk. The tray ends at ${whole(ofTray)} mm, the blank at ${whole(ofBlank)} mm.`;
      },
    ],
    [
      'the frame',
      () => `as long as the class’s blank, ${whole(tray.blank.length)} mm, and as wide as the tray, ${tray.width} mm`,
    ],
    [
      'the window for a collar',
      () => {
        expect(channel.width / 2 + offset).toBe(12);
        return `collar 16 mm, bit 10 mm: ${offset} mm all round, ${channel.length + 2 * offset} × ${channel.width + 2 * offset} mm`;
      },
    ],
    [
      'that window reaches its corners',
      () => {
        const [length, width] = [channel.length + 2 * offset, channel.width + 2 * offset];
        const window = {
          shape: 'rounded-rectangle',
          length: `${length} mm`,
          width: `${width} mm`,
          cornerRadius: `${width / 2} mm`,
        };
        const left = (bitDiameter: string) => figure('template-fit', { ...window, bitDiameter }, 'leftStanding').value;
        expect(left('16 mm')).toBe(0);
        return `template-fit?shape=rounded-rectangle&length=${length}+mm&width=${width}+mm&cornerRadius=${width / 2}+mm&bitDiameter=16+mm`;
      },
    ],
    [
      'a third of the tray',
      () =>
        `In ${tray.thickness} mm that is ${mm(tray.thickness / 3)} mm, so ${channel.depth} mm leaves ${tray.thickness - channel.depth} mm under the floor.`,
    ],
    [
      'wood at the ends',
      () => {
        const left = (tray.length - channel.length) / 2;
        expect(left).toBeGreaterThanOrEqual(3 * channel.width);
        return `Three widths are ${3 * channel.width} mm; here ${left} mm are left.`;
      },
    ],
    [
      'the round ends',
      () => `A channel ${channel.width} mm wide with half-round ends has a radius of ${channel.width / 2} mm.`,
    ],
    [
      'the depth of a pass',
      () => {
        expect(worked('making-the-pocket', 'depthOfPass').value).toBeLessThan(usualDepthOfPass(10));
        return `Two passes of ${channel.depth / 2} mm for ${channel.depth} mm. With a bit of 10 mm the usual limit is half its diameter, ${usualDepthOfPass(10)} mm (common practice).`;
      },
    ],
    ['a floor too low', () => `A floor 0.5 mm too low takes a ${parts[channel.depth / 0.5]} more resin.`],
    [
      'resin that stands proud',
      () => `1 mm over the class’s channel is a ${parts[channel.depth / 1]} more resin than the pocket.`,
    ],
    ['the exercise on the collar', () => `1. ${40 + (20 - 12)} mm: ${(20 - 12) / 2} mm more all round.`],
    ['the exercise on the depth', () => `3. ${15 / 3} mm: a third.`],
  ],
  'boring-clean-holes': [
    ...boringBits.map(({ name, diameters: [least, most] }): [string, () => string] => [
      name,
      () =>
        `| ${name
          .replace(/ bit(?= |$)/, '')
          .replace(/^H/, 'h')
          .replace(/^S/, 's')
          .replace(/^T/, 't')
          .replace(/^B/, 'b')} | ${least} to ${most} mm |`,
    ]),
    ...(
      [
        [6, '1/4 in', true, false],
        [12, '1/2 in', true, false],
        [25, '1 in', false, true],
        [35, '1 3/8 in', false, true],
      ] as const
    ).map(([diameter, inches, brad, saw]): [string, () => string] => [
      `speeds at ${diameter} mm`,
      () =>
        `| ${diameter} mm (${inches}) | ${[brad ? turns('brad-point', diameter) : '', turns('forstner', diameter), saw ? turns('hole-saw', diameter) : ''].join(' | ')} |`.replace(
          / {2,}/g,
          ' ',
        ),
    ]),
    [
      'soft woods',
      () => {
        const quicker = ['brad-point', 'forstner', 'hole-saw'].map((id) => bit(id).soft / bit(id).hard);
        expect(Math.min(...quicker)).toBeGreaterThan(1.5);
        expect(Math.max(...quicker)).toBe(2);
        return 'In a soft wood go half as fast again, to twice as fast.';
      },
    ],
    ['the hanging hole', () => `25 mm from the end of the handle to its middle: ${25 - 12 / 2} mm of wood to the end`],
    [
      'the exercise on speed',
      () => {
        expect(whole(worked('boring-clean-holes', 'usualTurns').value)).toBe(turns('forstner', 35));
        return `2. To about ${turns('forstner', 35)}.`;
      },
    ],
  ],
});
