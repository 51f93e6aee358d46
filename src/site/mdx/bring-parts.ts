import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type PageNode, program } from './mdx-tree.ts';

const drawingsFolder = fileURLToPath(new URL('./drawings/', import.meta.url));

/** Files under src/site of the parts that come with the pages that name them: the drawings, and what carries data of its own. */
const partFiles: ReadonlyMap<string, string> = new Map([
  ...readdirSync(drawingsFolder)
    .filter((file) => file.endsWith('.tsx'))
    .map((file): [string, string] => [file.replace(/\.tsx$/, ''), `mdx/drawings/${file}`]),
  ['Finishes', 'finish/Finishes.tsx'],
]);

/** Import every drawing, and every list of the model, that a page shows: in the code of every page forty would be loaded for two of them. */
export function bringParts(tree: PageNode): void {
  const names = new Set<string>();
  const walk = (node: PageNode): void => {
    if (node.name && partFiles.has(node.name)) names.add(node.name);
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
    source: { type: 'Literal', value: `@site/src/site/${partFiles.get(name)}` },
    attributes: [],
  }));
  if (imports.length > 0) tree.children?.unshift({ type: 'mdxjsEsm', data: { estree: program(imports) } });
}
