import { isMap, isSeq, type Node } from 'yaml';
import type { Splice } from '../types.ts';
import {
  columnOf,
  type DataPath,
  endOf,
  isBlockCollection,
  isBlockScalar,
  isFlow,
  isNothing,
  type Located,
  lineEnd,
  lineStart,
  locate,
  startOf,
  valueMarkEnd,
} from './locate.ts';
import { type Spelling, spellings } from './spell.ts';
import { type Editable, editable, firstThatReads } from './text.ts';

/** Data with another value at a path; what is not there yet is added at the end. */
export function withValue(data: unknown, [step, ...rest]: DataPath, value: unknown): unknown {
  if (step === undefined) return value;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  const before = Object.hasOwn(copy, step) ? copy[step] : undefined;
  const after = rest.length > 0 ? withValue(before, rest, value) : value;
  Object.defineProperty(copy, step, { value: after, enumerable: true, configurable: true, writable: true });
  return copy;
}

/** Splices that write a value in place of what an entry has. */
function splicesFor(read: Editable, located: Located, flow: boolean, { inline, lines }: Spelling): Splice[] {
  const { text, eol } = read;
  const below = lines.map((line) => `${eol}${line}`).join('');
  const { value } = located;
  const mark = valueMarkEnd(located);
  const key = located.key?.range?.[1];
  if (!value || isNothing(value)) {
    if (mark !== undefined) {
      const end = lineEnd(text, mark);
      const inLine = { from: mark, to: mark, insert: inline === '' ? '' : ` ${inline}` };
      // Behind a name in brackets a comma or a brace may follow at once.
      const tight = flow && inline !== '' && /[\w"']/.test(text[mark] ?? '') ? ' ' : '';
      return [
        { ...inLine, insert: inLine.insert + tight },
        ...(below === '' ? [] : [{ from: end, to: end, insert: below }]),
      ];
    }
    const at = key ?? startOf(located);
    return [{ from: at, to: at, insert: key === undefined ? inline : `: ${inline}` }];
  }
  const from = value.range?.[0] ?? 0;
  const to = endOf(text, value);
  if (isBlockScalar(value)) {
    const comment = /^[|>][^\s#]*([ \t]+#[^\r\n]*)?/.exec(text.slice(from, to))?.[1] ?? '';
    return [{ from, to, insert: `${inline}${comment}${below}` }];
  }
  if (isBlockCollection(value)) {
    const ownLine = mark === undefined || lineStart(text, from) > mark;
    if (!ownLine || mark === undefined)
      return [{ from, to, insert: inline === '' ? inCompact(lines, eol) : `${inline}${below}` }];
    if (inline === '') return [{ from, to, insert: inCompact(lines, eol) }];
    const end = lineEnd(text, mark);
    return [
      { from: mark, to: mark, insert: ` ${inline}` },
      { from: end, to, insert: below },
    ];
  }
  if (below === '') return [{ from, to, insert: inline }];
  const end = lineEnd(text, to);
  return [
    { from, to, insert: inline },
    { from: end, to: end, insert: below },
  ];
}

/** Lines of which the first goes on where something stands already. */
const inCompact = (lines: readonly string[], eol: string) =>
  [(lines[0] ?? '').trimStart(), ...lines.slice(1)].join(eol);

/** Spaces before lines below an entry, as they are there now or as they are usual. */
function indentBelow(text: string, located: Located): number {
  const { value } = located;
  if (value && isBlockScalar(value)) {
    const [from = 0] = value.range ?? [];
    const first = /\n([ \t]*)\S/.exec(text.slice(from, endOf(text, value)));
    const hinted = /^[|>][+-]?\d/.test(text.slice(from, from + 3));
    if (first?.[1] && !hinted) return first[1].length;
  }
  if (value && isBlockCollection(value)) return columnOf(text, value.range?.[0] ?? 0);
  return columnOf(text, startOf(located)) + 2;
}

/** Whether an entry stands inside brackets. */
export function inBracketsAt({ document }: Editable, path: DataPath): boolean {
  for (let length = 0; length < path.length; length += 1) {
    const above = length === 0 ? document.contents : locate(document, path.slice(0, length))?.value;
    if (isFlow(above)) return true;
  }
  return false;
}

/** Splices after which a record reads the same but for one value, which is there already. */
export function setInPlace(read: Editable, path: DataPath, value: unknown): readonly Splice[] | undefined {
  const located = locate(read.document, path);
  if (!located) return undefined;
  const flow = inBracketsAt(read, path);
  const spot = { flow, indent: indentBelow(read.text, located), old: located.value };
  const wanted = withValue(read.data, path, value);
  function* ways() {
    for (const spelling of spellings(value, spot)) yield splicesFor(read, located as Located, flow, spelling);
  }
  return firstThatReads(read, wanted, ways());
}

/** The group or list at a path. */
export const collectionAt = (read: Editable, path: DataPath): (Node & { flow?: boolean }) | undefined => {
  const node = path.length === 0 ? read.document.contents : locate(read.document, path)?.value;
  return isMap(node) || isSeq(node) ? node : undefined;
};

export { editable };
