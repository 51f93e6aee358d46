import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type PageNode, program } from './mdx-tree.ts';

const drawingsFolder = fileURLToPath(new URL('./drawings/', import.meta.url));

/** The drawings that there are, by the names of their files. */
const drawingNames = new Set(
  readdirSync(drawingsFolder)
    .filter((file) => file.endsWith('.tsx'))
    .map((file) => file.replace(/\.tsx$/, '')),
);

/** Import every drawing that a page shows: some forty in the code of every page would be loaded for two of them. */
export function bringDrawings(tree: PageNode): void {
  const names = new Set<string>();
  const walk = (node: PageNode): void => {
    if (node.name && drawingNames.has(node.name)) names.add(node.name);
    for (const child of node.children ?? []) walk(child);
  };
  walk(tree);
  const imports = [...names].map((name) => ({
    type: 'ImportDeclaration',
    specifiers: [
      {
        type: 'ImportSpecifier',
        imported: { type: 'Identifier', name },
        local: { type: 'Identifier', name },
      },
    ],
    source: { type: 'Literal', value: `@site/src/site/mdx/drawings/${name}.tsx` },
    attributes: [],
  }));
  if (imports.length > 0) tree.children?.unshift({ type: 'mdxjsEsm', data: { estree: program(imports) } });
}
