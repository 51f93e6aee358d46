import { expect, test } from 'vitest';
import { searchFileOf } from '../../../src/site/plugin/search-index.ts';
import { find, searching } from '../../../src/site/search/find.ts';

const page = (title: string, ...passages: [anchor: string, heading: string, text: string][]) => ({
  title,
  description: '',
  passages: passages.map(([anchor, heading, text]) => ({ anchor, heading, text })),
});
const asked = searching(
  JSON.parse(
    JSON.stringify(
      searchFileOf(
        [
          {
            address: '/how-to/glossary',
            page: page('Words', ['', '', ''], ['word-4-4', '4/4, 5/4, 8/4', 'rough thickness']),
          },
          {
            address: '/how-to/routing-to-a-template',
            page: page('Routing to a template without tear-out', ['', '', 'Which way the fibres run.']),
          },
          { address: '/how-to/other', page: page('Of something else', ['', '', 'In 2024, 8 of 4 boards.']) },
        ],
        [],
      ),
    ),
  ),
);
const addresses = (text: string) => find(asked, text).groups.flatMap(({ pages }) => pages.map(({ to }) => to));

test.each(['4/4', '8/4', '5/4 thickness'])(
  '%s finds the thickness in quarters, and nothing with bare numbers',
  (text) => {
    expect(addresses(text)).toEqual(['/how-to/glossary#word-4-4']);
  },
);

test.each(['tearout', 'tear-out', 'tear out', 'tearouts'])('%s finds the page on tear-out', (text) => {
  expect(addresses(text)).toEqual(['/how-to/routing-to-a-template']);
});
