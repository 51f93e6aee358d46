import type { Table } from '../evidence/index.ts';
import { climates } from './climates.ts';
import { months } from './tables.ts';

/** Moisture contents of the handbook that are from memory, in the form in which the comparisons load them. */
export interface Comparisons {
  /** Table 4-2: at each temperature, °F as printed, [relative humidity, moisture content] in %. */
  grid: { fahrenheit: number; cells: [humidity: number, moisture: number][] }[];
  /** Table 13-1: places that have a climate here, with the moisture content outdoors by month, %. */
  outdoors: { city: string; climate: string; moisture: number[] }[];
}

/** Places whose name in Table 13-1 is not the name of their climate. */
const renamed: Readonly<Record<string, string>> = {
  'Dallas-Ft. Worth, TX': 'dallas-tx',
  'Minneapolis-St. Paul, MN': 'minneapolis-mn',
  'Seattle-Tacoma, WA': 'seattle-wa',
};

function climateOf(city: string, state: string): string | undefined {
  const id = renamed[`${city}, ${state}`] ?? `${city} ${state}`.toLowerCase().replace(/[^a-z]+/g, '-');
  return climates.find((climate) => climate.id === id)?.id;
}

/**
 * The text of `comparisons.json`, one temperature or place a line.
 *
 * @param grid `emc-table-4-2`, as read; the row that was read in another text is left to the checks
 * @param outdoors `emc-outdoor-us`, as read
 */
export function comparisonsJson(grid: Table, outdoors: Table): string {
  const temperatures = new Map<number, [number, number][]>();
  for (const { cells } of grid.rows) {
    if (cells.seen !== 'memory') continue;
    const fahrenheit = Number(cells.temp_F);
    const row = temperatures.get(fahrenheit) ?? [];
    row.push([Number(cells.rh_pct), Number(cells.emc_pct)]);
    temperatures.set(fahrenheit, row);
  }
  const places = outdoors.rows.flatMap(({ cells }) => {
    const climate = climateOf(String(cells.city), String(cells.state));
    const moisture = months.map((month) => Number(cells[month.toLowerCase()]));
    return climate ? [{ city: `${cells.city}, ${cells.state}`, climate, moisture }] : [];
  });
  const lines = (rows: readonly unknown[]) => rows.map((row) => JSON.stringify(row)).join(',\n');
  const gridRows = [...temperatures].map(([fahrenheit, cells]) => ({ fahrenheit, cells }));
  return `{"grid":[\n${lines(gridRows)}\n],"outdoors":[\n${lines(places)}\n]}\n`;
}
