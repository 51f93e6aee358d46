import type { PaperBlock } from '../../model/evidence/index.ts';
import { type LabelGrid, labelGrids } from '../../model/outline/label-grids.ts';
import type { PaperName } from '../../model/outline/tiles.ts';
import { stackHeight } from './type-fit.ts';

/** White within a label, mm: printers do not lie true to the cut. */
export const labelPadding = 2.5;

/** Type that a label is tried in, pt, the largest first; below the last nobody reads it. */
const largest = 10;
const smallest = 6;

/** A line to write on takes less on a label than on a card: they stand two abreast, behind their words. */
const asSet = (block: PaperBlock): PaperBlock =>
  block.kind === 'blanks'
    ? { kind: 'text', text: block.labels.map((label) => `${label} ___________`).join(' ') }
    : block;

/** The largest type in which the words of a label stand on it, pt; undefined where they do not in any that is read. */
export function labelType(
  blocks: readonly PaperBlock[],
  { width, height }: Pick<LabelGrid, 'width' | 'height'>,
): number | undefined {
  const set = blocks.map(asSet);
  for (let size = largest; size >= smallest; size -= 0.5) {
    const room = { size, width: width - 2 * labelPadding };
    // Pieces of a label follow one another without white between them.
    if (stackHeight(set, room) - set.length <= height - 2 * labelPadding) return size;
  }
  return undefined;
}

/** The sheet that a packet takes: the first from the middle one on whose labels hold the words; the largest where none does. */
export function usualGrid(paper: PaperName, blocks: readonly PaperBlock[]): LabelGrid {
  const [, ...grids] = labelGrids.filter((grid) => grid.paper === paper);
  return grids.find((grid) => labelType(blocks, grid) !== undefined) ?? (grids.at(-1) as LabelGrid);
}

/** A label with what was typed for its lines: words for those, and lines to write on for the rest. */
export function withTyped(
  blocks: readonly PaperBlock[],
  typed: Readonly<Record<string, string | undefined>>,
): PaperBlock[] {
  return blocks.flatMap((block): PaperBlock[] => {
    if (block.kind !== 'blanks') return [block];
    const given = block.labels.flatMap((label) => {
      const text = typed[label]?.trim();
      return text ? [{ kind: 'text' as const, lead: label, text }] : [];
    });
    const left = block.labels.filter((label) => !typed[label]?.trim());
    return [...given, ...(left.length > 0 ? [{ ...block, labels: left }] : [])];
  });
}
