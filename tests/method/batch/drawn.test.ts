import { expect, test } from 'vitest';
import { shownBatch } from '../../../src/method/batch/shown.ts';
import { at, batchOf, finished, read, started } from './kit.ts';

test('the timetable of a batch is drawn with what was done where it was, and with the moment at which one looks', async () => {
  const record = batchOf([
    started('s1', 'seal', '2027-01-12 09:00'),
    finished('s2', 'seal', '2027-01-12 09:20'),
    read('r1', 'seal', '2027-01-12 09:10', '20 °C'),
  ]);
  const answer = await shownBatch(record, at('2027-01-12 12:00'), 'whole');
  if (!answer.ok) throw new Error(answer.problems.join('\n'));
  const { drawn } = answer.shown;
  expect(drawn?.steps.slice(0, 2)).toEqual([
    { id: 'seal', number: 1 },
    { id: 'pour', number: 2 },
  ]);
  const { timetable, now = -1 } = drawn ?? {};
  const work = timetable?.sessions.flatMap((session) => session.work) ?? [];
  expect(new Set(work.map(({ step }) => step)).size).toBeGreaterThan(2);
  const seal = work.find(({ step }) => step === 'seal');
  expect(timetable?.moments[seal?.start ?? -1]).toMatchObject({ date: '2027-01-12', time: '09:00', day: 1 });
  // Three hours after the seal coat was begun.
  expect(now - (seal?.start ?? 0)).toBe(180);
  for (const { start } of work) expect(timetable?.moments[start]).toBeDefined();
  expect(timetable?.waits.some(({ step, until }) => step === 'seal' && until === 'pour')).toBe(true);
  expect(JSON.parse(JSON.stringify(drawn))).toEqual(drawn);
});
