import { describe, expect, test } from 'vitest';
import { defaultUnits, formatQuantity } from '../../src/model/quantity/index.ts';
import { inFahrenheit, inInches } from '../../src/site/mdx/inches.ts';
import { remarkInches, type TextTree } from '../../src/site/mdx/remark-inches.ts';

/** What a reader of inches reads of a paragraph. */
function read(text: string, type = 'paragraph'): string {
  const tree: TextTree = { type: 'root', children: [{ type, children: [{ type: 'text', value: text }] }] };
  remarkInches()(tree);
  const lengthOf = ({ attributes }: TextTree) => (attributes?.[0] as { value: string } | undefined)?.value ?? '';
  const words = (node: TextTree): string => {
    if (node.name === 'InInches') {
      const of = lengthOf(node);
      return ` (${of.endsWith('°C') ? inFahrenheit(of) : inInches(of)})`;
    }
    return node.value ?? (node.children ?? []).map(words).join('');
  };
  return words(tree);
}

describe('lengths of a page for a reader of inches', () => {
  // The inch is 25.4 mm by definition; each fraction is the nearest of its size, worked out by hand.
  test.each([
    ['22 mm', '7/8 in'],
    ['300 to 400 mm', '12 to 16 in'],
    ['6 to 80 mm', '1/4 to 3 1/8 in'],
    ['610 × 229 × 19 mm', '24 1/32 × 9 1/32 × 3/4 in'],
    ['1.5 mm', '1/16 in'],
    ['0.03 mm', '0.001 in'],
    ['1,200 mm', '47 1/4 in'],
    ['25.4 mm', '1 in'],
    ['420 × 220 × 19 mm', '16 17/32 × 8 21/32 × 3/4 in'],
    ['280 mm', '11 1/32 in'],
  ])('%s is %s', (mm, inches) => {
    expect(inInches(mm)).toBe(inches);
  });

  // 220 mm are 8.661 in: 8 21/32 is 8.656, 8 11/16 8.688, 8 42/64 is 8 21/32; a sixteenth of an inch is no step for 1 mm, which is 0.039 in.
  test.each([
    ['220 mm', 'sixteenths', '8 11/16 in'],
    ['220 mm', 'sixty-fourths', '8 21/32 in'],
    ['220 mm', 'decimal', '8.66 in'],
    ['1 mm', 'sixteenths', '3/64 in'],
  ] as const)('%s in %s is %s, as the reader asks', (mm, asked, inches) => {
    expect(inInches(mm, asked)).toBe(inches);
  });

  test.each(['sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'] as const)(
    'are those that a figure of a method says of the same length, in %s too',
    (inches) => {
      const reader = { system: 'inch', inches } as const;
      for (let mm = 4; mm < 1000; mm += 7)
        expect(inInches(`${mm} mm`, inches), `${mm} mm`).toBe(formatQuantity(mm, 'mm', reader));
    },
  );

  test('are those that a figure of a method says of the same length', () => {
    const reader = { ...defaultUnits, system: 'inch' } as const;
    for (let mm = 4; mm < 1000; mm += 1)
      expect(inInches(`${mm} mm`), `${mm} mm`).toBe(formatQuantity(mm, 'mm', reader));
  });

  test('stand behind the same length in mm', () => {
    expect(read('A channel 22 mm wide and 6 mm deep.')).toBe('A channel 22 mm (7/8 in) wide and 6 mm (1/4 in) deep.');
  });

  test.each([
    'A bit of 1/2 in (13 mm).',
    'A blank of 610 × 235 mm (24 × 9 1/4 in).',
    'A board of 1 to 1 1/2 in (25 to 38 mm), at most.',
    'It grows by 30 mm² and moves 2 mm/h.',
    'Grit P320, 4/4 stock, 12 boards.',
  ])('are not said twice, nor of what is no length: %s', (text) => {
    expect(read(text)).toBe(text);
  });

  test('leave headings and code as they are', () => {
    expect(read('Up to 20 mm', 'heading')).toBe('Up to 20 mm');
    expect(read('depth: 20 mm', 'inlineCode')).toBe('depth: 20 mm');
  });
});

describe('temperatures of a page for a reader of inches', () => {
  // °F = 1.8 °C + 32 by definition, worked out by hand: 11.7 is 53.06, 26.7 is 80.06.
  test.each([
    ['The shop stands at 20 °C and 60 %.', 'The shop stands at 20 °C (68 °F) and 60 %.'],
    ['Over 60 to 80 °C: too hot.', 'Over 60 to 80 °C (140 to 176 °F): too hot.'],
    ['In the car at −10 °C, 300 mm deep.', 'In the car at −10 °C (14 °F), 300 mm (11 13/16 in) deep.'],
    ['It can from 11.7 °C.', 'It can from 11.7 °C (53 °F).'],
    ['Down to −20 °C.', 'Down to −20 °C (−4 °F).'],
  ])('stand in °F behind °C: %s', (text, said) => {
    expect(read(text)).toBe(said);
  });

  test.each([
    'At 18 to 24 °C (64 to 75 °F), air moving.',
    'At 68 °F (20 °C) the same.',
    '10 K is shown as 10 °C or 18 °F.',
    'It is 10 °C warmer today.',
    'It heats by some 200 °C, and doubles per 10 °C.',
    '60 millionths per °C.',
  ])('are not said twice, and a difference is no temperature: %s', (text) => {
    expect(read(text)).toBe(text);
  });
});
