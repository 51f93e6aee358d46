import { beforeAll, describe, expect, test } from 'vitest';
import { dryTimes, dustBesideWet, type InOneRoom, leaderTwice, stretchesOf } from '../../../src/method/class/beside.ts';
import { type WorkedClass, workClass } from '../../../src/method/class/class.ts';
import { missedSession } from '../../../src/method/class/missed.ts';
import { alike, classOf, sixEvenings } from './files.ts';

let state: WorkedClass;

beforeAll(async () => {
  const question = classOf('class-of-twelve', { places: alike(6), sessions: sixEvenings });
  const { answer, state: kept } = await workClass(question);
  if (!answer.ok || !kept?.timetable?.ok) throw new Error('The class is not worked out.');
  state = kept;
}, 60_000);

/** The room of the class with one stretch of a place and one of the class, in minutes of one evening of two hours. */
function roomWith(own: readonly [string, number, number], other: readonly [string, number, number]): InOneRoom {
  const { timetable, whole } = state;
  if (!timetable?.ok) throw new Error('There is no timetable.');
  const stretch = ([id, start, end]: readonly [string, number, number]) => {
    const step = whole.steps.find((each) => each.id === id);
    if (!step) throw new Error(`There is no step ${id}.`);
    return { step, start, end };
  };
  return {
    worked: whole,
    own: [stretch(own)],
    others: [stretch(other)],
    sessions: [
      { start: 0, end: 120 },
      { start: 1000, end: 1120 },
    ],
    clock: timetable.clock,
  };
}

describe('dust beside what is wet', () => {
  test.each([
    ['rout-channel', 'mix'],
    ['rout-channel', 'pour'],
    ['cut-out', 'watch'],
    ['sand', 'first-coat'],
    ['level', 'seal'],
    ['last-grit', 'second-coat'],
  ])('%s of one and %s of the other at a time is told, whosever it is', (dusty, wet) => {
    expect(dustBesideWet(roomWith([dusty, 10, 30], [wet, 20, 40]))).toEqual([
      expect.stringMatching(/of this place makes dust, and from .* the class has (wet resin|fresh finish) open/),
    ]);
    expect(dustBesideWet(roomWith([wet, 20, 40], [dusty, 10, 30]))).toEqual([
      expect.stringMatching(/of the class makes dust, and from .* this place has (wet resin|fresh finish) open/),
    ]);
  });

  test('what was laid stays open for the rest of the evening, and not into the next', () => {
    expect(dustBesideWet(roomWith(['sand', 60, 80], ['first-coat', 20, 40]))).toHaveLength(1);
    expect(dustBesideWet(roomWith(['sand', 1000, 1020], ['first-coat', 20, 40]))).toEqual([]);
  });

  test('dust that was made before anything wet is opened is nothing to mind, nor is work without dust or wet', () => {
    expect(dustBesideWet(roomWith(['sand', 0, 20], ['first-coat', 20, 40]))).toEqual([]);
    expect(dustBesideWet(roomWith(['mark-out', 20, 40], ['pour', 20, 40]))).toEqual([]);
    expect(dustBesideWet(roomWith(['sand', 20, 40], ['trim', 20, 40]))).toEqual([]);
    expect(dustBesideWet(roomWith(['pour', 20, 40], ['first-coat', 20, 40]))).toEqual([]);
  });

  test('the class by itself makes none beside what it has open', () => {
    const { timetable, whole } = state;
    if (!timetable?.ok) throw new Error('There is no timetable.');
    const all = stretchesOf(whole, timetable);
    expect(all.length).toBeGreaterThan(10);
    const room = { worked: whole, own: all, others: all, sessions: timetable.open, clock: timetable.clock };
    expect(dustBesideWet(room)).toEqual([]);
  });
});

describe('whoever leads', () => {
  const one = { leaders: 1, helpers: 0 };

  test('cannot mix for the class and seal for a place at once, nor stand beside a router meanwhile', () => {
    const both = roomWith(['seal', 20, 40], ['mix', 10, 30]);
    expect(leaderTwice(both, one)).toEqual([expect.stringContaining('of this place is too')]);
    expect(leaderTwice(both, { leaders: 1, helpers: 3 })).toHaveLength(1);
    expect(leaderTwice(both, { leaders: 2, helpers: 0 })).toEqual([]);
    const router = roomWith(['rout-channel', 20, 40], ['mix', 10, 30]);
    expect(leaderTwice(router, one)).toEqual([expect.stringContaining('wants somebody beside who knows it')]);
    expect(leaderTwice(router, { leaders: 1, helpers: 1 })).toEqual([]);
  });

  test('is not wanted twice by what a student does without anybody, or at another time', () => {
    expect(leaderTwice(roomWith(['mark-out', 10, 30], ['mix', 10, 30]), one)).toEqual([]);
    expect(leaderTwice(roomWith(['seal', 30, 40], ['mix', 10, 30]), one)).toEqual([]);
    expect(leaderTwice(roomWith(['seal', 10, 30], ['mark-out', 10, 30]), one)).toEqual([]);
  });
});

describe('the nearest time at which the class has nothing wet', () => {
  test('is the next session that stays dry for long enough', () => {
    // It would rout from minute 20, and the class pours from 30: ten minutes are too few.
    const next = dryTimes(roomWith(['rout-channel', 20, 40], ['pour', 30, 50]));
    expect(next).toHaveLength(1);
    const { clock } = roomWith(['rout-channel', 20, 40], ['pour', 30, 50]);
    const [from, until] = [1000, 1120].map((minute) => clock.momentAt(minute));
    expect(next[0]).toMatch(
      new RegExp(
        `^The class has nothing wet .*${from?.time} to ${until?.time}: move “Rout the channel.* of this place there`,
      ),
    );
  });

  test('is named for nothing that may stay where it is', () => {
    expect(dryTimes(roomWith(['sand', 0, 20], ['first-coat', 20, 40]))).toEqual([]);
    expect(dryTimes(roomWith(['pour', 20, 40], ['sand', 10, 30]))).toEqual([]);
  });

  test('is said to be none where every session that is left has something wet from its beginning', () => {
    const room = roomWith(['sand', 20, 40], ['first-coat', 0, 40]);
    const [coat] = room.others;
    if (!coat) throw new Error('Nothing of the class.');
    const wet = { ...room, others: [coat, { ...coat, start: 1000, end: 1010 }] };
    expect(dryTimes(wet)).toEqual([expect.stringMatching(/^In no session that is left is the room dry/)]);
  });
});

describe('a plan for catching up', () => {
  test('that routs while the class mixes and sands while it oils says so first, and what is done instead', async () => {
    const found = await missedSession(state, '2', 4);
    const dust = found?.dust ?? [];
    expect(dust[0]).toMatch(
      /19:\d\d “Rout the channel.*of this place makes dust.*wet resin open \(“The teacher weighs/,
    );
    expect(dust.join(' ')).toMatch(/“Sand to P220” of this place makes? dust.*fresh finish open \(“First coat of oil/);
    expect(dust.join(' ')).toMatch(/of the class makes? dust.*this place has wet resin open/);
    // Said in the plan itself, for each step that is to be moved.
    expect(dust.filter((text) => /^The class has nothing wet .*move “Rout the channel/.test(text))).toHaveLength(1);
    expect(dust.filter((text) => /move “Sand to P220”/.test(text))).toHaveLength(1);
    expect(dust.at(-1)).toMatch(/^No dust beside wet resin or fresh finish.*another room with its own extraction/);
    expect(found?.twice?.join(' ')).toContain('“The teacher seals all channels” of this place');
    expect(found?.verdict.level).toBe('care');
  });

  test('in which nothing of the kind comes together says nothing of it', async () => {
    const found = await missedSession(state, '2', 6);
    expect(found?.steps.length).toBeGreaterThan(0);
    expect([found?.dust, found?.twice, found?.verdict.level]).toEqual([undefined, undefined, 'good']);
  });
});
