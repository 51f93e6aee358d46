import { fieldsOf } from '../../calculators/kit/answer.ts';
import { isCalculatorId } from '../../calculators/registry.ts';
import { fetchOnce } from '../../method/case/fit.ts';
import { orThese } from '../../method/case/or-these.ts';
import { attribute, expressionValue, fail, give, type PageFile, type PageNode, partsNamed } from './mdx-tree.ts';
import { figureForPage, inputsLike } from './methods-of-pages.ts';

/** As much of a JavaScript object literal as is looked at. */
interface ObjectLiteral {
  type: string;
  properties?: { type: string; key?: { type: string; name?: string; value?: unknown } }[];
}

/**
 * Write into a page what it quotes of the methods: the value of each `<Tray at="…" />`, and the inputs of each `<Calculator like="…" />`, its own
 * `preset` laid over them. A pointer that nothing answers, a calculation that is not there and an input that the calculator does not have stop
 * the build at their line, with the nearest right name.
 */
export async function quoteMethods(tree: PageNode, file: PageFile): Promise<void> {
  const said = new Set<string>();
  for (const node of partsNamed(tree, 'Tray')) await quoteFigure(node, file, said);
  onceASentence(tree);
  for (const node of partsNamed(tree, 'Calculator')) await quoteInputs(node, file);
}

async function quoteFigure(node: PageNode, file: PageFile, said: Set<string>): Promise<void> {
  const [at, of] = [attribute(node, 'at'), attribute(node, 'of') || undefined];
  const quoted = await figureForPage(at, of);
  if (!quoted.ok) fail(node, file, `<Tray at="${at}" />: ${quoted.why}`);
  const { text, basis } = quoted.value;
  const key = `${of ?? ''} ${at}`;
  // How a figure is known stands where it is first said; a sentence that says it again can then be read aloud.
  const known = basis === undefined || basis === 'published' || basis === 'derived' || said.has(key);
  said.add(key);
  give(node, JSON.stringify({ text, ...(known ? {} : { basis }) }));
}

/** Of figures of one sentence that are known alike the last alone says how: in between, the words would break the sentence. */
function onceASentence(node: PageNode): void {
  let later = '';
  for (const child of [...(node.children ?? [])].reverse()) {
    const words = (child as { value?: unknown }).value;
    if (child.type === 'text' && /[.:;?!](\s|$)/.test(String(words))) later = '';
    const resolved = child.name === 'Tray' && child.type === 'mdxJsxTextElement' && attribute(child, 'resolved');
    if (!resolved) {
      onceASentence(child);
      continue;
    }
    const { text, basis } = JSON.parse(resolved) as { text: string; basis?: string };
    const own = child.attributes?.find(({ name }) => name === 'resolved');
    if (basis && basis === later && own) own.value = JSON.stringify({ text });
    later = basis ?? later;
  }
}

/** The object literal of a `preset`; undefined where there is none. */
function presetOf(node: PageNode): { source: string; literal: ObjectLiteral } | undefined {
  const value = node.attributes?.find(({ name }) => name === 'preset')?.value as
    | { value: string; data?: { estree?: { body: { expression: ObjectLiteral }[] } } }
    | undefined;
  const literal = value?.data?.estree?.body[0]?.expression;
  return literal && value ? { source: value.value, literal } : undefined;
}

async function quoteInputs(node: PageNode, file: PageFile): Promise<void> {
  const id = attribute(node, 'id');
  if (!isCalculatorId(id)) return;
  const preset = presetOf(node);
  const known = Object.keys(fieldsOf(await fetchOnce(id)));
  for (const { key } of preset?.literal.properties ?? []) {
    const name = String(key?.name ?? key?.value);
    if (!known.includes(name))
      fail(node, file, `preset: ${id} has no input “${name}”. ${orThese(name, known, 'input')}`);
  }
  const like = attribute(node, 'like');
  if (like === '') return;
  const quoted = await inputsLike(id, like);
  if (!quoted.ok) fail(node, file, `<Calculator id="${id}" like="${like}" />: ${quoted.why}`);
  const given = Object.entries(quoted.value).map(([name, value]) => ({
    type: 'Property',
    kind: 'init',
    method: false,
    shorthand: false,
    computed: false,
    key: { type: 'Literal', value: name },
    value: { type: 'Literal', value },
  }));
  const over = preset ? [{ type: 'SpreadElement', argument: preset.literal }] : [];
  const source = `{...${JSON.stringify(quoted.value)}${preset ? `, ...${preset.source}` : ''}}`;
  const rest = (node.attributes ?? []).filter(({ name }) => name !== 'preset' && name !== 'like');
  const expression = { type: 'ObjectExpression', properties: [...given, ...over] };
  node.attributes = [...rest, { type: 'mdxJsxAttribute', name: 'preset', value: expressionValue(source, expression) }];
}
