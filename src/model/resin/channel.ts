import { type PlaneGrid, planeGridOf } from './plane.ts';
import type { Channel, Pour } from './pour-types.ts';

/** A thinner base holds next to no heat and stops none, mm. */
export const thinnestBase = 0.01;

/** By how much more a cell may be wide than the one before it, the finer the less: in the resin, and in wood beside and below. */
const growthOf = (cells: number) => ({ resin: 1 + Math.min(0.6, 4 / cells), wood: 1 + Math.min(0.7, 3 / cells) });

/** The first of growing cells is no smaller than this share of all that they fill: finer ones would cost much and change nothing. */
const leastShare = 1 / 300;

/** The wood beside a channel is reckoned so many times as far as heat spreads in it before the air has taken it. */
const lengthsOfWood = 3.5;
/** And at least so far, m: where no air takes the heat, it still meets the other side of a board. */
const leastWood = 0.05;
const mostWood = 0.4;

/**
 * Sizes that grow by one factor and fill a length.
 *
 * @param length to fill, m
 * @param first about the size of the first, m
 * @param most by how much the next may be larger
 * @returns at least one, smallest first
 */
export function growing(length: number, first: number, most: number): number[] {
  // A thickness next to nothing has no parts, whatever the arithmetic of so small numbers says.
  if (!(first < length) || length < 1e-12) return [length];
  // So many that they would just fill the length or more at this factor; then all are scaled to fit.
  const count = Math.ceil(Math.log(1 + (length * (most - 1)) / first) / Math.log(most));
  const sizes = Array.from({ length: count }, (_, at) => most ** at);
  const whole = sizes.reduce((sum, size) => sum + size);
  return sizes.map((size) => (size * length) / whole);
}

/** Cells of a channel's section, and where in it the resin lies. */
export interface ChannelSection {
  grid: PlaneGrid;
  /** The first so many columns are the channel's, and the first so many rows the base. */
  resinColumns: number;
  baseRows: number;
}

/**
 * Cut half of a channel's cross-section into cells: resin from the middle to its wall, wood from there to where no more heat
 * comes, and the base under both. Cells are smallest at the wall, where temperatures bend, and no larger in the resin than its
 * rows where the channel is narrow.
 *
 * @param cells in the depth of resin, and in 20 mm of base
 */
export function channelSection(
  pour: Pour,
  { width, sides }: Channel,
  cells: readonly [number, number],
): ChannelSection {
  const { resin, depth, filmTop, filmBottom } = pour;
  const base = pour.base && pour.base.thickness >= thinnestBase ? pour.base : null;
  const half = width / 2000;
  const deep = depth / 1000;
  const growth = growthOf(cells[0]);
  const narrowest = Math.max(4, Math.round(cells[0] / 2));
  const first = Math.min(Math.max(deep / cells[0], leastShare * half), half / narrowest);
  const evenly = half / first <= narrowest + 0.5;
  const resinWidths = evenly
    ? Array.from({ length: narrowest }, () => half / narrowest)
    : growing(half, first, growth.resin).reverse();

  const under = base ? base.thickness / 1000 : 0;
  const cooling = Math.max(1e-9, filmTop + filmBottom);
  const spread = Math.sqrt((sides.conductivity * (deep + under)) / cooling);
  const beside = Math.min(mostWood, Math.max(leastWood, lengthsOfWood * spread));
  const woodWidths = growing(beside, Math.max(resinWidths.at(-1) as number, leastShare * beside), growth.wood);

  const rowHeight = deep / cells[0];
  const baseHeights =
    under > 0
      ? growing(
          under,
          Math.min(Math.max(rowHeight, leastShare * under), under / Math.min(4, cells[1])),
          growth.wood,
        ).reverse()
      : [];
  const resinHeights = Array.from({ length: cells[0] }, () => rowHeight);
  const [resinColumns, baseRows] = [resinWidths.length, baseHeights.length];
  return {
    grid: planeGridOf(
      [...resinWidths, ...woodWidths],
      [...baseHeights, ...resinHeights],
      (column, row) => (base && row < baseRows ? base : column < resinColumns ? resin : sides),
      { low: filmBottom, high: filmTop },
    ),
    resinColumns,
    baseRows,
  };
}
