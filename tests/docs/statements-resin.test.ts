import { expect } from 'vitest';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { pigmentKinds } from '../../src/model/resin/batches.ts';
import { coatDepth } from '../../src/model/resin/depth-limit.ts';
import { dosingLimits } from '../../src/model/resin/dose.ts';
import { weightRatioOfVolume } from '../../src/model/resin/index.ts';
import { ratioLimits } from '../../src/model/resin/ratio.ts';
import { tray } from '../../src/site/mdx/tray.ts';
import { howTo } from './how-to.ts';
import { allBetween, figure, hold, result, whole, worked, workedCase } from './statements.ts';

// Numbers in the pages on resin, worked out again.

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
        return `1. ${whole(143 / (1 + share))} g of A and ${whole((143 * share) / (1 + share))} g of B.`;
      },
    ],
    [
      'the amber line of twelve trays',
      () => {
        const of = (name: string) => worked('dosing-and-mixing-resin', name).value;
        const parts = ['fillMass', 'residueMass', 'spareMass'].map(of);
        expect(parts.reduce((sum, each) => sum + each, 0)).toBeCloseTo(of('mass'), 6);
        expect(of('pieceMass') * 12).toBeCloseTo(of('fillMass'), 6);
        const { inputs } = workedCase('dosing-and-mixing-resin');
        // A channel that is level when wet is dished when hard: what is poured is what stands proud too.
        expect(of('proudMass') / of('fillMass')).toBeCloseTo(0.6 / (tray.channel.depth + 0.6), 6);
        return `Filled ${inputs['proud']} proud, the channels take ${of('fillVolume').toFixed(1)} ml: ${of('pieceMass').toFixed(1)} g in each tray.`;
      },
    ],
    [
      'what its channels drink',
      () => {
        const { length, width, depth } = tray.channel;
        const round = Math.PI * width + 2 * (length - width);
        const bare = (length - width) * width + (Math.PI / 4) * width ** 2 + round * depth;
        allBetween([(12 * bare * 150) / 1e6], 13, 17);
        return 'The channels drink about 15 g of it.';
      },
    ],
    [
      'what stands proud',
      () => {
        expect(0.5 / tray.channel.depth).toBeLessThan(1 / 10);
        expect(1 / tray.channel.depth).toBe(1 / 6);
        return '0.5 to 1 mm: a tenth to a sixth of a pocket 6 mm deep.';
      },
    ],
    ['where the calculator gives no dose', () => `Beyond ${ratioLimits.stop} % the calculator gives no dose.`],
    ['a coat', () => `anything deeper than a coat of ${whole(coatDepth)} mm gets no plan`],
    [
      'how near is near enough',
      () =>
        `Keep within ${dosingLimits.mend} %, ${dosingLimits.stop} % at the very worst (from memory, common practice)`,
    ],
    [
      'its cups on a coarse scale',
      () => {
        const { calculator, inputs } = workedCase('dosing-and-mixing-resin');
        const coarse = result(calculator, { ...inputs, scaleDivision: '1 g' });
        const of = (name: string) => coarse.figures[name]?.value ?? Number.NaN;
        const off = (of('dosingError') + of('roundingError')).toFixed(1);
        expect(coarse.cautions.some(({ text }) => inReaderUnits(text, defaultUnits).includes(`off by ${off} %`))).toBe(
          true,
        );
        return `The class’s cups hold about ${whole(of('massB') / of('cups'))} g: on a scale of 1 g their ratio can be ${off} % off`;
      },
    ],
    ['30 cm² at 5 mm', () => `3. ${30 * 0.5} mL, about ${whole(30 * 0.5 * 1.1)} g.`],
  ],
  'test-cup': [
    [
      'the error of a scale of 1 g',
      () => {
        const { calculator, inputs } = workedCase('test-cup', { scaleDivision: '0.1 g' });
        const coarse = result(calculator, { ...inputs, scaleDivision: '1 g' });
        expect(coarse.verdict?.level).toBe('stop');
        // As the calculator says it, with what rounding to whole divisions adds.
        const [, off] = /off by ([\d.]+) %/.exec(coarse.verdict?.text ?? '') ?? [];
        return `On one of 1 g a cup of 20 g cannot be weighed: the ratio could be ${whole(Number(off))} % off.`;
      },
    ],
    [
      'lids as deep as the job',
      () => {
        const across = (resin: string, deep: number) => {
          const volume = figure('resin-dose', { resin, mass: '20 g', scaleDivision: '0.1 g' }, 'volume').value;
          return whole(20 * Math.sqrt(volume / (deep / 10) / Math.PI));
        };
        return `20 g lie 6 mm deep in a lid ${across('slow-casting-2-1', 6)} mm across. A coating resin goes 3 mm deep, in a lid ${across('fast-coating-1-1', 3)} mm across.`;
      },
    ],
    [
      'when they gel',
      () => {
        const { calculator, inputs } = workedCase('test-cup', { spreadAfter: '10 min' });
        const hours = (name: string, resin: string) => figure(calculator, { ...inputs, resin }, name).value / 3600;
        const slow = (name: string) => whole(hours(name, 'slow-casting-2-1'));
        const fast = (name: string) => hours(name, 'fast-coating-1-1');
        return `at 20 °C gel after about ${slow('cupGel')} hours in the cup and ${slow('filmGel')} spread thin; of a fast one after ${whole(60 * fast('cupGel'))} minutes in the cup and ${fast('filmGel').toFixed(1)} hours spread thin.`;
      },
    ],
    [
      '20 g by weight',
      () => {
        const of = (name: string) => worked('test-cup', name, { scaleDivision: '0.1 g' }).value.toFixed(1);
        return `1. ${of('massA')} g of A and ${of('massB')} g of B.`;
      },
    ],
    [
      'a fast cup runs away',
      () => {
        const cup = result('working-time', { resin: 'fast-coating-1-1', mass: '20 g', shopTemperature: '20 °C' });
        expect(cup.cautions.some(({ text }) => text.includes('runs away'))).toBe(true);
        return 'Twenty grams can still heat: of a fast resin they run away if they stay in a cup.';
      },
    ],
  ],
  'working-time-of-resin': [
    [
      'the class’s largest cup',
      () => {
        const inputs = { resin: 'slow-casting-2-1', shopTemperature: '20 °C' };
        const largest = worked('dosing-and-mixing-resin', 'largestCup').value;
        expect(whole(largest)).toBe('97');
        const work = worked('working-time-of-resin', 'cupWork').value;
        expect(figure('working-time', { ...inputs, mass: `${largest} g` }, 'cupWork').value).toBeCloseTo(work, -3);
        // Rounded down to the tenth of an hour that is said.
        expect(worked('dosing-and-mixing-resin', 'emptyWithin').value).toBeCloseTo(360 * Math.floor(work / 2 / 360), 6);
        return `It can be worked for ${(work / 3600).toFixed(1)} hours by the model, so plan with half of them`;
      },
    ],
    [
      'the cherry board’s cup',
      () => {
        const minutes = (name: string) =>
          whole(
            figure('working-time', { resin: 'fast-coating-1-1', mass: '65.9 g', shopTemperature: '20 °C' }, name)
              .value / 60,
          );
        return `can be worked for ${minutes('cupWork')} minutes and is gelled at ${minutes('cupGel')}: two minutes’ warning.`;
      },
    ],
    [
      'the same spread thin',
      () =>
        `Spread thin at once the same resin stays workable for ${whole(
          figure('working-time', { resin: 'fast-coating-1-1', mass: '65.9 g', shopTemperature: '20 °C' }, 'filmWork')
            .value / 60,
        )} minutes`,
    ],
    [
      'what changes it',
      () => {
        const { calculator, inputs } = workedCase('working-time-of-resin');
        const work = (resin: string, mass: string, shopTemperature: string, name = 'cupWork') =>
          figure(calculator, { ...inputs, resin, mass, shopTemperature }, name).value;
        const fast = (mass: string, at: string, name?: string) => work('fast-coating-1-1', mass, at, name);
        const slow = (mass: string, at: string, name?: string) => work('slow-casting-2-1', mass, at, name);
        allBetween([fast('1 kg', '20 °C') / fast('100 g', '20 °C')], 0.93, 1);
        allBetween([slow('1 kg', '20 °C') / slow('100 g', '20 °C')], 0.7, 0.8);
        allBetween([slow('1 kg', '20 °C', 'cupGel') / slow('100 g', '20 °C', 'cupGel')], 0.5, 0.65);
        allBetween([fast('100 g', '30 °C') / fast('100 g', '20 °C')], 0.4, 0.55);
        allBetween([slow('100 g', '30 °C') / slow('100 g', '20 °C')], 0.3, 0.42);
        allBetween([fast('100 g', '20 °C', 'stretch')], 1.8, 2.4);
        allBetween([slow('100 g', '20 °C', 'stretch')], 1.25, 1.42);
        allBetween([fast('25 g', '20 °C') / fast('100 g', '20 °C')], 1, 1.15);
        expect(howTo('working-time-of-resin').text).toContain(
          'of a fast resin even 25 g last hardly longer than 100 g.',
        );
        return [
          '| 1 kg instead of 100 g | hardly sooner: it was as hot as it gets | a quarter sooner, and gelled in little more than half the time |',
          '| 10 °C (18 °F) warmer | about half the time | less than half, in a cup |',
          '| spread thin at once | about twice the time to work | a third longer |',
        ].join(' ');
      },
    ],
  ],
  'colour-and-pigment': [
    ...pigmentKinds.map(({ kind, usual, most }): [string, () => string] => [
      `how much ${kind}`,
      () => `| ${usual} to ${most} % |`,
    ]),
    [
      'which pigment bears which amount',
      () => {
        const row = (kind: string) => pigmentKinds.find((one) => one.kind === kind);
        expect([row('paste')?.most, row('powder')?.most, row('ink')?.most]).toEqual([6, 5, 2]);
        return '| paste made for epoxy | 5 to 6 % |';
      },
    ],
    ['pigment in a cup', () => `1. ${(143 * 0.03).toFixed(1)} g. 2. ${whole(toHundred(1 / 2, 1.16, 1))} g`],
    [
      'a tenth of a percent',
      () => {
        const each = worked('dosing-and-mixing-resin', 'pieceMass').value;
        return `On one tray’s ${whole(each)} g of resin 0.1 % is ${(each * 0.001).toFixed(2)} g`;
      },
    ],
    [
      'the recipes, which come to the two percent that are dosed',
      () => {
        const recipes = [
          { amber: 1.5, brown: 0.4, white: 0.1 },
          { green: 1.4, amber: 0.4, white: 0.2 },
        ];
        const said = recipes.map((recipe) => {
          const sum = Object.values(recipe).reduce((all, each) => all + each, 0);
          expect(sum).toBeCloseTo(2, 9);
          return `${Object.entries(recipe)
            .map(([paste, percent]) => `${percent} % ${paste}`)
            .join(', ')}: 2 % | ${Object.values(recipe)
            .map((grams) => `${grams} g`)
            .join(', ')} |`;
        });
        expect(workedCase('dosing-and-mixing-resin').inputs['colours']).toContain('paste 2 %');
        expect(howTo('colour-and-pigment').text).toContain(`| moss green | ${said[1]}`);
        return `| **amber** | ${said[0]}`;
      },
    ],
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
    ['twice as thick', () => `2. About ${whole(2 * through(1))} s.`],
  ],
});
