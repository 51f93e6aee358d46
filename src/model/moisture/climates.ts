import type { Basis, Citation, Table, TableRow } from '../evidence/index.ts';
import { nameKey } from '../quantity/index.ts';
import committed from './climates.json' with { type: 'json' };
import { months } from './tables.ts';

/** A place and the outdoor air of its typical year. */
export interface Climate {
  /** Name in an address, for example `duluth-mn`. */
  id: string;
  /** For example `Duluth, Minnesota`. */
  place: string;
  country: string;
  /** Degrees, north positive. */
  latitude: number;
  /** Degrees, east positive. */
  longitude: number;
  /** m above the sea. */
  elevation: number;
  /** Pressure of the standard atmosphere at that elevation, Pa. */
  pressure: number;
  dataset: 'TMY3' | 'CWEC';
  /** Monthly means, °C, January first. */
  temperature: readonly number[];
  /** Monthly means of relative humidity over liquid water, %, January first. */
  humidity: readonly number[];
  basis: Basis;
  citation: Citation;
}

/** What the committed file holds of a climate: the rest follows from it. */
export interface ClimateEntry extends Omit<Climate, 'basis' | 'citation'> {
  /** Station number and name, for a Canadian one with the edition of its data set. */
  station: string;
}

const countries: Readonly<Record<string, string>> = { USA: 'United States' };

function entryOf({ cells }: TableRow): ClimateEntry {
  const country = String(cells.country);
  const edition = String(cells.dataset);
  const monthly = (prefix: string) => months.map((month) => Number(cells[`${prefix}${month.toLowerCase()}`]));
  return {
    id: String(cells.id),
    place: String(cells.place),
    country: countries[country] ?? country,
    latitude: Number(cells.latitude),
    longitude: Number(cells.longitude),
    elevation: Number(cells.elevation_m),
    pressure: Number(cells.pressure_Pa),
    dataset: edition === 'TMY3' ? 'TMY3' : 'CWEC',
    station: edition === 'TMY3' ? String(cells.station) : `${cells.station} (${edition.replace('CWEC', 'CWEC ')})`,
    temperature: monthly('t_'),
    humidity: monthly('rh_'),
  };
}

/**
 * The text of `climates.json`: one climate a line, in the table's order.
 *
 * @param table `climate-monthly`, as read
 */
export function climatesJson(table: Table): string {
  return `[\n${table.rows.map((row) => JSON.stringify(entryOf(row))).join(',\n')}\n]\n`;
}

function climateOf({ station, ...entry }: ClimateEntry): Climate {
  return {
    ...entry,
    basis: 'published',
    citation: {
      source: entry.dataset === 'TMY3' ? 'tmy3' : 'cwec',
      locator: `Station ${station}`,
      seen: 'source-text',
    },
  };
}

/** Every place of the climate table, in its order: by country and climate zone, warmest zone first. */
export const climates: readonly Climate[] = (committed as ClimateEntry[]).map(climateOf);

const byId = new Map(climates.map((climate) => [climate.id, climate]));

/** The climate with this id, for example `duluth-mn`. */
export function climateById(id: string): Climate | undefined {
  return byId.get(id);
}

const searchable = climates.map((climate) => ({
  climate,
  name: nameKey(climate.place),
  words: nameKey(`${climate.place} ${climate.id} ${climate.country}`).split(' '),
}));

/**
 * Places whose name, state or country has a word that starts with each word asked for; names that start with the
 * whole text come first. An empty text gives every place.
 *
 * @param text as typed, for example `duluth` or `port or`
 */
export function searchClimates(text: string): Climate[] {
  const asked = nameKey(text);
  const wanted = asked === '' ? [] : asked.split(' ');
  return searchable
    .filter(({ words }) => wanted.every((part) => words.some((word) => word.startsWith(part))))
    .sort((one, other) => Number(other.name.startsWith(asked)) - Number(one.name.startsWith(asked)))
    .map(({ climate }) => climate);
}
