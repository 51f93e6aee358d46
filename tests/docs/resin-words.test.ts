import { describe, expect, test } from 'vitest';
import { componentsOf, howTo, howTos } from './how-to.ts';

// What the pages on resin must say alike, wherever they say it: somebody follows one page alone.

/** Steps, rows and paragraphs of a page, each as one line. */
const passagesOf = (source: string) =>
  source
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .split(/\n\n|\n(?=\s*(?:\d+\. |[-|>] ?))/)
    .map((passage) => passage.replace(/\s+/g, ' ').trim());

const passages = howTos.flatMap(({ name, source }) => passagesOf(source).map((text) => ({ name, text })));

/** The passages that hold some words and lack others. */
const lacking = (words: RegExp, must: RegExp, except: (text: string) => boolean = () => false) =>
  passages.filter(({ text }) => words.test(text) && !must.test(text) && !except(text));

describe('the finger test of a layer', () => {
  test('asks for a cold layer wherever it lets the next one be poured', () => {
    expect(passages.filter(({ text }) => /lifts no string/.test(text)).length).toBeGreaterThan(3);
    expect(lacking(/lifts no string/, /\bcold\b|no longer warm/)).toEqual([]);
  });
});

describe('sanding', () => {
  const resinPages = howTos.filter(({ source }) => componentsOf({ name: '', source, text: '' }).some(isOfResin));

  function isOfResin({ component, properties }: { component: string; properties: Readonly<Record<string, unknown>> }) {
    return component === 'Cautions' && (properties['ids'] as string[]).some((id) => id.startsWith('resin-'));
  }

  test('before the full cure is by hand, wherever it is done for the next layer', () => {
    const names = new Set(resinPages.map(({ name }) => name));
    const of = lacking(/sand(?:ed|ing)?\b[^.|]*\bP180 to P220/, /by hand|finished|no finer|Varnish|full cure/, (text) =>
      /^\| (?:[^|]*varnish|[^|]*glass)/i.test(text),
    ).filter(({ name }) => names.has(name));
    expect(of).toEqual([]);
  });

  test('no scraper, plane or machine goes over resin that is still warm', () => {
    const warm = passages.filter(
      ({ text }) => /scraper|block plane|sander/.test(text) && /still (?:a little )?warm/.test(text),
    );
    expect(warm).toEqual([]);
  });

  test('the four tests of cure stand on one page, and the others lead to it', () => {
    const step = howTo('dust-from-cured-resin').source.split('{/* #cured */}')[1]?.split('\n### ')[0] ?? '';
    expect(step.match(/^\d\. /gm)).toHaveLength(4);
    for (const page of ['levelling-the-resin', 'polishing-resin', 'test-cup', 'bubbles'])
      expect(howTo(page).source, page).toContain('(./dust-from-cured-resin.mdx#cured)');
  });
});

describe('mixing', () => {
  test('the wall is scraped while one stirs, and never while one pours', () => {
    expect(howTo('dosing-and-mixing-resin').text).toContain(
      'scrape the wall while you stir, never while you pour over.',
    );
    expect(
      lacking(
        /scrap[ei][^.|]*(?:wall|cup)/,
        /while you stir|not scraped|scraped in|was scraped|scraping wall|wide tray/,
      ),
    ).toEqual([]);
  });
});

test('dry powder is warned of only where dry powder is used', () => {
  const warned = howTos.filter((page) =>
    componentsOf(page).some(
      ({ component, properties }) =>
        component === 'Cautions' && (properties['ids'] as string[]).includes('pigment-dust'),
    ),
  );
  expect(warned.map(({ name }) => name)).toEqual(['colour-and-pigment']);
  expect(howTo('colour-and-pigment').text).toContain('Paste and ink make no dust');
});

test('a heat tool is held at one distance, and passes three times at the most', () => {
  const said = passages.filter(
    ({ text }) => /\bpasses\b/.test(text) && /heat tool|about 8 inches|Along? the light|Look along/.test(text),
  );
  expect(said.map(({ name }) => name)).toEqual(['bubbles', 'colour-and-pigment']);
  expect(said.every(({ text }) => text.includes('three passes at the most'))).toBe(true);
});

test('the window of a class’s resin is quoted, and never typed', () => {
  const typed = passages.filter(
    ({ text }) =>
      /\b\d+ (?:to|and) \d+ (?:hours|h)\b/.test(text.replace(/‘[^’]*’/g, '')) && /window|seal coat/.test(text),
  );
  expect(typed).toEqual([]);
});

test('resin is never burned: each page on waste, dust or waste wood says so', () => {
  for (const page of ['resin-waste', 'dust-from-cured-resin', 'heat-build-up-in-resin'])
    expect(
      componentsOf(howTo(page)).some(({ properties }) =>
        (properties['ids'] as string[] | undefined)?.includes('never-burn-resin'),
      ),
      page,
    ).toBe(true);
});
