import type { BatchEntry, BatchRecord } from './record.ts';

/** Data as one text in which the order of fields does not count: two records say the same where these are the same. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const fields = Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${fields.map(([field, inner]) => `${JSON.stringify(field)}:${canonical(inner)}`).join(',')}}`;
}

/** What a batch was opened with: it never changes. Two batches of one id that differ in it are two batches. */
export function headOf({ entries: _, ...head }: BatchRecord): string {
  return canonical(head);
}

/** Entries of several sources, each once, in an order that does not depend on who came first. Two of one id that differ are both kept. */
export function unionOf(...lists: readonly (readonly BatchEntry[])[]): BatchEntry[] {
  const all = new Map(lists.flat().map((entry) => [canonical(entry), entry]));
  return [...all]
    .sort(([oneText, one], [otherText, other]) => {
      const [a, b] = [Date.parse(one.at), Date.parse(other.at)];
      if (a !== b) return a - b;
      if (one.id !== other.id) return one.id < other.id ? -1 : 1;
      return oneText < otherText ? -1 : 1;
    })
    .map(([, entry]) => entry);
}

/** What a merge brought. */
export interface Merged {
  batches: BatchRecord[];
  /** Batches that were not there, and entries that were not there in batches that were. */
  newBatches: number;
  newEntries: number;
  /** What stands twice and differs, a sentence each; both are kept. */
  conflicts: string[];
}

/**
 * Lay batches of a file beside those that are kept. Nothing is overwritten: a batch of the same id that was opened otherwise is kept as a second
 * one, an entry of the same id that says otherwise as a second one. The same file twice changes nothing, and which came first does not matter.
 */
export function mergeBatches(kept: readonly BatchRecord[], come: readonly BatchRecord[]): Merged {
  const byHead = new Map<string, BatchRecord>();
  let newBatches = 0;
  let newEntries = 0;
  for (const [from, batch] of [
    ...kept.map((each) => ['kept', each] as const),
    ...come.map((each) => ['come', each] as const),
  ]) {
    const head = headOf(batch);
    const before = byHead.get(head);
    const entries = unionOf(before?.entries ?? [], batch.entries);
    if (from === 'come') {
      if (!before) newBatches += 1;
      else newEntries += entries.length - before.entries.length;
    }
    byHead.set(head, { ...batch, entries });
  }
  const batches = [...byHead]
    .sort(([one, { opened: a }], [other, { opened: b }]) => Date.parse(a) - Date.parse(b) || (one < other ? -1 : 1))
    .map(([, batch]) => batch);
  return { batches, newBatches, newEntries, conflicts: conflictsOf(batches) };
}

/** What stands twice under one id and differs. */
export function conflictsOf(batches: readonly BatchRecord[]): string[] {
  const ids = batches.map(({ id }) => id);
  const twice = [...new Set(ids.filter((id, at) => ids.indexOf(id) !== at))].map((id) => {
    const titles = batches.filter((batch) => batch.id === id).map(({ title }) => `“${title}”`);
    return `${titles.join(' and ')} bear the same id, ${id}, and were opened otherwise: method, case or title differ. Both are kept; look at each before you go on.`;
  });
  return [
    ...twice,
    ...batches.flatMap((batch) => sameIds(batch.entries).map((id) => `“${batch.title}”: ${sameIdWords(id)}`)),
  ];
}

/** Ids that entries bear which are not the same. */
export function sameIds(entries: readonly BatchEntry[]): string[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { id } of entries) (seen.has(id) ? twice : seen).add(id);
  return [...twice];
}

export const sameIdWords = (id: string): string =>
  `two entries bear the id ${id} and do not say the same. Both are kept. Strike that id, which strikes both, and write down again what is right.`;
