import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Grade, gradeOf, grades, usualGrits, wetGrits } from '../../../src/model/abrasive/index.ts';
import { gritPath } from '../../../src/model/abrasive/path.ts';
import { gritSequence, type SequenceRequest, usualRatio } from '../../../src/model/abrasive/sequence.ts';
import {
  finishKindById,
  finishKinds,
  type SandingMethod,
  type StartSurface,
  sandingMethodById,
  startSurfaceById,
  startSurfaces,
} from '../../../src/model/abrasive/surfaces.ts';

const p = (number: number) => gradeOf('P', number) as Grade;
const usual = usualGrits.map(p);
const board: SequenceRequest = {
  material: 'wood',
  start: startSurfaceById('planed') as StartSurface,
  last: p(320),
  drawer: usual,
  ratio: usualRatio.wood,
  raiseGrain: true,
  area: 2 * 450 * 250,
  method: sandingMethodById('random-orbit') as SandingMethod,
};
const sequence = (change: Partial<SequenceRequest>) => {
  const outcome = gritSequence({ ...board, ...change });
  if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
  return outcome.value;
};
const ids = (list: readonly Grade[]) => list.map((grade) => grade.id);

describe('common practice', () => {
  test('from 80 to 320, no step leaves out more than one usual grit', () => {
    const { grits, within } = sequence({});
    expect(within).toBe(true);
    expect(grits[0]?.id).toBe('P80');
    expect(grits.at(-1)?.id).toBe('P320');
    for (const [at, grade] of grits.slice(1).entries()) {
      const skipped = usualGrits.indexOf(grade.number) - usualGrits.indexOf((grits[at] as Grade).number) - 1;
      expect(skipped).toBeLessThanOrEqual(1);
    }
  });
  test('no step within the usual limit leaves out two usual grits, whichever they are', () => {
    for (let from = 0; from + 3 < usual.length; from += 1) {
      const ratio = (usual[from] as Grade).micrometres / (usual[from + 3] as Grade).micrometres;
      expect(ratio).toBeGreaterThan(usualRatio.wood);
    }
  });
  test('the grain is raised after 220 and before the last grit', () => {
    const { steps } = sequence({});
    const at = steps.findIndex((step) => step.kind === 'raise');
    const before = steps.slice(0, at).flatMap((step) => (step.kind === 'sand' ? [step.grade.number] : []));
    const after = steps.slice(at + 1);
    expect(before).toContain(220);
    // What follows is a few strokes by hand, never another sanding, which would lay bare new fibres.
    expect(after).toMatchObject([{ kind: 'sand', grade: { number: 320 }, light: true }]);
    expect(steps.filter((step) => step.kind === 'raise')).toHaveLength(1);
  });
  test('where 220 is the last grit, the grain is raised after it and 220 is repeated lightly', () => {
    const { steps } = sequence({ last: p(220) });
    expect(steps.at(-1)).toMatchObject({ kind: 'raise', after: { id: 'P220' }, lightly: { id: 'P220' } });
  });
  test('without water there is no such step', () => {
    expect(sequence({ raiseGrain: false }).steps.every((step) => step.kind === 'sand')).toBe(true);
  });
  test('resin goes on with wet grits to a clear polish, and is not wetted to raise grain', () => {
    const drawer = [...usual, ...wetGrits.map(p)];
    const { steps, within, grits } = sequence({
      material: 'resin',
      start: startSurfaceById('resin-as-cast') as StartSurface,
      drawer,
      last: p(2000),
    });
    expect(within).toBe(true);
    expect(grits.at(-1)?.id).toBe('P2000');
    for (const step of steps)
      expect(step.kind === 'sand' && step.wet).toBe(step.kind === 'sand' && step.grade.number >= 400);
  });
});

describe('a sequence', () => {
  test('takes the fewest steps, and says what skipping one costs', () => {
    const { grits, skips } = sequence({});
    expect(grits).toHaveLength(5);
    for (const skip of skips) {
      expect(skip.within).toBe(false);
      expect(skip.added).toBeGreaterThan(0);
      expect(skip.saved).toBeGreaterThan(0);
    }
  });
  test('a missing last grit is to be bought', () => {
    const { steps } = sequence({ drawer: usual.filter((grade) => grade.number !== 320) });
    expect(steps.flatMap((step) => (step.kind === 'sand' && step.buy ? [step.grade.id] : []))).toEqual(['P320']);
  });
  test('a gap is said, with the grits that close it', () => {
    const { within, bridge, largest } = sequence({ drawer: [p(80), p(320)] });
    expect(within).toBe(false);
    expect(largest).toBeCloseTo(201 / 46.3, 6);
    const closed = sequence({ drawer: [p(80), p(320), ...bridge] });
    expect(closed.within).toBe(true);
  });
  test('a drawer too fine for the tool’s marks is a gap too, and the grit of the table of surfaces closes it', () => {
    const fine = sequence({ drawer: [p(180), p(220), p(320)] });
    expect(fine).toMatchObject({ within: false, tooFine: true });
    expect(ids(fine.bridge).slice(0, 1)).toEqual(['P80']);
    for (const start of startSurfaces) {
      const drawer = [p(220), p(320)];
      const { bridge } = sequence({ start, drawer });
      expect(bridge[0]?.number, start.id).toBe(start.first);
      expect(sequence({ start, drawer: [...drawer, ...bridge] }).within, start.id).toBe(true);
    }
  });
  test('one step that cannot be helped leaves the others held: what is in the drawer is used', () => {
    const rough = sequence({
      start: startSurfaceById('rough-sawn') as StartSurface,
      last: p(220),
      drawer: [80, 120, 180, 220].map(p),
    });
    expect(ids(rough.grits)).toEqual(['P80', 'P120', 'P180', 'P220']);
    expect(ids(rough.bridge)).toEqual(['P60']);
    expect(rough.largest).toBeLessThan(usualRatio.wood);
  });
  test('a last grit coarser than the one that the surface has is said', () => {
    expect(sequence({ start: p(220), last: p(120) }).back).toBe(true);
    expect(sequence({ start: p(120), last: p(220) }).back).toBe(false);
  });
  test('a surface already sanded goes on from its grit', () => {
    expect(ids(sequence({ start: p(120), last: p(220) }).grits)).toEqual(['P150', 'P220']);
  });
  test('an ANSI drawer steps by grain size, not by number', () => {
    const ansi = [80, 100, 120, 150, 180, 220, 320].map((number) => gradeOf('ANSI', number) as Grade);
    // ANSI 220 to 320 is 68 to 35 µm, wider than the limit, where P220 to P320 is not.
    const outcome = sequence({ drawer: ansi, last: gradeOf('ANSI', 320) as Grade });
    expect(outcome.within).toBe(false);
    expect(ids(outcome.bridge)).toEqual(['ANSI 240']);
  });
  test('time grows with area and with the step, and no paper is less than one', () => {
    const small = sequence({});
    const large = sequence({ area: 4 * board.area });
    expect(large.minutes).toBeCloseTo(4 * small.minutes, 9);
    expect(small.discs).toBe(small.grits.length);
  });
  test.each([
    ['ratio', { ratio: 1 }],
    ['ratio', { ratio: Number.NaN }],
    ['area', { area: 0 }],
    ['area', { area: Number.POSITIVE_INFINITY }],
  ])('refuses %s that cannot be', (field, change) => {
    const outcome = gritSequence({ ...board, ...change });
    expect(!outcome.ok && outcome.errors[0]?.field).toBe(field);
  });
});

describe('the shortest path', () => {
  /** Every subset of the drawer, coarse to fine. */
  function exhaustive(drawer: readonly Grade[], last: Grade, sanded: number, limit: number): number {
    let best = Number.POSITIVE_INFINITY;
    for (let mask = 0; mask < 1 << drawer.length; mask += 1) {
      const chosen = drawer
        .filter((grade, at) => (mask >> at) & 1 && grade.micrometres > last.micrometres * 1.05)
        .sort((a, b) => b.micrometres - a.micrometres);
      let [now, fits] = [sanded, true];
      for (const grade of [...chosen, last]) {
        if (now / grade.micrometres > limit * (1 + 1e-9)) fits = false;
        now = grade.micrometres;
      }
      if (fits) best = Math.min(best, chosen.length + 1);
    }
    return best;
  }
  test('has as few steps as the best of all subsets of the drawer', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...grades), { maxLength: 9, selector: (grade) => grade.id }),
        fc.constantFrom(...grades),
        fc.double({ min: 10, max: 600, noNaN: true }),
        fc.double({ min: 1.2, max: 3, noNaN: true }),
        (drawer, last, sanded, limit) => {
          const path = gritPath(drawer, last, { sanded }, limit);
          const best = exhaustive(drawer, last, sanded, limit);
          expect(path.within).toBe(Number.isFinite(best));
          if (path.within) expect(path.grades.length).toBe(best);
          expect(path.grades.at(-1)).toBe(last);
          for (const [at, grade] of path.grades.slice(1).entries()) {
            expect(grade.micrometres).toBeLessThan((path.grades[at] as Grade).micrometres);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
  /** What the steps of a way go beyond the limit, in logarithms. */
  const beyond = (grains: readonly number[], limit: number) =>
    grains.slice(1).reduce((sum, grain, at) => sum + Math.max(0, Math.log((grains[at] as number) / grain / limit)), 0);
  test('goes beyond the limit no more in all than any subset of the drawer', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...usual), { maxLength: 7, selector: (grade) => grade.id }),
        fc.double({ min: 60, max: 600, noNaN: true }),
        fc.double({ min: 1.2, max: 2, noNaN: true }),
        (drawer, sanded, limit) => {
          const last = p(320);
          const path = gritPath(drawer, last, { sanded }, limit);
          const own = beyond([sanded, ...path.grades.map((grade) => grade.micrometres)], limit);
          for (let mask = 0; mask < 1 << drawer.length; mask += 1) {
            const chosen = drawer
              .filter((grade, at) => (mask >> at) & 1 && grade.micrometres > last.micrometres * 1.05)
              .map((grade) => grade.micrometres)
              .sort((a, b) => b - a);
            expect(own).toBeLessThanOrEqual(beyond([sanded, ...chosen, last.micrometres], limit) + 1e-7);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
  test('any request gives finite numbers', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...grades), { maxLength: 20 }),
        fc.constantFrom(...grades),
        fc.constantFrom<StartSurface | Grade>(...startSurfaces, ...grades),
        fc.boolean(),
        fc.constantFrom('wood' as const, 'resin' as const),
        (drawer, last, start, raiseGrain, material) => {
          const outcome = sequence({ drawer, last, start, raiseGrain, material });
          expect(Number.isFinite(outcome.minutes + outcome.discs + outcome.largest)).toBe(true);
          expect(outcome.steps.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});

test('finishes end at grades that are known, and a water-based finish asks for raised grain', () => {
  for (const finish of finishKinds) expect(gradeOf('P', finish.last)).toBeDefined();
  expect(finishKindById('water-based')?.waterBased).toBe(true);
});
