import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isMap, isPair, isSeq, Lexer, type Node, parseDocument } from 'yaml';
import {
  addEntry,
  applySplices,
  moveEntry,
  removeEntry,
  type Splice,
  setValue,
} from '../../../src/method/edit/index.ts';

type Path = (string | number)[];
const read = (text: string) => {
  const document = parseDocument(text, { uniqueKeys: false, prettyErrors: false, logLevel: 'error', stringKeys: true });
  if (document.errors.length > 0) throw document.errors[0];
  return document;
};
const dataOf = (text: string): unknown => read(text).toJS();

/** Texts in styles that a maker, a program or another editor may have left. */
const styles: readonly string[] = [
  '# About the group.\na: 1\n# About b,\n# in two lines.\nb: two # behind\n\nc: "three"\n',
  "a: 'it''s'\nb: \"q\\\"uote\"\nc: plain text, with a comma # and more\nd:\ne: ~\nf: # empty so far\ng: end",
  'steps:\n  one:\n    does: |\n      First line\n        deeper\n\n      Last: line # no comment\n    why: >\n      folded\n      words\n\n      and more\n  # Before two.\n  two:\n    does: |-\n      No end\n    tell: >-\n      folded,\n      no end\n  three: { does: "in braces", tools: [a, b] } # flow\n',
  'keep: |+\n  kept\n\n\nnext: |2\n   spaces first\nlast: |\n  at the end\n',
  'list:\n- one\n- two # behind two\n# Before three.\n- three\n- - nested\n  - list\n- a: 1\n  b: 2\n-\n  c: 3\nafter:\n  - { step: a, least: 1 h }\n  - step: b\n    # Before most.\n    most: 2 h\n',
  'flow: {a: 1,b: [1,2,  3 ],   c: {}, d: [], "e": null}\nmany: {\n  one: 1, # first\n  two: 2,\n  # before three\n  three: [\n    x, # x\n    y\n  ],\n}\n',
  'wide:     value   # far\n"quoted key":   1\nmulti: one\n  two\n  three # end\nquoted: "one\n  two"\nempty: {}\nnone: []\ndeep: {a: {b: {c: [1, {d: 2}]}}}\n',
  'a:\n    b:\n        c: 1\n        # only c\n    d:\n        - 1\n\n        - 2\n\n\ne: 3\n# The end.\n',
];

const tray = readFileSync('methods/first-tray.yaml', 'utf8');
/** Some steps of a method of the house. */
const steps = (from: number, to: number) => {
  const starts = [...tray.matchAll(/^ {2}[a-z-]+:\n/gm)]
    .map(({ index }) => index)
    .filter((at) => at > tray.indexOf('\nsteps:'));
  return `steps:\n${tray.slice(starts[from], starts[to])}`;
};
const texts = [...styles, steps(0, 2), steps(5, 7), steps(14, 16), tray.slice(0, tray.indexOf('materials:'))];

/** Every path of a record. */
function pathsOf(value: unknown, above: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) => {
    const path = [...above, Array.isArray(value) ? Number(name) : name];
    return [path, ...pathsOf(each, path)];
  });
}
const at = (data: unknown, path: Path): unknown =>
  path.reduce((value, step) => (value as Record<string | number, unknown>)[step], data);
/** Data with the group or list at a path made anew. */
const within = (data: unknown, path: Path, change: (entries: [string, unknown][]) => [string, unknown][]): unknown => {
  const [step, ...rest] = path;
  if (step === undefined) {
    const entries = change(Object.entries(data as object));
    return Array.isArray(data) ? entries.map(([, value]) => value) : Object.fromEntries(entries);
  }
  const copy = structuredClone(data) as Record<string | number, unknown>;
  copy[step] = within(copy[step], rest, change);
  return copy;
};
const ordered = (value: unknown) => JSON.stringify(value);
const commentsOf = (text: string): string[] => {
  const comments: string[] = [];
  let scalar = false;
  for (const token of new Lexer().lex(text)) {
    if (token === '\x1f') scalar = true;
    else {
      if (!scalar && token.startsWith('#')) comments.push(token.trimEnd());
      scalar = false;
    }
  }
  // What the marks of texts in lines have behind them is told with the mark.
  return [
    ...comments,
    ...[...text.matchAll(/[|>][+\-\d]*[ \t]+(#[^\r\n]*)/g)].map((found) => found[1]?.trimEnd() ?? ''),
  ];
};

const odd = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc
    .array(
      fc.constantFrom(
        'a',
        ' ',
        '\n',
        ': ',
        ' #',
        '- ',
        '"',
        "'",
        '{',
        '}',
        '[',
        ']',
        ',',
        '|',
        '>',
        '%',
        '@',
        '`',
        '&x',
        '*x',
        '!',
        '---',
        '...',
        '\t',
        '\\',
        '0',
        '~',
        '?',
        '\u2028',
        '\ufeff',
        '\ud800',
        '\u0000',
        '\r',
      ),
      { maxLength: 8 },
    )
    .map((parts) => parts.join('')),
  fc.constantFrom(
    '',
    'null',
    'true',
    '1',
    '1e3',
    '.5',
    '0x1f',
    '2027-01-12',
    '2:1',
    'One line.',
    'Two\nlines.\n',
    '{/parameters/length} long',
    ' leading',
    'trailing ',
    '\n',
    'a\n\n\n',
    '  two\n first',
  ),
);
const scalar = fc.oneof(
  { weight: 4, arbitrary: odd },
  { weight: 1, arbitrary: fc.integer({ min: -1000, max: 1000 }) },
  { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  { weight: 1, arbitrary: fc.constantFrom(true, false, null) },
);
const name = fc.oneof(
  fc.constantFrom('fresh', 'new-name', 'x1'),
  odd.filter((text) => text !== '' && !/^(<<|__proto__|\d+)$/.test(text)),
);
const value = fc.oneof(
  { weight: 4, arbitrary: scalar },
  { weight: 1, arbitrary: fc.array(scalar, { maxLength: 3 }) },
  { weight: 1, arbitrary: fc.dictionary(name, scalar, { maxKeys: 3 }) },
);
const text = fc
  .tuple(fc.constantFrom(...texts), fc.boolean())
  .map(([each, windows]) => (windows ? each.replaceAll('\n', '\r\n') : each));
const runs = Number(process.env.KERF_EDITS ?? 200);
const seed = Number(process.env.KERF_SEED ?? 1);

/** Do an edit and hold it to what was wanted; gives the text after it. */
function done(before: string, splices: readonly Splice[] | undefined, wanted: unknown): string {
  if (splices === undefined) throw new Error('the edit was refused');
  const after = applySplices(before, splices);
  expect(ordered(dataOf(after))).toBe(ordered(wanted));
  return after;
}

/** From where to where an entry stands, in whole lines. */
function linesOf(source: string, path: Path): [number, number] {
  let node: unknown = read(source).contents;
  let [from, to] = [0, source.length];
  for (const step of path) {
    const item: unknown = isMap(node)
      ? node.items.find(({ key }) => String(key) === step)
      : isSeq(node)
        ? node.items[step as number]
        : undefined;
    const first = isPair(item) ? (item.key as Node) : (item as Node);
    node = isPair(item) ? item.value : item;
    const range = first.range ?? [0, 0, 0];
    const end = (node as Node | null)?.range ?? range;
    [from, to] = [range[0], Math.max(end[2], range[2])];
  }
  // A part of a list may begin below its dash.
  const dash = typeof path.at(-1) === 'number' ? source.lastIndexOf('-', from) : from;
  const start = source.lastIndexOf('\n', dash - 1) + 1;
  const feed = source.indexOf('\n', Math.max(0, to - 1));
  return [start, feed < 0 ? source.length : feed + 1];
}

const chosen = (paths: Path[], number: number) => paths[number % paths.length] as Path;

describe('a value that is set', () => {
  test('anywhere: the text reads as is wanted, comments stay, and nothing outside its lines changes', () => {
    fc.assert(
      fc.property(text, fc.nat(), value, (before, number, set) => {
        const data = dataOf(before);
        const path = chosen(pathsOf(data), number);
        const old = at(data, path);
        const name = path.at(-1);
        const wanted = within(data, path.slice(0, -1), (entries) =>
          entries.map(([each, now]) => (each === String(name) ? [each, set] : [each, now])),
        );
        const splices = setValue(before, path, set);
        const after = done(before, splices, wanted);
        const [from, to] = linesOf(before, path);
        for (const splice of splices ?? []) {
          expect(splice.from).toBeGreaterThanOrEqual(from);
          expect(splice.to).toBeLessThanOrEqual(to);
        }
        if (typeof old !== 'object' || old === null)
          expect(commentsOf(after).sort()).toEqual(expect.arrayContaining(commentsOf(before)));
      }),
      { numRuns: runs, seed },
    );
  });

  test('to what it is already, nothing changes', () => {
    for (const source of texts)
      for (const path of pathsOf(dataOf(source))) {
        const now = at(dataOf(source), path);
        if (typeof now === 'object') continue;
        const after = applySplices(source, setValue(source, path, now) ?? [{ from: 0, to: 0, insert: 'refused' }]);
        expect(dataOf(after)).toEqual(dataOf(source));
        if (typeof now === 'string' && !/[>]/.test(source)) expect(after.length).toBeLessThanOrEqual(source.length + 8);
      }
  });
});

describe('an entry', () => {
  test('that is added stands where it was wanted', () => {
    fc.assert(
      fc.property(text, fc.nat(), name, value, fc.nat({ max: 6 }), (before, number, fresh, set, place) => {
        const data = dataOf(before);
        const groups = [[], ...pathsOf(data)].filter(
          (path) => typeof at(data, path) === 'object' && at(data, path) !== null,
        );
        const path = chosen(groups, number);
        const group = at(data, path) as object;
        fc.pre(Array.isArray(group) || !Object.hasOwn(group, fresh));
        const where = Math.min(place, Object.keys(group).length);
        const wanted = within(data, path, (entries) => [
          ...entries.slice(0, where),
          [fresh, set],
          ...entries.slice(where),
        ]);
        const after = done(
          before,
          addEntry(before, path, Array.isArray(group) ? undefined : fresh, set, place),
          wanted,
        );
        expect(commentsOf(after)).toEqual(expect.arrayContaining(commentsOf(before)));
      }),
      { numRuns: runs, seed },
    );
  });

  test('that is taken out takes its own comments and no others', () => {
    fc.assert(
      fc.property(text, fc.nat(), (before, number) => {
        const data = dataOf(before);
        const path = chosen(pathsOf(data), number);
        const name = String(path.at(-1));
        const wanted = within(data, path.slice(0, -1), (entries) => entries.filter(([each]) => each !== name));
        const after = done(before, removeEntry(before, path), wanted);
        const [from, to] = linesOf(before, path);
        const above = /(?:(?<![^\n])[ \t]*#[^\n]*\n)*$/.exec(before.slice(0, from))?.[0] ?? '';
        const others = [...commentsOf(before.slice(0, from - above.length)), ...commentsOf(before.slice(to))];
        for (const comment of others) expect(after).toContain(comment);
      }),
      { numRuns: runs, seed },
    );
  });

  test('that is moved takes its comments along, and none is lost', () => {
    fc.assert(
      fc.property(text, fc.nat(), fc.nat(), (before, number, place) => {
        const data = dataOf(before);
        const path = chosen(pathsOf(data), number);
        const name = String(path.at(-1));
        const size = Object.keys(at(data, path.slice(0, -1)) as object).length;
        const to = place % size;
        const wanted = within(data, path.slice(0, -1), (entries) => {
          const own = entries.filter(([each]) => each === name);
          const rest = entries.filter(([each]) => each !== name);
          return [...rest.slice(0, to), ...own, ...rest.slice(to)];
        });
        const after = done(before, moveEntry(before, path, to), wanted);
        expect(commentsOf(after).sort()).toEqual(commentsOf(before).sort());
      }),
      { numRuns: runs, seed },
    );
  });
});
