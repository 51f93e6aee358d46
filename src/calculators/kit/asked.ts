import {
  canonicalUnit,
  type Dimension,
  formatQuantity,
  inReaderUnits,
  parseQuantity,
  type ReaderUnits,
} from '../../model/quantity/index.ts';
import { explicitText } from './address.ts';
import { fieldsOf } from './answer.ts';
import type { Asking, Calculator, RawInputs } from './calculator.ts';
import { type FieldMeta, fieldMeta } from './fields.ts';
import { readersText } from './readers-text.ts';

/** A field and what stands in it, as a sheet of paper says it. */
export interface AskedField {
  name: string;
  label: string;
  words: string;
}

/** What was asked: the fields that hold something, and what was reckoned with where they hold nothing. */
export interface AskedWords {
  given: readonly AskedField[];
  taken: readonly AskedField[];
}

/** Characters of a drawing or of readings that paper shows: whoever needs all of it has the file. */
const longest = 60;

/**
 * What was asked of a calculator, in the words of its form and in the reader's units.
 *
 * @param raw texts by field, as they stand in the form
 */
export function askedWords(
  calculator: Asking & Pick<Calculator, 'taken'>,
  raw: RawInputs,
  units: ReaderUnits,
): AskedWords {
  const text = (name: string) => (raw[name] ?? '').trim();
  const fields = Object.entries(fieldsOf(calculator)).flatMap(([name, schema]) => {
    const meta = fieldMeta(schema);
    return meta && (!meta.when || meta.when.is.includes(text(meta.when.field))) ? [{ name, meta }] : [];
  });
  const usual = calculator.taken?.(raw) ?? {};
  return {
    given: fields.flatMap(({ name, meta }) =>
      text(name) === ''
        ? []
        : [
            {
              name,
              label: meta.label,
              words:
                meta.kind === 'resin'
                  ? resinName(text(name), text('mixRatio') !== '')
                  : valueWords(meta, text(name), units),
            },
          ],
    ),
    taken: fields.flatMap(({ name, meta }) => {
      const taken = usual[name];
      if (taken === undefined || text(name) !== '') return [];
      return [{ name, label: meta.label, words: usualWords(meta, taken, units) }];
    }),
  };
}

/** The text of one field as paper says it: a choice by its label, a number with its unit, a list on one line. */
function valueWords(meta: FieldMeta, text: string, units: ReaderUnits): string {
  const named = [...(meta.options ?? []), ...(meta.pick ?? [])].find(({ value }) => value === text.toLowerCase());
  if (named) return inReaderUnits(named.label, units);
  if (meta.kind === 'resin') return resinName(text, false);
  const line = inFewDigits(meta, explicitText(meta, text, units), units)
    .trim()
    .replace(/\s*[\r\n]+\s*/g, '; ');
  const cut = (meta.kind === 'drawing' || meta.kind === 'readings') && line.length > longest;
  return cut ? `${line.slice(0, longest)} …` : line;
}

/** What was reckoned with where nothing was typed: as the form's hints have it, else rounded to what the reader's rule shows. */
function usualWords(meta: FieldMeta, taken: string, units: ReaderUnits): string {
  const text = readersText(meta, taken, units);
  return meta.dimension === 'length' && units.system === 'inch' && text === taken
    ? asSaid(text, meta.dimension, units)
    : valueWords(meta, text, units);
}

/** Digits behind the point from which a number was worked out by something, not typed. */
const worked = /\.\d{5}/;

/** A quantity that came out of another calculation, as it would be said: `207231.50383789756 mm²` is 2070 cm². */
function inFewDigits({ kind, dimension }: FieldMeta, text: string, units: ReaderUnits): string {
  return kind === 'quantity' && dimension && worked.test(text) ? asSaid(text, dimension, units) : text;
}

/** A quantity rounded and in the unit as a sentence has it; what cannot be read stays as it is. */
function asSaid(text: string, dimension: Dimension, units: ReaderUnits): string {
  const read = parseQuantity(text, { dimension, bareUnit: canonicalUnit[dimension] });
  return read.ok ? formatQuantity(read.value, canonicalUnit[dimension], units) : text;
}

/** A kind of resin in words, or the name of the data sheet that an address carries. Beside a ratio that was typed the kind's own is not said. */
function resinName(text: string, otherRatio: boolean): string {
  if (!text.startsWith('{')) return text.replace(/-(\d+)-(\d+)$/, otherRatio ? '' : ', $1 : $2').replaceAll('-', ' ');
  try {
    const { name } = JSON.parse(text) as { name?: unknown };
    return typeof name === 'string' && name.trim() !== '' ? name : 'a data sheet of your own';
  } catch {
    return 'a data sheet that cannot be read';
  }
}
