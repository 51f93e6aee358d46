import { defaultUnits, type ReaderUnits, withUnit } from '../../model/quantity/index.ts';
import { fieldsOf } from './answer.ts';
import type { Alternatives, Asking, Calculator, RawInputs } from './calculator.ts';
import { bareUnitFor, type FieldMeta, fieldMeta } from './fields.ts';
import { isTooLong } from './limits.ts';
import { readersText } from './readers-text.ts';

/** A calculator in an address may carry a prefix, so that two on one page do not take each other's inputs. */
const keyOf = (prefix: string, name: string) => (prefix ? `${prefix}.${name}` : name);

/**
 * The raw inputs in the query part of an address. Names that are not the calculator's are left alone;
 * of a repeated name the first counts.
 *
 * @param search for example `?species=white-ash&width=300+mm`
 * @param prefix '' on the calculator's own page
 * @returns only the names that are present, empty texts included
 */
export function readAddress(calculator: Calculator, search: string, prefix = ''): RawInputs {
  const query = new URLSearchParams(search);
  const raw: Record<string, string> = {};
  for (const name of Object.keys(fieldsOf(calculator))) {
    const value = query.get(keyOf(prefix, name));
    if (value !== null) raw[name] = value;
  }
  return raw;
}

/**
 * The query part that holds these raw inputs, in the order of the form, keeping what else stood in `search`.
 * Every quantity carries its unit: a bare number gets the one that the reader's system gives it.
 */
export function writeAddress(
  calculator: Calculator,
  raw: RawInputs,
  units: ReaderUnits,
  { search = '', prefix = '' }: { search?: string; prefix?: string } = {},
): string {
  const query = new URLSearchParams(search);
  const explicit = withUnits(calculator, raw, units);
  const fields = fieldsOf(calculator);
  for (const name of Object.keys(fields)) {
    const value = explicit[name];
    const meta = fieldMeta(fields[name] as (typeof fields)[string]);
    // What no field would read back is no part of a case, and would make an address that nothing can open.
    const isRead = value !== undefined && !(meta && isTooLong(meta, value));
    if (!isRead) query.delete(keyOf(prefix, name));
    else query.set(keyOf(prefix, name), value);
  }
  const text = query.toString();
  return text ? `?${text}` : '';
}

/** The same raw inputs with a unit on every bare number. */
export function withUnits(calculator: Pick<Asking, 'inputs'>, raw: RawInputs, units: ReaderUnits): RawInputs {
  const explicit: Record<string, string> = {};
  for (const [name, field] of Object.entries(fieldsOf(calculator))) {
    const text = raw[name];
    if (text === undefined) continue;
    const meta = fieldMeta(field);
    explicit[name] = meta ? explicitText(meta, text, units) : text;
  }
  return explicit;
}

/** The text of one field with a unit on every bare number. */
export function explicitText(meta: FieldMeta, text: string, units: ReaderUnits): string {
  if (isTooLong(meta, text)) return text;
  if (meta.explicit) return meta.explicit(text, units);
  const unit = meta.kind === 'quantity' ? bareUnitFor(meta, text, units) : undefined;
  return unit ? withUnit(text, unit) : text;
}

/**
 * What a form starts from: the worked case, with the page's preset and then the address laid over it.
 *
 * A switch of units changes the display and never the case: the worked case is one board in both systems, a page's preset is put
 * into the reader's units where a shop's fraction says the same, and what stands in an address stays as it was written, since an
 * address means the same to every reader.
 *
 * @param habits what the reader's own case begins with, with units; it stands under the preset, and not at all beside an address
 */
export function startingInputs(
  calculator: Calculator,
  preset: RawInputs,
  units: ReaderUnits,
  search: string,
  prefix = '',
  habits: RawInputs = {},
): RawInputs {
  const addressed = readAddress(calculator, search, prefix);
  // A bare number of an address or a page is metric: a reader of inches gets it with its unit.
  const metric = (texts: RawInputs) => (units.system === 'metric' ? texts : withUnits(calculator, texts, defaultUnits));
  // A link means the same to every reader, whatever their own browser keeps.
  const own = Object.keys(addressed).length > 0 ? {} : habits;
  const worked = overlay(calculator, calculator.example[units.system], own);
  const base = overlay(calculator, worked, inReadersTexts(calculator, metric(preset), units));
  return overlay(calculator, base, metric(addressed));
}

/** Texts of a page as the reader would type them. */
function inReadersTexts(calculator: Calculator, texts: RawInputs, units: ReaderUnits): RawInputs {
  const fields = fieldsOf(calculator);
  const turned = Object.entries(texts).map(([name, text]) => {
    const schema = fields[name];
    const meta = schema && fieldMeta(schema);
    return [name, meta ? readersText(meta, text, units) : text] as const;
  });
  return Object.fromEntries(turned);
}

/** Lay inputs over others; where they pick one set of alternatives, the other sets of the base go. */
export function overlay(calculator: Pick<Calculator, 'alternatives'>, base: RawInputs, over: RawInputs): RawInputs {
  const merged: Record<string, string> = { ...base };
  for (const { sets } of calculator.alternatives ?? []) {
    if (!sets.some((set) => set.fields.some((field) => field in over))) continue;
    for (const field of sets.flatMap((set) => set.fields)) delete merged[field];
    // A half-given set takes the rest from the base, so that a short address still answers.
    for (const set of sets.filter((candidate) => candidate.fields.some((field) => over[field]))) {
      for (const field of set.fields) if (base[field] !== undefined) merged[field] = base[field];
    }
  }
  return { ...merged, ...over };
}

/** The set of alternatives that the raw inputs use: the first with any text in what decides it, else the usual one. */
export function activeSet(alternatives: Alternatives, raw: RawInputs): number {
  const used = alternatives.sets.findIndex((set) =>
    (set.deciding ?? set.fields).some((field) => (raw[field] ?? '').trim() !== ''),
  );
  return Math.max(0, used);
}
