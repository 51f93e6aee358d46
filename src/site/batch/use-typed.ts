import { useSyncExternalStore } from 'react';
import { keptListener } from '../../calculators/view/kept.ts';

const storageKey = 'kerf-batch-typed';
const changed = 'kerf:batch-typed';

type Typed = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Set once the browser has refused to store; from then on this is what is held. */
let unstored: string | undefined;
let cached: { text: string | null; typed: Typed } = { text: null, typed: {} };

function currentText(): string | null {
  if (unstored !== undefined) return unstored;
  try {
    return window.localStorage.getItem(storageKey);
  } catch {
    return null;
  }
}

function current(): Typed {
  const text = currentText();
  if (text !== cached.text) cached = { text, typed: readTyped(text) };
  return cached.typed;
}

function readTyped(text: string | null): Typed {
  try {
    const data: unknown = JSON.parse(text ?? '{}');
    if (typeof data !== 'object' || data === null) return {};
    return Object.fromEntries(
      Object.entries(data).map(([batch, fields]) => [
        batch,
        Object.fromEntries(
          Object.entries((fields ?? {}) as Record<string, unknown>).flatMap(([field, value]) =>
            typeof value === 'string' ? [[field, value]] : [],
          ),
        ),
      ]),
    );
  } catch {
    return {};
  }
}

function change(
  batch: string,
  make: (before: Readonly<Record<string, string>>) => Readonly<Record<string, string>>,
): void {
  const all = current();
  const fields = make(Object.hasOwn(all, batch) ? (all[batch] ?? {}) : {});
  const { [batch]: _, ...others } = all;
  const text = JSON.stringify(Object.keys(fields).length > 0 ? { ...others, [batch]: fields } : others);
  try {
    window.localStorage.setItem(storageKey, text);
    unstored = undefined;
  } catch {
    unstored = text;
  }
  window.dispatchEvent(new Event(changed));
}

const none: Typed = {};

/** What is half typed for a batch: it survives a reload, and is dropped once it is written down. */
export interface HalfTyped {
  /** What stands in a field; undefined where nobody has touched it. */
  of(field: string): string | undefined;
  type(field: string, value: string): void;
  drop(...fields: string[]): void;
}

/** The half-typed entries of a batch, by the names of their fields. */
export function useTyped(batch: string): HalfTyped {
  const typed = useSyncExternalStore(keptListener(changed), current, () => none);
  const fields = Object.hasOwn(typed, batch) ? (typed[batch] ?? {}) : {};
  return {
    of: (field) => (Object.hasOwn(fields, field) ? fields[field] : undefined),
    type: (field, value) => change(batch, (before) => ({ ...before, [field]: value })),
    drop: (...names) =>
      change(batch, (before) => Object.fromEntries(Object.entries(before).filter(([name]) => !names.includes(name)))),
  };
}
