import { describe, expect, test } from 'vitest';
import { isOracle, runChecks } from '../../../src/model/evidence/index.ts';
import { checks, exceptions } from '../../../src/model/species/checks.ts';
import { groupCoefficientRows } from '../../../src/model/species/coefficients.ts';
import { records } from './world.ts';

const reports = new Map(checks.map((set) => [set.id, runChecks(set, exceptions)]));
const report = (id: string) => {
  const found = reports.get(id);
  if (!found) throw new Error(`no set ${id}`);
  return found;
};

// Trees are compared whichever side was read: they are other trees.
test.each(checks.filter(({ kind, id }) => kind === 'comparison' && id !== 'species-trees'))(
  '$id compares only what was not read',
  ({ values }) => {
    expect(values.filter((value) => isOracle(value.citation.seen))).toEqual([]);
  },
);

/** How many pairs each set holds, as counted when the tables were transcribed. */
test.each([
  ['species-coefficients', 94],
  ['species-coefficients-memory', 96],
  ['species-newtons', 89],
  ['species-volume', 109],
  ['species-volume-memory', 86],
  ['species-fact-sheets', 21],
  ['species-fact-sheets-memory', 60],
  ['species-worked-examples', 7],
])('%s holds %d values', (id, count) => {
  expect(report(id).outcomes.length).toBe(count);
});

describe('rows of Table 13-5 that print another wood’s value', () => {
  const differing = new Set(
    ['species-coefficients', 'species-coefficients-memory'].flatMap((id) =>
      report(id).outcomes.flatMap((each) => (each.within ? [] : [each.value.id.replace(/-(radial|tangential)$/, '')])),
    ),
  );

  test('are the five that are derived instead, and the two oaks that share water oak’s row', () => {
    const listed = records
      .filter((record) =>
        Object.hasOwn(groupCoefficientRows, record.rows['dimensional-change-coefficients']?.[0] ?? ''),
      )
      .map((record) => record.id);
    expect(listed.length).toBe(Object.keys(groupCoefficientRows).length);
    expect([...differing].sort()).toEqual([...listed, 'laurel-oak', 'willow-oak'].sort());
  });
});

test('volume is never more than 3 points off where it was read, and 5.5 where it was not', () => {
  const worst = (id: string) => Math.abs(report(id).worst?.difference ?? Number.NaN);
  expect(worst('species-volume')).toBeLessThan(3);
  expect(worst('species-volume-memory')).toBeLessThan(5.5);
});
