import { describe, expect, test } from 'vitest';
import {
  finishKindById,
  gradeOf,
  gritSequence,
  raiseAfter,
  sandingMethodById,
  startSurfaceById,
  usualGrits,
  usualRatio,
} from '../../src/model/abrasive/index.ts';
import { cautionById } from '../../src/model/evidence/cautions.ts';
import { upkeepOf } from '../../src/model/finish/food-board.ts';
import { finishById } from '../../src/model/finish/index.ts';
import { careSections } from '../../src/model/food/index.ts';
import { remedies } from '../../src/model/outline/index.ts';
import { resinOf } from '../../src/model/resin/index.ts';
import { boringPractice, defaultAllowances, inch, roughSize } from '../../src/model/stock/index.ts';
import { howTo } from './how-to.ts';
import { settled } from './statements.ts';

// What careful shops do and no source says: the pages state it and mark it, and the model does what the pages say.

/** Sentences and table rows of a page that hold these words. */
function passages(page: string, words: RegExp): string[] {
  return howTo(page)
    .source.split(/\n\n|\n(?=\s*(?:\d+\.|[-|>]))/)
    .map((passage) => passage.replace(/\s+/g, ' '))
    .filter((passage) => words.test(passage));
}

describe.each([
  [
    'an eighth of an inch outside the template line',
    'buying-and-ordering-stock',
    /an eighth of an inch outside the template line/,
  ],
  [
    'an eighth of an inch outside the template line',
    'making-and-using-templates',
    /an eighth of an inch \(3 mm\) outside the line/,
  ],
  [
    'an eighth of an inch outside the template line',
    'routing-to-a-template',
    /an eighth of an inch \(3 mm\) outside the template line/,
  ],
  [
    'several inches of extra length on a two-foot blank',
    'buying-and-ordering-stock',
    /several inches of extra length on a two-foot blank/,
  ],
  ['fewer board feet after drying', 'buying-and-ordering-stock', /about 7 % fewer board feet arrive/],
  [
    'grain raised after 220 and before the last grit',
    'sanding-to-a-finish',
    /\*\*After 220 and before the last grit\*\*/,
  ],
  [
    'coarse to fine without skipping more than one usual grit',
    'sanding-to-a-finish',
    /Coarse to fine, from 80 to 320, without skipping more than one usual grit/,
  ],
  ['a backing block under every through hole', 'boring-clean-holes', /a backing block under every through hole/],
  [
    'equal parts by volume for a 1:1 coating epoxy',
    'dosing-and-mixing-resin',
    /A 1:1 coating epoxy is measured in equal parts by volume/,
  ],
  [
    'a heat tool about 8 inches off and moving',
    'colour-and-pigment',
    /about 8 inches \(20 cm\) off, and moving all the time/,
  ],
  ['an inlay filled proud by half to one millimetre', 'making-the-pocket', /proud by 0\.5 to 1 mm \(common practice\)/],
  ['a heat tool about 8 inches off and moving', 'bubbles', /about 8 inches \(20 cm\) off, moving all the time/],
  ['a heat tool about 8 inches off and moving', 'coating-a-whole-face', /about 8 inches \(20 cm\) off, moving/],
  ['about 24 hours before the next stage of a coating epoxy', 'coating-a-whole-face', /Turn it after about 24 hours/],
  [
    'about 24 hours before the next stage of a coating epoxy',
    'recoat-and-cure',
    /With a coating epoxy at room temperature leave about 24 hours before the next stage/,
  ],
  [
    'two to three coats of oil, each soaking 30 to 45 minutes and wiped',
    'oiling-and-waxing',
    /Two to three coats, each left to soak for 30 to 45 minutes and then wiped off/,
  ],
  ['both faces of a board washed alike', 'care', /\*\*Both faces alike\*\*/],
  ['a board stood on edge to dry', 'care', /Stand it on edge with air on both faces/],
  ['oil when a drop darkens the wood', 'care', /When a drop of water no longer stands but darkens the wood/],
  ['about a week until a casting resin has cured', 'food-contact', /a casting resin about a week at room temperature/],
])('%s', (_, page, words) => {
  test(`${page} says it, and that it is common practice`, () => {
    const found = passages(page, words);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain('common practice');
  });
});

describe('the model does as the pages say', () => {
  test('an eighth of an inch stands outside the line', () => {
    expect(defaultAllowances.outlineClearance).toBe(inch / 8);
  });

  test('a two-foot blank is cut several inches longer', () => {
    const finished = { length: 24 * inch, width: 9 * inch, thickness: 0.75 * inch };
    const extra = (roughSize(finished, defaultAllowances).length - finished.length) / inch;
    expect(extra).toBeGreaterThanOrEqual(3);
    expect(extra).toBeLessThan(6);
  });

  const grade = (number: number) => {
    const found = gradeOf('P', number);
    if (!found) throw new Error(`no P${number}`);
    return found;
  };
  const planed = startSurfaceById('planed');
  const randomOrbit = sandingMethodById('random-orbit');
  if (!planed || !randomOrbit) throw new Error('the abrasive room lost a surface or a method');
  const toOil = settled(
    gritSequence({
      material: 'wood',
      start: planed,
      last: grade(finishKindById('oil-or-wax')?.last ?? 0),
      drawer: usualGrits.map(grade),
      ratio: usualRatio.wood,
      raiseGrain: true,
      area: 1e6,
      method: randomOrbit,
    }),
  );

  test('grits go from 80 to 320, coarse to fine, and leave out one usual grit at most', () => {
    const numbers = toOil.grits.map(({ number }) => number);
    expect(numbers[0]).toBe(80);
    expect(numbers.at(-1)).toBe(320);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
    const places = numbers.map((number) => usualGrits.indexOf(number));
    const skipped = places.slice(1).map((place, at) => place - (places[at] ?? 0) - 1);
    expect(Math.max(...skipped)).toBe(1);
    expect(Math.min(...skipped)).toBe(0);
  });

  test('grain is raised after 220 and taken off with the last grit', () => {
    const at = toOil.steps.findIndex(({ kind }) => kind === 'raise');
    const raise = toOil.steps[at];
    expect(raiseAfter).toBe(220);
    expect(raise).toMatchObject({ after: { number: 220 }, lightly: { number: 320 } });
    expect(toOil.steps.slice(at + 1)).toHaveLength(1);
  });

  test('the card tells the buyer what the page says of washing, drying and renewing', () => {
    const oil = finishById('mineral-oil');
    const lines = careSections({
      wood: 'Sugar maple',
      finish: 'Mineral oil',
      upkeep: upkeepOf(oil),
      resin: false,
      sensitiser: false,
    }).flatMap(({ lines: all }) => all.map(({ text }) => text));
    const said = lines.join(' ');
    expect(said).toContain('both faces alike');
    expect(said).toContain('stand it on edge with air on both faces');
    expect(said).toContain('When a drop of water no longer stands but darkens the wood');
  });

  test('a through hole has a block behind it', () => {
    expect(boringPractice.find(({ id }) => id === 'backing-block')?.text).toContain('under every through hole');
    expect(remedies.backing.text).toContain('Clamp a waste block tight');
  });

  const coating = resinOf('fast-coating-1-1');

  test('a 1:1 coating epoxy takes equal parts by volume', () => {
    expect(coating?.figures.volumeRatio).toMatchObject({ value: 1, basis: 'shop-practice' });
  });

  test('the next stage of a coating epoxy comes after about 24 hours at room temperature', () => {
    expect(coating?.figures.sandable).toMatchObject({ value: 24 * 3600, basis: 'shop-practice' });
    expect(coating?.figures.cureTemperature?.value).toBeGreaterThanOrEqual(20);
    expect(coating?.figures.cureTemperature?.value).toBeLessThanOrEqual(25);
  });

  test('a heat tool stays about 8 inches off and moves', () => {
    expect(cautionById('heat-tool')).toMatchObject({ level: 'danger', basis: 'shop-practice' });
    expect(cautionById('heat-tool')?.text).toContain('about 8 inches (20 cm) off the resin and moving all the time');
  });

  test.each(['mineral-oil', 'linseed-oil', 'tung-oil', 'walnut-oil'] as const)(
    '%s takes two to three coats, each soaking 30 to 45 minutes, and is wiped',
    (id) => {
      const finish = finishById(id);
      expect(finish?.figures.coats).toMatchObject({ low: 2, high: 3, basis: 'shop-practice' });
      expect(finish?.figures.soak).toMatchObject({ low: 30 * 60, high: 45 * 60, basis: 'shop-practice' });
      expect(finish?.wiped).toBe(true);
    },
  );
});
