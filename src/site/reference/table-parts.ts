/** Rows on one page of a table: about twenty screens of a phone. */
const usualPart = 150;

/** The same for a table of very many columns, which a browser draws cell by cell. */
const widePart = 50;

/** How many columns make a table such a one. */
const manyColumns = 20;

/** Rows of a file on one page of its table. */
export const rowsOfPart = (columns: number): number => (columns > manyColumns ? widePart : usualPart);

/** The page of a table on which a line of its file stands, from 1; the first line holds the names of the columns. */
export const partOfLine = (line: number, columns = 0): number =>
  Math.max(1, Math.ceil((line - 1) / rowsOfPart(columns)));

/** The address of a page of a table. */
export const addressOfPart = (table: string, part: number): string =>
  part === 1 ? `/reference/tables/${table}` : `/reference/tables/${table}/${part}`;

/** The address of a row of a table that has no more than the usual number of columns, as every table has that speaks of woods. */
export const addressOfRow = (table: string, line: number): string =>
  `${addressOfPart(table, partOfLine(line))}#line-${line}`;
