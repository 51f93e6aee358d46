import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { mostSlowed } from '../../../src/model/resin/anchor.ts';
import { kineticsOf } from '../../../src/model/resin/fit.ts';
import { depthAgainstPotLife, eitherOf, greatestPourOf } from '../../../src/model/resin/greatest-pour.ts';
import { resinKinds } from '../../../src/model/resin/kinds.ts';
import { layResinSheet, type ResinSheet, sheetWarnings } from '../../../src/model/resin/resin.ts';

const minute = 60;
const hour = 3600;
const sheet = (figures: ResinSheet['figures'], more: Partial<ResinSheet> = {}) =>
  layResinSheet({ name: 'A sheet', figures, ...more });
const words = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);

/** 50 mm of a coating resin whose cup sets in half an hour: 5 mm with a nought too many. */
const mistyped = sheet({
  volumeRatio: 1,
  potLife: 30 * minute,
  potLifeMass: 100,
  potLifeTemperature: 25,
  greatestDepth: 50,
  greatestDepthTemperature: 25,
});

describe('the greatest pour of a resin', () => {
  test.each(resinKinds.map((kind) => [kind.kind, kind] as const))('of %s goes with its pot life', (_, kind) => {
    expect(greatestPourOf(kind)).toMatchObject({ kind: 'stated', ofSheet: false, temperatureAssumed: false });
    expect(sheetWarnings(kind)).toEqual([]);
  });

  test('is not known where the sheet is silent', () => {
    expect(greatestPourOf(sheet({ potLife: 6 * hour }))).toEqual({ kind: 'silent' });
  });

  test('says that its temperature was assumed', () => {
    const stated = { potLife: 6 * hour, greatestDepth: 18 };
    expect(greatestPourOf(sheet(stated))).toMatchObject({ temperature: 20, temperatureAssumed: true, ofSheet: true });
    expect(greatestPourOf(sheet({ ...stated, greatestDepthTemperature: 20 }))).toMatchObject({
      temperatureAssumed: false,
    });
  });

  test('is at war with a pot life that would have to be more than three times as slow, and not below', () => {
    const slowedBy = (potLife: number) => {
      const found = greatestPourOf(sheet({ potLife, greatestDepth: 50, greatestDepthTemperature: 25 }));
      if (found.kind === 'stated') return { kind: found.kind, by: found.anchor.slowedBy };
      return { kind: found.kind, by: found.kind === 'at-war' ? found.slowedBy : undefined };
    };
    expect(slowedBy(12 * hour)).toMatchObject({ kind: 'stated', by: expect.closeTo(2.97, 1) });
    expect(slowedBy(11 * hour)).toMatchObject({ kind: 'at-war', by: expect.closeTo(3.2, 0) });
    expect(mostSlowed).toBe(3);
  });

  test('either figure of a war is followed: the deep pour runs away, a few millimetres are as hot as a sheet allows', () => {
    const war = greatestPourOf(mistyped);
    if (war.kind !== 'at-war') throw new Error(war.kind);
    const { outcome, depthByPotLife, potLifeByDepth } = eitherOf(mistyped, war);
    expect('runsAwayAfter' in outcome && outcome.runsAwayAfter).toBeLessThan(45 * minute);
    expect(depthByPotLife).toBeGreaterThan(3);
    expect(depthByPotLife).toBeLessThan(5);
    expect(potLifeByDepth).toBeGreaterThan(10 * hour);
  });

  test('the warning of a war stands with the sheet, wherever the sheet is used, and names both figures', () => {
    const [warning, ...others] = sheetWarnings(mistyped);
    expect(others).toEqual([]);
    expect(warning).toMatchObject({ id: 'depth-against-pot-life', level: 'danger', own: true });
    expect(words(warning?.text)).toMatch(
      /pot life of 30 min for 100 g at 25 °C, 50 mm at 25 °C runs away \d+ min after/,
    );
    expect(words(warning?.text)).toContain('One of the two figures is wrong');
    expect(words(warning?.why)).toMatch(/about 3[5-9] times slower|about 3[0-4] times slower/);
  });

  test('a sheet without a pot life is held against the kind’s, and asked for its own', () => {
    const [warning] = sheetWarnings(sheet({ greatestDepth: 50 }, { kind: 'fast-coating-1-1' }));
    expect(words(warning?.text)).toContain('the generic kind that stands in');
    expect(words(warning?.text)).toContain('20 °C (assumed: the sheet names no temperature)');
    expect(words(warning?.text)).toContain('Enter the sheet’s own pot life');
  });

  test('a pot life that no resin has starts no war: it has a warning of its own', () => {
    const odd = sheet({ potLife: 5, greatestDepth: 100 });
    expect(kineticsOf(odd).cautions.map(({ id }) => id)).toContain('pot-life-unlikely');
    expect(depthAgainstPotLife(odd)).toEqual([]);
  });

  test('deeper is never less at war', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 30, noNaN: true }),
        fc.double({ min: 2, max: 60, noNaN: true }),
        (hours, depth) => {
          const atWar = (mm: number) =>
            greatestPourOf(sheet({ potLife: hours * hour, greatestDepth: mm, greatestDepthTemperature: 22 })).kind ===
            'at-war';
          return !atWar(depth) || atWar(1.5 * depth);
        },
      ),
      { numRuns: 40 },
    );
  });
});
