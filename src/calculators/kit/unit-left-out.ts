import {
  canonicalUnit,
  convert,
  type Dimension,
  defaultUnits,
  excerpt,
  type FieldProblem,
  formatNumber,
  parseQuantity,
  type ReaderUnits,
  readerUnit,
  unitLabel,
  units,
  withUnit,
} from '../../model/quantity/index.ts';
import { hasSeveralUnits } from '../../model/quantity/units.ts';
import { bareUnitFor, type FieldMeta, fieldMeta } from './fields.ts';
import { rowsText } from './list-field.ts';
import { resinSheetInputs } from './resin-sheet-entries.ts';

/*
 * A bare number on a page is in the units of whoever types it, and the page writes them behind it. In a file that people write and hand on
 * nobody knows who typed it: 40 may be °C or °F.
 */

const inInches: ReaderUnits = { ...defaultUnits, system: 'inch' };

const inUnit = (value: number, code: string) => `${formatNumber(value, 4)} ${unitLabel(code)}`.replace(/ °$/, '°');

/** What a bare number may be meant in: the units of both readers, else the first two that measure the same. */
function meantIn(dimension: Dimension): string {
  if (dimension === 'time') return 'minutes, hours or days';
  const codes = [canonicalUnit[dimension], readerUnit(dimension, inInches), ...codesOf(dimension)];
  return [...new Set(codes)].slice(0, 2).map(unitLabel).join(' or ');
}

const codesOf = (dimension: Dimension) => units.filter((unit) => unit.dimension === dimension).map(({ code }) => code);

/**
 * What is wrong with a quantity of a file that has no unit, though there are several which it may be in.
 *
 * @param text as it stands in the file
 * @param dimension what it measures; a number, a percentage and a count have one reading and are never refused
 * @param unit UCUM code of the unit in which it would be read; unless told the canonical one, and none for a time
 * @returns undefined where it names its unit, needs none (as nothing, which is 0 in any unit of length), or is no quantity at all, which its
 *   reader tells
 */
export function unitLeftOut(text: string | number, dimension: Dimension, unit?: string): FieldProblem | undefined {
  const own = unit ?? canonicalUnit[dimension];
  const written = String(text).trim();
  if (!hasSeveralUnits(dimension) || withUnit(written, own) === written) return undefined;
  const read = parseQuantity(written, { dimension, bareUnit: own });
  if (!read.ok || (read.value === 0 && dimension !== 'temperature')) return undefined;
  const problem = `“${excerpt(written)}” has no unit, and may be ${meantIn(dimension)}`;
  if (dimension === 'time' && unit === undefined)
    return { problem, wayOut: 'Write it behind the number, such as 40 min, 2 h or 3 d.' };
  const inch = readerUnit(dimension, inInches);
  const other = own === inch ? canonicalUnit[dimension] : inch;
  const number = convert(read.value, canonicalUnit[dimension], own);
  const inOther = other === own ? '' : `, or ${inUnit(convert(number, own, other), other)},`;
  return { problem, wayOut: `Write ${inUnit(number, own)}${dimension === 'time' ? '' : inOther} if that is meant.` };
}

/** What is wrong with a list in which a number has no unit. */
function inList(meta: FieldMeta, value: unknown): FieldProblem | undefined {
  const text = typeof value === 'string' ? value : Array.isArray(value) ? rowsText(value, meta.rows) : undefined;
  if (text === undefined || !meta.explicit) return undefined;
  const [metric, inch] = [meta.explicit(text, defaultUnits), meta.explicit(text, inInches)];
  if (metric === inch) return undefined;
  const wayOut =
    metric === text
      ? 'Write °C or °F behind each temperature.'
      : `Write ${excerpt(metric.trim().replace(/\s*[\r\n]+\s*/g, '; '), 120)} if that is meant.`;
  return {
    problem: `“${excerpt(text.trim().replace(/\s*[\r\n]+\s*/g, '; '), 80)}” has numbers without a unit`,
    wayOut,
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What is wrong with a data sheet of which an entry has no unit. */
function inSheet(value: unknown): FieldProblem | undefined {
  const sheet = typeof value === 'string' && value.trim().startsWith('{') ? parsed(value) : value;
  if (typeof sheet !== 'object' || sheet === null) return undefined;
  for (const [name, schema] of Object.entries(resinSheetInputs._zod.def.shape as Record<string, Schema>)) {
    const meta = fieldMeta(schema);
    const entry = Object.hasOwn(sheet, name) ? (sheet as Record<string, unknown>)[name] : undefined;
    const found = meta && fieldUnitLeftOut(meta, entry);
    if (found) return { ...found, problem: `${meta.label} of the data sheet: ${found.problem}` };
  }
  return undefined;
}

type Schema = Parameters<typeof fieldMeta>[0];

/**
 * What is wrong with the value of a field as a file gives it, where a number in it has no unit and may be in several.
 *
 * @param value a text, a number, rows of a list or the entries of a data sheet
 */
export function fieldUnitLeftOut(meta: FieldMeta, value: unknown): FieldProblem | undefined {
  if (meta.kind === 'list' || meta.kind === 'readings') return inList(meta, value);
  if (meta.kind === 'resin') return inSheet(value);
  if (meta.kind !== 'quantity' || !meta.dimension) return undefined;
  if (typeof value !== 'string' && typeof value !== 'number') return undefined;
  return unitLeftOut(value, meta.dimension, bareUnitFor(meta, String(value), defaultUnits));
}
