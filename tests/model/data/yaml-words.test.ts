import { describe, expect, test } from 'vitest';
import { problemLine } from '../../../src/model/data/problem.ts';
import { readYaml } from '../../../src/model/data/yaml.ts';

const told = (text: string) => readYaml(text, 'f').problems.map(problemLine);

describe('what cannot be read is told where it stands, with a way out', () => {
  test.each([
    [
      'a quote left open',
      'a: "b\nc: 1\n',
      ['f:1:4 the quote " that opens here is not closed. Write " at the end of the text.'],
    ],
    [
      'a second colon',
      'a: Mind this: hot\n',
      [
        'f:1:4 a second colon with a space behind it stands in this line: “Mind this: hot”. Where it belongs to the text, put the whole text in double quotes; else write the name on a line of its own.',
      ],
    ],
    [
      'no colon',
      'a: 1\nkind hardwood\nb: 1\n',
      [
        'f:2:1 “kind hardwood” has no colon. Write a name, a colon, a space and the value; where it goes on from the line above, indent it further than that line.',
      ],
    ],
    [
      'no colon in the last line',
      'a: 1\nkind hardwood\n',
      [
        'f:2:1 “kind hardwood” has no colon. Write a name, a colon, a space and the value; where it goes on from the line above, indent it further than that line.',
      ],
    ],
    [
      'no space behind the colon',
      'a:1\nb: 2\n',
      ['f:1:1 there is no space behind “a:”. Write the name, a colon, a space and the value.'],
    ],
    [
      'a line too far right',
      'a: text\n  b: 3\n',
      [
        'f:2:3 this line is indented as if it belonged to “text” above it, which is a value already. Give it as many spaces as the lines beside it; where it goes on with that text, put the whole text in double quotes.',
      ],
    ],
    [
      'a line too far left',
      'a:\n    b: 1\n  c: 2\n',
      [
        'f:3:1 this line does not stand below the names that it belongs to. Give it as many spaces as they have, or two more than the name that it is part of.',
      ],
    ],
    [
      'the first line of a group too far left',
      'a:\n b: 1\n  c: 2\n  d: 3\n',
      ['f:2:2 this line begins its group with 1 space, and the lines below it have 2. Give it 2 too.'],
    ],
    [
      'the first line of a group too far right',
      'a:\n   b: 1\n  c: 2\n  d: 3\n',
      ['f:2:4 this line begins its group with 3 spaces, and the lines below it have 2. Give it 2 too.'],
    ],
    [
      'a dash too far left',
      'a:\n  - 1\n - 2\n',
      [
        'f:3:1 this line of a list does not stand below the others. Give each “- ” of one list the same number of spaces.',
      ],
    ],
    [
      'a list left open',
      'a: [1, 2\nb: 3\n',
      [
        'f:1:4 the list that opens here with [ is never closed. Write ] behind its last part; a text that begins with [ stands in quotes.',
      ],
    ],
    [
      'a list closed too far left',
      'a:\n  [1,\n2]\n',
      [
        'f:2:3 the list that opens here with [ is not closed before a line that starts further left. Write ] behind its last part, or indent its lines; a text that begins with [ stands in quotes.',
      ],
    ],
    [
      'a comma forgotten',
      'a: ["b" "c"]\n',
      ['f:1:9 a comma is missing before this part. Write one between two parts of a list or group in brackets.'],
    ],
    [
      'a comma too many',
      'a: [1,,2]\n',
      ['f:1:7 a comma is missing or too many in this list or group. Put one comma between two parts.'],
    ],
    [
      'words behind a quote',
      'a: "b" c\n',
      [
        'f:1:8 this stands behind a value that is already closed. Remove it; if all of it is one text, put the whole text in double quotes.',
      ],
    ],
    [
      'a line end lost before a dash',
      'a:\n  - "b"    - c\n',
      [
        'f:2:12 this stands behind what is already closed. Give it a name and a colon, or remove it; if all of it is one text, put the whole text in double quotes.',
      ],
    ],
    [
      'words below a list',
      '- a\n\nb\n',
      [
        'f:3:1 this stands behind what is already closed. Give it a name and a colon, or remove it; if all of it is one text, put the whole text in double quotes.',
      ],
    ],
    [
      'a field behind a start mark',
      '--- a: 1\n',
      ['f:1:5 behind --- nothing may stand in the same line. Begin in the next line.'],
    ],
    [
      'a sign that no text begins with',
      'a: @b\n',
      ['f:1:4 a text cannot begin with @ here. If it belongs to the text, put the whole text in double quotes.'],
    ],
    [
      'a backslash',
      'a: "\\q"\n',
      [
        'f:1:5 behind a backslash in double quotes only some letters mean something, as n for a new line. Write the backslash twice, or use single quotes.',
      ],
    ],
    [
      'words behind a bar',
      'a: | b\n  c\n',
      [
        'f:1:6 behind | or > nothing may stand in the same line. Begin the text in the next line, indented by two spaces more.',
      ],
    ],
    [
      'no space before #',
      'a: "b"#c\n',
      ['f:1:7 a space is missing before #. Add it, or put a text that holds # in double quotes.'],
    ],
    [
      'tabs, each of them',
      'a:\n\tb: 1\n\tc: 2\n',
      [
        'f:2:1 the line is indented with a tab. Indent by two spaces a level.',
        'f:3:1 the line is indented with a tab. Indent by two spaces a level.',
      ],
    ],
    [
      'a carriage return alone',
      'a: 1\rb: 2\n',
      ['f:1:5 a line ends with a carriage return alone (U+000D). Press Enter in its place.'],
    ],
    [
      'a null character',
      'a: b\0\n',
      ['f:1:5 a character stands here that cannot be seen or printed (U+0000). Remove it.'],
    ],
    [
      'a null character by escape',
      'a: "b\\0"\n',
      ['f:1:4 a: in this text a character stands here that cannot be seen or printed (U+0000). Remove it.'],
    ],
    [
      'a second record',
      'a: 1\n---\nb: 2\n',
      [
        'f:2:1 a second record begins here. Keep one in a file: remove the line --- or ..., or move what follows to a file of its own.',
      ],
    ],
    [
      'every anchor and alias',
      'a: &x 1\nb: *x\nc: *x\n',
      [
        'f:1:4 & marks a place to be repeated elsewhere, which no record needs. Remove the mark; a text that begins with & stands in quotes.',
        'f:2:4 * repeats what stands elsewhere, which no record needs. Write it out here; a text that begins with * stands in quotes.',
        'f:3:4 * repeats what stands elsewhere, which no record needs. Write it out here; a text that begins with * stands in quotes.',
      ],
    ],
    [
      'a name three times',
      'a: 1\nb:\n  c: 1\n  c: 2\na: 2\na: 3\n',
      [
        'f:4:3 b.c: “c” stands twice: here, and first at line 3, column 3. Keep one of them.',
        'f:5:1 a: “a” stands twice: here, and first at line 1, column 1. Keep one of them.',
        'f:6:1 a: “a” stands twice: here, and first at line 1, column 1. Keep one of them.',
      ],
    ],
    [
      'a name of the language',
      'a:\n  - __proto__: 1\n',
      ['f:2:5 a.0.__proto__: “__proto__” cannot be the name of a field. Write another name.'],
    ],
    [
      'a merge key',
      '<<: 1\n',
      ['f:1:1 <<: “<<” would draw in what stands elsewhere. Write the fields out here, each “name: value”.'],
    ],
    [
      'a directive',
      '%YAML 1.1\n---\na: yes\n',
      [
        'f:1:1 a line that begins with % changes how the file is read, which no record needs. Remove it; a text that begins with % stands in quotes.',
      ],
    ],
    ['nothing', '# soon\n', ['f:1:1 the file holds nothing yet. Write its first field, “name: value”.']],
  ])('%s', (_what, text, expected) => {
    expect(told(text)).toEqual(expected);
    expect(readYaml(text, 'f').data).toBeUndefined();
  });

  test('no more than twenty at once', () => {
    expect(told('a: *b\n'.repeat(50))).toHaveLength(20);
  });

  test('a text that is longer than the limit, which may be set', () => {
    expect(told(`a: ${'b'.repeat(70_000)}`)).toEqual([
      'f:1:65537 the text is 70,003 characters long, and 65,536 are read at most. Divide it, or cut it down.',
    ]);
    expect(readYaml(`a: ${'b'.repeat(70_000)}`, 'f', 100_000).problems).toEqual([]);
  });

  test('what looks like it and may stand', () => {
    const text =
      'a: "& [ { * ! % \\t"\nb: it\'s [half # open\nc: |\n  [[[ "\n  \t- & *\nd: [\n    "e", # ]\n    {f: g}\n  ]\n"h": 1 # "\n';
    expect(readYaml(text, 'f')).toMatchObject({
      problems: [],
      data: { a: '& [ { * ! % \t', b: "it's [half", c: '[[[ "\n\t- & *\n', d: ['e', { f: 'g' }], h: 1 },
    });
  });
});
