import { describe, expect, test } from 'vitest';
import { howTos } from './how-to.ts';

// A habit of the shop that several pages name has one value on all of them: whoever reads the second page must not wonder which is meant.

/** What is said, where it is looked for, and what stands in its place: each pattern takes the value out of a sentence. */
const habits: readonly (readonly [what: string, patterns: readonly RegExp[], value: string])[] = [
  [
    'planed with this to spare, then a week’s rest',
    [/(?:plane with|alike to|Stop) ([\d.]+ mm) (?:to spare|over, and stickered|above the final)/g],
    '1.5 mm',
  ],
  ['the last planing of a board with an inlay', [/(?:plane|Plane|planing)[^.|]*? to ([\d.]+ mm) over /g], '0.5 mm'],
  [
    'sawn outside the line of the template',
    [/\*\*(?:Saw |Leave )?(an eighth of an inch)(?: \(3 mm\))? outside the/gi],
    'an eighth of an inch',
  ],
  [
    'an inlay stands proud by',
    [/[Pp]roud by (0\.5 to [\d.]+ mm)/g, /(0\.5 to [\d.]+ mm) is what shops say/g],
    '0.5 to 1 mm',
  ],
  [
    'sound wood beyond the ends of an inlay',
    [
      /(\w+) (?:inlay )?widths (?:from the board’s end|of (?:the inlay|sound wood))/g,
      /(\w+) times the inlay’s width of sound wood/g,
    ],
    'three',
  ],
  ['depth of a pocket', [/no more than a (\w+) of the board/g, /Shallow: a (\w+) of the thickness/g], 'third'],
  [
    'a seal coat that has cured is sanded with',
    [/(?:sand it|sand the resin|hand, wet|by hand,) (P\d+(?: to P\d+)?)(?: first|, until)/g],
    'P180 to P220',
  ],
  [
    'leftover resin lies no deeper than',
    [/(?:tray|thin|poured out|lies|pour it) ?(?:,| in)? ?(\d mm) (?:deep or less|thin)/g],
    '3 mm',
  ],
  ['the can for rags holds', [/tight lid, (a \w+ full of water)/g], 'a third full of water'],
  ['cloths for each, for one coat', [/twelve with (\w+) each has 36/g, /I had (\w+) cloths; \w+ go in/g], 'three'],
  [
    'resin shrinks as it cures',
    [/[Ss]hrink(?:s|age)?[^|.]*?(\d to \d %) (?:of its volume|by volume)(?! \(from memory\), and pulls)/g],
    '2 to 5 %',
  ],
  ['cured resin softens from', [/(?:softens|leathery) from (\d+ to \d+ °C)/g], '35 to 50 °C'],
  [
    'shortest board at a jointer or planer, until the manual is read',
    [/\b(12 in) (?:on either machine|of school rules)/g, /It is under (12 in)/g],
    '12 in',
  ],
  ['between glue and last planing', [/[Ww]ait (a \w+)\*?\*? (?:between glue|before the last planing)/g], 'a week'],
  ['wood between a hole and an edge', [/(1\/2 in) \(13 mm\)/g], '1/2 in'],
  ['stirred in the first cup', [/[Ss]tir slowly for (\w+ minutes)/g], 'three minutes'],
  ['staves of one panel differ by no more than', [/[Aa]ll (?:staves )?within (?:a|one) (point) of/g], 'point'],
];

describe.each(habits)('%s', (_, patterns, value) => {
  const found = howTos.flatMap(({ name, text }) =>
    patterns.flatMap((pattern) =>
      [...text.matchAll(pattern)].map(([, said = '']) => ({ name, said: said.toLowerCase() })),
    ),
  );

  test(`is ${value} on every page that names it`, () => {
    expect(found.filter(({ said }) => said !== value.toLowerCase())).toEqual([]);
  });

  test('is named on more than one page, or twice', () => {
    expect(found.length).toBeGreaterThan(1);
  });
});
