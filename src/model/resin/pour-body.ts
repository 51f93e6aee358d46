import { channelSection, thinnestBase } from './channel.ts';
import { type Conductor, conductorOf, type Grid, gridOf } from './conduction.ts';
import type { ThermalProperties } from './kinetics.ts';
import { planeConductorOf } from './plane.ts';
import type { Channel, Pour } from './pour-types.ts';

/** Resin and what lies round it, cut into cells: those without cure first, then the resin's, the middle of its upper face last. */
export interface Body {
  conductor: Conductor;
  /** How many cells, and the index of the first of the resin. */
  count: number;
  offset: number;
  /** Size of each cell, and the heat that it holds per kelvin: per square metre of a pool, per metre of half a channel. */
  volumes: Float64Array;
  capacities: Float64Array;
  /** Cells of the resin at its upper face, its middle and its underside, in the middle of its width. */
  top: number;
  middle: number;
  bottom: number;
  /** The cells of the middle of the width from the underside of the base up, and their heights above it, mm. */
  column: Int32Array;
  heights: Float64Array;
  /** Which of them is the first of the resin, and the height of its underside, mm. */
  resinFrom: number;
  underside: number;
  /** Where of the column a cell lies at the same height. */
  levelOf(cell: number): number;
  /** Of a channel: its cells from the middle outwards at a level of the column, and how far from the middle they lie, mm. */
  across?: { at(level: number): Int32Array; places: Float64Array };
}

const volumetric = ({ density, heatCapacity }: ThermalProperties) => density * heatCapacity;

/** Cells of a base: as fine in a thicker one as in one of 20 mm, up to 40. */
const baseCells = (thickness: number, inTwenty: number) =>
  Math.min(40, Math.max(inTwenty, Math.round((inTwenty * thickness) / 20)));

function slabOf({ resin, depth, base, filmTop, filmBottom }: Pour, cells: readonly [number, number]): Grid {
  const layers = [
    ...(base && base.thickness >= thinnestBase
      ? [
          {
            thickness: base.thickness / 1000,
            cells: baseCells(base.thickness, cells[1]),
            conductivity: base.conductivity,
            heatCapacity: volumetric(base),
          },
        ]
      : []),
    { thickness: depth / 1000, cells: cells[0], conductivity: resin.conductivity, heatCapacity: volumetric(resin) },
  ];
  return gridOf(layers, { low: filmBottom, high: filmTop });
}

/** A pool: cells across the depth of resin and base alone. */
function poolBody(pour: Pour, cells: readonly [number, number]): Body {
  const grid = slabOf(pour, cells);
  const { count, volumes, capacities } = grid;
  const offset = count - cells[0];
  return {
    conductor: conductorOf(grid),
    count,
    offset,
    volumes,
    capacities,
    top: count - 1,
    middle: offset + (cells[0] >> 1),
    bottom: offset,
    column: Int32Array.from(volumes, (_, at) => at),
    heights: grid.centres.map((height) => 1000 * height),
    resinFrom: offset,
    underside: 1000 * ((grid.centres[offset] as number) - (grid.widths[offset] as number) / 2),
    levelOf: (cell) => cell,
  };
}

/** Middles of cells that lie side by side, mm from the outer side of the first; their sizes in m. */
function middlesOf(sizes: Float64Array): Float64Array {
  let end = 0;
  return sizes.map((size) => {
    end += 1000 * size;
    return end - 500 * size;
  });
}

/** A channel: cells across half of its width and the wood beside it, over resin and base. */
function channelBody(pour: Pour, channel: Channel, cells: readonly [number, number]): Body {
  const { grid, resinColumns, baseRows } = channelSection(pour, channel, cells);
  const { columns, rows } = grid;
  const isResin = (column: number, row: number) => column < resinColumns && row >= baseRows;
  const others: number[] = [];
  const resin: number[] = [];
  for (let row = 0; row < rows; row += 1) {
    // From the wood inwards, so that the middle of the upper face comes last.
    for (let column = columns - 1; column >= 0; column -= 1)
      (isResin(column, row) ? resin : others).push(row * columns + column);
  }
  const places = Int32Array.from([...others, ...resin]);
  const indexOf = new Int32Array(places.length);
  for (const [at, cell] of places.entries()) indexOf[cell] = at;
  const at = (column: number, row: number) => indexOf[row * columns + column] as number;
  const heights = middlesOf(grid.heights);
  return {
    conductor: planeConductorOf(grid, places),
    count: places.length,
    offset: others.length,
    volumes: Float64Array.from(places, (cell) => grid.volumes[cell] as number),
    capacities: Float64Array.from(places, (cell) => grid.capacities[cell] as number),
    top: at(0, rows - 1),
    middle: at(0, baseRows + ((rows - baseRows) >> 1)),
    bottom: at(0, baseRows),
    column: Int32Array.from(heights, (_, row) => at(0, row)),
    heights,
    resinFrom: baseRows,
    underside: (heights[baseRows] as number) - 500 * (grid.heights[baseRows] as number),
    levelOf: (cell) => Math.floor((places[cell] as number) / columns),
    across: {
      at: (row) => Int32Array.from(grid.widths, (_, column) => at(column, row)),
      places: middlesOf(grid.widths),
    },
  };
}

/** The body of a pour. */
export function bodyOf(pour: Pour, cells: readonly [resin: number, base: number]): Body {
  return pour.channel ? channelBody(pour, pour.channel, cells) : poolBody(pour, cells);
}
