import { expect, test } from 'vitest';
import { type Grade, gradeOf, usualGrits } from '../../../src/model/abrasive/index.ts';
import { gritSequence, type SandStep, type SequenceRequest } from '../../../src/model/abrasive/sequence.ts';
import {
  type SandingMethod,
  type StartSurface,
  sandingMethodById,
  startSurfaceById,
} from '../../../src/model/abrasive/surfaces.ts';

// Each limit of this room that decides something, with an input just below it and one just above.

const p = (number: number) => gradeOf('P', number) as Grade;
/** A square metre, so that minutes for a square metre are minutes. */
const request: SequenceRequest = {
  material: 'wood',
  start: startSurfaceById('planed') as StartSurface,
  last: p(320),
  drawer: usualGrits.map(p),
  ratio: 1.7,
  raiseGrain: false,
  area: 1e6,
  method: sandingMethodById('random-orbit') as SandingMethod,
};
const sequence = (change: Partial<SequenceRequest>) => {
  const outcome = gritSequence({ ...request, ...change });
  if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
  return outcome.value;
};
const sanding = (change: Partial<SequenceRequest>) =>
  sequence(change).steps.filter((step): step is SandStep => step.kind === 'sand');
/** A grade of any grain size. */
const grain = (micrometres: number): Grade => ({ ...p(150), id: `of-${micrometres}`, micrometres });

test('a step of 1.5 takes the usual time, a wider one more in proportion, a narrower one less', () => {
  const minutes = (ratio: number) =>
    (sanding({ start: grain(100 * ratio), last: grain(100), drawer: [], ratio: 3 })[0] as SandStep).minutes /
    request.method.minutes;
  expect(minutes(1.5)).toBeCloseTo(1, 9);
  expect(minutes(1.49)).toBeLessThan(1);
  expect(minutes(1.51)).toBeGreaterThan(1);
  expect(minutes(2.25)).toBeCloseTo(1.5, 9);
});

test('the first grade after a tool takes the usual time', () => {
  expect((sanding({})[0] as SandStep).minutes).toBeCloseTo(request.method.minutes, 9);
});

test('a step within 1.7 is within the limit, one beyond is not', () => {
  const within = (ratio: number) =>
    sequence({ start: grain(100 * ratio), last: grain(100), drawer: [], ratio: 1.7 }).within;
  expect([within(1.69), within(1.71)]).toEqual([true, false]);
});

test.each([
  [1.05, false],
  [1.06, true],
  [10, true],
  [10.1, false],
])('a limit of %d: taken %s', (ratio, taken) => {
  expect(gritSequence({ ...request, ratio }).ok).toBe(taken);
});

test('resin is sanded wet from P400 on, wood never', () => {
  const wet = (material: 'wood' | 'resin', number: number) =>
    sanding({ material, last: p(number), drawer: [] }).at(-1)?.wet;
  expect([wet('resin', 360), wet('resin', 400), wet('wood', 400)]).toEqual([false, true, false]);
});

test('grain is raised before the last grade where the one before it is P220 or finer, else after it', () => {
  const raisedAfter = (numbers: readonly number[]) => {
    const drawer = numbers.map(p);
    const step = sequence({ raiseGrain: true, drawer, last: drawer.at(-1) as Grade, ratio: 4 }).steps.find(
      (each) => each.kind === 'raise',
    );
    return step?.kind === 'raise' ? step.after.id : 'never';
  };
  expect(raisedAfter([80, 180, 320])).toBe('P320');
  expect(raisedAfter([80, 220, 320])).toBe('P220');
});

test('light strokes by hand take a quarter of sanding by hand', () => {
  const hand = sandingMethodById('by-hand') as SandingMethod;
  const light = sanding({ raiseGrain: true }).find((step) => step.light);
  expect(light?.minutes).toBeCloseTo(hand.minutes / 4, 9);
  expect(light?.discs).toBe(Math.ceil(1 / 4 / hand.fine));
});

test('coarse paper lasts as such up to P150, fine paper from there on', () => {
  const method = { ...request.method, coarse: 0.5, fine: 0.25 };
  const discs = (number: number) =>
    sanding({ start: p(100), last: p(number), drawer: [], ratio: 10, method }).at(-1)?.discs;
  expect([discs(150), discs(180)]).toEqual([2, 4]);
});
