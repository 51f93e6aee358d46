import type { Basis, Citation } from '../evidence/index.ts';
import { nameKey } from '../quantity/index.ts';
import { type ClimateRow, fromSteps } from './climate-rows.ts';
import committed from './climates.json' with { type: 'json' };

/** A place and the outdoor air of its year. */
export interface Climate {
  /** Name in an address, for example `duluth-mn`. */
  id: string;
  /** For example `Duluth, Minnesota` or `Oslo (Blindern), Norway`. */
  place: string;
  country: string;
  /** Other names that it is found by. */
  also: readonly string[];
  /** Towns near it that have no figures of their own. */
  near: readonly string[];
  /** Pressure of the standard atmosphere at the station's height, Pa. */
  pressure: number;
  /** A typical year of the United States or Canada, or the mean of a station's monthly reports. */
  dataset: 'TMY3' | 'CWEC' | 'CLIMAT';
  /** Monthly means, °C, January first. */
  temperature: readonly number[];
  /** Monthly means of relative humidity over liquid water, %, January first. */
  humidity: readonly number[];
  /** What a reader should know of these figures. */
  remark?: string;
  basis: Basis;
  citation: Citation;
}

/** Countries whose places carry their state or province, and are known by it. */
const byState = ['United States', 'Canada'];
const sourceOf = { TMY3: 'tmy3', CWEC: 'cwec', CLIMAT: 'dwd-climat' } as const;

const parted = (text: string) => text.split('; ').filter(Boolean);
const tenths = (written: readonly number[]) => fromSteps(written).map((value) => value / 10);

/** The place with its country, unless it is told by its state or carries the country's name already. */
function fullName(place: string, country: string): string {
  return byState.includes(country) || place.endsWith(country) ? place : `${place}, ${country}`;
}

function climateOf(row: ClimateRow): Climate {
  const [id, place, country, also, near, edition, station, pressure, temperature, humidity, remark] = row;
  const dataset = edition.startsWith('CWEC') ? 'CWEC' : (edition as 'TMY3' | 'CLIMAT');
  const noted = dataset === 'CWEC' ? ` (${edition.replace('CWEC', 'CWEC ')})` : '';
  return {
    id,
    place: fullName(place, country),
    country,
    also: parted(also),
    near: parted(near),
    pressure,
    dataset,
    temperature: tenths(temperature),
    humidity: tenths(humidity),
    ...(remark ? { remark } : {}),
    basis: 'published',
    citation: { source: sourceOf[dataset], locator: `Station ${station}${noted}`, seen: 'source-text' },
  };
}

/** Every place of the climate tables, in their order: the United States and Canada by zone, then country by country. */
export const climates: readonly Climate[] = (committed as unknown as ClimateRow[]).map(climateOf);

const byId = new Map(climates.map((climate) => [climate.id, climate]));

/** The climate with this id, for example `duluth-mn`. */
export function climateById(id: string): Climate | undefined {
  return byId.get(id);
}

/** How many countries and territories the places lie in. */
export const countryCount = new Set(climates.map(({ country }) => country)).size;

/** Short and other names of countries, as they are typed. */
const countryWords: Readonly<Record<string, string>> = {
  'United States': 'USA',
  'United Kingdom': 'UK Britain',
  Netherlands: 'Holland',
  Czechia: 'Czech Republic',
  Turkey: 'Türkiye',
};

const searchable = climates.map((climate) => {
  const names = [climate.place, ...climate.also, ...climate.near].map(nameKey);
  const words = nameKey([...names, climate.id, climate.country, countryWords[climate.country] ?? ''].join(' ')).split(
    ' ',
  );
  return { climate, names, words };
});

/** 0 where a name is the whole text, 1 where it has every word whole, 2 where a name starts with it, 3 otherwise. */
function rank({ names, words }: (typeof searchable)[number], asked: string, wanted: readonly string[]): number {
  if (names.includes(asked)) return 0;
  if (wanted.every((part) => words.includes(part))) return 1;
  return names.some((name) => name.startsWith(asked)) ? 2 : 3;
}

/**
 * Places whose name, other name, state or country has a word that starts with each word asked for, and towns near
 * them; the nearest matches come first. An empty text gives every place.
 *
 * @param text as typed, for example `duluth`, `port or`, `zurich` or `norway`
 */
export function searchClimates(text: string): Climate[] {
  const asked = nameKey(text);
  const wanted = asked === '' ? [] : asked.split(' ');
  return searchable
    .filter(({ words }) => wanted.every((part) => words.some((word) => word.startsWith(part))))
    .map((each) => ({ climate: each.climate, rank: rank(each, asked, wanted) }))
    .sort((one, other) => one.rank - other.rank)
    .map(({ climate }) => climate);
}

/**
 * Places that a whole text names: by id or full name, or with each of its words whole in the place's name, other
 * names, towns near it or country.
 *
 * @param text as typed, for example `portland`, of which there are several
 */
export function climatesNamed(text: string): Climate[] {
  const asked = nameKey(text);
  if (asked === '') return [];
  const wanted = asked.split(' ');
  const full = searchable.filter(({ climate }) => nameKey(climate.id) === asked || nameKey(climate.place) === asked);
  const found = full.length > 0 ? full : searchable.filter(({ words }) => wanted.every((part) => words.includes(part)));
  return found.map(({ climate }) => climate);
}
