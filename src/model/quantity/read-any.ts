import { parseQuantity } from './read.ts';
import { remembering } from './remember.ts';
import { excerpt, type FieldProblem } from './text.ts';
import { canonicalUnit, type Dimension, units } from './units.ts';

/** A quantity whose unit said what it measures: in the canonical unit of that dimension. */
export interface AnyQuantity {
  readonly dimension: Dimension;
  readonly value: number;
  /** UCUM code of the canonical unit. */
  readonly unit: string;
}

export type AnyReading =
  | { readonly ok: true; readonly value: readonly [AnyQuantity, ...AnyQuantity[]] }
  | ({ readonly ok: false } & FieldProblem);

/** What a text may measure, what is asked most often first: a degree Celsius is a temperature before it is a difference of two. */
const dimensions = (Object.keys(canonicalUnit) as Dimension[]).filter(
  (dimension) => !['count', 'money', 'number'].includes(dimension),
);

/** What each spelling of a unit may measure. */
const measuredBy: ReadonlyMap<string, ReadonlySet<Dimension>> = (() => {
  const found = new Map<string, Set<Dimension>>();
  for (const { code, label, names, dimension } of units) {
    for (const spelling of [code, label, ...names]) {
      const key = spelling.toLowerCase();
      found.set(key, (found.get(key) ?? new Set()).add(dimension));
    }
  }
  return found;
})();

/**
 * Dimensions that the unit at the end of a text leaves open: the longest spelling that it ends with. All of them where that is none that is
 * known, or a degree sign, which temperatures have too.
 */
function likely(text: string): readonly Dimension[] {
  const lower = text.toLowerCase();
  for (let at = 0; at < lower.length; at += 1) {
    const measured = measuredBy.get(lower.slice(at).trim());
    if (measured) return measured.has('angle') ? dimensions : dimensions.filter((dimension) => measured.has(dimension));
  }
  return dimensions;
}

/** No quantity is longer; what is longer is not searched for one, which would take as long as its square. */
const longest = 200;

const wayOut = 'Write a number and its unit, such as 305 mm, 12 in, 40 min, 20 °C or 8 %.';

/** A number without a unit. */
const bare = /^\s*[-+−]?[\d\s.,]*\d\s*$/;

/**
 * Read a quantity by its own unit, whatever it measures: `305 mm`, `12 in`, `40 min`, `20 °C`, `8 %`; a number alone is a number.
 *
 * @returns every dimension that the text may have (a density of a liquid is a density too), or why it has none
 */
export function readAnyQuantity(entry: string | number): AnyReading {
  if (typeof entry === 'number') return readBare(String(entry));
  if (entry.length > longest) return { ok: false, problem: `“${excerpt(entry)}” is too long for a quantity`, wayOut };
  return readOnce(entry);
}

function readBare(text: string): AnyReading {
  const read = parseQuantity(text, { dimension: 'number', bareUnit: '1' });
  return read.ok ? { ok: true, value: [{ dimension: 'number', value: read.value, unit: '1' }] } : read;
}

/** The methods of a shop write the same few hundred quantities again and again. */
const readOnce = remembering(1000, readWritten);

function readWritten(text: string): AnyReading {
  if (bare.test(text)) return readBare(text);
  const found = likely(text).flatMap((dimension): AnyQuantity[] => {
    const read = parseQuantity(text, { dimension, bareUnit: canonicalUnit[dimension] });
    return read.ok ? [{ dimension, value: read.value, unit: canonicalUnit[dimension] }] : [];
  });
  const [first, ...others] = found;
  if (first) return { ok: true, value: [first, ...others] };
  // What is wrong with it as a length is wrong with it as anything: the number, or a unit that nobody knows.
  const asLength = parseQuantity(text, { dimension: 'length', bareUnit: 'mm' });
  return {
    ok: false,
    problem: asLength.ok ? `“${text}” is not a quantity` : asLength.problem.replace(' of length', ''),
    wayOut,
  };
}
