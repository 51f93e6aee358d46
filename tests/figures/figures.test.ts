import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { figureChanges } from '../../scripts/figures/changes.ts';
import { figureFiles } from '../../scripts/figures/files.ts';
import { root } from '../../src/store/index.ts';

/**
 * Every number that a reader meets first, so that the review of a change shows all that follows from it.
 * After a change that is meant: `npm run figures`, which says what moved and writes the files anew.
 */
test.each(Object.entries(figureFiles))('%s is as reviewed', async (path, make) => {
  const reviewed = readFileSync(join(root, path), 'utf8');
  const now = await make();
  expect(figureChanges(reviewed, now)).toEqual([]);
  expect(now === reviewed, `${path} has another order than its sources; run npm run figures`).toBe(true);
});

describe('what moved', () => {
  const head = 'of,figure,value,low,high,unit,basis\n';
  const file = (...lines: readonly string[]) => `${head}${lines.join('\n')}\n`;

  test.each<[what: string, before: string, now: string, told: string[]]>([
    ['nothing', file('a,b,1,,,mm,derived'), file('a,b,1,,,mm,derived'), []],
    ['a value up', file('a,b,2,,,mm,derived'), file('a,b,2.5,,,mm,derived'), ['a b: value up from 2 to 2.5 (+25 %)']],
    ['a value down', file('a,b,4,,,mm,derived'), file('a,b,3,,,mm,derived'), ['a b: value down from 4 to 3 (−25 %)']],
    ['from nothing', file('a,b,0,,,mm,derived'), file('a,b,3,,,mm,derived'), ['a b: value up from 0 to 3']],
    [
      'an end of a band',
      file('a,b,4,3,5,mm,derived'),
      file('a,b,4,2.7,5,mm,derived'),
      ['a b: low down from 3 to 2.7 (−10 %)'],
    ],
    ['a band that is told now', file('a,b,4,,,mm,derived'), file('a,b,4,3,,mm,derived'), ['a b: low none → 3']],
    ['its basis', file('a,b,4,,,mm,memory'), file('a,b,4,,,mm,published'), ['a b: basis memory → published']],
    [
      'a verdict',
      file('a,verdict,good,,,,"Go, on"'),
      file('a,verdict,stop,,,,"Go, on"'),
      ['a verdict: value good → stop'],
    ],
    [
      'a figure that is new',
      file('a,b,1,,,mm,derived'),
      file('a,b,1,,,mm,derived', 'a,c,2,,,g,derived'),
      ['a c: new, 2 g'],
    ],
    [
      'a figure that is gone',
      file('a,b,1,,,mm,derived', 'a,c,2,,,g,derived'),
      file('a,b,1,,,mm,derived'),
      ['a c: gone'],
    ],
  ])('%s', (_what, before, now, told) => {
    expect(figureChanges(before, now)).toEqual(told);
  });
});
