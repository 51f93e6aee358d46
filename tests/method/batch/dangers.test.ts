import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { BatchEntry } from '../../../src/method/batch/record.ts';
import { root } from '../../../src/store/index.ts';
import { at, finished, hours, linesOf, read, started, stateAt, told } from './kit.ts';

/** Four trays with a seal coat, a mix and a pour, as the site gives them. */
const method = {
  file: 'salvaged-ash-amber.yaml',
  text: readFileSync(join(root, 'methods', 'salvaged-ash-amber.yaml'), 'utf8'),
};
const beforeSeal =
  `history find-metal stack plan-cuts saw-blanks flatten rest plane rout-pocket clean-pocket dam dry-run`.split(' ');

const thermometer = (step: string, calculation: string, input: string, value: string, when: string): BatchEntry => ({
  kind: 'reading',
  id: `${step}-${calculation}-${input}-${value.replace(/\D/g, '')}`,
  at: at(when),
  step,
  calculation,
  input,
  value,
  when: at(when),
});
const sealedAt = (day: string, night?: string): BatchEntry[] => [
  ...beforeSeal.map((step) => finished(`f-${step}`, step, '2027-01-12 08:00')),
  started('s', 'seal', '2027-01-13 09:00'),
  finished('t', 'seal', '2027-01-13 09:20'),
  thermometer('seal', 'clock', 'dayTemperature', day, '2027-01-13 09:10'),
  ...(night ? [thermometer('seal', 'clock', 'nightTemperature', night, '2027-01-13 09:11')] : []),
];
const mixedAt = (temperature: string, from: string, to: string): BatchEntry[] => [
  started('m', 'mix', from),
  finished('n', 'mix', to),
  thermometer('mix', 'dose', 'shopTemperature', temperature, from),
];
const quick = { withoutTimetable: true };
const cardsAt = async (entries: readonly BatchEntry[], now: string) =>
  linesOf(await stateAt(entries, now, { method }, quick));

test('a seal coat at 8 °C: neither mixing nor pouring may be done, and the clock says why', async () => {
  for (const now of ['2027-01-13 13:00', '2027-01-17 08:00']) {
    const [mix, pour] = await cardsAt(sealedAt('8 °C', '8 °C'), now);
    expect(mix).toMatch(
      /^must-not Weigh and mix the resin: Do not: Not at 8 °C by day and 8 °C by night: it never cures/,
    );
    expect(pour).toMatch(/^must-not Pour: Do not: Not at 8 °C/);
  }
});

test('sealed warm and mixed at 8 °C: the pour is asked of the clock and of the heat at 8 °C', async () => {
  const entries = [...sealedAt('20 °C', '17 °C'), ...mixedAt('8 °C', '2027-01-14 14:00', '2027-01-14 14:20')];
  const [pour] = await cardsAt(entries, '2027-01-14 14:30');
  expect(pour).toMatch(/^must-not Pour: Do not: Not at 8 °C by day and 8 °C by night: it never cures/);
});

test('8 °C by day and no night: not known, the cold is said, and the night is asked for', async () => {
  const batch = await stateAt(sealedAt('8 °C'), '2027-01-17 08:00', { method }, quick);
  const [mix] = linesOf(batch);
  expect(mix).toMatch(
    /^unknown Weigh and mix the resin: Mind: .*8 °C, and this method is written for 18 °C to 26 °C\./,
  );
  expect(mix).toContain('below about 15 °C most sheets say no');
  expect(batch.state.steps.find(({ id }) => id === 'seal')?.wanted.map(({ input }) => input)).toEqual([
    'nightTemperature',
  ]);
});

test('38 °C: the dose is asked with it, and says that what is left in the cup runs away', async () => {
  const [mix] = await cardsAt(sealedAt('38 °C', '30 °C'), '2027-01-13 18:00');
  expect(mix).toMatch(/^now Weigh and mix the resin: Mind: .*38 °C, and this method is written for/);
  expect(mix).toMatch(/Left in the cup, .* of this mix runs away/);
  expect(mix).toContain('Warmer, resin sets sooner and grows hotter');
});

test('where nothing is mixed any more, no reading speaks of before the mixing', async () => {
  const cherry = {
    file: 'wide-cherry-flood.yaml',
    text: readFileSync(join(root, 'methods', 'wide-cherry-flood.yaml'), 'utf8'),
  };
  const first = await stateAt([], '2027-01-12 08:00', { method: cherry }, quick);
  const ids = first.state.steps.map(({ id }) => id);
  for (const [day, night, says] of [
    ['8 °C', '8 °C', /8 °C/],
    ['38 °C', '30 °C', /Warmer, resin sets sooner and grows hotter/],
    ['8 °C', undefined, /Colder, resin cures later/],
    ['14 °C', '14 °C', /14 °C/],
  ] as const) {
    const entries = [
      ...ids.slice(0, ids.indexOf('turn')).map((step) => finished(`f-${step}`, step, '2027-01-12 08:00')),
      thermometer('seal', 'clock', 'dayTemperature', day, '2027-01-12 08:00'),
      ...(night ? [thermometer('seal', 'clock', 'nightTemperature', night, '2027-01-12 08:00')] : []),
    ];
    const lines = linesOf(await stateAt(entries, '2027-01-14 18:00', { method: cherry }, quick));
    const turn = lines.find((line) => line.includes('dull the lower face'));
    expect(turn).toMatch(says);
    expect(turn).not.toContain('before you mix');
  }
});

test('as planned: no card minds anything', async () => {
  const [mix] = await cardsAt(sealedAt('20 °C', '17 °C'), '2027-01-14 14:00');
  expect(mix).toMatch(/^now Weigh and mix the resin: May be done now\./);
});

test('a cold reading gives a mixed cup no more time than the plan', async () => {
  const warm = await stateAt([], '2027-01-12 08:00', { method }, quick);
  const cold = await stateAt(
    mixedAt('12 °C', '2027-01-14 14:00', '2027-01-14 14:20'),
    '2027-01-14 14:30',
    { method },
    quick,
  );
  const windowOf = ({ measured }: typeof warm) =>
    measured.worked.steps.find(({ id }) => id === 'pour')?.after.find(({ step }) => step === 'mix')?.most;
  expect(windowOf(warm)).toBeGreaterThan(0);
  expect(windowOf(cold)).toBe(windowOf(warm));
});

test('a window that counts from the start of mixing runs while mixing goes on, and is over when it is over', async () => {
  const begun = [...sealedAt('20 °C', '17 °C'), started('m', 'mix', '2027-01-15 06:00')];
  const dose = thermometer('mix', 'dose', 'shopTemperature', '20 °C', '2027-01-15 06:00');
  for (const entries of [begun, [...begun, dose]]) {
    const soon = (await cardsAt(entries, '2027-01-15 06:30')).find((line) => line.includes('Pour'));
    expect(soon).toMatch(/^later Pour: Waits until .* is done\. It must be begun by Fri 2027-01-15 09:54\.$/);
    const late = (await cardsAt(entries, '2027-01-15 11:36')).find((line) => line.includes('Pour'));
    expect(late).toMatch(/^must-not Pour: Its window after “Weigh and mix the resin” closed Fri 2027-01-15 09:54\./);
  }
  const unread = [...begun, finished('n', 'mix', '2027-01-15 11:30')];
  const [pour] = await cardsAt(unread, '2027-01-15 11:36');
  expect(pour).toMatch(/^must-not Pour: Its window after “Weigh and mix the resin” closed Fri 2027-01-15 09:54\./);
});

test('after a pour of which the end alone is written down somebody stays with it', async () => {
  const poured = [
    ...sealedAt('20 °C', '17 °C'),
    ...mixedAt('20 °C', '2027-01-14 14:00', '2027-01-14 14:20'),
    finished('p', 'pour', '2027-01-14 15:00'),
  ];
  const watchAt = async (now: string) => (await cardsAt(poured, now)).find((line) => line.includes('Stay with it'));
  // Three pieces after the first take 8 minutes each: 24 minutes before the end, and 2 h from there.
  expect(await watchAt('2027-01-14 15:05')).toMatch(
    /^now Stay with it, and see the leftovers out: Stay now\. It must be begun by Thu 2027-01-14 16:36\.$/,
  );
  expect(await watchAt('2027-01-14 17:00')).toMatch(/: Stay now\. It was to be begun by Thu 2027-01-14 16:36\.$/);
});

test('poured at 8 °C: the case as measured is told, and not beside it the one of the plan', async () => {
  const poured = [
    started('s1', 'seal', '2027-01-12 09:00'),
    finished('s2', 'seal', '2027-01-12 09:20'),
    read('r', 'seal', '2027-01-12 09:10', '22 °C'),
    started('p1', 'pour', '2027-01-13 08:00'),
    finished('p2', 'pour', '2027-01-13 08:20'),
    read('q', 'pour', '2027-01-13 08:05', '8 °C'),
  ];
  const { state } = await stateAt(poured, '2027-01-13 09:00');
  const words = told([...state.untimed, ...state.today.map(({ text }) => text)].join(' '));
  expect(words).toContain('Not at 8 °C');
  expect(words).not.toContain('At 22 °C');
});

test('a batch without a shop record counts with as many people as the page of its method, and says so', async () => {
  const { opened, state } = await stateAt([], '2027-01-12 08:00', { case: { start: '2027-01-12', hours } }, quick);
  expect([opened.people, state.assumedPeople]).toEqual([3, 3]);
  const told = await stateAt([], '2027-01-12 08:00', { case: { start: '2027-01-12', hours, people: 1 } }, quick);
  expect([told.opened.people, told.state.assumedPeople]).toEqual([1, undefined]);
});
