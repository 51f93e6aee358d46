import { isScalar, type Node } from 'yaml';

type Group = Readonly<Record<string, unknown>>;

/** A value spelled for a place: in its line, and in lines below. */
export interface Spelling {
  /** What stands in the line: all of it, or the mark of a text in lines. */
  inline: string;
  /** Lines below, with their indent; none where all stands in the line. */
  lines: readonly string[];
}

/** Where a value is to stand. */
export interface Spot {
  /** Inside brackets, where everything is one line. */
  flow: boolean;
  /** Spaces before the lines below. */
  indent: number;
  /** What stands there now. */
  old?: Node | null;
}

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What would not be a text without quotes: numbers, true, null. */
const ambiguous =
  /^(?:~|null|true|false|[-+]?(?:\.\d+|\d+(?:\.\d*)?)(?:e[-+]?\d+)?|0o[0-7]+|0x[\da-f]+|[-+]?\.inf|\.nan)$/i;

/** Whether a text surely means itself without quotes. */
function isPlain(text: string, flow: boolean): boolean {
  if (!/^[\p{L}\p{N}(/.+][^\p{C}]*$/u.test(text) || text.trim() !== text || ambiguous.test(text)) return false;
  if (/:(\s|$)|\s#|^---|[\u2028\u2029\ufeff]/.test(text)) return false;
  return !flow || !/[,[\]{}:]/.test(text);
}

/** A text in double quotes, in which everything that cannot be seen is written as its number. */
function quoted(text: string): string {
  return JSON.stringify(text).replace(
    /[^\x20-\x7e\xa0-\ud7ff\ue000-\ufefe\uff00-\ufffd\u{10000}-\u{10ffff}]|[\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** A text, number or word in one line. */
export function scalarText(value: unknown, flow: boolean): string {
  if (typeof value === 'string') return isPlain(value, flow) ? value : quoted(value);
  if (typeof value === 'number') {
    if (Number.isNaN(value)) return '.nan';
    if (!Number.isFinite(value)) return value < 0 ? '-.inf' : '.inf';
  }
  return String(value ?? 'null');
}

/** A value of any kind in brackets, one line. */
export function inBrackets(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? '[]' : `[${value.map(inBrackets).join(', ')}]`;
  if (!isGroup(value)) return scalarText(value, true);
  const entries = Object.entries(value).map(([name, each]) => `${scalarText(name, true)}: ${inBrackets(each)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}

/** A text of several lines below its mark; undefined where it cannot be written so. */
function literal(text: string, indent: number): Spelling | undefined {
  if (text.trim() === '' || /[^\P{C}\n\t]|\t(?=\n|$)|[\u2028\u2029\ufeff]/u.test(text)) return undefined;
  const ends = /\n*$/.exec(text)?.[0].length ?? 0;
  const body = text.slice(0, text.length - ends);
  const chomp = ends === 0 ? '-' : ends === 1 ? '' : '+';
  const hint = /^\n*[ \t]/.test(body) ? '2' : '';
  const lines = [...body.split('\n'), ...Array.from({ length: Math.max(0, ends - 1) }, () => '')];
  return {
    inline: `|${hint}${chomp}`,
    lines: lines.map((line) => (line === '' ? '' : `${' '.repeat(indent)}${line}`)),
  };
}

/** Longest line that a group or list in brackets may make. */
const longestLine = 110;

/** One entry of a group in lines. */
export function entryLines(name: string, value: unknown, indent: number): string[] {
  const { inline, lines } = spell(value, indent + 2);
  return [`${' '.repeat(indent)}${scalarText(name, false)}:${inline === '' ? '' : ` ${inline}`}`, ...lines];
}

/** One entry of a list in lines. */
export function itemLines(value: unknown, indent: number): string[] {
  const dash = `${' '.repeat(indent)}- `;
  if (isGroup(value) && Object.keys(value).length > 0 && indent + inBrackets(value).length + 2 > longestLine) {
    const lines = Object.entries(value).flatMap(([name, each]) => entryLines(name, each, indent + 2));
    return [`${dash}${(lines[0] ?? '').trimStart()}`, ...lines.slice(1)];
  }
  const { inline, lines } = Array.isArray(value) ? { inline: inBrackets(value), lines: [] } : spell(value, indent + 2);
  return inline === '' ? [dash.trimEnd(), ...lines] : [`${dash}${inline}`, ...lines];
}

/** A value in the way that it is usually written: short groups in brackets, long ones in lines, texts of several lines below a bar. */
function spell(value: unknown, indent: number): Spelling {
  // A text that keeps blank lines at its end would keep those of the file too.
  if (typeof value === 'string' && value.includes('\n') && !value.endsWith('\n\n'))
    return literal(value, indent) ?? { inline: quoted(value), lines: [] };
  if (typeof value !== 'object' || value === null) return { inline: scalarText(value, false), lines: [] };
  const short = inBrackets(value);
  if (indent + short.length <= longestLine && !/\\n/.test(short)) return { inline: short, lines: [] };
  return { inline: '', lines: inLines(value, indent) };
}

function inLines(value: object, indent: number): string[] {
  if (Array.isArray(value)) return value.flatMap((each) => itemLines(each, indent));
  return Object.entries(value).flatMap(([name, each]) => entryLines(name, each, indent));
}

/** Ways to write a value at a spot, the one most like what stands there first; the last is sure for any text. */
export function* spellings(value: unknown, { flow, indent, old }: Spot): Generator<Spelling> {
  const line = (inline: string): Spelling => ({ inline, lines: [] });
  if (typeof value !== 'string') {
    if (typeof value !== 'object' || value === null) yield line(scalarText(value, flow));
    else {
      const empty = Object.keys(value).length === 0;
      const lines = { inline: '', lines: empty ? [] : inLines(value, indent) };
      const wasLines = old !== undefined && old !== null && !isScalar(old) && (old as { flow?: boolean }).flow !== true;
      if (!flow && !empty && wasLines) yield lines;
      const usual = spell(value, indent);
      if (!flow) yield usual;
      yield line(inBrackets(value));
      if (!flow && !empty) yield lines;
    }
    return;
  }
  const type = isScalar(old) ? old.type : undefined;
  const block = flow ? undefined : literal(value, indent);
  if (block && (value.includes('\n') || type === 'BLOCK_LITERAL' || type === 'BLOCK_FOLDED')) yield block;
  if (type === 'QUOTE_DOUBLE') yield line(quoted(value));
  if (type === 'QUOTE_SINGLE' && !/\p{C}/u.test(value)) yield line(`'${value.replaceAll("'", "''")}'`);
  if (isPlain(value, flow)) yield line(value);
  yield line(quoted(value));
}
