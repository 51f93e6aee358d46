import { isMap, isSeq, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Splice } from '../types.ts';
import {
  columnOf,
  type DataPath,
  entriesOf,
  entryEnd,
  type Located,
  lineEnd,
  lineStart,
  locate,
  startOf,
  valueMarkEnd,
} from './locate.ts';
import { inBracketsAt, setInPlace, withValue } from './set.ts';
import { entryLines, inBrackets, itemLines, scalarText } from './spell.ts';
import { type Editable, editable, firstThatReads } from './text.ts';

type Collection = YAMLMap | YAMLSeq;
type Named = readonly [name: string | number, value: unknown];

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function collection(read: Editable, path: DataPath): Collection | undefined {
  const node = path.length === 0 ? read.document.contents : locate(read.document, path)?.value;
  return isMap(node) || isSeq(node) ? node : undefined;
}

/** What stands in the group or list at a path. */
function dataAt(data: unknown, path: DataPath): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Record<string | number, unknown>)[step]
        : undefined,
    data,
  );
}

/** A group made anew from entries, in their order. */
function groupOf(entries: readonly Named[]): Record<string, unknown> {
  const group: Record<string, unknown> = {};
  for (const [name, value] of entries)
    Object.defineProperty(group, name, { value, enumerable: true, configurable: true, writable: true });
  return group;
}

/** Whether nothing but spaces stands before an entry in its line. */
const ownLine = (text: string, entry: Located): boolean =>
  text.slice(lineStart(text, startOf(entry)), startOf(entry)).trim() === '';

/**
 * Where the lines of an entry begin: with the comments right above it, which belong to it. Those above the first belong to the group, those that
 * stand further right to the entry before.
 */
function chunkStart(text: string, entry: Located): number {
  let start = lineStart(text, startOf(entry));
  if (entry.at === 0) return start;
  const column = columnOf(text, startOf(entry));
  while (start > 0) {
    const above = lineStart(text, start - 1);
    const spaces = /^([ \t]*)#/.exec(text.slice(above, start))?.[1];
    if (above >= start || spaces === undefined || spaces.length > column) break;
    start = above;
  }
  return start;
}

/** Where the last line of an entry ends, before its line feed. */
const chunkEnd = (text: string, entry: Located): number => lineEnd(text, entryEnd(text, entry));

/** Where the line behind an offset begins. */
const nextLine = (text: string, end: number): number => {
  const feed = text.indexOf('\n', end);
  return feed < 0 ? text.length : feed + 1;
};

/** Ways to add an entry in front of the one that has its number now. */
function* waysToAdd(read: Editable, within: Collection, [name, value]: Named, at: number): Generator<Splice[]> {
  const { text, eol } = read;
  const entries = entriesOf(within);
  const [first] = entries;
  const before = entries[at];
  const last = entries.at(-1);
  if (within.flow) {
    const written = isMap(within) ? `${scalarText(String(name), true)}: ${inBrackets(value)}` : inBrackets(value);
    if (!first || !last) {
      const [from = 0, to = 0] = within.range ?? [];
      yield [{ from, to, insert: isMap(within) ? `{ ${written} }` : `[${written}]` }];
    } else if (before) {
      const from = startOf(before);
      yield [{ from, to: from, insert: `${written}, ` }];
    } else {
      const from = entryEnd(text, last);
      yield [{ from, to: from, insert: `, ${written}` }];
      yield [{ from, to: from, insert: `${eol}, ${written}` }];
    }
    return;
  }
  if (!first || !last) return;
  const indent = columnOf(text, startOf(first));
  const lines = isMap(within) ? entryLines(String(name), value, indent) : itemLines(value, indent);
  const mark = isMap(within) ? `${scalarText(String(name), false)}:` : '-';
  for (const block of [lines.join(eol), `${' '.repeat(indent)}${mark} ${inBrackets(value)}`])
    yield* waysToPut(read, within, block, { before, last, indent });
}

/** Ways to put the lines of a new entry among the others. */
function* waysToPut(
  { text, eol }: Editable,
  within: Collection,
  block: string,
  { before, last, indent }: { before: Located | undefined; last: Located; indent: number },
): Generator<Splice[]> {
  if (before && ownLine(text, before)) {
    const from = chunkStart(text, before);
    yield [{ from, to: from, insert: `${block}${eol}` }];
  } else if (before) {
    const from = startOf(before);
    yield [{ from, to: from, insert: `${block.trimStart()}${eol}${' '.repeat(indent)}` }];
  } else {
    const end = chunkEnd(text, last);
    yield [{ from: end, to: end, insert: `${eol}${block}` }];
    // Behind blank lines that the text above keeps.
    const [, , whole = end] = (within.range ?? []) as readonly number[];
    const start = lineStart(text, whole);
    yield [{ from: start, to: start, insert: `${block}${eol}` }];
    yield [{ from: whole, to: whole, insert: `${eol}${block}` }];
  }
}

/**
 * Add an entry to a group or list, and the group or list itself where there is none yet.
 *
 * @param path of the group or list
 * @param name of the entry in a group; left aside in a list
 * @param at its number there; the last unless told
 * @returns undefined where a name is taken, or the text cannot be edited as it stands
 */
export function addEntry(
  text: string,
  path: DataPath,
  name: string | undefined,
  value: unknown,
  at?: number,
): readonly Splice[] | undefined {
  const read = editable(text);
  return read && addIn(read, path, name, value, at);
}

function addIn(
  read: Editable,
  path: DataPath,
  name: string | undefined,
  value: unknown,
  at?: number,
): readonly Splice[] | undefined {
  const now = dataAt(read.data, path);
  const fresh = name === undefined ? [value] : groupOf([[name, value]]);
  const within = collection(read, path);
  if (!within) return now === null || now === undefined ? writeAt(read, path, fresh) : undefined;
  if (isSeq(within) !== (name === undefined)) return undefined;
  if (isGroup(now) && name !== undefined && Object.hasOwn(now, name)) return undefined;
  const size = within.items.length;
  const place = Math.min(at ?? size, size);
  const entry: Named = [name ?? place, value];
  const after = Array.isArray(now)
    ? [...now.slice(0, place), value, ...now.slice(place)]
    : groupOf([...Object.entries(now as object).slice(0, place), entry, ...Object.entries(now as object).slice(place)]);
  const wanted = withValue(read.data, path, after);
  const found = firstThatReads(read, wanted, waysToAdd(read, within, entry, place));
  if (found || size > 0) return found;
  return path.length === 0 ? undefined : setInPlace(read, path, fresh);
}

/** Write a value at a path: in place of what is there, or as a new entry of what is above it. */
function writeAt(read: Editable, path: DataPath, value: unknown): readonly Splice[] | undefined {
  const step = path.at(-1);
  if (step === undefined) {
    const { text, eol } = read;
    if (read.data !== null || !isGroup(value)) return undefined;
    const lines = Object.entries(value).flatMap(([name, each]) => entryLines(name, each, 0));
    const lead = text === '' || text.endsWith('\n') || text === '\ufeff' ? '' : eol;
    const insert = `${lead}${lines.join(eol)}${eol}`;
    return firstThatReads(read, value, [[{ from: text.length, to: text.length, insert }]]);
  }
  if (locate(read.document, path)) return setInPlace(read, path, value);
  const above = path.slice(0, -1);
  return typeof step === 'number' ? addIn(read, above, undefined, value, step) : addIn(read, above, step, value);
}

/**
 * Write a value, and what is above it where that is missing. Comments, order and every other byte stay.
 *
 * @param path of the value; a number behind the end of a list adds to it
 * @returns undefined where the text cannot be edited as it stands
 */
export function setValue(text: string, path: DataPath, value: unknown): readonly Splice[] | undefined {
  const read = editable(text);
  return read && writeAt(read, path, value);
}

/** Ways to take an entry out of a group or list that keeps others. */
function* waysToRemove({ text }: Editable, entry: Located): Generator<Splice[]> {
  const entries = entriesOf(entry.within);
  const before = entries[entry.at - 1];
  const next = entries[entry.at + 1];
  const start = startOf(entry);
  const end = entryEnd(text, entry);
  if (entry.within.flow) {
    const comma = /^[ \t]*,[ \t]*/.exec(text.slice(end))?.[0].length;
    if (comma !== undefined) yield [{ from: start, to: end + comma, insert: '' }];
    if (next && !text.slice(end, startOf(next)).includes('#')) yield [{ from: start, to: startOf(next), insert: '' }];
    if (before) {
      const behind = entryEnd(text, before);
      if (!text.slice(behind, start).includes('#')) yield [{ from: behind, to: end, insert: '' }];
    }
    yield [{ from: start, to: end, insert: '' }];
    return;
  }
  if (!ownLine(text, entry)) {
    if (!next) return;
    if (!text.slice(end, startOf(next)).includes('#')) yield [{ from: start, to: startOf(next), insert: '' }];
    yield [{ from: start, to: end, insert: '' }];
    return;
  }
  const from = chunkStart(text, entry);
  const last = chunkEnd(text, entry);
  yield [{ from, to: nextLine(text, last), insert: '' }];
  // Blank lines behind a text that keeps them.
  const [, , whole = last] = (entry.value?.range ?? []) as readonly number[];
  yield [{ from, to: Math.max(last, whole), insert: '' }];
}

/**
 * Take an entry out of a group or list, with the comment lines right above it, except the first's, which speak of the group.
 *
 * @returns undefined where there is none, or the text cannot be edited as it stands
 */
export function removeEntry(text: string, path: DataPath): readonly Splice[] | undefined {
  const read = editable(text);
  const entry = read && locate(read.document, path);
  const above = path.slice(0, -1);
  if (!read || !entry) return undefined;
  const now = dataAt(read.data, above);
  const after = Array.isArray(now)
    ? now.filter((_each, at) => at !== entry.at)
    : groupOf(Object.entries(now as object).filter(([name]) => name !== String(path.at(-1))));
  const wanted = withValue(read.data, above, after);
  if (entriesOf(entry.within).length > 1) return firstThatReads(read, wanted, waysToRemove(read, entry));
  return firstThatReads(read, wanted, waysToEmpty(read, entry, above));
}

/** Ways to take the only entry out, so that an empty group or list is left. */
function* waysToEmpty(read: Editable, entry: Located, above: DataPath): Generator<Splice[]> {
  const { text } = read;
  const empty = isMap(entry.within) ? '{}' : '[]';
  const [from = 0, to = 0] = entry.within.range ?? [];
  if (entry.within.flow) {
    yield [{ from, to, insert: empty }];
    return;
  }
  const end = entryEnd(text, entry);
  const owner = above.length === 0 ? undefined : locate(read.document, above);
  const mark = owner && valueMarkEnd(owner);
  if (mark !== undefined && ownLine(text, entry) && lineStart(text, from) > mark) {
    yield [
      { from: mark, to: mark, insert: ` ${empty}` },
      { from: chunkStart(text, entry), to: nextLine(text, chunkEnd(text, entry)), insert: '' },
    ];
  }
  yield [{ from, to: end, insert: empty }];
}

/**
 * Move an entry to another number in its group or list, with the comment lines right above it.
 *
 * @param to its number afterwards, counted from 0
 * @returns undefined where there is none, or the text cannot be edited as it stands
 */
export function moveEntry(text: string, path: DataPath, to: number): readonly Splice[] | undefined {
  const read = editable(text);
  const entry = read && locate(read.document, path);
  if (!read || !entry) return undefined;
  const entries = entriesOf(entry.within);
  if (to < 0 || to >= entries.length) return undefined;
  if (to === entry.at) return [];
  const reordered = <Each>(list: readonly Each[]): Each[] => {
    const rest = list.filter((_each, at) => at !== entry.at);
    return [...rest.slice(0, to), list[entry.at] as Each, ...rest.slice(to)];
  };
  const above = path.slice(0, -1);
  const now = dataAt(read.data, above);
  const after = Array.isArray(now) ? reordered(now) : groupOf(reordered(Object.entries(now as object)));
  const wanted = withValue(read.data, above, after);
  return firstThatReads(read, wanted, waysToMove(read, entries, entry, to, inBracketsAt(read, path), reordered));
}

function* waysToMove(
  { text, eol }: Editable,
  entries: readonly Located[],
  entry: Located,
  to: number,
  flow: boolean,
  reordered: <Each>(list: readonly Each[]) => Each[],
): Generator<Splice[]> {
  if (!flow && entries.every((each) => ownLine(text, each))) {
    const from = chunkStart(text, entry);
    const end = chunkEnd(text, entry);
    const chunk = text.slice(from, end);
    const target = entries[to] as Located;
    const cut = { from, to: nextLine(text, end), insert: '' };
    if (to < entry.at) {
      const place = chunkStart(text, target);
      // The last line of a file may have no end, which then stands behind the line above it.
      const left = cut.to === end ? { ...cut, from: lineEnd(text, from - eol.length) } : cut;
      yield [{ from: place, to: place, insert: `${chunk}${eol}` }, left];
    } else {
      const place = chunkEnd(text, target);
      yield [cut, { from: place, to: place, insert: `${eol}${chunk}` }];
    }
  }
  if (!flow && entries.every((each) => ownLine(text, each))) {
    // With the blank lines behind each, which a text in lines may keep.
    const last = entries.at(-1) as Located;
    const whole = Math.max(nextLine(text, chunkEnd(text, last)), last.value?.range?.[2] ?? 0);
    const starts = [...entries.map((each) => chunkStart(text, each)), whole];
    const chunks = entries.map((_each, at) => text.slice(starts[at], starts[at + 1]));
    const ended = reordered(chunks).map((chunk) => (chunk.endsWith('\n') ? chunk : `${chunk}${eol}`));
    yield [{ from: starts[0] ?? 0, to: whole, insert: ended.join('') }];
  }
  // Each takes the place of another; comments stay where they are.
  const spans = entries.map((each) => ({ from: startOf(each), to: entryEnd(text, each) }));
  const texts = reordered(spans.map((span) => text.slice(span.from, span.to)));
  yield spans.map((span, at) => ({ ...span, insert: texts[at] as string }));
}
