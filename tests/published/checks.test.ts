import { describe, expect, test } from 'vitest';
import { checkExceptions, checkSets } from '../../src/model/checks.ts';
import { mayProve, runChecks } from '../../src/model/evidence/index.ts';

const reports = checkSets.map((set) => runChecks(set, checkExceptions));

/** Ids that occur more than once. */
const repeated = (ids: readonly string[]) => ids.filter((id, at) => ids.indexOf(id) !== at);

describe('the sets', () => {
  test('have ids of their own, and values with ids of their own', () => {
    expect(repeated(checkSets.map((set) => set.id))).toEqual([]);
    for (const set of checkSets) expect(repeated(set.values.map((value) => value.id)), set.id).toEqual([]);
  });

  test('of kind check hold only values that were read, or worked out on another road', () => {
    const unread = checkSets
      .filter((set) => set.kind === 'check')
      .flatMap((set) => set.values.filter((value) => !mayProve(value)).map((value) => `${set.id} ${value.id}`));
    expect(unread).toEqual([]);
  });

  test('of kind check hold nothing from memory, whatever its source', () => {
    const remembered = checkSets
      .filter((set) => set.kind === 'check')
      .flatMap((set) => set.values.filter((value) => value.citation.seen === 'memory').map((value) => value.id));
    expect(remembered).toEqual([]);
  });

  test('give each value a tolerance with its reason', () => {
    for (const { id, values } of checkSets) {
      for (const value of values) {
        expect(value.tolerance, `${id} ${value.id}`).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(value.tolerance), `${id} ${value.id}`).toBe(true);
        expect(value.reason.length, `${id} ${value.id}`).toBeGreaterThan(10);
      }
    }
  });

  test('exceptions name a set that exists and say why', () => {
    for (const exception of checkExceptions) {
      expect(checkSets.map((set) => set.id)).toContain(exception.set);
      expect(exception.reason.length).toBeGreaterThan(10);
    }
  });
});

test('no exception outlives its need', () => {
  expect(checkExceptions.length).toBeGreaterThan(0);
  expect(reports.flatMap(({ staleExceptions }) => staleExceptions)).toEqual([]);
});

describe.each(reports.filter(({ set }) => set.kind === 'check'))('$set.title', ({ outcomes }) => {
  test.each(outcomes.filter((outcome) => !outcome.exception).map((outcome) => ({ id: outcome.value.id, outcome })))(
    '$id',
    ({ outcome }) => {
      const { value, ours, within } = outcome;
      expect(Number.isFinite(ours)).toBe(true);
      expect(
        within,
        `${value.what}: published ${value.published} ${value.unit}, ours ${ours}, tolerance ${value.tolerance}`,
      ).toBe(true);
    },
  );
});

describe.each(reports.filter(({ set }) => set.kind === 'comparison'))('compared: $set.title', ({ outcomes, worst }) => {
  test('gives finite numbers and names the worst difference', () => {
    expect(outcomes.length).toBeGreaterThan(0);
    expect(outcomes.filter((outcome) => !Number.isFinite(outcome.ours))).toEqual([]);
    expect(worst).toBeDefined();
  });
});
