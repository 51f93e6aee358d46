import { describe, expect, test } from 'vitest';
import { regionOf, systemOfRegion } from '../../../src/model/quantity/index.ts';

describe('the region of a language tag', () => {
  // Tags of RFC 5646, appendix A, and of the everyday.
  test.each([
    ['en-US', 'US'],
    ['EN-us', 'US'],
    ['de', undefined],
    ['zh-Hant-TW', 'TW'],
    ['zh-cmn-Hans-CN', 'CN'],
    ['sr-Latn', undefined],
    ['sl-rozaj', undefined],
    ['es-419', undefined],
    ['de-DE-u-co-phonebk', 'DE'],
    ['en-u-hc-h12', undefined],
    ['en-GB-oxendict', 'GB'],
    ['x-us-private', undefined],
    ['', undefined],
  ])('%s names %s', (tag, region) => {
    expect(regionOf(tag)).toBe(region);
  });
});

test.each([
  [['en-US', 'en'], 'inch'],
  [['en', 'en-US'], 'inch'],
  [['my-MM'], 'inch'],
  [['en-LR'], 'inch'],
  [['en-CA', 'en-US'], 'metric'],
  [['de-DE', 'en-US'], 'metric'],
  [['en'], 'metric'],
  [[], 'metric'],
] as const)('a browser set to %j begins with %s', (languages, system) => {
  expect(systemOfRegion(languages)).toBe(system);
});
