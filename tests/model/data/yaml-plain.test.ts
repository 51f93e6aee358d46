import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseYaml, readYaml } from '../../../src/model/data/yaml.ts';
import { readPlainYaml } from '../../../src/model/data/yaml-plain.ts';
import { hostileTexts } from './hostile.ts';

const longest = 131_072;
const texts = ['methods', 'src/model/species/records', 'src/model/resin/records', 'src/model/finish/records'].flatMap(
  (folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.yaml'))
      .map((name) => ({ name: `${folder}/${name}`, text: readFileSync(`${folder}/${name}`, 'utf8') })),
);
const methods = texts.filter(({ name }) => name.startsWith('methods/'));

/** A text that is read without the parser is one that the parser reads too, and as the same. */
function expectAlike(text: string, name: string): boolean {
  const quick = readPlainYaml(text);
  if (quick === undefined) return false;
  const { data, problems } = parseYaml(text, name, longest);
  // What the guard refuses of a text is asked before it is read quickly.
  if (readYaml(text, name, longest).problems.length > 0) return false;
  expect({ problems, data }, `${name}\n${text}`).toStrictEqual({ problems: [], data: quick });
  return true;
}

describe('a text that is read without the parser', () => {
  test.each(methods)('$name is one', ({ text, name }) => {
    expect(expectAlike(text, name)).toBe(true);
  });

  test('is read as by the parser in every record', () => {
    const quick = texts.filter(({ text, name }) => expectAlike(text, name));
    expect(quick.length).toBeGreaterThan(texts.length / 2);
  });

  test('gives the places of the parser', () => {
    const { text, name } = methods.find(({ name: each }) =>
      each.endsWith('first-tray.yaml'),
    ) as (typeof methods)[number];
    const [quick, parsed] = [readYaml(text, name, longest), parseYaml(text, name, longest)];
    for (const path of [['title'], ['makes', 'pieces', 'default'], ['steps'], ['parameters', 'length', 'nothing']]) {
      expect(quick.places.spanOf(path)).toEqual(parsed.places.spanOf(path));
      expect(quick.positionOf(path)).toEqual(parsed.positionOf(path));
    }
    expect(quick.places.pathAt(400)).toEqual(parsed.places.pathAt(400));
    expect(quick.places.spanWithin(['about'], 3, 9)).toEqual(parsed.places.spanWithin(['about'], 3, 9));
  });

  test('is read alike however it was spoiled', () => {
    for (const [seed, { text, name }] of methods.entries()) {
      const begun = text.split('\n').slice(0, 60).join('\n');
      for (const spoiled of hostileTexts(`${begun}\n`, seed))
        if (spoiled.text.length < 20_000) expectAlike(spoiled.text, `${name} ${spoiled.name}`);
    }
  });

  /** Stretches that mean something in YAML, to be put anywhere. */
  const pieces = [
    ' ',
    '  ',
    '\n',
    '\n\n',
    '\n ',
    '\n  ',
    ': ',
    ':',
    ', ',
    ',',
    '- ',
    '-',
    '#',
    ' # ',
    '"',
    "'",
    '[',
    ']',
    '{',
    '}',
    '|',
    '|-',
  ]
    .concat([
      '>',
      '&a',
      '*a',
      '!!int ',
      '? ',
      '~',
      'null',
      'true',
      'True',
      'yes',
      '0',
      '-0',
      '007',
      '1.50',
      '.5',
      '5.',
      '1e3',
      '0x1f',
      '0o7',
    ])
    .concat([
      '.inf',
      '%',
      '@',
      '`',
      '\\',
      '---\n',
      '...\n',
      '\t',
      '\r\n',
      '\u00a0',
      '\ufeff',
      'é',
      '“',
      '__proto__: 1\n',
      'constructor: 1\n',
    ])
    .concat([
      'a: 1\n',
      'a:\n',
      '  {\n    b: c,\n  }\n',
      '  [\n',
      '],\n',
      '- a: 1\n',
      '  b: {c: 1, d: [x, "y, z"]}\n',
      'long: |\n  one\n\n  two\n',
      '<<: 1\n',
    ]);

  test('is read alike wherever a sign was put in, taken out or exchanged', () => {
    const small = texts.map(({ text }) => text.split('\n').slice(0, 25).join('\n').slice(0, 900).concat('\n'));
    let quick = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...small),
        fc.array(fc.tuple(fc.nat(), fc.nat(3), fc.constantFrom(...pieces)), { minLength: 1, maxLength: 4 }),
        (text, edits) => {
          let edited = text;
          for (const [place, taken, piece] of edits) {
            const at = place % (edited.length + 1);
            edited = edited.slice(0, at) + piece + edited.slice(at + taken);
          }
          if (expectAlike(edited, 'edited.yaml')) quick += 1;
        },
      ),
      { numRuns: Number(process.env.KERF_EDITS ?? 3000) },
    );
    expect(quick).toBeGreaterThan(100);
  });

  test('is read alike where it is made of such signs alone', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', 'b', '1', ...pieces), { minLength: 1, maxLength: 14 }), (parts) => {
        expectAlike(`${parts.join('')}\n`, 'made.yaml');
      }),
      { numRuns: Number(process.env.KERF_EDITS ?? 3000) },
    );
  });
});
