/** As much of a Markdown node as is looked at here. */
export interface TextTree {
  type: string;
  value?: string;
  name?: string;
  attributes?: unknown[];
  children?: TextTree[];
}

/** Where a length is no length of the reader's board: code, formulas, headings, which the list of a page's parts repeats. */
const left = new Set([
  'code',
  'inlineCode',
  'math',
  'inlineMath',
  'heading',
  'mdxjsEsm',
  'mdxFlowExpression',
  'mdxTextExpression',
]);

const number = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?`;
/** `22 mm`, `300 to 400 mm`, `610 × 229 × 19 mm`; no area, volume or rate. */
const length = new RegExp(String.raw`(?<![\w.,/])(?:${number})(?:(?: to | × )(?:${number}))* mm(?![\w/²³·])`, 'gu');

/** `20 °C`, `35 to 50 °C`, `−10 °C`. */
const temperature = /(?<![\w.,/])−?\d+(?:\.\d+)?(?: (?:to|or|and) −?\d+(?:\.\d+)?)? °C(?![\w/])/gu;

/** Whether a text already says a length in inches: right behind it in brackets, or right before it, with the length in brackets. */
function saidInInches(before: string, after: string): boolean {
  return /^\s*\([^)]*\b(?:in|ft)\b/.test(after) || /\b(?:in|ft)\b[^()]*\([^()]*$/.test(before);
}

/** Whether a temperature is said in degrees Fahrenheit already, or is by how much something gets warmer, which another sum turns into them. */
function saidOrDifference(before: string, after: string): boolean {
  const said = /^\s*\([^)]*°F|^ or \d+ °F/.test(after) || /°F[^()]*\([^()]*$/.test(before);
  return (
    said ||
    /\b(?:per|by|by some|every|some)\s$/.test(before) ||
    /^ (?:warmer|cooler|colder|more|less|halve)/.test(after)
  );
}

/**
 * Put inches behind every length of a page's sentences and degrees Fahrenheit behind every temperature, for readers of inches: they stand in the page as sent, written as most read them, and style
 * shows them where the reader measures in inches, so that nothing jumps. Whoever asks for other steps of an inch gets those.
 */
export function remarkInches() {
  return (tree: TextTree): void => visit(tree);
}

function visit(node: TextTree): void {
  if (left.has(node.type) || !node.children) return;
  node.children = node.children.flatMap((child) => (child.type === 'text' ? withInches(child) : [child]));
  for (const child of node.children) visit(child);
}

function withInches(node: TextTree): TextTree[] {
  const text = node.value ?? '';
  const pieces: TextTree[] = [];
  let from = 0;
  const matches = [
    ...[...text.matchAll(length)].map((match) => ({ match, left: saidInInches })),
    ...[...text.matchAll(temperature)].map((match) => ({ match, left: saidOrDifference })),
  ].sort((a, b) => a.match.index - b.match.index);
  for (const { match, left: leftOut } of matches) {
    const end = match.index + match[0].length;
    if (leftOut(text.slice(0, match.index), text.slice(end))) continue;
    pieces.push({ type: 'text', value: text.slice(from, end) }, aside(match[0]));
    from = end;
  }
  if (pieces.length === 0) return [node];
  return [...pieces, { type: 'text', value: text.slice(from) }].filter(
    ({ type, value }) => type !== 'text' || value !== '',
  );
}

const aside = (length: string): TextTree => ({
  type: 'mdxJsxTextElement',
  name: 'InInches',
  attributes: [{ type: 'mdxJsxAttribute', name: 'of', value: length }],
  children: [],
});
