import type { ExportedItem } from '../../library/docstrings.ts';

/** An entry of the package, as its page shows it. */
export interface LibraryRoom {
  /** Its name behind that of the package. */
  name: string;
  about: string;
  /** True where it runs in Node alone. */
  node: boolean;
  items: readonly ExportedItem[];
}

/** The same as the list of entries shows it. */
export type LibrarySummary = Pick<LibraryRoom, 'name' | 'about'> & { count: number };

/** What the package is called where it is imported. */
export const packageName = 'kerf-and-cure';
