import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const calculator: Calculator = pourHeatCalculator;
const casting = { resin: 'slow-casting-2-1' };

function answerTo(raw: Record<string, unknown>): Result {
  const outcome = answer(calculator, { ...casting, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
}
function errorsOf(raw: Record<string, unknown>) {
  const outcome = answer(calculator, { ...casting, ...raw });
  if (outcome.ok) throw new Error('it has an answer');
  return outcome.errors;
}
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;
const words = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);
const caution = ({ cautions }: Result, id: string) => cautions.find((one) => one.id === id);

describe('a channel', () => {
  test('warms far less than the pool, and both are shown', () => {
    const channel = answerTo({ depth: '15 mm', width: '12 mm', shopTemperature: '20 °C' });
    const pool = answerTo({ depth: '15 mm', shopTemperature: '20 °C' });
    expect(value(channel, 'peakRise')).toBeLessThan(value(pool, 'peakRise') / 5);
    expect(value(channel, 'riseAsPool')).toBeCloseTo(value(pool, 'peakRise'), 3);
    expect(value(channel, 'depthAsPool')).toBeCloseTo(19, 3);
    expect(pool.figures.riseAsPool).toBeUndefined();
    expect(words(channel.verdict?.text)).toContain('15 mm in a channel 12 mm wide');
    expect(words(caution(channel, 'channel-cooler')?.text)).toContain('a pool as deep rises by 12 °C');
  });

  test('as wide as a table is a pool', () => {
    const wide = answerTo({ depth: '17 mm', width: '1500 mm', shopTemperature: '20 °C' });
    const pool = answerTo({ depth: '17 mm', shopTemperature: '20 °C' });
    expect(Math.abs(value(wide, 'peakRise') / value(pool, 'peakRise') - 1)).toBeLessThan(0.01);
    expect(caution(wide, 'channel-cooler')).toBeUndefined();
  });

  test('is never allowed more than the sheet’s own depth, though the model goes deeper', () => {
    const at = answerTo({ depth: '19 mm', width: '12 mm', shopTemperature: '20 °C' });
    const over = answerTo({ depth: '19.1 mm', width: '12 mm', shopTemperature: '20 °C' });
    expect(at.verdict?.level).toBe('care');
    expect(over.verdict?.level).toBe('stop');
    for (const result of [at, over]) {
      expect(value(result, 'greatestDepthHere')).toBe(19);
      expect(value(result, 'depthByModel')).toBeGreaterThan(100);
      expect(result.figures.depthByModel?.help).toContain('not to pour');
    }
    expect(value(over, 'layers')).toBe(2);
    expect(words(caution(over, 'channel-cooler')?.text)).toMatch(/^Ask the maker whether 19 mm in a channel/);
  });

  test('that its walls alone keep within the sheet must be nowhere wider', () => {
    const warm = answerTo({ depth: '15 mm', width: '20 mm', shopTemperature: '28 °C' });
    expect(warm.verdict?.level).toBe('care');
    expect(words(warm.verdict?.text)).toContain('nowhere wider than 20 mm');
    expect(caution(warm, 'leans-on-walls')?.level).toBe('warning');
    expect(answerTo({ depth: '15 mm', shopTemperature: '28 °C' }).verdict?.level).toBe('stop');
    const cool = answerTo({ depth: '15 mm', width: '20 mm', shopTemperature: '20 °C' });
    expect(caution(cool, 'leans-on-walls')).toBeUndefined();
  });

  test('comes in layers that each lie within the depth here', () => {
    const result = answerTo({ depth: '45 mm', width: '40 mm', shopTemperature: '24 °C' });
    expect(result.verdict?.level).toBe('stop');
    expect(value(result, 'layerDepth')).toBeLessThanOrEqual(value(result, 'greatestDepthHere') * 1.000001);
    expect(value(result, 'layers') * value(result, 'layerDepth')).toBeCloseTo(45, 6);
  });

  test('shows the temperature across it, falling from the middle into the wood', () => {
    const result = answerTo({ depth: '19 mm', width: '22 mm', shopTemperature: '20 °C' });
    const across = result.series?.find(({ id }) => id === 'temperature-width');
    const line = across?.lines[0]?.values ?? [];
    expect(line.length).toBe(across?.axis.values.length);
    for (const [at, here] of line.entries()) if (at > 0) expect(here).toBeLessThanOrEqual(line[at - 1] as number);
    expect(line.length).toBeGreaterThan(8);
  });

  test('says that the sheet’s depth is taken for a pool, and what stands beside it', () => {
    const note = (base: string) =>
      answerTo({ depth: '10 mm', width: '15 mm', shopTemperature: '20 °C', base }).evidence.find(({ text }) =>
        text.includes('cross-section'),
      )?.text;
    expect(note('hardwood')).toContain('hardwood at both sides');
    expect(note('softwood')).toContain('softwood at both sides');
    // A mould under it is not what stands beside it.
    expect(note('hdpe')).toContain('hardwood at both sides');
    expect(note('hardwood')).toContain('taken for a pool');
  });

  test('without a resin, or with a sheet that is silent, keeps its run and gives no depth', () => {
    const result = answerTo({
      resin: { name: 'Silent', potLife: '6 h' },
      depth: '19 mm',
      width: '12 mm',
      shopTemperature: 20,
    });
    expect(result.verdict?.level).toBe('unknown');
    expect(result.figures.greatestDepthHere).toBeUndefined();
    expect(result.figures.depthAsPool).toBeUndefined();
    expect(value(result, 'riseAsPool')).toBeGreaterThan(value(result, 'peakRise'));
  });

  test.each([
    ['0.4 mm', 'width'],
    ['2.1 m', 'width'],
  ])('%s wide is refused', (width, field) => {
    expect(errorsOf({ depth: '10 mm', width, shopTemperature: '20 °C' })[0]?.field).toBe(field);
  });

  test('any width gives a rise between none and the pool’s', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 2, max: 40, noNaN: true }),
        fc.integer({ min: 8, max: 30 }),
        (width, depth, shop) => {
          const result = answerTo({ depth: `${depth} mm`, width: `${width} mm`, shopTemperature: `${shop} °C` });
          expect(value(result, 'peakRise')).toBeLessThan(1.02 * value(result, 'riseAsPool') + 0.05);
          expect(value(result, 'greatestDepthHere')).toBeLessThanOrEqual(19.0001);
        },
      ),
      { numRuns: 12 },
    );
  });
});

describe('a shop that is cold at night', () => {
  const cold = { dayTemperature: '21 °C', nightTemperature: '12 °C', warmHours: '12 h' };

  test('poured in the cold evening and heated in the morning is stopped, and was inside before', () => {
    const evening = answerTo({ ...cold, depth: '25 mm', pouredAfter: '12 h' });
    expect(evening.verdict?.level).toBe('stop');
    // 12 °C, heated to 21 °C after twelve hours: 88 °C by a second model.
    expect(Math.abs(value(evening, 'peakRise') + 21 - 88)).toBeLessThan(1);
    const kept = answerTo({ depth: '25 mm', shopTemperature: '12 °C' });
    expect(Math.abs(value(kept, 'peakRise') + 12 - 24)).toBeLessThan(0.6);
  });

  test('without an hour the worst is taken, and every hour is shown', () => {
    const worst = answerTo({ ...cold, depth: '18 mm' });
    const hours = worst.tables?.find(({ id }) => id === 'hours');
    const rises = hours?.rows.map(([, rise]) => (typeof rise === 'number' ? rise : 999)) ?? [];
    expect(Math.abs(value(worst, 'peakRise') / Math.max(...rises) - 1)).toBeLessThan(0.02);
    expect(rises.length).toBeGreaterThanOrEqual(8);
    expect(caution(worst, 'worst-hour')).toBeDefined();
  });

  test('a given hour that is harmless warns of the one that is not', () => {
    const given = answerTo({ ...cold, warmHours: '10 h', depth: '18.5 mm', pouredAfter: '6 h' });
    expect(given.verdict?.level).toBe('care');
    expect(words(given.verdict?.text)).toContain('the hour counts');
    const warning = caution(given, 'another-hour-hotter');
    expect(['warning', 'danger']).toContain(warning?.level);
    expect(words(warning?.text)).toMatch(/^Pour it 6 h after the heating comes on and at no other hour/);
    // Where every hour is inside, none is warned of.
    expect(caution(answerTo({ ...cold, depth: '10 mm', pouredAfter: '6 h' }), 'another-hour-hotter')).toBeUndefined();
  });

  test('without an hour allows no more depth than the warm shop throughout, nor less', () => {
    for (const width of [undefined, '30 mm']) {
      const daily = answerTo({ ...cold, depth: '8 mm', ...(width ? { width } : {}) });
      const warm = answerTo({ shopTemperature: '21 °C', depth: '8 mm', ...(width ? { width } : {}) });
      expect(value(daily, 'greatestDepthHere')).toBeCloseTo(value(warm, 'greatestDepthHere'), 6);
    }
  });

  test('layers of a pour at a given hour each bear the warmth of the day', () => {
    const result = answerTo({
      dayTemperature: '28 °C',
      nightTemperature: '12 °C',
      depth: '36 mm',
      pouredAfter: '9 h',
      warmHours: '10 h',
    });
    const warm = answerTo({ shopTemperature: '28 °C', depth: '36 mm' });
    expect(value(result, 'layerDepth')).toBeCloseTo(value(warm, 'layerDepth'), 6);
  });

  test('shows the air beside the resin', () => {
    const result = answerTo({ ...cold, depth: '12 mm', pouredAfter: '12 h' });
    const time = result.series?.find(({ id }) => id === 'temperature-time');
    const air = time?.lines.find(({ id }) => id === 'air')?.values ?? [];
    expect(new Set(air)).toEqual(new Set([12, 21]));
    expect(words(result.verdict?.text)).toContain('12 °C by night and 21 °C by day');
  });

  test.each([
    [
      { shopTemperature: '20 °C', dayTemperature: '21 °C', nightTemperature: '12 °C' },
      'dayTemperature',
      'one of them is enough',
    ],
    [{ dayTemperature: '21 °C' }, 'nightTemperature', 'say nothing without each other'],
    [{ nightTemperature: '12 °C' }, 'dayTemperature', 'say nothing without each other'],
    [{ warmHours: '8 h' }, 'shopTemperature', 'or that of day and night'],
    [{}, 'shopTemperature', 'Nothing was said'],
  ])('%j is refused at %s', (given, field, message) => {
    expect(errorsOf({ depth: '10 mm', ...given })).toEqual([{ field, message: expect.stringContaining(message) }]);
  });

  test('day and night alike is an even shop', () => {
    const daily = answerTo({ depth: '15 mm', dayTemperature: '20 °C', nightTemperature: '20 °C' });
    const even = answerTo({ depth: '15 mm', shopTemperature: '20 °C' });
    expect(Math.abs(value(daily, 'peakRise') / value(even, 'peakRise') - 1)).toBeLessThan(0.01);
    expect(value(daily, 'greatestDepthHere')).toBeCloseTo(value(even, 'greatestDepthHere'), 6);
  });
});
