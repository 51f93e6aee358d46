import { fieldsOf } from './answer.ts';
import type { Calculator, RawInputs } from './calculator.ts';

/**
 * What calculators begin with of a shop record: worked out once, where the record is read, so that no calculator has to read it.
 */
export interface ShopDefaults {
  /** Name of the shop. */
  shop: string;
  /** Inputs by the id of the calculator, as texts with their units. */
  inputs: Readonly<Record<string, RawInputs>>;
}

/**
 * What a calculator's worked case begins with of a shop record: only what it asks for.
 *
 * A data sheet is laid only over a worked case that has a resin: a board without resin does not get any by itself.
 */
export function shopInputs(
  calculator: Pick<Calculator, 'id' | 'inputs' | 'example'>,
  defaults: ShopDefaults,
): RawInputs {
  const fields = fieldsOf(calculator);
  const own = Object.hasOwn(defaults.inputs, calculator.id) ? (defaults.inputs[calculator.id] ?? {}) : {};
  return Object.fromEntries(
    Object.entries(own).filter(
      ([name]) => Object.hasOwn(fields, name) && (name !== 'resin' || 'resin' in calculator.example.metric),
    ),
  );
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
