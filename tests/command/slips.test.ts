import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { starterMethod } from '../../src/method/record/starter.ts';
import { kerf } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'slips-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The method to begin from with one slip in it. */
function slip(from: string, to: string): string {
  expect(starterMethod).toContain(from);
  const path = join(folder, 'slip.yaml');
  writeFileSync(path, starterMethod.replace(from, to));
  return path;
}

/** The lines that stop, of a check. */
const stops = (out: string) => out.split('\n').filter((line) => line.includes(' stop '));

describe('a slip of a first method is told once, with the way out', () => {
  test.each([
    [
      'a decimal comma in braces',
      'default: 240 mm',
      'default: 24,5 cm',
      'inside braces a comma parts one entry from the next, so “24,5 cm” was cut in two. Write 24.5 cm, or put it in quotes: "24,5 cm".',
    ],
    [
      'a comma between thousands',
      'most: 300 mm',
      'most: 1,200 mm',
      'so “1,200 mm” was cut in two. Write 1200 mm, or put it in quotes: "1,200 mm".',
    ],
    [
      'curly quotes',
      'what: Cotton cloths',
      'what: “Cotton cloths, counted”',
      'curly quotes hold no text together here, so “Cotton cloths, counted” was cut at its comma. Use straight quotes: "Cotton cloths, counted".',
    ],
    ['a word of the same stem', 'act: sand', 'act: sanding', 'Did you mean “sand”?'],
    ['a word of the same beginning', 'act: sand', 'act: routing', 'Did you mean “rout”?'],
    ['a step that shares a word', 'step: oil,', 'step: first-coat-of-oil,', 'Did you mean oil?'],
    ['a measure where a time belongs', 'setUp: 5 min, each: 15 min', 'setUp: 15 mm, each: 15 min', '15 mm is no time'],
    ['a line one space too far left', '    tell: Under', '   tell: Under', 'does not stand below the names'],
    ['a group one space too far left', 'parameters:\n  wood', 'parameters:\n wood', 'begins its group with 1 space'],
  ])('%s', async (_, from, to, words) => {
    const { code, out } = await kerf('check', slip(from, to));
    expect(code).toBe(1);
    expect(stops(out)).toHaveLength(1);
    expect(stops(out)[0]).toContain(words);
  });

  test('an act of no kind is told with all that there are', async () => {
    const { out } = await kerf('check', slip('act: sand', 'act: zzz'));
    expect(out).toMatch(/brief, gather, .*, pack, hand-over\. Pick one of them\./);
  });

  test('a time is refused with one remedy', async () => {
    const { out } = await kerf('check', slip('setUp: 5 min, each: 15 min', 'setUp: 15 mm, each: 15 min'));
    expect(stops(out)[0]).toContain('setting up: 15 mm is no time. Write it as 40 min, 2 h or 3 d.');
    expect(stops(out)[0]).not.toContain('Write the quantity with its unit');
  });

  test('lines that follow from the same slip are counted', async () => {
    const { out } = await kerf('check', slip('    tell: Under', '   tell: Under'));
    expect(stops(out)[0]).toMatch(/3 more lines below say the same/);
  });
});

describe('an option that no command has', () => {
  test.each([
    [['plan', 'x.yaml', '--peeple', '3'], 'plan: --peeple is not an option; there are --shop, --pieces, --people'],
    [['plan', 'x.yaml', '--peeple', '3'], 'Did you mean --people?'],
    [['check', 'x.yaml', '--jsn'], 'Did you mean --json?'],
    [['check', 'x.yaml', '-x'], 'check: -x is not an option'],
    [['plan', 'x.yaml', '--people'], 'plan: --people has no value'],
    [['plan', 'x.yaml', '--json=3'], 'plan: --json takes no value'],
    [['new', 'x.yaml', '--hlep'], 'Did you mean --help?'],
    [['calc', 'pour-heat', '--jsno', '{}'], 'Did you mean --json?'],
    [['species', '--jsno'], 'Did you mean --json?'],
  ])('%j', async (args, words) => {
    const { code, err } = await kerf(...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
    expect(err).not.toContain('positional');
  });
});

describe('a wood, finish or resin by any of its names', () => {
  test.each([
    ['default: sugar-maple', 'default: cherry'],
    ['default: sugar-maple', 'default: cherry, among: [black-cherry, Sugar maple]'],
    ['default: sugar-maple', 'default: black-cherry, among: [cherry, sugar-maple]'],
  ])('%s as %s', async (from, to) => {
    const { code, out } = await kerf('check', slip(from, to));
    expect(stops(out)).toEqual([]);
    expect(code).toBe(0);
  });

  test('that the list does not hold, and a list that holds no such thing', async () => {
    const other = await kerf('check', slip('default: sugar-maple', 'default: cherry, among: [Sugar maple]'));
    expect(stops(other.out)[0]).toContain('“cherry” is not among Sugar maple');
    const unknown = await kerf('check', slip('default: sugar-maple', 'default: cherry, among: [cherry, mapel]'));
    expect(stops(unknown.out)[0]).toMatch(/among\.1: “mapel” is not a wood/);
  });
});

describe('a plan for hours that hold no evening', () => {
  const calendar = (text: string) => {
    const path = join(folder, 'hours.yaml');
    writeFileSync(path, `zone: Europe/Helsinki\n${text}`);
    return path;
  };
  const begin = () => slip('title: A plain', 'title: A plain');
  const plan = (hours: string, ...more: string[]) =>
    kerf('plan', begin(), '--calendar', calendar(hours), '--start', '2027-01-11', ...more);

  test('since each is a holiday', async () => {
    const { code, out } = await plan(
      "week: { tue: ['18:30-21:00'] }\nholidays: ['2027-01-12', '2027-01-19']\n",
      '--end',
      '2027-01-22',
    );
    expect(code).toBe(1);
    expect(out).toContain(
      'No timetable. The shop is never open between Mon 2027-01-11 00:00 and Fri 2027-01-22 23:59: 2027-01-12 and 2027-01-19 are holidays of the calendar.',
    );
    expect(out).toContain('a wanted end of Tue 2027-02-02');
    expect(out).not.toContain('needs somebody there');
  });

  test('since its only session is over', async () => {
    const { out } = await plan("sessions: ['2026-12-01 18:30-21:00']\n");
    expect(out).toMatch(
      /No timetable\. The shop is never open between Mon 2027-01-11 00:00 and .* its last session was on 2026-12-01/,
    );
  });

  test('but finds the session that is months ahead', async () => {
    const { code, out } = await plan("sessions: ['2027-09-07 10:00-21:00', '2027-09-09 10:00-21:00']\n");
    expect(code).toBe(0);
    expect(out).toContain('2027-09-09');
  });

  test('an end that comes too early is answered with a later one, and with no session of a night and a day', async () => {
    const { code, out } = await plan("week: { tue: ['18:30-21:00'] }\n", '--pieces', '12', '--end', '2027-01-13');
    expect(code).toBe(1);
    expect(out).toMatch(/Any of these would help: a wanted end of Tue 2027-\d\d-\d\d \d\d:\d\d or later\./);
    expect(out.match(/Any of these would help: (.*)/)?.[1]).toContain('wanted end');
    expect(out).not.toMatch(/longer by (1[0-9]|2[0-9])(\.\d)? h/);
  });
});

describe('the method to begin from', () => {
  test('passes without a stop, a warning or a note', async () => {
    const { code, out } = await kerf('check', slip('title: A plain', 'title: A plain'));
    expect(out).toBe('1 file: 0 stops, 0 warnings, 0 notes.\n');
    expect(code).toBe(0);
  });

  test.each(['sugar-maple', 'black-cherry', 'white-ash', 'black-walnut'])('and is planned for %s', async (wood) => {
    const { code, out } = await kerf(
      'plan',
      slip('title: A plain', 'title: A plain'),
      '--set',
      `wood=${wood}`,
      '--pieces',
      '12',
      '--start',
      '2027-01-11',
    );
    expect(out).not.toContain('No timetable');
    expect(code).toBe(0);
  });
});

test('a usual value of a calculator is told as such where the method gives none', async () => {
  const { out } = await kerf(
    'check',
    slip(
      'shape: rounded-rectangle\n          length: { from: /parameters/length }',
      'shape: half-moon\n          length: 300 mm',
    ),
  );
  expect(stops(out).join()).toMatch(
    /Rise 200 mm is more than .*method gives no rise, so the calculator took its usual value\./,
  );
});

test('the help of a calculator lists its figures, and its events and uses in its example, by name', async () => {
  const { out } = await kerf('calc', 'pour-heat', '--help');
  expect(out).toMatch(/Figures of an answer:\n {2}\w+: .*\[.*\]/);
  const coats = (await kerf('calc', 'finish-coats', '--help')).out;
  expect(coats).toMatch(/Uses of the example:\n {2}finish: /);
  expect(coats).toMatch(/ {2}recoat: /);
  const clock = (await kerf('calc', 'cure-clock', '--help')).out;
  expect(clock).toContain('Events of the example:');
});
