import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../../src/model/evidence/index.ts';
import {
  type Banded,
  type BoardGeometry,
  type BoardYear,
  type BoardYearInput,
  boardThroughYear,
  boardVariation,
  straightRingStrain,
} from '../../../src/model/movement/index.ts';
import { anyProperties, anySection, sugarMaple } from './arbitrary.ts';

const given: BoardYearInput = {
  width: 300,
  thickness: 20,
  geometry: { cut: 'flatsawn' },
  moistureNow: 8,
  moistures: [
    { label: 'January', moisture: 6 },
    { label: 'April', moisture: 8 },
    { label: 'July', moisture: 11 },
  ],
  properties: sugarMaple,
};

function yearOf(changes: Partial<BoardYearInput> = {}): BoardYear {
  const outcome = boardThroughYear({ ...given, ...changes });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value;
}

const fieldsOf = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.errors.map(({ field }) => field));

const moisture = fc.double({ min: 0, max: 40, noNaN: true });
const anyGeometry: fc.Arbitrary<BoardGeometry> = fc.oneof(
  fc.constantFrom('flatsawn', 'rift', 'quartersawn').map((cut): BoardGeometry => ({ cut }) as BoardGeometry),
  fc.double({ min: 0, max: 90, noNaN: true }).map((ringAngle): BoardGeometry => ({ ringAngle })),
);
const anyInput: fc.Arbitrary<BoardYearInput> = fc
  .record({
    section: anySection,
    cut: anyGeometry,
    measured: fc.boolean(),
    moistureNow: moisture,
    moistures: fc.array(moisture, { minLength: 1, maxLength: 12 }),
    properties: anyProperties,
  })
  .map(({ section, cut, measured, moistureNow, moistures, properties }) => ({
    width: section.width,
    thickness: section.thickness,
    geometry: measured ? { pithDepth: section.pithDepth, pithOffset: section.pithOffset } : cut,
    moistureNow,
    moistures: moistures.map((each, at) => ({ label: `month ${at + 1}`, moisture: each })),
    properties,
  }));

describe('hard maple, 300 mm flatsawn, from 8 %, by Eq. 13-2 by hand', () => {
  const year = yearOf();

  test('changes with the coefficient', () => {
    expect(year.equation).toBe('13-2');
    expect(year.narrowest).toMatchObject({ label: 'January' });
    expect(year.narrowest.value).toBeCloseTo(300 - 300 * 0.00353 * 2, 9);
    expect(year.widest).toMatchObject({ label: 'July' });
    expect(year.widest.value).toBeCloseTo(300 + 300 * 0.00353 * 3, 9);
    expect(year.swing.value).toBeCloseTo(300 * 0.00353 * 5, 9);
    expect(year.changeFromNow.low.value).toBeCloseTo(-300 * 0.00353 * 2, 9);
    expect(year.changeFromNow.high.value).toBeCloseTo(300 * 0.00353 * 3, 9);
  });

  test('has a band of a quarter to each side', () => {
    expect(boardVariation.fraction).toBeCloseTo(0.24675, 12);
    expect(year.swing.low).toBeCloseTo(year.swing.value * (1 - 0.24675), 9);
    expect(year.swing.high).toBeCloseTo(year.swing.value * (1 + 0.24675), 9);
    expect(year.narrowest.low).toBeCloseTo(300 - 300 * 0.00353 * 2 * 1.24675, 9);
    expect(year.narrowest.high).toBeCloseTo(300 - 300 * 0.00353 * 2 * 0.75325, 9);
  });

  test('is hollow on the bark side when dry and on the heart side when wet', () => {
    expect(year.states[0]?.cup.bark.value).toBeGreaterThan(0);
    expect(year.states[1]?.cup.bark.value).toBeCloseTo(0, 12);
    expect(year.states[2]?.cup.bark.value).toBeLessThan(0);
    expect(year.greatestCup.label).toBe('July');
  });

  test('says that the pith was assumed', () => {
    expect(year.pithAssumed).toBe(true);
    expect(yearOf({ geometry: { pithDepth: 80, pithOffset: 0 } }).pithAssumed).toBe(false);
  });
});

describe('which equation and which cap', () => {
  test('one month outside 6 to 14 % moves the whole year to Eq. 13-3', () => {
    const year = yearOf({ moistures: [...given.moistures, { label: 'October', moisture: 14.5 }] });
    expect(year.equation).toBe('13-3');
    expect(year.states[0]?.change.value).toBeCloseTo((300 * -2) / (3000 / 9.9 - 30 + 8), 9);
  });

  test('a month above the start of shrinkage is named, and counts as the start', () => {
    const year = yearOf({ moistures: [{ label: 'flood', moisture: 45 }] });
    expect(year.cappedLabels).toEqual(['flood']);
    expect(year.cappedNow).toBe(false);
    expect(year.widest.value).toBeCloseTo(yearOf({ moistures: [{ label: 'x', moisture: 30 }] }).widest.value, 12);
  });

  test('green wood now is said to be so', () => {
    const year = yearOf({ moistureNow: 70 });
    expect(year.cappedNow).toBe(true);
    expect(year.states.every(({ capped }) => capped)).toBe(true);
  });
});

describe('how the board is cut', () => {
  test.each([
    ['flatsawn', 0],
    ['rift', 45],
    ['quartersawn', 90],
  ] as const)('%s is a ring angle of %d°', (cut, ringAngle) => {
    const [byCut, byAngle] = [yearOf({ geometry: { cut } }), yearOf({ geometry: { ringAngle } })];
    expect(byCut.ringAngle).toBe(ringAngle);
    expect(byAngle.states).toEqual(byCut.states);
    const strains = byCut.states[0]?.strains as { radial: number; tangential: number };
    expect(byCut.states[0]?.change.value).toBeCloseTo(300 * straightRingStrain(ringAngle, strains), 9);
  });

  test('a pith far away moves the board as straight rings do', () => {
    for (const [geometry, cut] of [
      [{ pithDepth: 1e6, pithOffset: 0 }, 'flatsawn'],
      [{ pithDepth: 0, pithOffset: 1e6 }, 'quartersawn'],
      [{ pithDepth: 1e6, pithOffset: 1e6 + 10 }, 'rift'],
    ] as const) {
      const [far, straight] = [yearOf({ geometry }), yearOf({ geometry: { cut } })];
      expect(far.swing.value).toBeCloseTo(straight.swing.value, 6);
      expect(far.narrowest.low).toBeCloseTo(straight.narrowest.low, 6);
      expect(far.states[0]?.thickness.value).toBeCloseTo(straight.states[0]?.thickness.value as number, 6);
    }
  });

  test('a pith near below lets a board move less than a flatsawn one', () => {
    expect(yearOf({ geometry: { pithDepth: 60, pithOffset: 0 } }).swing.value).toBeLessThan(yearOf().swing.value);
  });
});

describe('any board in any year', () => {
  const bandsOf = (year: BoardYear): Banded[] => [
    year.narrowest,
    year.widest,
    year.swing,
    year.changeFromNow.low,
    year.changeFromNow.high,
    year.greatestCup,
    ...year.states.flatMap(({ width, change, thickness, cup, faceDifference }) => [
      width,
      change,
      thickness,
      cup.bark,
      cup.heart,
      faceDifference,
    ]),
  ];

  test('every value is a number inside its band', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        for (const { value, low, high } of bandsOf(yearOf(input))) {
          for (const each of [value, low, high]) expect(Number.isFinite(each)).toBe(true);
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('more moisture is never narrower where the cut is given, and the extremes are the narrowest and widest', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const year = yearOf({ ...input, geometry: 'pithDepth' in input.geometry ? { cut: 'rift' } : input.geometry });
        const states = [...year.states].sort((a, b) => a.moisture - b.moisture);
        for (const [at, state] of states.slice(1).entries()) {
          expect(state.width.value - (states[at]?.width.value as number)).toBeGreaterThanOrEqual(-1e-9);
        }
        expect(year.narrowest.value).toBeCloseTo(states[0]?.width.value as number, 9);
        expect(year.widest.value).toBeCloseTo(states.at(-1)?.width.value as number, 9);
        expect(year.swing.value).toBeCloseTo(year.widest.value - year.narrowest.value, 9);
      }),
    );
  });

  test('more moisture is wider for a measured pith in a wood that shrinks more around than outward, in a year of 4 to 20 %', () => {
    const living = fc.double({ min: 4, max: 20, noNaN: true });
    fc.assert(
      fc.property(anySection, living, living, living, (section, now, a, b) => {
        const { width, thickness, pithDepth, pithOffset } = section;
        const [dry, wet] = [Math.min(a, b), Math.max(a, b)];
        const year = yearOf({
          width,
          thickness,
          geometry: { pithDepth, pithOffset },
          moistureNow: now,
          moistures: [
            { label: 'dry', moisture: dry },
            { label: 'wet', moisture: wet },
          ],
        });
        const [low, high] = year.states;
        expect((high?.width.value as number) - (low?.width.value as number)).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });

  test('a board that stays at its moisture stays as it is', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const year = yearOf({ ...input, moistures: [{ label: 'now', moisture: input.moistureNow }] });
        const [state] = year.states;
        expect(state?.change.value).toBeCloseTo(0, 8);
        expect(state?.cup.bark.value).toBeCloseTo(0, 8);
        expect(state?.thickness.value).toBeCloseTo(input.thickness, 8);
      }),
    );
  });

  test('mirroring the pith changes nothing', () => {
    fc.assert(
      fc.property(
        anySection,
        anyProperties,
        moisture,
        ({ width, thickness, pithDepth, pithOffset }, properties, then) => {
          const swing = (offset: number) =>
            yearOf({
              width,
              thickness,
              geometry: { pithDepth, pithOffset: offset },
              moistures: [{ label: 'then', moisture: then }],
              properties,
            }).states[0]?.change.value as number;
          expect(swing(-pithOffset)).toBeCloseTo(swing(pithOffset), 8);
        },
      ),
    );
  });
});

describe('what cannot be computed is refused by field', () => {
  test.each([
    [{ width: 0 }, ['width']],
    [{ thickness: Number.NaN }, ['thickness']],
    [{ moistureNow: -1 }, ['moistureNow']],
    [{ moistureNow: Number.NaN }, ['moistureNow']],
    [{ moistures: [] }, ['moistures']],
    [
      {
        moistures: [
          { label: 'May', moisture: 8 },
          { label: 'June', moisture: 301 },
        ],
      },
      ['moistures.1'],
    ],
    [{ geometry: { ringAngle: 91 } }, ['ringAngle']],
    [{ geometry: { pithDepth: -2, pithOffset: 10 } }, ['pithDepth']],
    [{ width: -1, moistureNow: -1 }, ['width', 'moistureNow']],
  ] as [Partial<BoardYearInput>, string[]][])('%j: %j', (wrong, fields) => {
    expect(fieldsOf(boardThroughYear({ ...given, ...wrong }))).toEqual(fields);
  });
});
