import { describe, expect, test } from 'vitest';
import { allSpecies } from '../../../src/model/species/all.ts';
import { searchFileOf, stretchesOf } from '../../../src/site/plugin/search-index.ts';
import { find, searching } from '../../../src/site/search/find.ts';

const page = (title: string, description: string, ...passages: [anchor: string, heading: string, text: string][]) => ({
  title,
  description,
  passages: passages.map(([anchor, heading, text]) => ({ anchor, heading, text })),
});

const pages = [
  {
    address: '/how-to/oily-rags',
    page: page(
      'Oily rags',
      'Keep the shop from burning.',
      ['', '', 'Cloths heat up.'],
      ['can', 'The can', 'Water and a lid.'],
    ),
  },
  {
    address: '/how-to/recoat-and-cure',
    page: page(
      'Recoat and cure',
      'When to pour again.',
      ['', '', ''],
      ['wrong', 'What goes wrong', 'The resin stays sticky.'],
    ),
  },
  {
    address: '/how-to/glossary',
    page: page(
      'Words',
      'Words of the trade.',
      ['', '', ''],
      ['word-tack', 'tack', 'half cured'],
      ['word-gel', 'gel', 'no longer flows'],
    ),
  },
  {
    address: '/calculators/cure-clock',
    page: page('Cure clock', 'When may it be sanded?', ['', '', 'A long form with rags.']),
  },
  { address: '/reference/shop-record', page: page('Rags', 'Rags, rags.', ['rags', 'rags', 'oily rags']) },
  { address: '/woods/white-ash', page: page('White ash', 'A wood.', ['', '', 'rags']) },
];

// Through text, as it comes to a browser.
const asked = searching(JSON.parse(JSON.stringify(searchFileOf(pages, allSpecies))));
const placesOf = (text: string) => find(asked, text).groups.flatMap(({ pages: found }) => found.map(({ to }) => to));

describe('the search', () => {
  test.each([
    ['oily rags', '/how-to/oily-rags'],
    ['OILY RAG', '/how-to/oily-rags'],
    ['oyly rags', '/how-to/oily-rags'],
    ['lid', '/how-to/oily-rags#can'],
    ['sticky resin', '/how-to/recoat-and-cure#wrong'],
    ['stickey resin', '/how-to/recoat-and-cure#wrong'],
    ['tack', '/how-to/glossary#word-tack'],
    // By the words of the trade that its title does not say.
    ['epoxy drying', '/calculators/cure-clock'],
  ])('“%s” leads to %s', (text, to) => {
    expect(placesOf(text)).toContain(to);
  });

  test.each([
    ['purple heart', 'purpleheart'],
    ['blackwalnut', 'black-walnut'],
    ['fraxnius americana', 'white-ash'],
    ['curly maples', 'sugar-maple'],
  ])('“%s” finds the wood %s', (text, id) => {
    expect(find(asked, text).woods.map((wood) => wood.id)).toContain(id);
  });

  test('a page stands once in it, a word of the glossary for itself', () => {
    expect(placesOf('cure').filter((to) => to.startsWith('/how-to/recoat-and-cure'))).toHaveLength(1);
    expect(placesOf('cured')).toContain('/how-to/glossary#word-tack');
  });

  test('where nothing holds every word, what holds some of them is given and called so', () => {
    const { some, groups, woods } = find(asked, 'rags zzyzx');
    expect(some).toBe(true);
    expect(woods).toEqual([]);
    expect(groups[0]?.pages[0]?.to).toBe('/how-to/oily-rags');
    expect(find(asked, 'zzyzxq').groups).toEqual([]);
  });

  test('nothing is found for nothing', () => {
    for (const text of ['', '  ', '!?', 'the']) expect(find(asked, text)).toMatchObject({ groups: [], some: false });
  });
});

test('who asks in words of the shop is led to what to do before what is written of it elsewhere', () => {
  expect(placesOf('rags')[0]).toBe('/how-to/oily-rags');
  expect(find(asked, 'rags').groups.map(({ kind }) => kind)).toContain('reference');
});

test('a calculator folded into a page is found under its own address alone', () => {
  const folded = page(
    'Bubbles',
    'How they rise.',
    ['', '', ''],
    ['«R8q7»', 'Working time', 'resin'],
    ['torch', 'Torch', 'a flame'],
  );
  expect(stretchesOf('/how-to/bubbles', folded).map(({ to }) => to)).toEqual([
    '/how-to/bubbles',
    '/how-to/bubbles#torch',
  ]);
});

test('a calculator is found by its title and question, not by the words of its form', () => {
  const [only, ...more] = stretchesOf('/calculators/cure-clock', pages[3]?.page as never);
  expect(more).toEqual([]);
  expect(only?.text).toBe('When may it be sanded?');
});

test('woods and the search itself are no pages of it', () => {
  for (const address of ['/woods/white-ash', '/', '/404', '/search'])
    expect(stretchesOf(address, page('x', 'y', ['', '', 'z']))).toEqual([]);
});
