import type { PartedEntry, PartSummary } from '../reference/data.ts';

interface Named {
  id: string;
  title: string;
}

/** A part of a long list by the names of its entries alone, which is all that the list sends. */
export const partOf = ({ id, title }: Named, entries: readonly PartedEntry[]): PartSummary => ({
  id,
  title,
  entries: entries.map((entry) => ({
    id: entry.id,
    title: entry.title,
    ...(entry.within?.length ? { within: entry.within } : {}),
  })),
});
