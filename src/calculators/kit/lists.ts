import { parseQuantity } from '../../model/quantity/index.ts';
import { excerpt, type FieldProblem } from './fields.ts';

/** What a reader of a list gives: the value, or why there is none. */
export type Read<T> = { ok: true; value: T } | ({ ok: false } & FieldProblem);

/** A comma between two digits is a decimal comma; any other parts two entries. */
const partComma = /,(?!\d)|(?<!\d),/;

/** The entries of a list, parted by `;` or a line end; empty ones are left out. */
export function splitEntries(text: string): string[] {
  return text
    .split(/[;\n\r]/)
    .map((entry) => entry.trim())
    .filter(Boolean);
}

/** The parts of an entry, parted by commas that are no decimal commas. */
export function splitParts(entry: string): string[] {
  return entry.split(partComma).map((part) => part.trim());
}

/**
 * Read a length of a list, a bare number being millimetres.
 *
 * @param where words that name the entry, put before the problem
 */
export function readListLength(
  text: string,
  where: string,
  range: { minimum: number; maximum: number },
  bareUnit = 'mm',
): Read<number> {
  const parsed = parseQuantity(text, { dimension: 'length', bareUnit });
  if (!parsed.ok) return { ...parsed, problem: `${where}: ${parsed.problem}` };
  if (parsed.value < range.minimum || parsed.value > range.maximum) {
    return {
      ok: false,
      problem: `${where}: ${excerpt(text)} is outside ${range.minimum} to ${range.maximum} mm`,
      wayOut: 'Give a length in that range.',
    };
  }
  return { ok: true, value: parsed.value };
}

/** Read every entry of a list, stopping at the first that cannot be read. */
export function readAll<Entry, T>(entries: readonly Entry[], read: (entry: Entry, at: number) => Read<T>): Read<T[]> {
  const values: T[] = [];
  for (const [index, entry] of entries.entries()) {
    const outcome = read(entry, index + 1);
    if (!outcome.ok) return outcome;
    values.push(outcome.value);
  }
  return { ok: true, value: values };
}
