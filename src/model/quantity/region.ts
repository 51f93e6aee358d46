import type { ReaderUnits } from './units.ts';

/** Regions (ISO 3166-1) whose people measure boards in inches: the United States, Liberia and Myanmar. Common practice. */
const inchRegions = ['US', 'LR', 'MM'];

/** The region that a language tag (BCP 47) names, in capitals: `en-US` gives `US`, `zh-Hant-TW` gives `TW`; undefined where it names none. */
export function regionOf(tag: string): string | undefined {
  // What follows a letter by itself is an extension, whose parts look like regions.
  const [plain = ''] = tag.split(/-[a-z0-9]-/i);
  return /^[a-z]{2,8}(?:-[a-z]{3})*(?:-[a-z]{4})?-([a-z]{2})(?:-|$)/i.exec(plain)?.[1]?.toUpperCase();
}

/**
 * The system that a reader is likely to measure in, by the languages of the browser: the first that names a region decides.
 *
 * @param languages BCP 47 tags in the reader's order, as `navigator.languages`
 * @returns metric where no region is named
 */
export function systemOfRegion(languages: readonly string[]): ReaderUnits['system'] {
  const region = languages.map(regionOf).find((each) => each !== undefined);
  return region !== undefined && inchRegions.includes(region) ? 'inch' : 'metric';
}
