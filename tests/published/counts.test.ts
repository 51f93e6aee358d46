import { describe, expect, test } from 'vitest';
import { checkExceptions, checkRooms, checkSets } from '../../src/model/checks.ts';
import {
  type CheckSet,
  type CheckValue,
  checkWords,
  countChecks,
  runChecks,
  type SourceId,
} from '../../src/model/evidence/index.ts';
import { gatherChecks } from '../../src/site/plugin/reference.ts';
import { kerf } from '../command/run.ts';

/** A set of values that are all 1 by a source, against these of ours. */
const setOf = (id: string, kind: CheckSet['kind'], source: SourceId, ours: readonly number[]): CheckSet => ({
  id,
  title: id,
  kind,
  about: 'Invented for this test.',
  values: ours.map(
    (value, at): CheckValue => ({
      id: String(at),
      what: 'one',
      published: 1,
      ours: () => value,
      unit: '1',
      tolerance: 0.1,
      reason: 'Invented.',
      citation: { source, seen: 'source-text' },
    }),
  ),
});

describe('counts of check values', () => {
  const invented = [
    setOf('book', 'check', 'fpl-gtr-190', [1, 1.05, 2, 3]),
    setOf('paper', 'check', 'wmo-8', [1]),
    setOf('road', 'check', 'kerf-and-cure', [1, 4]),
    setOf('rival', 'comparison', 'wmo-8', [9]),
  ];
  const counts = countChecks(invented.map((set) => runChecks(set, [{ set: 'book', id: '2', reason: 'misprinted' }])));

  test('keep what was published apart from what is our own', () => {
    expect(counts).toEqual({
      published: { values: 5, within: 3, exceptions: 1, failures: 1 },
      sources: [
        { source: 'fpl-gtr-190', values: 4, within: 2, exceptions: 1, failures: 1 },
        { source: 'wmo-8', values: 1, within: 1, exceptions: 0, failures: 0 },
      ],
      own: { values: 2, within: 1, exceptions: 0, failures: 1 },
      compared: 1,
    });
  });

  test('are written a sentence a kind, failures included', () => {
    expect(checkWords(counts)).toEqual([
      '5 published values from 2 sources: 3 within tolerance, 1 different for a known reason, 1 failing.',
      '2 values of our own by another road: 1 within tolerance, 1 failing.',
      '1 value more only compared, which proves nothing.',
    ]);
  });

  test('of a room without published values claim none', () => {
    expect(checkWords(countChecks([runChecks(setOf('road', 'check', 'kerf-and-cure', [1]), [])]))).toEqual([
      'No published value.',
      '1 value of our own by another road: 1 within tolerance, none failing.',
    ]);
  });
});

describe('what the site and the terminal say of all checks', () => {
  // Counted here by hand, a value at a time, so that a claim of the page is held against the data and not against itself.
  let [published, own, within, known] = [0, 0, 0, 0];
  const sources = new Set<string>();
  for (const set of checkSets) {
    if (set.kind !== 'check') continue;
    for (const { id, citation, ours, published: beside, tolerance } of set.values) {
      if (citation.source === 'kerf-and-cure') {
        own += 1;
        continue;
      }
      published += 1;
      sources.add(citation.source);
      if (checkExceptions.some((exception) => exception.set === set.id && exception.id === id)) known += 1;
      else if (Math.abs(ours() - beside) <= tolerance * (1 + 1e-9) + 1e-12) within += 1;
    }
  }
  const claim = `${published} published values from ${sources.size} sources: ${within} within tolerance, ${known} different for a known reason, none failing.`;

  test('a published value is never one of ours', () => {
    expect(own).toBeGreaterThan(300);
    expect(published).toBeGreaterThan(600);
    expect(within + known).toBe(published);
  });

  test('the page of checks', () => {
    const { summary, rooms } = gatherChecks();
    const [first, second] = checkWords(summary.counts);
    expect(first).toBe(claim);
    expect(second).toBe(`${own} values of our own by another road: ${own} within tolerance, none failing.`);
    expect(rooms.flatMap((room) => room.sets.flatMap((set) => set.rows))).toHaveLength(
      checkSets.reduce((sum, set) => sum + set.values.length, 0),
    );
    for (const room of summary.rooms) {
      for (const { set, values, published: read } of room.sets) {
        const { values: all } = checkSets.find((candidate) => candidate.id === set.id) as CheckSet;
        expect([values, values - read], set.id).toEqual([
          all.length,
          all.filter(({ citation }) => citation.source === 'kerf-and-cure').length,
        ]);
      }
    }
  });

  test('the command prints every set, no failure, and the same claim', async () => {
    const { code, out, err } = await kerf('checks');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^set +kind +from a source +our own/);
    expect(out).toContain(`\n${claim}\n`);
    expect(out).toMatch(new RegExp(`\\n${checkSets.length} sets, 0 failures, 0 exceptions no longer needed\\n$`));
  });

  test('a page to each room, and no heading of a room that is also the anchor of a set', () => {
    const ids = [...checkRooms.map((room) => room.id), ...checkSets.map((set) => set.id), 'by-source'];
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });
});
