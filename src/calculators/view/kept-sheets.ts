import { useSyncExternalStore } from 'react';
import type { RawInputs } from '../kit/calculator.ts';
import { withSheets } from '../kit/remembered.ts';
import { type KeptText, readKept, sheetText, writeSheetFile } from '../kit/resin-sheet-file.ts';
import { keptListener } from './kept.ts';
import { changeRemembered } from './kept-cases.ts';

const storageKey = 'kerf-resin-sheets';
/** A text that could not be read is put by here before anything is written over it. */
const damagedKey = 'kerf-resin-sheets-damaged';
const changed = 'kerf:resin-sheets';

/** The sheets that this browser keeps for its reader. */
export interface KeptSheets extends KeptText {
  /** False where the browser refuses to store: the sheets then last as long as the page. */
  lasting: boolean;
}

const nothing: KeptSheets = { sheets: [], lasting: true };

/** Set once the browser has refused to store; from then on this is what is kept. */
let unstored: string | undefined;
let cached: { text: string | null; lasting: boolean; kept: KeptSheets } = { text: null, lasting: true, kept: nothing };

function currentText(): string | null {
  if (unstored !== undefined) return unstored;
  try {
    return window.localStorage.getItem(storageKey);
  } catch {
    // A browser may forbid storage altogether.
    return null;
  }
}

/** What is kept now. The same object as long as nothing changes. */
export function keptSheets(): KeptSheets {
  const text = currentText();
  const lasting = unstored === undefined;
  if (text !== cached.text || lasting !== cached.lasting) {
    cached = { text, lasting, kept: { ...readKept(text), lasting } };
  }
  return cached.kept;
}

/**
 * Change what is kept, starting from what is kept at this moment: another tab may have changed it since it was shown.
 *
 * @returns false where the browser refused to store it, so that it lasts only as long as the page
 */
export function changeKept(change: (sheets: readonly RawInputs[]) => RawInputs[]): boolean {
  const { sheets, damaged } = keptSheets();
  const text = writeSheetFile(change(sheets));
  try {
    if (damaged) putBy(damaged.text);
    window.localStorage.setItem(storageKey, text);
    unstored = undefined;
  } catch {
    unstored = text;
  }
  const kept = keptSheets().sheets.map(sheetText);
  changeRemembered((before) => withSheets(before, kept));
  window.dispatchEvent(new Event(changed));
  return unstored === undefined;
}

/** Put a damaged text by, behind any that was put by before. */
function putBy(text: string): void {
  const before = window.localStorage.getItem(damagedKey);
  if (before?.endsWith(text)) return;
  window.localStorage.setItem(damagedKey, before ? `${before}\n${text}` : text);
}

/** What was put by because it could not be read, or null. */
function damagedText(): string | null {
  try {
    return window.localStorage.getItem(damagedKey);
  } catch {
    return null;
  }
}

/** Drop what was put by; the reader has taken it away or does not want it. */
export function dropDamaged(): void {
  try {
    window.localStorage.removeItem(damagedKey);
  } catch {
    // Nothing can be stored here, so nothing was put by.
  }
  window.dispatchEvent(new Event(changed));
}

const subscribe = keptListener(changed);

/** The kept sheets, kept up to date with this page and with other tabs; none on the server and for the first paint. */
export function useKeptSheets(): KeptSheets {
  return useSyncExternalStore(subscribe, keptSheets, () => nothing);
}

/** What was put by as damaged, kept up to date like the sheets. */
export function useDamagedText(): string | null {
  return useSyncExternalStore(subscribe, damagedText, () => null);
}
