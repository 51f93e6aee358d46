import { describe, expect, test } from 'vitest';
import { isAssumed } from '../../../src/model/resin/assumed.ts';
import { resinKindIds, resinKinds, resinOf } from '../../../src/model/resin/kinds.ts';
import { layResinSheet, type ResinSheet, sheetWarnings } from '../../../src/model/resin/resin.ts';
import { resinFigureNames } from '../../../src/model/resin/types.ts';

const hour = 3600;
const sheet = (figures: ResinSheet['figures'], more: Partial<ResinSheet> = {}) =>
  layResinSheet({ name: 'A sheet', figures, ...more });

describe('generic kinds', () => {
  test('are found by their ids', () => {
    expect(resinKinds.map(({ kind }) => kind)).toEqual([...resinKindIds]);
    for (const id of resinKindIds) expect(resinOf(id)?.kind).toBe(id);
    expect(resinOf('toString')).toBeUndefined();
  });

  test('claim nothing as published or as a maker’s, and leave to the maker what only the maker knows', () => {
    for (const { figures } of resinKinds) {
      expect(Object.keys(figures).sort()).toEqual([...resinFigureNames].sort());
      for (const figure of Object.values(figures)) {
        if (figure) expect(['shop-practice', 'memory']).toContain(figure.basis);
      }
      expect(figures.foodService).toBeNull();
      expect(figures.pigmentLimit).toBeNull();
      expect(figures.secondPotLife).toBeNull();
    }
  });

  // Common practice, no source: equal parts by volume for a 1:1 coating epoxy, about 24 hours before the next stage.
  test('a coating epoxy is mixed in equal parts by volume, not by weight, and waits about 24 hours (common practice)', () => {
    const { volumeRatio, weightRatio, sandable } = resinOf('fast-coating-1-1')?.figures ?? {};
    expect(volumeRatio).toMatchObject({ value: 1, basis: 'shop-practice' });
    expect(volumeRatio?.note).toContain('common practice');
    expect(weightRatio?.value).toBeCloseTo(0.836, 3);
    expect(sandable).toMatchObject({ value: 24 * hour, basis: 'shop-practice' });
  });

  test('pour deeper the longer their pot life', () => {
    const order = [...resinKinds].sort((a, b) => (a.figures.potLife?.value ?? 0) - (b.figures.potLife?.value ?? 0));
    const depths = order.map(({ figures }) => figures.greatestDepth?.value ?? 0);
    expect(depths).toEqual([...depths].sort((a, b) => a - b));
  });
});

describe('a data sheet over a kind', () => {
  test('keeps the sheet’s figures as the maker’s and the kind’s as they were', () => {
    const resin = sheet({ densityA: 1.13 }, { kind: 'slow-casting-2-1' });
    expect(resin).toMatchObject({ kind: 'slow-casting-2-1', name: 'A sheet', fromSheet: true });
    expect(resin.figures.densityA).toMatchObject({ value: 1.13, basis: 'supplier-sheet' });
    expect(resin.figures.densityB?.basis).toBe('memory');
    expect(resin.figures.greatestDepth?.value).toBe(19);
  });

  test('has no ratio where the sheet names none: one that nobody read off a bottle is no ratio of the sheet', () => {
    const { volumeRatio, weightRatio } = sheet({ potLife: 6 * hour }, { kind: 'slow-casting-2-1' }).figures;
    expect([volumeRatio, weightRatio]).toEqual([null, null]);
    expect(sheet({ volumeRatio: 0.5, densityA: 1.13 }).figures.weightRatio?.value).toBeCloseTo((0.5 * 0.98) / 1.13, 6);
  });

  test('drops what hangs on the speed of cure where the sheet has a pot life of its own', () => {
    const { figures } = sheet({ potLife: 2 * hour });
    expect(figures.greatestDepth).toBeNull();
    expect(figures.recoatOpens).toBeNull();
    expect(figures.sandable).toBeNull();
    expect(figures.potLifeMass).toMatchObject({
      value: 100,
      basis: 'memory',
      note: expect.stringContaining('assumed'),
    });
    expect(figures.potLifeTemperature).toMatchObject({ value: 25, basis: 'memory' });
  });

  test('never joins one end of a window from the sheet with the other of the kind', () => {
    const { figures } = sheet({ recoatOpens: 30 * hour }, { kind: 'slow-casting-2-1' });
    expect(figures.recoatOpens?.value).toBe(30 * hour);
    expect(figures.recoatCloses).toBeNull();
  });

  test.each([
    ['nothing else', {}],
    ['a post-cure in an oven', { cure: 4 * hour, cureTemperature: 60 }],
    ['a pot life at 25 °C', { potLife: 6 * hour, potLifeTemperature: 25 }],
  ])('takes a depth without a temperature for 20 °C, assumed, where the sheet gives %s', (_, more) => {
    const resin = sheet({ greatestDepth: 20, ...more });
    expect(resin.figures.greatestDepthTemperature).toMatchObject({
      value: 20,
      basis: 'memory',
      note: expect.stringContaining('assumed'),
    });
    expect(isAssumed(resin, 'greatestDepthTemperature')).toBe(true);
  });

  test('takes a depth for the temperature that the sheet names', () => {
    const resin = sheet({ greatestDepth: 20, greatestDepthTemperature: 22, cureTemperature: 60 });
    expect(resin.figures.greatestDepthTemperature).toMatchObject({ value: 22, basis: 'supplier-sheet' });
    expect(isAssumed(resin, 'greatestDepthTemperature')).toBe(false);
  });

  test('takes waits without a temperature for that of the pot life, else for the warmest usual, and says so', () => {
    const taken = (figures: ResinSheet['figures']) => sheet(figures).figures.cureTemperature;
    expect(taken({ sandable: 72 * hour })).toMatchObject({ value: 25, basis: 'memory' });
    expect(taken({ cure: 14 * 24 * hour, potLife: hour, potLifeTemperature: 20 })).toMatchObject({
      value: 20,
      basis: 'memory',
      note: expect.stringContaining('of its pot life, is assumed'),
    });
    expect(taken({ cure: 14 * 24 * hour, cureTemperature: 18 })).toMatchObject({ value: 18, basis: 'supplier-sheet' });
    // No wait is the sheet's own: the kind's waits keep the kind's temperature.
    expect(taken({ densityA: 1.1 })).toMatchObject({ value: 22, basis: 'memory' });
  });

  test.each([
    ['30 minutes, 1:1', { potLife: 0.5 * hour, volumeRatio: 1 }, 'fast-coating-1-1'],
    ['6 hours, 2:1', { potLife: 6 * hour, volumeRatio: 0.5 }, 'slow-casting-2-1'],
    ['24 hours, 3:1', { potLife: 24 * hour, volumeRatio: 1 / 3 }, 'slow-casting-3-1'],
    ['no pot life, 3:1', { volumeRatio: 1 / 3 }, 'slow-casting-3-1'],
    ['nothing', {}, 'medium-2-1'],
  ])('%s lies over the nearest kind', (_, figures, kind) => {
    expect(sheet(figures).kind).toBe(kind);
  });

  test('gives the ratio by volume that a ratio by weight means', () => {
    const { volumeRatio, weightRatio } = sheet({ weightRatio: 0.43, densityA: 1.16, densityB: 1 }).figures;
    expect(weightRatio).toMatchObject({ value: 0.43, basis: 'supplier-sheet' });
    expect(volumeRatio?.value).toBeCloseTo(0.4988, 4);
    expect(volumeRatio?.basis).toBe('supplier-sheet');
  });
});

describe('a sheet that does not agree with itself', () => {
  const figures = { volumeRatio: 0.5, densityA: 1.16, densityB: 1 };

  test('2:1 by volume and 100:43 by weight agree with 1.16 and 1.00 g/ml', () => {
    expect(sheetWarnings(sheet({ ...figures, weightRatio: 0.43 }))).toEqual([]);
  });

  test('2:1 by volume and 100:50 by weight do not, and both numbers are said', () => {
    const [warning, ...others] = sheetWarnings(sheet({ ...figures, weightRatio: 0.5 }));
    expect(others).toEqual([]);
    expect(warning?.text).toContain('differ by 13.8 %');
    expect(warning?.why).toContain('100 : 43.1');
    expect(warning?.why).toContain('100 : 50.0');
    expect(warning).toMatchObject({ level: 'danger', own: true });
  });

  test.each([
    [0.5 * (1 / 1.16) * 1.019, 0],
    [0.5 * (1 / 1.16) * 1.021, 1],
  ])('the line is drawn at 2 %%: 1 : %f', (weightRatio, warnings) => {
    expect(sheetWarnings(sheet({ ...figures, weightRatio }))).toHaveLength(warnings);
  });

  test('a kind has no warning', () => {
    for (const kind of resinKinds) expect(sheetWarnings(kind)).toEqual([]);
  });
});
