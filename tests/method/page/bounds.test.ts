import { beforeAll, describe, expect, test } from 'vitest';
import type { MethodPage } from '../../../src/method/page/types.ts';
import { pageOf } from '../documents/pages.ts';

let page: MethodPage;
beforeAll(async () => {
  page = await pageOf('panel-moss-channel', { pieces: 6, people: 3 });
}, 60_000);

describe('the timetable of a page with several people', () => {
  test('names who is at each stretch, as the shop record calls them, and who is free', () => {
    const { people = [], sessions = [] } = page.timetable ?? {};
    expect(people).toHaveLength(3);
    for (const { work, free = [] } of sessions) {
      for (const { by = [], people: count } of work) {
        expect(by.length).toBeGreaterThanOrEqual(count);
        for (const name of by) expect(people).toContain(name);
      }
      for (const { who } of free) for (const name of who) expect(people).toContain(name);
    }
    expect(sessions.some(({ free = [] }) => free.length > 0)).toBe(true);
  });

  test('has a clock for each bound, and plans no piece outside its own', () => {
    const { bounds = [], moments = {}, sessions = [], secondWays = [] } = page.timetable ?? {};
    expect(bounds.length).toBeGreaterThan(3);
    for (const { step, until, pieces, earliest, latest } of bounds) {
      for (const minute of [earliest, latest]) if (minute !== undefined) expect(moments[minute]).toBeDefined();
      if (secondWays.some((way) => way.after === step && way.step === until)) continue;
      const begun = sessions
        .flatMap(({ work }) => work)
        .filter((work) => work.step === until && work.pieces[0] <= pieces[1] && work.pieces[1] >= pieces[0]);
      expect(begun.length).toBeGreaterThan(0);
      if (earliest !== undefined) expect(Math.min(...begun.map(({ end }) => end))).toBeGreaterThan(earliest);
    }
  });
});

test('of one person alone nobody is named', async () => {
  const alone = await pageOf('first-tray', { people: 1 });
  for (const { work, free } of alone.timetable?.sessions ?? []) {
    expect(free).toBeUndefined();
    for (const { by } of work) expect(by).toBeUndefined();
  }
}, 30_000);
