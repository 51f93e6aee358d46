import { answer, type FieldError, type Outcome } from '../../model/evidence/index.ts';
import { promisesIn } from '../../model/food/promises.ts';
import { excerpt, listed, parseQuantity } from '../../model/quantity/index.ts';
import { currencyOf, mostMoney } from '../cost/money.ts';

/** What only the seller knows, as typed: everything may be left out but the days. */
export interface QuoteTexts {
  number?: string;
  /** Days, 2026-11-29. */
  day: string;
  until?: string;
  /** Name and address, a line each. */
  maker?: string;
  customer?: string;
  /** A price of the seller's own for one piece, in place of the one that is worked out. */
  price?: string;
  /** By its code in ISO 4217, where no shop record names one. */
  currency?: string;
  /** Percent off the sum. */
  discount?: string;
  /** What is done for a board that comes back. */
  repair?: string;
}

/** The same as read. */
export interface QuoteTyped {
  number: string;
  day: string;
  until: string;
  maker: readonly string[];
  customer: readonly string[];
  price?: number;
  currency?: string;
  /** Share, 0.1 for a tenth. */
  discount: number;
  repair: string;
}

/** A quote holds for so many days, where nobody says otherwise (common practice). */
export const usualDays = 30;

/** Said where nobody wrote their own: it stands beside the rights that the law gives. */
export const usualRepair =
  'If a line or a crack opens, or a face is worn: keep food off it and bring it back. We look at it, and say what mending or new oil costs before we begin. The rights that the law gives you stay whole.';

/** What a quote of one sheet has room for: characters of a text, and lines of it. What is longer is said, and never cut. */
const room = {
  number: { characters: 120, lines: 12 },
  maker: { characters: 600, lines: 12 },
  customer: { characters: 600, lines: 12 },
  repair: { characters: 800, lines: 20 },
} as const;

const isDay = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(day.valueOf()) && day.toISOString().startsWith(text);
};

/** The day so many days later. */
export function daysAfter(day: string, days: number): string {
  const at = new Date(`${day}T00:00:00Z`);
  at.setUTCDate(at.getUTCDate() + days);
  return at.toISOString().slice(0, 10);
}

/** A text as lines without control characters, empty ones left out. */
const linesOf = (text = ''): string[] =>
  text
    .split(/[\r\n]+/)
    .map((line) => line.replace(/[\p{Cc}\p{Cf}\p{Cs}⟦⟧\s]+/gu, ' ').trim())
    .filter((line) => line !== '');

const blank = (text: string | undefined): boolean => text === undefined || text.trim() === '';

/** A sum as people write one: `$1,250`, `95 EUR`, `95`. */
function sumOf(text: string): number | undefined {
  const bare = text.trim().replace(/^(?:\p{Sc}|[A-Za-z]{1,3}\p{Sc}?)\s*|\s*(?:\p{Sc}|[A-Za-z]{3})$/gu, '');
  const read = /^\d[\d.,]*$/.test(bare) ? parseQuantity(bare, { dimension: 'number', bareUnit: '1' }) : undefined;
  return read?.ok && read.value <= mostMoney ? read.value : undefined;
}

/** What is wrong with the first day of the work, of a quote of a day; undefined where nothing is, or none was given. */
export function startFault(start: string, day: string): string | undefined {
  const date = start.trim().slice(0, 10);
  if (date === '') return undefined;
  if (!isDay(date))
    return `“${excerpt(start)}” is not a day of the calendar. Write year-month-day, such as 2027-01-10, or leave it empty.`;
  if (date >= day) return undefined;
  return `${date} is before the day of this quote, ${day}. Give ${day} or a later day, or leave it empty.`;
}

/**
 * Read what a seller typed for a quote.
 *
 * @returns one error a field, each with a way out
 */
export function readQuote(texts: QuoteTexts): Outcome<QuoteTyped> {
  const errors: FieldError[] = [];
  const wrong = (field: keyof QuoteTexts, message: string) => errors.push({ field, message });
  const { day, until } = texts;
  if (!isDay(day))
    wrong('day', `“${excerpt(day)}” is not a day of the calendar. Write year-month-day, such as 2027-01-10.`);
  if (!blank(until) && !isDay(until as string))
    wrong(
      'until',
      `“${excerpt(until as string)}” is not a day of the calendar. Write year-month-day, such as 2027-02-10.`,
    );
  else if (!blank(until) && isDay(day) && (until as string) < day)
    wrong('until', `The quote would end on ${until}, before its own day, ${day}. Give a later day.`);
  for (const field of ['number', 'maker', 'customer', 'repair'] as const) {
    const lines = linesOf(texts[field]);
    const [characters, most] = [lines.join(' ').length, room[field]];
    if (characters > most.characters)
      wrong(
        field,
        `It has ${characters} characters, and the sheet has room for ${most.characters}. Write it shorter: it stays here as you typed it.`,
      );
    else if (lines.length > most.lines)
      wrong(
        field,
        `It has ${lines.length} lines, and the sheet has room for ${most.lines}. Put some of them on one line.`,
      );
  }
  const price = blank(texts.price) ? undefined : sumOf(texts.price as string);
  if (!blank(texts.price) && price === undefined)
    wrong('price', `“${excerpt(texts.price as string)}” is not a sum of money. Write the number, such as 95 or 95.50.`);
  const code = blank(texts.currency) ? undefined : (texts.currency as string).trim().toUpperCase();
  const known = code === undefined ? undefined : currencyOf(code);
  if (known && !known.ok) errors.push(...known.errors);
  const share = blank(texts.discount)
    ? 0
    : parseQuantity((texts.discount as string).trim(), { dimension: 'percent', bareUnit: '%' });
  if (typeof share === 'object' && (!share.ok || share.value < 0 || share.value >= 100))
    wrong(
      'discount',
      `“${excerpt(texts.discount as string)}” is not a share below 100 %. Write it as 10 %, or leave it empty.`,
    );
  if (errors.length > 0) return { ok: false, errors };
  return answer({
    number: linesOf(texts.number).join(' '),
    day,
    until: blank(until) ? daysAfter(day, usualDays) : (until as string),
    maker: linesOf(texts.maker),
    customer: linesOf(texts.customer),
    ...(price === undefined ? {} : { price }),
    ...(code === undefined ? {} : { currency: code }),
    discount: typeof share === 'object' && share.ok ? share.value / 100 : 0,
    repair: linesOf(texts.repair).join(' ') || usualRepair,
  });
}

/** What the seller’s own words promise that nobody has shown of a board: a sentence for the screen, or none. */
export function promiseNotes({ repair, maker }: Pick<QuoteTyped, 'repair' | 'maker'>): string[] {
  const promises = promisesIn([...maker, repair].join('. '));
  if (promises.length === 0) return [];
  return [
    `Your own words promise what nobody has shown of a board: ${listed(promises.map((words) => `“${words}”`))}. Say what you do for it, and leave them out.`,
  ];
}
