import { expect } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
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
      'warm days and cold nights',
      () => {
        const { calculator } = workedCase('recoat-and-cure');
        const here = (name: string) => worked('recoat-and-cure', name).value;
        const even = (name: string) =>
          figure(calculator, { resin: 'fast-coating-1-1', shopTemperature: '20 °C' }, name).value;
        const inHours = (seconds: number) => whole(seconds / 3600);
        const inDays = (seconds: number) => whole(seconds / 86_400);
        return `The next stage comes after ${inHours(here('sandable'))} hours where an even 20 °C would give ${inHours(even('sandable'))}, full cure comes after ${inDays(here('fullCure'))} days in place of ${inDays(even('fullCure'))}.`;
      },
    ],
    [
      'the window of a weekly class',
      () => {
        const { calculator, inputs } = workedCase('recoat-and-cure');
        const slow = { ...inputs, resin: 'slow-casting-2-1' };
        const of = (name: string) => figure(calculator, slow, name).value;
        const week = 7 * 86_400;
        expect(of('recoatCloses')).toBeLessThan(week);
        expect(of('oil')).toBeLessThan(3 * week);
        return `poured on its seal coat from ${whole(of('recoatOpens') / 3600)} to ${whole(of('recoatCloses') / 3600)} hours after it, and machines and oil wait ${whole(of('oil') / 86_400)} days.`;
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
        const of = (name: string) => whole(worked('dosing-and-mixing-resin', name).value);
        const extra = ['sealMass', 'residueMass', 'spareMass'].map(
          (name) => worked('dosing-and-mixing-resin', name).value,
        );
        const fill = worked('dosing-and-mixing-resin', 'fillMass').value;
        expect(fill + extra.reduce((sum, each) => sum + each, 0)).toBeCloseTo(
          worked('dosing-and-mixing-resin', 'mass').value,
          6,
        );
        expect(of('cups')).toBe('5');
        return `The twelve channels hold ${of('fillVolume')} ml, ${of('fillMass')} g. With seal coat, spare and what stays in the cups it is ${of('mass')} g: ${of('massA')} g of A and ${of('massB')} g of B, in five cups`;
      },
    ],
    [
      'a tray’s share',
      () => {
        const each = worked('dosing-and-mixing-resin', 'pieceMass');
        const seal = worked('dosing-and-mixing-resin', 'sealMass').value / 12;
        const { calculator, inputs } = workedCase('dosing-and-mixing-resin');
        const cups = result(calculator, inputs).tables?.find(({ id }) => id === 'cups');
        const fills = cups?.columns.findIndex(({ id }) => id === 'pieces') ?? -1;
        expect(cups?.rows.map((row) => row[fills])).toEqual(['1 to 12', '1 to 3', '4 to 6', '7 to 9', '10 to 12', '']);
        return `Each tray takes ${each.value.toFixed(1)} g and ${seal.toFixed(1)} g of the seal coat; each full cup fills three.`;
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
      'its seal coat on a coarse scale',
      () => {
        const { calculator, inputs } = workedCase('dosing-and-mixing-resin');
        const error = figure(calculator, { ...inputs, scaleDivision: '1 g' }, 'dosingError').value;
        expect(result(calculator, { ...inputs, scaleDivision: '1 g' }).verdict?.level).toBe('stop');
        return `the seal coat has only 10 g of hardener, the ratio can be ${whole(error)} % off, and there is no plan.`;
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
        expect(cups?.text).toContain('in 5 cups');
        return `That coat is ${grams} g: five cups of 100 g, mixed one after another, never one of ${grams}.`;
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
      'a cup of 150 g',
      () => {
        const minutes = (name: string) => whole(worked('working-time-of-resin', name, { mass: '150 g' }).value / 60);
        return `The cup can be worked for about ${minutes('cupWork')} minutes and is gelled at ${minutes('cupGel')}: **a fast cup gives two minutes’ warning**. Spread thin at once the same resin stays workable for ${minutes('filmWork')} minutes`;
      },
    ],
    [
      'what changes it',
      () => {
        const { calculator, inputs } = workedCase('working-time-of-resin');
        const work = (resin: string, mass: string, shopTemperature: string, name = 'cupWork') =>
          figure(calculator, { ...inputs, resin, mass, shopTemperature }, name).value;
        const fast = (mass: string, at: string, name?: string) => work('fast-coating-1-1', mass, at, name);
        const slow = (mass: string, at: string, name?: string) => work('slow-casting-2-1', mass, at, name);
        allBetween([fast('1 kg', '22 °C') / fast('100 g', '22 °C')], 0.93, 1);
        allBetween([slow('1 kg', '22 °C') / slow('100 g', '22 °C')], 0.7, 0.8);
        allBetween([slow('1 kg', '22 °C', 'cupGel') / slow('100 g', '22 °C', 'cupGel')], 0.5, 0.65);
        allBetween([fast('150 g', '30 °C') / fast('150 g', '20 °C')], 0.4, 0.55);
        allBetween([slow('150 g', '30 °C') / slow('150 g', '20 °C')], 0.3, 0.42);
        allBetween([fast('150 g', '22 °C', 'stretch')], 1.8, 2.4);
        allBetween([slow('150 g', '22 °C', 'stretch')], 1.3, 1.6);
        allBetween([fast('25 g', '22 °C') / fast('100 g', '22 °C')], 1, 1.15);
        expect(howTo('working-time-of-resin').text).toContain(
          'of a fast resin even 25 g last hardly longer than 100 g.',
        );
        return [
          '| 1 kg instead of 100 g | hardly sooner: it was as hot as it gets | a quarter sooner, and gelled in little more than half the time |',
          '| 10 °C (18 °F) warmer | about half the time | less than half, in a cup |',
          '| spread thin at once | about twice the time to work | half as long again |',
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
    ['twice as thick', () => `2. About ${whole(2 * through(1))} s.`],
  ],
  'resin-and-moving-wood': [
    [
      'the amber line',
      () =>
        `Over the width of that line the wood would move ${worked('resin-and-moving-wood', 'inlaySwing').value.toFixed(2)} mm in its year.`,
    ],
    [
      'shrinkage of 40 mm',
      () => `| ${((40 * 0.02) / 3).toFixed(2)} to ${((40 * 0.05) / 3).toFixed(2)} mm if it were free |`,
    ],
    ['cooling by 20 °C', () => `60 millionths per °C | ${(40 * 20 * 60e-6).toFixed(2)} mm |`],
  ],
});
