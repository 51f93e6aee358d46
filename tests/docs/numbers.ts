import type { WorkedMethod } from '../../src/method/case/types.ts';
import { convert, unitByCode } from '../../src/model/quantity/index.ts';
import { readAnyQuantity } from '../../src/model/quantity/read-any.ts';
import { readMethodTexts } from '../../src/store/index.ts';
import type { HowTo } from './how-to.ts';
import { methodOf } from './methods.ts';

// Reads the numbers of a page, and knows those of the methods.

/** Dimensions in which a page speaks of a board, each in the unit in which it is compared. */
const units = {
  mm: [1, 'length'],
  cm: [10, 'length'],
  in: [25.4, 'length'],
  ft: [304.8, 'length'],
  g: [1, 'mass'],
  kg: [1000, 'mass'],
  ml: [1, 'volume'],
  mL: [1, 'volume'],
  l: [1000, 'volume'],
  '°C': [1, 'temperature'],
  '%': [1, 'share'],
  min: [1 / 60, 'time'],
  minutes: [1 / 60, 'time'],
  h: [1, 'time'],
  hours: [1, 'time'],
  d: [24, 'time'],
  days: [24, 'time'],
  weeks: [168, 'time'],
  'turns a minute': [1, 'turns'],
  turns: [1, 'turns'],
  'm/s': [1, 'speed'],
  boards: [1, 'boards'],
  blanks: [1, 'blanks'],
  cups: [1, 'cups'],
  'board feet': [1, 'board feet'],
  coats: [1, 'coats'],
  passes: [1, 'passes'],
  evenings: [1, 'evenings'],
  Tuesdays: [1, 'evenings'],
  trays: [1, 'people'],
  students: [1, 'people'],
  adults: [1, 'people'],
  people: [1, 'people'],
  routers: [1, 'machines'],
  'router tables': [1, 'machines'],
  'band saw': [1, 'machines'],
  sanders: [1, 'machines'],
  scrapers: [1, 'machines'],
  'rag cans': [1, 'machines'],
  windows: [1, 'machines'],
  templates: [1, 'machines'],
  cloths: [1, 'cloths'],
} as const;

type Unit = keyof typeof units;
export type Dimension = (typeof units)[Unit][1];

/** A number of a sentence. */
export interface Said {
  /** As written, `6 mm`. */
  text: string;
  value: number;
  /** Half of its last digit, in the same unit. */
  within: number;
  dimension: Dimension;
  sentence: string;
}

/** A size of a sentence, `420 × 220 × 19 mm`, mm. */
export interface SaidSize {
  text: string;
  sides: number[];
  within: number;
  sentence: string;
}

/** Numbers that are written out, as far as a page writes them. */
const words =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen'.split(
    ' ',
  );
// The longest first, so that `router tables` is not read as something shorter.
const unit = Object.keys(units)
  .sort((a, b) => b.length - a.length)
  .join('|');
/** What may stand between a number and what it counts. */
const kinds = 'mixing|plunge|wet|other|oiled|Cotton|fresh|narrow|single|';
const written = new RegExp(
  String.raw`\b(${words.join('|')})(?= (?:(?:${kinds.slice(0, -1)}) )?(?:to (?:${words.join('|')}) )?(?:${unit})\b)`,
  'gi',
);

const number = String.raw`\d+(?: \d+/\d+|/\d+|(?:[,\u202f ]\d{3}(?!\d))+)?(?:\.\d+)?`;
const quantity = new RegExp(
  String.raw`(?<![\w.,/×])(${number})(?:(?: to | and | or )(${number}))?\s(?:(?:${kinds.slice(0, -1)}) )?(${unit})(?![\p{L}/²³·])`,
  'gu',
);
const size = new RegExp(String.raw`(?<![\w.,/])(${number})((?:\s?×\s?${number}){1,2})\s(mm|cm|in)(?![\p{L}/])`, 'gu');

/** `1 1/2` as 1.5, `1,200` as 1200. */
function numberIn(text: string): number {
  return text
    .replace(/[,\u202f ](?=\d{3}(?!\d))/g, '')
    .split(' ')
    .map((part) => {
      const [over = '', under] = part.split('/');
      return Number(over) / Number(under ?? 1);
    })
    .reduce((sum, part) => sum + part, 0);
}

/** Half a unit of the last digit that a number was written with; of a fraction of an inch, a thirty-second. */
function withinOf(text: string): number {
  if (text.includes('/')) return 1 / 32;
  return 0.5001 * 10 ** -(text.split('.')[1]?.length ?? 0);
}

/** The sentences and rows of a page: what its parts show, code and comments left out, and what it quotes of a method with them. */
export function sentencesOf({ source }: Pick<HowTo, 'source'>): string[] {
  return source
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^ *```[\s\S]*?^ *```/gm, '')
    .replace(/<Tray[^>]*\/>(?: (?:mm|g))?/g, '…')
    .replace(/<[A-Z]\w*(?:\s+\w+=(?:"[^"]*"|\{(?:[^{}]|\{[^{}]*\})*\}))*\s*\/?>/g, ' ')
    .replace(/\{\/\*.*?\*\/\}/g, ' ')
    .replace(/`[^`\n]*`/g, ' ')
    .replace(/\]\([^)]*\)/g, ']')
    .split(/\n\s*\n|\n(?=\s*(?:[-|#]|\d+\. ))|(?<=[.!?])\s+(?=[“*\p{Lu}\d])/u)
    .map((sentence) => sentence.replace(/\s+/g, ' ').replaceAll('*', '').trim())
    .map((sentence) => sentence.replace(written, (word) => String(words.indexOf(word.toLowerCase()))))
    .filter((sentence) => /\d/.test(sentence));
}

/** A sentence with the words by which it is told what it speaks of. */
export interface Passage {
  sentence: string;
  about: string;
}

/**
 * The sentences of a page with what they speak of. A sentence of running text or of a step speaks of what its paragraph speaks of, since ‘it’ and
 * ‘the channel’ are named once; a row of a table, an exercise and its answer speak of what they name themselves.
 */
export function passagesOf({ source }: Pick<HowTo, 'source'>): Passage[] {
  const [text = '', exercises = ''] = source.replace(/^---\n[\s\S]*?\n---\n/, '').split(/^<Check>$/m);
  const alone = (block: string) => sentencesOf({ source: block }).map((sentence) => ({ sentence, about: sentence }));
  const together = (block: string) => sentencesOf({ source: block }).map((sentence) => ({ sentence, about: block }));
  const blocks = text.replace(/^ *```[\s\S]*?^ *```/gm, '').split(/\n\s*\n|\n(?=\s*(?:- |\d+\. ))/);
  return [
    ...blocks.flatMap((block) => (block.trimStart().startsWith('|') ? alone : together)(block)),
    ...alone(exercises),
  ];
}

/** Every number with a unit in a sentence, sizes left out. */
export function numbersIn(sentence: string): Said[] {
  return [...sentence.replace(size, ' ').matchAll(quantity)].flatMap(([, first = '', second, unitText = '']) =>
    [first, ...(second === undefined ? [] : [second])].map((text): Said => {
      const [factor, dimension] = units[unitText as Unit];
      return {
        text: `${text} ${unitText}`,
        value: numberIn(text) * factor,
        // A week is meant to the day, or everything of two months would be eight weeks.
        within: unitText === 'weeks' ? units.days[0] : withinOf(text) * factor,
        dimension,
        sentence,
      };
    }),
  );
}

/** Every size in a sentence. */
export function sizesIn(sentence: string): SaidSize[] {
  return [...sentence.matchAll(size)].map(([text, first = '', rest = '', unitText = 'mm']) => {
    const sides = [first, ...rest.split('×').slice(1)].map((side) => side.trim());
    const [factor] = units[unitText as Unit];
    return {
      text,
      sides: sides.map((side) => numberIn(side) * factor),
      within: unitText === 'in' ? 25.4 / 32 : 0.5001 * factor,
      sentence,
    };
  });
}

/** What a method's own figures are, by dimension, and the boards that it names, mm. */
export interface MethodNumbers {
  numbers: Readonly<Record<Dimension, readonly number[]>>;
  sizes: readonly (readonly number[])[];
}

const comparedIn: Partial<Record<string, readonly [dimension: Dimension, unit: string]>> = {
  length: ['length', 'mm'],
  mass: ['mass', 'g'],
  volume: ['volume', 'mL'],
  temperature: ['temperature', 'Cel'],
  time: ['time', 'h'],
  percent: ['share', '%'],
  fraction: ['share', '%'],
};

/** Figures that count what a sentence counts. */
const countedBy: Partial<Record<string, Dimension>> = {
  boards: 'boards',
  pieces: 'blanks',
  perBoard: 'blanks',
  cups: 'cups',
  coats: 'coats',
  passes: 'passes',
};

/** Numbers and sizes of a method at its defaults: its parameters, limits of its tools, and all that its calculations were given and give. */
export function numbersOf(worked: WorkedMethod): MethodNumbers {
  const numbers: Record<Dimension, number[]> = {
    length: [],
    mass: [],
    volume: [],
    temperature: [],
    share: [],
    time: [],
    boards: [],
    blanks: [],
    cups: [],
    'board feet': [],
    coats: [],
    passes: [],
    evenings: [],
    people: [],
    machines: [],
    cloths: [],
    turns: [],
    speed: [],
  };
  const add = (value: number | undefined, code: string) => {
    if (value === undefined) return;
    const dimension = unitByCode(code)?.dimension;
    if (code === '[bf_i]') numbers['board feet'].push(value);
    const [as, to] = comparedIn[code === '%' ? 'percent' : (dimension ?? '')] ?? [];
    if (as && to) numbers[as].push(convert(value, code, to));
  };
  for (const { value } of Object.values(worked.parameters)) if (value.kind === 'quantity') add(value.value, value.unit);
  for (const { limits } of Object.values(worked.tools))
    for (const limit of Object.values(limits)) if (limit) add(limit.value, limit.unit);
  for (const { result, raw } of Object.values(worked.calculations)) {
    for (const given of Object.values(raw)) {
      const read = typeof given === 'string' ? readAnyQuantity(given) : undefined;
      if (read?.ok) add(read.value[0].value, read.value[0].unit);
    }
    for (const [name, { value, low, high, unit: code }] of Object.entries(result?.figures ?? {})) {
      for (const each of [value, low, high]) add(each, code);
      const counted = countedBy[name];
      if (counted) numbers[counted].push(value);
    }
    for (const { at, low, high } of result?.timeline?.events ?? []) for (const each of [at, low, high]) add(each, 's');
    for (const { amount, low, high, unit: code } of result?.uses ?? [])
      for (const each of [amount, low, high]) add(each, code);
  }
  for (const { hands } of worked.steps) for (const each of [hands.setUp, hands.each]) add(each, 'min');
  addWhatItCounts(worked, numbers);
  const at = (name: string) => {
    const value = worked.parameters[name]?.value;
    return value?.kind === 'quantity' && value.unit === 'mm' ? value.value : undefined;
  };
  const named = [
    ['length', 'width', 'thickness'],
    ['channelLength', 'channelWidth', 'channelDepth'],
    ['pocketLength', 'pocketWidth', 'pocketDepth'],
  ].map((names) => names.map(at));
  const blanks = Object.values(worked.calculations).map(({ result }) =>
    ['roughLength', 'roughWidth', 'roughThickness'].map((name) => result?.figures[name]?.value),
  );
  const ordered = Object.values(worked.calculations).map(({ result }) =>
    ['boardLength', 'boardWidth'].map((name) => result?.figures[name]?.value),
  );
  return {
    numbers,
    sizes: [...named, ...blanks, ...ordered].map((sides) => sides.filter((side) => side !== undefined)),
  };
}

/** Pieces, people, evenings, machines, coats, cloths and turns of a method, and what its own words say: they are the case too. */
function addWhatItCounts(worked: WorkedMethod, numbers: Record<Dimension, number[]>): void {
  const { taught } = worked.record;
  numbers.people.push(worked.pieces, ...(taught ? [taught.people] : []));
  if (taught) numbers.evenings.push(taught.evenings);
  numbers.machines.push(...Object.values(worked.tools).map(({ count }) => count ?? 1));
  for (const { raw, result } of Object.values(worked.calculations)) {
    for (const [name, into] of [
      ['coats', numbers.coats],
      ['turns', numbers.turns],
    ] as const)
      if (raw[name] !== undefined) into.push(Number(raw[name]));
    const rim = result?.figures['rim'];
    if (rim) numbers.speed.push(rim.value);
  }
  const texts = worked.steps.flatMap(({ record }) => [record.does, record.why, record.tell, record.wrong]);
  for (const text of [worked.record.about, ...texts]) {
    if (text === undefined) continue;
    for (const sentence of sentencesOf({ source: text }))
      for (const said of numbersIn(sentence)) numbers[said.dimension].push(said.value);
  }
  for (const { what, needs } of Object.values(worked.record.materials ?? {}))
    if (/cloths/.test(what)) {
      const each = needs.flatMap((need) => ('amount' in need && typeof need.amount === 'number' ? [need.amount] : []));
      numbers.cloths.push(...each, ...each.map((amount) => amount * worked.pieces));
    }
}

/** Every method of the house, worked out once. */
export async function allMethodNumbers(): Promise<ReadonlyMap<string, MethodNumbers>> {
  const entries = await Promise.all(
    readMethodTexts().map(async ({ id }) => [id, numbersOf(await methodOf(id))] as const),
  );
  return new Map(entries);
}

/** Whether a number is one of these, as finely as it was written. */
export const isAmong = ({ value, within, dimension }: Said, { numbers }: MethodNumbers): boolean =>
  numbers[dimension].some((known) => Math.abs(known - value) <= Math.max(within, 1e-6));

/** Whether a size is that of a board of these. */
export const isNamedSize = ({ sides, within }: SaidSize, { sizes }: MethodNumbers): boolean =>
  sizes.some(
    (known) =>
      sides.length <= known.length && sides.every((side, at) => Math.abs(side - (known[at] ?? Number.NaN)) <= within),
  );
