import { describe, expect, test } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { referencePours } from '../../src/model/resin/reference-pours.ts';

const calculator: Calculator = pourHeatCalculator;

function answerTo(raw: Record<string, unknown>): Result {
  const outcome = answer(calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
}
function errorsOf(raw: Record<string, unknown>) {
  const outcome = answer(calculator, raw);
  if (outcome.ok) throw new Error('it has an answer');
  return outcome.errors;
}
const value = (result: Result, name: string) => {
  const figure = result.figures[name];
  if (!figure) throw new Error(`no ${name} among ${Object.keys(result.figures).join(', ')}`);
  return figure.value;
};
const cautionIds = ({ cautions }: Result) => cautions.map(({ id }) => id);

/** Everything that an expert may give, of a pour of the fast class set over 20 mm of hardwood; bare numbers in SI units. */
const expert = {
  k2At25C: 6.2186e-4,
  activationEnergy: 58_600,
  k1OverK2: 0.03,
  m: 1,
  n: 2,
  heatOfReaction: 400_000,
  density: 1100,
  heatCapacity: 2000,
  conductivity: 0.18,
  baseThickness: 20,
  baseDensity: 650,
  baseHeatCapacity: 1650,
  baseConductivity: 0.15,
  filmTop: 10,
  filmBottom: 5,
};
const slow = { ...expert, k2At25C: 9.7521e-5, heatOfReaction: 350_000 };
const casting = { resin: 'slow-casting-2-1' };

/** The thinnest and the deepest pour of each resin in each shop; the forty are run among the published values. */
const outermost = referencePours.filter(([kinetics, depth]) => {
  const depths = referencePours.filter(([other]) => other === kinetics).map(([, each]) => each);
  return depth === Math.min(...depths) || depth === Math.max(...depths);
});

describe('with every figure given and no resin', () => {
  test.each(outermost.filter(([, , , peak]) => peak <= 120))(
    '%s, %d mm, %d °C is within 2 %% of the other program',
    (kinetics, depth, shop, peak, timeToPeak, timeToWork, firstGel, lastGel) => {
      const result = answerTo({
        ...(kinetics === 'fast' ? expert : slow),
        depth,
        shopTemperature: shop,
        resinTemperature: shop,
      });
      const near = (name: string, theirs: number, half: number) =>
        expect(Math.abs(value(result, name) - theirs), name).toBeLessThanOrEqual(0.02 * theirs + half);
      near('peakRise', peak - shop, 0.05);
      near('timeToPeak', 60 * timeToPeak, 3);
      near('timeToWork', 60 * timeToWork, 3);
      near('timeToFirstGel', 60 * firstGel, 3);
      near('timeToLastGel', 60 * lastGel, 3);
    },
  );

  test.each(outermost.filter(([, , , peak]) => peak > 120))(
    '%s, %d mm, %d °C is called a runaway',
    (kinetics, depth, shop) => {
      const result = answerTo({ ...(kinetics === 'fast' ? expert : slow), depth, shopTemperature: shop });
      expect(result.cautions[0]).toMatchObject({ id: 'pour-runaway', level: 'danger' });
      expect(result.cautions[0]?.text).toMatch(/^Runaway/);
      // No number for the peak: only that it is beyond the stop.
      expect(result.figures.peakRise).toMatchObject({ value: 120 - shop, low: 120 - shop });
      expect(result.figures.peakRise?.high).toBeUndefined();
      expect(result.figures.peakRise?.note).toContain('Runaway: more than that');
      for (const series of result.series ?? [])
        for (const line of series.lines) expect(Math.max(...line.values)).toBeLessThanOrEqual(120);
    },
  );

  test('says that no index can be given, and gives no band to figures that are all the reader’s own', () => {
    const result = answerTo({ ...expert, depth: 3, shopTemperature: 20 });
    expect(cautionIds(result)).toContain('no-index');
    expect(result.figures.heatIndex).toBeUndefined();
    expect(result.figures.peakRise?.low).toBeUndefined();
  });

  test('reads energies in kJ/mol and heats in J/g without a unit', () => {
    const result = answerTo({ ...expert, activationEnergy: 58.6, heatOfReaction: 400, depth: 3, shopTemperature: 25 });
    expect(value(result, 'peakRise')).toBe(value(answerTo({ ...expert, depth: 3, shopTemperature: 25 }), 'peakRise'));
  });

  test('asks for a resin or a rate where it has neither', () => {
    expect(errorsOf({ depth: '20 mm', shopTemperature: '20 °C' })).toEqual([
      { field: 'resin', message: expect.stringContaining('k2At25C') },
    ]);
  });

  test('the most that the heat could give is heat over heat capacity', () => {
    expect(value(answerTo({ ...expert, depth: 3, shopTemperature: 25 }), 'ceiling')).toBe(200);
  });
});

describe('with a resin', () => {
  test('the kind’s own greatest pour has a heat index of 1 and needs no layers', () => {
    const result = answerTo({ ...casting, depth: '19 mm', shopTemperature: '20 °C' });
    expect(value(result, 'heatIndex')).toBeCloseTo(1, 6);
    expect(value(result, 'greatestDepthHere')).toBeCloseTo(19, 6);
    expect(result.figures.layers).toBeUndefined();
    expect(cautionIds(result)).not.toContain('pour-outside');
  });

  test('what stands proud of the face is part of the depth', () => {
    const deep = (raw: Record<string, string>) => answerTo({ ...casting, shopTemperature: '20 °C', ...raw });
    const [proud, level] = [
      deep({ depth: '6 mm', proud: '0.6 mm', width: '18 mm' }),
      deep({ depth: '6.6 mm', width: '18 mm' }),
    ];
    expect(proud.figures).toEqual(level.figures);
    expect(value(proud, 'peakRise')).toBeGreaterThan(value(deep({ depth: '6 mm', width: '18 mm' }), 'peakRise'));
  });

  test('a little deeper lies outside the sheet; much deeper is to be expected to run away, and comes in layers', () => {
    const outside = answerTo({ ...casting, depth: '20 mm', shopTemperature: '20 °C' });
    expect(cautionIds(outside)[0]).toBe('pour-outside');
    expect(value(outside, 'layers')).toBe(2);
    const runaway = answerTo({ ...casting, depth: '24 mm', shopTemperature: '20 °C' });
    expect(value(runaway, 'heatIndex')).toBeGreaterThan(1.6);
    expect(runaway.cautions[0]).toMatchObject({ id: 'pour-expect-runaway', level: 'danger' });
  });

  test('a depth of several layers is split evenly, each inside, with the wait of the recoat window', () => {
    const result = answerTo({ ...casting, depth: '45 mm', shopTemperature: '20 °C' });
    expect([value(result, 'layers'), value(result, 'layerDepth')]).toEqual([3, 15]);
    // 20 to 48 h at 22 °C, carried over to 20 °C as the cure clock does.
    const clock = answer(cureClockCalculator, { resin: casting.resin, shopTemperature: '20 °C' });
    if (!clock.ok) throw new Error('clock');
    const { recoatOpens, recoatCloses } = clock.value.result.figures;
    const [opens, closes] = [recoatOpens?.value ?? 0, recoatCloses?.value ?? 0];
    expect(opens / 3600).toBeCloseTo(23.5, 1);
    expect(value(result, 'waitBetween')).toBe(opens);
    const [plan] = result.tables ?? [];
    expect(plan?.rows.map(([, , filled, from, to]) => [filled, from, to])).toEqual([
      [15, null, null],
      [30, opens, closes],
      [45, 2 * opens, opens + closes],
    ]);
  });

  test('the greatest depth falls as the shop grows warmer, near to the depth rule', () => {
    for (const shop of [20, 25, 30]) {
      const result = answerTo({ ...casting, depth: '10 mm', shopTemperature: shop });
      expect(Math.abs(value(result, 'greatestDepthHere') / value(result, 'depthByRule') - 1)).toBeLessThan(0.1);
    }
  });

  test('in a colder shop it stays at the kind’s own; the rest is by the model, and the rule is not asked', () => {
    const { figures } = answerTo({ ...casting, depth: '10 mm', shopTemperature: 15 });
    expect(figures.greatestDepthHere?.value).toBe(19);
    expect(figures.depthByModel?.value).toBeGreaterThan(24);
    expect(figures.depthByModel?.basis).toBe('memory');
    expect(figures.depthByRule).toBeUndefined();
  });

  test('heat build-up comes first among the cautions, and the label of the estimate is there', () => {
    const { cautions } = answerTo(calculator.example.metric);
    expect(cautions[0]?.level).toBe('danger');
    expect(cautions.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['deep-pour', 'resin-cup-heat', 'pour-estimate']),
    );
    expect(cautions.find(({ id }) => id === 'pour-estimate')?.text).toContain('Follow the data sheet where it differs');
  });

  test('no peak temperature is among the figures', () => {
    for (const figure of Object.values(answerTo(calculator.example.metric).figures))
      expect(figure.unit).not.toBe('Cel');
  });

  test('a cover over the pour makes the depth smaller, moving air greater', () => {
    const depthIn = (air: string) =>
      value(answerTo({ ...casting, depth: '10 mm', shopTemperature: 26, air }), 'greatestDepthHere');
    expect(depthIn('covered')).toBeLessThan(depthIn('still'));
    expect(depthIn('moving')).toBeGreaterThan(depthIn('still'));
  });

  test('no base goes with no figure of a base', () => {
    expect(answerTo({ ...casting, depth: 10, shopTemperature: 20, base: 'none' }).figures.heatIndex).toBeDefined();
    expect(errorsOf({ ...casting, depth: 10, shopTemperature: 20, base: 'none', baseDensity: 500 })[0]?.field).toBe(
      'baseDensity',
    );
  });

  test('resin poured warmer than its own pour may grow has no greatest depth', () => {
    const result = answerTo({ ...casting, depth: 10, shopTemperature: 15, resinTemperature: 55 });
    expect(result.figures.greatestDepthHere).toBeUndefined();
    expect(result.cautions.map(({ text }) => text).join(' ')).toContain('let it cool before it is mixed');
  });
});

describe('with a data sheet', () => {
  const sheet = (figures: Record<string, string>) => ({ resin: JSON.stringify({ name: 'Lakeside deep', ...figures }) });
  const deep = sheet({ potLife: '12 h', greatestDepth: '50 mm', greatestDepthTemperature: '25 °C' });

  test('whose pot life would run away at its own depth, the sheet wins and says so', () => {
    const result = answerTo({ ...deep, depth: '50 mm', shopTemperature: '25 °C' });
    expect(value(result, 'heatIndex')).toBeCloseTo(1, 6);
    expect(cautionIds(result)).toContain('sheet-against-itself');
    // Work by the shorter end: what the pot life alone would leave.
    expect(result.figures.timeToWork?.low as number).toBeLessThan(0.6 * value(result, 'timeToWork'));
  });

  test('its own depth is never overstepped, however cold the shop', () => {
    const result = answerTo({ ...deep, depth: '60 mm', shopTemperature: '15 °C' });
    expect(value(result, 'heatIndex')).toBeLessThan(1);
    expect(value(result, 'greatestDepthHere')).toBe(50);
    expect(cautionIds(result)).toContain('deeper-than-sheet');
    expect(value(result, 'layers')).toBe(2);
  });

  test('silent on depth has no index, and the page says what to ask', () => {
    const result = answerTo({ ...sheet({ potLife: '6 h' }), depth: '20 mm', shopTemperature: '20 °C' });
    expect(result.figures.heatIndex).toBeUndefined();
    expect(cautionIds(result)).toContain('no-sheet-depth');
    expect(value(result, 'peakRise')).toBeGreaterThan(5);
  });

  test('with kinetics of the reader’s own that run away at its depth has no index', () => {
    const result = answerTo({ ...deep, k2At25C: 6e-4, depth: '10 mm', shopTemperature: '25 °C' });
    expect(result.figures.heatIndex).toBeUndefined();
    expect(cautionIds(result)).toContain('no-yardstick');
  });
});
