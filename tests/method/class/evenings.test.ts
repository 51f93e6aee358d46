import { beforeAll, describe, expect, test } from 'vitest';
import { type WorkedClass, workClass } from '../../../src/method/class/class.ts';
import { missedSession } from '../../../src/method/class/missed.ts';
import { wholeClass } from '../../../src/method/class/timetable.ts';
import type { ClassPage } from '../../../src/method/class/types.ts';
import { faultsOf } from '../plan/checker.ts';
import { alike, classOf, sixEvenings, springPlaces } from './files.ts';

const memo = new Map<string, unknown>();
let page: ClassPage;
let state: WorkedClass;

beforeAll(async () => {
  const { answer, state: kept } = await workClass(
    classOf('class-of-twelve', { places: springPlaces(), sessions: sixEvenings }),
    undefined,
    memo,
  );
  if (!answer.ok || !kept) throw new Error('The class is not worked out.');
  page = answer.page;
  state = kept;
}, 60_000);

describe('the evenings of a class', () => {
  test('its timetable keeps every wait, window, tool and pair of hands', async () => {
    if (!state.timetable?.ok) throw new Error('There is no timetable.');
    expect(faultsOf(await wholeClass(state.one), state.timetable, page.people)).toEqual([]);
    expect(page.sessions).toHaveLength(9);
  });

  test('each place comes to each machine once, and no more at a time than there are machines', () => {
    const steps = new Set(
      page.sessions.flatMap(({ work }) => work.filter(({ once }) => !once).map(({ step }) => step)),
    );
    for (const step of steps) {
      const works = page.sessions.flatMap(({ work }) => work).filter((each) => each.step === step);
      const turns = works.flatMap((work) => work.turns.map((turn) => ({ ...turn, machines: work.machines })));
      const order = turns.flatMap(({ places }) => places);
      expect([step, order]).toEqual([step, page.places.map(({ id }) => id)]);
      for (const { places, machines } of turns)
        for (const { count } of machines) expect(places.length).toBeLessThanOrEqual(count);
    }
  });

  test('every wait is as long as the longest of its places, every window as short as the shortest', async () => {
    const whole = await wholeClass(state.one);
    for (const [at, step] of whole.steps.entries())
      for (const { worked } of state.one.places) {
        const own = worked.steps[at];
        expect(step.hands.each).toBeGreaterThanOrEqual(own?.hands.each ?? 0);
        for (const [which, link] of step.after.entries()) {
          expect(link.least ?? 0).toBeGreaterThanOrEqual(own?.after[which]?.least ?? 0);
          if (link.most !== undefined) expect(link.most).toBeLessThanOrEqual(own?.after[which]?.most ?? link.most);
        }
      }
  });

  test('two colours are two mixes, and the page says that the timetable has the time of one', () => {
    expect(page.notes.join(' ')).toContain('2 times');
  });
});

describe('a session that was missed', () => {
  const missed = async (place: string, evening: number) => {
    const found = await missedSession(state, place, evening + 3);
    if (!found) throw new Error('Nothing was found.');
    return found;
  };
  const kinds = (found: Awaited<ReturnType<typeof missed>>) =>
    Object.fromEntries(found.steps.map(({ step, kind }) => [step, kind]));

  test('that of shaping is caught up in the next, with the class', async () => {
    const found = await missed('2', 3);
    expect(found.verdict.level).toBe('good');
    expect(kinds(found)).toEqual({ 'cut-out': 'later', trim: 'later', 'soften-edges': 'later' });
    expect(found.steps.map(({ at }) => at?.slice(0, 14))).toEqual(Array(3).fill('Tue 2027-03-02'));
    expect(found.others).toBeUndefined();
    expect(found.ends?.at).toBe(found.ends?.otherwise);
  });

  test('that of the pour costs a mix of its own and a week, unless somebody else pours', async () => {
    const found = await missed('2', 2);
    expect(found.verdict.level).toBe('care');
    expect(kinds(found)).toEqual({
      abrade: 'later',
      mask: 'later',
      'dry-run': 'hear',
      mix: 'again',
      pour: 'later',
      watch: 'again',
    });
    expect(found.ends).toEqual({
      at: expect.stringContaining('2027-03-23'),
      otherwise: expect.stringContaining('2027-03-16'),
    });
    expect(found.verdict.text).toMatch(
      /The class plans nothing Tue 2027-03-23[ ,]+18:30: somebody must open for this place that evening\./,
    );
    expect(found.others?.steps).toEqual(['abrade', 'mask', 'pour']);
  });

  test('a session of the class in which it has nothing to do is no evening on which somebody is there', async () => {
    const seven = `${sixEvenings}\n2027-03-23 18:30-21:00`;
    const { answer, state: kept } = await workClass(classOf('class-of-twelve', { places: alike(6), sessions: seven }));
    if (!answer.ok || !kept) throw new Error(JSON.stringify(answer));
    const found = await missedSession(kept, '2', 5);
    expect(found?.verdict.level).toBe('care');
    expect(found?.verdict.text).toMatch(/The class plans nothing Tue 2027-03-23/);
  });

  test('the first: what was said is heard before anything is touched', async () => {
    const found = await missed('1', 1);
    expect(kinds(found)['brief']).toBe('hear');
    const [first] = found.steps;
    expect(found.steps.every(({ at }) => at === undefined || at >= (first?.at ?? ''))).toBe(true);
    expect(found.steps.find(({ step }) => step === 'seal')?.minds.join(' ')).toContain('waits');
  });

  test('of a window with a second way takes it and says so', async () => {
    const text = classOf('class-of-twelve', { places: [] })
      .text.replace(
        'after: [soften-edges, {',
        `after:
      - step: soften-edges
        most: 9 d
        missed: { do: Wipe the edges down and sand them by hand first, adds: 5 min }
      - {`,
      )
      .replace('take: high } }]\n    uses: [discs-p80]', 'take: high } }\n    uses: [discs-p80]');
    const { answer, state: kept } = await workClass(
      classOf('class-of-twelve', { places: alike(6), sessions: sixEvenings, text }),
    );
    if (!answer.ok || !kept) throw new Error(JSON.stringify(answer));
    const found = await missedSession(kept, '1', 7);
    expect(found?.verdict.level).toBe('care');
    expect(found?.steps.flatMap(({ minds }) => minds).join(' ')).toContain('sand them by hand first');
  });

  test('is nothing to whom no step of it belongs, and unknown places and sessions have none', async () => {
    expect(await missedSession(state, '99', 5)).toBeUndefined();
    expect(await missedSession(state, '1', 99)).toBeUndefined();
  });
});

test('a class that says no session has everything but a timetable', async () => {
  const { answer } = await workClass(classOf('class-of-twelve', { places: alike(6) }));
  expect(answer.ok && answer.page.sessions).toEqual([]);
  expect(answer.ok && answer.page.timeless?.why).toContain('when the class meets');
  expect(answer.ok && answer.page.order.lines.length).toBeGreaterThan(5);
});

test('sessions into which it does not fit are told, with what would make it fit', async () => {
  const sessions = sixEvenings.split('\n').slice(0, 5).join('\n');
  const { answer } = await workClass(classOf('class-of-twelve', { places: alike(6), sessions }));
  expect(answer.ok && answer.page.timeless?.why).toContain('cannot all be kept');
});

describe('sessions without students', () => {
  const marked = sixEvenings.replace(/(09:00-16:00|13:00-14:05)$/gm, '$1 teacher only');
  const pageOf = async (sessions: string) => {
    const { answer, state: kept } = await workClass(
      classOf('class-of-twelve', { places: alike(12), sessions }),
      undefined,
      memo,
    );
    if (!answer.ok || !kept) throw new Error(JSON.stringify(answer));
    return { page: answer.page, state: kept };
  };

  test('what students must hear is said in a session of theirs, though the teacher’s have room for it', async () => {
    const roomy = marked.replace('13:00-14:05', '09:00-18:00');
    const { page: found } = await pageOf(roomy);
    const heard = found.sessions.filter(({ work }) => work.some(({ step }) => step === 'brief'));
    expect(heard.map(({ from }) => from)).toEqual(['Tue 2027-02-09 18:30']);
    expect(
      found.sessions.filter(({ who }) => who === 'teacher').flatMap(({ work }) => work.map(({ step }) => step)),
    ).not.toContain('rout-channel');
    expect(found.notes.join(' ')).not.toContain('Everybody is taken');
  });

  test('no place stands at a machine in them, and nobody misses them', async () => {
    const { page: found, state: kept } = await pageOf(marked);
    const alone = found.sessions.filter(({ who }) => who === 'teacher');
    expect(alone).toHaveLength(3);
    for (const { work } of alone) for (const { places, turns } of work) expect([places, turns]).toEqual([[], []]);
    expect((await missedSession(kept, '1', 1))?.verdict.text).toContain('without students');
  });

  test('preparation that does not fit into them is told, not put among students', async () => {
    const short = marked.replace('13:00-14:05', '13:00-13:10');
    const { page: found } = await pageOf(short);
    expect(found.sessions).toEqual([]);
    expect(found.timeless?.why).toContain('does not fit into the sessions without students');
  });

  test('where none is marked, the page says that everybody is taken to be there', () => {
    expect(page.notes.join(' ')).toContain('Everybody is taken to be there in every session');
  });
});
