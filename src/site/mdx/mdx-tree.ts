import { runInNewContext } from 'node:vm';

/** As much of a node of a how-to page as is looked at while the page is compiled. */
export interface PageNode {
  type: string;
  name?: string;
  attributes?: PageAttribute[];
  children?: PageNode[];
  data?: unknown;
  position?: { start: { line: number; column: number } };
}

export interface PageAttribute {
  type: string;
  name?: string;
  value?: unknown;
}

export interface PageFile {
  path: string;
  /** What the page says of itself at its head. */
  data?: { frontMatter?: { title?: unknown } };
}

/** Whether a node is a part of a page, in its lines or by itself. */
export const isPart = ({ type }: PageNode): boolean => type === 'mdxJsxFlowElement' || type === 'mdxJsxTextElement';

/** Every part of a page of this name, in order. */
export function partsNamed(tree: PageNode, name: string): PageNode[] {
  const within = (tree.children ?? []).flatMap((child) => partsNamed(child, name));
  return isPart(tree) && tree.name === name ? [tree, ...within] : within;
}

/** The text of an attribute; empty where there is none, or a program. */
export function attribute(node: PageNode, name: string): string {
  const value = node.attributes?.find((one) => one.name === name)?.value;
  return typeof value === 'string' ? value : '';
}

/** Hand over to a part what the build has looked up for it, as `resolved`. */
export function give(node: PageNode, resolved: string): void {
  setAttribute(node, 'resolved', resolved);
}

export function setAttribute(node: PageNode, name: string, value: unknown): void {
  node.attributes?.push({ type: 'mdxJsxAttribute', name, value });
}

/** Stop the build, naming the line. */
export function fail(node: PageNode, file: PageFile, message: string): never {
  const { line, column } = node.position?.start ?? { line: 1, column: 1 };
  throw new Error(`${file.path}:${line}:${column} ${message}`);
}

/** Statements as the syntax tree of a module. */
export function program(body: readonly unknown[]) {
  return { type: 'Program', sourceType: 'module', body, comments: [] };
}

/** An expression as the value of an attribute. */
export function expressionValue(value: string, expression: unknown) {
  return {
    type: 'mdxJsxAttributeValueExpression',
    value,
    data: { estree: program([{ type: 'ExpressionStatement', expression }]) },
  };
}

/** The value of a property that is written as an expression: a literal, since pages name no variables. */
export function literalOf(node: PageNode, name: string, file: PageFile): unknown {
  const written = node.attributes?.find((one) => one.name === name)?.value as { value?: string } | undefined;
  if (written?.value === undefined) return undefined;
  try {
    return runInNewContext(`(${written.value})`);
  } catch (problem) {
    return fail(node, file, `${name} cannot be read: ${problem instanceof Error ? problem.message : problem}`);
  }
}
