import { readFileSync } from 'node:fs';
import { createElement, type ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { calculatorById } from '../../src/calculators/index.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { tallied, tally } from '../../src/site/mdx/drawings/BoardTally.tsx';
import { ladder } from '../../src/site/mdx/drawings/GritLadder.tsx';
import { drawings } from '../../src/site/mdx/drawings/index.ts';
import { atTable, type Feed, handHeld } from '../../src/site/mdx/drawings/kit/feed.ts';
import { arrow, box, circle, cupped, grain, measure, rings, rounded } from '../../src/site/mdx/drawings/kit/lines.ts';
import { passes } from '../../src/site/mdx/drawings/PlungePasses.tsx';
import { weighed } from '../../src/site/mdx/drawings/ScaleReadings.tsx';
import { shims, shimsAlong } from '../../src/site/mdx/drawings/ShimHeights.tsx';
import { TrayStage, trayStages } from '../../src/site/mdx/drawings/TrayStage.tsx';
import { tray } from '../../src/site/mdx/tray.ts';
import { componentsOf, howTos, workedCases } from './how-to.ts';

/** Width of a drawing on a phone of 360 px within a list of steps, as measured in a browser. px. */
const onPhone = 292;
/** No letter of a drawing may be smaller there. px. */
const leastLetter = 12;
/** Width of a letter on the average, as a part of its height, in the widest of the usual sans-serif faces. */
const letterWidth = 0.55;

const styles = readFileSync(new URL('../../src/site/mdx/drawings/kit/drawings.module.css', import.meta.url), 'utf8');
const letter = Number(/\.drawing text \{[^}]*font-size: (\d+)px/.exec(styles)?.[1]);

/** Every drawing as a page shows it. */
const shown: readonly { name: string; element: ReactElement }[] = [
  ...Object.entries(drawings).map(([name, part]) => ({ name, element: createElement(part) })),
  ...trayStages.map((stage) => ({ name: `TrayStage ${stage}`, element: createElement(TrayStage, { stage }) })),
];

const rendered = shown.map(({ name, element }) => {
  const markup = renderToStaticMarkup(element);
  const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(markup)?.map(Number) ?? [];
  const texts = [...markup.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = '', words = '']) => {
    const x = Number(/\bx="([-\d.]+)"/.exec(attributes)?.[1]);
    const y = Number(/\by="([-\d.]+)"/.exec(attributes)?.[1]);
    const anchor = /text-anchor="(\w+)"/.exec(attributes)?.[1] ?? 'start';
    const long = words.replace(/&\w+;/g, '&').length * letter * letterWidth;
    const from = anchor === 'end' ? x - long : anchor === 'middle' ? x - long / 2 : x;
    return { words, y, from, to: from + long };
  });
  return { name, markup, width, height, texts };
});

describe.each(rendered)('$name', ({ markup, width, height, texts }) => {
  test('has a title and a description that say what it shows, and a line below for everybody', () => {
    const title = /<title id="([^"]+)">([^<]{10,})<\/title>/.exec(markup);
    const description = /<desc id="([^"]+)">([^<]{80,})<\/desc>/.exec(markup);
    expect(markup).toContain(`role="img" aria-labelledby="${title?.[1]} ${description?.[1]}"`);
    expect(markup).toMatch(/<figcaption>[^<]{30,}<\/figcaption>/);
  });

  test('tells a reader of inches that its numbers are mm, where it shows some', () => {
    const inMm = /<text[^>]*>[^<]*\d mm\b/.test(markup);
    if (inMm) expect(markup).toContain('class="in-inches">Sizes in the drawing are in mm.');
  });

  test('can be read on a phone', () => {
    expect((letter * onPhone) / width).toBeGreaterThanOrEqual(leastLetter);
  });

  test('keeps its words inside', () => {
    const outside = texts.filter(({ y, from, to }) => from < -1 || to > width + 1 || y < letter - 2 || y > height);
    expect(outside).toEqual([]);
  });

  test('writes no word over another', () => {
    const over = texts.flatMap((one, at) =>
      texts
        .slice(at + 1)
        .filter((other) => one.from < other.to && other.from < one.to && Math.abs(one.y - other.y) < letter - 1)
        .map((other) => `${one.words} / ${other.words}`),
    );
    expect(over).toEqual([]);
  });

  test('has its shapes from numbers, and no colour of its own', () => {
    expect(markup).not.toMatch(/NaN|undefined|Infinity/);
    // Hatching is a pattern of the drawing itself, by its id.
    expect(markup).not.toMatch(/(?:fill|stroke|style|color)="(?!url\(#)/);
    for (const [, id] of markup.matchAll(/fill="url\(#([^)]+)\)"/g)) expect(markup).toContain(`<pattern id="${id}"`);
  });
});

test('letters of drawings have one size', () => {
  expect(styles.match(/font-size: \d+px/g)).toHaveLength(1);
});

/**
 * How the tooth of a bit moves where it touches the wood, beside the way of the feed: above zero with it, below against it. y runs
 * downwards, so a bit that turns clockwise moves a tooth at (x, y) from its middle by (-y, x).
 */
function tooth({ from, to, wood }: Feed, turn: 'clockwise' | 'anticlockwise'): number {
  const sign = turn === 'clockwise' ? 1 : -1;
  const [along, down] = [to.x - from.x, to.y - from.y];
  return (sign * (-wood.y * along + wood.x * down)) / Math.hypot(along, down);
}

const drawn = (name: string) => rendered.find((one) => one.name === name)?.markup ?? '';

describe('feed, which can cost a finger when it is drawn the wrong way round', () => {
  const board = { x: 52, y: 44, width: 236, height: 150 };
  const places = ['outside', 'inside'] as const;

  test.each(places)(
    'a hand-held router %s goes the way that its teeth go where they cut, so it cuts up, not down',
    (place) => {
      // Up-cut milling: the tooth pushes the tool back against the hand. A climb cut, with the tooth against the way of the tool, runs off.
      // The bit of a hand-held router turns clockwise seen from above (a right-hand cutter seen from its shank).
      for (const feed of handHeld(board, place, 16)) expect(tooth(feed, 'clockwise')).toBeCloseTo(1, 9);
    },
  );

  test.each(places)('a hand-held router %s keeps the wood that stays to the left of its way', (place) => {
    for (const { from, to, wood } of handHeld(board, place, 16)) {
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      // Left of (x, y) where y runs downwards is (y, -x).
      expect((to.y - from.y) / length).toBeCloseTo(wood.x, 9);
      expect(-(to.x - from.x) / length).toBeCloseTo(wood.y, 9);
    }
  });

  test('outside the strokes go round anticlockwise, inside clockwise', () => {
    const middle = { x: board.x + board.width / 2, y: board.y + board.height / 2 };
    const round = ({ from, to }: Feed) =>
      Math.sign((from.x - middle.x) * (to.y - middle.y) - (from.y - middle.y) * (to.x - middle.x));
    expect(handHeld(board, 'outside', 16).map(round)).toEqual([-1, -1, -1, -1]);
    expect(handHeld(board, 'inside', 16).map(round)).toEqual([1, 1, 1, 1]);
  });

  test('at a table the work goes from right to left before the bit, against its teeth', () => {
    const feed = atTable({ x: 100, y: 60 }, 50, 20);
    // The bit stands upside down, so that it turns anticlockwise seen from above; here the work moves and not the tool.
    expect(tooth(feed, 'anticlockwise')).toBeCloseTo(-1, 9);
    expect(feed.to.x).toBeLessThan(feed.from.x);
    expect(feed.wood).toEqual({ x: 0, y: 1 });
    // Between bit and fence the same feed would go with the teeth.
    expect(tooth({ ...feed, wood: { x: 0, y: -1 } }, 'anticlockwise')).toBeCloseTo(1, 9);
  });

  test('the drawings show these strokes and no other arrow along the wood', () => {
    const heads = (markup: string) =>
      [...markup.matchAll(/d="(M[\d.]+ [\d.]+L[\d.]+ [\d.]+M[^"]+)"/g)].map(([, d = '']) => d);
    const hole = { x: 112, y: 80, width: 116, height: 76 };
    const strokes = [...handHeld(board, 'outside', 16), ...handHeld(hole, 'inside', 16)];
    expect(heads(drawn('FeedDirection'))).toEqual(strokes.map(({ from, to }) => arrow(from, to)));
    const [stroke = '', ...others] = heads(drawn('TableFeed'));
    const [fromX = 0, toX = 0] = /^M([\d.]+) [\d.]+L([\d.]+)/.exec(stroke)?.slice(1).map(Number) ?? [];
    expect(toX).toBeLessThan(fromX);
    expect(others).toEqual([]);
  });

  test('each bit turns the way that is said of it', () => {
    // Sweep 1 of an arc is clockwise on the screen, 0 anticlockwise.
    expect(drawn('FeedDirection')).toMatch(/A6 6 0 1 1 /);
    expect(drawn('TableFeed').match(/A5\.5 5\.5 0 1 0 /g)).toHaveLength(2);
    expect(drawn('TableFeed')).not.toMatch(/A5\.5 5\.5 0 1 1 /);
  });
});

describe('numbers in drawings', () => {
  test('the tray has nine stages, each with a title of its own', () => {
    expect(trayStages).toHaveLength(9);
    const titles = trayStages.map((stage) => /<title[^>]*>([^<]+)/.exec(drawn(`TrayStage ${stage}`))?.[1]);
    expect(new Set(titles).size).toBe(9);
  });

  test('the shims are those of the calculator for the salvaged ash of the page', () => {
    const used = workedCases.find(
      ({ page, calculator }) => page === 'flattening-a-wide-board' && calculator === 'flatten-plan',
    );
    const plan = calculatorById('flatten-plan');
    const given = used && plan && answer(plan, used.inputs);
    if (!given?.ok) throw new Error('the page holds no case of flatten-plan that has an answer');
    const rows = given.value.result.tables?.find(({ id }) => id === 'places')?.rows ?? [];
    expect(rows.map(([, along, , , shim]) => [along, shim])).toEqual(
      shims.flatMap((row, end) => row.map((height) => [shimsAlong[end], height])),
    );
  });

  test('the tally is what the model makes of the board', () => {
    const { quarters, widthInches, lengthFeet } = tallied;
    // A board foot is 144 cubic inches: an inch thick, a foot wide, a foot long.
    expect(tally).toBeCloseTo(((quarters / 4) * widthInches * lengthFeet * 12) / 144, 9);
    expect(tally.toFixed(1)).toBe('6.7');
  });

  test('the two weighed parts are the ratio by weight that the page works out, and the last reading is both', () => {
    // 2 : 1 by volume at 1.16 and 1.00 g/mL, as in the table of the page on dosing.
    expect(weighed.b / weighed.a).toBeCloseTo(1 / (2 * 1.16), 3);
    expect(drawn('ScaleReadings')).toContain(`${(weighed.a + weighed.b).toFixed(1)} g`);
  });

  test('no pass is deeper than half of the bit is wide, and the last is the depth of the channel', () => {
    const deepest = passes.map((to, at) => to - (passes[at - 1] ?? 0));
    expect(Math.max(...deepest)).toBeLessThanOrEqual(tray.channelBit.diameter / 2);
    expect(passes.at(-1)).toBe(tray.channel.depth);
  });

  test('each grit of the ladder is no more than 1.7 times as fine as the one before, by the sizes of the tables', () => {
    // Mean grain of P80 to P220 in the FEPA P grading, µm, as grain-sizes.csv quotes it.
    const microns: Readonly<Record<number, number>> = { 80: 201, 120: 125, 180: 82, 220: 68 };
    for (const [at, grit] of ladder.entries()) {
      const before = ladder[at - 1];
      if (before !== undefined) expect((microns[before] ?? 0) / (microns[grit] ?? 1)).toBeLessThanOrEqual(1.7);
    }
  });
});

/** Pages of which no step is a hold of the hand: what is chosen, read, written, reckoned or taught. */
const withoutHandwork = [
  'index',
  'glossary',
  'choosing-a-wood',
  'choosing-a-finish',
  'epoxy-only',
  'lesson-plans',
  'pricing-a-board',
  'publishing-your-own-site',
  'resin-and-hardeners',
  'running-a-batch',
  'solvents',
  'storage-and-shelf-life',
  'teaching-with-sheets',
  'what-may-be-promised',
  'writing-a-method',
];

describe('places of the drawings', () => {
  const places = howTos.map((page) => ({
    page: page.name,
    shown: componentsOf(page)
      .filter(({ component }) => component in drawings)
      .map(({ component, properties }) => `${component} ${properties['stage'] ?? ''}`.trim()),
  }));

  test('there are 34 at the least, and each stands on a page', () => {
    const names = Object.keys(drawings);
    expect(names.length).toBeGreaterThanOrEqual(34);
    const standing = new Set(places.flatMap(({ shown }) => shown.map((one) => one.split(' ')[0])));
    expect(names.filter((name) => !standing.has(name))).toEqual([]);
  });

  test.each(places)('$page shows no drawing twice, and one at the least where a hand works', ({ page, shown }) => {
    expect(shown).toEqual([...new Set(shown)]);
    if (!withoutHandwork.includes(page)) expect(shown).not.toEqual([]);
  });

  test('the walk of one tray shows each stage in order', () => {
    const walk = places.find(({ page }) => page === 'one-tray')?.shown.filter((one) => one.startsWith('TrayStage'));
    expect(walk).toEqual(trayStages.map((stage) => `TrayStage ${stage}`));
  });

  test('pages without handwork are pages', () => {
    const pages = howTos.map(({ name }) => name);
    expect(withoutHandwork.filter((name) => !pages.includes(name))).toEqual([]);
  });
});

describe('lines', () => {
  test('an arrow ends in a head at its second point, a measure in one at either', () => {
    expect(arrow({ x: 0, y: 0 }, { x: 20, y: 0 })).toBe('M0 0L20 0M12 4L20 0L12 -4');
    expect(measure({ x: 0, y: 0 }, { x: 20, y: 0 })).toBe('M0 0L20 0M12 4L20 0L12 -4M20 0L0 0M8 -4L0 0L8 4');
  });

  test('a box closes, and grain lies within it', () => {
    expect(box(1, 2, 30, 40)).toBe('M1 2h30v40h-30Z');
    expect(grain(0, 0, 10, 40, 3)).toBe('M0 10h10M0 20h10M0 30h10');
  });

  test('a cupped board stands on its edges, its middle as high as its rise', () => {
    // A curve of three points passes half-way between its middle point and the chord.
    const path = cupped(0, 100, { width: 80, thickness: 10, rise: 6 });
    expect(path).toBe('M0 100Q40 88 80 100V90Q40 78 0 90Z');
    expect((100 + 88) / 2).toBe(100 - 6);
    expect(cupped(0, 100, { width: 80, thickness: 10, rise: 0 })).toBe('M0 100Q40 100 80 100V90Q40 90 0 90Z');
  });

  test('rings are those circles around the middle of the tree that reach into the piece, and no other', () => {
    const radii = [...rings(100, 40, { x: 50, y: 60 }, 10).matchAll(/a(\d+) /g)].map(([, radius]) => Number(radius));
    // Nearest point of the piece 20 from the middle, its furthest corner hypot(50, 60) = 78.1.
    expect([...new Set(radii)]).toEqual([30, 40, 50, 60, 70]);
  });

  test('a box with round corners begins and ends at its upper left, and a circle is closed', () => {
    expect(rounded(0, 0, 40, 20, 5)).toBe(
      'M5 0h30a5 5 0 0 1 5 5v10a5 5 0 0 1 -5 5h-30a5 5 0 0 1 -5 -5v-10a5 5 0 0 1 5 -5Z',
    );
    expect(circle(10, 10, 4)).toBe('M6 10a4 4 0 1 1 8 0a4 4 0 1 1 -8 0Z');
  });
});
