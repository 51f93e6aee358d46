/**
 * A reader of YAML as records and methods write it: groups and lists by indent or in brackets, texts on one line or behind “|”. It is many times as quick as the parser, and keeps no places. Of whatever else stands in a text, right or wrong, it says
 * nothing at all and leaves the text to the parser: `tests/model/data/yaml-plain.test.ts` holds both to the same data.
 */
class NotPlain extends Error {}

function leave(): never {
  throw new NotPlain();
}

/** A name as our formats have them; the value behind it. */
const entry = /^([A-Za-z][A-Za-z0-9_-]*):(?: +(.*))?$/;

/** Names that the parser takes for something else, or that no field may bear. */
const noName = /^(?:null|Null|NULL|true|True|TRUE|false|False|FALSE|constructor|prototype)$/;

/** With what a text without quotes cannot begin. */
const noBeginning = /^[-?:,[\]{}#&*!|>'"%@`]/;

/** What looks like a number, a truth or nothing, and is written in another way than records write it. */
const oddValue =
  /^(?:~|[Nn]ull|NULL|True|TRUE|False|FALSE|[-+]?(?:\d+|\d*\.\d*)(?:[eE][-+]?\d+)?|0[xo].*|[-+]?\.(?:inf|Inf|INF|nan|NaN|NAN))$/;

/** A text without quotes: a whole or broken number, true or false, or the text. */
function plainValue(text: string): unknown {
  if (noBeginning.test(text) && !/^-\d/.test(text)) leave();
  if (/: |:$| #/.test(text)) leave();
  if (text === 'true') return true;
  if (text === 'false') return false;
  if (/^(?:0|-?[1-9]\d{0,14})$/.test(text) || /^-?(?:0|[1-9]\d{0,14})\.\d{1,15}$/.test(text)) return Number(text);
  if (oddValue.test(text)) leave();
  return text;
}

/** A text without the blanks and breaks at its end; a pattern would look again from each of a hundred thousand of them. */
function withoutBlanks(text: string): string {
  let end = text.length;
  while (end > 0 && (text[end - 1] === ' ' || text[end - 1] === '\n')) end -= 1;
  return text.slice(0, end);
}

/** Set a field of a group; a name that stands twice is left to the parser. */
function setField(group: Record<string, unknown>, name: string, value: unknown): void {
  if (noName.test(name) || name.length > 100 || Object.hasOwn(group, name)) leave();
  group[name] = value;
}

/** How deep lists and groups in brackets may stand in each other. */
const deepest = 8;

/** A list or group in brackets, from the first to the last; a line may end between its parts. */
function bracketed(line: string): unknown {
  let at = 0;
  const spaces = () => {
    while (line[at] === ' ' || line[at] === '\n') at += 1;
  };
  const expect = (mark: string) => {
    spaces();
    if (line[at] !== mark) leave();
    at += 1;
  };
  const quoted = (): string => {
    const end = line.indexOf(line[at] as string, at + 1);
    if (end < 0) leave();
    const text = line.slice(at + 1, end);
    // A quote that is doubled, or an escape.
    if (/[\\\n]/.test(text) || line[end + 1] === line[at]) leave();
    at = end + 1;
    return text;
  };
  const value = (depth: number): unknown => {
    if (depth > deepest) leave();
    spaces();
    const mark = line[at];
    if (mark === '"' || mark === "'") return quoted();
    if (mark === '[') return list(depth);
    if (mark === '{') return group(depth);
    const from = at;
    while (at < line.length && !',[]{}'.includes(line[at] as string)) at += 1;
    const text = withoutBlanks(line.slice(from, at));
    if (text === '' || text.includes('\n')) leave();
    return plainValue(text);
  };
  /** Whether another part follows; the bracket is closed where none does. */
  const more = (close: string): boolean => {
    spaces();
    if (line[at] === ',') {
      at += 1;
      spaces();
      if (line[at] !== close) return true;
    }
    expect(close);
    return false;
  };
  const list = (depth: number): unknown[] => {
    expect('[');
    const items: unknown[] = [];
    do items.push(value(depth + 1));
    while (more(']'));
    return items;
  };
  const group = (depth: number): Record<string, unknown> => {
    expect('{');
    const fields: Record<string, unknown> = {};
    do {
      spaces();
      const name = /^[A-Za-z][A-Za-z0-9_-]*(?=: )/.exec(line.slice(at, at + 120))?.[0] ?? leave();
      at += name.length + 1;
      setField(fields, name, value(depth + 1));
    } while (more('}'));
    return fields;
  };
  const whole = line[0] === '[' ? list(1) : group(1);
  if (at !== line.length) leave();
  return whole;
}

/** Lines read one after the other, by indent. */
class Lines {
  private at = 0;
  constructor(private readonly lines: string[]) {}

  /** Go to the next line that holds more than a comment; its indent, or -1 where there is none. */
  next(): number {
    for (; this.at < this.lines.length; this.at += 1) {
      const line = this.lines[this.at] as string;
      const indent = line.search(/[^ ]/);
      if (indent >= 0 && line[indent] !== '#') return indent;
    }
    return -1;
  }

  private rest(indent: number): string {
    return withoutBlanks((this.lines[this.at] as string).slice(indent));
  }

  /** What begins on this line, which has this indent, under a name with that one. */
  private block(indent: number, under: number): unknown {
    const words = this.rest(indent);
    if (words.startsWith('- ')) return this.list(indent);
    if (words[0] !== '{' && words[0] !== '[') return this.group(indent);
    this.at += 1;
    return this.value(words, under);
  }

  group(indent: number): Record<string, unknown> {
    const fields: Record<string, unknown> = {};
    for (let here = indent; here === indent; here = this.next()) {
      const [, name, words = ''] = entry.exec(this.rest(indent)) ?? leave();
      this.at += 1;
      setField(fields, name as string, words === '' ? this.below(indent) : this.value(words, indent));
    }
    return this.endedWith(fields, indent);
  }

  private list(indent: number): unknown[] {
    const items: unknown[] = [];
    for (let here = indent; here === indent; here = this.next()) {
      const line = this.rest(indent);
      if (!/^- [^ ]/.test(line)) leave();
      const words = line.slice(2);
      if (entry.test(words)) {
        this.lines[this.at] = ' '.repeat(indent + 2) + words;
        items.push(this.group(indent + 2));
      } else {
        if (words === '|' || words === '|-') leave();
        this.at += 1;
        items.push(this.value(words, indent));
      }
    }
    return this.endedWith(items, indent);
  }

  /** What is behind a group or list stands no further right than its own parts. */
  private endedWith<Block>(block: Block, indent: number): Block {
    if (this.next() > indent) leave();
    return block;
  }

  /** The group or list under a name. */
  private below(indent: number): unknown {
    const inner = this.next();
    if (inner <= indent) leave();
    return this.block(inner, indent);
  }

  private value(words: string, indent: number): unknown {
    if (words === '|' || words === '|-') return this.textBelow(indent, words === '|-');
    const value = words[0] === '[' || words[0] === '{' ? bracketed(this.closed(words, indent)) : this.onLine(words);
    // It would go on in the next line.
    if (this.next() > indent) leave();
    return value;
  }

  /** A bracket that opens on the last line, with the lines down to where it closes. */
  private closed(words: string, indent: number): string {
    const depthOf = (line: string) => line.replace(/[^[{]+/g, '').length - line.replace(/[^\]}]+/g, '').length;
    let all = words;
    for (let depth = depthOf(words); depth > 0; this.at += 1) {
      const line = this.lines[this.at];
      if (line === undefined || line.search(/[^ ]/) <= indent) leave();
      all += `\n${withoutBlanks(line)}`;
      depth += depthOf(line);
    }
    return all;
  }

  private onLine(words: string): unknown {
    const mark = words[0];
    if (mark === '"' || mark === "'") {
      const inner = words.slice(1, -1);
      if (words.length < 2 || words.at(-1) !== mark || inner.includes(mark) || inner.includes('\\')) leave();
      return inner;
    }
    return plainValue(words);
  }

  /** The lines behind “|”, as they stand. */
  private textBelow(indent: number, stripped: boolean): string {
    const first = this.lines[this.at] ?? '';
    const inner = first.search(/[^ ]/);
    if (inner <= indent) leave();
    const held: string[] = [];
    for (; this.at < this.lines.length; this.at += 1) {
      const line = this.lines[this.at] as string;
      const here = line.search(/[^ ]/);
      if (here < 0) {
        if (line.length > inner) leave();
        held.push('');
        continue;
      }
      if (here <= indent) break;
      if (here < inner) leave();
      held.push(line.slice(inner));
    }
    while (held.at(-1) === '') held.pop();
    return held.join('\n') + (stripped ? '' : '\n');
  }
}

/**
 * Read a text that is written plainly.
 *
 * @param text without characters that may not stand in a text
 * @returns what it holds, as the parser would give it, or undefined where it is for the parser to say
 */
export function readPlainYaml(text: string): Record<string, unknown> | undefined {
  if (!text.endsWith('\n') || /[\t\r\ufeff]|^(?:---|\.\.\.)/m.test(text)) return undefined;
  const lines = new Lines(text.split('\n'));
  try {
    if (lines.next() !== 0) return undefined;
    const data = lines.group(0);
    return lines.next() < 0 ? data : undefined;
  } catch (error) {
    if (error instanceof NotPlain) return undefined;
    throw error;
  }
}
