import { expect, test } from 'vitest';
import { handbookTitles } from '../../src/site/plugin/titles.ts';
import { tradeWords } from '../../src/site/trade-words.ts';

const { pages, calculators } = handbookTitles();
const all = [...pages, ...calculators];
const nameOf = (to: string) => to.split('/').at(-1) as string;

test('every page and calculator has words of the trade, and no others do', () => {
  const names = [...new Set(all.map(({ to }) => nameOf(to)))].filter((name) => name !== 'glossary');
  expect(Object.keys(tradeWords).toSorted()).toEqual(names.toSorted());
});

test('no word stands there that every title of its name says', () => {
  for (const [name, words] of Object.entries(tradeWords)) {
    const titles = all.filter(({ to }) => nameOf(to) === name).map(({ title }) => title.toLowerCase().split(/\W+/));
    const said = words.split(' ').filter((word) => titles.every((title) => title.includes(word)));
    expect(said, name).toEqual([]);
  }
});
