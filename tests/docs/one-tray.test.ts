import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';
import { howTo } from './how-to.ts';
import { methodOf } from './methods.ts';

const page = howTo('one-tray');
const calendar = readFileSync(join(root, 'methods/calendars/six-tuesdays.yaml'), 'utf8');
const day = 86_400_000;

test('the three Saturdays lie before the first evening as the calendar of the method has them', () => {
  const sessions = [...calendar.matchAll(/^ {2}- (\d{4}-\d\d-\d\d) /gm)].map(([, date]) => Date.parse(date as string));
  const saturdays = sessions.filter((date) => new Date(date).getUTCDay() === 6);
  const first = Math.min(...sessions.filter((date) => date > Math.max(...saturdays)));
  expect(new Date(first).getUTCDay()).toBe(2);
  const before = saturdays.map((date) => (first - date) / day);
  expect(before).toEqual([17, 10, 3]);
  for (const days of before) expect(page.text).toMatch(new RegExp(`a Saturday, ${days} days before`));
});

test('each evening does what the steps of the method do on it', async () => {
  const { record } = await methodOf('class-of-twelve');
  const evenings = ['First', 'Second', 'Third', 'Fourth', 'Fifth'] as const;
  let now = -1;
  const acts = new Map<number, string[]>();
  for (const { title, act } of Object.values(record.steps)) {
    const begins = evenings.findIndex((each) => title.startsWith(`${each} evening`));
    if (begins >= 0) now = begins;
    acts.set(now, [...(acts.get(now) ?? []), act]);
  }
  // The sixth evening has no title of its own: it is the week after the first coat.
  const said: readonly (readonly [evening: number, words: string, acts: readonly string[]])[] = [
    [0, 'outline marked, channel routed, seal coat brushed', ['mark-out', 'rout', 'seal']],
    [1, 'seal coat dulled, resin mixed and poured', ['sand', 'mix', 'pour']],
    [2, 'outline sawn and trimmed, edge of the back rounded', ['cut-out', 'rout', 'round-over']],
    [
      3,
      'inlay levelled, edge of the face rounded, tray sanded, grain raised',
      ['level', 'round-over', 'sand', 'raise-the-grain'],
    ],
    [4, 'last grit, first coat of oil', ['sand', 'oil']],
  ];
  for (const [evening, words, done] of said) {
    expect(page.text).toContain(`${evenings[evening]?.toLowerCase()} Tuesday | ${words} |`);
    expect(acts.get(evening)).toEqual(expect.arrayContaining([...done]));
  }
});
