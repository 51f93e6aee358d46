import { useCallback, useEffect, useRef, useState } from 'react';
import { withUnits } from '../../calculators/kit/address.ts';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import { tidySheet } from '../../calculators/kit/resin-sheet.ts';
import { resinSheetInputs } from '../../calculators/kit/resin-sheet-entries.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';

const storageKey = 'kerf-resin-sheet-draft';

/** A sheet that is being entered, and the kept sheet that it began as, if it did. */
export interface Draft {
  raw: RawInputs;
  began: string | null;
}

const empty: Draft = { raw: {}, began: null };

function storedDraft(): Draft {
  try {
    const stored = JSON.parse(window.localStorage.getItem(storageKey) ?? 'null') as Partial<Draft> | null;
    if (typeof stored?.raw !== 'object' || stored.raw === null) return empty;
    return { raw: tidySheet(stored.raw), began: typeof stored.began === 'string' ? stored.began : null };
  } catch {
    // Storage is forbidden or its text damaged: the form then starts empty.
    return empty;
  }
}

function storeDraft(draft: Draft): void {
  try {
    if (Object.keys(draft.raw).length === 0) window.localStorage.removeItem(storageKey);
    else window.localStorage.setItem(storageKey, JSON.stringify(draft));
  } catch {
    // Without storage the draft lasts as long as the page.
  }
}

/** The texts of a sheet with a unit on every bare number. */
export function explicitSheet(raw: RawInputs, units: ReaderUnits): RawInputs {
  return tidySheet(withUnits({ inputs: resinSheetInputs }, raw, units));
}

/** The draft of the page: it outlives a reload, and keeps the unit of what was typed when the reader turns to the other system. */
export function useDraft(units: ReaderUnits): {
  draft: Draft;
  set: (patch: Readonly<Record<string, string | undefined>>) => void;
  /** Another draft in its place; `hold` keeps what stood there to be put back. */
  start: (draft: Draft, hold?: boolean) => void;
  /** What another draft has displaced and nobody has kept. */
  displaced: Draft | null;
} {
  const [draft, setDraft] = useState<Draft>(empty);
  const [displaced, setDisplaced] = useState<Draft | null>(null);
  useEffect(() => setDraft(storedDraft()), []);

  const change = useCallback((make: (before: Draft) => Draft) => {
    setDraft((before) => {
      const after = make(before);
      storeDraft(after);
      return after;
    });
  }, []);

  const seen = useRef(units);
  useEffect(() => {
    const before = seen.current;
    seen.current = units;
    if (before.system !== units.system) change((now) => ({ ...now, raw: explicitSheet(now.raw, before) }));
  }, [units, change]);

  const set = useCallback(
    (patch: Readonly<Record<string, string | undefined>>) =>
      change((before) => {
        const entries = Object.entries({ ...before.raw, ...patch });
        return { ...before, raw: Object.fromEntries(entries.filter((entry): entry is [string, string] => !!entry[1])) };
      }),
    [change],
  );
  const start = (next: Draft, hold = false) => {
    setDisplaced(hold && Object.keys(draft.raw).length > 0 ? draft : null);
    change(() => next);
  };
  return { draft, set, start, displaced };
}
