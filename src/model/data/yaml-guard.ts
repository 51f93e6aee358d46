import { Lexer } from 'yaml';

/** Something wrong in a text, by offsets in it (UTF-16 units; `to` is just behind it). */
export interface TextFault {
  from: number;
  to: number;
  /** What stands there, and a way out. */
  message: string;
  /** A parser would take long over it, or end the process. */
  heavy?: true;
}

/** 64 kB: a record of ours is 3 kB, a method of forty steps 13 kB. */
export const longestYaml = 65_536;

/** How deep lists and groups in brackets may stand in each other. */
const deepest = 64;
/** Spaces before a line. */
const widestIndent = 199;
/** Marks such as “- ” one behind the other. */
const mostMarks = 19;

/**
 * What may not stand in a text: all that YAML 1.2.2 leaves out of its printable characters (section 5.1, rule [1] c-printable); a carriage return
 * without its line feed; a byte order mark that is not the first character; other signs that some editors show as the end of a line;
 * and marks that turn the order of writing, under which a reader sees other words than stand in the file.
 */
const unwelcome =
  /[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]|\r(?!\n)|(?!^)\ufeff|[\u2028\u2029\u202a-\u202e\u2066-\u2069]/u;

/** All that is unwelcome and a little more, unit by unit: many times as quick, and most texts hold none of it. */
const doubtful = /[^\t\n\x20-\x7e\xa0-\u2027\u202f-\u2065\u206a-\ud7ff\ue000-\ufefe\uff00-\ufffd]/;

/** The first character that may not stand in a text, or undefined. */
export function unwelcomeCharacter(text: string): { at: number; message: string } | undefined {
  const found = doubtful.test(text) ? unwelcome.exec(text) : null;
  if (!found) return undefined;
  const code = found[0].charCodeAt(0);
  const name = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  const message = (() => {
    if (code === 0x0d) return `a line ends with a carriage return alone (${name}). Press Enter in its place.`;
    if (code >= 0xd800 && code <= 0xdfff) return `half a character stands here (${name}). Type it again.`;
    if (code === 0x85 || code === 0x2028 || code === 0x2029)
      return `a sign stands here that only some editors show as the end of a line (${name}). Press Enter in its place.`;
    if ((code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069))
      return `an invisible mark stands here that turns the order of the letters behind it (${name}). Remove it.`;
    return `a character stands here that cannot be seen or printed (${name}). Remove it.`;
  })();
  return { at: found.index, message };
}

/** Faults that need no parser, at most one of a kind. */
export function faultsOfLines(text: string): TextFault[] {
  const faults: TextFault[] = [];
  const character = unwelcomeCharacter(text);
  if (character) faults.push({ from: character.at, to: character.at + 1, message: character.message });
  const wide = new RegExp(`^[ \\t]{${widestIndent + 1}}`, 'm').exec(text);
  if (wide) {
    faults.push({
      from: wide.index,
      to: wide.index + widestIndent + 1,
      message: `the line is indented by more than ${widestIndent} spaces. Indent by two spaces a level.`,
      heavy: true,
    });
  }
  const odd = /^[ \t]*([\u00a0\u1680\u2000-\u200f\u202f\u205f\u2060\u3000])/m.exec(text);
  if (odd) {
    const from = odd.index + odd[0].length - 1;
    faults.push({
      from,
      to: from + 1,
      message:
        'the line starts with a space that is not the one of the space bar, as word processors and web pages put it. Type the spaces anew.',
    });
  }
  return faults;
}

const closing: Readonly<Record<string, string>> = { '[': ']', '{': '}' };
const opened: Readonly<Record<string, string>> = { '[': 'list', '{': 'group' };

function unclosedWords(text: string, { mark, at }: { mark: string; at: number }): string {
  const close = closing[mark] as string;
  const kind = opened[mark];
  return text.includes(close, at)
    ? `the ${kind} that opens here with ${mark} is not closed before a line that starts further left. Write ${close} behind its last part, or indent its lines; a text that begins with ${mark} stands in quotes.`
    : `the ${kind} that opens here with ${mark} is never closed. Write ${close} behind its last part; a text that begins with ${mark} stands in quotes.`;
}

/** Whether a quoted text, as it stands with its quotes, ends with the quote that it began with. */
function closed(token: string): boolean {
  if (token.length < 2) return false;
  if (token[0] === "'") return /^'(?:[^']|'')*'$/.test(token);
  return /^"(?:[^"\\]|\\[\s\S])*"$/.test(token);
}

/** What the lexer puts between its tokens: the next one is a text without quotes, a bracket was left open, a document begins. */
const scalarFollows = '\x1f';
const bracketBroken = '\x18';
const documentBegins = '\x02';

/** What no record needs, by the first character of its token. */
const needless: Readonly<Record<string, string>> = {
  '%': 'a line that begins with % changes how the file is read, which no record needs. Remove it; a text that begins with % stands in quotes.',
  '&': '& marks a place to be repeated elsewhere, which no record needs. Remove the mark; a text that begins with & stands in quotes.',
  '*': '* repeats what stands elsewhere, which no record needs. Write it out here; a text that begins with * stands in quotes.',
  '!': '! gives a kind to what follows, which no record needs. Remove it; a text that begins with ! stands in quotes, and so does a number that is meant as a text.',
};

/** Where the tokens of a text say that it is too deep, not closed, or holds what no record needs. */
function faultsOfTokens(text: string, tokens: Iterable<string>): TextFault[] {
  const faults: TextFault[] = [];
  const told = new Set<string>();
  const report = (from: number, to: number, message: string) => faults.push({ from, to, message });
  const reportOnce = (kind: string, from: number, to: number, message: string) => {
    if (!told.has(kind))
      faults.push({ from, to, message, ...(kind === 'deep' || kind === 'marks' ? { heavy: true } : {}) });
    told.add(kind);
  };
  const open: { mark: string; at: number }[] = [];
  const left = () => {
    const last = open.at(-1);
    if (last && !told.has('quote') && !told.has('deep'))
      reportOnce('open', last.at, last.at + 1, unclosedWords(text, last));
    open.length = 0;
  };
  let at = 0;
  let marks = 0;
  let lineStart = true;
  let plain = false;
  // Whether a value has ended, so that a comma, a colon, a bracket that closes or a new line must come before the next.
  let ended = false;
  const begins = (from: number, to: number) => {
    if (ended) {
      const message =
        open.length > 0
          ? 'a comma is missing before this part. Write one between two parts of a list or group in brackets.'
          : 'this stands behind a value that is already closed. Remove it; if all of it is one text, put the whole text in double quotes.';
      reportOnce('ended', from, to, message);
    }
    ended = true;
  };
  for (const token of tokens) {
    if (!plain && (token === scalarFollows || token === documentBegins || token === bracketBroken)) {
      if (token === bracketBroken) {
        left();
        ended = false;
      }
      plain = token === scalarFollows;
      continue;
    }
    const from = at;
    at += token.length;
    if (plain) {
      begins(from, at);
      // The text of a block ends with its last line.
      lineStart = token.endsWith('\n');
      if (lineStart) ended = false;
      [plain, marks] = [false, 0];
      continue;
    }
    const first = token[0] as string;
    if (first === ' ' || first === '\t') {
      const tab = lineStart && /[^\r\n#]/.test(text[at] ?? '') ? token.indexOf('\t') : -1;
      if (tab >= 0)
        report(from + tab, from + tab + 1, 'the line is indented with a tab. Indent by two spaces a level.');
      continue;
    }
    lineStart = token === '\n' || token === '\r\n';
    marks = token === '-' || token === '?' || token === ':' ? marks + 1 : 0;
    if (marks > mostMarks)
      reportOnce('marks', from, at, `more than ${mostMarks} marks “${token} ” stand in a row. Write one a line.`);
    if (lineStart ? open.length === 0 : token === ',' || token === ':' || token === '-' || token === '?') ended = false;
    if (token === '[' || token === '{') {
      begins(from, at);
      ended = false;
      open.push({ mark: token, at: from });
      if (open.length > deepest)
        reportOnce(
          'deep',
          from,
          at,
          `lists and groups stand more than ${deepest} deep in each other. Write it flatter.`,
        );
    } else if (token === ']' || token === '}') {
      if (!open.pop())
        reportOnce(
          'stray',
          from,
          at,
          'a bracket closes here that was not opened. Remove it, or put the text that it belongs to in double quotes.',
        );
      ended = true;
    } else if (first === '"' || first === "'") {
      begins(from, at);
      if (closed(token)) continue;
      const message = `the quote ${first} that opens here is not closed. Write ${first} at the end of the text.`;
      reportOnce('quote', from, from + 1, message);
      // It takes the brackets behind it for text.
      open.length = 0;
    } else if (needless[first]) {
      report(from, at, needless[first]);
    }
  }
  left();
  return faults;
}

/**
 * Look a YAML text over before a parser sees it: what makes the parser slow or ends the process, what no record needs (anchors, aliases, tags,
 * directives), and what a parser would report far from where it stands (brackets and quotes that are not closed).
 *
 * @param text the whole file
 * @param longest characters at most
 * @returns faults in the order of the text; none where it may be parsed
 */
export function guardYaml(text: string, longest = longestYaml): TextFault[] {
  return guardedTokens(text, longest).faults;
}

/** What `guardYaml` finds, with the tokens that it looked at, from which a parser may go on; none where it did not come so far. */
export function guardedTokens(text: string, longest: number): { faults: TextFault[]; tokens: readonly string[] } {
  if (text.length > longest) {
    const message = `the text is ${text.length.toLocaleString('en-US')} characters long, and ${longest.toLocaleString('en-US')} are read at most. Divide it, or cut it down.`;
    return { faults: [{ from: longest, to: text.length, message, heavy: true }], tokens: [] };
  }
  const inOrder = (faults: TextFault[]) => faults.sort((one, other) => one.from - other.from);
  const ofLines = faultsOfLines(text);
  if (ofLines.length > 0) return { faults: inOrder(ofLines), tokens: [] };
  const tokens = [...new Lexer().lex(text)];
  return { faults: inOrder(faultsOfTokens(text, tokens)), tokens };
}

/** Whether a parser had better not see a text at all, right or wrong: what is written while somebody types is wrong most of the time. */
export function isHeavyYaml(text: string, longest = longestYaml): boolean {
  if (text.length > longest) return true;
  return [...faultsOfLines(text), ...faultsOfTokens(text, new Lexer().lex(text))].some(({ heavy }) => heavy);
}
