import type { Result } from '../../model/evidence/index.ts';

/**
 * Figures, series and tables of an answer as CSV (RFC 4180): first the figures, one a line, then each series and table as a block
 * of its own after an empty line. Units stand in a column or in the heading.
 */
export function resultCsv(result: Result): string {
  const lines: (string | number | undefined)[][] = [['figure', 'value', 'unit', 'low', 'high', 'basis']];
  for (const [name, figure] of Object.entries(result.figures)) {
    lines.push([name, figure.value, figure.unit, figure.low, figure.high, figure.basis]);
  }
  for (const series of result.series ?? []) {
    lines.push([]);
    lines.push([
      series.axis.label,
      ...series.lines.flatMap((line) => [
        `${line.id} (${line.unit})`,
        ...(line.low ? [`${line.id} low (${line.unit})`] : []),
        ...(line.high ? [`${line.id} high (${line.unit})`] : []),
      ]),
    ]);
    series.axis.values.forEach((at, index) => {
      lines.push([
        at,
        ...series.lines.flatMap((line) => [
          line.values[index],
          ...(line.low ? [line.low[index]] : []),
          ...(line.high ? [line.high[index]] : []),
        ]),
      ]);
    });
  }
  for (const table of result.tables ?? []) {
    lines.push([]);
    lines.push(table.columns.map(({ id, unit }) => (unit ? `${id} (${unit})` : id)));
    for (const row of table.rows) lines.push(row.map((value) => value ?? undefined));
  }
  return `${lines.map((line) => line.map(cell).join(',')).join('\r\n')}\r\n`;
}

function cell(value: string | number | undefined): string {
  const text = value === undefined ? '' : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
