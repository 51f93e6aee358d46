/** What a reader of records must do with a text: refuse it, read it as the good one, or either, but never anything else. */
export type Expectation = 'refused' | 'same' | 'either';

/** A text that somebody may hand in, by mistake or on purpose. */
export interface HostileText {
  name: string;
  text: string;
  expects: Expectation;
}

/** Random numbers from 0 to 1 that are the same for the same seed. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A line of a record that holds `name: value`, taken apart. */
const field = /^(?<indent> *)(?<dash>- )?(?<name>[A-Za-z][\w-]*):(?<value> +\S.*)?$/;

const script = '<script>globalThis.polluted = true</script><img src=x onerror=alert(1)>';

/** Units and what somebody may write in their place. */
const otherUnits: Readonly<Record<string, string>> = {
  mm: 'in',
  cm: 'mm',
  in: 'mm',
  h: 'd',
  d: 'h',
  min: 'h',
  wk: 'd',
  '°C': '°F',
  '°F': '°C',
  g: 'kg',
  mL: 'L',
};

interface Draft {
  lines: readonly string[];
  random: () => number;
  pick<Item>(items: readonly Item[]): Item;
  /** Numbers of the lines that a pattern fits. */
  linesLike(pattern: RegExp): number[];
  /** The text with one line put in place of another; nothing takes the line away. */
  withLine(at: number, ...instead: string[]): string;
}

function draftOf(good: string, seed: number): Draft {
  const lines = good.replace(/\n$/, '').split('\n');
  const random = randomFrom(seed);
  return {
    lines,
    random,
    pick: (items) => items[Math.floor(random() * items.length)] as (typeof items)[number],
    linesLike: (pattern) => lines.flatMap((line, at) => (pattern.test(line) ? [at] : [])),
    withLine: (at, ...instead) => `${[...lines.slice(0, at), ...instead, ...lines.slice(at + 1)].join('\n')}\n`,
  };
}

/** One way to spoil a text; nothing where the text offers no place for it. */
type Mutation = (draft: Draft, good: string) => string | undefined;

/** Change a line that a pattern fits, one of them by chance. */
function onLine(pattern: RegExp, change: (line: string, draft: Draft) => string | string[]): Mutation {
  return (draft) => {
    const candidates = draft.linesLike(pattern);
    if (candidates.length === 0) return undefined;
    const at = draft.pick(candidates);
    return draft.withLine(at, ...[change(draft.lines[at] as string, draft)].flat());
  };
}

/** Put something at a random place of the text. */
function inserted(what: string): Mutation {
  return ({ random }, good) => {
    const at = Math.floor(random() * good.length);
    return good.slice(0, at) + what + good.slice(at);
  };
}

/** Slips of somebody who types, each tried at several places. */
const slips: Readonly<Record<string, readonly [Expectation, Mutation]>> = {
  'a colon dropped': ['either', onLine(field, (line) => line.replace(':', ''))],
  'no space behind a colon': ['either', onLine(/^ *[\w-]+: \S/, (line) => line.replace(': ', ':'))],
  'a line indented by one more': ['either', onLine(/\S/, (line) => ` ${line}`)],
  'a line indented by two more': ['either', onLine(/\S/, (line) => `  ${line}`)],
  'a line indented by one less': ['either', onLine(/^ /, (line) => line.slice(1))],
  'a line indented by a tab': ['refused', onLine(/^ +[\w-]+:/, (line) => line.replace(/^ +/, '\t'))],
  'a line indented by a tab behind its spaces': [
    'refused',
    onLine(/^ +[\w-]+:/, (line) => line.replace(/^ +/, '$&\t')),
  ],
  'a line indented by a hard space': ['refused', onLine(/^ +\S/, (line) => line.replace(' ', '\u00a0'))],
  'a field twice': ['refused', onLine(/^[\w-]+: [^|>\s]/, (line) => [line, line])],
  'a field twice, with a letter in quotes': [
    'refused',
    onLine(/^[\w-]+: [^|>\s]/, (line) => [line, line.replace(/^[\w-]+/, '"$&"')]),
  ],
  'a name with a letter dropped': ['refused', onLine(/^[\w-]{3,}:/, (line) => line.slice(0, 1) + line.slice(2))],
  'a name with a letter doubled': ['refused', onLine(/^[\w-]{3,}:/, (line) => line.slice(0, 1) + line)],
  'a name with a letter of another alphabet': ['refused', onLine(/^[\w-]*a[\w-]*:/, (line) => line.replace('a', 'а'))],
  'a name in capitals': [
    'refused',
    onLine(/^[a-z]+:/, (line) => line.replace(/^[a-z]+/, (name) => name.toUpperCase())),
  ],
  'a line taken out': ['either', (draft) => draft.withLine(draft.pick(draft.linesLike(/\S/)))],
  'two lines joined': [
    'either',
    ({ lines, random }) => {
      const at = Math.floor(random() * (lines.length - 1));
      return `${[...lines.slice(0, at), `${lines[at]}${lines[at + 1]}`, ...lines.slice(at + 2)].join('\n')}\n`;
    },
  ],
  'two lines swapped': [
    'either',
    ({ lines, random }) => {
      const at = Math.floor(random() * (lines.length - 1));
      return `${[...lines.slice(0, at), lines[at + 1], lines[at], ...lines.slice(at + 2)].join('\n')}\n`;
    },
  ],
  'cut in the middle': ['either', ({ random }, good) => good.slice(0, Math.floor(random() * good.length))],
  'a quote too many': ['either', inserted('"')],
  'an apostrophe too many': ['either', inserted("'")],
  'a bracket too many': ['either', inserted('[')],
  'a brace too many': ['either', inserted('}')],
  'a colon too many': ['either', inserted(': ')],
  'a line end too many': ['either', inserted('\n')],
  'a letter lost': [
    'either',
    ({ random }, good) => {
      const at = Math.floor(random() * good.length);
      return good.slice(0, at) + good.slice(at + 1);
    },
  ],
  'a value of nothing': ['either', onLine(/^ *[\w-]+: \S/, (line) => line.replace(/: .*/, ':'))],
  'a number as a text': ['either', onLine(/: \d[\d.]*$/, (line) => line.replace(/: (\d[\d.]*)$/, ': "$1"'))],
  'a number with a comma': ['either', onLine(/: \d+$/, (line) => `${line},5`)],
  'a number beyond counting': ['either', onLine(/: \d[\d.]*$/, (line) => line.replace(/: .*/, ': 1e999'))],
  'not a number': ['either', onLine(/: \d[\d.]*$/, (line) => line.replace(/: .*/, ': .nan'))],
  'a negative number': ['either', onLine(/: \d[\d.]*$/, (line) => line.replace(/: /, ': -'))],
  'a text as a number': ['either', onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': 7'))],
  'a text as a list': ['either', onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': [one, two]'))],
  'a text as a group': ['either', onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': { one: two }'))],
  'a list as a text': ['either', onLine(/: \[.*\]$/, (line) => line.replace(/: .*/, ': one'))],
  'a group as a text': ['either', onLine(/: \{.*\}$/, (line) => line.replace(/: .*/, ': one'))],
  'a group as a list': ['either', onLine(/: \{.*\}$/, (line) => line.replace(/: .*/, ': [one]'))],
  'another unit': [
    'either',
    onLine(/\d (mm|cm|in|h|d|min|wk|°C|°F|g|mL)\b/, (line) =>
      line.replace(
        /(\d) (mm|cm|in|h|d|min|wk|°C|°F|g|mL)\b/,
        (_all, digit: string, unit: string) => `${digit} ${otherUnits[unit]}`,
      ),
    ),
  ],
  'no unit': [
    'either',
    onLine(/\d (mm|cm|in|h|d|min|wk|°C|°F|g|mL)\b/, (line) =>
      line.replace(/(\d) (mm|cm|in|h|d|min|wk|°C|°F|g|mL)\b/, '$1'),
    ),
  ],
  'a script for a text': [
    'either',
    onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, `: ${JSON.stringify(script)}`)),
  ],
};

/** Texts that somebody hands in on purpose, each tried once. */
const attacks: Readonly<Record<string, readonly [Expectation, Mutation]>> = {
  'nothing at all': ['refused', () => ''],
  'a comment alone': ['refused', () => '# later\n'],
  'a start mark alone': ['refused', () => '---\n'],
  'one word': ['refused', () => 'board\n'],
  'a list': ['refused', () => '- one\n- two\n'],
  'two records': ['refused', (_draft, good) => `${good}---\n${good}`],
  'a second record behind an end mark': ['refused', (_draft, good) => `${good}...\n${good}`],
  'line ends of Windows': ['same', (_draft, good) => good.replaceAll('\n', '\r\n')],
  'a byte order mark': ['same', (_draft, good) => `\ufeff${good}`],
  both: ['same', (_draft, good) => `\ufeff${good.replaceAll('\n', '\r\n')}`],
  'no line end at the end': ['same', (_draft, good) => good.trimEnd()],
  'comments and empty lines': ['same', (_draft, good) => `# made up\n\n${good}\n# the end\n`],
  'line ends of old machines': ['refused', (_draft, good) => good.replaceAll('\n', '\r')],
  'a byte order mark inside': ['refused', inserted('\ufeff')],
  'a null character': ['refused', inserted('\0')],
  'an escape character': ['refused', inserted('\x1b[2J')],
  'a backspace': ['refused', inserted('\b')],
  'a line end of other books': ['refused', inserted('\u2028')],
  'a mark that turns the writing': ['refused', inserted('\u202e')],
  'half a character, the first': ['refused', inserted('\ud83d')],
  'half a character, the second': ['refused', inserted('\ude00')],
  'a null character in disguise': [
    'refused',
    onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': "a\\0b"')),
  ],
  'half a character in disguise': [
    'refused',
    onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': "a\\ud83d"')),
  ],
  'odd letters for a text': [
    'either',
    onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': "Ａѕհ 🪵 e\u0301 ﬁ \u200b"')),
  ],
  'an anchor': ['refused', onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(': ', ': &a '))],
  'an alias to nothing': ['refused', onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(/: .*/, ': *a'))],
  'an alias to itself': ['refused', (_draft, good) => `${good}bomb: &a [*a]\n`],
  'aliases that multiply': [
    'refused',
    (_draft, good) =>
      `${good}${[...'abcdefghi'].map((name, at) => `${name}: &${name} [${Array(9).fill(at === 0 ? 'x' : `*${'abcdefghi'[at - 1]}`)}]`).join('\n')}\n`,
  ],
  'a merge key': ['refused', (_draft, good) => `${good}<<: { a: 1 }\n`],
  'a merge of an alias': ['refused', (_draft, good) => `${good}base: &b { a: 1 }\nother:\n  <<: *b\n`],
  'a version of another YAML': ['refused', (_draft, good) => `%YAML 1.1\n---\n${good}`],
  'tags renamed': ['refused', (_draft, good) => `%TAG ! tag:example.org,2000:\n---\n${good}`],
  'a tag of another language': ['refused', (_draft, good) => `${good}run: !!js/function "function () {}"\n`],
  'a tag of ours': ['refused', onLine(/^ *[\w-]+: [A-Za-z]/, (line) => line.replace(': ', ': !!binary '))],
  'a list for a name': ['refused', (_draft, good) => `${good}[a, b]: 1\n`],
  'a name of one more letter than allowed': ['refused', (_draft, good) => `${good}${'a'.repeat(1025)}: 1\n`],
  'brackets without end': ['refused', (_draft, good) => `${good}deep: ${'['.repeat(20_000)}`],
  'braces without end': ['refused', (_draft, good) => `${good}deep: ${'{a: '.repeat(10_000)}`],
  'brackets 65 deep': ['refused', (_draft, good) => `${good}deep: ${'['.repeat(65)}${']'.repeat(65)}\n`],
  'dashes without end': ['refused', (_draft, good) => `${good}deep:\n  ${'- '.repeat(10_000)}x\n`],
  'question marks without end': ['refused', (_draft, good) => `${good}${'? '.repeat(10_000)}x\n`],
  'an indent without end': ['refused', (_draft, good) => `${good}deep:\n${' '.repeat(20_000)}x: 1\n`],
  'groups 300 deep': [
    'refused',
    (_draft, good) => `${good}${Array.from({ length: 300 }, (_each, depth) => `${' '.repeat(depth)}a:\n`).join('')}`,
  ],
};

/** Names that reach into every object of the language, at the head of the record and inside its groups. */
const reservedNames = ['__proto__', 'constructor', 'prototype'];

function reserved(good: string): HostileText[] {
  return reservedNames.flatMap((name) =>
    [
      [`${name} as a field`, `${good}${name}: { polluted: true }\n`],
      [`${name} in quotes`, `${good}"${name}": { polluted: true }\n`],
      [
        `${name} by escapes`,
        `${good}"\\u${name.charCodeAt(0).toString(16).padStart(4, '0')}${name.slice(1)}": { polluted: true }\n`,
      ],
      [`${name} in a group`, `${good}extra: { ${name}: { polluted: true } }\n`],
      [`${name} in a list`, `${good}extra:\n  - a: 1\n    ${name}:\n      polluted: true\n`],
    ].map(([title = '', text = '']): HostileText => ({ name: title, text, expects: 'refused' })),
  );
}

/**
 * A good record spoilt in many ways, the same for the same seed. What is called `refused` is so for every record whose groups allow
 * only the fields of their schema.
 *
 * @param good a YAML text that its schema allows
 * @param seed of the places that are chosen by chance
 * @param tries at how many places each slip is made
 */
export function hostileTexts(good: string, seed: number, tries = 4): HostileText[] {
  const made = (from: typeof slips, times: number) =>
    Object.entries(from).flatMap(([name, [expects, mutate]], at) =>
      Array.from({ length: times }, (_each, attempt): HostileText[] => {
        const text = mutate(draftOf(good, seed * 7919 + at * 101 + attempt), good);
        return text === undefined || text === good ? [] : [{ name: `${name} (${attempt + 1})`, text, expects }];
      }).flat(),
    );
  return [...made(slips, tries), ...made(attacks, 1), ...reserved(good)];
}

/** Text enough to fill a length, from a part that is repeated. */
function filled(length: number, part: string): string {
  return part.repeat(Math.ceil(length / part.length)).slice(0, length);
}

/** As many whole parts as a length holds. */
function whole(length: number, part: string): string {
  return part.repeat(Math.floor(length / part.length));
}

/** Long texts made of one part each, which parsers take long over or die of; made when they are asked for. */
export const heavyTexts: Readonly<Record<string, (length: number) => string>> = {
  'opening brackets': (length) => filled(length, '['),
  'closing brackets': (length) => filled(length, '] '),
  'pairs of brackets': (length) => filled(length, '[]'),
  'braces with names': (length) => filled(length, '{a: '),
  'lists sixty deep': (length) => `a: [${whole(length - 5, `${'['.repeat(60)}${']'.repeat(60)},`)}]`,
  'groups thirty deep': (length) => `a: [${whole(length - 5, `${'{a: '.repeat(30)}${'}'.repeat(30)},`)}]`,
  'groups thirty deep without commas': (length) =>
    `a: [${whole(length - 5, `${'{a: '.repeat(30)}${'}'.repeat(30)} `)}]`,
  dashes: (length) => filled(length, '- '),
  'dashes, one a line': (length) => filled(length, '- 1\n'),
  fields: (length) => {
    const lines: string[] = [];
    for (let size = 0; size < length; size += (lines.at(-1) as string).length) lines.push(`k${lines.length}: 1\n`);
    return lines.join('').slice(0, length);
  },
  'one field again and again': (length) => filled(length, 'a: 1\n'),
  comments: (length) => filled(length, '# c\n'),
  'one comment': (length) => `a: 1 ${filled(length - 5, '#')}`,
  'lines with a percent sign': (length) => filled(length, '%a\n'),
  'a quoted text': (length) => `a: "${filled(length - 5, 'b\\"')}"`,
  quotes: (length) => filled(length, '"'),
  backslashes: (length) => `a: "${filled(length - 4, '\\')}`,
  'a block of text': (length) => `a: |\n${filled(length - 5, '  b\n')}`,
  'a text over many lines': (length) => `a: ${filled(length - 3, 'b\n  ')}`,
  spaces: (length) => filled(length, ' '),
  'empty lines': (length) => filled(length, '\n'),
  colons: (length) => filled(length, ': '),
  'question marks, one a line': (length) => filled(length, '?\n'),
  tags: (length) => filled(length, '!a '),
  anchors: (length) => filled(length, '&a '),
  commas: (length) => `a: [${filled(length - 4, ', ')}`,
  'start marks': (length) => filled(length, '---\n'),
  'lines ever further in': (length) => {
    const lines: string[] = [];
    for (let size = 0; size < length; size += (lines.at(-1) as string).length)
      lines.push(`${' '.repeat(lines.length % 190)}a:\n`);
    return lines.join('').slice(0, length);
  },
  'as deep as is allowed': (length) => {
    const groups = Array.from({ length: 198 }, (_each, depth) => `${' '.repeat(depth)}a:\n`).join('');
    const deep = `${groups}${' '.repeat(199)}${'- '.repeat(19)}b: ${'['.repeat(64)}${']'.repeat(64)}\n`;
    return deep + filled(length - deep.length, '#');
  },
  'letters of two units': (length) => `a: ${filled(length - 4, '🪵')}`,
};
