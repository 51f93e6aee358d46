import type { Taken, TakenTable } from './taken-tables.ts';

/** Letters that the name of a sheet may not have, and how many it may. */
const notInNames = /[\\/?*[\]:'\p{Cc}\p{Cs}]/gu;
const longestName = 31;

/** Characters that a cell of such a file holds. */
const longestCell = 32_767;

/** What XML cannot hold: control characters and halves of a pair. */
const notInXml = /(?![\t\n\r])[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** Names of the sheets, each short enough and no two alike. */
export function sheetNames(titles: readonly string[]): string[] {
  const taken = new Set<string>();
  return titles.map((title) => {
    const plain = title.replace(notInNames, ' ').replace(/\s+/g, ' ').trim() || 'Sheet';
    for (let count = 1; ; count++) {
      const end = count === 1 ? '' : ` ${count}`;
      const name = `${plain.slice(0, longestName - end.length).trim()}${end}`;
      if (taken.has(name.toLowerCase())) continue;
      taken.add(name.toLowerCase());
      return name;
    }
  });
}

const textCell = (text: string, bold = false) => ({
  value: text.replace(notInXml, ' ').slice(0, longestCell),
  type: String,
  ...(bold ? { fontWeight: 'bold' as const } : {}),
});

/** A number is a number, anything else is text: there are no formulas in what is written here. */
const cell = (value: Taken) => {
  if (value === null || value === '') return null;
  return typeof value === 'number' ? { value, type: Number } : textCell(value);
};

/** Wide enough for most of a column, in characters, and no wider than can be read. */
function widthOf(table: TakenTable, at: number): number {
  const lengths = [table.headings[at] ?? '', ...table.rows.map((row) => row[at] ?? '')].map((text) => `${text}`.length);
  return Math.min(60, Math.max(8, ...lengths) + 1);
}

/**
 * The tables as one workbook (.xlsx, ECMA-376), a sheet each. What writes it is fetched when this is called, and not before.
 *
 * @returns the file's bytes
 */
export async function spreadsheetOf(tables: readonly TakenTable[]): Promise<Uint8Array<ArrayBuffer>> {
  const { default: writeWorkbook } = await import('write-excel-file/universal');
  const names = sheetNames(tables.map(({ title }) => title));
  const file = writeWorkbook(
    tables.map((table, index) => ({
      sheet: names[index] ?? table.id,
      data: [
        table.headings.map((heading) => textCell(heading, true)),
        ...table.rows.map((row) => row.map((value) => cell(value))),
      ],
      columns: table.headings.map((_, at) => ({ width: widthOf(table, at) })),
      stickyRowsCount: 1,
    })),
  );
  return new Uint8Array(await (await file.toBlob()).arrayBuffer());
}
