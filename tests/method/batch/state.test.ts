import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cureClockCalculator as cureClock } from '../../../src/calculators/cure-clock/calculator.ts';
import { answerTo } from '../../../src/calculators/kit/answer.ts';
import { instantOf } from '../../../src/method/batch/changes.ts';
import type { BatchEntry } from '../../../src/method/batch/record.ts';
import { checkSchedule } from '../../../src/method/schedule/check.ts';
import { root } from '../../../src/store/index.ts';
import { at, finished, inlaidBoard, linesOf, read, started, stateAt, strike, told } from './kit.ts';

const sealed = [started('s1', 'seal', '2027-01-12 09:00'), finished('s2', 'seal', '2027-01-12 09:20')];

/** The window after a coat, asked of the cure clock itself: minutes, as a plan rounds them. */
function windowAt(temperature: string): { opens: number; closes: number } {
  const answer = answerTo(cureClock, { resin: 'slow-casting-2-1', shopTemperature: temperature });
  if (!answer.ok) throw new Error('the cure clock refuses');
  const { recoatOpens, recoatCloses } = answer.value.figures;
  return {
    opens: Math.ceil((recoatOpens?.high ?? recoatOpens?.value ?? 0) / 60 - 1e-9),
    closes: Math.floor((recoatCloses?.low ?? recoatCloses?.value ?? 0) / 60 + 1e-9),
  };
}

const minutesAfter = (instant: string | undefined, from: string) =>
  (Date.parse(instant ?? '') - Date.parse(at(from))) / 60_000;

test('at the start the first step may be done, and the plan lies as it was laid', async () => {
  const batch = await stateAt([], '2027-01-12 08:00');
  expect(linesOf(batch)).toEqual(['now Seal the pocket: May be done now.']);
  expect(batch.state.changes).toEqual([]);
  expect(batch.timetable?.end).toBe(batch.first?.end);
});

test.each(['16 °C', '18 °C', '22 °C', '27 °C'])(
  'sealed at %s: the window is the one of the cure clock at it',
  async (temperature) => {
    const { opens, closes } = windowAt(temperature);
    const batch = await stateAt([...sealed, read('r', 'seal', '2027-01-12 09:10', temperature)], '2027-01-12 10:00');
    const pour = batch.state.today.find(({ step }) => step === 'pour');
    expect(minutesAfter(pour?.opens, '2027-01-12 09:20')).toBe(opens);
    // The window counts from the first of the two pieces: 15 of the 20 minutes that the method gives the coat.
    expect(minutesAfter(pour?.closes, '2027-01-12 09:15')).toBe(closes);
    // The plan keeps the same wait and window; setting up lies within the wait.
    const work = batch.timetable?.steps.find(({ id }) => id === 'pour');
    const from = batch.timetable && work ? instantOf(batch.timetable, work.start) : 0;
    expect(from + 10 * 60_000).toBeGreaterThanOrEqual(Date.parse(pour?.opens ?? ''));
    expect(from).toBeLessThanOrEqual(Date.parse(pour?.closes ?? ''));
  },
);

test('16 °C instead of 22 °C: what is otherwise is said, old and new', async () => {
  const batch = await stateAt([...sealed, read('r', 'seal', '2027-01-12 09:10', '16 °C')], '2027-01-12 10:00');
  const wait = batch.state.changes.find(({ what, step }) => what === 'wait' && step === 'pour');
  expect(told(wait?.words ?? '')).toMatch(
    /^“Pour” comes at least [\d.]+ h and at most [\d.]+ (h|d) after “Seal the pocket”; the plan said at least [\d.]+ h and at most [\d.]+ h\. It may be begun from \w{3} 2027-01-1\d \d\d:\d\d, and by \w{3} 2027-01-1\d \d\d:\d\d\.$/,
  );
  expect(batch.state.changes.some(({ what, step }) => what === 'start' && step === 'level')).toBe(true);
});

test('a temperature that nobody wrote down leaves the wait unknown, and no plan is laid over it', async () => {
  const batch = await stateAt(sealed, '2027-01-13 10:00');
  expect(batch.state.today.map(({ state, step }) => `${state} ${step}`)).toEqual(['unknown pour']);
  expect(batch.state.today[0]?.text).toContain('Not every temperature was written down at “Seal the pocket”');
  expect(batch.state.today[0]).not.toHaveProperty('opens');
  expect(batch.timetable).toBeUndefined();
  expect(batch.state.untimed).toHaveLength(1);
});

test('a temperature outside what the clock holds for is refused, and so is everything that rests on it', async () => {
  const batch = await stateAt([...sealed, read('r', 'seal', '2027-01-12 09:10', '60 °C')], '2027-01-13 10:00');
  expect(batch.state.today[0]?.state).toBe('unknown');
  expect(batch.timetable).toBeUndefined();
  expect(told(batch.state.problems[0]?.text ?? '')).toContain(
    'The reading “60 °C” cannot be used: 60 °C is more than this takes',
  );
});

test('of two readings the later holds, whichever was written down first; one that is still to come is left aside', async () => {
  const [cold, warm] = [
    read('r1', 'seal', '2027-01-12 09:30', '16 °C'),
    read('r2', 'seal', '2027-01-12 09:10', '22 °C'),
  ];
  const opensWith = async (...entries: BatchEntry[]) =>
    (await stateAt([...sealed, ...entries], '2027-01-12 10:00')).state.today.find(({ step }) => step === 'pour')?.opens;
  const byCold = await opensWith(cold);
  expect(await opensWith(cold, warm)).toBe(byCold);
  expect(await opensWith(warm)).not.toBe(byCold);
  const batch = await stateAt([...sealed, read('r', 'seal', '2027-01-12 12:00', '22 °C')], '2027-01-12 10:00');
  expect(batch.state.today.find(({ step }) => step === 'pour')?.state).toBe('unknown');
  expect(batch.state.problems[0]?.text).toBe(
    'The reading “22 °C” is written down for a time that is still to come, and is left aside until then.',
  );
});

test('a reading at the pour changes the waits after it, and not the window before it', async () => {
  const entries = [
    ...sealed,
    read('r', 'seal', '2027-01-12 09:10', '22 °C'),
    started('p1', 'pour', '2027-01-13 08:00'),
    finished('p2', 'pour', '2027-01-13 08:20'),
    read('q', 'pour', '2027-01-13 08:05', '16 °C'),
  ];
  const batch = await stateAt(entries, '2027-01-13 09:00');
  const { worked, planned } = batch.measured;
  const link = (method: typeof worked, step: string) => method.steps.find(({ id }) => id === step)?.after[0];
  expect(link(worked, 'pour')).toMatchObject({ least: link(planned, 'pour')?.least });
  expect(link(worked, 'level')?.least).toBeGreaterThan((link(planned, 'level')?.least ?? 0) * 1.2);
});

test('a closed window: the second way is said; without one, stop', async () => {
  const entries = [...sealed, read('r', 'seal', '2027-01-12 09:10', '22 °C')];
  const late = await stateAt(entries, '2027-01-20 09:00');
  expect(linesOf(late)[0]).toMatch(
    /^overdue Pour: Its window after “Seal the pocket” closed .* Do it the second way: Let it cure, sand it dull, and pour\.$/,
  );
  expect(late.timetable?.secondWays).toHaveLength(1);
  const text = inlaidBoard.replace(/\n +missed: .*/, '');
  const stop = await stateAt(entries, '2027-01-20 09:00', { method: { file: 'x.yaml', text } });
  expect(linesOf(stop)[0]).toMatch(/^must-not Pour: .* The method knows no second way\.$/);
  expect(stop.timetable).toBeUndefined();
});

test('pieces go on by themselves: one is poured, the other waits', async () => {
  const entries = [
    started('a', 'seal', '2027-01-12 09:00', [1, 1]),
    finished('b', 'seal', '2027-01-12 09:15', [1, 1]),
    read('r', 'seal', '2027-01-12 09:10', '22 °C'),
  ];
  const batch = await stateAt(entries, '2027-01-12 10:00');
  expect(batch.state.today.map(({ state, step, which }) => `${state} ${step}${which}`)).toEqual([
    'now seal (piece 2)',
    'later pour (piece 1)',
  ]);
});

const contradictions: [what: string, entries: BatchEntry[], problem: RegExp, plan: boolean][] = [
  [
    'finished before it was started',
    [started('a', 'seal', '2027-01-12 09:30'), finished('b', 'seal', '2027-01-12 09:00')],
    /was finished Tue 2027-01-12 09:00, before it was started/,
    false,
  ],
  [
    'in the future',
    [started('a', 'seal', '2027-01-15 09:30')],
    /is written down for Fri 2027-01-15 09:30, which is still to come/,
    false,
  ],
  [
    'done twice',
    [...sealed, finished('b', 'seal', '2027-01-12 09:40', [2, 2]), read('r', 'seal', '2027-01-12 09:10', '22 °C')],
    /^“Seal the pocket” \(piece 2\) is written down as finished 2 times on the same pieces/,
    true,
  ],
  [
    'before what it waits for',
    [
      started('a', 'pour', '2027-01-12 09:00'),
      finished('b', 'pour', '2027-01-12 09:20'),
      read('r', 'pour', '2027-01-12 09:10', '22 °C'),
    ],
    /“Pour” was begun .*, and “Seal the pocket”, which comes before it, is not written down as done/,
    true,
  ],
  [
    'too early',
    [...sealed, read('r', 'seal', '2027-01-12 09:10', '22 °C'), started('a', 'pour', '2027-01-12 09:30')],
    /“Pour” was begun Tue 2027-01-12 09:30, before the time after “Seal the pocket” was over/,
    true,
  ],
  [
    'a piece that there is not',
    [started('a', 'seal', '2027-01-12 09:00', [3, 4])],
    /was written down for pieces 3 to 4, and the batch has 2/,
    true,
  ],
  ['a step that there is not', [started('a', 'sand', '2027-01-12 09:00')], /“sand” is no step of this method/, true],
  [
    'an input that there is not',
    [read('r', 'seal', '2027-01-12 09:10', '22 °C', 'warmth')],
    /“clock” has no input “warmth”/,
    true,
  ],
];

test.each(contradictions)('%s: kept as typed, said, with a way out', async (_, entries, problem, plan) => {
  const batch = await stateAt(entries, '2027-01-12 10:00');
  const found = batch.state.problems.find(({ text }) => problem.test(told(text)));
  expect(batch.state.problems.map(({ text }) => told(text))).toEqual(
    expect.arrayContaining([expect.stringMatching(problem)]),
  );
  expect(found?.wayOut).not.toBe('');
  expect(batch.standing.all.map(({ entry }) => entry)).toEqual(expect.arrayContaining(entries));
  expect(batch.timetable !== undefined).toBe(plan);
});

test('a correction strikes, a correction of it brings back, and nothing is erased', async () => {
  const wrong = finished('x', 'seal', '2027-01-12 09:50');
  const entries = [started('s1', 'seal', '2027-01-12 09:00'), wrong, strike('c1', 'x', '2027-01-12 09:51')];
  const struck = await stateAt(entries, '2027-01-12 10:00');
  expect(struck.state.today[0]).toMatchObject({ step: 'seal', state: 'going' });
  expect(struck.standing.all.find(({ entry }) => entry.id === 'x')?.struck?.id).toBe('c1');
  const back = await stateAt([...entries, strike('c2', 'c1', '2027-01-12 09:52')], '2027-01-12 10:00');
  expect(back.state.steps[0]).toMatchObject({ done: 2 });
  const round = [...entries, strike('c2', 'c1', '2027-01-12 09:52'), strike('c3', 'c2', '2027-01-12 09:53')];
  expect((await stateAt(round, '2027-01-12 10:00')).state.steps[0]).toMatchObject({ done: 0 });
  const circle = [wrong, { ...strike('c1', 'c2', '2027-01-12 09:51') }, strike('c2', 'c1', '2027-01-12 09:52')];
  expect((await stateAt(circle, '2027-01-12 10:00')).state.problems.map(({ text }) => text)).toContain(
    'Corrections strike each other in a circle; none of them holds.',
  );
});

test('entries in any order of arrival come to the same', async () => {
  const entries = [
    ...sealed,
    read('r1', 'seal', '2027-01-12 09:10', '16 °C'),
    read('r2', 'seal', '2027-01-12 09:15', '18 °C'),
    finished('x', 'seal', '2027-01-12 09:40'),
    strike('c', 'x', '2027-01-12 09:41'),
    started('p', 'pour', '2027-01-13 12:00', [1, 1]),
  ];
  const now = '2027-01-13 12:05';
  const expected = (await stateAt(entries, now)).state;
  await fc.assert(
    fc.asyncProperty(fc.shuffledSubarray(entries, { minLength: entries.length }), async (shuffled) => {
      expect((await stateAt(shuffled, now, {}, {})).state).toEqual(expected);
    }),
    { numRuns: 6 },
  );
});

test('whatever was done when, the plan keeps it where it was and lays the rest from now on, and the checker agrees', async () => {
  const minutes = fc.integer({ min: 0, max: 4 * 24 * 60 });
  await fc.assert(
    fc.asyncProperty(
      fc.array(
        fc.tuple(
          fc.constantFrom('seal', 'pour', 'level', 'oil'),
          minutes,
          fc.integer({ min: 0, max: 90 }),
          fc.boolean(),
        ),
        { maxLength: 4 },
      ),
      fc.constantFrom('16 °C', '22 °C', '26 °C'),
      async (works, temperature) => {
        const moment = (minute: number) => new Date(Date.parse(at('2027-01-12 08:00')) + minute * 60_000).toISOString();
        const entries = works.flatMap(([step, from, lasts, isOver], place): BatchEntry[] => [
          { kind: 'started', id: `a${place}`, at: moment(from), step, when: moment(from) },
          ...(isOver
            ? [{ kind: 'finished' as const, id: `b${place}`, at: moment(from), step, when: moment(from + lasts) }]
            : []),
          {
            kind: 'reading',
            id: `r${place}`,
            at: moment(from),
            step,
            calculation: 'clock',
            input: 'shopTemperature',
            value: temperature,
            when: moment(from),
          },
        ]);
        const batch = await stateAt(entries, '2027-01-17 10:00');
        const { timetable, state } = batch;
        if (!timetable) {
          expect(state.untimed.length).toBeGreaterThan(0);
          return;
        }
        const { problem, sittings } = timetable.made;
        expect(checkSchedule(problem, timetable.planned.placements)).toEqual([]);
        const now = Date.parse(at('2027-01-17 10:00'));
        for (const { id, pinned, step } of sittings) {
          const placed = timetable.planned.placements.find((placement) => placement.id === id)?.pieces ?? [];
          const [start, end] = [
            instantOf(timetable, placed[0]?.start ?? 0),
            instantOf(timetable, placed.at(-1)?.end ?? 0),
          ];
          if (!pinned) expect(start).toBeGreaterThanOrEqual(now);
          else {
            const run = batch.done.runs.find((each) => each.step === step && each.start === start);
            expect(run).toBeDefined();
            if (run?.end !== undefined) expect(end).toBe(run.end);
          }
        }
      },
    ),
    { numRuns: 25 },
  );
});

test('a day tells nothing of its night: until both are read nobody knows, and the other is still asked for', async () => {
  const text = inlaidBoard.replace(
    'shopTemperature: { from: /parameters/shop }',
    'dayTemperature: 22 °C, nightTemperature: 18 °C',
  );
  const method = { file: 'x.yaml', text };
  const entries = [...sealed, read('r', 'seal', '2027-01-12 09:10', '20 °C', 'dayTemperature')];
  const half = await stateAt(entries, '2027-01-12 10:00', { method });
  expect(linesOf(half)[0]).toMatch(/^unknown Pour: Not every temperature was written down .* \(By night\)\.$/);
  expect(half.state.steps[0]?.wanted.map(({ input }) => input)).toEqual(['nightTemperature']);
  const whole = [...entries, read('q', 'seal', '2027-01-13 06:00', '17 °C', 'nightTemperature')];
  expect(linesOf(await stateAt(whole, '2027-01-13 07:00', { method }))[0]).toMatch(/^later Pour: Not before/);
});

test('wood that comes to rest is weighed: its wait asks for no thermometer, and reads one where it is written down', async () => {
  const method = { file: 'first-tray.yaml', text: readFileSync(join(root, 'methods', 'first-tray.yaml'), 'utf8') };
  const entries = ['brief', 'order', 'read-moisture', 'stack'].map((step, place) =>
    finished(`f${place}`, step, `2027-01-12 1${place}:00`),
  );
  const quick = { withoutTimetable: true };
  const batch = await stateAt(entries, '2027-01-13 08:00', { method }, quick);
  expect(linesOf(batch)).toEqual([expect.stringMatching(/^later Mark the blanks: Not before /)]);
  const damp: BatchEntry = {
    kind: 'reading',
    id: 'r',
    at: at('2027-01-12 12:00'),
    step: 'read-moisture',
    calculation: 'settling',
    input: 'moistureNow',
    value: '12 %',
    when: at('2027-01-12 12:00'),
  };
  const later = await stateAt([...entries, damp], '2027-01-13 08:00', { method }, quick);
  expect(Date.parse(later.state.today[0]?.opens ?? '')).toBeGreaterThan(Date.parse(batch.state.today[0]?.opens ?? ''));
});

test('the thermometer is read once: a reading counts for every calculation of the step that takes the same parameter', async () => {
  const again = `    calculations:\n      again:\n        use: cure-clock\n        with: { resin: { from: /parameters/resin }, shopTemperature: { from: /parameters/shop } }\n`;
  const text = inlaidBoard.replace('    does: A thin stream.\n', `    does: A thin stream.\n${again}`);
  const poured = [
    ...sealed,
    read('r', 'seal', '2027-01-12 09:10', '22 °C'),
    started('p', 'pour', '2027-01-13 08:00'),
    finished('q', 'pour', '2027-01-13 08:20'),
    { ...read('t', 'pour', '2027-01-13 08:05', '16 °C'), calculation: 'again' } as BatchEntry,
  ];
  const batch = await stateAt(poured, '2027-01-13 09:00', { method: { file: 'x.yaml', text } });
  expect(batch.state.steps.find(({ id }) => id === 'pour')?.wanted).toEqual([]);
  expect(batch.measured.at('pour').calculations['clock']?.raw['shopTemperature']).toBe('16 °C');
  // The seal coat was laid at its own temperature.
  expect(batch.measured.at('seal').calculations['clock']?.raw['shopTemperature']).toBe('22 °C');
});
