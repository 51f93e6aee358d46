import { expect, test } from 'vitest';
import { runChecks } from '../../../src/model/evidence/index.ts';
import { measuredYear } from '../../../src/model/movement/checks-year.ts';

const { outcomes } = runChecks(measuredYear, []);
const share = (id: string) => {
  const found = outcomes.find(({ value }) => value.id === id);
  return found ? found.value.published / found.ours : Number.NaN;
};

test('the measured slab moved less than free boards at balance: two thirds, half, a third', () => {
  // Hwang and others 2022, Table 4: 0.53, 0.33 and 0.15 %.
  expect(share('whole-year')).toBeCloseTo(0.64, 2);
  expect(share('before-concrete')).toBeCloseTo(0.53, 2);
  expect(share('after-concrete')).toBeCloseTo(0.31, 2);
});

test('ours for the boards agrees with the paper’s own calculation within a tenth', () => {
  // 0.136 % for 1 %, with plywood; the swelling of the lumber itself is 2.09 % over 16.0 %, 0.131 of the ovendry width.
  expect(outcomes.find(({ value }) => value.id === 'their-calculation')?.within).toBe(true);
});
