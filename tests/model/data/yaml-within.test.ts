import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Document, Scalar } from 'yaml';
import { readYaml } from '../../../src/model/data/yaml.ts';

const styles = ['PLAIN', 'QUOTE_SINGLE', 'QUOTE_DOUBLE', 'BLOCK_LITERAL', 'BLOCK_FOLDED'] as const;

test.each(styles)('every character with ink of a text that is written as %s has its place in the file', (type) => {
  const words = fc.array(fc.stringMatching(/^[a-z'"\\{}<>/éß🪵-]{1,9}$/u), { minLength: 1, maxLength: 30 });
  const breaks = fc.constantFrom(' ', ' ', ' ', '\n', '\n\n', '  ');
  fc.assert(
    fc.property(words, breaks, (parts, between) => {
      const value = parts.join(between);
      const scalar = new Scalar(value);
      scalar.type = type;
      const document = new Document({ before: 1, text: { inner: 'x' }, behind: [1] });
      document.setIn(['text', 'inner'], scalar);
      const text = document.toString({ lineWidth: 40 });
      const { data, places } = readYaml(text, 'f');
      fc.pre((data as { text?: { inner?: unknown } } | undefined)?.text?.inner === value);
      const wrong = [...value.matchAll(/\S/g)].filter(({ 0: character, index }) => {
        const { from } = places.spanWithin(['text', 'inner'], index, index + 1);
        return text[from] !== character && text[from] !== '\\';
      });
      expect(wrong).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

describe('a stretch of a text', () => {
  test.each([
    ['plain', 'a: Pour {/b} now\n', 'Pour ', '{/b}', 1, 9],
    ['in quotes', 'a: "Pour \\"x\\" {/b}"\n', 'Pour "x" ', '{/b}', 1, 16],
    ['in single quotes', "a: 'it''s {/b}'\n", "it's ", '{/b}', 1, 11],
    ['over several lines', 'a: Pour\n  slowly\n  to {/b}\n', 'Pour slowly to ', '{/b}', 3, 6],
    ['of a block', 'a: |\n  Pour\n\n  to {/b}\n', 'Pour\n\nto ', '{/b}', 4, 6],
    ['of a folded block', 'a: >-\n  Pour\n  to {/b}\n', 'Pour to ', '{/b}', 3, 6],
    ['by an escape', 'a: "1\\n2\\u0041{/b}"\n', '1\n2A', '{/b}', 1, 15],
  ])('%s', (_what, text, before, part, line, column) => {
    const { data, places } = readYaml(text, 'f');
    expect((data as { a: string }).a).toContain(before + part);
    const span = places.spanWithin(['a'], before.length, before.length + part.length);
    expect(text.slice(span.from, span.to)).toBe(part);
    expect(span).toMatchObject({ line, column, endLine: line, endColumn: column + part.length });
  });

  test('of what is no text is all of it', () => {
    const { places } = readYaml('a: 12\nb: [1]\n', 'f');
    expect(places.spanWithin(['a'], 1, 2)).toEqual(places.spanOf(['a']));
    expect(places.spanWithin(['b'], 0, 1)).toEqual(places.spanOf(['b']));
  });
});
