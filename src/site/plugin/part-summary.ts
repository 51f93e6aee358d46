import type { PartSummary } from '../reference/data.ts';

interface Named {
  id: string;
  title: string;
}

/** A part of a long list by the names of its entries alone, which is all that the list sends. */
export const partOf = ({ id, title }: Named, entries: readonly Named[]): PartSummary => ({
  id,
  title,
  entries: entries.map((entry) => ({ id: entry.id, title: entry.title })),
});
