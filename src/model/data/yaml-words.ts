import type { TextFault } from './yaml-guard.ts';

/** The line of a text that an offset stands in, from the offset on, without its end. */
function restOfLine(text: string, at: number): string {
  return /^[^\r\n]*/.exec(text.slice(at))?.[0] ?? '';
}

/** Some words of the text, short enough for a message. */
function excerpt(words: string): string {
  const trimmed = words.trim();
  return trimmed.length > 40 ? `${trimmed.slice(0, 39)}…` : trimmed;
}

/** Where the first line begins below the one an offset stands in that is neither blank nor a comment; undefined at the end. */
function nextLine(text: string, at: number): number | undefined {
  const found = /\n[ \t]*(?=[^\s#])/.exec(text.slice(at));
  return found ? at + found.index + found[0].length : undefined;
}

const quotes = 'put the whole text in double quotes';

/** A name without its colon, or a colon without its space. */
function noColon(text: string, at: number): TextFault {
  const line = restOfLine(text, at);
  const tight = /^[\w-]+:(?=\S)/.exec(line);
  const message = tight
    ? `there is no space behind “${tight[0]}”. Write the name, a colon, a space and the value.`
    : `“${excerpt(line)}” has no colon. Write a name, a colon, a space and the value; where it goes on from the line above, indent it further than that line.`;
  return { from: at, to: at + line.trimEnd().length, message };
}

/** Two colons in one line, or a line below that is indented as if it belonged to a value. */
function secondName(text: string, at: number): TextFault {
  const line = restOfLine(text, at);
  const colon = /:(?=\s|$)/.exec(line);
  if (colon) {
    return {
      from: at,
      to: at + line.trimEnd().length,
      message: `a second colon with a space behind it stands in this line: “${excerpt(line)}”. Where it belongs to the text, ${quotes}; else write the name on a line of its own.`,
    };
  }
  const below = nextLine(text, at) ?? at;
  const slipped = slippedFirst(text, below);
  if (slipped) return slipped;
  return {
    from: below,
    to: below + restOfLine(text, below).trimEnd().length,
    message: `this line is indented as if it belonged to “${excerpt(line)}” above it, which is a value already. Give it as many spaces as the lines beside it; where it goes on with that text, ${quotes}.`,
  };
}

const spacesOf = (line: string) => line.length - line.trimStart().length;

/** A line that holds something, with where it begins and how many spaces stand before it. */
interface Indented {
  from: number;
  spaces: number;
  text: string;
}

function linesOf(text: string): Indented[] {
  const lines: Indented[] = [];
  let from = 0;
  for (const line of text.split('\n')) {
    if (!/^\s*(#|$)/.test(line)) lines.push({ from, spaces: spacesOf(line), text: line.trimEnd() });
    from += line.length + 1;
  }
  return lines;
}

/**
 * The first line of a group says how far all of them stand in; where more of the others agree with each other than with it, it is the first that
 * slipped, though the parser stumbles over the second.
 *
 * @param at where the line stands over which the parser stumbles
 * @returns the fault of the first line; undefined where the line at which the parser stumbles is the odd one
 */
function slippedFirst(text: string, at: number): TextFault | undefined {
  const lines = linesOf(text);
  const place = lines.findLastIndex(({ from }) => from <= at);
  const odd = lines[place];
  if (!odd) return undefined;
  let top = place - 1;
  const isOf = (line: Indented | undefined, least: number) => line !== undefined && line.spaces >= least;
  const above = lines[top];
  if (!above) return undefined;
  // Up to the first line of the group: the one below the name that all of it belongs to.
  while (isOf(lines[top - 1], Math.min(odd.spaces - 1, above.spaces, lines[top]?.spaces ?? 0))) top -= 1;
  const first = lines[top];
  if (!first || first.spaces === 0 || first.spaces === odd.spaces || Math.abs(first.spaces - odd.spaces) > 2)
    return undefined;
  const least = Math.min(first.spaces, odd.spaces);
  let bottom = place;
  while (isOf(lines[bottom + 1], least)) bottom += 1;
  const group = lines.slice(top, bottom + 1);
  const having = (spaces: number) => group.filter((line) => line.spaces === spaces).length;
  if (having(odd.spaces) <= having(first.spaces)) return undefined;
  const count = `${first.spaces} ${first.spaces === 1 ? 'space' : 'spaces'}`;
  return {
    from: first.from + first.spaces,
    to: first.from + first.text.length,
    message: `this line begins its group with ${count}, and the lines below it have ${odd.spaces}. Give it ${odd.spaces} too.`,
  };
}

/** A line that does not stand below the others. */
const outOfLine = (text: string, at: number): TextFault =>
  slippedFirst(text, at) ?? {
    from: at,
    to: at + restOfLine(text, at).trimEnd().length,
    message:
      'this line does not stand below the names that it belongs to. Give it as many spaces as they have, or two more than the name that it is part of.',
  };

/** What each word of the parser means to somebody who writes a record: by the beginning of its message. */
const meanings: readonly (readonly [RegExp, string | ((text: string, at: number) => TextFault)])[] = [
  [/^Nested mappings are not allowed/, secondName],
  [/^Implicit (map )?keys need to be/, noColon],
  [/^All mapping items must start/, outOfLine],
  [
    /^(All sequence items must start|A block sequence may not be used|Sequence item without)/,
    'this line of a list does not stand below the others. Give each “- ” of one list the same number of spaces.',
  ],
  [
    /^Plain value cannot start with/,
    (text, at) => ({
      from: at,
      to: at + 1,
      message: `a text cannot begin with ${text[at]} here. If it belongs to the text, ${quotes}.`,
    }),
  ],
  [
    /^Invalid escape sequence/,
    'behind a backslash in double quotes only some letters mean something, as n for a new line. Write the backslash twice, or use single quotes.',
  ],
  [
    /^(Block scalar header|Unexpected token in block scalar header|Not a YAML token)/,
    'behind | or > nothing may stand in the same line. Begin the text in the next line, indented by two spaces more.',
  ],
  [
    /^Block scalar/,
    'the lines of this text stand further left than it begins. Indent each of them by two spaces more than its name.',
  ],
  [
    /^Source contains multiple documents/,
    'a second record begins here. Keep one in a file: remove the line --- or ..., or move what follows to a file of its own.',
  ],
  [
    /^(Missing|Unexpected) (,|empty item)/,
    'a comma is missing or too many in this list or group. Put one comma between two parts.',
  ],
  [/^Missing space after :/, 'a space is missing behind the colon. Write “name: value”.'],
  [
    /^Block collections are not allowed/,
    'a list or group of lines stands inside brackets. Write the inner one in brackets too, or the outer one as lines.',
  ],
  [
    /^Unexpected .* (at node end|token)/,
    `this stands behind what is already closed. Give it a name and a colon, or remove it; if all of it is one text, ${quotes}.`,
  ],
  [/^Block collection cannot start/, 'behind --- nothing may stand in the same line. Begin in the next line.'],
  [/^Comments must be separated/, 'a space is missing before #. Add it, or put a text that holds # in double quotes.'],
  [
    /^The : indicator must be|^.*1024 chars/,
    `a name is longer than 1,024 characters. Write a short name before the colon; if the colon belongs to the text, ${quotes}.`,
  ],
  [/^With stringKeys/, `a list or group stands where a name is expected. If the bracket belongs to a text, ${quotes}.`],
  [
    /^Flow end indicator/,
    'the bracket that closes stands as far left as the name that it belongs to. Indent it by two spaces.',
  ],
];

/**
 * What a message of the YAML parser means, in the words of somebody who writes a record.
 *
 * @param text the whole file
 * @param message of the parser
 * @param at the offset that it gives
 */
export function parserFault(text: string, message: string, [from, end]: readonly [number, number]): TextFault {
  const place = { from, to: Math.max(from, end) };
  const meaning = meanings.find(([pattern]) => pattern.test(message))?.[1];
  if (typeof meaning === 'function') return meaning(text, from);
  return {
    ...place,
    message:
      meaning ?? `this cannot be read. Write “name: value”, indented by two spaces; if it is all one text, ${quotes}.`,
  };
}
