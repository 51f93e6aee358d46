/** A temperature's unit as typed or printed in a header. */
export type TemperatureUnit = 'C' | 'F';

/** A number read from a cell or a line, with the unit written after it. */
export interface Amount {
  value: number;
  unit: TemperatureUnit | '%' | undefined;
  /** As typed, for error messages. */
  text: string;
}

const digits = String.raw`[-+\u2212\u2013]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e-\d+)?`;
const units = String.raw`(?:°|º|deg(?:rees?)?\.?\s*)\s*(?:c(?:elsius|entigrade)?|f(?:ahrenheit)?)(?![a-z])|[℃℉]|celsius|fahrenheit|[cf](?![a-z])|%\s*(?:r\.?\s*h\.?(?![a-z]))?|percent|r\.?h\.?(?![a-z])|(?:°|º|deg(?:rees?)?\.?)(?![a-z])`;

/** A degree sign that names no scale, at the end of a number. */
const noScale = /\s*(?:°|º|deg(?:rees?)?\.?)$/i;

/** A number as typed, without a degree sign that names no scale. */
export const withoutSign = (text: string): string => text.replace(noScale, '');

/** A number and its unit are shorter than this. */
const longest = 60;

const amount = new RegExp(String.raw`^\s*(${digits})\s*(${units})?\s*$`, 'i');

function unitOf(text: string | undefined): Amount['unit'] {
  if (text === undefined || withoutSign(text) === '') return undefined;
  if (/%|percent|r\.?\s*h/i.test(text)) return '%';
  return /℉|f/i.test(text) ? 'F' : 'C';
}

function numberOf(text: string): number {
  return Number(text.replace(/[\u2212\u2013]/, '-').replace(',', '.'));
}

/** A cell that is one number with or without a unit, such as `20,5`, `−3.2 °C`, `68F` or `45 % RH`. */
export function readAmount(cell: string): Amount | undefined {
  if (cell.length > longest) return undefined;
  const match = amount.exec(cell);
  if (!match) return undefined;
  const value = numberOf(match[1] as string);
  return Number.isFinite(value) ? { value, unit: unitOf(match[2]), text: cell.trim() } : undefined;
}

/** An amount found inside a line, and where. */
export interface FoundAmount extends Amount {
  start: number;
  end: number;
}

/** Every number of a line that stands on its own: not part of a word, of a date or of another number. */
export function findAmounts(line: string): FoundAmount[] {
  const pattern = new RegExp(String.raw`(?<![\w.,/:\-\u2212])(${digits})\s*(${units})?(?![\w/:]|[.,\-\u2212]\d)`, 'gi');
  return [...line.matchAll(pattern)].flatMap((match) => {
    const value = numberOf(match[1] as string);
    if (!Number.isFinite(value)) return [];
    const text = match[0].trim();
    return [{ value, unit: unitOf(match[2]), text, start: match.index, end: match.index + match[0].trimEnd().length }];
  });
}

/** The unit that a column's name gives its temperatures, such as `Temp (°F)`, `temp_c` or `TempF`. */
export function unitOfHeader(name: string): TemperatureUnit | undefined {
  const match = /[°º]\s*([cf])(?![a-z])|([℃℉])|deg\.?\s*([cf])(?![a-z])|(celsius|centigrade|fahrenheit)/i.exec(name);
  const word = match?.[1] ?? match?.[2] ?? match?.[3] ?? match?.[4];
  const alone =
    word ?? /(?:^|[^a-zA-Z])([cfCF])(?![a-zA-Z])/.exec(name)?.[1] ?? /[a-z]([CF])(?![a-zA-Z])/.exec(name)?.[1];
  if (alone === undefined) return undefined;
  return /^(?:f|℉)/i.test(alone) ? 'F' : 'C';
}

/** °F to °C, to 0.0001, which is finer than any sensor and keeps an address short. */
export function celsiusOf(fahrenheit: number): number {
  return Math.round(((fahrenheit - 32) / 1.8) * 1e4) / 1e4;
}
