import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { careCardCalculator } from '../../../src/calculators/care-card/calculator.ts';
import { answerTo } from '../../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { cardSides, cardType, layCard, panel } from '../../../src/calculators/kit/card-panels.ts';
import { labelType, usualGrid, withTyped } from '../../../src/calculators/kit/label-type.ts';
import { linesOf, stackHeight } from '../../../src/calculators/kit/type-fit.ts';
import type { PaperBlock } from '../../../src/model/evidence/index.ts';
import { inlaidTray } from './inlaid-tray.ts';

const note =
  'Bring it back for new oil, on any Saturday from ten to four, at the workshop by the lake; we sand it, oil it, look at the seam and tell you what we think of it.';

const cards: [string, Record<string, string>][] = [
  ['the worked case', {}],
  ['in the United States', { market: 'us' }],
  ['with the longest words', { species: 'cocobolo', finish: 'walnut-oil', papers: 'both', note }],
];

const blocksOf = (inputs: Record<string, string>): readonly PaperBlock[] => {
  const outcome = answerTo(careCardCalculator as unknown as Calculator, {
    ...careCardCalculator.example.metric,
    ...inputs,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.documents?.[0]?.blocks ?? [];
};

const wordsOf = (blocks: readonly PaperBlock[]): string =>
  blocks
    .flatMap((block) => {
      if (block.kind === 'list') return [block.heading ?? '', ...block.items];
      if (block.kind === 'blanks') return block.labels;
      return block.kind === 'text' || block.kind === 'heading' ? [block.text] : [];
    })
    .join(' ')
    .replace(/\s+/g, ' ');

describe('a care card', () => {
  test.each(cards)('%s is set in 11 pt, folded, no word of it lost and none over a foot', (_, inputs) => {
    const blocks = blocksOf(inputs);
    const { size, panels, over } = layCard(blocks);
    expect(size).toBe(cardType);
    expect(over).toBe(false);
    expect(panels.length).toBeLessThanOrEqual(4);
    expect(wordsOf(panels.flat())).toBe(wordsOf(blocks));
    for (const each of panels) {
      const room = { size, width: panel.width - 2 * panel.padding };
      expect(stackHeight(each, room)).toBeLessThanOrEqual(panel.height - 2 * panel.padding + 1);
    }
  });

  test('takes no second side of the paper for a line or two, as that of a method with an inlay and no shop record did', () => {
    const { size, panels } = layCard(blocksOf(inlaidTray));
    expect(panels).toHaveLength(2);
    expect(size).toBeGreaterThanOrEqual(10);
  });

  test('that is too long for four panels says so', () => {
    const text = `${note} `.repeat(40);
    expect(layCard([{ kind: 'text', text }]).over).toBe(true);
    expect(layCard([{ kind: 'text', text: 'Short.' }])).toMatchObject({ size: 11, over: false, panels: [[{}]] });
  });
});

describe('sides of a sheet', () => {
  test('a card of one panel stands four to a sheet', () => {
    expect(cardSides(4, 1)).toHaveLength(1);
    expect(cardSides(5, 1)).toHaveLength(2);
  });

  test('a folded one has its front on the right, and its inside behind it when the paper is turned over its long edge', () => {
    const [outside, inside] = cardSides(2, 3);
    expect(outside?.quarters.map((place) => place?.panel)).toEqual([3, 0, 3, 0]);
    expect(inside?.quarters.map((place) => place?.panel)).toEqual([1, 2, 1, 2]);
    expect(outside?.quarters.map((place) => place?.card)).toEqual([0, 0, 1, 1]);
    expect(cardSides(2, 2)).toHaveLength(1);
  });

  test('every panel of every card is printed once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 4 }), (count, panels) => {
        const printed = cardSides(count, panels)
          .flatMap(({ quarters }) => quarters)
          .flatMap((place) => (place && place.panel < panels ? [`${place.card} ${place.panel}`] : []));
        expect(new Set(printed).size).toBe(printed.length);
        expect(printed.length).toBe(count * panels);
      }),
    );
  });
});

describe('words on paper', () => {
  test('take more lines in larger type and in less room, never fewer', () => {
    fc.assert(
      fc.property(
        fc.lorem({ maxCount: 60 }),
        fc.integer({ min: 6, max: 12 }),
        fc.integer({ min: 20, max: 90 }),
        (text, size, width) => {
          const lines = linesOf(text, { size, width });
          expect(linesOf(text, { size: size + 1, width })).toBeGreaterThanOrEqual(lines);
          expect(linesOf(text, { size, width: width - 5 })).toBeGreaterThanOrEqual(lines);
        },
      ),
    );
  });

  test('a label takes the largest type that it holds, and none where it holds the words in no type that is read', () => {
    const blocks: PaperBlock[] = [
      { kind: 'text', text: note },
      { kind: 'blanks', labels: ['Batch'] },
    ];
    const small = labelType(blocks, { width: 63.5, height: 38.1 }) ?? 0;
    expect(labelType(blocks, { width: 99.1, height: 67.7 })).toBeGreaterThanOrEqual(small);
    expect(labelType(blocks, { width: 40, height: 12 })).toBeUndefined();
    expect(usualGrid('a4', blocks).id).toBe('a4-14');
    expect(usualGrid('a4', Array.from({ length: 8 }, () => blocks).flat()).id).toBe('a4-8');
  });

  test('what is typed stands for its line', () => {
    const blocks: PaperBlock[] = [{ kind: 'blanks', labels: ['Batch', 'Made on'] }];
    expect(withTyped(blocks, { Batch: ' B-12 ' })).toEqual([
      { kind: 'text', lead: 'Batch', text: 'B-12' },
      { kind: 'blanks', labels: ['Made on'] },
    ]);
    expect(withTyped(blocks, {})).toEqual(blocks);
  });
});
