import { expect } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { pigmentKinds } from '../../src/model/resin/batches.ts';
import {
  classGlass,
  cureRate,
  gelPoint,
  glassTransition,
  timeToConversion,
  vitrification,
} from '../../src/model/resin/clock.ts';
import { cupOf, runCup } from '../../src/model/resin/cup.ts';
import { coatDepth } from '../../src/model/resin/depth-limit.ts';
import { dosingLimits } from '../../src/model/resin/dose.ts';
import { resinOf, weightRatioOfVolume } from '../../src/model/resin/index.ts';
import { resinKinds } from '../../src/model/resin/kinds.ts';
import { arrhenius, classKinetics, classThermal } from '../../src/model/resin/kinetics.ts';
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

type Class = 'fast' | 'slow';
const classes: readonly Class[] = ['fast', 'slow'];

/** Conversion of a thin film after a week at constant temperature, glassiness and all. */
function afterAWeek(kind: Class, celsius: number): number {
  const { k2At25C, activationEnergy } = classKinetics[kind];
  const k2 = arrhenius(k2At25C, activationEnergy, celsius);
  const rate = (conversion: number) =>
    cureRate(conversion, k2, classKinetics[kind]) *
    vitrification(glassTransition(conversion, classGlass[kind]), celsius);
  let conversion = 0;
  const step = 60;
  for (let time = 0; time < 7 * 86_400; time += step) {
    const halfway = conversion + (step / 2) * rate(conversion);
    conversion += step * rate(halfway);
  }
  return conversion;
}

hold({
  'heat-build-up-in-resin': [
    [
      'a film beside a cup',
      () => {
        const cup = runCup(cupOf(100, classThermal), classKinetics.fast, { air: 25 });
        const film = timeToConversion(gelPoint, 25, classKinetics.fast);
        expect(Math.round(film / (cup?.gel ?? 0))).toBe(4);
        return 'a film of a fast resin stays liquid about four times as long as the cup';
      },
    ],
    [
      'how little of a fast resin runs away',
      () => {
        const cup = result('working-time', { resin: 'fast-coating-1-1', mass: '20 g', shopTemperature: '20 °C' });
        expect(cup.cautions.some(({ text }) => text.includes('runs away'))).toBe(true);
        return 'of a fast resin 20 g are enough';
      },
    ],
    [
      'the heat of all of it',
      () => {
        const rises = classes.map((kind) => classKinetics[kind].heatOfReaction / classThermal.heatCapacity);
        allBetween(rises, 170, 200);
        return 'enough to raise the mixture by some 200 °C if none of it could leave';
      },
    ],
  ],
  'recoat-and-cure': [
    [
      'even warmth and colder nights',
      () => {
        const { calculator, inputs } = workedCase('recoat-and-cure');
        const days = (air: RawInputs) =>
          whole(figure(calculator, { resin: String(inputs['resin']), ...air }, 'fullCure').value / 86_400);
        const even = days({ shopTemperature: '20 °C' });
        const cold = days({ dayTemperature: '20 °C', nightTemperature: '12 °C', warmHours: '10 h' });
        return `An even 20 °C would give ${even} days to full cure, and nights of 12 °C under ten warm hours ${cold}.`;
      },
    ],
    [
      'a weekly class',
      () => {
        const days = (name: string) => worked('recoat-and-cure', name).value / 86_400;
        expect(days('recoatCloses')).toBeLessThan(7);
        expect(days('sandable')).toBeLessThan(7);
        expect(days('fullCure')).toBeLessThan(14);
        return 'So its seal coat cures for a week and is sanded by hand, and the pour has two weeks before a machine touches it.';
      },
    ],
    [
      'a slow resin before the next stage',
      () => {
        const days = ['20 °C', '17 °C'].map(
          (shopTemperature) =>
            figure('cure-clock', { resin: 'slow-casting-2-1', shopTemperature }, 'sandable').value / 86_400,
        );
        allBetween(days, 3, 4.6);
        return 'A slow casting resin wants three or four days.';
      },
    ],
    [
      'a shop that stays cold',
      () => {
        for (const { kind } of resinKinds) {
          const outcome = answer(cureClockCalculator, { resin: kind, shopTemperature: '12 °C' });
          if (!outcome.ok) throw new Error(kind);
          for (const name of ['fullCure', 'oil', 'foodService'])
            if (outcome.value.result.figures[name]) throw new Error(`${kind} has a day for ${name} at 12 °C`);
        }
        return 'In a shop that stays at 12 °C it never gets so far, and the calculator gives no day for oil and food.';
      },
    ],
    [
      'the window',
      () => {
        const times = classes.flatMap((kind) =>
          [0.75, 0.8].map(
            (end) =>
              timeToConversion(end, 20, classKinetics[kind]) / timeToConversion(gelPoint, 20, classKinetics[kind]),
          ),
        );
        allBetween(times, 1.45, 1.75);
        return 'in a thin film at one temperature that is about one and a half to one and three quarter times the time to gel';
      },
    ],
    [
      'a week in the cold',
      () => {
        const percent = [15, 20, 25].map((celsius) => `${whole(100 * afterAWeek('fast', celsius))} %`);
        return `a week in a film at 15 °C, 20 °C and 25 °C: ${percent[0]}, ${percent[1]} and ${percent[2]} of the cure`;
      },
    ],
    [
      'ten degrees',
      () => {
        const slower =
          timeToConversion(gelPoint, 15, classKinetics.fast) / timeToConversion(gelPoint, 25, classKinetics.fast);
        allBetween([slower], 1.8, 2.3);
        return '**10 °C (18 °F) colder: about twice the time**';
      },
    ],
    [
      'where it turns leathery',
      () => {
        const points = classes.flatMap((kind) =>
          [20, 25].map((celsius) => glassTransition(afterAWeek(kind, celsius), classGlass[kind])),
        );
        allBetween(points, 35, 54);
        return 'room-cured resin turns leathery from 35 to 50 °C';
      },
    ],
  ],
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
        const parts = ['fillMass', 'dripMass', 'residueMass', 'spareMass'].map(of);
        expect(parts.reduce((sum, each) => sum + each, 0)).toBeCloseTo(of('mass'), 6);
        expect(of('pieceMass') * 12).toBeCloseTo(of('fillMass'), 6);
        return `The channels hold ${whole(of('fillVolume'))} ml: ${of('pieceMass').toFixed(1)} g in each tray, level with its face.`;
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
    ['where the calculator gives no dose', () => `beyond ${ratioLimits.stop} % the calculator gives no dose.`],
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
  'pouring-an-inlay': [
    [
      'out of level',
      () => {
        expect(1 / tray.channel.depth).toBeCloseTo(1 / 6, 9);
        return '1 mm out of level is a sixth of the depth.';
      },
    ],
    [
      'shrinkage of its depth',
      () => {
        const { depth } = tray.channel;
        return `on ${depth} mm is ${(depth * 0.02).toFixed(1)} to ${(depth * 0.05).toFixed(1)} mm`;
      },
    ],
    [
      'a coating resin in the same cup',
      () => {
        const { value } = figure(
          'working-time',
          { resin: 'fast-coating-1-1', mass: '97 g', shopTemperature: '20 °C' },
          'cupWork',
        );
        allBetween([value / 2 / 60], 18, 24);
        return 'A coating resin in the same cup allows some twenty minutes.';
      },
    ],
    [
      'cups and trays',
      () => {
        const { calculator, inputs } = workedCase('pouring-an-inlay', { colours: 'amber, 100 %, paste 2 %' });
        expect(figure(calculator, inputs, 'pieceMass').value).toBeCloseTo(33.5, 1);
        return 'Cups do not come out even with trays.';
      },
    ],
    [
      'when it is hottest',
      () => {
        const { calculator, inputs } = workedCase('pouring-an-inlay', { base: 'hardwood' });
        const rise = figure(calculator, inputs, 'peakRise');
        expect(rise.high ?? Number.NaN).toBeLessThan(5);
        return '| slow casting, a channel of 6 mm | ';
      },
    ],
  ],
  'test-cup': [
    [
      'the error of a scale of 1 g',
      () => {
        const { calculator, inputs } = workedCase('test-cup', { scaleDivision: '0.1 g' });
        const coarse = result(calculator, { ...inputs, scaleDivision: '1 g' });
        expect(coarse.verdict?.level).toBe('stop');
        return `On one of 1 g a cup of 20 g cannot be weighed: the ratio could be ${whole(coarse.figures['dosingError']?.value ?? 0)} % off.`;
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
  'coating-a-whole-face': [
    [
      'a coat without a dam',
      () => {
        const like = { wantedThickness: '3 mm' };
        const { value, low = 0, high = 0 } = worked('coating-a-whole-face', 'thickness', like);
        const lost = worked('coating-a-whole-face', 'overEdge', like).value;
        allBetween([lost / worked('coating-a-whole-face', 'amountWanted', like).value], 0.45, 0.55);
        return `Without a dam it stands at about ${value.toFixed(1)} mm, ${low.toFixed(1)} to ${high.toFixed(1)} mm; half of what was poured for 3 mm`;
      },
    ],
    [
      'its cups',
      () => {
        const { calculator, inputs } = workedCase('coating-a-whole-face');
        const grams = whole(figure(calculator, inputs, 'amountWanted').value);
        const cups = result(calculator, inputs).cautions.find(({ id }) => id === 'several-cups');
        expect(cups?.text).toContain('in 2 cups');
        return `One face of that end at 3 mm is ${grams} g: two cups, mixed one after another, never one of ${grams}.`;
      },
    ],
    [
      'its limit',
      () => {
        const { calculator, inputs } = workedCase('coating-a-whole-face');
        expect(result(calculator, { ...inputs, wantedThickness: '4 mm' }).verdict?.level).toBe('stop');
        return `A coating resin bears about ${resinOf('fast-coating-1-1')?.figures.greatestDepth?.value} mm in one pour (common practice)`;
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
        expect(worked('dosing-and-mixing-resin', 'emptyWithin').value).toBeCloseTo(work / 2, -2);
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
        return `| **amber**, the class’s | ${said[0]}`;
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
  'resin-and-moving-wood': [
    [
      'its shrinkage',
      () => {
        const { width } = tray.channel;
        return `| ${((width * 0.02) / 3).toFixed(2)} to ${((width * 0.05) / 3).toFixed(2)} mm if it were free |`;
      },
    ],
    ['its cooling by 20 °C', () => `60 millionths per °C | ${(tray.channel.width * 20 * 60e-6).toFixed(2)} mm |`],
    [
      'the middle of the year',
      () => {
        const of = (name: string) => worked('resin-and-moving-wood', name).value;
        allBetween([(of('driest') + of('wettest')) / 2], 8.2, 9.2);
        return 'the middle is near 9 %';
      },
    ],
  ],
});
