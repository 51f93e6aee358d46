import {
  asTyped,
  defaultUnits,
  excerpt,
  parseQuantity,
  type ReaderUnits,
  readerUnit,
} from '../../model/quantity/index.ts';
import type { FieldMeta } from './fields.ts';
import { readersText } from './readers-text.ts';

const inches: ReaderUnits = { ...defaultUnits, system: 'inch' };

/** A text that is written in the units of the inch system. */
const holdsInches = /\d\s*(?:in|ft|fl oz|oz|lb|gal|sq ft|°F)[23]?\b|^in:/;

/** Codes of the units of the inch system stand in square brackets. */
const isOfInchSystem = (code: string) => code.includes('[');

/** The example of a field that a reader with these units would type; undefined where the field has none. */
export function exampleFor(
  meta: Pick<FieldMeta, 'kind' | 'dimension' | 'examples'>,
  { system }: Pick<ReaderUnits, 'system'>,
): string | undefined {
  const { kind, dimension, examples } = meta;
  const [first] = examples;
  if (first === undefined || system === 'metric') return first;
  if (kind !== 'quantity' || !dimension) return examples.find((text) => holdsInches.test(text)) ?? first;
  const bareUnit = readerUnit(dimension, defaultUnits);
  const own = examples.find((text) => {
    const read = parseQuantity(text, { dimension, bareUnit });
    return read.ok && isOfInchSystem(read.unit);
  });
  return own ?? readersText(meta as FieldMeta, first, inches);
}

/** The example of a field in a sentence, which each reader gets in their own units; undefined where the field has none. */
export function exampleWords(
  meta: Pick<FieldMeta, 'kind' | 'dimension' | 'examples'>,
  longest = 200,
): string | undefined {
  const metric = exampleFor(meta, defaultUnits);
  if (metric === undefined) return undefined;
  return asTyped({ metric: excerpt(metric, longest), inch: excerpt(exampleFor(meta, inches) ?? metric, longest) });
}
