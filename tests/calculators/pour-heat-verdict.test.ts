import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { report } from '../../src/calculators/kit/report.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { baseMaterials } from '../../src/model/resin/base.ts';

// What a pour comes to: one case for each trap that a data sheet, a cold shop or a warm bottle sets.

const calculator: Calculator = pourHeatCalculator;

/** An answer as the command line prints it, in millimetres. */
function answerTo(raw: Record<string, unknown>) {
  const outcome = answer(calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return report(calculator, raw, outcome.value.result);
}
type Answer = ReturnType<typeof answerTo>;
const value = ({ figures }: Answer, name: string) => figures[name]?.value ?? Number.NaN;
const caution = ({ cautions }: Answer, id: string) => cautions.find((one) => one.id === id);
/** All that is answered; not what was asked. */
const everyWord = ({ inputs: _, ...said }: Answer) => JSON.stringify(said).toLowerCase();

const sheet = (figures: Record<string, string>) => JSON.stringify({ name: 'Lakeside', ...figures });
/** A sheet that says all that the heat of a pour asks. */
const whole = {
  mixByVolume: '2:1',
  potLife: '6 h',
  potLifeMass: '100 g',
  potLifeTemperature: '25 °C',
  greatestDepth: '18 mm',
  greatestDepthTemperature: '22 °C',
};
const without = (...names: (keyof typeof whole)[]) =>
  Object.fromEntries(Object.entries(whole).filter(([name]) => !names.includes(name as keyof typeof whole)));

describe('a whole sheet', () => {
  test('and a pour well within it at its own temperature are good, and nothing stands in the way', () => {
    const found = answerTo({ resin: sheet(whole), depth: '10 mm', shopTemperature: '21 °C' });
    expect(found.verdict).toEqual({ level: 'good', text: 'One pour of 10 mm: inside your sheet at 21 °C.' });
    expect(found.cautions.filter(({ own }) => own)).toEqual([]);
  });

  test.each([
    ['a pot life without a mass', without('potLifeMass'), 'what its pot life is stated for is assumed'],
    ['a depth without a temperature', without('greatestDepthTemperature'), 'taken for 20 °C, assumed'],
    ['a limit in litres', { ...whole, greatestVolume: '10 l' }, 'limit of 10 l was not checked'],
    ['two ratios that differ a little', { ...whole, mixByWeight: '100:45' }, 'does not agree with itself'],
  ])('with %s is no plain yes', (_, figures, words) => {
    const { verdict } = answerTo({
      resin: sheet({ kind: 'slow-casting-2-1', ...figures }),
      depth: '8 mm',
      shopTemperature: '20 °C',
    });
    expect(verdict?.level).toBe('care');
    expect(verdict?.text).toContain(words);
  });

  test.each([
    ['a fan', { air: 'moving', depth: '17.9 mm', shopTemperature: '23 °C' }, 'leans-on-fan'],
    [
      'a plastic sheet of assumed thickness',
      { base: 'hdpe', depth: '17.5 mm', shopTemperature: '24 °C' },
      'leans-on-base',
    ],
  ])('that only %s keeps within it names that', (_, more, id) => {
    const found = answerTo({ resin: sheet(whole), ...more });
    expect(found.verdict?.level).toBe('care');
    expect(caution(found, id)).toMatchObject({ level: 'warning', own: true });
  });
});

describe('a generic kind', () => {
  test('is never more than care, since nobody’s sheet was given', () => {
    const { verdict } = answerTo({ resin: 'slow-casting-2-1', depth: '6 mm', shopTemperature: '20 °C' });
    expect(verdict?.level).toBe('care');
    expect(verdict?.text).toContain('generic kind’s, from memory (enter your own sheet)');
  });

  test('too deep says what to do instead, in one sentence', () => {
    const { verdict } = answerTo({ resin: 'slow-casting-2-1', depth: '45 mm', shopTemperature: '24 °C' });
    expect(verdict?.level).toBe('stop');
    expect(verdict?.text).toMatch(/^Do not pour 45 mm in one go: three layers of 15 mm, \d+ h apart/);
  });
});

describe('a depth without a temperature', () => {
  const silent = without('greatestDepthTemperature');

  test('is taken for 20 °C, so that at 25 °C the same depth is no longer within it', () => {
    const found = answerTo({
      resin: sheet({ ...silent, greatestDepth: '20 mm' }),
      depth: '20 mm',
      shopTemperature: '25 °C',
    });
    expect(value(found, 'heatIndex')).toBeCloseTo(2.36, 1);
    expect(value(found, 'greatestDepthHere')).toBeCloseTo(15.4, 0);
    expect(found.verdict?.level).toBe('stop');
  });

  test('is never taken for the temperature of a cure in the oven', () => {
    const cured = { ...silent, greatestDepth: '20 mm', cure: '4 h', cureTemperature: '60 °C' };
    const found = answerTo({ resin: sheet(cured), depth: '40 mm', shopTemperature: '20 °C' });
    expect(found.verdict?.level).toBe('stop');
    expect(found.cautions[0]).toMatchObject({ id: 'pour-runaway', level: 'danger', own: true });
    expect(value(found, 'greatestDepthHere')).toBe(20);
    expect(everyWord(found)).not.toContain('60 °c');
  });

  test('is called assumed in every sentence that uses it, and a caution asks for it', () => {
    const found = answerTo({ resin: sheet(silent), depth: '19 mm', shopTemperature: '20 °C' });
    const assumed = '20 °C (assumed: the sheet names no temperature)';
    expect(caution(found, 'depth-temperature-assumed')).toMatchObject({ level: 'warning', own: true });
    expect(caution(found, 'deeper-than-sheet')?.text).toContain(assumed);
    expect(found.figures.sheetDepth?.note).toContain(assumed);
    expect(found.figures.greatestDepthHere?.note).toContain(assumed);
    expect(found.evidence.map(({ text }) => text).join(' ')).toContain(`Measured by 18 mm at ${assumed}`);
  });
});

describe('a sheet at war with itself', () => {
  const mistyped = {
    ...whole,
    mixByVolume: '1:1',
    potLife: '30 min',
    greatestDepth: '50 mm',
    greatestDepthTemperature: '25 °C',
  };

  test('stops a pour that runs away by its pot life, names both figures and comes first', () => {
    const found = answerTo({ resin: sheet(mistyped), depth: '50 mm', shopTemperature: '20 °C' });
    expect(found.verdict?.level).toBe('stop');
    expect(found.verdict?.text).toMatch(
      /by its pot life it runs away after \d+ min; its pot life of 30 min or its depth of 50 mm is wrong/,
    );
    expect(found.cautions[0]).toMatchObject({ id: 'depth-against-pot-life', level: 'danger', own: true });
    expect(found.cautions[0]?.why).toMatch(/If the pot life is right.*If the depth is right/);
  });

  test('says nothing that looks like advice, however thin the pour', () => {
    const found = answerTo({ resin: sheet(mistyped), depth: '2 mm', shopTemperature: '20 °C' });
    expect(found.verdict?.level).toBe('unknown');
    expect(found.tables ?? []).toEqual([]);
    expect(everyWord(found)).not.toContain('inside');
    expect(found.figures).toEqual({});
    expect(found.series ?? []).toEqual([]);
  });

  test.each([
    ['12 h', 'care'],
    ['11 h', 'stop'],
  ])('is one from three times as slow on: 50 mm with a pot life of %s is %s', (potLife, level) => {
    const deep = { ...whole, potLife, greatestDepth: '50 mm', greatestDepthTemperature: '25 °C' };
    const found = answerTo({ resin: sheet(deep), depth: '50 mm', shopTemperature: '25 °C' });
    expect(found.verdict?.level).toBe(level);
    expect(found.figures.heatIndex === undefined).toBe(level === 'stop');
  });

  test('only with figures of the mix that the reader gave has a danger of its own too', () => {
    const deep = { ...whole, potLife: '12 h', greatestDepth: '50 mm', greatestDepthTemperature: '25 °C' };
    const found = answerTo({ resin: sheet(deep), depth: '50 mm', shopTemperature: '25 °C', conductivity: 0.12 });
    expect(found.verdict?.level).toBe('stop');
    expect(found.figures.heatIndex).toBeUndefined();
    expect(found.cautions[0]).toMatchObject({ level: 'danger', own: true });
  });

  test('in its two pot lives gives no index either', () => {
    const odd = { ...whole, secondPotLife: '30 h', secondPotLifeTemperature: '20 °C' };
    const found = answerTo({ resin: sheet(odd), depth: '10 mm', shopTemperature: '20 °C' });
    expect(found.verdict).toMatchObject({ level: 'unknown', text: expect.stringContaining('two pot lives') });
    expect(found.figures.heatIndex).toBeUndefined();
    expect(found.cautions[0]).toMatchObject({ id: 'second-pot-life-unlikely', own: true });
  });
});

describe('a cold shop', () => {
  // Poured at 12 °C and heated to 21 °C after 12 hours, 28 mm of this resin came to 105 °C in an independent model.
  test('allows no more than the sheet, and what the model would allow is called so', () => {
    const found = answerTo({ resin: 'slow-casting-2-1', depth: '28 mm', shopTemperature: '12 °C' });
    expect(found.verdict).toMatchObject({ level: 'stop', text: expect.stringContaining('two layers of 14 mm') });
    expect(value(found, 'greatestDepthHere')).toBe(19);
    expect(value(found, 'depthByModel')).toBeCloseTo(30, 0);
    expect(found.figures.heatIndex?.note).not.toContain('Inside');
  });

  test.each([
    ['18 mm', '12 °C', 'danger'],
    ['15 mm', '15 °C', 'warning'],
  ])('must not be warmed before a pour of %s at %s has gelled through and cooled', (depth, shopTemperature, level) => {
    const found = answerTo({ resin: 'slow-casting-2-1', depth, shopTemperature });
    expect(caution(found, 'keep-from-warming')).toMatchObject({ level, own: true });
    expect(caution(found, 'keep-from-warming')?.text).toMatch(
      /Do not warm the shop before it has gelled through, about \d+ h/,
    );
    expect(found.verdict?.text).toContain('do not warm the shop');
  });

  test('may be warmed where the pour would lie within the sheet in a warm shop too', () => {
    const found = answerTo({ resin: 'slow-casting-2-1', depth: '10 mm', shopTemperature: '16 °C' });
    expect(caution(found, 'keep-from-warming')).toBeUndefined();
  });

  test.each([
    [14.9, true],
    [15, false],
  ])('is one below 15 °C: %d', (shopTemperature, told) => {
    const found = answerTo({ resin: sheet(whole), depth: 5, shopTemperature });
    expect(caution(found, 'cold-shop') !== undefined).toBe(told);
    expect(found.verdict?.level).toBe(told ? 'care' : 'good');
  });

  test('a sheet’s own depth stands beside no other: 17 mm at 18 °C where the sheet says 12 mm at 25 °C', () => {
    const found = answerTo({
      resin: sheet({ ...whole, greatestDepth: '12 mm', greatestDepthTemperature: '25 °C' }),
      depth: '17 mm',
      shopTemperature: '18 °C',
    });
    expect(found.verdict).toMatchObject({ level: 'stop', text: expect.stringContaining('two layers of 8.5 mm') });
    expect(value(found, 'greatestDepthHere')).toBe(12);
    expect(everyWord(found)).not.toContain('inside the sheet');
  });
});

describe('warm resin', () => {
  // Rise, first gel and working time against the same pour with resin as the shop, by an independent model.
  test.each([
    ['19 mm', '20 °C', '35 °C', 1.05, 0.8, 0.74],
    ['19 mm', '20 °C', '40 °C', 1.14, 0.69, 0.61],
    ['25 mm', '15 °C', '35 °C', 1.09, 0.71, 0.61],
    ['28 mm', '15 °C', '35 °C', 1.29, 0.61, 0.54],
  ])(
    '%s at %s with resin of %s: rise × %d, gel × %d, working time × %d',
    (depth, shopTemperature, resinTemperature, peak, gel, work) => {
      const pour = { resin: 'slow-casting-2-1', depth, shopTemperature };
      const [warm, as] = [answerTo({ ...pour, resinTemperature }), answerTo(pour)];
      const ratio = (name: string) => value(warm, name) / value(as, name);
      expect(Math.abs(ratio('peakRise') - peak)).toBeLessThan(0.02);
      expect(Math.abs(ratio('timeToFirstGel') - gel)).toBeLessThan(0.02);
      expect(Math.abs(ratio('timeToWork') - work)).toBeLessThan(0.02);
      const shown = (found: Answer, name: string) => `${Number((value(found, name) / 3600).toPrecision(2))} h`;
      expect(caution(warm, 'resin-warm')?.text).toContain(
        `is too thick to work after ${shown(warm, 'timeToWork')} instead of ${shown(as, 'timeToWork')}`,
      );
    },
  );

  test('that makes a pour run away is a danger, and says what it would be at the temperature of the shop', () => {
    const found = answerTo({
      resin: 'slow-casting-2-1',
      depth: '30 mm',
      shopTemperature: '15 °C',
      resinTemperature: '40 °C',
    });
    expect(caution(found, 'resin-warm')).toMatchObject({
      level: 'danger',
      why: expect.stringContaining('would rise by 65 °C'),
    });
  });

  test.each([
    [24.9, false],
    [25, true],
  ])('is told from 5 °C on: %d in a shop of 20 °C', (resinTemperature, told) => {
    const found = answerTo({ resin: 'slow-casting-2-1', depth: 12, shopTemperature: 20, resinTemperature });
    expect(caution(found, 'resin-warm') !== undefined).toBe(told);
  });
});

describe('a hot pour without a yardstick', () => {
  const silent = sheet(without('greatestDepth', 'greatestDepthTemperature'));

  test('is stopped by its rise alone', () => {
    const found = answerTo({ resin: silent, depth: '22 mm', shopTemperature: '23 °C' });
    expect(value(found, 'peakRise')).toBeGreaterThan(70);
    expect(found.verdict?.level).toBe('stop');
    expect(found.cautions[0]).toMatchObject({ id: 'pour-hot', level: 'danger', own: true });
    expect(everyWord(found)).not.toContain('the index');
  });

  test('is one above a rise of 40 K, and not below', () => {
    const at = (depth: number) => answerTo({ resin: silent, depth, shopTemperature: 23 });
    let [low, high] = [10, 22];
    while (high - low > 0.001) {
      const middle = (low + high) / 2;
      if (value(at(middle), 'peakRise') > 40) high = middle;
      else low = middle;
    }
    expect(at(low)).toMatchObject({ verdict: { level: 'unknown' } });
    expect(caution(at(low), 'pour-hot')).toBeUndefined();
    expect(at(high)).toMatchObject({ verdict: { level: 'stop' } });
    expect(caution(at(high), 'pour-hot')).toBeDefined();
  });

  test('and a cool one is not known: no depth, no layers, no plain yes', () => {
    const found = answerTo({ resin: silent, depth: '5 mm', shopTemperature: '20 °C' });
    expect(found.verdict).toEqual({
      level: 'unknown',
      text: 'The sheet of Lakeside names no greatest depth: ask the maker.',
    });
    expect(found.figures.greatestDepthHere).toBeUndefined();
  });
});

describe('a limit on volume or mass', () => {
  const limited = sheet({
    ...whole,
    densityA: '1.16 g/ml',
    densityB: '1 g/ml',
    greatestVolume: '2 l',
    greatestMass: '2 kg',
  });
  const pour = { resin: limited, depth: '10 mm', shopTemperature: '21 °C' };

  test('that was not checked is said, and asks for the area', () => {
    const found = answerTo(pour);
    expect(found.verdict?.level).toBe('care');
    for (const id of ['volume-not-checked', 'mass-not-checked'])
      expect(caution(found, id)).toMatchObject({ own: true });
  });

  // 2 kg of a mix of 2 : 1 by volume, 1.16 and 1.00 g/ml: 1.1067 g/ml, 1807 ml.
  test.each([
    ['1800 cm²', 'good', undefined],
    ['1815 cm²', 'stop', 'mass-beyond-sheet'],
    ['2005 cm²', 'stop', 'volume-beyond-sheet'],
  ])('10 mm over %s is %s', (area, level, id) => {
    const found = answerTo({ ...pour, area });
    expect(found.verdict?.level).toBe(level);
    if (id) expect(caution(found, id)).toMatchObject({ level: 'danger', own: true });
    expect(value(found, 'pourMass') / value(found, 'pourVolume')).toBeCloseTo((2 * 1.16 + 1) / 3, 6);
  });

  test('divides a pour into layers that each stay within it', () => {
    const found = answerTo({ ...pour, area: '3000 cm²' });
    expect(found.verdict?.text).toContain('two layers of 5 mm');
    expect(value(found, 'greatestDepthHere')).toBeCloseTo(2000 / 1.10667 / 300, 3);
    expect(found.figures.heatIndex?.note).not.toContain('Inside');
  });
});

describe('what it lies on', () => {
  test('a plastic says that it is a solid sheet, and what to pick for film or tape', () => {
    for (const { id, hint } of baseMaterials) {
      expect(hint === undefined, id).toBe(!['hdpe', 'pp', 'pvc', 'pmma'].includes(id));
      if (hint) expect(hint).toMatch(/solid sheet of 20 mm .* for film or tape on MDF pick MDF/);
    }
  });

  test('the thickness that is assumed is shown, and a given one is not', () => {
    const pour = { resin: 'slow-casting-2-1', depth: 10, shopTemperature: 20 };
    expect(answerTo(pour).figures.baseThickness).toMatchObject({
      value: 20,
      basis: 'memory',
      label: expect.stringContaining('assumed'),
    });
    expect(answerTo({ ...pour, baseThickness: 18 }).figures.baseThickness).toBeUndefined();
  });
});

describe('a shop that most sheets call too cold', () => {
  const said = (shopTemperature: string) =>
    everyWord(answerTo({ resin: 'medium-2-1', depth: '20 mm', shopTemperature }));

  test.each(['7.2 °C', '14 °C'])('of %s is never to be cooled', (shop) => {
    expect(said(shop)).toContain('warm the shop');
    expect(said(shop)).not.toContain('cool the shop');
  });
  test('one of 24 °C may be cooled', () => expect(said('24 °C')).toContain('cool the shop'));
});
