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
    ['a group one space too far left', 'parameters:\n  wood', 'parameters:\n wood', 'does not stand below the names'],
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
