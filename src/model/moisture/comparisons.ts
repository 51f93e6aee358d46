import type { Table } from '../evidence/index.ts';
import { months } from './months.ts';

/** Moisture contents of the handbook that are from memory, in the form in which the comparisons load them. */
export interface Comparisons {
  /** Table 4-2: at each temperature, °F as printed, [relative humidity, moisture content] in %. */
  grid: { fahrenheit: number; cells: [humidity: number, moisture: number][] }[];
  /** Table 13-1: places that have a climate here, with the moisture content outdoors by month, %. */
  outdoors: { city: string; climate: string; moisture: number[] }[];
  /** Places whose station has a typical-year file too, and how the means compare, as noted when it was read. */
  typicalYears: TypicalYear[];
}

/** Ours less the file's: temperature in °C and relative humidity in points, on average over the twelve months. */
export interface TypicalYear {
  climate: string;
  file: string;
  temperature: number;
  humidity: number;
  /** Mean size of the twelve months' differences of humidity, and the month furthest apart, points. */
  apart: number;
  worst: number;
}

const noted =
  /^typical-year file \((\w+)\) of the same station: T ([+-][\d.]+) K, RH ([+-][\d.]+) points on average, mean absolute ([\d.]+), worst month ([+-][\d.]+)$/;

function typicalYears(reports: Table): TypicalYear[] {
  return reports.rows.flatMap(({ cells }) => {
    const found = noted.exec(String(cells.check));
    if (!found) return [];
    const [, file = '', temperature, humidity, apart, worst] = found;
    return [
      {
        climate: String(cells.id),
        file,
        temperature: Number(temperature),
        humidity: Number(humidity),
        apart: Number(apart),
        worst: Number(worst),
      },
    ];
  });
}

/** Places whose name in Table 13-1 is not the name of their climate. */
const renamed: Readonly<Record<string, string>> = {
  'Dallas-Ft. Worth, TX': 'dallas-tx',
  'Minneapolis-St. Paul, MN': 'minneapolis-mn',
  'Seattle-Tacoma, WA': 'seattle-wa',
};

function climateId(city: string, state: string): string {
  return renamed[`${city}, ${state}`] ?? `${city} ${state}`.toLowerCase().replace(/[^a-z]+/g, '-');
}

/**
 * The text of `comparisons.json`, one temperature or place a line.
 *
 * @param grid `emc-table-4-2`, as read; the rows that were read in another text are left to the checks
 * @param outdoors `emc-outdoor-us`, as read
 * @param typical `climate-monthly`, as read
 * @param reports `climate-reports`, as read
 */
export function comparisonsJson(grid: Table, outdoors: Table, typical: Table, reports: Table): string {
  const known = new Set([...typical.rows, ...reports.rows].map(({ cells }) => cells.id));
  const temperatures = new Map<number, [number, number][]>();
  for (const { cells } of grid.rows) {
    if (cells.seen !== 'memory') continue;
    const fahrenheit = Number(cells.temp_F);
    const row = temperatures.get(fahrenheit) ?? [];
    row.push([Number(cells.rh_pct), Number(cells.emc_pct)]);
    temperatures.set(fahrenheit, row);
  }
  const places = outdoors.rows.flatMap(({ cells }) => {
    const climate = climateId(String(cells.city), String(cells.state));
    const moisture = months.map((month) => Number(cells[month.toLowerCase()]));
    return known.has(climate) ? [{ city: `${cells.city}, ${cells.state}`, climate, moisture }] : [];
  });
  const lines = (rows: readonly unknown[]) => rows.map((row) => JSON.stringify(row)).join(',\n');
  const gridRows = [...temperatures].map(([fahrenheit, cells]) => ({ fahrenheit, cells }));
  return `{"grid":[\n${lines(gridRows)}\n],"outdoors":[\n${lines(places)}\n],"typicalYears":[\n${lines(typicalYears(reports))}\n]}\n`;
}
