import { defaultUnits, formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';

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

/**
 * Steps of an inch in which a length of the text is written: thirty-seconds, as every figure of the site until a reader asks for others, so that one
 * length reads alike in a sentence and in what is quoted of a method. What is smaller than an eighth deserves finer ones.
 */
function stepsFor(mm: number): ReaderUnits['inches'] {
  if (mm < 0.8) return 'decimal';
  return mm < 3.2 ? 'sixty-fourths' : defaultUnits.inches;
}

/** The ends of a range are round numbers in mm and are so in inches: whole ones, halves, or eighths where they are small. mm. */
function rounded(mm: number): number {
  const step = mm < 25.4 ? 0 : mm < 100 ? 25.4 / 8 : mm < 250 ? 25.4 / 2 : 25.4;
  return step === 0 ? mm : Math.round(mm / step) * step;
}

/**
 * Lengths in inches, as they stand behind the same lengths in mm.
 *
 * @param text lengths in mm as a sentence writes them, such as `300 to 400 mm`
 * @returns for example `12 to 16 in`
 */
export function inInches(text: string): string {
  const parts = text.replace(/ mm$/, '').split(/( to | × )/);
  const range = parts.includes(' to ');
  const written = parts.map((part) => {
    if (!/\d/.test(part)) return part;
    const said = Number(part.replaceAll(',', ''));
    const mm = range ? rounded(said) : said;
    return formatQuantity(mm, 'mm', { system: 'inch', inches: stepsFor(mm) }, { digits: mm < 0.8 ? 1 : 6 }).replace(
      / in$/,
      '',
    );
  });
  return `${written.join('')} in`;
}

/** Whether a text already says a length in inches: right behind it in brackets, or right before it, with the length in brackets. */
function saidInInches(before: string, after: string): boolean {
  return /^\s*\([^)]*\b(?:in|ft)\b/.test(after) || /\b(?:in|ft)\b[^()]*\([^()]*$/.test(before);
}

/**
 * Put inches behind every length of a page's sentences, for readers of inches: they stand in the page as sent, and style shows them
 * where the reader measures in inches, so that nothing jumps.
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
  for (const match of text.matchAll(length)) {
    const end = match.index + match[0].length;
    if (saidInInches(text.slice(0, match.index), text.slice(end))) continue;
    pieces.push({ type: 'text', value: text.slice(from, end) }, aside(` (${inInches(match[0])})`));
    from = end;
  }
  if (pieces.length === 0) return [node];
  return [...pieces, { type: 'text', value: text.slice(from) }].filter(
    ({ type, value }) => type !== 'text' || value !== '',
  );
}

const aside = (words: string): TextTree => ({
  type: 'mdxJsxTextElement',
  name: 'span',
  attributes: [{ type: 'mdxJsxAttribute', name: 'className', value: 'in-inches' }],
  children: [{ type: 'text', value: words }],
});
