import type { ReaderUnits } from './units.ts';

/**
 * How a region is read off a language tag (BCP 47), and whose people measure boards in inches: the United States, Liberia and Myanmar
 * (ISO 3166-1; common practice). As data, since what runs before a page is painted must know the same (the guess of the units).
 */
export const regionRule = {
  /** What follows a letter by itself is an extension, whose parts look like regions: a tag ends before it. */
  extension: '-[a-z0-9]-',
  /** Language, extended language, script, and the region as the first group; read without regard to case. */
  region: '^[a-z]{2,8}(?:-[a-z]{3})*(?:-[a-z]{4})?-([a-z]{2})(?:-|$)',
  inches: ['US', 'LR', 'MM'],
} as const;

const extension = new RegExp(regionRule.extension, 'i');
const region = new RegExp(regionRule.region, 'i');

/** The region that a language tag (BCP 47) names, in capitals: `en-US` gives `US`, `zh-Hant-TW` gives `TW`; undefined where it names none. */
export function regionOf(tag: string): string | undefined {
  const [plain = ''] = tag.split(extension);
  return region.exec(plain)?.[1]?.toUpperCase();
}

/**
 * The system that a reader is likely to measure in, by the languages of the browser: the first that names a region decides.
 *
 * @param languages BCP 47 tags in the reader's order, as `navigator.languages`
 * @returns metric where no region is named
 */
export function systemOfRegion(languages: readonly string[]): ReaderUnits['system'] {
  const named = languages.map(regionOf).find((each) => each !== undefined);
  return regionRule.inches.some((each) => each === named) ? 'inch' : 'metric';
}
