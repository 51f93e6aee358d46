import type { Caution, Figure, Result } from '../../src/model/evidence/index.ts';
import {
  defaultUnits,
  formatBand,
  formatQuantity,
  holdsAmount,
  inReaderUnits,
  parseQuantity,
  type ReaderUnits,
  unitByCode,
} from '../../src/model/quantity/index.ts';

/*
 * What must hold of any answer of any calculator, whatever was asked. Each function says what is wrong, or nothing.
 */

const inches: ReaderUnits = { system: 'inch', inches: 'thirty-seconds' };

/** A sentence that nobody would say: with a mark, a number or a word of the program left in it. */
const unspoken = (text: string) => /undefined|NaN|Infinity|\[object|⟦|⟧|\bnull\b|\d\.\d*?[1-9]\d{4}/.test(text);

/** The verdict is there, is a sentence, and can be said in either system of units. */
function verdictSpoken({ verdict }: Result): string | undefined {
  if (!verdict) return 'no verdict';
  if (!['good', 'care', 'stop', 'unknown'].includes(verdict.level)) return `verdict of level ${verdict.level}`;
  for (const units of [defaultUnits, inches]) {
    const text = inReaderUnits(verdict.text, units);
    // Names that a reader typed may be odd, and long.
    const own = text.replaceAll(/“[^”]*”/g, '');
    if (unspoken(own)) return `verdict “${text}”`;
    if (!/[.?]$/.test(text)) return `verdict without an end: “${text}”`;
    if (own.length > 420) return `verdict of ${own.length} characters: “${text}”`;
  }
  return undefined;
}

/** A unit that runs into the word 'in', as in `13/16 in in one go`. */
const stutters = /\bin\.? in\b/;

/** Every sentence of an answer can be written in the reader's units: no mark is left that nothing turns into a quantity. */
function marksReadable(result: Result): string | undefined {
  const { figures, ...rest } = result;
  const text = inReaderUnits(
    JSON.stringify({ ...rest, notes: Object.values(figures).map(({ note }) => note) }),
    inches,
  );
  const twice = stutters.exec(text);
  if (twice) return `a unit read twice in “${text.slice(twice.index - 40, twice.index + 40)}”`;
  return holdsAmount(text) || text.includes('⟦')
    ? `a mark left in ${text.slice(text.indexOf('⟦') - 40, text.indexOf('⟦') + 40)}`
    : undefined;
}

/** Cautions: one id each, each of them a line or two that begins with what to do. */
function cautionsShort({ cautions }: Result): string | undefined {
  const ids = cautions.map(({ id }) => id);
  if (new Set(ids).size < ids.length) return `a caution twice: ${ids.join(', ')}`;
  const long = cautions.find(({ text }) => inReaderUnits(text, defaultUnits).length > 330);
  return long && `caution ${long.id} of ${long.text.length} characters`;
}

/** The cautions of the case come before the general ones, and a danger before a note among either. */
function cautionsOrdered({ cautions }: Result): string | undefined {
  const ranks = cautions.map(({ own, level }) => (own ? 0 : 3) + ['danger', 'warning', 'note'].indexOf(level));
  return ranks.some((rank, at) => rank < (ranks[at - 1] ?? 0))
    ? `cautions out of order: ${cautions.map(({ id }) => id).join(', ')}`
    : undefined;
}

interface Banded {
  low?: number | undefined;
  high?: number | undefined;
}

/** A band holds its value, and its ends the right way round, one end alone too. */
const holds = (value: number, { low = value, high = value }: Banded) => low <= value && value <= high;

/** How large a written quantity is, in the canonical unit of its dimension; what is under a length may be all of it. */
function sizeWritten(text: string, unit: string): number {
  const dimension = unitByCode(unit)?.dimension ?? 'number';
  const read = parseQuantity(text.replace(/^under /, ''), { dimension, bareUnit: unit });
  if (!read.ok) throw new Error(`“${text}” cannot be read: ${read.problem}`);
  return read.value;
}

/** The band of a figure as it is read on the page: its ends the right way round, and the figure within them. */
function bandMiswritten({ value, low, high, unit, digits, kept }: Figure, units: ReaderUnits): string | undefined {
  if (low === undefined || high === undefined) return undefined;
  const ends = formatBand(value, { low, high }, unit, units, { digits, kept });
  if (ends === undefined) return undefined;
  const [from, to = from] = ends.split(' to ').map((end) => sizeWritten(end, unit)) as [number, number?];
  const shown = formatQuantity(value, unit, units, { digits, kept });
  const size = sizeWritten(shown, unit);
  // Twelve digits are as many as survive two conversions.
  const slack = 1e-12 * Math.abs(size);
  return from - slack <= size && size <= to + slack ? undefined : `${shown} with a band of ${ends}`;
}

const decimalInches: ReaderUnits = { system: 'inch', inches: 'decimal' };

/** No band runs backwards or leaves its value out: of figures, times, amounts and lines, as numbers and as they are written. */
function bandsHold({ figures, timeline, uses = [], series = [] }: Result): string | undefined {
  const numbers: readonly (readonly [string, number, Banded])[] = [
    ...Object.entries(figures).map(([name, figure]) => [name, figure.value, figure] as const),
    ...(timeline?.events ?? []).map((event) => [event.id, event.at, event] as const),
    ...uses.map((use) => [use.id, use.amount, use] as const),
    ...series.flatMap(({ lines }) =>
      lines.flatMap(({ id, values, low, high }) =>
        values.map((value, at) => [id, value, { low: low?.[at], high: high?.[at] }] as const),
      ),
    ),
  ];
  const outside = numbers.find(([, value, band]) => !holds(value, band));
  if (outside) {
    const [name, value, { low, high }] = outside;
    return `${name} of ${value} outside its band of ${low} to ${high}`;
  }
  for (const [name, figure] of Object.entries(figures)) {
    for (const units of [defaultUnits, inches, decimalInches]) {
      const miswritten = bandMiswritten(figure, units);
      if (miswritten) return `${name} of ${miswritten}`;
    }
  }
  return undefined;
}

/** Cautions that an answer of a calculator always carries, or carries where its inputs are so. */
const always: Readonly<Record<string, (result: Result, asked: Readonly<Record<string, string>>) => readonly string[]>> =
  {
    'resin-dose': () => ['resin-cup-heat', 'resin-skin'],
    'working-time': () => ['resin-cup-heat'],
    'flood-coat': () => ['resin-cup-heat'],
    'pour-heat': () => ['deep-pour'],
    'cutter-speed': (_, { work }) => (work === 'boring' ? ['boring'] : ['router-setup', 'marked-speed']),
    'board-yield': () => ['rip-by-hand-machine', 'find-defects-first'],
    'template-fit': () => ['template-routing'],
  };

function cautionsCarried(id: string, result: Result, asked: Readonly<Record<string, string>>): string | undefined {
  const carried = new Set(result.cautions.map((caution: Caution) => caution.id));
  const missing = (always[id]?.(result, asked) ?? []).filter((wanted) => !carried.has(wanted));
  return missing.length > 0 ? `without ${missing.join(', ')}` : undefined;
}

/** Figures, and ids of tables, charts and documents, that may stand beside a verdict of 'not enough known': what was given or read, never advice. */
const keptWhenUnknown: Readonly<
  Record<string, { figures: readonly string[]; tables: readonly string[]; documents?: readonly string[] }>
> = {
  // Where a coat of a liquid with these properties comes to rest; not a gram of it.
  'flood-coat': { figures: ['thickness', 'capillaryLength'], tables: [] },
  // The speed of the edge at the turns that were given, and what the lengths that were given lack.
  'cutter-speed': { figures: ['rim', 'shortBy', 'leastFirstPass', 'thickerTemplate', 'shorterEdge'], tables: [] },
  // What each part is known to be, and what no label may say; no words for a label, no days.
  'food-contact': { figures: [], tables: ['not', 'parts', 'conditions', 'papers', 'rules', 'allergens'] },
  // How to wash, dry and renew, which hold whatever is missing; no day to hand it over.
  'care-card': { figures: ['upkeep', 'lines'], tables: [], documents: ['card'] },
  // Size of what was entered; not a gram of resin.
  'resin-dose': { figures: ['area', 'fillVolume'], tables: [] },
  // What the model says of this very pour, beside a verdict that it decides nothing; no depth, layer or wait.
  'pour-heat': {
    figures: [
      'timeToWork',
      'timeToFirstGel',
      'timeToLastGel',
      'peakRise',
      'timeToPeak',
      'hottestHeight',
      'ceiling',
      'baseThickness',
      'sheetDepth',
      'riseAsPool',
      'pourVolume',
      'pourMass',
    ],
    tables: ['temperature-time', 'temperature-height', 'temperature-width'],
  },
};

/** Where not enough is known, nothing looks like advice: no day and nothing to buy either. */
function silentWhenUnknown(
  id: string,
  { verdict, figures, tables = [], series = [], documents = [], timeline, uses = [] }: Result,
): string | undefined {
  if (verdict?.level !== 'unknown') return undefined;
  const kept = { documents: [], ...(keptWhenUnknown[id] ?? { figures: [], tables: [] }) };
  const told = [
    ...Object.keys(figures).filter((name) => !kept.figures.includes(name)),
    ...tables.map((table) => table.id).filter((table) => !kept.tables.includes(table)),
    ...documents.map((document) => document.id).filter((document) => !kept.documents.includes(document)),
    ...(timeline?.events ?? []).map((event) => event.id),
    ...uses.map((use) => use.id),
    ...series.map((one) => one.id).filter((one) => !kept.tables.includes(one)),
  ];
  return told.length > 0 ? `not enough known, yet it tells ${told.join(', ')}` : undefined;
}

/** Calculators that tell of a pour, with what of it holds of any liquid. */
const ofAPour: Readonly<Record<string, readonly string[]>> = {
  'pour-heat': [],
  'flood-coat': ['thickness', 'capillaryLength'],
};

/** What a sheet states itself of a pour, and arithmetic with it: all that may be told where it names no pot life. */
const printedOnSheet = ['sheetDepth', 'layers', 'layerDepth', 'pourVolume', 'pourMass'];

/** Of a sheet that states no pot life nothing is told of a pour by a clock or by its heat, whatever kind lies under it; its own depth is. */
function silentBySheet(
  id: string,
  { verdict, figures, tables = [], series = [], timeline, uses = [] }: Result,
  { resin, k2At25C }: Readonly<Record<string, string>>,
): string | undefined {
  const kept = ofAPour[id];
  if (!kept || k2At25C !== undefined || !resin?.startsWith('{')) return undefined;
  const sheet = JSON.parse(resin) as Readonly<Record<string, unknown>>;
  if (sheet.potLife !== undefined) return undefined;
  const ofDepth = sheet.greatestDepth === undefined ? [] : printedOnSheet;
  // Grams of a coat within the depth that the sheet allows follow from that depth.
  if (id === 'flood-coat' && ofDepth.length > 0) return undefined;
  const told = [
    ...Object.keys(figures).filter((name) => ![...kept, ...ofDepth].includes(name)),
    ...[...tables, ...series, ...uses].map((one) => one.id),
    ...(timeline?.events ?? []).map((event) => event.id),
  ];
  if (verdict?.level !== 'unknown' && verdict?.level !== 'stop') return `${verdict?.level} by a silent sheet`;
  return told.length > 0 ? `a silent sheet, yet it tells ${told.join(', ')}` : undefined;
}

/** What is wrong with an answer by the principles that all calculators keep; undefined where nothing is. */
export function brokenPrinciple(
  id: string,
  asked: Readonly<Record<string, string>>,
  result: Result,
): string | undefined {
  return (
    verdictSpoken(result) ??
    marksReadable(result) ??
    bandsHold(result) ??
    cautionsShort(result) ??
    cautionsOrdered(result) ??
    cautionsCarried(id, result, asked) ??
    silentWhenUnknown(id, result) ??
    silentBySheet(id, result, asked)
  );
}
