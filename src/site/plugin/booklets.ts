import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../store/index.ts';
import type { Booklet } from '../booklet/types.ts';
import { bookletId, howToOrder } from '../how-to-order.ts';
import { frontMatter } from './how-to.ts';

/** A stage of the work to be printed as one, and the file of each of its pages, in order. */
export interface GatheredBooklet {
  booklet: Booklet;
  files: readonly string[];
}

/** The caution ids of a page, as its `<Cautions ids={['…']} />` name them. */
export function cautionIdsOf(text: string): string[] {
  const lists = [...text.matchAll(/<Cautions\s+ids=\{\[([^\]]*)\]\}/g)].map(([, list]) => list ?? '');
  return lists.flatMap((list) => [...list.matchAll(/'([^']+)'/g)].map(([, id]) => id as string));
}

/** A booklet for every stage of the how-to pages that has a name: the pages themselves, so that none of their words stands twice. */
export function gatherBooklets(): GatheredBooklet[] {
  return howToOrder.flatMap(({ label, pages }) => {
    if (label === undefined) return [];
    const files = pages.map((name) => join(root, 'docs', `${name}.mdx`));
    const cautions = files.flatMap((file) => cautionIdsOf(readFileSync(file, 'utf8')));
    return [
      {
        booklet: {
          id: bookletId(label),
          title: label,
          cautions: [...new Set(cautions)],
          pages: pages.map((name, at) => {
            const { title = name, description = '' } = frontMatter(files[at] as string);
            return { name, title, description };
          }),
        },
        files: pages.map((name) => `@site/docs/${name}.mdx`),
      },
    ];
  });
}
