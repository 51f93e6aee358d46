import { expect, test } from 'vitest';
import { findTitles } from '../../src/site/page/find-titles.ts';

const pages = [
  { to: '/a', title: 'Dosing and mixing resin', about: 'Grams of each part for each cup.' },
  { to: '/b', title: 'Heat of a pour', about: 'How deep may resin be poured?' },
  { to: '/c', title: 'Oily rags', about: 'What to do with cloths.' },
];

test.each([
  ['resin', ['/a', '/b']],
  ['mix res', ['/a']],
  ['RAGS', ['/c']],
  ['pour', ['/b']],
  ['walnut', []],
  ['', []],
  ['!?', []],
])('“%s” finds %j, titles first', (text, found) => {
  expect(findTitles(pages, text).map(({ to }) => to)).toEqual(found);
});
