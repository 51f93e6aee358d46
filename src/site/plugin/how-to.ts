import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { root } from '../../store/index.ts';

/** A how-to page as the home page lists it. */
export interface HowToEntry {
  to: string;
  title: string;
  description: string;
}

interface FrontMatter {
  title?: string;
  description?: string;
  slug?: string;
  sidebar_position?: number;
}

/** The how-to pages in the order of their `sidebar_position`, without the page that lists them. */
export function gatherHowTo(): HowToEntry[] {
  const folder = join(root, 'docs');
  return readdirSync(folder)
    .filter((file) => /\.mdx?$/.test(file))
    .map((file) => ({ name: file.replace(/\.mdx?$/, ''), matter: frontMatter(join(folder, file)) }))
    .filter(({ matter }) => matter.slug !== '/')
    .sort((a, b) => (a.matter.sidebar_position ?? Infinity) - (b.matter.sidebar_position ?? Infinity))
    .map(({ name, matter }) => ({
      to: `/how-to/${matter.slug ?? name}`,
      title: matter.title ?? name,
      description: matter.description ?? '',
    }));
}

function frontMatter(file: string): FrontMatter {
  const block = /^---\n([\s\S]*?)\n---/.exec(readFileSync(file, 'utf8'))?.[1];
  return block ? ((parse(block) as FrontMatter | null) ?? {}) : {};
}
