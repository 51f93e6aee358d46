import { type Document, isCollection, isMap, isNode, isPair, isScalar, isSeq, type Node, type Scalar } from 'yaml';
import { offsetWithin } from './yaml-within.ts';

/** A place in a file; both count from 1, columns in UTF-16 units. */
export interface Position {
  line: number;
  column: number;
}

/** A stretch of a file; the end is the place just behind it. */
export interface Span extends Position {
  endLine: number;
  endColumn: number;
  /** Offsets in the text, from 0. */
  from: number;
  to: number;
}

/** Which end of `name: value` is meant. */
export type Part = 'key' | 'value';

/** Where each part of a YAML text stands, and what stands where. */
export interface YamlPlaces {
  /** The place of an offset. */
  at(offset: number): Position;
  /** The stretch between two offsets. */
  between(from: number, to: number): Span;
  /**
   * Where the value of a path stands, or the name before it. What is missing has no place of its own: the name of the nearest group around
   * it that is there is pointed at, or the first line of that group where it has no name.
   */
  spanOf(path: readonly PropertyKey[], part?: Part): Span;
  /** Where a stretch of a text value stands, by offsets in the value; all of the value where it is no text. */
  spanWithin(path: readonly PropertyKey[], from: number, to: number): Span;
  /** The innermost path whose name or value holds an offset; the empty path outside all. */
  pathAt(offset: number): { path: (string | number)[]; part: Part };
}

type Extent = readonly [from: number, to: number];

/** What a group or list ends with. */
function lastOf(node: Node): Node | undefined {
  const last = isMap(node) || isSeq(node) ? node.items.at(-1) : undefined;
  if (isNode(last)) return last;
  if (!isPair(last)) return undefined;
  if (isNode(last.value)) return last.value;
  return isNode(last.key) ? last.key : undefined;
}

/** Where a node begins and ends, without the comments and line ends behind it that the parser counts in. */
function extentOf(text: string, node: Node): Extent {
  const [from, end] = node.range ?? [0, 0];
  let inner: Node | undefined = node;
  for (let next: Node | undefined = node; next; next = isCollection(next) && !next.flow ? lastOf(next) : undefined)
    inner = next;
  const to = Math.min(end, inner.range?.[1] ?? end);
  return [from, from + text.slice(from, to).trimEnd().length];
}

/** A part of a group or list: its value, and its name where it has one. */
interface Entry {
  name: string | number;
  key?: Node;
  value?: Node;
}

function entriesOf(node: Node | undefined): Entry[] {
  if (isSeq(node)) return node.items.map((item, name) => (isNode(item) ? { name, value: item } : { name }));
  if (!isMap(node)) return [];
  return node.items.flatMap(({ key, value }) =>
    isScalar(key) ? [{ name: String(key.value), key, ...(isNode(value) ? { value } : {}) }] : [],
  );
}

/** Line and column of any offset of a text; a byte order mark is no column. */
function positions(text: string): (offset: number) => Position {
  const starts = [text.startsWith('\ufeff') ? 1 : 0];
  for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) starts.push(end + 1);
  return (offset) => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] as number) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: Math.max(1, Math.min(offset, text.length) - (starts[low] as number) + 1) };
  };
}

/** Places in a text as parsed, whether or not the parser found faults in it; of one that was not parsed, lines and columns alone. */
export function placesIn(text: string, document?: Document): YamlPlaces {
  const root = isNode(document?.contents) ? document.contents : undefined;
  const at = positions(text);
  const between = (from: number, to: number): Span => {
    const end = at(to);
    return { ...at(from), endLine: end.line, endColumn: end.column, from, to };
  };

  /** The entry that a path leads to, as far as it leads. */
  function walk(path: readonly PropertyKey[]): { entry: Entry; whole: boolean } {
    let entry: Entry = { name: '', ...(root ? { value: root } : {}) };
    for (const step of path) {
      const next = entriesOf(entry.value).find(({ name }) => name === step || name === String(step));
      if (!next) return { entry, whole: false };
      entry = next;
    }
    return { entry, whole: true };
  }

  function spanOf(path: readonly PropertyKey[], part: Part = 'value'): Span {
    const { entry, whole } = walk(path);
    if (!whole) return spanOfGroup(entry);
    const node = part === 'key' ? (entry.key ?? entry.value) : (entry.value ?? entry.key);
    return between(...(node ? extentOf(text, node) : ([0, 0] as const)));
  }

  /** Where a group is pointed at, of which a part is missing: its name, or its first line. */
  function spanOfGroup({ key, value }: Entry): Span {
    if (key) return between(...extentOf(text, key));
    if (!value) return between(0, 0);
    const [from, to] = extentOf(text, value);
    const line = /^[^\r\n]*/.exec(text.slice(from, to))?.[0].trimEnd().length ?? 0;
    return between(from, from + line);
  }

  function spanWithin(path: readonly PropertyKey[], from: number, to: number): Span {
    const { entry, whole } = walk(path);
    const { value } = entry;
    if (!whole || !isScalar(value) || typeof value.value !== 'string') return spanOf(path);
    const node = value as Scalar<string>;
    // The end is just behind the last character, not before the next.
    const last = to > from ? offsetWithin(text, node, to - 1) + 1 : offsetWithin(text, node, from);
    return between(offsetWithin(text, node, from), last);
  }

  function pathAt(offset: number): { path: (string | number)[]; part: Part } {
    const path: (string | number)[] = [];
    const holds = (node: Node | undefined): boolean => {
      if (!node) return false;
      const [from, to] = extentOf(text, node);
      return from <= offset && offset <= to;
    };
    for (let node = root; ; ) {
      const entry: Entry | undefined = entriesOf(node).find(({ key, value }) => {
        if (holds(key) || holds(value)) return true;
        const start = key?.range?.[0];
        // Between the name and its value: the colon and the spaces behind it.
        return start !== undefined && start <= offset && offset <= (value?.range?.[0] ?? start);
      });
      if (!entry) return { path, part: 'value' };
      path.push(entry.name);
      if (holds(entry.key)) return { path, part: 'key' };
      node = entry.value;
    }
  }

  return { at, between, spanOf, spanWithin, pathAt };
}
