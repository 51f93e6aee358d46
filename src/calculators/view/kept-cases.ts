import { useSyncExternalStore } from 'react';
import { nothingRemembered, type Remembered, readRemembered, writeRemembered } from '../kit/remembered.ts';
import { keptListener } from './kept.ts';

const storageKey = 'kerf-remembered';
const changed = 'kerf:remembered';

let cached: { text: string | null; remembered: Remembered } = { text: null, remembered: nothingRemembered };

/** What this browser remembers now. The same object as long as nothing changes. */
function remembered(): Remembered {
  let text: string | null = null;
  try {
    text = window.localStorage.getItem(storageKey);
  } catch {
    // A browser may forbid storage altogether: it then remembers nothing.
  }
  if (text !== cached.text) cached = { text, remembered: readRemembered(text) };
  return cached.remembered;
}

/** Change what this browser remembers, starting from what it remembers at this moment. */
export function changeRemembered(change: (before: Remembered) => Remembered): void {
  const before = remembered();
  const after = change(before);
  if (after === before) return;
  try {
    window.localStorage.setItem(storageKey, writeRemembered(after));
  } catch {
    // Full or forbidden: the case still stands in the address.
  }
  window.dispatchEvent(new Event(changed));
}

/** Forget all of it. */
export function forgetAll(): void {
  changeRemembered(() => nothingRemembered);
}

const subscribe = keptListener(changed);

/** What this browser remembers, kept up to date; nothing on the server and for the first paint. */
export function useRemembered(): Remembered {
  return useSyncExternalStore(subscribe, remembered, () => nothingRemembered);
}
