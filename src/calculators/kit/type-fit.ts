import type { PaperBlock } from '../../model/evidence/index.ts';

/**
 * How much room words take on paper, without a printer: widths of letters as a share of the type's size, as wide as they are in the plain
 * faces that machines have, and a little more.
 */
const widths: readonly [RegExp, number][] = [
  [/[ijlI.,:;'’|!·]/, 0.29],
  [/[\sft()[\]/-]/, 0.35],
  [/[mwMW%@×]/, 0.9],
  [/[A-Z]/, 0.7],
];
const usualWidth = 0.57;

/** How wide a text is in one line, em. */
export const widthOf = (text: string): number =>
  [...text].reduce((sum, letter) => sum + (widths.find(([kind]) => kind.test(letter))?.[1] ?? usualWidth), 0);

/** A point, mm. */
const point = 25.4 / 72;

/** Room for words: type, pt, and the width of a line, mm. */
export interface Room {
  size: number;
  width: number;
}

/** Lines that a text takes, words kept whole. */
export function linesOf(text: string, { size, width }: Room): number {
  const most = width / (size * point);
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const long = widthOf(word);
    if (used > 0 && used + 0.35 + long > most) {
      lines += 1;
      used = 0;
    }
    // A word longer than the line is broken.
    lines += Math.floor(long / most);
    used += (used > 0 ? 0.35 : 0) + (long % most);
  }
  return lines;
}

/** Height of a line as a share of its type, and the white between two pieces, mm. */
export const leading = 1.25;
export const between = 1;
/** Type of a heading and of a card's large words, as shares of the type around them. */
export const larger = { heading: 1.35, large: 1.15, small: 0.85 } as const;
/** Room to write on, mm a line. */
export const writing = 8;
/** How far the lines of a list stand in, em. */
const indent = 1;

/** Height of a piece of a card or a label, mm; pieces that neither bears have none. */
export function heightOf(block: PaperBlock, room: Room): number {
  const lines = (text: string, share = 1) =>
    linesOf(text, { ...room, size: room.size * share }) * room.size * share * leading * point;
  switch (block.kind) {
    case 'heading':
      return lines(block.text, larger.heading) + 1;
    case 'text':
      return lines(
        `${block.lead ? `${block.lead}: ` : ''}${block.text}`,
        block.large ? larger.large : block.small ? larger.small : block.strong ? 1.04 : 1,
      );
    case 'list': {
      const narrower = { ...room, width: room.width - indent * room.size * point };
      const items = block.items.map((item) => linesOf(item, narrower) * room.size * leading * point);
      return (block.heading ? lines(block.heading, 1.04) : 0) + items.reduce((sum, each) => sum + each, 0);
    }
    case 'blanks':
      return block.labels.length * writing;
    default:
      return 0;
  }
}

/** Height of pieces one under another, mm. */
export const stackHeight = (blocks: readonly PaperBlock[], room: Room): number =>
  blocks.reduce((sum, block) => sum + heightOf(block, room) + between, 0);
