import { readShop, type Shop } from '../method/shop/index.ts';
import { type NamedText, shopTextOf, shownProblem } from './method-files.ts';
import { UsageError } from './usage.ts';

/** The shop record that a command was given. */
export function shopOf(file: string | undefined, command: string): Shop | undefined {
  return shopIn(shopTextOf(file, command));
}

/** The shop record that a text holds. */
export function shopIn(named: NamedText | undefined): Shop | undefined {
  if (!named) return undefined;
  const { shop, problems } = readShop(named.text, named.file);
  if (shop) return shop;
  throw new UsageError(...problems.map((problem) => shownProblem(problem)));
}
