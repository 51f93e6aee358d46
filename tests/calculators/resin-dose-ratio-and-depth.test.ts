import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { resinSheetForm } from '../../src/calculators/kit/resin-sheet.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { inReaderUnits } from '../../src/model/quantity/index.ts';
import { resinKindIds } from '../../src/model/resin/kinds.ts';
import { caution, doses, ids, metric, own, type Raw, result, value, verdict } from './resin-dose-cases.ts';

describe('the mix ratio', () => {
  const sheet = resinSheetForm.example.metric;
  const dose = (resin: object, more: Raw = {}) =>
    result({
      resin: JSON.stringify(resin),
      mass: '300 g',
      depth: 10,
      shopTemperature: 20,
      scaleDivision: 0.1,
      ...more,
    });

  test('of a sheet carried in the address is used, and nothing stands in the way', () => {
    const given = dose(sheet);
    expect(value(given, 'weightRatio')).toBeCloseTo(43, 9);
    expect(given.figures.massA?.basis).toBe('supplier-sheet');
    expect(verdict(given)).toEqual({ level: 'good', text: 'Mix 300 g: 209.8 g of A and 90.2 g of B, in three cups.' });
  });

  test.each([
    ['a name only', { name: 'Nothing known' }],
    ['all but the ratio', { ...sheet, mixByVolume: undefined, mixByWeight: undefined }],
  ])('of a sheet with %s is not known: no dose', (_, resin) => {
    const given = dose(resin);
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringMatching(/^Your sheet names no mix ratio\./),
    });
    expect(doses(given)).toBe(false);
    expect(JSON.stringify(given.evidence)).not.toContain('mix ratio is that of');
    // With the ratio off the bottle there is one.
    expect(
      doses(dose(resin, { mixRatio: '2:1', mixRatioBy: 'volume', cupMass: '100 g', greatestDepth: '15 mm' })),
    ).toBe(true);
  });

  // By hand: 2 ml to 1 ml are 100 : 43.1 by weight. Of 100 g 43.1/1.431 = 30.1 g are hardener, and 60/1.6 = 37.5 g.
  test('stated twice, 28 % apart: no dose, and what each would give', () => {
    const given = dose({ ...sheet, mixByWeight: '100:60' });
    expect(verdict(given)).toEqual({
      level: 'stop',
      text: 'The two ratios of this sheet differ by 28 %: of 100 g of mix the one by volume makes 30.1 g hardener, the one by weight 37.5 g. Ask the maker before you mix.',
    });
    expect(doses(given)).toBe(false);
  });

  test.each([
    ['100:43', 'good', false],
    ['100:44.5', 'care', true],
    ['100:46', 'stop', true],
  ])('%s beside 2:1 by volume is %s', (mixByWeight, level, said) => {
    const given = dose({ ...sheet, mixByWeight });
    expect(given.verdict?.level).toBe(level);
    expect(ids(given).includes('ratios-disagree')).toBe(said);
    expect(doses(given)).toBe(level !== 'stop');
  });

  test('of the reader’s own may settle which of two is right, and may not be a third', () => {
    const torn = { ...sheet, mixByWeight: '100:60' };
    expect(dose(torn, { mixRatio: '2:1', mixRatioBy: 'volume' }).verdict?.level).toBe('care');
    expect(dose(torn, { mixRatio: '100:60', mixRatioBy: 'weight' }).verdict?.level).toBe('care');
    const third = dose(torn, { mixRatio: '3:1', mixRatioBy: 'volume' });
    expect(verdict(third)).toMatchObject({
      level: 'stop',
      text: expect.stringContaining('Your own mix ratio differs'),
    });
    expect(doses(third)).toBe(false);
  });

  test('of a generic kind is called so', () => {
    const given = result({ resin: 'slow-casting-2-1', mass: '300 g', depth: 10, shopTemperature: 20 });
    expect(verdict(given)).toMatchObject({
      level: 'care',
      text: expect.stringContaining('The ratio is that of a generic kind'),
    });
    expect(JSON.stringify(given.evidence)).toContain('a generic kind, slow casting epoxy');
    const typed = { mixRatio: '2:1', mixRatioBy: 'volume' };
    expect(ids(result({ resin: 'slow-casting-2-1', mass: '300 g', depth: 10, ...typed }))).not.toContain(
      'ratio-of-a-kind',
    );
  });

  // By hand: 100:43 by volume is 100 : 37.1 by weight, 14 % less hardener: 27.0 g of 100 g instead of 30.1 g.
  test.each([{}, { measureBy: 'volume' }, { measureBy: 'weight' }])(
    'typed without saying what it is by gets no dose, measured as %j',
    (measured) => {
      const fine = { scaleDivision: '0.1 g' };
      const typed = { resin: 'slow-casting-2-1', mass: '485 g', depth: 10, shopTemperature: 20, mixRatio: '100:43' };
      const asked = result({ ...typed, ...measured });
      expect(verdict(asked)).toMatchObject({
        level: 'unknown',
        text: expect.stringMatching(
          /^Is 100:43 by weight or by volume\? Choose it.* 30\.1 g hardener, the other 2\d\.\d g\.$/,
        ),
      });
      expect(doses(asked)).toBe(false);
      expect(asked.documents ?? []).toEqual([]);
      for (const mixRatioBy of ['weight', 'volume'])
        expect(doses(result({ ...typed, ...measured, ...fine, volumeDivision: '0.5 ml', mixRatioBy }))).toBe(true);
    },
  );

  test('typed without saying what it is by gets a dose where both come to one mix', () => {
    const { mixRatioBy: _, ...unsaid } = { ...own, mass: '300 g', densityA: '1.16' };
    expect(doses(result({ ...unsaid, densityB: '1.15' }))).toBe(true);
    expect(doses(result({ ...unsaid, densityB: '1.10' }))).toBe(false);
  });

  test.each([{}, { resin: 'slow-casting-2-1', shopTemperature: 20 }])(
    'with more hardener than resin gets no dose beside %j: bottles are lettered either way',
    (beside) => {
      for (const mixRatioBy of [undefined, 'weight', 'volume']) {
        const given = result({ ...own, ...beside, mass: '300 g', depth: 3, mixRatio: '1:2', mixRatioBy });
        expect(verdict(given)).toMatchObject({
          level: 'stop',
          text: expect.stringMatching(/^1:2 is more hardener than resin.*lettered the other way round/),
        });
        expect(doses(given)).toBe(false);
      }
      // Equal parts by volume are a coating epoxy's, by weight there may be a little more of a heavy hardener.
      for (const mixRatio of ['1:1', '2:1'])
        expect(doses(result({ ...own, ...beside, mass: '300 g', depth: 3, mixRatio }))).toBe(true);
    },
  );

  test('with more hardener than resin on a sheet of the reader’s own is a danger that is said', () => {
    const given = dose({ ...sheet, mixByVolume: '1:2', mixByWeight: undefined });
    expect(caution(given, 'more-hardener-than-resin')).toMatchObject({ level: 'danger', own: true });
    expect(given.verdict?.level).toBe('care');
    expect(doses(given)).toBe(true);
  });

  test('weighed by densities that nobody stated is to be minded', () => {
    const { densityA: _, densityB: __, mixByWeight: ___, ...bare } = sheet;
    expect(ids(dose(bare))).toContain('densities-assumed');
    expect(ids(dose(bare, { densityA: '1.16', densityB: '1' }))).not.toContain('densities-assumed');
    expect(ids(dose(bare, { measureBy: 'volume', volumeDivision: '0.5 ml' }))).not.toContain('densities-assumed');
  });

  // Common practice, no source: a coating epoxy of this kind is mixed in equal parts by volume.
  test('the generic 1:1 coating epoxy takes equal volumes (common practice)', () => {
    const given = result({
      resin: 'fast-coating-1-1',
      volume: '160 ml',
      depth: 3,
      measureBy: 'volume',
      volumeDivision: '1 ml',
    });
    expect(value(given, 'volumeA')).toBeCloseTo(80, 9);
    expect(value(given, 'volumeB')).toBeCloseTo(80, 9);
  });
});

describe('the depth of one pour', () => {
  const shapes = 'rectangle, 300, 200';
  const silent = {
    name: 'Silent',
    mixByVolume: '2:1',
    densityA: '1.16',
    densityB: '1',
    potLife: '6 h',
    potLifeMass: '100 g',
  };

  test.each([
    ['an own ratio', own],
    ['a sheet with a pot life and no depth', { resin: JSON.stringify(silent) }],
    [
      'a sheet with neither, over a kind that has both',
      { resin: { name: 'Silent', mixByVolume: '2:1' }, cupMass: 100 },
    ],
  ])('is not known of %s: no dose of 80 mm', (_, raw) => {
    const given = result({ ...raw, shapes, depth: '80 mm' });
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringContaining('No greatest depth of one pour is known'),
    });
    expect(doses(given)).toBe(false);
    // A coat needs no plan, and a depth from the maker gives one.
    expect(doses(result({ ...raw, shapes, depth: '3 mm', scaleDivision: 0.1 }))).toBe(true);
    const known = result({ ...raw, shapes, depth: '20 mm', greatestDepth: '10 mm', scaleDivision: 0.1 });
    expect(value(known, 'layers')).toBe(2);
  });

  test.each([['volume'], ['water']])('and how deep a %s fills must be said', (from) => {
    const given = result({ resin: 'slow-casting-2-1', [from]: '500 ml' });
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringContaining('How deep it is was not given'),
    });
    expect(doses(given)).toBe(false);
    expect(value(given, 'fillVolume')).toBe(500);
  });

  test('an amount of mix is dosed without one, and that is said', () => {
    expect(caution(result({ ...own, mass: '300 g' }), 'no-depth')?.text).toContain('up to 3 mm is a coat');
    expect(caution(result({ resin: 'slow-casting-2-1', mass: '300 g' }), 'no-depth')?.text).toContain(
      'no layer of it deeper than 19 mm',
    );
  });

  test('follows the shop where it is warmer, as the heat of a pour does, and is never more where it is colder', () => {
    const dose = (shopTemperature: string) =>
      result({
        resin: 'slow-casting-2-1',
        shapes: 'channel, 400, 80',
        depth: '19 mm',
        shopTemperature,
        scaleDivision: 0.1,
      });
    expect(value(dose('20 °C'), 'layers')).toBe(1);
    expect(value(dose('8 °C'), 'layers')).toBe(1);
    const warm = dose('30 °C');
    expect(value(warm, 'layers')).toBe(2);
    expect(caution(warm, 'hotter-shop')?.text).toBe(
      'At 30 °C this resin bears 10 mm in one pour, not the 19 mm of 20 °C.',
    );
    const pour = answer(pourHeatCalculator, {
      resin: 'slow-casting-2-1',
      depth: '19 mm',
      shopTemperature: '30 °C',
      base: 'hardwood',
    });
    if (!pour.ok) throw new Error('no answer');
    expect(pour.value.result.figures.layers?.value).toBe(2);
    expect(pour.value.result.figures.greatestDepthHere?.value).toBeCloseTo(10.89, 1);
  });

  test('too near to the greatest to tell them apart in inches is told in thousandths', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 400, 80', depth: '3/4 in', layers: 1 });
    const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
    expect(inReaderUnits(given.verdict?.text ?? '', inch)).toMatch(
      /^A layer of 0\.75 in is deeper than the 0\.748 in that/,
    );
  });

  test('plans as many layers as the heat of a pour does, whatever the shop', () => {
    const sheet = { ...silent, greatestDepth: '20 mm', greatestDepthTemperature: '20 °C' };
    const resin = fc.constantFrom(...resinKindIds, JSON.stringify(sheet));
    fc.assert(
      fc.property(resin, fc.integer({ min: 5, max: 35 }), fc.integer({ min: 4, max: 40 }), (of, shop, depth) => {
        const shared = { resin: of, depth: `${depth} mm`, shopTemperature: `${shop} °C` };
        const pour = answer(pourHeatCalculator, { ...shared, base: 'hardwood', air: 'still' });
        if (!pour.ok) throw new Error('no answer');
        const dose = result({ ...shared, shapes: 'channel, 400, 80', scaleDivision: '0.01 g' });
        const layers = pour.value.result.figures.layers?.value ?? 1;
        // A depth that just fills its layers may fall to either side of the model's own grid.
        const edge = depth / (pour.value.result.figures.greatestDepthHere?.value ?? depth);
        if (Math.abs(edge - Math.round(edge)) > 0.03) expect(value(dose, 'layers')).toBe(layers);
      }),
      { numRuns: 40 },
    );
  });

  test('says what temperature was taken where none was given', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 400, 80', depth: '12 mm', scaleDivision: 0.1 });
    expect(caution(given, 'temperature-assumed')?.text).toMatch(/^Taken: a shop of 20 °C/);
    expect(metric(given.figures.layers?.note)).toContain('at 20 °C (assumed)');
    const sheet = JSON.stringify({ ...silent, greatestDepth: '20 mm' });
    const assumed = result({ resin: sheet, shapes: 'channel, 400, 80', depth: '12 mm', scaleDivision: 0.1 });
    expect(caution(assumed, 'temperature-assumed')?.text).toContain('(assumed: the sheet names no temperature)');
  });

  test('at war with the pot life of its sheet gives no dose', () => {
    const torn = { ...silent, potLife: '30 min', greatestDepth: '50 mm', greatestDepthTemperature: '25 °C' };
    const given = result({ resin: JSON.stringify(torn), shapes, depth: '40 mm' });
    expect(verdict(given)).toMatchObject({ level: 'unknown', text: expect.stringContaining('cannot both be right') });
    expect(ids(given)).toContain('depth-against-pot-life');
    expect(doses(given)).toBe(false);
  });

  test('is kept beside the greatest volume and mass of one pour, piece by piece', () => {
    const sheet = { ...silent, greatestDepth: '20 mm', greatestDepthTemperature: '20 °C', greatestVolume: '200 ml' };
    const dose = (list: string) =>
      value(result({ resin: JSON.stringify(sheet), shapes: list, depth: '10 mm', scaleDivision: 0.1 }), 'layers');
    // 300 × 100 × 10 mm are 300 ml; two of half that are 150 ml each.
    expect(dose('rectangle, 300, 100')).toBe(2);
    expect(dose('rectangle, 150, 100, 2')).toBe(1);
  });
});
