import { describe, expect, test } from 'vitest';
import { type Block, type Inline, longestText, readText } from '../../src/method/text.ts';
import { plainText } from '../../src/method/text-plain.ts';
import { readWritten } from '../../src/method/text-quantity.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const parts = (source: string): Inline[] => {
  const { blocks, faults } = readText(source);
  expect(faults).toEqual([]);
  return blocks.flatMap((block) => (block.kind === 'paragraph' ? block.parts : []));
};
const words = (text: string): Inline => ({ kind: 'text', text });

/** Every address that a tree leads to. */
function addresses(blocks: readonly Block[]): string[] {
  const inside = (inlines: readonly Inline[]): string[] =>
    inlines.flatMap((inline) => [
      ...(inline.kind === 'link' ? [inline.href] : []),
      ...('parts' in inline ? inside(inline.parts) : []),
    ]);
  return blocks.flatMap((block) => (block.kind === 'paragraph' ? inside(block.parts) : block.items.flatMap(addresses)));
}

describe('what a text may hold', () => {
  test('paragraphs, lists in lists, emphasis, code, a new line', () => {
    expect(
      readText('Pour **slowly** and *low*,\\\nsee `A`.\n\n- one\n- two\n  1. first\n  2. second\n\n3. third').blocks,
    ).toEqual([
      {
        kind: 'paragraph',
        parts: [
          words('Pour '),
          { kind: 'strong', parts: [words('slowly')] },
          words(' and '),
          { kind: 'emphasis', parts: [words('low')] },
          words(','),
          { kind: 'break' },
          words('see '),
          { kind: 'code', text: 'A' },
          words('.'),
        ],
      },
      {
        kind: 'list',
        items: [
          [{ kind: 'paragraph', parts: [words('one')] }],
          [
            { kind: 'paragraph', parts: [words('two')] },
            {
              kind: 'list',
              start: 1,
              items: [
                [{ kind: 'paragraph', parts: [words('first')] }],
                [{ kind: 'paragraph', parts: [words('second')] }],
              ],
            },
          ],
        ],
      },
      { kind: 'list', start: 3, items: [[{ kind: 'paragraph', parts: [words('third')] }]] },
    ]);
  });

  test.each([
    'https://example.org/a?b=c#d',
    'HTTPS://example.org',
    'mailto:teacher@example.org',
    '#step-2',
    '/how-to/pour',
    '/',
  ])('a link to %s', (href) => {
    expect(parts(`[there](${href})`)).toEqual([{ kind: 'link', href, parts: [words('there')] }]);
  });

  test.each([
    ['entities stay as they were typed', '5 &lt; 6 &amp; &copy;', '5 &lt; 6 &amp; &copy;'],
    ['less than, before a space or a figure', 'a < b, <5 mm, 3 <= 4', 'a < b, <5 mm, 3 <= 4'],
    ['an escaped mark', 'a \\<b> \\{c\\}', 'a <b> {c}'],
    ['letters of two units', 'wood 🪵 é', 'wood 🪵 é'],
    ['asterisks between figures', '3 * 4 * 5', '3 * 4 * 5'],
    ['underscores in a name', 'snake_case_name', 'snake_case_name'],
    ['a link that is defined elsewhere', '[a][b]', '[a][b]'],
    ['a bare address', 'https://example.org', 'https://example.org'],
    ['what looks like a table', '| a |', '| a |'],
    ['four spaces before a line', '    saw', 'saw'],
  ])('%s', (_what, source, expected) => {
    expect(
      parts(source)
        .map((part) => ('text' in part ? part.text : part.kind))
        .join('')
        .trim(),
    ).toBe(expected);
  });
});

test('a text without its marks', () => {
  const source = 'Pour **{/a}** [here](/x).\\\nWait.\n\n1. one\n2. two\n   - *deep*\n\n   more\n\n`end`';
  expect(plainText(readText(source).blocks, (pointer) => `<${pointer}>`)).toBe(
    'Pour </a> here (/x).\nWait.\n\n1. one\n2. two\n  - deep\n  more\n\nend',
  );
});

describe('references', () => {
  test('stand in the tree with their place, whatever marks they hold', () => {
    const source = 'Pour **{/calculations/a_b_c/figures/*x*}** and wait *{/makes/pieces}*, {/b~1c}.\n\n- [{/d}](/x)';
    const { pointers } = readText(source);
    expect(pointers.map(({ pointer }) => pointer)).toEqual([
      '/calculations/a_b_c/figures/*x*',
      '/makes/pieces',
      '/b~1c',
      '/d',
    ]);
    for (const { pointer, from, to } of pointers) expect(source.slice(from, to)).toBe(`{${pointer}}`);
    expect(parts(source)).toContainEqual({
      kind: 'strong',
      parts: [{ kind: 'pointer', pointer: '/calculations/a_b_c/figures/*x*', from: 7, to: 40 }],
    });
  });

  test.each([
    ['a quantity in two braces', 'a {{20 cm}} c', 2, /two braces open here/],
    ['two braces', 'a {{/b}} c', 2, /two braces open here/],
    ['no closing brace', 'a {/b c', 2, /not closed in its line/],
    ['a closing brace in the next line', 'a {/b\nc}', 2, /not closed in its line/],
    ['a brace inside', 'a {/b{/c}', 2, /not closed/],
    ['a closing brace alone', 'a b}', 3, /was not opened/],
    ['words in braces', 'a {b c} d', 2, /“\{b c\}” is no reference/],
    ['a reference without its slash', 'a {parameters/depth}', 2, /is no reference/],
    ['nothing in braces', 'a {}', 2, /is no reference/],
    ['a space inside', 'a {/b c}', 5, /a space stands inside/],
    ['a tilde alone', 'a {/b~c}', 5, /~ is written ~0/],
    ['between backquotes', 'a **{/x}** `{/b}`', 11, /between backquotes/],
    ['in an address', 'a {/x} [c](/d/{/b})', 7, /in the address of a link/],
  ])('%s', (_what, source, from, message) => {
    const { blocks, faults } = readText(source);
    expect(faults[0]).toMatchObject({ from, message: expect.stringMatching(message) });
    expect(blocks).toEqual([]);
  });
});

/** A written quantity as a reader of either system sees it. */
const shown = (text: string): string[] => {
  const read = readWritten(text);
  if (!read.ok) return [`${read.problem}. ${read.wayOut}`];
  return (['metric', 'inch'] as const).map((system) =>
    inReaderUnits(read.value.marked, { ...defaultUnits, system, inches: 'thirty-seconds' }),
  );
};

describe('quantities in braces', () => {
  test('stand in the tree with their place, whatever stands about them', () => {
    const source = 'Hold it **{20 cm}** off, at {35 °C}, *{1/8 in}* or [{3 mm}](/x).';
    expect(parts(source)).toContainEqual({
      kind: 'strong',
      parts: [{ kind: 'quantity', text: '20 cm', marked: '⟦200 mm 1⟧', from: 10, to: 17 }],
    });
    expect(readText(source).pointers).toEqual([]);
    const plain = plainText(readText(source).blocks, () => '?');
    expect(inReaderUnits(plain, defaultUnits)).toBe('Hold it 200 mm off, at 35 °C, 3.2 mm or 3 mm (/x).');
    expect(inReaderUnits(plain, { ...defaultUnits, system: 'inch' })).toBe(
      'Hold it 8 in off, at 95 °F, 1/8 in or 1/8 in (/x).',
    );
  });

  test('a reference behind one keeps its place', () => {
    const source = 'a {20 cm} {/b} # {/c';
    expect(readText(source).faults[0]?.from).toBe(source.lastIndexOf('{'));
    expect(readText('a {20 cm} {/b}').pointers).toEqual([{ pointer: '/b', from: 10, to: 14 }]);
  });

  // An inch is 25.4 mm exactly, a pound 453.59237 g, a US fluid ounce 29.5735 ml, °F = 1.8 °C + 32 (NIST SP 811, appendix B.8).
  test.each([
    ['200 mm', '200 mm', '7 7/8 in'],
    ['20 cm', '200 mm', '8 in'],
    ['25 cm', '250 mm', '9 3/4 in'],
    ['3 mm', '3 mm', '1/8 in'],
    ['0.5 mm', '0.5 mm', '1/64 in'],
    ['1/8 in', '3.2 mm', '1/8 in'],
    ['½ in', '13 mm', '1/2 in'],
    ['1 in', '25 mm', '1 in'],
    ['8 in', '203 mm', '8 in'],
    ['9 7/8 in', '251 mm', '9 7/8 in'],
    ['6 ft', '1830 mm', '72 in'],
    ['35 °C', '35 °C', '95 °F'],
    ['-5 °C', '−5 °C', '23 °F'],
    ['95 °F', '35 °C', '95 °F'],
    ['70 °F', '21 °C', '70 °F'],
    ['10 K', '10 °C', '18 °F'],
    ['100 g', '100 g', '3.53 oz'],
    ['5 kg', '5 kg', '11 lb'],
    ['20 ml', '20 ml', '0.68 fl oz'],
    ['75 min', '1.25 h', '1.25 h'],
    ['0.2 %', '0.2 %', '0.2 %'],
  ])('%s to both readers', (text, metric, inch) => {
    expect(shown(text)).toEqual([metric, inch]);
  });

  test.each([
    ['a number alone', 'a {20} b', 2, 6, /“20” has no unit. Write its unit behind it/],
    [
      'a unit that nobody knows',
      'a {20 blobs} b',
      2,
      12,
      /“\{20 blobs\}”: .*is not a unit.*Write a number and its unit/,
    ],
    ['no number', 'a {cm} b', 2, 6, /no reference and no quantity/],
    ['two of them', 'a {3 to 5 mm} b', 2, 13, /more than one quantity. Give each its own braces/],
    ['two measures', 'a {200 × 100 mm} b', 2, 16, /more than one quantity/],
    ['a degree without a scale', 'a {20°} b', 2, 7, /neither °C nor °F/],
    ['a number read two ways', 'a {1,250 mm} b', 2, 12, /can mean 1.250 or 1250/],
    ['a fraction by zero', 'a {1/0 in} b', 2, 10, /divides by zero/],
    ['too long', `a {${'1'.repeat(61)} mm} b`, 2, 68, /too long for a quantity/],
    ['a difference as a temperature', 'It warms by {10 °C}.', 12, 19, /Write it in K, \{10 K\}/],
    ['the same behind it', 'At {10 °C} warmer it cures.', 3, 10, /Write it in K/],
    ['between backquotes', 'a `{20 cm}`', 2, 11, /between backquotes/],
  ])('%s is refused at its place', (_what, source, from, to, message) => {
    const { blocks, faults } = readText(source);
    expect(faults[0]).toMatchObject({ from, to, message: expect.stringMatching(message) });
    expect(blocks).toEqual([]);
  });
});

describe('what a text may not hold is refused at its place, with a way out', () => {
  test.each([
    ['a heading', 'a\n\n# b', 3, /heading.*in bold/],
    ['a heading in a list', '- # b', 2, /heading/],
    ['a quotation', 'a\n\n> b', 3, /quotation/],
    ['a rule', 'a\n\n---\n\nb', 3, /rule across the page/],
    ['a block of code', 'a\n\n```\nb\n```', 3, /block of code/],
    ['a picture', 'a {/x} ![b](/c.png)', 7, /picture/],
    ['a tag', 'a <b>c</b>', 2, /“<b>” is a mark of web pages.*plain words/],
    ['a comment', 'a <!-- b -->', 2, /mark of web pages/],
    ['an address in pointed brackets', 'a <https://example.org>', 2, /mark of web pages/],
    ['half a character', 'a \ud83d', 2, /half a character/],
    ['a null character', 'a \0', 2, /cannot be seen/],
    ['a letter of one font', 'a \ue000', 2, /only one font/],
  ])('%s', (_what, source, from, message) => {
    expect(readText(source).faults[0]).toMatchObject({ from, message: expect.stringMatching(message) });
  });

  test('too much of it', () => {
    expect(readText('a'.repeat(longestText)).faults).toEqual([]);
    expect(readText('a'.repeat(longestText + 1)).faults).toEqual([
      {
        from: 4000,
        to: 4001,
        message: 'the text is 4001 characters long; it takes at most 4000. Make two steps of it.',
      },
    ]);
  });

  test('too deep', () => {
    const list = (depth: number) => Array.from({ length: depth }, (_each, at) => `${'  '.repeat(at)}- a\n`).join('');
    expect(readText(list(8)).faults).toEqual([]);
    expect(readText(list(30)).faults[0]?.message).toMatch(/more than 20 deep/);
  });
});

describe('what somebody means harm with leads nowhere', () => {
  test.each([
    '<script>alert(1)</script>',
    '<SCRIPT SRC=//evil.example></SCRIPT>',
    '<img src=x onerror=alert(1)>',
    '<img/src=x/onerror=alert(1)>',
    '<svg onload=alert(1)>',
    '<svg><script>alert(1)</script></svg>',
    '<iframe src="javascript:alert(1)"></iframe>',
    '<iframe srcdoc="<script>alert(1)</script>">',
    '<a href="javascript:alert(1)">a</a>',
    '<body onload=alert(1)>',
    '<style>@import "//evil.example";</style>',
    '<link rel=stylesheet href=//evil.example>',
    '<meta http-equiv=refresh content=0>',
    '<object data=x></object>',
    '<form action=//evil.example><input></form>',
    '<details open ontoggle=alert(1)>',
    '<math><mtext></mtext></math>',
    '<?php echo 1 ?>',
    '<![CDATA[<script>alert(1)</script>]]>',
    '<!--><script>alert(1)</script>-->',
    '<a\nhref=x>',
    '</p><script>',
    '**<script>**alert(1)**</script>**',
    '- <script>\n  alert(1)\n  </script>',
    '`<script>`',
    '[a](javascript:alert(1))',
    '[a](JaVaScRiPt:alert(1))',
    '[a](javascript&colon;alert(1))',
    '[a](&#106;avascript:alert(1))',
    '[a](<java\nscript:alert>)',
    '[a]( javascript:alert(1) )',
    '[a](data:text/html;base64,PHNjcmlwdD4=)',
    '[a](vbscript:msgbox)',
    '[a](file:///etc/passwd)',
    '[a](http://example.org)',
    '[a](//evil.example)',
    '[a](/\\evil.example)',
    '[a](\\\\evil.example)',
    '[a](https:evil)',
    '[a](https://good.example@evil.example)',
    '[a](https:\\\\evil.example)',
    '[a](mailto:a@b.example?bcc=c@d.example)',
    '[a](page)',
    '[a](../secret)',
    '![a](javascript:alert(1))',
    '![a](https://evil.example/count.png)',
    '[![a](https://evil.example/count.png)](https://good.example)',
    '[**[a](javascript:alert(1))**](https://good.example)',
    '<javascript:alert(1)>',
    '<https://evil.example>',
    '[a](https://good.example "<script>alert(1)</script>")',
    '{/x"><script>alert(1)</script>}',
    '{{constructor.constructor("alert(1)")()}}',
    '{javascript:alert(1)}',
  ])('%s', (source) => {
    const { blocks, faults } = readText(source);
    expect(addresses(blocks).filter((href) => !/^https:\/\/good\.example/.test(href))).toEqual([]);
    expect(faults.length).toBeGreaterThan(0);
    for (const { from, to } of faults) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeGreaterThanOrEqual(from);
      expect(to).toBeLessThanOrEqual(source.length);
    }
  });

  test.each([
    ['[a]: javascript:alert(1)\n\n[a]', []],
    ['&lt;script&gt;alert(1)&lt;/script&gt;', []],
    ['javascript:alert(1)', []],
    ['[a](java\tscript:alert(1))', []],
    ['https://evil.example', []],
    ['__proto__ {/__proto__/polluted}', []],
  ])('%s is words and no more', (source, expected) => {
    const { blocks, faults } = readText(source);
    expect(faults).toEqual([]);
    expect(addresses(blocks)).toEqual(expected);
  });

  // Marks that make a reader of Markdown slow or run out of room.
  test.each([
    '>',
    '_a* ',
    '*',
    '[',
    '![',
    '`',
    '- ',
    '**a',
    '[a](',
    '\\',
    '<',
    '(',
    '~',
    '1. ',
    '&',
    '* _ ',
    '\n- ',
    '  \n',
    '{/',
    '{/a}',
  ])('a field full of “%s”', (mark) => {
    const source = mark.repeat(Math.floor(longestText / mark.length));
    const { blocks, faults } = readText(source);
    expect(faults.length > 0 || blocks.length > 0 || source.trim() === '').toBe(true);
    expect(faults.length).toBeLessThanOrEqual(20);
  });
});
