import { expect, test } from 'vitest';
import { type LinkTree, placeName, remarkSee } from '../../src/site/mdx/remark-see.ts';

const link = (url: string, value: string): LinkTree => ({ type: 'link', url, children: [{ type: 'text', value }] });
const seen = ({ data }: LinkTree) => data?.hProperties?.['data-see'];

test('a place of the site has the name of its page and heading, whichever way its address is written', () => {
  expect(placeName('./recoat-and-cure.mdx')).toBe(placeName('/how-to/recoat-and-cure'));
  expect(placeName('./dosing-and-mixing-resin.mdx#cautions')).toBe('Dosing and mixing resin, “What can hurt”');
  expect(placeName('./dosing-and-mixing-resin.mdx#not-a-heading')).toBe('Dosing and mixing resin');
  expect(placeName('/calculators/resin-dose')).toMatch(/^calculator “/);
  expect(placeName('/resin-sheets')).toBe('Resin data sheets');
});

test('what is elsewhere, and what names no page of ours, has none', () => {
  for (const url of ['https://example.org/how-to/care', '#here', '/reference/sources#x', './no-such-page.mdx'])
    expect(placeName(url)).toBeUndefined();
});

test('each is said once a page, and not where the words of the link say it', () => {
  const [first, again, plain, away] = [
    link('./x.mdx', 'this'),
    link('./x.mdx', 'that'),
    link('./y.mdx', 'Yonder'),
    link('https://example.org', 'there'),
  ];
  const nameOf = (url: string) => ({ './x.mdx': 'Exes', './y.mdx': 'yonder' })[url];
  remarkSee(nameOf)()({ type: 'root', children: [{ type: 'paragraph', children: [first, again] }, plain, away] });
  expect([first, again, plain, away].map(seen)).toEqual(['Exes', undefined, undefined, undefined]);
});
