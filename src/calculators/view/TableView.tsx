import type { ResultTable } from '../../model/evidence/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { cellWords } from '../kit/document-text.ts';
import { EvidenceMark } from './EvidenceMark.tsx';
import styles from './result.module.css';

/** Characters from which a cell is a sentence: it needs room, or it would stand one word a line. */
const sentence = 40;
/** Share of rows with a sentence in them from which a table is one of words rather than numbers. */
const wordyShare = 1 / 4;

/**
 * Rows of an answer, numbers in the reader's units.
 *
 * On a narrow screen a table of numbers scrolls sideways by itself; one that holds sentences stands as a list instead,
 * each cell under the name of its column.
 */
export function TableView({ table, units }: { table: ResultTable; units: ReaderUnits }) {
  const rows = table.rows.map((row) =>
    table.columns.map((column, at) => {
      const value = row[at] ?? null;
      return { column, value, words: cellWords(value, column, units) };
    }),
  );
  const talking = rows.filter((row) => row.some(({ words }) => words.length > sentence));
  const wordy = rows.length > 0 && talking.length / rows.length >= wordyShare;
  return (
    <div className={styles.tableBox}>
      <div className={styles.tableTitle}>
        {table.title} <EvidenceMark basis={table.basis} />
      </div>
      {/* A region that scrolls must be reachable by keyboard. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: see above */}
      <section className={styles.scroll} tabIndex={0} aria-label={table.title}>
        {/* The roles are written out because a table that stands as a list loses them otherwise. */}
        {/* biome-ignore-start lint/a11y/noRedundantRoles: see above */}
        <table role="table" data-wordy={wordy || undefined}>
          <thead role="rowgroup">
            <tr role="row">
              {table.columns.map((column) => (
                <th key={column.id} scope="col" role="columnheader">
                  {column.label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody role="rowgroup">
            {rows.map((row, index) => (
              // Rows have no identity beyond their place in the answer.
              // biome-ignore lint/suspicious/noArrayIndexKey: see above
              <tr key={index} role="row">
                {row.map(({ column, value, words }) => (
                  <td
                    key={column.id}
                    role="cell"
                    data-label={column.label}
                    data-kind={typeof value === 'number' ? 'number' : words.length > sentence ? 'sentence' : undefined}
                  >
                    {words}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        {/* biome-ignore-end lint/a11y/noRedundantRoles: see above */}
      </section>
    </div>
  );
}
