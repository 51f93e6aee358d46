import { fieldsOf } from '../../calculators/kit/answer.ts';
import type { Calculator } from '../../calculators/kit/calculator.ts';
import { type FieldMeta, fieldMeta } from '../../calculators/kit/fields.ts';
import { rowsText } from '../../calculators/kit/list-field.ts';
import { canonicalUnit, unitLabel } from '../../model/quantity/index.ts';

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The text of one input: what its field on the calculator's page, or its place in an address, holds. */
function inputText(value: unknown, meta: FieldMeta | undefined): string {
  if (typeof value === 'number') {
    const label = meta?.kind === 'quantity' ? unitLabel(canonicalUnit[meta.dimension ?? 'number']) : '';
    return label === '' ? String(value) : `${value} ${label}`;
  }
  if (Array.isArray(value)) return rowsText(value, value.some(isObject) ? meta?.rows : undefined);
  return isObject(value) ? JSON.stringify(value) : String(value ?? '');
}

/** Inputs of a calculation as texts, each quantity with its unit, so that an address may carry them to the calculator. */
function inputTexts(
  raw: Readonly<Record<string, unknown>>,
  fields: ReturnType<typeof fieldsOf>,
): Record<string, string> {
  return Object.fromEntries(
    Object.entries(raw).map(([name, value]) => {
      const schema = fields[name];
      return [name, inputText(value, schema && fieldMeta(schema))];
    }),
  );
}

/**
 * The inputs of a calculation as a calculator's page or an address takes them: texts with their units, and an empty text for each input
 * that the calculator's own worked case begins with and the calculation does not give, or that case would answer in its place.
 */
export function wholeCase(raw: Readonly<Record<string, unknown>>, calculator: Calculator): Record<string, string> {
  const given = inputTexts(raw, fieldsOf(calculator));
  const begun = Object.values(calculator.example).flatMap((example) => Object.keys(example));
  const empty = begun.filter((name) => !Object.hasOwn(given, name)).map((name) => [name, '']);
  return { ...given, ...Object.fromEntries(empty) };
}
