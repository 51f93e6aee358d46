import { amount } from './amounts.ts';
import { parseQuantity, withUnit } from './read.ts';
import { excerpt, type FieldProblem, type Read } from './text.ts';
import { type ReaderUnits, readerUnit } from './units.ts';

/** A comma between two digits is a decimal comma; any other parts two entries. */
const partComma = /,(?!\d)|(?<!\d),/;
const partCommaKept = /(,(?!\d)|(?<!\d),)/;
const entryEnd = /[;\n\r]/;
const entryEndKept = /([;\n\r])/;

/** The entries of a list, parted by `;` or a line end; empty ones are left out. */
export function splitEntries(text: string): string[] {
  return text
    .split(entryEnd)
    .map((entry) => entry.trim())
    .filter(Boolean);
}

/** The parts of an entry, parted by commas that are no decimal commas. */
export function splitParts(entry: string): string[] {
  return entry.split(partComma).map((part) => part.trim());
}

/**
 * What is wrong with `3,1,0,2`, where commas that should part numbers would be decimal ones; undefined where nothing is.
 *
 * @param where words that name the entry, put before the problem
 * @param least how many such commas are wrong: one, where a part is missing behind them, else two
 */
export function tightCommas(part: string, where: string, least = 2): ({ ok: false } & FieldProblem) | undefined {
  const between = part.match(/(?<=\d),(?=\d)/g)?.length ?? 0;
  if (between === 0 || (between < least && !part.includes('/'))) return undefined;
  return {
    ok: false,
    problem: `${where}: in “${excerpt(part)}” the commas stand between digits, where a comma is a decimal mark`,
    wayOut: `Put a blank after each comma: ${excerpt(part.replaceAll(',', ', '))}.`,
  };
}

/** Feet, or pounds, whose inches or ounces follow as the same length: `8 ft 3 in`. */
const feetBefore = /(?:\d\s*(?:ft|lb)|\d['\u2032])$/i;

/**
 * An entry whose parts are parted by blanks, with commas put in: `channel 30 2` becomes `channel, 30, 2`. A whole number and its fraction
 * stay together, and so do feet and inches. Commas that are there stay.
 *
 * @param words that begin a part of their own, for example `flatsawn`
 */
export function withCommas(entry: string, words: readonly string[] = []): string {
  const begins = words.length > 0 ? `|(?:${words.join('|')})\\b` : '';
  return entry.trim().replace(new RegExp(`\\s+(?=\\d${begins})`, 'gi'), (gap, at: number, whole: string) => {
    const [before, after] = [whole.slice(0, at), whole.slice(at + gap.length)];
    const goesOn =
      before.endsWith(',') ||
      (/\d$/.test(before) && /^\d+\/\d/.test(after)) ||
      (feetBefore.test(before) && /^\d[\d\s/.]*(?:in\b|["\u2033])/i.test(after));
    return goesOn ? gap : ', ';
  });
}

/**
 * What is wrong with `A 96 10`, an entry whose parts no comma parts; undefined where it has a comma or is one length, such as `8 ft 3 in`.
 *
 * @param where words that name the entry, put before the problem
 * @param parts what the parts of an entry are, in words
 */
export function missingCommas(entry: string, where: string, parts: string): ({ ok: false } & FieldProblem) | undefined {
  if (splitParts(entry).length > 1 || !/\s\d/.test(entry)) return undefined;
  if (parseQuantity(entry, { dimension: 'length', bareUnit: '[in_i]' }).ok) return undefined;
  return {
    ok: false,
    problem: `${where}: “${excerpt(entry)}” has no commas, so its parts cannot be told apart`,
    wayOut: `Put commas between: ${parts}. Perhaps ${excerpt(withCommas(entry), 200)}.`,
  };
}

/** Lengths that a list takes, mm. */
export interface LengthRange {
  minimum: number;
  maximum: number;
}

/** A range in words, for a message; each end is written in the reader's own units. */
const lengthRangeWords = ({ minimum, maximum }: LengthRange): string =>
  `${amount(minimum, 'mm')} to ${amount(maximum, 'mm')}`;

/**
 * Read a length of a list, a bare number being millimetres unless told.
 *
 * @param where words that name the entry, put before the problem
 */
export function readListLength(text: string, where: string, range: LengthRange, bareUnit = 'mm'): Read<number> {
  const tight = tightCommas(text, where);
  if (tight) return tight;
  const parsed = parseQuantity(text, { dimension: 'length', bareUnit });
  if (!parsed.ok) return { ...parsed, problem: `${where}: ${parsed.problem}` };
  if (parsed.value < range.minimum || parsed.value > range.maximum) {
    return {
      ok: false,
      problem: `${where}: “${excerpt(text)}” was read as ${amount(parsed.value, 'mm', 6)}; what is taken is ${lengthRangeWords(range)}`,
      wayOut: 'Give a length in that range, with its unit.',
    };
  }
  return { ok: true, value: parsed.value };
}

/** Two places of a length as they stand in a text, with the words before them: `knot 600 to 680 mm`. */
export interface SpanText {
  words: string;
  from: string;
  to: string;
}

const spanPattern =
  /^(?<words>\p{L}[\p{L} '-]*?)?\s*(?<from>\d[^–—]*?)(?:\s*(?:\bto\b|\.\.|–|—)\s*|\s-\s)(?<to>\d.*)$/iu;
const tightSpan =
  /^(?<words>\p{L}[\p{L} '-]*?)?\s*(?<from>\d+(?:\.\d+)?)-(?<to>\d+(?:\.\d+)?(?:\s*(?:mm|cm|m|in))?)$/iu;
/** No span is longer; what is longer is not searched, which could take long. */
const longestSpan = 120;

/** Letters and marks that are a unit, with the number before them left out. */
const unitsIn = (text: string): string[] => text.match(/[a-zµ\u2032\u2033'"[\]_]+/gi) ?? [];

/**
 * The two ends of a span along a length, or undefined where the text is none: `knot 600 to 680 mm`, `23 in to 26 in`, `check 600-680`,
 * `5 to 6 ft 3 in`. A unit that only one end has is the other's as well, the first of them where there are two: 5 **ft** to 6 ft 3 in.
 */
export function splitSpan(text: string): SpanText | undefined {
  if (text.length > longestSpan) return undefined;
  const found = (tightSpan.exec(text.trim()) ?? spanPattern.exec(text.trim()))?.groups;
  if (!found) return undefined;
  const { words = '', from = '', to = '' } = found as Record<string, string | undefined>;
  const [first] = unitsIn(to);
  const ofFrom = unitsIn(from);
  const bareFrom = ofFrom.length === 0;
  return {
    words: words.trim(),
    from: bareFrom && first !== undefined ? `${from.trim()} ${first}` : from.trim(),
    to: !bareFrom && first === undefined && ofFrom.length === 1 ? `${to.trim()} ${ofFrom[0]}` : to.trim(),
  };
}

/** What a part of an entry measures: a length, two places of a length (and two across), a temperature, or nothing that has a unit. */
export type PartMeasure = 'length' | 'span' | 'temperature' | undefined;

/** A span, or one along and one behind the word `across`, with the unit behind each bare end. */
function withSpanUnit(text: string, unit: string): string {
  return text
    .split(/(\s+across\s+)/i)
    .map((part, at) => {
      const span = at % 2 === 0 ? splitSpan(part) : undefined;
      if (!span) return part;
      const [from, to] = [withUnit(span.from, unit), withUnit(span.to, unit)];
      return from === span.from && to === span.to ? part : `${span.words} ${from} to ${to}`.trim();
    })
    .join('');
}

/**
 * Write the reader's unit behind every bare number of a list, so that the text means the same to every reader, in an address and in
 * a file. All else stays as typed. Every list field gives this, with what its parts measure, as its `explicit`.
 *
 * @param measures what each part of an entry measures; it is given the parts as typed
 */
export function listUnits(measures: (parts: readonly string[]) => readonly PartMeasure[]) {
  return (text: string, reader: ReaderUnits): string =>
    text
      .split(entryEndKept)
      .map((entry, at) => (at % 2 === 1 ? entry : explicitEntry(entry, measures, reader)))
      .join('');
}

function explicitEntry(
  entry: string,
  measures: (parts: readonly string[]) => readonly PartMeasure[],
  reader: ReaderUnits,
): string {
  const pieces = entry.split(partCommaKept);
  const parts = pieces.filter((_, at) => at % 2 === 0).map((part) => part.trim());
  const measured = measures(parts);
  return pieces
    .map((piece, at) => {
      const measure = at % 2 === 0 ? measured[at / 2] : undefined;
      if (!measure) return piece;
      const [, before = '', part = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(piece) ?? [];
      const unit = readerUnit(measure === 'temperature' ? 'temperature' : 'length', reader);
      return `${before}${measure === 'span' ? withSpanUnit(part, unit) : withUnit(part, unit)}${after}`;
    })
    .join('');
}

/** Read every entry of a list, each with its number from 1, stopping at the first that cannot be read. */
export function readAll<Entry, T>(entries: readonly Entry[], read: (entry: Entry, at: number) => Read<T>): Read<T[]> {
  const values: T[] = [];
  for (const [index, entry] of entries.entries()) {
    const outcome = read(entry, index + 1);
    if (!outcome.ok) return outcome;
    values.push(outcome.value);
  }
  return { ok: true, value: values };
}
