import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { excerpt, nameKey } from '../../model/quantity/index.ts';
import type { RawInputs } from './calculator.ts';
import { entryLabel, readResinSheet, tidySheet } from './resin-sheet.ts';

/** What a file of sheets says of itself. */
export const sheetFormat = { format: 'kerf-and-cure/resin-sheet', version: 1 } as const;

/** More than this is no list of data sheets. */
export const largestSheetFile = 1_000_000;

/** Sheets as a JSON file: the format, its version, and each sheet as it was entered. */
export function writeSheetFile(sheets: readonly RawInputs[]): string {
  return `${JSON.stringify({ ...sheetFormat, sheets: sheets.map(tidySheet) }, null, 2)}\n`;
}

const wayOut = 'Nothing was taken from it, and what is kept is unchanged. Export the sheets again where they are kept.';

/** What a text of sheets holds when only its frame is looked at. */
type Frame = { ok: true; sheets: readonly unknown[] } | { ok: false; problem: string };

function readFrame(text: string): Frame {
  if (text.length > largestSheetFile) return { ok: false, problem: 'It is larger than 1 MB, the most that is read' };
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch (error) {
    return { ok: false, problem: `It is not whole JSON: ${excerpt((error as Error).message, 120)}` };
  }
  if (typeof file !== 'object' || file === null || Array.isArray(file)) {
    return { ok: false, problem: 'It holds no object with a format, a version and sheets' };
  }
  const { format, version, sheets } = file as Record<string, unknown>;
  if (format !== sheetFormat.format) {
    return {
      ok: false,
      problem: `Its format is ${format === undefined ? 'not stated' : excerpt(JSON.stringify(format))}, not “${sheetFormat.format}”`,
    };
  }
  if (version !== sheetFormat.version) {
    return {
      ok: false,
      problem: `Its version is ${version === undefined ? 'not stated' : excerpt(JSON.stringify(version))}; this reads version ${sheetFormat.version}`,
    };
  }
  if (!Array.isArray(sheets)) return { ok: false, problem: 'It has no list of sheets' };
  return { ok: true, sheets };
}

/**
 * Read a file of sheets whole, or refuse it whole.
 *
 * @param name of the file, for the message
 * @returns the sheets as entered, or errors that name the file, the sheet and the entry
 */
export function readSheetFile(text: string, name = 'The file'): Outcome<RawInputs[]> {
  const frame = readFrame(text);
  if (!frame.ok) return refuse('file', `${name} cannot be read. ${frame.problem}`, wayOut);
  if (frame.sheets.length === 0) return refuse('file', `${name} holds no sheet`, wayOut);
  const sheets: RawInputs[] = [];
  for (const [index, entry] of frame.sheets.entries()) {
    const where = `${name}, sheet ${index + 1}`;
    if (!isEntries(entry)) return refuse('file', `${where}: it is not an object of entries`, wayOut);
    const read = readResinSheet(entry);
    const called = typeof entry.name === 'string' ? `, “${excerpt(entry.name)}”` : '';
    if (!read.ok) {
      const [first] = read.errors;
      const problem = first ? `${entryLabel(first.field)}: ${first.message}` : 'it cannot be read.';
      // The message of an entry ends its sentence itself.
      return { ok: false, errors: [{ field: 'file', message: `${where}${called}, ${problem} ${wayOut}` }] };
    }
    if (sheets.some((sheet) => sameName(sheet, entry))) {
      return refuse('file', `${where}${called}: another sheet of the file has the same name`, wayOut);
    }
    sheets.push(tidySheet(entry));
  }
  return answer(sheets);
}

/** What is kept in a browser: every sheet that can be shown, and the text itself where something in it cannot. */
export interface KeptText {
  sheets: RawInputs[];
  /** The text as it was found, where it or a part of it is damaged. */
  damaged?: { text: string; problem: string };
}

/**
 * Read the text that a browser keeps. A sheet with a bad value is given all the same, so that it can be mended; what is no
 * sheet at all makes the text count as damaged.
 */
export function readKept(text: string | null): KeptText {
  if (text === null || text === '') return { sheets: [] };
  const frame = readFrame(text);
  if (!frame.ok) return { sheets: [], damaged: { text, problem: frame.problem } };
  const named = (entry: unknown) =>
    isEntries(entry) && typeof entry.name === 'string' && entry.name.trim() !== '' ? [tidySheet(entry)] : [];
  const sheets = frame.sheets.flatMap(named);
  const lost = frame.sheets.length - sheets.length;
  return lost === 0
    ? { sheets }
    : { sheets, damaged: { text, problem: `${lost} of ${frame.sheets.length} entries are no sheet with a name` } };
}

function isEntries(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether two sheets bear one name, upper and lower case and accents aside. */
export function sameName(one: Readonly<Record<string, unknown>>, other: Readonly<Record<string, unknown>>): boolean {
  return nameKey(String(one.name ?? '')) === nameKey(String(other.name ?? ''));
}

/** A sheet as one line of JSON: what an address holds, and what tells two sheets apart. */
export function sheetText(sheet: Readonly<Record<string, unknown>>): string {
  return JSON.stringify(tidySheet(sheet));
}

/** The sheets with one more; one of the same name is replaced in its place. */
export function withSheet(sheets: readonly RawInputs[], sheet: RawInputs): RawInputs[] {
  const at = sheets.findIndex((kept) => sameName(kept, sheet));
  return at < 0 ? [...sheets, tidySheet(sheet)] : sheets.map((kept, index) => (index === at ? tidySheet(sheet) : kept));
}

/** The sheets without the one of this name. */
export function withoutSheet(sheets: readonly RawInputs[], name: string): RawInputs[] {
  return sheets.filter((kept) => !sameName(kept, { name }));
}

/** A name that none of the sheets bears: `Bench`, then `Bench (2)`, `Bench (3)`. */
export function freeName(sheets: readonly RawInputs[], name: string): string {
  const stem = name.replace(/ \(\d+\)$/, '').slice(0, 72);
  let candidate = name;
  for (let number = 2; sheets.some((kept) => sameName(kept, { name: candidate })); number += 1) {
    candidate = `${stem} (${number})`;
  }
  return candidate;
}
