import { readFileSync } from 'node:fs';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { drawings } from '../../src/site/mdx/drawings/index.ts';
import { arrow, box, cupped, grain, measure } from '../../src/site/mdx/drawings/lines.ts';
import { componentsOf, howTos } from './how-to.ts';

/** Width of a drawing on a phone of 360 px, whose page keeps 16 px free at either side. px. */
const onPhone = 328;
/** No letter of a drawing may be smaller there. px. */
const leastLetter = 11;
/** Width of a letter on the average, as a part of its height, in the widest of the usual sans-serif faces. */
const letterWidth = 0.55;

const styles = readFileSync(new URL('../../src/site/mdx/drawings/drawings.module.css', import.meta.url), 'utf8');
const letter = Number(/\.drawing text \{[^}]*font-size: (\d+)px/.exec(styles)?.[1]);

const rendered = Object.entries(drawings).map(([name, part]) => {
  const markup = renderToStaticMarkup(createElement(part));
  const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(markup)?.map(Number) ?? [];
  const texts = [...markup.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = '', words = '']) => ({
    words,
    x: Number(/\bx="([-\d.]+)"/.exec(attributes)?.[1]),
    y: Number(/\by="([-\d.]+)"/.exec(attributes)?.[1]),
    anchor: /text-anchor="(\w+)"/.exec(attributes)?.[1] ?? 'start',
  }));
  return { name, markup, width, height, texts };
});

describe.each(rendered)('$name', ({ name, markup, width, height, texts }) => {
  test('has a title and a description that say what it shows, and a line below for everybody', () => {
    const title = /<title id="([^"]+)">([^<]{10,})<\/title>/.exec(markup);
    const description = /<desc id="([^"]+)">([^<]{80,})<\/desc>/.exec(markup);
    expect(markup).toContain(`role="img" aria-labelledby="${title?.[1]} ${description?.[1]}"`);
    expect(markup).toMatch(/<figcaption>[^<]{30,}<\/figcaption>/);
  });

  test('can be read on a phone', () => {
    expect((letter * onPhone) / width).toBeGreaterThanOrEqual(leastLetter);
  });

  test('keeps its words inside', () => {
    const outside = texts.filter(({ words, x, y, anchor }) => {
      const long = words.length * letter * letterWidth;
      const from = anchor === 'end' ? x - long : anchor === 'middle' ? x - long / 2 : x;
      return from < -1 || from + long > width + 1 || y < letter - 2 || y > height;
    });
    expect(outside).toEqual([]);
  });

  test('has its shapes from numbers, and no colour of its own', () => {
    expect(markup).not.toMatch(/NaN|undefined|Infinity/);
    expect(markup).not.toMatch(/(?:fill|stroke|style|color)="/);
  });

  test('stands on a page', () => {
    const shown = howTos.filter((page) => componentsOf(page).some(({ component }) => component === name));
    expect(shown.length).toBeGreaterThan(0);
  });
});

test('letters of drawings have one size', () => {
  expect(styles.match(/font-size: \d+px/g)).toHaveLength(1);
});

test('a hand-held router goes anticlockwise around the outside and clockwise around the inside', () => {
  const { markup = '', width = 0 } = rendered.find(({ name }) => name === 'FeedDirection') ?? {};
  /** Twice the area that the ways of the arrows sweep around the middle: y runs downwards, so clockwise is above zero. */
  const turn = (path: string) =>
    [...path.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)M/g)].map((found) => {
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = found.slice(1).map(Number);
      const middle = { x: width / 2, y: 119 };
      return Math.sign((x1 - middle.x) * (y2 - middle.y) - (x2 - middle.x) * (y1 - middle.y));
    });
  const [outside = '', inside = ''] = [...markup.matchAll(/class="[^"]*arrow[^"]*" d="([^"]+)"/g)].map(
    ([, d = '']) => d,
  );
  expect(turn(outside)).toEqual([-1, -1, -1, -1]);
  expect(turn(inside)).toEqual([1, 1, 1, 1]);
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
});
