import { regionOf } from '../quantity/region.ts';
import type { Market } from './types.ts';

/** Regions (ISO 3166-1) where the Union's rules on food contact hold: its 27 members, and Iceland, Liechtenstein and Norway with them. */
const unionRegions = 'AT BE BG HR CY CZ DK EE FI FR DE GR HU IE IT LV LT LU MT NL PL PT RO SK SI ES SE IS LI NO'.split(
  ' ',
);

/** The market whose rules a reader is likely to sell under, and whether the region says so or nothing better is known. */
export interface MarketGuess {
  market: Market;
  /** False where the region has rules of its own that are not here, or none is named. */
  ofRegion: boolean;
}

/**
 * The market of a reader, by the languages of the browser: the first that names a region decides, as it does for units.
 *
 * @param languages BCP 47 tags in the reader's order, as `navigator.languages`
 */
export function marketOfRegion(languages: readonly string[]): MarketGuess {
  const region = languages.map(regionOf).find((each) => each !== undefined);
  if (region === 'US') return { market: 'us', ofRegion: true };
  return { market: 'eu', ofRegion: region !== undefined && unionRegions.includes(region) };
}
