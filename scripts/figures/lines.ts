import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

/** Names of the columns of every file of figures. */
export const columns = ['of', 'figure', 'value', 'low', 'high', 'unit', 'basis'] as const;

/** Six digits: more than any figure deserves, fewer than differ from machine to machine. */
const number = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toPrecision(6))));

const cell = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** One line of a file of figures. */
export const line = (...cells: readonly string[]): string => cells.map(cell).join(',');

/** A value as its line. */
export const valueLine = (
  of: string,
  figure: string,
  { value, low, high, unit, basis }: { value: number; low?: number; high?: number; unit: string; basis: string },
): string => line(of, figure, number(value), number(low), number(high), unit, basis);

/** Everything of an answer that is a number, and its verdict in words: figures, times from the zero of its timeline, what it uses. */
export function figureLines(of: string, { verdict, figures, timeline, uses = [] }: Result): string[] {
  return [
    ...(verdict ? [line(of, 'verdict', verdict.level, '', '', '', inReaderUnits(verdict.text, defaultUnits))] : []),
    ...Object.entries(figures).map(([name, figure]) => valueLine(of, name, figure)),
    ...(timeline?.events ?? []).map(({ id, at, ...event }) =>
      valueLine(of, `at ${id}`, { ...event, value: at, unit: 's' }),
    ),
    ...uses.map(({ id, amount, ...use }) => valueLine(of, `use ${id}`, { ...use, value: amount })),
  ];
}
