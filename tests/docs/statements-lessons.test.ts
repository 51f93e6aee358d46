import { beforeAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { type WorkedClass, workClass } from '../../src/method/class/class.ts';
import { missedSession } from '../../src/method/class/missed.ts';
import type { ClassSession } from '../../src/method/class/types.ts';
import { alike, classOf, fileText, sixEvenings } from '../method/class/files.ts';
import { howTo } from './how-to.ts';
import { methodOf, numberAt } from './methods.ts';
import { hold, whole } from './statements.ts';

// The six evenings of the lesson plans, held to the plan of the class: minutes, waits, and what becomes of whoever missed one.

const page = howTo('lesson-plans');
const tray = await methodOf('class-of-twelve');
const at = (pointer: string, end?: 'high') => numberAt(tray, pointer, end);
const names = ['one', 'two', 'three', 'four', 'five', 'six'] as const;

let evenings: readonly ClassSession[] = [];
let before: readonly ClassSession[] = [];
let state: WorkedClass;

beforeAll(async () => {
  const worked = await workClass(classOf('class-of-twelve', { places: alike(12), sessions: sixEvenings }));
  if (!worked.answer.ok || !worked.state) throw new Error('The class is not worked out.');
  state = worked.state;
  before = worked.answer.page.sessions.slice(0, 3);
  evenings = worked.answer.page.sessions.slice(3);
}, 60_000);

/** The section of an evening as written. */
const section = (name: string) => page.source.split(`{/* #${name} */}`)[1]?.split('\n## ')[0] ?? '';

/** Rows of its table: from, to and what the class does. */
const rows = (name: string) =>
  [...section(name).matchAll(/^\| (\d\d:\d\d)–(\d\d:\d\d) \| (.*?) \|/gm)].map(([, from, to, does]) => ({
    from,
    to,
    does,
  }));

describe.each(names.map((name, index) => ({ name, index })))('evening $name', ({ name, index }) => {
  test('has each step of the plan at its minutes, and names what is between', () => {
    const session = evenings[index] as ClassSession;
    const expected: string[] = [];
    let until = session.from.slice(-5);
    for (const { from, to } of session.work) {
      if (from > until) expected.push(`${until}–${from}`);
      expected.push(`${from}–${to}`);
      until = to;
    }
    if (session.to > until) expected.push(`${until}–${session.to}`);
    expect(rows(name).map(({ from, to }) => `${from}–${to}`)).toEqual(expected);
  });

  test('says what whoever missed it loses, as the plan has it', async () => {
    const missed = await missedSession(state, '2', index + 4);
    const late = missed?.ends?.at !== missed?.ends?.otherwise;
    expect(late).toBe(name !== 'three');
    const said = section(name).split('**Who missed it**')[1] ?? '';
    // A place that is late may stay with the class where somebody else does the work that evening.
    expect(missed?.others === undefined).toBe(!late);
    expect(/somebody|the teacher marks/.test(said)).toBe(late);
  });
});

test('the days before the course are those of its calendar', () => {
  const calendar = parse(fileText('calendars/six-tuesdays.yaml')) as { sessions: string[] };
  const first = Date.parse('2027-02-09');
  // Of the calendar the Saturdays: an evening for the order and the six of the course stand beside them.
  const saturdays = calendar.sessions
    .map((text) => Date.parse(text.slice(0, 10)))
    .filter((date) => new Date(date).getUTCDay() === 6);
  const days = saturdays.map((date) => (first - date) / 86_400_000);
  expect(days).toEqual([17, 10, 3]);
  expect(before.map(({ work }) => work.map(({ step }) => step))).toEqual([
    ['order', 'read-moisture', 'stack'],
    ['prepare-blanks', 'prepare-blanks', 'prepare-blanks', 'rest'],
    ['last-planing'],
  ]);
  const hours = before.map(({ start, work }) => ((work.at(-1)?.end ?? 0) - start) / 60);
  expect(hours.map(Math.round)).toEqual([2, 4, 1]);
  for (const said of [
    '**Seventeen days before,**',
    '**Ten days before,** with the helper, 4 hours',
    '**Three days before,** 1 hour',
  ])
    expect(page.text).toContain(said);
});

hold({
  'lesson-plans': [
    [
      'the seal coat waits',
      () =>
        `needs up to ${(at('/calculations/clock/figures/sandable', 'high') / 86_400).toFixed(1)} days before it may be sanded`,
    ],
    [
      'the mix of the class',
      () =>
        `mixes ${whole(at('/calculations/dose/figures/mass'))} g in ${['no', 'one', 'two', 'three', 'four', 'five'][at('/calculations/dose/figures/cups')]} cups`,
    ],
    [
      'the part of a tray',
      () =>
        `each pours ${at('/calculations/dose/figures/pieceMass').toFixed(1)} g into their own tray, which stands proud with it`,
    ],
    ['the paste', () => `paste weighed: ${at('/calculations/dose/figures/pigment').toFixed(1)} g`],
    ['the hottest hour', () => `${whole(at('/calculations/heat/figures/timeToPeak') / 3600)} h after mixing`],
    [
      'the days of the cure',
      () => {
        const days = at('/calculations/clock/figures/fullCure') / 86_400;
        expect(at('/calculations/clock/figures/fullCure', 'high') / 86_400).toBeLessThan(14);
        return `by its nights the full cure takes ${whole(days)} days, and the pour is 14 days old`;
      },
    ],
  ],
});
