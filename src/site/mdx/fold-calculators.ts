import { calculators } from '../../calculators/index.ts';
import type { Calculator, RawInputs } from '../../calculators/kit/calculator.ts';
import { foldedCase } from '../../calculators/kit/folded.ts';
import { calculatorIds } from '../../calculators/registry.ts';
import { cautionById } from '../../model/evidence/cautions.ts';
import { calculatorModule } from '../plugin/calculator-modules.ts';
import {
  attribute,
  expressionValue,
  fail,
  isPart,
  literalOf,
  type PageFile,
  type PageNode,
  setAttribute,
} from './mdx-tree.ts';

/**
 * Work out the case of each calculator of a page, which then shows it without the calculator, and say how the calculator is fetched. Each
 * is told which cautions stand above it in its page, those that other calculators say in the open among them: none of them stands there twice.
 */
export function foldCalculators(tree: PageNode, file: PageFile): void {
  const said: string[] = [];
  const walk = (node: PageNode): void => {
    if (node.name === 'Cautions') said.push(...(literalOf(node, 'ids', file) as string[]));
    if (isPart(node) && node.name === 'Calculator') said.push(...fold(node, file, said));
    for (const child of node.children ?? []) walk(child);
  };
  walk(tree);
}

/** Fold one calculator; gives the ids of the general cautions that it then says. */
function fold(node: PageNode, file: PageFile, said: readonly string[]): string[] {
  const calculator = calculatorOf(node, file);
  const preset = (literalOf(node, 'preset', file) ?? {}) as RawInputs;
  const folded = foldedCase(calculator, preset, said);
  if ('errors' in folded) {
    const what = folded.errors.map(({ field, message }) => `${field}: ${message}`).join(' ');
    fail(node, file, `the case of “${calculator.id}” has no answer. ${what}`);
  }
  setAttribute(node, 'title', calculator.title);
  setAttribute(node, 'folded', JSON.stringify(folded));
  setAttribute(node, 'load', fetching(calculatorModule(calculator.id)));
  if (said.length > 0) setAttribute(node, 'cautions', JSON.stringify(said.map(cautionById)));
  return folded.cautions.filter(({ own, id }) => !own && !said.includes(id)).map(({ id }) => id);
}

function calculatorOf(node: PageNode, file: PageFile): Calculator {
  const id = attribute(node, 'id');
  const found = calculators.find((one) => one.id === id);
  if (!found) fail(node, file, `there is no calculator “${id}”; there are ${calculatorIds.join(', ')}.`);
  return found;
}

/** A function that fetches a module, as the value of a property. */
function fetching(module: string) {
  return expressionValue(`() => import(${JSON.stringify(module)})`, {
    type: 'ArrowFunctionExpression',
    params: [],
    expression: true,
    body: { type: 'ImportExpression', source: { type: 'Literal', value: module } },
  });
}
