import { expect, test } from 'vitest';
import { marketOfRegion } from '../../../src/model/food/market-of-region.ts';

// The members of the Union, and Iceland, Liechtenstein and Norway, whom the EEA Agreement binds: https://european-union.europa.eu, EU countries.
test.each([
  [['en-US'], 'us', true],
  [['en', 'en-US'], 'us', true],
  [['de-DE', 'en-US'], 'eu', true],
  [['nb-NO'], 'eu', true],
  [['en-GB'], 'eu', false],
  [['fr-CA', 'en-US'], 'eu', false],
  [['en'], 'eu', false],
  [[], 'eu', false],
] as const)('%j sells in %s, by the region: %s', (languages, market, ofRegion) => {
  expect(marketOfRegion(languages)).toEqual({ market, ofRegion });
});
