import { expect, test } from 'vitest';
import { runChecks } from '../../../src/model/evidence/index.ts';
import { homesComparison } from '../../../src/model/moisture/checks-homes.ts';

const { outcomes } = runChecks(homesComparison, []);
const ours = (id: string) => outcomes.find(({ value }) => value.id === id)?.ours ?? Number.NaN;

test('the house as commonly kept stands near homes as measured, and its summers are damper', () => {
  // Kent, Handegord and Robson 1966: 25 to 30 %. Quinn and Shaman 2017: 6.7 hPa. Nguyen and others 2014: 0.69, 0.04, 0.41.
  expect(ours('canada-winter-humidity')).toBeGreaterThan(25);
  expect(ours('canada-winter-humidity')).toBeLessThan(30);
  expect(ours('new-york-winter-vapour')).toBeCloseTo(7.3, 1);
  expect(ours('boston-moisture-slope')).toBeCloseTo(0.79, 2);
  // Heated to a fixed temperature, and open to the air when it is warm: the straight lines of the assumption.
  expect(ours('boston-temperature-cool')).toBe(0);
  expect(ours('boston-temperature-warm')).toBeCloseTo(1, 9);
});

test('it is a comparison: an assumption is no published value, and fails nothing', () => {
  expect(homesComparison.kind).toBe('comparison');
  expect(outcomes.every(({ value }) => value.citation.seen === 'source-text')).toBe(true);
});
