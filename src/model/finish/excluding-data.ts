import type { Seen, SourceId, Table } from '../evidence/index.ts';
import { type ExcludingReading, fitResistance } from './excluding-fit.ts';

/** A row of the table of moisture-excluding effectiveness with the resistance fitted to it. */
export interface ExcludingRow {
  /** As printed. */
  finish: string;
  coats: number;
  readings: readonly ExcludingReading[];
  /** s/m; null where the readings tell too little. */
  resistance: number | null;
  /** Root mean square of the fit, percentage points; null with the resistance. */
  misfit: number | null;
  source: SourceId;
  seen: Seen;
}

/** A single reading nearer to the ends than this says nothing of the resistance but that it is small or large, %. */
const tellingAlone = { low: 5, high: 95 } as const;

/** Days of the table's columns. */
const days = [1, 7, 14] as const;

/**
 * Every row of the table with its fitted resistance, in the table's order.
 *
 * @param table `moisture-excluding`, as read
 */
export function excludingRows(table: Table): ExcludingRow[] {
  return table.rows.map(({ cells }) => {
    const readings = days.flatMap((day): ExcludingReading[] => {
      const printed = cells[`day_${day}`];
      return typeof printed === 'number' ? [{ days: day, printed }] : [];
    });
    const [only] = readings;
    const telling =
      readings.length > 1 ||
      (only !== undefined && only.printed >= tellingAlone.low && only.printed <= tellingAlone.high);
    const fit = telling ? fitResistance(readings) : null;
    return {
      finish: String(cells.finish),
      coats: Number(cells.coats),
      readings,
      resistance: fit ? Number(fit.resistance.toPrecision(4)) : null,
      misfit: fit ? Number(fit.misfit.toFixed(2)) : null,
      source: cells.source as SourceId,
      seen: cells.seen as Seen,
    };
  });
}

/** The text of `excluding.json`: one row a line, so that a change of one reading is one line. */
export function excludingJson(rows: readonly ExcludingRow[]): string {
  return `[\n${rows.map((row) => `  ${JSON.stringify(row)}`).join(',\n')}\n]\n`;
}
