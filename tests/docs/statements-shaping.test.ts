import { expect } from 'vitest';
import {
  equivalents,
  finishKinds,
  type Grade,
  gradeOf,
  gritSequence,
  sandingMethodById,
  startSurfaceById,
  startSurfaces,
  usualGrits,
  usualRatio,
  wetFrom,
  wetGrits,
} from '../../src/model/abrasive/index.ts';
import {
  bitLeaves,
  findNecks,
  fitOnBoard,
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
  defaultAllowances,
  inch,
  rimSpeed,
  routerCeilings,
  templateCut,
  usualContact,
  usualDepthOfPass,
} from '../../src/model/stock/index.ts';
import { hold, mm, settled, worked } from './statements.ts';

// Numbers in the pages on templates, routing, boring and sanding, worked out again.

const whole = (value: number) => value.toFixed(0);
const drawn = (id: string, measures: Record<string, number>) => {
  const outline = parametricOutline(id)?.draw(measures);
  if (!outline) throw new Error(`no outline ${id}`);
  return settled(prepare(settled(outline)));
};

const paddle = drawn('paddle', { length: 420, width: 220, handleLength: 140, handleWidth: 45, shoulderRadius: 20 });
const mesh = meshOf(paddle);
const torn = tearOut(paddle, 0, 'handheld');
const uphill = torn.arcs.filter(({ meeting }) => meeting === 'uphill');
const percent = (share: number) => `${whole(100 * share)} %`;
const corner = (diameter: number) =>
  Math.max(0, ...bitLeaves(paddle, diameter).map(({ kind, depth }) => (kind === 'corner' ? (depth ?? 0) : 0)));

const thousands = (turns: number) => `${turns / 1000} 000`;
const shankBit = { diameter: 19, cuttingLength: inch, bearing: 'shank' as const, stock: 20, contact: 3, beyond: 1 };
const cut = templateCut({ ...shankBit, template: 12, depthOfPass: inch / 4 });

const hardMaple = speciesById('sugar-maple')?.figures.sideHardness12?.value ?? Number.NaN;
const bit = (id: string) => {
  const found = boringBits.find((one) => one.id === id);
  if (!found) throw new Error(`no bit ${id}`);
  return found;
};
const turns = (id: string, diameter: number) => whole(boringSpeed(bit(id), diameter, hardMaple).turns);

const grade = (number: number): Grade => {
  const found = gradeOf('P', number);
  if (!found) throw new Error(`no P${number}`);
  return found;
};
const randomOrbit = sandingMethodById('random-orbit');
const byHand = sandingMethodById('by-hand');
if (!randomOrbit || !byHand) throw new Error('the abrasive room lost a method');
const sequence = (material: 'wood' | 'resin', surface: string, last: number, area: number) => {
  const start = startSurfaceById(surface);
  if (!start) throw new Error(`no surface ${surface}`);
  return settled(
    gritSequence({
      material,
      start,
      last: grade(last),
      drawer: [...usualGrits, ...(material === 'resin' ? wetGrits : [])].map(grade),
      ratio: usualRatio[material],
      raiseGrain: material === 'wood',
      area,
      method: randomOrbit,
    }),
  );
};
const trayFaces = 2 * 24 * 9 * inch * inch;
const toOil = sequence('wood', 'planed', 320, trayFaces);
const ratio = (coarse: number, fine: number) => grade(coarse).micrometres / grade(fine).micrometres;
const twoFigures = (value: number) => String(Number(value.toPrecision(2)));

hold({
  'making-and-using-templates': [
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
      'the paddle on its blank',
      () => {
        const fit = fitOnBoard(paddle, {
          grainDegrees: 0,
          clearance: defaultAllowances.outlineClearance,
          boardLength: 610,
          boardWidth: 235,
          mostSwing: 5,
        });
        expect(fit).toMatchObject({ fits: true, swing: 0 });
        return `takes ${whole(fit.length)} mm by ${whole(fit.width)} mm of board, so a blank of 610 × 235 mm`;
      },
    ],
    ['the exercise on a leaf', () => `(1) ${2 * 8} mm. (2) ${20 / 2 + 20} mm`],
    ['the exercise on the bar', () => `(3) ${whole((560 * 97) / 100)} mm: print it again.`],
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
      'the paddle',
      () => {
        expect(uphill).toHaveLength(6);
        expect(uphill.filter(({ loop }) => loop === 0)).toHaveLength(4);
        return `${percent(torn.shares.along)} of its edge runs along the grain, ${percent(torn.shares['end-grain'])} is end grain and ${percent(torn.shares.uphill)} runs uphill, in six places. Four of them are on the outer edge`;
      },
    ],
    [
      'the paddle’s places',
      () => {
        const along = uphill.filter(({ loop }) => loop === 0).map(({ middle }) => middle.x);
        const blade = along.filter((x) => x < 420).length;
        const shoulder = along.filter((x) => x > 420 && x < 445).length;
        const end = along.filter((x) => x > 540).length;
        expect([blade, shoulder, end]).toEqual([2, 1, 1]);
        return 'two corners of the blade, one shoulder and one corner of the handle';
      },
    ],
    [
      'the first pass',
      () => {
        expect(cut.steadyFirstPass).toBe(false);
        const asked = worked('routing-to-a-template', 'leastFirstPass', { work: 'routing' });
        expect(asked.value).toBeCloseTo(cut.leastFirstPass, 6);
        return `with ${usualContact} mm of template for the bearing to touch (common practice), the first pass is at least ${mm(cut.leastFirstPass)} mm deep. A usual pass is ${(inch / 4).toFixed(2)} mm (1/4 in). So: a shorter edge, a thicker template (${whole(cut.thickerTemplate ?? 0)} mm here)`;
      },
    ],
    ...routerCeilings.map(({ upTo, turns: most, otherTexts: [low, high] }): [string, () => string] => [
      `the ceiling up to ${upTo} mm`,
      () =>
        `(${whole(upTo)} mm) | ${thousands(most)} | ${mm(rimSpeed(upTo, most))} m/s | ${thousands(low)} to ${thousands(high)} |`,
    ]),
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
        expect(rim).toBeLessThan(worked('routing-to-a-template', 'rimAtCeiling', like).value * 0.8);
        return `At 18 000 turns its edge runs at ${mm(rim)} m/s, well under the usual ceiling`;
      },
    ],
    ['the exercise on the bearing', () => `until the edge is ${mm(cut.leastFirstPass)} mm deep`],
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
        return `(2) To about ${turns('forstner', 35)}.`;
      },
    ],
  ],
  'sanding-to-a-finish': [
    ...[80, 120, 180, 220, 320, 400, 800, 1200].map((number): [string, () => string] => [
      `the grain of P${number}`,
      () => `| P${number} | ${twoFigures(grade(number).micrometres)} µm |`,
    ]),
    [
      'the same grain in the other system',
      () => {
        const pairs = [80, 120, 180, 220, 400, 800, 1200].map((number) => equivalents(grade(number)).nearest.number);
        expect(pairs).toEqual([80, 120, 180, 220, 320, 400, 600]);
        const size = (number: number) => gradeOf('ANSI', number)?.micrometres ?? Number.NaN;
        expect(size(240)).toBeGreaterThan(grade(320).micrometres);
        expect(size(280)).toBeLessThan(grade(320).micrometres);
        return 'a 400 without a P is as fine as P800';
      },
    ],
    ['the usual grits', () => `The usual grits are ${usualGrits.slice(0, -1).join(', ')} and ${usualGrits.at(-1)}.`],
    [
      'the ratio',
      () => {
        const leaving = (count: number) =>
          usualGrits.slice(count + 1).map((fine, at) => ratio(usualGrits[at] ?? 0, fine));
        const fits = (all: number[]) => all.map((each) => each <= usualRatio.wood);
        expect(fits(leaving(1))).toEqual([true, true, true, true, false]);
        expect(fits(leaving(2))).toEqual([false, false, false, false]);
        return `no more than ${usualRatio.wood} times as large as that of the next (common practice). In that drawer it means that one grit may be left out and never two, and before P320 none: from P180 it would be ${ratio(180, 320).toFixed(1)} times.`;
      },
    ],
    [
      'where to start',
      () => {
        const first = (id: string) => startSurfaceById(id)?.first;
        expect(startSurfaces).toHaveLength(6);
        return `| rough from the saw | P${first('rough-sawn')}, or better: flatten it first | | flattened with a router | P${first('router-flattened')} | | from the planer or jointer, with tear-out | P${first('planed')} | | planed clean with sharp knives | P${first('planed-clean')} | | hand-planed or scraped | P${first('hand-planed')} | | resin as it was cast | P${first('resin-as-cast')} |`;
      },
    ],
    ...finishKinds.map(({ label, last }): [string, () => string] => [
      `where to stop for ${label.toLowerCase()}`,
      () => `| ${label.charAt(0).toLowerCase()}${label.slice(1)} | P${last}`,
    ]),
    [
      'the tray for oil',
      () => {
        const words = toOil.steps.map((step) => (step.kind === 'raise' ? 'water' : step.grade.id));
        const skip = toOil.skips.find(({ grade: left }) => left.number === 120);
        expect(toOil.grits).toHaveLength(5);
        expect(worked('sanding-to-a-finish', 'grits', { material: 'wood' }).value).toBe(5);
        return `Out of the usual drawer: ${words.join(', ')}. Five grits. Leaving out P120 would make a step of ${skip?.ratio.toFixed(1)}: on one tray it saves ${whole(skip?.saved ?? 0)} minutes and costs ${whole(skip?.added ?? 0)} at P150`;
      },
    ],
    [
      'resin',
      () => {
        const steps = sequence('resin', 'resin-as-cast', 2000, 1e4).steps.flatMap((step) =>
          step.kind === 'sand' ? [step] : [],
        );
        const names = (wet: boolean) =>
          steps
            .filter((step) => step.wet === wet)
            .map(({ grade: { id } }) => id)
            .join(', ');
        expect(wetFrom).toBe(400);
        expect(worked('sanding-to-a-finish', 'grits', { material: 'resin' }).value).toBe(steps.length);
        return `${names(false)}, then wet ${names(true)}, and compound. Under P${wetFrom} dry`;
      },
    ],
    [
      'rates',
      () => `about ${randomOrbit.minutes} minutes for a square metre and a grit; by hand it is ${byHand.minutes}`,
    ],
    [
      'twelve trays',
      () => {
        const time = worked('sanding-to-a-finish', 'time', { material: 'wood' }).value;
        expect(Math.abs(time / 3600 - 3.25)).toBeLessThan(0.125);
        return `both faces, are ${((12 * trayFaces) / 1e6).toFixed(1)} m²: with the five grits above about three and a quarter hours`;
      },
    ],
    ['the exercise', () => `(1) From P120 to P220: ${ratio(120, 220).toFixed(1)} times, over the ${usualRatio.wood}`],
  ],
});
