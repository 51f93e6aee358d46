import type { Caution, Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, holdsAmount, inReaderUnits, type ReaderUnits } from '../../src/model/quantity/index.ts';

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

/** Every sentence of an answer can be written in the reader's units: no mark is left that nothing turns into a quantity. */
function marksReadable(result: Result): string | undefined {
  const { figures, ...rest } = result;
  const text = inReaderUnits(
    JSON.stringify({ ...rest, notes: Object.values(figures).map(({ note }) => note) }),
    inches,
  );
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

/** What is wrong with an answer by the principles that all calculators keep; undefined where nothing is. */
export function brokenPrinciple(
  id: string,
  asked: Readonly<Record<string, string>>,
  result: Result,
): string | undefined {
  return (
    verdictSpoken(result) ??
    marksReadable(result) ??
    cautionsShort(result) ??
    cautionsOrdered(result) ??
    cautionsCarried(id, result, asked) ??
    silentWhenUnknown(id, result)
  );
}
