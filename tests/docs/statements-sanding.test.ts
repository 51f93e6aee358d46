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
import { convert } from '../../src/model/quantity/index.ts';
import { figure, hold, result, settled, worked, workedCase } from './statements.ts';

// Numbers in the page on sanding, worked out again.

const whole = (value: number) => value.toFixed(0);
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
const ratio = (coarse: number, fine: number) => grade(coarse).micrometres / grade(fine).micrometres;
const twoFigures = (value: number) => String(Number(value.toPrecision(2)));

hold({
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
        return `no more than ${usualRatio.wood} times as large as that of the next (common practice). With these grits you may skip one, but not before P320: P180 to P320 is too big a step, ${ratio(180, 320).toFixed(1)} times.`;
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
      'the class’s trays for oil',
      () => {
        const { calculator, inputs } = workedCase('sanding-to-a-finish', { material: 'inlay' });
        const [steps, skips] = result(calculator, inputs).tables ?? [];
        const p120 = skips?.rows.find(([grit]) => grit === 'P120');
        const minutes = (seconds: unknown) => whole(Number(seconds) / 60);
        const grits = (steps?.rows ?? []).map(([, what]) => /P\d+/.exec(String(what))?.[0] ?? 'water');
        expect(worked('sanding-to-a-finish', 'grits', { material: 'inlay' }).value).toBe(5);
        expect(steps?.rows.at(-1)?.[1]).toContain('three or four light strokes by hand');
        return `Out of the usual drawer: ${grits.join(', ')}. Five grits, 12 min a tray, to a factor of two: about two and a third hours for twelve. Leaving out P120 would make a step of ${Number(p120?.[1]).toFixed(1)}. It saves the class ${minutes(p120?.[3])} minutes, costs ${minutes(p120?.[4])} at P150`;
      },
    ],
    [
      'the area and the time of the class’s trays',
      () => {
        const { inputs } = workedCase('sanding-to-a-finish', { material: 'inlay' });
        const tray = figure(
          'finish-coats',
          { ...workedCase('oiling-and-waxing').inputs, boards: '1', resin: 'none' },
          'area',
        );
        expect(inputs['area']).toBe(`${Number(convert(tray.value, tray.unit, 'cm2').toPrecision(3))} cm²`);
        const time = worked('sanding-to-a-finish', 'time', { material: 'inlay' }).value;
        expect(Math.abs(time / 3600 - 7 / 3)).toBeLessThan(0.1);
        return 'about two and a third hours for twelve';
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
    ['the exercise', () => `1. From P120 to P220: ${ratio(120, 220).toFixed(1)} times, over the ${usualRatio.wood}`],
  ],
});
