import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boringBits, boringPractice, boringSpeed, hardnessEnds } from '../../../src/model/stock/boring.ts';
import {
  bearingContact,
  cutterCautions,
  rimSpeed,
  routerCeiling,
  routerCeilings,
  type TemplateCut,
  templateCut,
  usualDepthOfPass,
} from '../../../src/model/stock/cutters.ts';

describe('router bits', () => {
  test('larger bits have lower ceilings, and a bit larger than any named has none', () => {
    for (const [at, ceiling] of routerCeilings.entries()) {
      const next = routerCeilings[at + 1];
      if (next) expect(next.turns).toBeLessThan(ceiling.turns);
      // Of the two texts the lower counts.
      expect(ceiling.turns).toBeLessThanOrEqual(ceiling.most);
    }
    expect(routerCeiling(25.4)?.turns).toBe(22_000);
    expect(routerCeiling(25.5)?.turns).toBe(18_000);
    expect(routerCeiling(100)).toBeUndefined();
  });
  test('rim speed doubles with either factor', () => {
    expect(rimSpeed(40, 9000)).toBeCloseTo(2 * rimSpeed(20, 9000), 12);
    expect(rimSpeed(40, 9000)).toBeCloseTo(2 * rimSpeed(40, 4500), 12);
  });
  test('what the tool is marked with wins, said with every speed', () => {
    expect(cutterCautions.find((caution) => caution.id === 'marked-speed')?.level).toBe('danger');
    for (const { basis } of cutterCautions) expect(basis).toBe('shop-practice');
  });
});

describe('a template cut', () => {
  const cut: TemplateCut = {
    diameter: 12.7,
    cuttingLength: 25.4,
    bearing: 'shank',
    stock: 20,
    template: 12,
    contact: 3,
    beyond: 1,
    depthOfPass: usualDepthOfPass(12.7),
  };
  test('a long edge over a thin template lifts the bearing off in a shallow pass', () => {
    const plan = templateCut(cut);
    expect(plan.longEnough).toBe(true);
    expect(plan.leastFirstPass).toBeCloseTo(25.4 - 9, 9);
    expect(plan.steadyFirstPass).toBe(false);
    // 6.35 mm deep, the bearing stands 19.05 mm over the stock: a template of that and 3 mm more keeps it.
    expect(plan.thickerTemplate).toBeCloseTo(22.05, 9);
    expect(templateCut({ ...cut, template: 22.05 }).steadyFirstPass).toBe(true);
  });
  test('a short edge goes down in steps, and finishes riding on the edge already cut', () => {
    const plan = templateCut({ ...cut, cuttingLength: 12 });
    expect(plan.longEnough).toBe(false);
    expect(plan.shortBy).toBeCloseTo(9, 9);
    expect(plan.ridesOnCutEdge).toBe(true);
    expect(plan.steadyFirstPass).toBe(true);
    expect(plan.passes).toHaveLength(4);
  });
  test('a bearing at the tip needs an edge as long as the stock and cuts it at once', () => {
    expect(templateCut({ ...cut, bearing: 'tip' })).toMatchObject({ longEnough: true, passes: [20] });
    // What stands above the edge would meet the shank.
    expect(templateCut({ ...cut, bearing: 'tip', stock: 30 })).toMatchObject({
      longEnough: false,
      shortBy: expect.closeTo(5.6, 9),
      passes: [],
    });
    expect(templateCut({ ...cut, bearing: 'tip', template: 2 })).toMatchObject({ passes: [], thickerTemplate: 3 });
  });

  // Worked out by hand: edge less (template less 3 mm of contact). Edge, stock and template in inches.
  test.each([
    [1, 1 / 2, 1 / 4, 22.05, false],
    [1, 3 / 4, 1 / 4, 22.05, false],
    [1, 1 / 2, 1 / 2, 15.7, false],
    [1.25, 3 / 4, 1 / 4, 28.4, false],
    [1, 3 / 8, 1 / 4, 22.05, false],
    [1, 3 / 4, 1 / 2, 15.7, true],
    [1, 3 / 4, 3 / 4, 9.35, true],
  ])('edge %d in, stock %d in, template %d in: first pass at least %d mm', (edge, stock, template, least, cuttable) => {
    const sizes = { cuttingLength: edge * 25.4, stock: stock * 25.4, template: template * 25.4 };
    const plan = templateCut({ ...cut, ...sizes });
    expect(plan.leastFirstPass).toBeCloseTo(least, 9);
    expect(bearingContact(sizes, plan.leastFirstPass ?? 0)).toBeCloseTo(3, 9);
    // Where it is more than the stock and the reach past it, the edge would hang out under the work: no pass is named.
    expect(plan.passes.length > 0).toBe(cuttable);
    if (cuttable) expect(plan.passes[0]).toBeCloseTo(least, 9);
    expect(bearingContact({ ...sizes, template: plan.thickerTemplate ?? 0 }, 6.35)).toBeCloseTo(3, 9);
    expect(bearingContact({ ...sizes, cuttingLength: plan.shorterEdge ?? 0 }, 6.35)).toBeCloseTo(3, 9);
  });

  test('on a template thinner than the bearing must touch there is no pass at all', () => {
    const plan = templateCut({ ...cut, template: 2 });
    expect(plan.leastFirstPass).toBeUndefined();
    expect(plan.passes).toEqual([]);
  });

  test('at every pass the bearing is on the template or on edge already cut, and passes add up, for any sizes', () => {
    const size = fc.double({ min: 1, max: 80, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, size, (diameter, cuttingLength, stock, template, given) => {
        const depthOfPass = Math.min(given, usualDepthOfPass(diameter) * 3);
        const sizes = { cuttingLength, stock, template };
        const plan = templateCut({ ...cut, ...sizes, diameter, depthOfPass });
        expect(plan.longEnough).toBe(plan.shortBy === 0);
        let depth = 0;
        for (const pass of plan.passes) {
          // The bearing's lower end: what it would touch there must be cut already.
          expect(depth + pass - cuttingLength).toBeLessThanOrEqual(depth + 1e-6);
          depth += pass;
          expect(bearingContact(sizes, depth)).toBeGreaterThanOrEqual(cut.contact - 1e-6);
        }
        if (plan.passes.length > 0) expect(depth).toBeCloseTo(stock + 1, 6);
        else expect(plan.leastFirstPass ?? Number.POSITIVE_INFINITY).toBeGreaterThan(stock + 1);
      }),
    );
  });
});

describe('boring, as common practice has it', () => {
  test('a backing block goes under through holes', () => {
    expect(boringPractice.find((practice) => practice.id === 'backing-block')?.text).toMatch(
      /backing block .* under every through hole/,
    );
  });
  test('larger holes and harder woods are bored more slowly, and never over the bit’s ceiling', () => {
    for (const bit of boringBits) {
      const [least, most] = bit.diameters;
      expect(boringSpeed(bit, most, 3000).turns).toBeLessThanOrEqual(boringSpeed(bit, least, 3000).turns);
      const middle = (least + most) / 2;
      expect(boringSpeed(bit, middle, hardnessEnds.hard).turns).toBeLessThanOrEqual(boringSpeed(bit, middle, 0).turns);
      for (const hardness of [0, 4000, 12_000]) {
        const speed = boringSpeed(bit, least, hardness);
        expect(speed.high).toBeLessThanOrEqual(bit.mostTurns);
        expect(speed.low).toBeLessThanOrEqual(speed.turns);
        expect(speed.turns).toBeLessThanOrEqual(speed.high);
        expect(speed.basis).toBe('shop-practice');
      }
    }
  });
  test('a 35 mm Forstner bit in hard wood runs at a few hundred turns', () => {
    const bit = boringBits.find((candidate) => candidate.id === 'forstner');
    if (!bit) throw new Error('no such bit');
    const speed = boringSpeed(bit, 35, 6400);
    expect(speed.turns).toBeGreaterThanOrEqual(250);
    expect(speed.turns).toBeLessThanOrEqual(500);
    expect(speed.usualDiameter).toBe(true);
    expect(boringSpeed(bit, 2).usualDiameter).toBe(false);
  });
});
