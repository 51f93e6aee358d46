import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { calculators } from '../../calculators/index.ts';
import { root } from '../../store/index.ts';

/** As much of a Markdown node as is looked at here. */
export interface LinkTree {
  type: string;
  url?: string;
  value?: string;
  children?: LinkTree[];
  data?: { hProperties?: Record<string, unknown> };
}

/** Pages that are neither of the handbook nor a calculator, by the name that a menu gives them. */
const others: Readonly<Record<string, string>> = {
  '/resin-sheets': 'Resin data sheets',
  '/shop': 'Your shop',
  '/batches': 'Batches',
  '/methods': 'Methods',
  '/bench': 'Bench',
  '/class': 'Class',
  '/sheets': 'Sheets',
};

const textOf = (node: LinkTree): string => `${node.value ?? ''}${(node.children ?? []).map(textOf).join('')}`;

/**
 * Say on paper which page a link leads to, by its title and the heading, since nobody presses paper: each once a page, and none where the
 * words of the link say it already. The print style writes it from the attribute `data-see`.
 *
 * @param nameOf title of the page, and the heading of the anchor, that an address within the site stands for
 */
export function remarkSee(nameOf: (url: string) => string | undefined = placeName) {
  return () =>
    (tree: LinkTree): void => {
      const seen = new Set<string>();
      const walk = (node: LinkTree): void => {
        const name = node.type === 'link' && node.url ? nameOf(node.url) : undefined;
        if (name && !seen.has(name)) {
          seen.add(name);
          if (!name.toLowerCase().startsWith(textOf(node).trim().toLowerCase())) {
            node.data = { ...node.data, hProperties: { ...node.data?.hProperties, 'data-see': name } };
          }
        }
        for (const child of node.children ?? []) walk(child);
      };
      walk(tree);
    };
}

/** The page, and the heading in it, that an address of the site stands for: `/how-to/recoat-and-cure#window` or `./recoat-and-cure.mdx#window`. */
export function placeName(url: string): string | undefined {
  const [path = '', anchor] = url.split('#');
  const page = /^(?:\.\/|\/how-to\/)([a-z-]+?)(?:\.mdx)?$/.exec(path)?.[1];
  if (page) return howToName(page, anchor);
  const id = /^\/calculators\/([a-z-]+)/.exec(path)?.[1];
  const calculator = id && calculators.find((one) => one.id === id);
  return calculator ? `calculator “${calculator.title}”` : others[path];
}

function howToName(page: string, anchor: string | undefined): string | undefined {
  const file = join(root, 'docs', `${page}.mdx`);
  if (!existsSync(file)) return undefined;
  const text = readFileSync(file, 'utf8');
  const title = /^title: (.*)$/m.exec(text)?.[1]?.replace(/^(['"])(.*)\1$/, '$2');
  if (!title || !anchor) return title;
  const heading = text.split('\n').find((line) => /^#+ /.test(line) && line.includes(`{/* #${anchor} */}`));
  const words = heading
    ?.replace(/^#+ /, '')
    .replace(/\s*\{.*$/, '')
    .replace(/[*_`]/g, '');
  return words ? `${title}, “${words}”` : title;
}
