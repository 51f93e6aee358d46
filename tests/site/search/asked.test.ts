import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { PageText } from '../../../src/site/plugin/page-text.ts';
import { searchFileOf } from '../../../src/site/plugin/search-index.ts';
import { handbookTitles } from '../../../src/site/plugin/titles.ts';
import { find, searching } from '../../../src/site/search/find.ts';
import { root } from '../../../src/store/index.ts';

/** A how-to page as the search reads it, made of its source: near enough to the built one for its words and headings. */
function pageOf(name: string, title: string): PageText {
  const source = readFileSync(join(root, 'docs', `${name}.mdx`), 'utf8');
  const description = /^description: (.*)$/m.exec(source)?.[1] ?? '';
  const [first = '', ...others] = source.replace(/^---[\s\S]*?---/, '').split(/^#{2,3} /m);
  return {
    title,
    description,
    passages: [
      { anchor: '', heading: '', text: first },
      ...others.map((part) => {
        const [line = '', ...text] = part.split('\n');
        const [, heading = line, anchor = ''] = /^(.*?) \{\/\* #(\S+) \*\/\}/.exec(line) ?? [];
        return { anchor, heading, text: text.join('\n').replace(/<[^>]*>|\]\([^)]*\)|[*[\]|]/g, ' ') };
      }),
    ],
  };
}

const pages = handbookTitles().pages.flatMap(({ to, title }) => {
  const name = to.split('/').at(-1) as string;
  return name === 'how-to' || name === 'glossary' ? [] : [{ address: to, page: pageOf(name, title) }];
});
const search = searching(JSON.parse(JSON.stringify(searchFileOf(pages, []))));
const firstOf = (text: string) =>
  (find(search, text).groups.find(({ kind }) => kind === 'how-to')?.pages ?? [])
    .slice(0, 3)
    .map(({ to }) => to.split('#')[0]?.split('/').at(-1));

test.each([
  ['resin wont set', 'dosing-and-mixing-resin'],
  ['sealing wood before epoxy', 'making-the-pocket'],
  ['juice groove', 'making-the-pocket'],
  ['oak tannin', 'choosing-a-wood'],
  ['warped board', 'flattening-a-wide-board'],
  ['cutting board oil', 'oiling-and-waxing'],
  ['mask', 'dust-from-cured-resin'],
  ['dust explosion', 'dust-from-cured-resin'],
  ['calendar', 'lesson-plans'],
  ['bandsaw', 'making-and-using-templates'],
  ['epoxy in eye', 'resin-and-hardeners'],
])('“%s” leads to %s', (text, name) => {
  expect(firstOf(text)).toContain(name);
});

test('what has burnt an eye or bent a board comes first', () => {
  expect(firstOf('epoxy in eye')[0]).toBe('resin-and-hardeners');
  expect(firstOf('warped board')[0]).toBe('flattening-a-wide-board');
});

test.each([
  ['cup hot', 'heat-build-up-in-resin'],
  ['board feet', 'buying-and-ordering-stock'],
  ['cracked board', 'seasonal-movement'],
  ['cupping', 'flattening-a-wide-board'],
  ['janka', 'choosing-a-wood'],
  ['resin lifted from wood', 'resin-and-moving-wood'],
  ['leaking resin', 'pouring-an-inlay'],
  ['drum sander scratches', 'sanding-to-a-finish'],
])('“%s” leads to %s before all others', (text, name) => {
  expect(firstOf(text)[0]).toBe(name);
});

test.each(['won’t', "won't", 'won‘t', 'wonʼt', 'won`t'])('“%s” is asked as wont', (word) => {
  expect(firstOf(`resin ${word} set`)).toEqual(firstOf('resin wont set'));
});
