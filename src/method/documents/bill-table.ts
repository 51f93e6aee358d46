import type { PaperBlock, ResultTable } from '../../model/evidence/index.ts';

/** A line of a table of what to buy, in words. */
export interface BillRow {
  what: string;
  need: string;
  buy: string;
  /** Empty where it costs nothing more, or where nobody knows. */
  cost: string;
  /** Why nobody knows. */
  missing?: string;
  places?: string;
}

const columns = [
  { id: 'what', label: 'What' },
  { id: 'need', label: 'Needed, with spare' },
  { id: 'buy', label: 'Buy' },
  { id: 'cost', label: 'Cost' },
  { id: 'places', label: 'For places' },
] as const;

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/**
 * What to buy as a table without the columns that would stand empty, and below it why lines have no cost: each reason once.
 *
 * @param id of the table
 * @param withShop whether there is a shop record: without one every line lacks its price for the same reason
 */
export function billTable(id: string, rows: readonly BillRow[], withShop: boolean): PaperBlock[] {
  const shown = columns.filter(({ id: column }) => column === 'what' || rows.some((row) => row[column]));
  const table: ResultTable = {
    id,
    title: '',
    columns: shown,
    rows: rows.map((row) => shown.map(({ id: column }) => row[column] ?? '')),
    basis: 'derived',
  };
  const lacking = rows.filter(({ missing }) => missing !== undefined);
  const reasons = [...new Set(lacking.map(({ missing }) => missing as string))];
  const said = !withShop
    ? lacking.length > 0
      ? ['No packs and no prices: there is no shop record, which would hold them.']
      : []
    : reasons.map((reason) => {
        const of = lacking.filter(({ missing }) => missing === reason);
        return of.length === rows.length
          ? `${sentence(reason)}: so it is with all of it.`
          : `${sentence(reason)}: ${of.map(({ what }) => what).join('; ')}.`;
      });
  return [{ kind: 'table', table }, ...said.map((words): PaperBlock => ({ kind: 'text', text: words }))];
}
