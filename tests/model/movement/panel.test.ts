import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boardThroughYear,
  type PanelYear,
  type PanelYearInput,
  panelThroughYear,
} from '../../../src/model/movement/index.ts';
import { anyProperties, sugarMaple } from './arbitrary.ts';

const moistures = [
  { label: 'January', moisture: 6 },
  { label: 'July', moisture: 11 },
];
const given: PanelYearInput = {
  staves: [
    { width: 100, geometry: { cut: 'quartersawn' }, properties: sugarMaple },
    { width: 60, geometry: { cut: 'flatsawn' }, properties: sugarMaple },
    { width: 100, geometry: { cut: 'quartersawn' }, properties: sugarMaple },
  ],
  thickness: 20,
  moistureNow: 8,
  moistures,
};

function yearOf(changes: Partial<PanelYearInput> = {}): PanelYear {
  const outcome = panelThroughYear({ ...given, ...changes });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value;
}

describe('a panel of staves', () => {
  test('moves by the sum of its staves, by hand', () => {
    const year = yearOf();
    expect(year.swing.value).toBeCloseTo((200 * 0.00165 + 60 * 0.00353) * 5, 9);
    expect(year.narrowest).toMatchObject({ label: 'January' });
    expect(year.widest.value).toBeCloseTo(260 + (200 * 0.00165 + 60 * 0.00353) * 3, 9);
    expect(year.swing.high).toBeCloseTo(year.swing.value * 1.24675, 9);
  });

  test('shows the step between a flatsawn and a quartersawn neighbour', () => {
    const { greatestStep } = yearOf();
    // Thickness of a flatsawn stave moves radially, of a quartersawn one tangentially; nearly, as areas do exactly.
    expect(greatestStep.label).toBe('July');
    expect(greatestStep.value).toBeCloseTo(20 * (0.00353 - 0.00165) * 3, 3);
    expect(yearOf({ staves: given.staves.slice(0, 1) }).greatestStep.value).toBe(0);
  });

  test('cut into equal staves moves as one straight-ringed board', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 10, max: 200, noNaN: true }), { minLength: 1, maxLength: 12 }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        anyProperties,
        fc.double({ min: 0, max: 40, noNaN: true }),
        (widths, ringAngle, properties, now) => {
          const geometry = { ringAngle };
          const whole = boardThroughYear({
            width: widths.reduce((sum, width) => sum + width, 0),
            thickness: 20,
            geometry,
            moistureNow: now,
            moistures,
            properties,
          });
          const year = yearOf({ staves: widths.map((width) => ({ width, geometry, properties })), moistureNow: now });
          if (!whole.ok) throw new Error('refused');
          for (const end of ['value', 'low', 'high'] as const) {
            expect(year.swing[end]).toBeCloseTo(whole.value.swing[end], 8);
            expect(year.narrowest[end]).toBeCloseTo(whole.value.narrowest[end], 8);
          }
          expect(year.greatestStep.value).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  test('each stave takes the equation of its own wood', () => {
    const [first] = given.staves;
    if (!first) throw new Error('no stave');
    const year = yearOf({ staves: [first, { ...first, properties: { ...sugarMaple, radialCoefficient: null } }] });
    expect(year.staves.map(({ equation }) => equation)).toEqual(['13-2', '13-3']);
  });
});

describe('refusals', () => {
  const wrongStave = { width: 0, geometry: { cut: 'rift' }, properties: sugarMaple } as const;
  test.each([
    [{ staves: [] }, ['staves']],
    [{ staves: [...given.staves, wrongStave] }, ['staves.3.width']],
    [{ moistureNow: -1 }, ['moistureNow']],
    [{ thickness: 0 }, ['thickness']],
  ] as [Partial<PanelYearInput>, string[]][])('%#: once, on %j', (wrong, fields) => {
    const outcome = panelThroughYear({ ...given, ...wrong });
    expect(outcome.ok ? [] : outcome.errors.map(({ field }) => field)).toEqual(fields);
  });
});
