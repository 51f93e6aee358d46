import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readYaml } from '../../../src/model/data/yaml.ts';
import { root } from '../../../src/store/index.ts';

type Path = (string | number)[];

/** Every path of a data structure. */
function pathsOf(data: unknown, above: Path = []): Path[] {
  if (Array.isArray(data)) return [above, ...data.flatMap((each, at) => pathsOf(each, [...above, at]))];
  if (typeof data !== 'object' || data === null) return [above];
  return [above, ...Object.entries(data).flatMap(([name, each]) => pathsOf(each, [...above, name]))];
}

const valueAt = (data: unknown, path: Path): unknown =>
  path.reduce<unknown>((value, step) => (value as Record<string | number, unknown>)[step], data);

const records = ['species/records/sugar-maple', 'finish/records/film-epoxy', 'resin/records/medium-2-1'].map((name) => [
  name,
  readFileSync(join(root, 'src/model', `${name}.yaml`), 'utf8'),
]) as [string, string][];

describe.each([
  ...records,
  ...records.map(([name, text]) => [`${name} from Windows`, `\ufeff${text.replaceAll('\n', '\r\n')}`]),
])('every path of %s', (_name, text = '') => {
  const { data, places } = readYaml(text, 'f');
  const paths = pathsOf(data);

  test('has the stretch of its value, which reads as that value', () => {
    expect(paths.length).toBeGreaterThan(20);
    for (const path of paths) {
      const { from, to, line, column } = places.spanOf(path);
      const value = valueAt(data, path);
      const before = text
        .slice(0, from)
        .replace(/^\ufeff/, '')
        .split('\n');
      expect([line, column]).toEqual([before.length, (before.at(-1) ?? '').length + 1]);
      // Lines of a group keep their indent when they stand alone.
      const alone = typeof value === 'object' ? ' '.repeat(column - 1) + text.slice(from, to) : text.slice(from, to);
      expect(parse(alone)).toEqual(value);
    }
  });

  test('has the stretch of its name', () => {
    for (const path of paths.filter((each) => typeof each.at(-1) === 'string')) {
      const { from, to } = places.spanOf(path, 'key');
      expect(text.slice(from, to)).toBe(path.at(-1));
      expect(places.pathAt(from)).toEqual({ path, part: 'key' });
      expect(places.pathAt(to)).toEqual({ path, part: 'key' });
    }
  });

  test('is found again at both ends and in the middle of its value', () => {
    for (const path of paths.filter((each) => typeof valueAt(data, each) !== 'object')) {
      const { from, to } = places.spanOf(path);
      for (const offset of [from, Math.floor((from + to) / 2), to])
        expect(places.pathAt(offset)).toEqual({ path, part: 'value' });
    }
  });
});

describe('places of a small text', () => {
  const text = 'a: 1 # c\nb:\n  - x\n  - y: 2\n    z: "q"  # d\n\n# e\nc: |\n  text\n  more\n\nh:\nd: { e: 1 }\n';
  const { places } = readYaml(text, 'f');
  test.each([
    ['a group of lines without what stands behind it', ['b'], 'value', '- x\n  - y: 2\n    z: "q"'],
    ['a block of text', ['c'], 'value', '|\n  text\n  more'],
    ['an empty value, behind its colon', ['h'], 'value', ''],
    ['what is missing in a group that has a name: the name', ['d', 'f'], 'value', 'd'],
    ['what is missing in a part of a list: its first line', ['b', 1, 'w'], 'value', 'y: 2'],
    ['what is missing at the head: the first line', ['w'], 'value', 'a: 1 # c'],
  ] as const)('%s', (_what, path, part, expected) => {
    const { from, to } = places.spanOf(path, part);
    expect(text.slice(from, to)).toBe(expected);
  });

  test('the end of a stretch is the place just behind it', () => {
    expect(places.spanOf(['b'])).toMatchObject({ line: 3, column: 3, endLine: 5, endColumn: 11 });
  });

  test.each([
    ['the colon', text.indexOf(': 1 # c') + 1, { path: ['a'], part: 'value' }],
    ['a comment behind all', text.indexOf('# e') + 1, { path: [], part: 'value' }],
    ['a dash', text.indexOf('- x'), { path: ['b'], part: 'value' }],
    ['behind an empty value', text.indexOf('h:') + 2, { path: ['h'], part: 'value' }],
  ])('what stands at %s', (_what, offset, expected) => {
    expect(places.pathAt(offset)).toEqual(expected);
  });

  test('of a text that is broken further down', () => {
    const broken = readYaml('a: 1\nb: "x" y: z: 1\nc d\n', 'f');
    expect(broken.data).toBeUndefined();
    expect(broken.problems[0]).toMatchObject({ line: 2 });
    const recovered = readYaml('a: 1\nb: c: d\n', 'f');
    expect(recovered.places.spanOf(['a'])).toMatchObject({ line: 1, column: 4 });
  });
});
