import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readMethods } from '../../src/command/validate-methods.ts';
import { starterMethod } from '../../src/method/record/starter.ts';
import { kerf } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'validate-'));
mkdirSync(join(folder, 'calendars'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const write = (name: string, text: string) => writeFileSync(join(folder, name), text);

test('methods, shop records and calendars are read, each problem at its place, and check says the same', async () => {
  write('good.yaml', starterMethod);
  write('pointer.yaml', starterMethod.replace('/calculations/coats/figures/area', '/calculations/coats/figures/aria'));
  write('quantity.yaml', starterMethod.replace('does: Wipe on another', 'does: Wipe {20 blobs} on another'));
  write(
    'taught.yaml',
    starterMethod.replace('sources:', 'taught: { calendar: tuesday, people: 8, evenings: 4 }\nsources:'),
  );
  write('shop.yaml', 'shop: 1\nname: 7\n');
  write('notes.txt', 'no method');
  copyFileSync('methods/calendars/six-tuesdays.yaml', join(folder, 'calendars', 'tuesdays.yaml'));
  write(join('calendars', 'odd.yaml'), 'week:\n  tue: ["18:30-21:00"]\n  wed: ["21:00-18:30"]\n');
  const { problems, ...counts } = await readMethods(folder, 'methods');
  expect(counts).toEqual({ methods: 4, shops: 1, calendars: 2 });
  const lineOf = (text: string, words: string) => text.split('\n').findIndex((line) => line.includes(words)) + 1;
  const told = problems.map(({ file, line, column, field }) => [file, line, column > 0, field]);
  expect(told).toContainEqual([
    'methods/pointer.yaml',
    lineOf(starterMethod, '/calculations/coats/figures/area'),
    true,
    'steps.sand.calculations.grits.with.area.from',
  ]);
  expect(told).toContainEqual([
    'methods/quantity.yaml',
    lineOf(starterMethod, 'does: Wipe on another'),
    true,
    'steps.oil-again.does',
  ]);
  expect(told.filter(([file]) => file === 'methods/shop.yaml').length).toBeGreaterThan(0);
  expect(told).toContainEqual(['methods/calendars/odd.yaml', 3, true, expect.stringMatching(/^week/)]);
  expect(problems.find(({ file }) => file === 'methods/taught.yaml')).toMatchObject({
    field: 'taught.calendar',
    line: lineOf(starterMethod, 'sources:'),
    message:
      '“tuesday” is no calendar: there is no calendars/tuesday.yaml beside the methods. Those that are: odd, tuesdays. Did you mean tuesdays?',
  });
  expect(new Set(problems.map(({ file }) => file)).size).toBe(5);

  const path = join(folder, 'pointer.yaml');
  const check = await kerf('check', path);
  const [problem] = problems.filter(({ file }) => file.endsWith('pointer.yaml'));
  expect(check.out).toContain(`${path}:${problem?.line}:${problem?.column} stop [readable]`);
  expect(check.out).toContain(problem?.message);
});

test('a method that names hours which are not in the folder beside it is told so by check, at the place', async () => {
  const text = starterMethod.replace('sources:', 'taught: { calendar: mondays, people: 8, evenings: 4 }\nsources:');
  const line = text.split('\n').findIndex((each) => each.startsWith('taught:')) + 1;
  write('mondays.yaml', text);
  const path = join(folder, 'mondays.yaml');
  const { code, out } = await kerf('check', path);
  expect(code).toBe(1);
  expect(out).toContain(
    `${path}:${line}:21 stop [readable] taught.calendar: “mondays” is no calendar: there is no calendars/mondays.yaml beside the methods. Those that are: odd, tuesdays.`,
  );
  mkdirSync(join(folder, 'alone'), { recursive: true });
  write(join('alone', 'mine.yaml'), text);
  expect((await kerf('check', join(folder, 'alone', 'mine.yaml'))).out).toContain('There is none there.');
  write('right.yaml', text.replace('mondays', 'tuesdays'));
  expect(await kerf('check', join(folder, 'right.yaml'))).toMatchObject({ code: 0 });
});

test('a project without methods has none', async () => {
  expect(await readMethods(join(folder, 'nowhere'), 'methods')).toEqual({
    methods: 0,
    shops: 0,
    calendars: 0,
    problems: [],
  });
});
