import {
  type Document,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';

/** Path of a value in a record. */
export type DataPath = readonly (string | number)[];

/** An entry of a group or list, with where it stands. */
export interface Located {
  /** The group or list that it is in. */
  within: YAMLMap | YAMLSeq;
  /** Its number in it. */
  at: number;
  /** Its name; none in a list. */
  key?: Scalar;
  value: Node | null;
}

/** What a path leads to. */
export function nodeAt(document: Document, path: DataPath): Node | null | undefined {
  if (path.length === 0) return isNode(document.contents) ? document.contents : null;
  return locate(document, path)?.value;
}

/** The entry that a path leads to. */
export function locate(document: Document, path: DataPath): Located | undefined {
  let node: Node | null = isNode(document.contents) ? document.contents : null;
  let found: Located | undefined;
  for (const step of path) {
    found = isMap(node) || isSeq(node) ? entryOf(node, step) : undefined;
    if (!found) return undefined;
    node = found.value;
  }
  return found;
}

/** The entries of a group or list. */
export function entriesOf(within: YAMLMap | YAMLSeq): Located[] {
  return within.items.map((_item, at) => entryAt(within, at)).filter((entry) => entry !== undefined);
}

function entryAt(within: YAMLMap | YAMLSeq, at: number): Located | undefined {
  const item = within.items[at];
  if (isSeq(within)) return { within, at, value: isNode(item) ? item : null };
  if (!isPair(item) || !isScalar(item.key)) return undefined;
  return { within, at, key: item.key, value: isNode(item.value) ? item.value : null };
}

function entryOf(within: YAMLMap | YAMLSeq, step: string | number): Located | undefined {
  if (isSeq(within)) return typeof step === 'number' && step < within.items.length ? entryAt(within, step) : undefined;
  const at = within.items.findIndex(({ key }) => isScalar(key) && String(key.value) === String(step));
  return at < 0 ? undefined : entryAt(within, at);
}

export const isFlow = (node: unknown): boolean => isCollection(node) && node.flow === true;
export const isBlockCollection = (node: unknown): boolean => isCollection(node) && node.flow !== true;
export const isBlockScalar = (node: unknown): node is Scalar =>
  isScalar(node) && (node.type === 'BLOCK_FOLDED' || node.type === 'BLOCK_LITERAL');

/** Whether nothing is written where a value could stand. */
export const isNothing = (node: Node | null): boolean =>
  node === null || (isScalar(node) && node.range?.[0] === node.range?.[1] && node.source === '');

/** Where the line of an offset ends, before its line feed. */
export function lineEnd(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  if (end < 0) return text.length;
  return end > 0 && text[end - 1] === '\r' ? Math.max(offset, end - 1) : end;
}

/** Where the line of an offset begins; a byte order mark stands before it. */
export function lineStart(text: string, offset: number): number {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  return start === 0 && text.startsWith('\ufeff') ? 1 : start;
}

/** How far to the right an offset stands. */
export const columnOf = (text: string, offset: number): number => offset - lineStart(text, offset);

/** Where what is written of a node ends: without the blank lines, comments and line ends that the parser counts in. */
export function endOf(text: string, node: Node): number {
  if (isMap(node) || isSeq(node)) {
    if (!node.flow) {
      const last = node.items.at(-1);
      if (isNode(last)) return endOf(text, last);
      if (isPair(last)) return endOfPair(text, last);
    }
    return node.range?.[1] ?? 0;
  }
  const [from = 0, to = 0] = node.range ?? [];
  if (!isBlockScalar(node)) return to;
  return from + text.slice(from, to).trimEnd().length;
}

function endOfPair(text: string, { key, value, srcToken }: Pair): number {
  if (isNode(value) && !isNothing(value)) return endOf(text, value);
  const colon = srcToken?.sep?.find(({ type }) => type === 'map-value-ind');
  if (colon) return colon.offset + colon.source.length;
  return isNode(key) ? (key.range?.[1] ?? 0) : 0;
}

/** Where an entry begins: its name, its dash, or in brackets its value. */
export function startOf({ within, at, key, value }: Located): number {
  if (key) return key.range?.[0] ?? 0;
  return dashOf({ within, at }) ?? value?.range?.[0] ?? 0;
}

/** Where the dash of an entry of a list in lines stands. */
function dashOf({ within, at }: Pick<Located, 'within' | 'at'>): number | undefined {
  const { srcToken } = within as {
    srcToken?: { type?: string; items?: { start?: { type: string; offset: number }[] }[] };
  };
  if (srcToken?.type !== 'block-seq') return undefined;
  return srcToken.items?.[at]?.start?.find(({ type }) => type === 'seq-item-ind')?.offset;
}

/** Where the value of an entry may begin: just behind its colon or its dash; undefined in a list in brackets. */
export function valueMarkEnd(located: Located): number | undefined {
  const { within, at, key } = located;
  if (!key) {
    const dash = dashOf(located);
    return dash === undefined ? undefined : dash + 1;
  }
  const pair = within.items[at] as Pair;
  const colon = pair.srcToken?.sep?.find(({ type }) => type === 'map-value-ind');
  return colon ? colon.offset + colon.source.length : undefined;
}

/** Where an entry ends, as it is written. */
export function entryEnd(text: string, located: Located): number {
  const { value, key } = located;
  if (value && !isNothing(value)) return endOf(text, value);
  return valueMarkEnd(located) ?? key?.range?.[1] ?? value?.range?.[1] ?? 0;
}
