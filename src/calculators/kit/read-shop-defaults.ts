import type { RawInputs } from './calculator.ts';

/**
 * What calculators begin with of a shop record: worked out once, where the record is read, so that no calculator has to read it.
 */
export interface ShopDefaults {
  /** Name of the shop. */
  shop: string;
  /** Inputs by the id of the calculator, as texts with their units. */
  inputs: Readonly<Record<string, RawInputs>>;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Read defaults that a browser kept or a page was given; undefined where they are none. They are texts, judged like anything typed. */
export function readShopDefaults(value: unknown): ShopDefaults | undefined {
  if (!isRecord(value) || typeof value['shop'] !== 'string' || !isRecord(value['inputs'])) return undefined;
  const inputs = Object.entries(value['inputs']).flatMap(([id, texts]): [string, RawInputs][] =>
    isRecord(texts) && Object.values(texts).every((text) => typeof text === 'string') ? [[id, texts as RawInputs]] : [],
  );
  return { shop: value['shop'], inputs: Object.fromEntries(inputs) };
}
