import { useSyncExternalStore } from 'react';
import { keptListener } from '../../calculators/view/kept.ts';
import type { QuoteTexts } from '../../method/sale/index.ts';

const storageKey = 'kerf-quotes';
const changed = 'kerf:quotes';

/** What is typed for a quote beside the days of it, which are those of the day. */
export type QuoteDraft = Omit<QuoteTexts, 'day' | 'maker'>;

/** What this browser keeps for quotes. */
export interface KeptQuotes {
  /** The seller's own name and address, typed once. */
  maker: string;
  /** Drafts that somebody asked to keep, by the method or draft that they are of. */
  drafts: Readonly<Record<string, QuoteDraft>>;
  /** False where the browser refuses to store: it then lasts as long as the page. */
  lasting: boolean;
}

const nothing: KeptQuotes = { maker: '', drafts: {}, lasting: true };

/** Longest text of any field that is read back, characters. */
const longest = 20_000;

const fields: readonly (keyof QuoteDraft)[] = [
  'number',
  'until',
  'customer',
  'price',
  'currency',
  'discount',
  'repair',
];

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const textOf = (value: unknown): string | undefined =>
  typeof value === 'string' ? value.slice(0, longest) : undefined;

/** A draft as it was kept: only texts, and only under names that are known. */
function draftOf(value: unknown): QuoteDraft {
  if (!isRecord(value)) return {};
  return Object.fromEntries(
    fields.flatMap((name) => {
      const text = Object.hasOwn(value, name) ? textOf(value[name]) : undefined;
      return text === undefined ? [] : [[name, text]];
    }),
  );
}

/** Read what was kept; what cannot be read is left out. */
export function readKeptQuotes(text: string | null): Pick<KeptQuotes, 'maker' | 'drafts'> {
  try {
    const kept: unknown = JSON.parse(text ?? 'null');
    if (!isRecord(kept)) return nothing;
    const drafts = isRecord(kept['drafts']) ? Object.entries(kept['drafts']).slice(0, 200) : [];
    return {
      maker: textOf(kept['maker']) ?? '',
      drafts: Object.fromEntries(drafts.map(([name, draft]) => [name, draftOf(draft)])),
    };
  } catch {
    return nothing;
  }
}

/** Set once the browser has refused to store; from then on this is what is kept. */
let unstored: string | undefined;
let cached: { text: string | null; kept: KeptQuotes } = { text: null, kept: nothing };

function currentText(): string | null {
  if (unstored !== undefined) return unstored;
  try {
    return window.localStorage.getItem(storageKey);
  } catch {
    // A browser may forbid storage altogether.
    return null;
  }
}

function keptQuotes(): KeptQuotes {
  const text = currentText();
  const lasting = unstored === undefined;
  if (text !== cached.text || lasting !== cached.kept.lasting)
    cached = { text, kept: { ...readKeptQuotes(text), lasting } };
  return cached.kept;
}

/** Change what is kept, starting from what is kept at this moment. */
export function changeQuotes(change: (before: KeptQuotes) => Pick<KeptQuotes, 'maker' | 'drafts'>): void {
  const { maker, drafts } = change(keptQuotes());
  const next = JSON.stringify({ maker, drafts });
  try {
    if (maker === '' && Object.keys(drafts).length === 0) window.localStorage.removeItem(storageKey);
    else window.localStorage.setItem(storageKey, next);
    unstored = undefined;
  } catch {
    unstored = next;
  }
  window.dispatchEvent(new Event(changed));
}

/** The same without the draft of one method. */
export const withoutDraft = (before: KeptQuotes, of: string): Pick<KeptQuotes, 'maker' | 'drafts'> => ({
  maker: before.maker,
  drafts: Object.fromEntries(Object.entries(before.drafts).filter(([name]) => name !== of)),
});

/** Forget name, address and drafts. */
export const forgetQuotes = (): void => changeQuotes(() => ({ maker: '', drafts: {} }));

const subscribe = keptListener(changed);

/** What is kept for quotes, up to date with other tabs; nothing on the server and for the first paint. */
export function useKeptQuotes(): KeptQuotes {
  return useSyncExternalStore(subscribe, keptQuotes, () => nothing);
}
