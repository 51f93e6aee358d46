/** A number as typed, or why it is none. */
export type NumberReading = { ok: true; value: number } | { ok: false; problem: string; wayOut: string };

/** A mixed number (`9 7/8`, `9-7/8`), a fraction (`7/8`) or decimal digits with points and commas, at the start of a text. */
export const numberPattern =
  /^(?:(\d+)(?:\s*-\s*|\s+)(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|((?:\d|[.,](?=\d))(?:\d|[.,](?=\d))*(?:e[+-]?\d+)?))/i;

const largest = 1e15;

/** Digits as typed, short enough to stand in a message. */
const short = (digits: string) => (digits.length > 40 ? `${digits.slice(0, 39)}…` : digits);

function ambiguous(text: string, ifPoint: string, ifThousands: string): NumberReading {
  return {
    ok: false,
    problem: `“${text}” can mean ${ifPoint} or ${ifThousands}`,
    wayOut: `Write ${ifThousands} without a separator, or ${ifPoint} with a point.`,
  };
}

function decimal(digits: string): string | NumberReading {
  const mantissa = digits.replace(/e.*$/i, '');
  const exponent = digits.slice(mantissa.length);
  const commas = mantissa.split(',').length - 1;
  const points = mantissa.split('.').length - 1;
  const unreadable: NumberReading = {
    ok: false,
    problem: `“${short(digits)}” is not a number`,
    wayOut: 'Write the number without thousands separators, with one decimal point or comma.',
  };
  if (commas > 0 && points > 0) {
    // The separator that comes last is the decimal one; the other must stand between groups of three.
    const last = mantissa.lastIndexOf(',') > mantissa.lastIndexOf('.') ? ',' : '.';
    const [whole = '', fraction = ''] = [
      mantissa.slice(0, mantissa.lastIndexOf(last)),
      mantissa.slice(mantissa.lastIndexOf(last) + 1),
    ];
    const group = last === ',' ? /^\d{1,3}(\.\d{3})+$/ : /^\d{1,3}(,\d{3})+$/;
    return group.test(whole) ? `${whole.replace(/[.,]/g, '')}.${fraction}${exponent}` : unreadable;
  }
  if (points > 1) return unreadable;
  if (commas > 1) return /^\d{1,3}(,\d{3})+$/.test(mantissa) ? mantissa.replace(/,/g, '') + exponent : unreadable;
  if (commas === 1) {
    const point = mantissa.replace(',', '.');
    // 1,250 is 1250 to one reader and 1.25 to another; 0,125 and 12,5 can only be decimals.
    if (/^[1-9]\d{0,2},\d{3}$/.test(mantissa)) return ambiguous(mantissa, point, mantissa.replace(',', ''));
    return point + exponent;
  }
  return mantissa + exponent;
}

/**
 * Read the parts that `numberPattern` found.
 *
 * A comma is the decimal mark, except where it can only separate thousands (`1,234.5`); where it could be
 * either (`1,250`) the number is refused with both readings named.
 */
export function readNumber(match: RegExpExecArray): NumberReading {
  const [text, whole, mixedTop, mixedBottom, top, bottom, digits] = match;
  if (digits !== undefined) {
    const plain = decimal(digits);
    if (typeof plain !== 'string') return plain;
    const value = Number(plain);
    return Number.isFinite(value) && Math.abs(value) <= largest
      ? { ok: true, value }
      : { ok: false, problem: `“${short(digits)}” is too large`, wayOut: 'Check the number, or use a larger unit.' };
  }
  const numerator = Number(mixedTop ?? top);
  const denominator = Number(mixedBottom ?? bottom);
  if (denominator === 0) {
    return { ok: false, problem: `“${short(text)}” divides by zero`, wayOut: 'Write a fraction such as 7/8.' };
  }
  if (whole !== undefined && numerator >= denominator) {
    return {
      ok: false,
      problem: `“${short(text)}” has a fraction of one or more after a whole number`,
      wayOut: 'Write a fraction below one there, such as 9 7/8.',
    };
  }
  const value = Number(whole ?? 0) + numerator / denominator;
  return Number.isFinite(value) && value <= largest
    ? { ok: true, value }
    : { ok: false, problem: `“${short(text)}” is too large`, wayOut: 'Check the number, or use a larger unit.' };
}
