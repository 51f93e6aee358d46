import { sameIds, sameIdWords, unionOf } from './merge.ts';
import type { BatchEntry, EntryOf } from './record.ts';

/** Something in a record that cannot be so: kept as it was typed, and said with a way out. Texts hold marked quantities. */
export interface BatchProblem {
  /** Ids of the entries that it is about. */
  entries: readonly string[];
  step?: string;
  text: string;
  wayOut: string;
  /** True where the record may stay as it is: nothing that is worked out from it is in doubt. */
  mayStay?: boolean;
}

/** An entry, and the correction that strikes it where one does. */
export interface ShownEntry {
  entry: BatchEntry;
  struck?: EntryOf<'correction'>;
}

/** The entries of a record in the order in which they were written, whatever the order of the file, each with what strikes it. */
export interface Standing {
  all: readonly ShownEntry[];
  /** Those that hold, corrections left out. */
  holding: readonly BatchEntry[];
  problems: readonly BatchProblem[];
}

/**
 * Which entries hold. A correction strikes the entry that it names, another correction too, which then strikes nothing; corrections that strike
 * each other in a circle strike nothing, and it is said.
 */
export function standingOf(entries: readonly BatchEntry[]): Standing {
  const all = unionOf(entries);
  const ids = new Set(all.map(({ id }) => id));
  const corrections = all.filter((entry) => entry.kind === 'correction');
  const strikers = new Map<string, EntryOf<'correction'>[]>();
  for (const correction of corrections)
    strikers.set(correction.strikes, [...(strikers.get(correction.strikes) ?? []), correction]);

  // From those that nobody strikes towards what they strike; what is never reached stands in a circle.
  const holds = new Map<EntryOf<'correction'>, boolean>();
  const open = new Map(corrections.map((each) => [each, strikers.get(each.id)?.length ?? 0]));
  const ready = corrections.filter((each) => open.get(each) === 0);
  for (let correction = ready.pop(); correction; correction = ready.pop()) {
    holds.set(correction, !(strikers.get(correction.id) ?? []).some((by) => holds.get(by)));
    for (const target of corrections.filter(({ id }) => id === correction?.strikes)) {
      open.set(target, (open.get(target) ?? 0) - 1);
      if (open.get(target) === 0) ready.push(target);
    }
  }
  const circle = corrections.filter((each) => !holds.has(each));
  const struckBy = ({ id }: BatchEntry) => strikers.get(id)?.find((each) => holds.get(each));
  return {
    all: all.map((entry) => {
      const struck = struckBy(entry);
      return struck ? { entry, struck } : { entry };
    }),
    holding: all.filter((entry) => entry.kind !== 'correction' && !struckBy(entry)),
    problems: [
      ...corrections
        .filter(({ strikes }) => !ids.has(strikes))
        .map(({ id, strikes }) => ({
          entries: [id],
          text: `A correction strikes the entry ${strikes}, which is not in this record.`,
          wayOut: 'Import the file that holds that entry, or strike the correction.',
        })),
      ...(circle.length > 0
        ? [
            {
              entries: circle.map(({ id }) => id),
              text: 'Corrections strike each other in a circle; none of them holds.',
              wayOut: 'Strike what is wrong once more.',
            },
          ]
        : []),
      ...sameIds(all)
        .filter((id) => all.some((entry) => entry.id === id && !struckBy(entry)))
        .map((id) => ({
          entries: [id],
          text: `${sameIdWords(id).charAt(0).toUpperCase()}${sameIdWords(id).slice(1).split('. ')[0]}. Both are kept.`,
          wayOut: 'Strike that id, which strikes both, and write down again what is right.',
        })),
    ],
  };
}
