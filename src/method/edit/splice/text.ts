import { type Document, isAlias, parseDocument, visit } from 'yaml';
import { isHeavyYaml } from '../../../model/data/yaml-guard.ts';
import { longestRecord } from '../outline.ts';
import type { Splice } from '../types.ts';

/** A text with splices done, which all count in the text as it is. */
export function applySplices(text: string, splices: readonly Splice[]): string {
  return [...splices]
    .sort((one, other) => other.from - one.from || other.to - one.to)
    .reduce((changed, { from, to, insert }) => changed.slice(0, from) + insert + changed.slice(to), text);
}

/** A record as parsed, for edits. */
export interface Editable {
  text: string;
  document: Document;
  data: unknown;
  /** How its lines end. */
  eol: '\n' | '\r\n';
}

/** Parse a text to be edited; undefined where anything is wrong with its writing, since an edit could then do anything to it. */
export function editable(text: string): Editable | undefined {
  if (isHeavyYaml(text, longestRecord)) return undefined;
  const document = parseDocument(text, {
    schema: 'core',
    keepSourceTokens: true,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'error',
    stringKeys: true,
  });
  if (document.errors.length > 0) return undefined;
  let repeats = false;
  visit(document, (_key, node) => {
    if (isAlias(node)) repeats = true;
  });
  if (repeats) return undefined;
  return { text, document, data: document.toJS({ maxAliasCount: 0 }), eol: text.includes('\r\n') ? '\r\n' : '\n' };
}

/** Whether a text can be changed by splices as it stands. */
export const canBeEdited = (text: string): boolean => editable(text) !== undefined;

/** Whether two values are the same, the order of names included. */
export function same(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || one === null || typeof other !== 'object' || other === null)
    return Object.is(one, other) || (one === 0 && other === 0);
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const names = Object.keys(one);
  const others = Object.keys(other);
  return (
    names.length === others.length &&
    names.every(
      (name, at) =>
        name === others[at] && same((one as Record<string, unknown>)[name], (other as Record<string, unknown>)[name]),
    )
  );
}

/** A splice without what it puts back as it was. */
function least(text: string, { from, to, insert }: Splice): Splice {
  const old = text.slice(from, to);
  const most = Math.min(old.length, insert.length);
  let start = 0;
  while (start < most && old[start] === insert[start]) start += 1;
  let end = 0;
  while (end < most - start && old[old.length - 1 - end] === insert[insert.length - 1 - end]) end += 1;
  return { from: from + start, to: to - end, insert: insert.slice(start, insert.length - end) };
}

/**
 * The first of several edits after which the text reads as is wanted, in as few characters as may be.
 *
 * @returns undefined where none does
 */
export function firstThatReads(
  { text }: Editable,
  wanted: unknown,
  ways: Iterable<readonly Splice[]>,
): readonly Splice[] | undefined {
  for (const splices of ways) {
    const read = editable(applySplices(text, splices));
    if (!read || !same(read.data, wanted)) continue;
    return splices
      .map((splice) => least(text, splice))
      .filter(({ from, to, insert }) => from !== to || insert !== '')
      .sort((one, other) => one.from - other.from);
  }
  return undefined;
}
