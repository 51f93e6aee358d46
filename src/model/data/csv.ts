import Papa from 'papaparse';
import {
  type Seen,
  seenMarks,
  type Table,
  type TableColumn,
  type TableDefinition,
  type TableRow,
} from '../evidence/index.ts';
import type { DataProblem } from './problem.ts';

/** A cell's text and where it starts in its line (1 is the first character). */
interface Cell {
  text: string;
  column: number;
}

/** Where each cell of a line starts: commas count, but not those between quotes. */
function cellStarts(line: string): number[] {
  const starts = [1];
  let quoted = false;
  for (let at = 0; at < line.length; at += 1) {
    if (line[at] === '"') quoted = !quoted;
    else if (line[at] === ',' && !quoted) starts.push(at + 2);
  }
  return starts;
}

type CellReading = { ok: true; value: string | number | null } | { ok: false; message: string };

function readCell(text: string, column: TableColumn): CellReading {
  if (text === '') {
    if (!column.required) return { ok: true, value: null };
    return { ok: false, message: 'the cell is empty. Every row must fill this column: enter what the source prints.' };
  }
  if (column.kind === 'seen') {
    if (seenMarks.includes(text as Seen)) return { ok: true, value: text };
    return { ok: false, message: `“${text}” does not say how the row was read. Use ${seenMarks.join(', ')}.` };
  }
  if (column.kind === 'number') {
    if (/^-?\d+(\.\d+)?$/.test(text)) return { ok: true, value: Number(text) };
    const way = column.required
      ? 'Write digits with a decimal point.'
      : 'Write digits with a decimal point, or leave the cell empty where nothing is published.';
    return { ok: false, message: `“${text}” is not a number. ${way}` };
  }
  return { ok: true, value: text };
}

/** A table as read; rows with a problem are left out. */
export interface TableReading {
  table: Table;
  problems: DataProblem[];
  /** Where the cell of a column starts in a line of the file (1 is the first character). */
  columnAt(line: number, name: string): number;
}

/**
 * Read the text of a table file: a header row and one row a line, as its definition says.
 *
 * @param text the whole file
 * @param definition its columns, in order
 * @param file path shown in problems
 */
export function parseTable(text: string, definition: TableDefinition, file: string): TableReading {
  const problems: DataProblem[] = [];
  const rows: TableRow[] = [];
  const lines = text.replace(/^\ufeff/, '').split(/\r?\n/);
  if (lines.at(-1) === '') lines.pop();
  const report = (line: number, column: number, field: string, message: string) =>
    problems.push({ file, line, column, field, message });
  const names = definition.columns.map((column) => column.name);

  lines.forEach((source, index) => {
    const line = index + 1;
    const parsed = Papa.parse<string[]>(source, { delimiter: ',' });
    const starts = cellStarts(source);
    const cells = (parsed.data[0] ?? []).map((value, at): Cell => ({ text: value.trim(), column: starts[at] ?? 1 }));
    if (parsed.errors.length > 0) {
      report(
        line,
        1,
        '',
        `${parsed.errors[0]?.message ?? 'the quotes do not match'}. Close every quote in the line where it opens; double a quote that is part of the text.`,
      );
      return;
    }
    if (line === 1) {
      if (cells.map((cell) => cell.text).join(',') !== names.join(',')) {
        const at = cells.findIndex((cell, position) => cell.text !== names[position]);
        const wrong = cells[at] ?? { text: 'the end of the line', column: source.length + 1 };
        report(
          line,
          wrong.column,
          '',
          `the header has “${wrong.text}” where “${names[at] ?? names[cells.length] ?? 'the end of the line'}” stands in the definition. The columns are ${names.join(',')}.`,
        );
      }
      return;
    }
    if (cells.length !== names.length) {
      report(
        line,
        1,
        '',
        `the row has ${cells.length} cells and the table ${names.length} columns. Put a text with commas between quotes.`,
      );
      return;
    }
    const before = problems.length;
    const entries = definition.columns.map((column, at) => {
      const cell = cells[at] as Cell;
      const reading = readCell(cell.text, column);
      if (!reading.ok) report(line, cell.column, column.name, reading.message);
      return [column.name, reading.ok ? reading.value : null] as const;
    });
    if (problems.length === before) rows.push({ line, cells: Object.fromEntries(entries) });
  });
  if (lines.length === 0) report(1, 1, '', `the file is empty. It starts with the header ${names.join(',')}.`);
  return {
    table: { definition, rows },
    problems,
    columnAt: (line, name) => cellStarts(lines[line - 1] ?? '')[names.indexOf(name)] ?? 1,
  };
}
