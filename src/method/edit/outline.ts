import { type Document, parseDocument } from 'yaml';
import { isHeavyYaml } from '../../model/data/yaml-guard.ts';
import type { RecordKind } from './types.ts';

/** As long as a record may be, characters. */
export const longestRecord = 131_072;

/** An entry of a section, in lines of its own: `wood:` below `parameters:`. */
export interface OutlineEntry {
  name: string;
  from: number;
  to: number;
}

/** A field of the record with all that stands below it, up to the next. */
export interface OutlineSection extends OutlineEntry {
  /** Entries below it, where it is a group in lines; each can then be read by itself. */
  entries: readonly OutlineEntry[];
  /** Spaces before them. */
  indent: number;
}

const headOf = /^(?:"([^"\n]*)"|'([^'\n]*)'|([A-Za-z_][\w-]*))[ \t]*(:(?=\s|$)|$)/;

/** The name that a line begins with, without the spaces before it. */
function nameOf(line: string): string | undefined {
  const head = headOf.exec(line.trimEnd());
  return head ? (head[1] ?? head[2] ?? head[3]) : undefined;
}

interface Line {
  from: number;
  /** Without its end. */
  text: string;
}

function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (let from = text.startsWith('\ufeff') ? 1 : 0; from <= text.length; ) {
    const end = text.indexOf('\n', from);
    const to = end < 0 ? text.length : end;
    lines.push({ from, text: text.slice(from, to) });
    from = to + 1;
  }
  return lines;
}

const indentOf = (line: string) => line.length - line.trimStart().length;
const isBare = (line: string) => /^\s*(#|$)/.test(line);

/** The entries of a section by its lines, the first of which is its head. */
function entriesOf([head, ...below]: readonly Line[], to: number): Pick<OutlineSection, 'entries' | 'indent'> {
  const none = { entries: [], indent: 0 };
  const behind = /:[ \t]*(#.*)?$/.test(head?.text.trimEnd() ?? '');
  const first = below.find(({ text }) => !isBare(text));
  if (!behind || !first) return none;
  const indent = indentOf(first.text);
  const entries: { name: string; from: number }[] = [];
  for (const { from, text } of below) {
    if (isBare(text)) continue;
    const spaces = indentOf(text);
    if (spaces > indent) continue;
    const name = spaces === indent ? nameOf(text.trimStart()) : undefined;
    if (name === undefined) return none;
    entries.push({ name, from });
  }
  return { indent, entries: entries.map((entry, at) => ({ ...entry, to: entries[at + 1]?.from ?? to })) };
}

let last: { text: string; sections: readonly OutlineSection[] | undefined } | undefined;

/**
 * The fields of a record by its lines alone, without reading them: what is typed in one entry changes nothing in the others.
 *
 * @returns undefined where it is not written as one field below the other, each at the start of a line
 */
export function outlineOf(text: string): readonly OutlineSection[] | undefined {
  if (last?.text !== text) last = { text, sections: sectionsOf(text) };
  return last.sections;
}

function sectionsOf(text: string): OutlineSection[] | undefined {
  const lines = linesOf(text);
  const heads: { name: string; at: number }[] = [];
  for (const [at, line] of lines.entries()) {
    if (/^(\s|#|$)/.test(line.text)) continue;
    const name = nameOf(line.text);
    if (name === undefined) return undefined;
    heads.push({ name, at });
  }
  return heads.map(({ name, at }, number) => {
    const next = heads[number + 1]?.at;
    const to = next === undefined ? text.length : (lines[next] as Line).from;
    return { name, from: (lines[at] as Line).from, to, ...entriesOf(lines.slice(at, next), to) };
  });
}

/** How many stretches are remembered as read: several methods of forty steps. */
const mostKept = 400;
const kept = new Map<string, Document | undefined>();

/** A stretch of a record as parsed, with whatever is wrong with it; undefined where a parser should not see it. */
export function looseDocument(stretch: string): Document | undefined {
  if (kept.has(stretch)) return kept.get(stretch);
  const document = isHeavyYaml(stretch, longestRecord) ? undefined : freshDocument(stretch);
  if (kept.size >= mostKept) kept.clear();
  kept.set(stretch, document);
  return document;
}

/** The same, not remembered: of a text that nobody wrote. */
export function freshDocument(stretch: string): Document {
  return parseDocument(stretch, {
    schema: 'core',
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'silent',
    stringKeys: true,
  });
}

const data = new WeakMap<Document, unknown>();

function dataOf(document: Document | undefined): unknown {
  if (!document) return undefined;
  if (!data.has(document)) {
    try {
      data.set(document, document.toJS({ maxAliasCount: 0 }));
    } catch {
      data.set(document, undefined);
    }
  }
  return data.get(document);
}

type Group = Record<string, unknown>;

/** Whether a value is a group of fields. */
export const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function put(group: Group, name: string, value: unknown): void {
  Object.defineProperty(group, name, { value, enumerable: true, configurable: true, writable: true });
}

let lastData: { text: string; data: Group } | undefined;

/** As much of a record as can be read, however much of it is still wrong; the same object while the text is the same. */
export function looseData(text: string): Readonly<Record<string, unknown>> {
  if (lastData?.text !== text) lastData = { text, data: readLoosely(text) };
  return lastData.data;
}

function readLoosely(text: string): Group {
  const sections = outlineOf(text);
  if (!sections) {
    const whole = dataOf(looseDocument(text));
    return isGroup(whole) ? whole : {};
  }
  const all: Group = {};
  for (const { name, from, to, entries } of sections) {
    if (entries.length === 0) {
      const read = dataOf(looseDocument(text.slice(from, to)));
      put(all, name, isGroup(read) && Object.hasOwn(read, name) ? read[name] : null);
      continue;
    }
    const group: Group = {};
    for (const entry of entries) {
      const read = dataOf(looseDocument(text.slice(entry.from, entry.to)));
      put(group, entry.name, isGroup(read) && Object.hasOwn(read, entry.name) ? read[entry.name] : null);
    }
    put(all, name, group);
  }
  return all;
}

/** Which record a text is: its first field says so; a method where it does not. */
export const kindOfRecord = (text: string): RecordKind =>
  /^\ufeff?(?:\s*#[^\n]*\n|\s*\n)*shop:/.test(text) ? 'shop' : 'method';
