import Link from '@docusaurus/Link';
import type { TableColumn, TableTerms } from '../../model/evidence/index.ts';
import { licences, shortSource } from '../../model/evidence/index.ts';
import { unitLabel } from '../../model/quantity/index.ts';
import { AnchoredRow } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { Download } from './Download.tsx';
import type { TableEntry } from './data.ts';
import styles from './reference.module.css';

const seenWords: Readonly<Record<string, string>> = {
  'source-text': 'read in the work',
  quoted: 'quoted',
  memory: 'from memory',
};

/** One table as it was transcribed, with a place to link to at each row. */
export default function TablePage({ table }: { table: TableEntry }) {
  const { definition, rows } = table;
  return (
    <Page
      title={definition.title}
      description={`${definition.title}: ${rows.length} rows as printed, each with how it was read.`}
    >
      <p className="small">
        <Link to="/reference/tables">Tables</Link>
      </p>
      <h1>{definition.title}</h1>
      <p className="lead">
        {definition.source ? (
          <Link to={`/reference/sources#${definition.source}`}>{shortSource(definition.source)}</Link>
        ) : (
          'Each row names its source'
        )}
        {definition.locator && `, ${definition.locator}`}. {rows.length} rows.{' '}
        <Download file={`${definition.name}.csv`}>CSV</Download>,{' '}
        <Download file={`${definition.name}.json`}>JSON</Download>.
      </p>
      {definition.terms && <Terms terms={definition.terms} />}
      {definition.notes.length > 0 && (
        <ul>
          {definition.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <ScrollBox label={definition.title}>
        <table className={styles.asPrinted}>
          <thead>
            <tr>
              {definition.columns.map((column) => (
                <th
                  key={column.name}
                  scope="col"
                  title={column.title}
                  className={column.kind === 'number' ? 'num' : undefined}
                >
                  {column.name}
                  {column.unit && <span className="quiet"> {unitLabel(column.unit)}</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <AnchoredRow key={row.line} id={`line-${row.line}`}>
                {definition.columns.map((column) => (
                  <td key={column.name} className={column.kind === 'number' ? 'num' : undefined}>
                    {cellWords(column, row.cells[column.name] ?? null)}
                  </td>
                ))}
              </AnchoredRow>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Page>
  );
}

/** Under which terms the figures of this table may be passed on, with the credit that they ask for. */
function Terms({ terms }: { terms: TableTerms }) {
  const { title, address } = licences[terms.licence];
  return (
    <p data-terms={terms.licence}>
      <strong>Terms of this table:</strong> <Link to={address}>{title}</Link>. {terms.credit} {terms.known}
    </p>
  );
}

function cellWords(column: TableColumn, value: string | number | null): string {
  if (value === null) return '';
  return column.kind === 'seen' ? (seenWords[String(value)] ?? String(value)) : String(value);
}
