import type { PaperBlock } from '../../model/evidence/index.ts';
import { between, heightOf, type Room, stackHeight } from './type-fit.ts';

/** A panel of a card: a quarter of what A4 and Letter both leave within their margins, and its own margin, mm. */
export const panel = { width: 87, height: 119, padding: 5 } as const;

/** Type that a card is set in, pt, and the smallest that is tried where so much stands on it that four panels do not hold it. */
export const cardType = 11;
export const smallestCardType = 8;

/** Type down to which a card is set so that it needs no inside, which is a second side of the paper: it is still read with ease. */
const leastForOneSide = 10;

/** A folded card has a front, two insides and a back. */
const mostPanels = 4;

/** A card laid out: what stands on each panel, front first, and the type that it is set in, pt. */
export interface LaidCard {
  size: number;
  panels: readonly (readonly PaperBlock[])[];
  /** True where not even four panels in the smallest type hold it: the last goes over its foot. */
  over: boolean;
}

/** Lists apart, a line each: they may go on overleaf. */
const pieces = (blocks: readonly PaperBlock[]): PaperBlock[] =>
  blocks.flatMap((block) =>
    block.kind === 'list'
      ? block.items.map((item, at): PaperBlock => {
          const { heading, ...rest } = block;
          return { ...rest, items: [item], ...(at === 0 && heading !== undefined ? { heading } : {}) };
        })
      : [block],
  );

/** Lines of one list that follow each other are one list again. */
function together(blocks: readonly PaperBlock[]): PaperBlock[] {
  const whole: PaperBlock[] = [];
  for (const block of blocks) {
    const before = whole.at(-1);
    if (block.kind === 'list' && before?.kind === 'list' && block.heading === undefined)
      whole[whole.length - 1] = { ...before, items: [...before.items, ...block.items] };
    else whole.push(block);
  }
  return whole;
}

const roomOf = (size: number): Room => ({ size, width: panel.width - 2 * panel.padding });
const most = panel.height - 2 * panel.padding;

const holds = (blocks: readonly PaperBlock[], size: number): boolean =>
  stackHeight(blocks, roomOf(size)) - between <= most;

function fill(blocks: readonly PaperBlock[], size: number): PaperBlock[][] {
  const room = roomOf(size);
  const panels: PaperBlock[][] = [[]];
  let used = 0;
  for (const piece of pieces(blocks)) {
    const height = heightOf(piece, room) + between;
    if (used > 0 && used + height > most) {
      panels.push([]);
      used = 0;
    }
    panels.at(-1)?.push(piece);
    used += height;
  }
  return panels.map(together);
}

/** The card in the largest type from the usual one down to `least` that fits on so many panels. */
function laidOn(atMost: number, blocks: readonly PaperBlock[], least: number): LaidCard | undefined {
  for (let size = cardType; size >= least; size -= 0.5) {
    const panels = fill(blocks, size);
    if (panels.length <= atMost && panels.every((blocks) => holds(blocks, size))) return { size, panels, over: false };
  }
  return undefined;
}

/**
 * Lay a card out: on one panel where it fits one in the usual type, else folded, on two or on four; on two rather than on four for a point of
 * type. Reckoned without a printer, and with letters a little wider than they are, so that no line of it is cut.
 */
export function layCard(blocks: readonly PaperBlock[]): LaidCard {
  const laid = laidOn(2, blocks, leastForOneSide) ?? laidOn(mostPanels, blocks, smallestCardType);
  if (laid) return laid;
  const panels = fill(blocks, smallestCardType);
  const rest = panels.slice(mostPanels - 1).flat();
  return {
    size: smallestCardType,
    panels: [...panels.slice(0, mostPanels - 1), rest],
    over: true,
  };
}

/** How many cards lie on a sheet: four that are not folded, two that are. */
export const cardsOn = (panels: number): number => (panels <= 1 ? 4 : 2);

/** A side of a sheet with cards on it: what lies in each of its four quarters, row by row, as places in the list of panels of a card. */
export interface CardSide {
  quarters: readonly ({ card: number; panel: number } | undefined)[];
}

/**
 * The sides that are printed for some cards, all folded alike: four to a sheet where one panel holds each; else two, each folded in the
 * middle, its front on the right; and with an inside a second side for the back of the sheet, turned over its long edge.
 *
 * @param cards how many; each has the same number of panels
 * @param panels of the card with the most of them
 */
export function cardSides(cards: number, panels: number): CardSide[] {
  if (panels <= 1)
    return Array.from({ length: Math.ceil(cards / 4) }, (_, sheet) => ({
      quarters: [0, 1, 2, 3].map((at) => (4 * sheet + at < cards ? { card: 4 * sheet + at, panel: 0 } : undefined)),
    }));
  const folded = (left: number, right: number) => (sheet: number) => ({
    quarters: [2 * sheet, 2 * sheet + 1].flatMap((card) =>
      card < cards
        ? [
            { card, panel: left },
            { card, panel: right },
          ]
        : [undefined, undefined],
    ),
  });
  const outside = folded(panels > 2 ? 3 : 1, 0);
  const inside = folded(1, 2);
  return Array.from({ length: Math.ceil(cards / 2) }, (_, sheet) => [
    outside(sheet),
    ...(panels > 2 ? [inside(sheet)] : []),
  ]).flat();
}
