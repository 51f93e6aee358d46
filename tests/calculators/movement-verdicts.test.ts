import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acclimatiseCalculator } from '../../src/calculators/acclimatise/calculator.ts';
import { equilibriumMoistureCalculator } from '../../src/calculators/equilibrium-moisture/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { seasonalMovementCalculator } from '../../src/calculators/seasonal-movement/calculator.ts';
import { gapFor, verdictOf, visibleCup } from '../../src/calculators/seasonal-movement/verdict.ts';
import { widthChangeCalculator } from '../../src/calculators/width-change/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const ask = (calculator: unknown, raw: Record<string, unknown>): Result => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const said = ({ verdict }: Result) => `${verdict?.level}: ${inReaderUnits(verdict?.text ?? '', defaultUnits)}`;
const ids = (result: Result) => result.cautions.map(({ id }) => id);

const board = { species: 'white-ash', width: '300 mm', thickness: '20 mm', moistureNow: '8 %' };
const seasons = { dryTemperature: 20, dryHumidity: 30, wetTemperature: 22, wetHumidity: 60 };
const year = (more: Record<string, unknown> = {}) => ask(seasonalMovementCalculator, { ...board, ...seasons, ...more });

describe('the sentence that an answer comes to', () => {
  test('a board through its year', () => {
    expect(said(year())).toBe(
      'good: The board moves 3.9 mm over the year, narrowest in Dry season and widest in Damp season: leave 2 mm each side where it is held.',
    );
    expect(said(year({ inlayWidth: '30 mm' }))).toMatch(
      /^care: .*across the inlay of 30 mm the wood works 0\.4 mm that the resin does not follow\.$/,
    );
  });
  test('an inlay as wide as the board is no inlay', () => {
    const outcome = answer(seasonalMovementCalculator, { ...board, ...seasons, inlayWidth: '300 mm' });
    expect(outcome.ok ? '' : inReaderUnits(outcome.errors[0]?.message ?? '', defaultUnits)).toMatch(
      /300 mm wide leaves no wood/,
    );
    expect(said(year({ inlayWidth: '299 mm' }))).toMatch(/^care/);
  });
  test('wood that is bone-dry asks for no number of humidity', () => {
    const dry = ask(equilibriumMoistureCalculator, { temperature: '20 °C', moistureContent: '0 %' });
    expect(dry.figures.relativeHumidity?.value).toBe(0);
    expect(said(dry)).toContain('only in air without moisture');
  });
  test('a board that only shrinks is left no gap', () => {
    expect(said(year({ moistureNow: '14 %' }))).toContain('it grows no wider than it is now: leave no gap for growth');
  });
  test('a board wetter than its place ever makes it is dried first', () => {
    for (const moistureNow of ['40 %', '200 %']) {
      const wet = year({ moistureNow });
      expect(said(wet)).toMatch(
        /^care: Let it dry first: it will be at least \d+(?:\.\d+)? mm narrower than now\. The board moves /,
      );
      expect(ids(wet)[0]).toBe('wetter-than-its-place');
    }
    // 22 °C and 60 % make at most 10.9 %; two points more is no difference that a meter shows.
    expect(ids(year({ moistureNow: '12.8 %' }))).not.toContain('wetter-than-its-place');
    expect(ids(year({ moistureNow: '13.1 %' }))).toContain('wetter-than-its-place');
  });
  test('one change of width', () => {
    const change = (from: string, to: string) =>
      said(ask(widthChangeCalculator, { species: 'sugar-maple', width: '300 mm', moistureFrom: from, moistureTo: to }));
    expect(change('8 %', '11 %')).toBe('good: Grows by 3.2 mm, from 300 mm to 303.2 mm.');
    expect(change('11 %', '8 %')).toBe('good: Shrinks by 3.2 mm, from 300 mm to 296.8 mm.');
    expect(change('8 %', '8 %')).toMatch(/^good: No change/);
    expect(change('40 %', '8 %')).toMatch(/^care: Shrinks/);
  });
  test('air and wood at balance', () => {
    expect(said(ask(equilibriumMoistureCalculator, { temperature: '20 °C', relativeHumidity: '50 %' }))).toBe(
      'good: Wood settles at about 9.3 % in air of 50 % relative humidity at 20 °C.',
    );
    expect(said(ask(equilibriumMoistureCalculator, { temperature: '-20 °C', relativeHumidity: '80 %' }))).toMatch(
      /^care: /,
    );
  });
  test('a wait in a room', () => {
    const wait = (moistureNow: string) =>
      said(
        ask(acclimatiseCalculator, { thickness: '27 mm', moistureNow, temperature: '20 °C', relativeHumidity: '40 %' }),
      );
    expect(wait('9.5 %')).toMatch(/^good: Wait about .* Go by the scale and the meter, not the calendar\.$/);
    expect(wait('12 %')).toMatch(/^care: Wait about/);
    expect(wait('8 %')).toMatch(/^good: Ready: /);
    expect(wait('45 %')).toMatch(/^care: /);
  });
});

describe('thresholds, just below and just above', () => {
  const none = { value: 0, low: 0, high: 0, label: 'May' };
  const moved = { narrowest: none, widest: none, swing: none, changeFromNow: { low: none, high: none } };
  test('a cup is named from where a straight-edge shows it', () => {
    expect(verdictOf({ ...moved, cup: visibleCup - 0.001 }, []).text).not.toContain('cups');
    expect(verdictOf({ ...moved, cup: -visibleCup }, []).text).toContain('cups');
  });
  test('a gap is half of the growth, in whole half millimetres, never less', () => {
    expect([0, 0.001, 1, 1.001, 2, 7.9].map(gapFor)).toEqual([0, 0.5, 0.5, 1, 1, 4]);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (growth) => {
        expect(2 * gapFor(growth)).toBeGreaterThanOrEqual(growth - 1e-8);
        expect(2 * gapFor(growth)).toBeLessThan(growth + 1.001);
      }),
    );
  });
  test.each([
    [29, true],
    [30, false],
  ])('a pith %s mm below the face: juvenile wood is named: %s', (pithDepth, expected) => {
    const result = year({ pithDepth: `${pithDepth} mm`, pithOffset: '0 mm' });
    expect(ids(result).includes('near-the-pith')).toBe(expected);
    expect(result.verdict?.level).toBe(expected ? 'care' : 'good');
  });
});

describe('air outside the sorption table is named by everything that rests on it', () => {
  test('frost in a shed: too dry by the equation, and said so', () => {
    const { species, width, thickness, moistureNow } = board;
    const shed = ask(seasonalMovementCalculator, {
      species,
      width,
      thickness,
      moistureNow,
      place: 'fairbanks-ak',
      indoors: 'unheated',
    });
    const caution = shed.cautions.find(({ id }) => id === 'sorption-outside');
    expect(caution?.own).toBe(true);
    expect(caution?.why).toContain('likely to be damper than it says');
    expect(shed.verdict?.level).toBe('care');
  });
  test('a very dry heated house', () => {
    const dry = ask(seasonalMovementCalculator, {
      ...board,
      place: 'fairbanks-ak',
      indoors: 'heated',
      moistureGain: '0 g/kg',
    });
    expect(ids(dry)).toContain('sorption-outside');
  });
  test('usual rooms are inside it', () => {
    expect(ids(year())).not.toContain('sorption-outside');
  });
});
