import { describe, expect, test } from 'vitest';
import { floodCoatCalculator } from '../../src/calculators/flood-coat/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const calc = (raw: Record<string, unknown>): Result => {
  const outcome = answer(floodCoatCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const words = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);
const ids = (result: Result) => result.cautions.map(({ id }) => id);
const liquid = { surfaceTension: 0.04, density: 1100 };

describe('thickness at rest', () => {
  // By hand from √[2γ(1 − cos θ)/(ρg)].
  test.each([
    [30, 1.0],
    [45, 1.47],
    [60, 1.93],
    [90, 2.72],
  ])('at %d° is %d mm', (contactAngle, expected) => {
    const { figures } = calc({ ...liquid, contactAngle });
    expect(Math.abs((figures.thickness?.value ?? 0) - expected)).toBeLessThan(0.0051);
    expect(figures.thickness?.basis).toBe('derived');
    expect(figures.thickness?.low).toBeUndefined();
  });

  test('with nothing given has a band from 30 to 60° and says that it is from memory', () => {
    const { thickness } = calc({}).figures;
    expect(thickness?.low).toBeCloseTo(1.0, 2);
    expect(thickness?.high).toBeCloseTo(1.93, 2);
    expect(thickness?.basis).toBe('memory');
  });

  test('mN/m and a bare number in N/m are read alike', () => {
    expect(calc({ surfaceTension: '40 mN/m' }).figures.thickness?.value).toBeCloseTo(
      calc({ surfaceTension: '0.040' }).figures.thickness?.value ?? 0,
      12,
    );
  });
});

describe('a thickness wanted', () => {
  test('of 3 mm needs a dam, and an angle above 100° to stand without', () => {
    const result = calc({ wantedThickness: '3 mm', ...liquid, contactAngle: 45 });
    expect(ids(result)).toContain('dam-needed');
    expect(result.figures.holdingAngle?.value).toBeGreaterThan(100);
  });
  test('between the ends of the band may need one', () => {
    expect(ids(calc({ wantedThickness: '1.2 mm' }))).toContain('dam-perhaps');
  });
  test('of 0.8 mm stands', () => {
    expect(ids(calc({ wantedThickness: '0.8 mm' }))).toContain('no-dam');
  });
});

test('what is poured is what stays and what runs off', () => {
  const { figures } = calc({ wantedThickness: '3 mm', area: '1800 cm²', ...liquid, contactAngle: 60 });
  // 1800 cm² × 3 mm × 1.1 g/cm³.
  expect(figures.amountWanted?.value).toBeCloseTo(594, 9);
  expect((figures.amountAtRest?.value ?? 0) + (figures.overEdge?.value ?? 0)).toBeCloseTo(594, 9);
});

test('heat tool, skin, a cup’s heat and a level board are warned of always', () => {
  for (const raw of [{}, { wantedThickness: '3 mm' }, { wantedThickness: '20 mm' }])
    for (const id of ['heat-tool', 'resin-skin', 'resin-cup-heat', 'level-face']) expect(ids(calc(raw))).toContain(id);
});

describe('the limit of one pour', () => {
  const amounts = ({ figures }: Result) => ['amountAtRest', 'amountWanted', 'overEdge'].filter((name) => figures[name]);
  const sheet = (more: object) =>
    JSON.stringify({
      name: 'Ours',
      mixByVolume: '1:1',
      potLife: '30 min',
      potLifeMass: '150 g',
      potLifeTemperature: '25 °C',
      ...more,
    });

  test.each(['10 mm', '20 mm', '50 mm'])(
    '%s of coating resin is no coat, and no dam makes it one',
    (wantedThickness) => {
      for (const raw of [{}, { resin: 'fast-coating-1-1' }]) {
        const result = calc({ ...raw, wantedThickness, area: '1800 cm²' });
        expect(result.verdict?.level).toBe('stop');
        expect(words(result.verdict?.text)).toMatch(/is no coat: .* bears 3 mm in one pour at 25 °C.*“Heat of a pour”/);
        expect(JSON.stringify([result.verdict, result.cautions])).not.toMatch(/[Bb]uild a dam|with a dam/);
        expect(amounts(result)).toEqual([]);
      }
    },
  );

  test('is the sheet’s, in a shop no warmer than the sheet says', () => {
    const deep = {
      resin: sheet({ greatestDepth: '5 mm', greatestDepthTemperature: '20 °C', potLife: '60 min' }),
      area: '1800 cm²',
    };
    expect(calc({ ...deep, wantedThickness: '4 mm', shopTemperature: '20 °C' }).verdict?.level).toBe('care');
    expect(calc({ ...deep, wantedThickness: '6 mm', shopTemperature: '20 °C' }).verdict?.level).toBe('stop');
    // Warmer than that it bears less: 4 of 5 mm are too many at 30 °C.
    const hot = calc({ ...deep, wantedThickness: '4 mm', shopTemperature: '30 °C' });
    expect(hot.verdict?.level).toBe('stop');
    expect(words(hot.verdict?.text)).toContain('in one pour at 30 °C');
  });

  test('is not known where the sheet is silent, or denies itself: nothing deeper than a coat, or nothing at all', () => {
    const silent = { resin: sheet({}), area: '1800 cm²' };
    const deep = calc({ resin: sheet({ potLife: '3 h' }), area: '1800 cm²', wantedThickness: '5 mm' });
    expect(deep.verdict).toEqual({ level: 'unknown', text: expect.stringContaining('names no greatest depth') });
    expect(amounts(deep)).toEqual([]);
    const coat = calc({ ...silent, wantedThickness: '3 mm' });
    expect(coat.verdict?.level).toBe('care');
    expect(ids(coat)).toContain('no-greatest-depth');
    const torn = calc({ resin: sheet({ greatestDepth: '50 mm' }), wantedThickness: '3 mm', area: '1800 cm²' });
    expect(torn.verdict).toEqual({ level: 'unknown', text: expect.stringContaining('cannot both be right') });
    expect(amounts(torn)).toEqual([]);
  });

  test('of a generic coating resin is 1/8 in as well as 3 mm, and no more', () => {
    expect(calc({ wantedThickness: '1/8 in' }).verdict?.level).toBe('care');
    const over = calc({ wantedThickness: '3.25 mm' });
    expect(over.verdict?.level).toBe('stop');
    const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
    expect(inReaderUnits(over.verdict?.text ?? '', inch)).toMatch(
      /^0\.128 in is no coat: a coating resin bears 0\.118 inches/,
    );
    expect(calc({ wantedThickness: '1/8 in', shopTemperature: '30 °C' }).verdict?.level).toBe('stop');
  });

  // By hand: 1800 cm² · 3 mm · 1.065 g/cm³ = 575 g, six cups of 100 g.
  test('says how many cups a coat takes, and begins with the coat', () => {
    const result = calc({
      resin: 'fast-coating-1-1',
      wantedThickness: '3 mm',
      area: '1800 cm²',
      shopTemperature: '22 °C',
    });
    expect(words(result.verdict?.text)).toBe(
      'One coat of 3 mm: 575 g, with a dam higher than that: without one it comes to rest at about 1.5 mm.',
    );
    expect(words(result.cautions.find(({ id }) => id === 'several-cups')?.text)).toContain('Mix it in 6 cups');
  });

  test('a thin coat of one’s own sheet has nothing in its way', () => {
    const own = sheet({ greatestDepth: '3 mm', greatestDepthTemperature: '25 °C' });
    const result = calc({ resin: own, wantedThickness: '0.8 mm', area: '1000 cm²', shopTemperature: '22 °C' });
    expect(result.verdict?.level).toBe('good');
    expect(calc({}).verdict?.level).toBe('care');
  });
});
