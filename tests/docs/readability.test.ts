import { describe, expect, test } from 'vitest';
import { cautionIdsOf, explainedWords, readability } from '../../bench/readable.ts';
import { howTo, howTos } from './how-to.ts';

// What can be counted of plain writing is held here: `npx tsx bench/readability.ts` prints it for every page.

/** No page reads worse than this. */
const most = { words: 1_500, meanSentence: 14.5, longSentences: 0.1, longWords: 0.04, longestBlock: 78, dangers: 8 };

/** Nor these, which are filled in or followed by the minute, than this. */
const lists = { ...most, words: 1_600 };
const listPages = ['a-room-and-a-class', 'lesson-plans'];

/** Nor these, which have more to tell, than this. */
const longer = {
  words: 2_050,
  meanSentence: 16.5,
  longSentences: 0.18,
  longWords: 0.04,
  longestBlock: 120,
  dangers: 8,
};
const longPages = ['writing-a-method'];

const explained = explainedWords(howTo('glossary').source);
const guides = howTos.filter(({ name }) => !['index', 'glossary'].includes(name));

test.each(guides)('$name can be read at the bench', ({ name, source }) => {
  const read = readability(source, explained);
  const limits = longPages.includes(name) ? longer : listPages.includes(name) ? lists : most;
  const over = Object.entries(limits).filter(([name, limit]) => read[name as keyof typeof most] > limit);
  expect(over.map(([name]) => [name, read[name as keyof typeof most]])).toEqual([]);
});

describe('the measure', () => {
  const page = (body: string) => readability(`---\ntitle: T\n---\n\n${body}\n`, new Set(['microcrystalline']));

  test('gives the reading ease that Flesch’s formula gives', () => {
    // 206.835 - 1.015 words a sentence - 84.6 syllables a word, as published by R. Flesch, A new readability yardstick, 1948.
    expect(page('The cat sat on the mat.').ease).toBeCloseTo(206.835 - 1.015 * 6 - 84.6, 6);
  });

  test('counts words, sentences, blocks, long words and steps', () => {
    const read = page(
      [
        'One two three. Four five.',
        '1. Step <Tray at="/a" /> of [the pour](./pour.mdx#a).\n2. Not an unsatisfactory, but a microcrystalline one.',
        '| A | B |\n| --- | --- |\n| six seven eight nine ten eleven twelve thirteen | c |',
        '## Check yourself {/* #check */}\n\n<Check>\n\n1. Why?\n\n<Answers>\n\n1. So.\n\n</Answers>\n\n</Check>',
        '## Where the figures come from {/* #sources */}\n\nNot read.',
      ].join('\n\n'),
    );
    expect(read).toMatchObject({ words: 30, longestBlock: 8, steps: 2 });
    expect(read.meanSentence).toBeCloseTo(19 / 6);
    expect(read.longWords).toBeCloseTo(1 / 30);
  });

  test('knows a long sentence and a danger', () => {
    const words = (count: number) => `${Array.from({ length: count }, () => 'Word').join(' ')}.`;
    expect(page(`${words(26)} ${words(25)}`).longSentences).toBe(0.5);
    const source = "<Cautions\n  ids={['resin-skin', 'nut-oils']}\n/>";
    expect(cautionIdsOf(source)).toEqual(['resin-skin', 'nut-oils']);
    expect(page(source)).toMatchObject({ cautions: 2, words: 0 });
  });
});
