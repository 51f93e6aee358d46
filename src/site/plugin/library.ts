import { docstringsOf } from '../../library/docstrings.ts';
import { entries, nodeEntries } from '../../library/entries.ts';
import { root } from '../../store/index.ts';
import type { LibraryRoom } from '../reference/library-data.ts';

/** Every entry of the package with its exports, as their docstrings say them. */
export function gatherLibrary(): LibraryRoom[] {
  return Object.entries(entries).map(([name, { source, about }]) => ({
    name,
    about,
    node: nodeEntries.includes(name),
    items: docstringsOf(root, source),
  }));
}
