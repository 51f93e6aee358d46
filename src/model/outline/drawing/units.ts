/** Millimetres in each unit of length of CSS and SVG; a pixel is a ninety-sixth of an inch (CSS Values and Units, as SVG 2 takes them over). */
export const millimetresIn = {
  mm: 1,
  cm: 10,
  q: 0.25,
  in: 25.4,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
  px: 25.4 / 96,
} as const;

/** A unit of length that a drawing may be written in. */
export type LengthUnit = keyof typeof millimetresIn;

/** A length as written: a number and its unit, '' where none stands. */
export interface WrittenLength {
  value: number;
  unit: LengthUnit | '' | '%' | 'other';
}

/** Read a length attribute such as `210mm`; undefined where it holds no number. */
export function readLength(text: string | undefined): WrittenLength | undefined {
  const match = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z%]*)\s*$/i.exec(text ?? '');
  if (!match) return undefined;
  const value = Number(match[1]);
  if (!Number.isFinite(value)) return undefined;
  const unit = (match[2] ?? '').toLowerCase();
  if (unit === '' || unit === '%' || unit in millimetresIn) return { value, unit: unit as WrittenLength['unit'] };
  return { value, unit: 'other' };
}

/** A length in the drawing's own units, of which a pixel is one; undefined for a share or an unknown unit. */
export function inUserUnits(text: string | undefined): number | undefined {
  const length = readLength(text);
  if (!length || length.unit === '%' || length.unit === 'other') return undefined;
  return length.unit === '' ? length.value : (length.value * millimetresIn[length.unit]) / millimetresIn.px;
}

/** Numbers of a list separated by commas or spaces; undefined where something else stands in it. */
export function readNumbers(text: string | undefined): number[] | undefined {
  const parts = (text ?? '')
    .trim()
    .split(/[\s,]+/)
    .filter((part) => part !== '');
  const numbers = parts.map(Number);
  return numbers.every(Number.isFinite) ? numbers : undefined;
}
