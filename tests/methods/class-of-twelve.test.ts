import { describe, expect, test } from 'vitest';
import { measuresOf } from '../../src/method/page/measures.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { howTo } from '../docs/how-to.ts';
import { methodOf, numberAt } from '../docs/methods.ts';

// What a class could come to harm by, or plane and pour too little by, if its method and its pages said different things.

const tray = await methodOf('class-of-twelve');
const at = (pointer: string) => numberAt(tray, pointer);
const { steps, tools } = tray.record;
const does = (step: string) => steps[step]?.does ?? '';

describe('the cure is tried on what was poured', () => {
  test('each cup of the pour gives a drip, and the seal coat none', () => {
    expect(does('pour')).toMatch(/One drip from each cup.*number of the cup/s);
    expect(does('seal')).not.toMatch(/\blids?, one for each|on which they test/);
    expect(does('seal')).toContain('proves nothing about the inlay');
    expect(does('level')).toContain('a nail leaves no mark in the drip of each cup that went into it');
    expect(does('level')).toContain('every tray filled from that cup waits');
  });

  test('the spare of the dose fills a cap for every cup', () => {
    const across = Number(/bottle cap about \{(\d+) mm\} across/.exec(does('pour'))?.[1]);
    const millilitres = ((Math.PI / 4) * across ** 2 * at('/parameters/channelDepth')) / 1000;
    const grams = millilitres * at('/calculations/dose/figures/mixedDensity');
    expect(grams * at('/calculations/dose/figures/cups')).toBeLessThan(at('/calculations/dose/figures/spareMass'));
  });

  test('the pages say the same', () => {
    const said = howTo('lesson-plans').text;
    expect(said).toMatch(/One cup’s drip soft: all trays of that cup wait/);
    expect(said).toContain('Every tray filled from that cup, even in part.');
    expect(said).not.toMatch(/drip of twelve|lids with names|a drip with a name/);
    expect(howTo('one-tray').text).toContain('Fill one small cap from each cup, marked with the cup');
    expect(howTo('resin-waste').text).toContain('poured from each cup of the pour itself');
  });
});

test('what is poured into a tray is what stands proud of it', () => {
  const level = (at('/calculations/dose/figures/pieceMass') * at('/parameters/channelDepth')) / 6.6;
  const { length, width } = { length: at('/parameters/channelLength'), width: at('/parameters/channelWidth') };
  const volume = (length * width * at('/parameters/channelDepth')) / 1000;
  // By hand: length, width and depth of the channel, square at its ends, at the density of the mix.
  expect(level).toBeCloseTo(volume * at('/calculations/dose/figures/mixedDensity'), 6);
  for (const page of ['lesson-plans', 'pouring-an-inlay', 'one-tray', 'dosing-and-mixing-resin'])
    expect(howTo(page).text).not.toMatch(/33\.5 g|tenth more to stand proud|level with its face/);
});

describe('nothing rides on an inlay that stands proud', () => {
  test('before it is level a tray lies on its back at every machine', () => {
    expect(does('cut-out')).toContain('lies on its back tonight, at every machine');
    expect(does('trim')).toMatch(/Back down on the table, template on the face.*window in the template/s);
    expect(does('trim')).toContain('The blank is not turned over tonight');
    expect(tools['template']?.what).toContain('a window over the inlay');
    expect(does('soften-edges')).toMatch(/Back down on the table.*edge of the face waits/s);
  });

  test('the edge of the face is rounded after levelling and before sanding', () => {
    const order = Object.keys(steps);
    expect(order.indexOf('soften-face')).toBe(order.indexOf('level') + 1);
    expect(steps['soften-face']?.after).toEqual(['level']);
    expect(order.indexOf('sand')).toBe(order.indexOf('soften-face') + 1);
  });
});

test('boards and questions go out five weeks before, wherever it is said', () => {
  expect(does('order')).toMatch(/Order it five weeks before.*five weeks before, ask everybody in writing/s);
  expect(howTo('one-tray').text).toContain('five weeks before the first evening | boards and resin ordered');
  expect(howTo('lesson-plans').text).toMatch(/\*{0,2}Five weeks before:\*{0,2} order boards/);
  expect(howTo('a-room-and-a-class').text).toContain('Send it with the place, five weeks ahead.');
});

test.each([
  ['prepare-blanks', 20.5],
  ['last-planing', 19.5],
])('a sheet expects of %s what is left on the blank: %d mm', (id, expected) => {
  const step = tray.steps.find((one) => one.id === id);
  if (!step) throw new Error(`no step ${id}`);
  const [thickness, ...others] = measuresOf(tray, step).filter(({ pointer }) => pointer === '/parameters/thickness');
  expect(others).toEqual([]);
  expect(inReaderUnits(thickness?.expected ?? '', defaultUnits)).toContain(`${expected} mm`);
});

describe('one room', () => {
  test('the seal coat is dulled wet on the evening of the pour, said as the exception', () => {
    expect(does('abrade')).toContain('**wetted**');
    expect(does('abrade')).toContain('are the pause');
    expect(howTo('a-room-and-a-class').source).toMatch(/One exception: the seal coat is dulled .*\*\*wet\*\*/);
  });

  test('one gun, one person', () => {
    expect(tools['heat-gun']?.count ?? 1).toBe(1);
    expect(does('watch')).toContain('One gun, one person: the teacher');
    expect(howTo('pouring-an-inlay').text).toContain('One heat gun, one person.');
  });
});

test('snipe that the extra length holds is no longer than it', () => {
  const extra = (at('/calculations/order/figures/roughLength') - at('/parameters/length')) / 2;
  const said = Number(/ends within about \{(\d+) mm\}/.exec(steps['last-planing']?.wrong ?? '')?.[1]);
  expect(said).toBeGreaterThan(0);
  expect(said).toBeLessThanOrEqual(extra);
});
