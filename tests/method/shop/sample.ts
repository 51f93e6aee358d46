import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readShop, type Shop } from '../../../src/method/shop/index.ts';
import { root } from '../../../src/store/index.ts';

/** The record of the demonstration's shop, as it is written. */
export const sampleText = readFileSync(join(root, 'methods', 'shop.yaml'), 'utf8');

/** The same as read. */
export function sampleShop(): Shop {
  const { shop, problems } = readShop(sampleText, 'methods/shop.yaml');
  if (!shop) throw new Error(problems.map(({ message }) => message).join('\n'));
  return shop;
}

/** The record with one text in it replaced, which must be there. */
export function spoilt(from: string, to: string): string {
  if (!sampleText.includes(from)) throw new Error(`The record does not hold ${from}`);
  return sampleText.replace(from, to);
}
