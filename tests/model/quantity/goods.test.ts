import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseGoods } from '../../../src/model/quantity/index.ts';

describe('an amount of goods is read in the unit that it was typed in', () => {
  test.each([
    ['5 L', 5, 'L'],
    ['750 ml', 750, 'mL'],
    ['1 gal', 1, '[gal_us]'],
    ['2.5 kg', 2.5, 'kg'],
    ['2 lb 3 oz', 35, '[oz_av]'],
    ['12 bd ft', 12, '[bf_i]'],
    ['1.5 m²', 1.5, 'm2'],
    ['8 ft', 8, '[ft_i]'],
    ['3 kWh', 3, 'kW.h'],
    ['50', 50, '{count}'],
    ['50 pieces', 50, '{count}'],
    ['12 pcs', 12, '{count}'],
  ])('%s', (text, value, unit) => {
    expect(parseGoods(text)).toEqual({ ok: true, value, unit });
  });

  test.each([
    ['5 litrs', /“5 litrs” is no amount of goods/],
    ['2.5', /“2.5” has no unit, and is no whole number of things/],
    ['½', /has no unit/],
    ['1e3', /has no unit/],
    ['', /is no amount of goods/],
    ['twenty', /is no amount of goods/],
    ['20 °C', /is no amount of goods/],
    ['__proto__', /is no amount of goods/],
  ])('%s is refused with a way out', (text, problem) => {
    const read = parseGoods(text);
    expect(read.ok ? '' : read.problem).toMatch(problem);
    expect(read.ok ? '' : read.wayOut).toMatch(/such as 5 L/);
  });

  test('whatever is typed, it is a finite number or a refusal', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^[-+]?\d{0,20}[.,]?\d{0,5} ?(L|kg|g|bd ft|m²|in)?$/)),
        (text) => {
          const read = parseGoods(text);
          expect(read.ok ? Number.isFinite(read.value) : read.problem !== '').toBe(true);
        },
      ),
    );
  });
});
