import { expect, test } from 'vitest';
import { answerTo } from '../../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { tileMarks } from '../../../src/calculators/kit/tile-marks.ts';
import { widthOf } from '../../../src/calculators/kit/type-fit.ts';
import { templateFitCalculator } from '../../../src/calculators/template-fit/calculator.ts';
import { eitherPaper, eitherPart } from '../../../src/model/outline/tiles.ts';
import { defaultUnits, inReaderUnits, type ReaderUnits } from '../../../src/model/quantity/index.ts';

/** The tiles of a rounded rectangle, with its rough line 3 mm outside. */
function tilesOf(length: number, width: number, more: Record<string, string> = {}, units: ReaderUnits = defaultUnits) {
  const outcome = answerTo(templateFitCalculator as unknown as Calculator, {
    shape: 'rounded-rectangle',
    length: `${length} mm`,
    width: `${width} mm`,
    cornerRadius: '25 mm',
    clearance: '3 mm',
    ...more,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  const document = outcome.value.documents?.find(({ id }) => id === 'template');
  const block = document?.blocks.find(({ kind }) => kind === 'drawing');
  if (!document || block?.kind !== 'drawing') throw new Error('no template');
  return tileMarks(block.drawing, inReaderUnits(document.title, units), units);
}

test('the tray of the class takes three sheets, and none could take fewer: two do not reach along it, nor one across', () => {
  expect(tilesOf(420, 220)).toHaveLength(3);
  const lap = 10;
  const outline = { length: 426, width: 226 };
  expect(2 * eitherPart.width - lap).toBeLessThan(outline.length);
  // Along the sheet two would reach, but one is too narrow for its width, so that it takes four.
  expect(eitherPart.width).toBeLessThan(outline.width);
});

test.each([
  [170, 140, 1],
  [160, 220, 1],
  [220, 160, 1],
  [330, 160, 2],
])('%s × %s mm takes %s', (length, width, sheets) => {
  expect(tilesOf(length, width)).toHaveLength(sheets);
});

test('bars lie beside what a sheet shows, so that they cost no sheet; each says its size, its place and its lines', () => {
  for (const tile of tilesOf(420, 220)) {
    const [cutX, , , cutHeight] = tile.cut;
    const [along, up] = tile.bars.map((path) => /^M([\d.]+) ([\d.]+)/.exec(path)?.slice(1).map(Number)) as [
      number[],
      number[],
    ];
    expect(along[1]).toBeGreaterThan(cutHeight);
    expect(up[0]).toBeLessThan(cutX);
    expect(along[1]).toBeLessThan(eitherPaper.height);
    const words = tile.words.map(({ text }) => text).join(' ');
    expect(words).toMatch(/420 mm × 220 mm, face up/);
    expect(words).toMatch(/Row 1 of 1, column [123] of 3/);
    expect(words).toMatch(/neighbours share 10 mm/);
    expect(tile.key.map(({ text }) => text)).toEqual(expect.arrayContaining(['finished edge']));
  }
});

test.each([
  ['a plain one', {}, 2.3],
  ['one with a window', { inlayLength: '300 mm', inlayWidth: '38 mm', inlayRoom: '10 mm' }, 2],
] as const)('no word at the foot of %s is cut or runs into another, in millimetres and in inches', (_, more, least) => {
  for (const system of ['metric', 'inch'] as const)
    for (const { words, key } of tilesOf(420, 220, more, { ...defaultUnits, system })) {
      const all = [...words, ...key];
      for (const height of new Set(all.map(({ y }) => y))) {
        const line = all.filter(({ y }) => y === height);
        let end = 0;
        for (const { x, size, text } of line.toSorted((one, other) => one.x - other.x)) {
          expect(x, text).toBeGreaterThanOrEqual(end);
          expect(size, text).toBeGreaterThanOrEqual(least);
          end = x + widthOf(text) * size;
          expect(end, text).toBeLessThanOrEqual(eitherPaper.width + 0.5);
        }
      }
    }
});
