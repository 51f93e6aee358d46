import { Parser } from 'htmlparser2';
import katex from 'katex';
import type { FormulaElement, FormulaNode } from '../reference/data.ts';

/** Attributes that React knows by another name. */
const names: Readonly<Record<string, string>> = { class: 'className' };

const camel = (name: string) => name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

function styleOf(text: string): Record<string, string> {
  const style: Record<string, string> = {};
  for (const declaration of text.split(';')) {
    const at = declaration.indexOf(':');
    if (at > 0) style[camel(declaration.slice(0, at).trim())] = declaration.slice(at + 1).trim();
  }
  return style;
}

/**
 * A formula, typeset, as the parts that a page draws.
 *
 * @param tex in KaTeX
 * @throws where KaTeX cannot read it
 */
export function typeset(tex: string, displayMode: boolean): FormulaNode[] {
  const markup = katex.renderToString(tex, { displayMode, strict: 'error', throwOnError: true });
  const root: FormulaElement = ['div', {}];
  const open = [root];
  const parser = new Parser(
    {
      onopentag(name, values) {
        const properties: Record<string, string | Record<string, string>> = {};
        for (const [attribute, value] of Object.entries(values))
          properties[names[attribute] ?? attribute] = attribute === 'style' ? styleOf(value) : value;
        const element: FormulaElement = [name, properties];
        open.at(-1)?.push(element);
        open.push(element);
      },
      ontext(text) {
        const parent = open.at(-1) as FormulaElement;
        const last = parent.at(-1);
        // The parser gives an entity as a text of its own.
        if (parent.length > 2 && typeof last === 'string') parent[parent.length - 1] = last + text;
        else parent.push(text);
      },
      onclosetag: () => open.pop(),
    },
    { lowerCaseTags: false, lowerCaseAttributeNames: false, decodeEntities: true, recognizeSelfClosing: true },
  );
  parser.end(markup);
  return root.slice(2) as FormulaNode[];
}
