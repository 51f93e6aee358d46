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

/** What the page of the library begins with: a test runs it. */
export const libraryExample = `import { answer, calculatorById } from '${packageName}/calculators';

const outcome = answer(calculatorById('width-change'), {
  species: 'white-ash',
  width: '240 mm',
  moistureFrom: '14 %',
  moistureTo: '8 %',
  cut: 'flatsawn',
});`;
