import { isScalar, visit } from 'yaml';
import { pointerOf } from '../../pointer.ts';
import type { Splice } from '../types.ts';
import { type DataPath, locate } from './locate.ts';
import { inBracketsAt } from './set.ts';
import { scalarText } from './spell.ts';
import { editable, firstThatReads } from './text.ts';

/** What a name stands in, and where the record names it again. */
interface Renaming {
  /** Pointer that leads to it, without the last slash. */
  pointer: (name: string) => string | undefined;
  /** Whether a value at a path is its name. */
  names: (path: DataPath) => boolean;
}

const last = (path: DataPath) => path.at(-1);
const inList = (path: DataPath, list: string) => typeof last(path) === 'number' && path.at(-2) === list;
const inSteps = (path: DataPath) => path[0] === 'steps';
const nowhere: Renaming = { pointer: () => undefined, names: () => false };

/** Where the name at a path of a method is named again. */
function renamingOf(path: DataPath): Renaming {
  const [branch, , field] = path;
  const pointer = (name: string) => pointerOf([String(branch), name]);
  if (path.length === 4 && branch === 'steps' && field === 'calculations')
    return { pointer: (name) => pointerOf(['calculations', name]), names: () => false };
  if (path.length !== 2) return nowhere;
  switch (branch) {
    case 'parameters':
      return { pointer, names: () => false };
    case 'materials':
      return { pointer, names: (at) => inSteps(at) && inList(at, 'uses') && at.length === 4 };
    case 'tools':
      return {
        pointer,
        names: (at) =>
          inSteps(at) && ((inList(at, 'tools') && at.length === 4) || (at[2] === 'holds' && last(at) === 'tool')),
      };
    case 'steps':
      return {
        pointer: () => undefined,
        names: (at) =>
          (inSteps(at) &&
            ((inList(at, 'after') && at.length === 4) ||
              (at[2] === 'after' && last(at) === 'step' && at.length === 5) ||
              (at[2] === 'holds' && last(at) === 'until'))) ||
          (at[0] === 'exceptions' && last(at) === 'step'),
      };
    default:
      return nowhere;
  }
}

/** A text with a pointer in it changed, behind `from:` as a whole, in other texts between braces. */
function repointed(text: string, from: string, to: string, whole: boolean): string {
  if (whole) return text === from || text.startsWith(`${from}/`) ? to + text.slice(from.length) : text;
  return text.replaceAll(`{${from}/`, () => `{${to}/`).replaceAll(`{${from}}`, () => `{${to}}`);
}

/** Data with every value and name changed as told. */
function changed(
  value: unknown,
  path: DataPath,
  change: (text: string, path: DataPath) => string,
  nameOf: (name: string, path: DataPath) => string,
): unknown {
  if (typeof value === 'string') return change(value, path);
  if (Array.isArray(value)) return value.map((each, at) => changed(each, [...path, at], change, nameOf));
  if (typeof value !== 'object' || value === null) return value;
  const group: Record<string, unknown> = {};
  for (const [name, each] of Object.entries(value))
    Object.defineProperty(group, nameOf(name, [...path, name]), {
      value: changed(each, [...path, name], change, nameOf),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  return group;
}

/**
 * Give an entry another name, and change every place of a method that names it: references behind `from` and in the braces of texts, steps that
 * wait for it, tools and materials of steps, exceptions.
 *
 * A material or tool is looked up in the shop record by its own name where it has no `item`; that is left to whoever renames it.
 *
 * @param path of the entry, whose last step is its name
 * @returns undefined where the name is taken, there is no such entry, or the text cannot be edited as it stands
 */
export function renameEntry(text: string, path: DataPath, name: string): readonly Splice[] | undefined {
  const read = editable(text);
  const entry = read && locate(read.document, path);
  if (!read || !entry?.key?.range) return undefined;
  const old = String(last(path));
  if (old === name) return [];
  const above = path.slice(0, -1);
  if (locate(read.document, [...above, name])) return undefined;
  const { pointer, names } = renamingOf(path);
  const [from, to] = [pointer(old), pointer(name)];
  const change = (value: string, at: DataPath): string => {
    if (names(at) && value === old) return name;
    return from === undefined || to === undefined ? value : repointed(value, from, to, last(at) === 'from');
  };
  const isOwn = (at: DataPath) => at.length === path.length && at.every((step, index) => step === path[index]);
  const wanted = changed(read.data, [], change, (each, at) => (isOwn(at) ? name : each));

  const splices: Splice[] = [];
  const [start = 0, end = 0] = entry.key.range;
  splices.push({ from: start, to: end, insert: scalarText(name, inBracketsAt(read, path)) });
  visit(read.document, {
    Scalar(key, scalar, ancestors) {
      const { value, range } = scalar;
      if (key === 'key' || typeof value !== 'string' || !range) return;
      const at = pathOf([...ancestors, scalar]);
      if (change(value, at) === value) return;
      const [begins, ends] = range;
      const source = text.slice(begins, ends);
      const whole = last(at) === 'from' || names(at);
      const inner = /^["']/.test(source) && whole ? source.slice(1, -1) : source;
      const written = names(at)
        ? scalarText(name, inBracketsAt(read, at))
        : repointed(inner, from ?? '', to ?? '', whole);
      splices.push({ from: begins, to: ends, insert: written });
    },
  });
  return firstThatReads(read, wanted, [splices]);
}

/** The path that leads along nodes to the last of them. */
function pathOf(line: readonly unknown[]): DataPath {
  return line.flatMap((node, at): DataPath => {
    const next = line[at + 1];
    if (typeof node !== 'object' || node === null || next === undefined) return [];
    if ('items' in node && Array.isArray(node.items) && !('key' in (next as object))) return [node.items.indexOf(next)];
    if ('key' in node && isScalar(node.key) && 'value' in node && node.value === next) return [String(node.key.value)];
    return [];
  });
}
