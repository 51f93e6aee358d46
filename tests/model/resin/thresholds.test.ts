import { describe, expect, test } from 'vitest';
import { coolestAnchor, hottestAnchor, indexLevel } from '../../../src/model/resin/anchor.ts';
import { depthLimitOf } from '../../../src/model/resin/depth-limit.ts';
import { kineticsOf } from '../../../src/model/resin/fit.ts';
import { resinKinds } from '../../../src/model/resin/kinds.ts';
import type { PourRun } from '../../../src/model/resin/pour.ts';
import { equalLayers, type LayerTimes, layerWait } from '../../../src/model/resin/pour-plan.ts';
import { parseMixRatio } from '../../../src/model/resin/ratio.ts';
import { layResinSheet, ratioConflict, sheetWarnings } from '../../../src/model/resin/resin.ts';

// Each limit of this room that decides something, with an input just below it and one just above.

describe('the level of a pour', () => {
  const level = (index: number, peakRise: number, tooDeep = false) =>
    indexLevel(index, { outcome: 'settled', peakRise }, tooDeep);

  test('is a runaway above an index of 1.6 where it warms by 10 K or more', () => {
    expect(coolestAnchor).toBe(10);
    expect([level(1.61, 9.9), level(1.61, 10), level(1.6, 30)]).toEqual(['outside', 'runaway', 'outside']);
  });

  test('is hot above 40 K whatever its index', () => {
    expect(hottestAnchor).toBe(40);
    expect([level(0.5, 40), level(0.5, 40.1)]).toEqual(['inside', 'hot']);
  });

  test('is deeper than the sheet before its index counts', () => {
    expect([level(0.5, 5, true), level(0.5, 5)]).toEqual(['deeper', 'inside']);
  });
});

test('a hair over a depth costs no layer, more than a hair does', () => {
  expect(equalLayers(20.00001, 10).count).toBe(2);
  expect(equalLayers(20.001, 10).count).toBe(3);
});

describe('the wait between layers', () => {
  const hour = 3600;
  const run = { outcome: 'settled', timeToLastGel: 9 * hour, timeToCool: 10 * hour, timeToClose: null } as PourRun;
  const abraded = (closes: number, closesBy: LayerTimes['closesBy']) =>
    layerWait(run, { opens: 5 * hour, closes: closes * hour, closesBy, sandable: 40 * hour })?.abrade;

  test('a window by the model is none unless it outlasts the wait by a tenth', () => {
    expect([abraded(10.9, 'model'), abraded(11.1, 'model')]).toEqual([true, false]);
  });

  test('a window by the sheet counts to its end', () => {
    expect([abraded(9.9, 'sheet'), abraded(10.1, 'sheet')]).toEqual([true, false]);
  });
});

describe('two ratios of one sheet', () => {
  /** A ratio by weight so many percent off what the volumes and densities make. */
  const sheet = (percent: number) =>
    layResinSheet({
      name: 'Invented',
      figures: { densityA: 1.1, densityB: 1, volumeRatio: 0.5, weightRatio: 0.5 / 1.1 / (1 + percent / 100) },
    });

  test('agree within 2 %, and may be mixed within 5 %', () => {
    expect(ratioConflict(sheet(1.9))).toBeUndefined();
    expect(ratioConflict(sheet(2.1))?.apart).toBeCloseTo(2.1, 6);
    const level = (percent: number) => sheetWarnings(sheet(percent)).find(({ id }) => id === 'ratios-disagree')?.level;
    expect([level(2.1), level(4.9), level(5.1)]).toEqual(['warning', 'warning', 'danger']);
  });

  test.each([
    ['100 : 1.9', false],
    ['100 : 2.1', true],
    ['1 : 5', true],
    ['1 : 5.1', false],
  ])('%s is taken: %s', (text, taken) => {
    expect(parseMixRatio(text).ok).toBe(taken);
  });
});

test('a shop a hair warmer than the sheet’s own temperature allows less than the sheet’s depth, a colder one never more', () => {
  const sheet = layResinSheet({
    name: 'Invented',
    figures: { potLife: 6 * 3600, greatestDepth: 14, greatestDepthTemperature: 25 },
  });
  const limit = (shop: number) => depthLimitOf(sheet, shop);
  expect(limit(24)).toMatchObject({ depth: 14, hotter: false });
  expect(limit(25)).toMatchObject({ depth: 14, hotter: false });
  const warmer = limit(25.5);
  expect(warmer).toMatchObject({ kind: 'known', hotter: true });
  expect(warmer.kind === 'known' && warmer.depth).toBeLessThan(14);
});

test('every kind of resin is fitted within the rates of resins for pouring', () => {
  for (const kind of resinKinds) {
    const { k2At25C } = kineticsOf(kind).kinetics;
    expect(k2At25C, kind.kind).toBeGreaterThan(1e-8);
    expect(k2At25C, kind.kind).toBeLessThan(0.1);
  }
});
