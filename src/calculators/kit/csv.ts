import type { Taken, TakenTable } from './taken-tables.ts';

/** What a spreadsheet takes for the beginning of a formula, also behind blanks and in the wide letters of East Asia. */
const formula = /^[\s\p{Cc}]*[=+\-@＝＋－＠]/u;

/**
 * A text that no spreadsheet works out: one that would begin a formula gets an apostrophe before it, which such programs take for 'this is
 * text' and people read as nothing. Numbers are not texts and stay.
 */
export const plainCell = (text: string): string => (formula.test(text) ? `'${text}` : text);

function cell(value: Taken): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const text = plainCell(value);
  return /[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A table as CSV (RFC 4180): one line of headings, then its rows, each as long. */
export function csvOf({ headings, rows }: Pick<TakenTable, 'headings' | 'rows'>): string {
  return [headings, ...rows].map((cells) => `${cells.map(cell).join(',')}\r\n`).join('');
}

/** Before the text of a file: spreadsheets know by it that ² and ° are letters and not noise. */
export const byteOrderMark = '\ufeff';
