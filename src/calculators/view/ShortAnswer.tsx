import type { ReaderUnits } from '../../model/quantity/index.ts';
import { formatBand, formatQuantity, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { cellWords } from '../kit/document-text.ts';
import type { FoldedAnswer } from '../kit/folded.ts';
import { AskedWordsLine } from './AskedWordsLine.tsx';
import { EvidenceMark } from './EvidenceMark.tsx';
import styles from './folded.module.css';

/**
 * The figures and tables of an answer in short, with all that it was worked for: what paper, and a page without scripts, hold in place of
 * the form and the whole answer.
 */
export function ShortAnswer({ answer, units }: { answer: FoldedAnswer; units: ReaderUnits }) {
  const { figures, tables } = wordsInReaderUnits(answer, units);
  const asked = (units.system === 'inch' && answer.askedInch) || answer.asked;
  return (
    <div className={styles.short} data-part="short-answer">
      <AskedWordsLine asked={asked} />
      {figures.length > 0 && (
        <ul className={styles.figures}>
          {figures.map(({ label, value, low, high, unit, digits, kept, limit, basis, citation }) => (
            <li key={label}>
              {label} <b>{formatQuantity(value, unit, units, { digits, kept, limit })}</b>
              {low !== undefined && high !== undefined && (
                <> {formatBand(value, { low, high }, unit, units, { digits, kept })}</>
              )}{' '}
              <EvidenceMark basis={basis} citation={citation} cited />
            </li>
          ))}
        </ul>
      )}
      {tables.map((table) => (
        <table key={table.id} className={styles.table}>
          <caption>
            {table.title} <EvidenceMark basis={table.basis} />
          </caption>
          <thead>
            <tr>
              {table.columns.map(({ id, label }) => (
                <th key={id} scope="col">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, index) => (
              // Rows have no identity beyond their place in the answer.
              // biome-ignore lint/suspicious/noArrayIndexKey: see above
              <tr key={index}>
                {table.columns.map((column, at) => (
                  <td key={column.id}>{cellWords(row[at] ?? null, column, units)}</td>
                ))}
              </tr>
            ))}
          </tbody>
          {table.left > 0 && (
            <tfoot>
              <tr>
                <td colSpan={table.columns.length}>
                  And {table.left} more: the calculator’s own page prints all of them.
                </td>
              </tr>
            </tfoot>
          )}
        </table>
      ))}
    </div>
  );
}
