import { type PageNode, program } from './mdx-tree.ts';

const holdsFormula = ({ type, children = [] }: PageNode): boolean =>
  type === 'math' || type === 'inlineMath' || children.some(holdsFormula);

/** Import the style of formulas where a page has one: it is as heavy as all other style of a page, and its faces heavier. */
export function bringFormulas(tree: PageNode): void {
  if (!holdsFormula(tree)) return;
  const source = { type: 'Literal', value: '@site/src/site/css/katex.css' };
  tree.children?.unshift({
    type: 'mdxjsEsm',
    data: { estree: program([{ type: 'ImportDeclaration', specifiers: [], source, attributes: [] }]) },
  });
}
