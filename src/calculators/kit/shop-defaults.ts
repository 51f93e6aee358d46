import { fieldsOf } from './answer.ts';
import type { Calculator, RawInputs } from './calculator.ts';
import type { ShopDefaults } from './read-shop-defaults.ts';

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
