import { asTyped } from '../../quantity/index.ts';
import type { Amount, TemperatureUnit } from './quantities.ts';

/** One reading as typed, before its units are settled. */
export interface RawReading {
  /** Line of the text, the first being 1. */
  line: number;
  /** Empty where none was given. */
  label: string;
  temperature: Amount;
  humidity: Amount;
}

/** Readings as typed, and what the text says about all of them. */
export interface RawReadings {
  rows: RawReading[];
  /** Unit named by a header, for temperatures that carry none themselves. */
  headerUnit?: TemperatureUnit | undefined;
  /** How the text was read, in sentences. */
  notes: string[];
}

/** What is wrong with a text, and what to do about it; a line number is part of the problem. */
export interface ReadingProblem {
  problem: string;
  wayOut: string;
}

/** A piece of what was read, short enough for a message. */
export function quoted(text: string): string {
  const shown = text.replace(/\s+/g, ' ').trim();
  return `“${shown.length > 40 ? `${shown.slice(0, 39)}…` : shown}”`;
}

/** A label on one line without control characters, at most 40 characters long. */
export function cleanLabel(text: string): string {
  // Surrogates that stand alone cannot be put in an address.
  const plain = text.replace(/[\p{Cc}\p{Cs}\s]+/gu, ' ').trim();
  return [...plain].slice(0, 40).join('').trim();
}

/** A reading, as somebody types it. */
export const exampleReading = `Jan, ${asTyped({ metric: '20 °C', inch: '68 °F' })}, 45 %`;
