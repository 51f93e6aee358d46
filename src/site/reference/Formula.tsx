import { createElement, Fragment, type ReactNode } from 'react';
import type { FormulaNode } from './data.ts';

/** A formula that was set when the site was built, drawn from its parts: no text of it ever becomes markup in the browser. */
export function Formula({ parts }: { parts: readonly FormulaNode[] }) {
  return createElement(Fragment, null, ...parts.map(draw));
}

function draw(node: FormulaNode): ReactNode {
  if (typeof node === 'string') return node;
  const [name, properties, ...parts] = node;
  return createElement(name, properties, ...parts.map(draw));
}
