import { type QuoteTyped, readQuote } from '../method/sale/index.ts';
import { UsageError } from './usage.ts';

/** The options by which a quote is told what only the seller knows. */
export const quoteOptions = {
  number: { type: 'string' },
  until: { type: 'string' },
  maker: { type: 'string' },
  customer: { type: 'string' },
  price: { type: 'string' },
  currency: { type: 'string' },
  discount: { type: 'string' },
  repair: { type: 'string' },
} as const;

/** Lines of the help. */
export const quoteUsage = `
With --only quote: what a quote says beside the case; lines of an address are parted by \\n or semicolons
--number     of the quote            --until      last day on which it holds; 30 days unless told
--maker      your name and address   --customer   whom it is for
--price      of a piece, in place of the price that is worked out; --currency EUR where no shop record names one
--discount   percent off the sum     --repair     what you do for a board that comes back
`;

type QuoteOption = keyof typeof quoteOptions;

const lines = (text: string): string => text.replace(/\\n|;\s*/g, '\n');

/**
 * What was typed for a quote.
 *
 * @param day of the quote, 2027-01-10
 * @throws UsageError that names each option that cannot be read
 */
export function quoteOf(values: Readonly<Partial<Record<QuoteOption, string | undefined>>>, day: string): QuoteTyped {
  const given = Object.keys(quoteOptions).flatMap((name) => {
    const text = values[name as QuoteOption];
    return text === undefined ? [] : [[name, name === 'maker' || name === 'customer' ? lines(text) : text]];
  });
  const read = readQuote({ day, ...Object.fromEntries(given) });
  if (read.ok) return read.value;
  throw new UsageError(...read.errors.map(({ field, message }) => `sheet: --${field}: ${message}`));
}
