import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { root } from '../../store/index.ts';
import { howToOrder } from '../how-to-order.ts';

/** A how-to page as other pages link to it. */
export interface HowToEntry {
  to: string;
  title: string;
  description: string;
}

export interface FrontMatter {
  title?: string;
  description?: string;
}

/** The how-to pages in the order of the sidebar, without the page that lists them. */
export function gatherHowTo(): HowToEntry[] {
  return howToOrder.flatMap(({ pages }) =>
    pages.map((name) => {
      const { title = name, description = '' } = frontMatter(join(root, 'docs', `${name}.mdx`));
      return { to: `/how-to/${name}`, title, description };
    }),
  );
}

/** What stands at the head of a how-to page. */
export function frontMatter(file: string): FrontMatter {
  const block = /^---\n([\s\S]*?)\n---/.exec(readFileSync(file, 'utf8'))?.[1];
  return block ? ((parse(block) as FrontMatter | null) ?? {}) : {};
}
