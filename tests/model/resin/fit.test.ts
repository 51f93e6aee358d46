import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { cupOf, runCup } from '../../../src/model/resin/cup.ts';
import { fitRate, kineticsOf, type PotLife } from '../../../src/model/resin/fit.ts';
import { resinOf } from '../../../src/model/resin/kinds.ts';
import { classKinetics, classThermal } from '../../../src/model/resin/kinetics.ts';
import { layResinSheet } from '../../../src/model/resin/resin.ts';
import type { Resin, ResinFigureName } from '../../../src/model/resin/types.ts';

const stated: PotLife = {
  potLife: 1800,
  mass: 100,
  temperature: 25,
  means: 'gel',
  kinetics: classKinetics.fast,
  thermal: classThermal,
};
const rateOf = (more: Partial<PotLife>) => {
  const outcome = fitRate({ ...stated, ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value;
};
const sheet = (figures: Partial<Record<ResinFigureName, number>>, more: object = {}): Resin =>
  layResinSheet({ name: 'Sheet', figures, ...more });

describe('rate fitted to a pot life', () => {
  test.each([
    ['fast', 1800],
    ['slow', 21_600],
  ] as const)('gives back the %s class from %d s', (name, potLife) => {
    const rate = rateOf({ potLife, kinetics: classKinetics[name] });
    expect(Math.abs(rate / classKinetics[name].k2At25C - 1)).toBeLessThan(0.01);
  });

  test('makes the cup do what the sheet says, whatever it says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(300), max: Math.log(10 * 86_400), noNaN: true }),
        fc.double({ min: 5, max: 5000, noNaN: true }),
        fc.double({ min: 10, max: 40, noNaN: true }),
        fc.constantFrom('gel' as const, 'usable' as const),
        fc.constantFrom('fast' as const, 'slow' as const),
        (log, mass, temperature, means, name) => {
          const potLife = Math.exp(log);
          const kinetics = classKinetics[name];
          const rate = rateOf({ potLife, mass, temperature, means, kinetics });
          const run = runCup(cupOf(mass, classThermal), { ...kinetics, k2At25C: rate }, { air: temperature });
          expect(Math.abs(((means === 'gel' ? run?.gel : run?.work) ?? 0) / potLife - 1)).toBeLessThan(1e-3);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('is lower where the pot life is longer, where it was said of a warmer cup, and where it means the gel', () => {
    expect(rateOf({ potLife: 3600 })).toBeLessThan(rateOf({}));
    expect(rateOf({ temperature: 30 })).toBeLessThan(rateOf({}));
    expect(rateOf({ means: 'gel' })).toBeGreaterThan(rateOf({ means: 'usable' }));
  });

  test.each([0.5, 1e9])('a pot life of %d s is refused at its field', (potLife) => {
    const outcome = fitRate({ ...stated, potLife });
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.errors[0]?.field).toBe('potLife');
  });
});

describe('kinetics of a resin', () => {
  test('a generic kind keeps the published energy and has the rate of its pot life', () => {
    const { kinetics, cautions } = kineticsOf(resinOf('fast-coating-1-1') as Resin);
    expect(kinetics.activationEnergy).toBe(58_600);
    expect(Math.abs(kinetics.k2At25C / 6.2186e-4 - 1)).toBeLessThan(0.01);
    expect(cautions).toEqual([]);
  });

  test('a sheet with one pot life takes 55 ± 8 kJ/mol and says that it is assumed', () => {
    const { kinetics, energyBand, evidence } = kineticsOf(
      sheet({ potLife: 2400, potLifeMass: 150, potLifeTemperature: 22 }),
    );
    expect(kinetics.activationEnergy).toBe(55_000);
    expect(energyBand).toBe(8000);
    expect(evidence.some(({ text, basis }) => text.includes('55 ± 8') && basis === 'memory')).toBe(true);
    expect(
      evidence.some(
        ({ text, basis }) => inReaderUnits(text, defaultUnits).includes('40 min') && basis === 'supplier-sheet',
      ),
    ).toBe(true);
  });

  test('a second pot life fixes the energy: one made with 50 kJ/mol is found again', () => {
    const made = { ...classKinetics.fast, k2At25C: 3e-4, activationEnergy: 50_000 };
    const cup = cupOf(200, classThermal);
    const lasts = (air: number) => runCup(cup, made, { air })?.gel ?? Number.NaN;
    const { kinetics } = kineticsOf(
      sheet(
        {
          potLife: lasts(25),
          potLifeMass: 200,
          potLifeTemperature: 25,
          secondPotLife: lasts(18),
          secondPotLifeTemperature: 18,
        },
        { kind: 'fast-coating-1-1' },
      ),
    );
    expect(Math.abs(kinetics.activationEnergy / 50_000 - 1)).toBeLessThan(0.01);
    expect(Math.abs(kinetics.k2At25C / 3e-4 - 1)).toBeLessThan(0.01);
  });

  test('a second pot life that goes with no energy is left aside and warned of', () => {
    const resin = sheet({
      potLife: 1800,
      potLifeMass: 100,
      potLifeTemperature: 25,
      secondPotLife: 1900,
      secondPotLifeTemperature: 15,
    });
    const { cautions, kinetics } = kineticsOf(resin);
    expect(cautions.map(({ id }) => id)).toEqual(['second-pot-life-unlikely']);
    expect(kinetics.activationEnergy).toBe(55_000);
  });

  test('twice the pot life is a slower rate, and the same question has the same answer', () => {
    const short = sheet({ potLife: 3600 });
    const long = sheet({ potLife: 7200 });
    expect(kineticsOf(long).kinetics.k2At25C).toBeLessThan(kineticsOf(short).kinetics.k2At25C);
    expect(kineticsOf(sheet({ potLife: 3600 }))).toBe(kineticsOf(short));
  });

  test('a resin of which no pot life is known stands for its class', () => {
    const kind = resinOf('slow-casting-2-1') as Resin;
    const { kinetics, evidence } = kineticsOf({ ...kind, figures: { ...kind.figures, potLife: null } });
    expect(kinetics).toEqual(classKinetics.slow);
    expect(evidence[0]?.basis).toBe('memory');
  });
});
