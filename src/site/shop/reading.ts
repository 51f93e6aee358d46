import type { ShopDefaults } from '../../calculators/kit/read-shop-defaults.ts';
import type { EditProblem } from '../../method/edit/types.ts';
import { shopDefaults } from '../../method/shop/defaults.ts';
import { readShop, type Shop } from '../../method/shop/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';

/** What is wrong with a record, by its place in the text and in the record. */
export type ShopProblem = EditProblem & { field: string };

/** A shop record of a reader, as the page shows it. */
export type ShopText =
  | { ok: true; shop: Shop; defaults: ShopDefaults; problems: readonly [] }
  | { ok: false; problems: readonly ShopProblem[] };

const stepsOf = (field: string): (string | number)[] =>
  field === '' ? [] : field.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** Where a line and column, counted from 1, stand in a text. */
export function offsetOf(text: string, line: number, column: number): number {
  const before = text.split('\n').slice(0, line - 1);
  return Math.min(text.length, before.reduce((sum, each) => sum + each.length + 1, 0) + column - 1);
}

/** Read a record as typed: what it gives, or everything wrong with it, in the reader's units. */
export function readShopText(text: string, units: ReaderUnits): ShopText {
  const { shop, problems, reading } = readShop(text, 'shop.yaml', units);
  if (shop) return { ok: true, shop, defaults: shopDefaults({ shop, reading }), problems: [] };
  return {
    ok: false,
    problems: problems.map(({ line, column, field, message }): ShopProblem => {
      const from = offsetOf(text, line, column);
      return { from, to: from, line, column, field, level: 'error', path: stepsOf(field), message, fixes: [] };
    }),
  };
}
