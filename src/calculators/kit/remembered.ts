import { fieldsOf } from './answer.ts';
import type { Calculator, RawInputs } from './calculator.ts';
import { type FieldKind, fieldMeta } from './fields.ts';

/** Something of a reader's own that stays the same from case to case. */
interface Habit {
  /** As a list of what is kept calls it. */
  label: string;
  /** Its fields by name, in every calculator that has them all; the first decides. */
  fields: readonly string[];
  kind: FieldKind;
  /** True where it is laid only over a worked case that has one too: a board without resin does not get any by itself. */
  insteadOnly?: boolean;
}

const habitList = {
  resin: { label: 'My resin', fields: ['resin'], kind: 'resin', insteadOnly: true },
  place: { label: 'My place', fields: ['place'], kind: 'climate' },
  price: { label: 'My price', fields: ['rate', 'ratePer'], kind: 'text' },
  market: { label: 'Where I sell', fields: ['market'], kind: 'choice' },
  scale: { label: 'Smallest division of my scale', fields: ['scaleDivision'], kind: 'quantity' },
} as const satisfies Readonly<Record<string, Habit>>;

export type HabitId = keyof typeof habitList;

export const habits: Readonly<Record<HabitId, Habit>> = habitList;
export const habitIds = Object.keys(habitList) as readonly HabitId[];

/** What a browser keeps of its reader's cases. */
export interface Remembered {
  habits: Readonly<Partial<Record<HabitId, RawInputs>>>;
  /** The last inputs of each calculator, by its id. */
  last: Readonly<Record<string, RawInputs>>;
}

export const nothingRemembered: Remembered = { habits: {}, last: {} };

/** Characters of a case beyond which it is not kept: a log of ten years would fill what a browser grants. */
const longestCase = 20_000;

/** Whether a calculator asks for all of a habit. */
function asksFor(calculator: Pick<Calculator, 'inputs' | 'example'>, { fields, kind, insteadOnly }: Habit): boolean {
  const schemas = fieldsOf(calculator);
  const [first = ''] = fields;
  const schema = schemas[first];
  return (
    schema !== undefined &&
    fieldMeta(schema)?.kind === kind &&
    fields.every((field) => field in schemas) &&
    (!insteadOnly || first in calculator.example.metric)
  );
}

/** Whether a resin is a data sheet of the reader's own, not a generic kind. */
const isOwnSheet = (text = '') => text.trim().startsWith('{');

/**
 * Remember a case that was answered: its inputs, and of the reader's habits those that this reader touched in it.
 *
 * A generic kind of resin is never remembered in place of a data sheet of the reader's own.
 *
 * @param asked inputs with their units
 * @param touched names of the fields that the reader changed
 */
export function remember(
  before: Remembered,
  calculator: Pick<Calculator, 'id' | 'inputs' | 'example'>,
  asked: RawInputs,
  touched: ReadonlySet<string>,
): Remembered {
  const learnt = habitIds.flatMap((id): [HabitId, RawInputs][] => {
    const habit = habits[id];
    const [first = ''] = habit.fields;
    if (!asksFor(calculator, habit) || !habit.fields.some((field) => touched.has(field))) return [];
    if ((asked[first] ?? '').trim() === '') return [];
    if (id === 'resin' && isOwnSheet(before.habits.resin?.resin) && !isOwnSheet(asked.resin)) return [];
    const given = habit.fields.flatMap((field) => (asked[field] === undefined ? [] : [[field, asked[field]] as const]));
    return [[id, Object.fromEntries(given)]];
  });
  const small = JSON.stringify(asked).length <= longestCase;
  return {
    habits: { ...before.habits, ...Object.fromEntries(learnt) },
    last: small ? { ...before.last, [calculator.id]: asked } : before.last,
  };
}

/**
 * The reader's resin after a change of the data sheets that are kept: the only one, else the one used last, as long as it is kept.
 *
 * @param sheets texts of the kept sheets
 */
export function withSheets(before: Remembered, sheets: readonly string[]): Remembered {
  const { resin, ...others } = before.habits;
  const [only] = sheets;
  if (sheets.length === 1 && only !== undefined) return { ...before, habits: { ...others, resin: { resin: only } } };
  if (resin && isOwnSheet(resin.resin) && !sheets.includes(resin.resin as string)) return { ...before, habits: others };
  return before;
}

/** What of the reader's habits a calculator's worked case begins with. */
export function habitsFor(calculator: Pick<Calculator, 'inputs' | 'example'>, { habits: kept }: Remembered): RawInputs {
  return Object.assign({}, ...habitIds.map((id) => (asksFor(calculator, habits[id]) ? kept[id] : undefined)));
}

/** Forget one habit or the last case of one calculator. */
export function forget(before: Remembered, what: { habit: HabitId } | { last: string }): Remembered {
  const without = <Value>(entries: Readonly<Record<string, Value>>, name: string) =>
    Object.fromEntries(Object.entries(entries).filter(([key]) => key !== name));
  return 'habit' in what
    ? { ...before, habits: without(before.habits, what.habit) }
    : { ...before, last: without(before.last, what.last) };
}

const textsOf = (value: unknown): RawInputs | undefined => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const entries = Object.entries(value);
  return entries.every(([, text]) => typeof text === 'string') ? (Object.fromEntries(entries) as RawInputs) : undefined;
};

const entriesOf = (value: unknown): [string, RawInputs][] =>
  Object.entries(typeof value === 'object' && value !== null ? value : {}).flatMap(([name, one]) => {
    const texts = textsOf(one);
    return texts ? [[name, texts]] : [];
  });

/** Read what a browser kept. What cannot be read is left out: it is a convenience, and never an input by itself. */
export function readRemembered(text: string | null): Remembered {
  if (!text) return nothingRemembered;
  try {
    const { habits: kept, last } = (JSON.parse(text) ?? {}) as Record<string, unknown>;
    const known = entriesOf(kept).filter(([name]) => habitIds.some((id) => id === name));
    return { habits: Object.fromEntries(known), last: Object.fromEntries(entriesOf(last)) };
  } catch {
    return nothingRemembered;
  }
}

/** The text that `readRemembered` reads back. */
export const writeRemembered = (remembered: Remembered): string => JSON.stringify(remembered);
