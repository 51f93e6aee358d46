import { expect } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import {
  classGlass,
  cureRate,
  gelPoint,
  glassTransition,
  timeToConversion,
  vitrification,
} from '../../src/model/resin/clock.ts';
import { cupOf, runCup } from '../../src/model/resin/cup.ts';
import { resinOf } from '../../src/model/resin/index.ts';
import { resinKinds } from '../../src/model/resin/kinds.ts';
import { arrhenius, classKinetics, classThermal } from '../../src/model/resin/kinetics.ts';
import { tray } from '../../src/site/mdx/tray.ts';
import { allBetween, figure, hold, result, whole, worked, workedCase } from './statements.ts';

// Numbers in the pages on resin that cures, worked out again.

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
        return 'enough to raise the mixture by some 200 °C (360 °F) if none of it could leave';
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
        return 'In a thin film at one temperature that is about one and a half to one and three quarter times the time to gel';
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
        expect(figure(calculator, inputs, 'pieceMass').value).toBeCloseTo(36.8, 1);
        return 'Cups do not come out even with trays.';
      },
    ],
    [
      'one cup after another',
      () => {
        const last = 5 * (worked('dosing-and-mixing-resin', 'cups').value - 1);
        // As the clock of one cup: poured from its fifth minute on, its three trays full by its fifteenth.
        return `With one every five minutes the last B goes in at minute ${last}, and the last tray is full by minute ${last + 15}.`;
      },
    ],
    [
      'when it is hottest',
      () => {
        const { calculator, inputs } = workedCase('pouring-an-inlay', { base: 'hardwood' });
        const rise = figure(calculator, inputs, 'peakRise');
        expect(rise.high ?? Number.NaN).toBeLessThan(5);
        // The case of the page counts what stands proud of the face.
        expect(inputs['proud']).toBe('0.6 mm');
        return '| slow casting, a channel of 6 mm, proud | ';
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
  'resin-and-moving-wood': [
    [
      'its shrinkage',
      () => {
        const { width } = tray.channel;
        return `| ${((width * 0.02) / 3).toFixed(2)} to ${((width * 0.05) / 3).toFixed(2)} mm if it were free |`;
      },
    ],
    [
      'its cooling by 20 °C',
      () =>
        `60 millionths per °C (${(60 / 1.8).toFixed(0)} per °F) | ${(tray.channel.width * 20 * 60e-6).toFixed(2)} mm |`,
    ],
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
