import { nameKey } from '../../model/quantity/index.ts';

/** As much of a Markdown node as is looked at here. */
export interface TableTree {
  type: string;
  value?: string;
  children?: TableTree[];
  data?: { hProperties?: Record<string, unknown> };
}

const textOf = (node: TableTree): string => `${node.value ?? ''}${(node.children ?? []).map(textOf).join('')}`;

/** Ids of a row: `word-stickers` for what its first cell calls first. */
const idOf = (cell: string): string => `word-${nameKey(cell.split(/[,;(]/)[0] ?? '').replaceAll(' ', '-')}`;

/**
 * Give each row of the glossary an id by its word, so that an address can lead to it, and the search too; a word of two trades has its second as
 * `word-window-2`. Another page stays as it is.
 */
export function remarkGlossary() {
  return (tree: TableTree, file: { path?: string }): void => {
    if (!/[\\/]glossary\.mdx$/.test(file.path ?? '')) return;
    const taken = new Map<string, number>();
    const visit = (node: TableTree): void => {
      if (node.type !== 'table') {
        for (const child of node.children ?? []) visit(child);
        return;
      }
      for (const row of (node.children ?? []).slice(1)) {
        const word = textOf(row.children?.[0] ?? { type: 'text' });
        const id = idOf(word);
        const count = (taken.get(id) ?? 0) + 1;
        taken.set(id, count);
        row.data = { ...row.data, hProperties: { ...row.data?.hProperties, id: count === 1 ? id : `${id}-${count}` } };
      }
    };
    visit(tree);
  };
}
