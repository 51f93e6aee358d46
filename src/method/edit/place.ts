import { type Document, isMap, isPair, isScalar, isSeq, type Scalar, visit } from 'yaml';
import { isHeavyYaml } from '../../model/data/yaml-guard.ts';
import { freshDocument, longestRecord, looseDocument, type OutlineEntry, outlineOf } from './outline.ts';

/** A place in the text of a record where something is written or may be. */
export interface Place {
  /** Path of the value; of a name, the path of its group and then what is typed of it. */
  path: readonly (string | number)[];
  part: 'name' | 'value';
  /** What stands there already, from its first character to its last, quotes included. */
  from: number;
  to: number;
  /** What of it stands before the place. */
  typed: string;
  style: 'plain' | 'quoted' | 'block';
  /** Inside a list or group in brackets. */
  flow: boolean;
  /** A colon follows the name. */
  colon: boolean;
  /** A space has to be written before the value, since none stands behind the colon or the dash. */
  tight: boolean;
  /** In a list in lines, on a line that has no dash yet. */
  dashless: boolean;
}

/** Stands for what is not typed yet; no record may hold it. */
const mark = '\ue07f';

/** A stretch of the text that can be read by itself, and the path that leads to it. */
interface Stretch {
  from: number;
  to: number;
  above: readonly string[];
  /** Spaces before its names. */
  indent: number;
}

function holding<Entry extends OutlineEntry>(entries: readonly Entry[], offset: number): Entry | undefined {
  return entries.findLast(({ from }) => from <= offset);
}

/** The smallest stretch around an offset that can be read by itself. */
export function stretchAt(text: string, offset: number): Stretch {
  const whole = { from: 0, to: text.length, above: [], indent: 0 };
  const section = holding(outlineOf(text) ?? [], offset);
  if (!section) return whole;
  const entry = holding(section.entries, offset);
  if (!entry) return { from: section.from, to: section.to, above: [], indent: 0 };
  // The spaces before its name belong to it.
  return { from: entry.from, to: entry.to, above: [section.name], indent: section.indent };
}

/** What stands at an offset of a record. */
export interface Standing {
  path: readonly (string | number)[];
  part: Place['part'];
  from: number;
  to: number;
  value: string;
}

/** The name or value that holds an offset, as far as the stretch around it can be read; undefined where none does. */
export function standingAt(text: string, offset: number): Standing | undefined {
  const stretch = stretchAt(text, offset);
  const document = looseDocument(text.slice(stretch.from, stretch.to));
  const inner = offset - stretch.from;
  const found = document && find(document, ({ range }) => !!range && range[0] <= inner && inner <= range[1]);
  if (!found?.scalar.range || found.scalar.range[0] === found.scalar.range[1]) return undefined;
  const [from, to] = found.scalar.range;
  return {
    path: [...stretch.above, ...found.path],
    part: found.part,
    from: stretch.from + from,
    to: stretch.from + to,
    value: String(found.scalar.value ?? ''),
  };
}

interface Around {
  /** Path of the group or list around it, and of itself. */
  path: (string | number)[];
  scalar: Scalar;
  part: Place['part'];
  flow: boolean;
  /** It is a name by itself in a list in brackets, as in `[a: ]`. */
  alone: boolean;
}

/** The first text or name in a document that fits. */
function find(document: Document, fits: (scalar: Scalar) => boolean): Around | undefined {
  let found: Around | undefined;
  visit(document, {
    Scalar(key, scalar, ancestors) {
      if (!fits(scalar)) return undefined;
      const path: (string | number)[] = [];
      const line = [...ancestors, scalar];
      for (const [at, node] of line.entries()) {
        const next = line[at + 1];
        if (isSeq(node) && next) path.push(node.items.indexOf(next));
        else if (isPair(node) && (next === node.value || next === node.key) && isScalar(node.key))
          path.push(String(node.key.value));
      }
      const flow = ancestors.some((node) => (isMap(node) || isSeq(node)) && node.flow);
      const group = ancestors.at(-2);
      const around = ancestors.at(-3);
      const alone = key === 'key' && isMap(group) && isSeq(around) && around.flow === true && group.items.length === 1;
      found = { path, scalar, part: key === 'key' ? 'name' : 'value', flow, alone };
      return visit.BREAK;
    },
  });
  return found;
}

const styleOf = ({ type }: Scalar): Place['style'] => {
  if (type === 'BLOCK_FOLDED' || type === 'BLOCK_LITERAL') return 'block';
  return type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE' ? 'quoted' : 'plain';
};

/** The text in lines that an offset stands in, however blank its own line is. */
function blockAround(stretch: Stretch, text: string, offset: number): Around | undefined {
  const own = text.slice(stretch.from, stretch.to);
  const document = looseDocument(own);
  if (!document) return undefined;
  return find(document, (scalar) => {
    if (styleOf(scalar) !== 'block' || !scalar.range) return false;
    const [from, to] = scalar.range;
    // Blank lines behind it are not yet part of it, nor is the line with its mark.
    const last = from + own.slice(from, to).trimEnd().length;
    const begins = own.indexOf('\n', from);
    return begins >= 0 && begins < offset - stretch.from && offset - stretch.from <= last;
  });
}

/** Whether the nearest line above that is not blank begins a part of a list as far to the right. */
function listAbove(text: string, from: number, before: string): boolean {
  const above = text.slice(0, from).trimEnd();
  const line = above.slice(above.lastIndexOf('\n') + 1);
  return before !== '' && line.startsWith(`${before}- `);
}

/** Where what is typed ends in the line, and whether the line is nothing but a name that is begun. */
function lineAround(text: string, offset: number) {
  const from = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  const before = text.slice(from, offset);
  const after = text.slice(offset, end < 0 ? text.length : end).trimEnd();
  return {
    before,
    after,
    blank: before.trim() === '' && after.trim() === '',
    /** Nothing but a name that is begun. */
    name: /^\ufeff?\s*(?:[A-Za-z][\w-]*)?$/.test(before) && /^[\w-]*$/.test(after),
    /** A list in lines goes on here, if a dash is written. */
    listed: /^\s*$/.test(before) && listAbove(text, from, before),
    tight: (/[\w"']:$/.test(before) || /^\s*(?:- )*-$/.test(before)) && /^(\s|$)/.test(after),
  };
}

/**
 * What is written at an offset of a record, or may be: found by writing a mark there and reading the stretch around it, broken as it is.
 *
 * @returns undefined in a comment, and wherever nothing of a record can stand
 */
export function placeAt(text: string, offset: number): Place | undefined {
  if (text.includes(mark)) return undefined;
  const line = lineAround(text, offset);
  const stretch = stretchAt(text, offset);
  if (line.blank) {
    const block = blockAround(stretch, text, offset);
    if (block) return placeOf(block, stretch, offset, 0, line, 0);
    const spaces = line.before.replace('\ufeff', '').length;
    const empty = { from: offset, to: offset, typed: '', style: 'plain', flow: false, colon: false } as const;
    if (spaces === 0 && outlineOf(text)) return { path: [''], part: 'name', ...empty, tight: false, dashless: false };
    if (spaces < stretch.indent) return undefined;
  }
  const listed = line.blank && line.listed;
  const colons = line.name && !listed ? [':', ''] : [''];
  for (const colon of colons) {
    const space = listed ? '- ' : line.tight ? ' ' : '';
    const rest = line.name ? line.after.length : 0;
    const written = `${text.slice(stretch.from, offset)}${space}${mark}${text.slice(offset, offset + rest)}${colon}${text.slice(offset + rest, stretch.to)}`;
    if (isHeavyYaml(written, longestRecord)) return undefined;
    const found = find(freshDocument(written), ({ value, source }) => `${source ?? ''}${String(value)}`.includes(mark));
    if (!found || (colon !== '' && (found.alone || styleOf(found.scalar) === 'block'))) continue;
    return placeOf(found, stretch, offset, mark.length, line, space.length);
  }
  return undefined;
}

function placeOf(
  { path, scalar, part, flow }: Around,
  stretch: Stretch,
  offset: number,
  marks: number,
  line: ReturnType<typeof lineAround>,
  spaces: number,
): Place {
  const [start = 0, end = 0] = scalar.range ?? [];
  const style = styleOf(scalar);
  const from = Math.min(offset, stretch.from + start);
  // What is typed on its own line alone is replaced.
  const to = Math.max(offset, stretch.from + end - marks - spaces);
  const inLine = Math.min(to, offset + line.after.length);
  const typed = line.before.slice(Math.max(0, line.before.length - (offset - from)));
  return {
    path: [...stretch.above, ...path.map((step) => (typeof step === 'string' ? step.replace(mark, '') : step))],
    part,
    from,
    to: inLine,
    typed,
    style,
    flow,
    colon: /^[\w-]*["']?\s*:/.test(line.after),
    tight: line.tight,
    dashless: line.blank && !flow && style !== 'block',
  };
}
