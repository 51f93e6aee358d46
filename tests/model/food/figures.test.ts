import { describe, expect, test } from 'vitest';
import { type FoodRuleId, hygieneFindings } from '../../../src/model/food/index.ts';
import { foodRuleById, foodRuleRecords } from '../../../src/model/food/rules.ts';

// Every figure of a rule as it was copied from the rule's text, a second time and by itself: the paragraph, the number and
// its unit. A figure changed on one side alone is a slip of the pen.

const asRead: Partial<Record<FoodRuleId, readonly (readonly [locator: string, value: number, unit: string])[]>> = {
  // 21 CFR, annual edition of 2015.
  'cfr-21-175-300': [
    ['(c)(4)', 18, 'mg/[sin_i]'],
    ['(c)(3)', 18, 'mg/[sin_i]'],
    ['(c)(2)', 1.8, 'mg/[sin_i]'],
    ['(c)(1)', 0.5, 'mg/[sin_i]'],
  ],
  'cfr-21-178-3620': [
    ['(b)(1)(i)', 20, '1'],
    ['(b)(1)(ii)', 4, '1'],
  ],
  'cfr-21-172-878': [['(c)', 0.15, '%']],
  'cfr-21-178-3710': [['limits', 0.15, '1']],
  'cfr-21-184-1973': [['limits', 0.1, '%']],
  // 50 parts per million each.
  'cfr-21-172-890': [['limits', 50e-4, '%']],
  'cfr-21-178-3800': [['list', 50e-4, '%']],
  // One microgram in a kilogram; more than 1 000 litres.
  'eu-2024-3190': [
    ['Article 9', 1e-3, 'mg/kg'],
    ['Annex II', 1000, 'L'],
  ],
  // 9 mg in a kilogram, which counts 6 dm² of surface; 1 mg of chlorohydrins.
  'eu-1895-2005': [
    ['Annex I', 9, 'mg/kg'],
    ['Annex I', 9 / 6, 'mg/dm2'],
    ['Annex I', 1, 'mg/kg'],
  ],
  'eu-10-2011': [
    ['Article 12(1)', 10, 'mg/dm2'],
    ['Article 17(2)', 600, 'cm2'],
    ['Article 11(4)', 0.01, 'mg/kg'],
  ],
};

describe('figures of the rules', () => {
  test.each(foodRuleRecords.map(({ id }) => id))('%s has those that were read and no other', (id) => {
    const figures = foodRuleById(id).figures.map(({ citation, value, unit }) => [citation?.locator, value, unit]);
    expect(figures).toEqual(asRead[id] ?? []);
  });

  test('all were read in the text of the rule itself', () => {
    for (const { figures } of foodRuleRecords)
      for (const { citation } of figures) expect(citation?.seen).toBe('source-text');
  });

  test('the notes say the same in the other unit', () => {
    const notes = foodRuleRecords.flatMap(({ figures }) => figures.map(({ note }) => note ?? '')).join(' ');
    for (const words of ['279 mg/dm²', '0.005 %', '50 ppm', '50 parts per million', '9 mg for 6 dm²', '6 dm²'])
      expect(notes).toContain(words);
  });
});

// Numbers of the abstracts that were read.
describe('figures of the papers on hygiene', () => {
  test.each([
    ['ak-contaminated', ['nine hardwoods', 'within 3 to 10 minutes', '1 000 to 10 000', 'at least 98 %', '12 hours']],
    ['ak-decontamination', ['12 hours']],
    ['miller', ['up to 90 minutes']],
    ['lucke', ['two months']],
    ['vega-gutierrez', ['four woods', 'significantly more bacteria than bare wood']],
  ])('%s', (id, words) => {
    const paper = hygieneFindings.find((finding) => finding.id === id);
    for (const each of words) expect(`${paper?.tested} ${paper?.found}`).toContain(each);
  });
});
