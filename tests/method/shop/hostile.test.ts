import { describe, expect, test } from 'vitest';
import { readShop } from '../../../src/method/shop/index.ts';
import { hostileTexts } from '../../model/data/hostile.ts';
import { sampleText } from './sample.ts';

describe('a shop record spoilt in many ways', () => {
  const good = JSON.stringify(readShop(sampleText).shop);
  const texts = hostileTexts(sampleText, 20261129, 1);

  test('is refused with a place, or read honestly', () => {
    expect(texts.length).toBeGreaterThan(60);
    const wrong = texts.flatMap(({ name, text, expects }) => {
      const { shop, problems } = readShop(text, 'shop.yaml');
      const found: string[] = [];
      if ((shop === undefined) !== problems.length > 0) found.push(`${name}: neither a shop nor a problem`);
      if (expects === 'refused' && shop) found.push(`${name}: read as if nothing were wrong`);
      if (expects === 'same' && JSON.stringify(shop) !== good) found.push(`${name}: read as something else`);
      return found;
    });
    expect(wrong).toEqual([]);
  });
});
