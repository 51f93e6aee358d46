/** A column of a table printed for reading: its heading, and whether it is set to the right as numbers are. */
export interface TextColumn {
  heading: string;
  numeric?: boolean;
}

/** Rows under their headings, columns parted by two spaces, without trailing spaces. */
export function textTable(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, at) =>
    Math.max(column.heading.length, ...rows.map((row) => (row[at] ?? '').length)),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map((column, at) => {
        const cell = cells[at] ?? '';
        const width = widths[at] ?? 0;
        return column.numeric ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd();
  return [
    line(columns.map((column) => column.heading)),
    line(widths.map((width) => '-'.repeat(width))),
    ...rows.map(line),
  ].join('\n');
}
