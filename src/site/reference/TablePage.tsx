import Link from '@docusaurus/Link';
import { useHistory } from '@docusaurus/router';
import useBaseUrl from '@docusaurus/useBaseUrl';
import { useEffect } from 'react';
import type { TableColumn, TableTerms } from '../../model/evidence/index.ts';
import { licences, shortSource } from '../../model/evidence/index.ts';
import { unitLabel } from '../../model/quantity/index.ts';
import { AnchoredRow } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { Download } from './Download.tsx';
import type { TableEntry, TablePart } from './data.ts';
import styles from './reference.module.css';
import { addressOfPart, partOfLine } from './table-parts.ts';

const seenWords: Readonly<Record<string, string>> = {
  'source-text': 'read in the work',
  quoted: 'quoted',
  memory: 'from memory',
};

/** One table as it was transcribed, or a part of a long one, with a place to link to at each row. */
export default function TablePage({ table }: { table: TableEntry }) {
  const { definition, rows, parts, part } = table;
  const total = parts.reduce((sum, each) => sum + each.rows, 0);
  const which = parts.length > 1 ? `, part ${part} of ${parts.length}` : '';
  useRowElsewhere(table);
  return (
    <Page
      title={`${definition.title}${which}`}
      description={`${definition.title}${which}: ${rows.length} rows as printed, each with how it was read.`}
    >
      <p className="small">
        <Link to="/reference/tables">Tables</Link>
      </p>
      <h1>
        {definition.title}
        {which}
      </h1>
      <p className="lead">
        {definition.source ? (
          <Link to={`/reference/sources#${definition.source}`}>{shortSource(definition.source)}</Link>
        ) : (
          'Each row names its source'
        )}
        {definition.locator && `, ${definition.locator}`}. {total} rows.{' '}
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
      {parts.length > 1 && <Parts table={table} label="Parts of the table" />}
      <ScrollBox label={definition.title}>
        <table className={styles.asPrinted}>
          <thead>
            <tr>
              {definition.columns.map((column) => (
                <th
                  key={column.name}
                  scope="col"
                  title={column.title}
                  className={column.kind === 'number' ? 'num' : styles[widthOf(rows, column) ?? '']}
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
                  <td
                    key={column.name}
                    lang={column.name === 'botanical_name' ? 'la' : undefined}
                    className={column.kind === 'number' ? 'num' : undefined}
                  >
                    {cellWords(column, row.cells[column.name] ?? null)}
                  </td>
                ))}
              </AnchoredRow>
            ))}
          </tbody>
        </table>
      </ScrollBox>
      {parts.length > 1 && <Parts table={table} label="Parts of the table, again" />}
    </Page>
  );
}

/** The pages of a long table, each by its first row and its last. */
function Parts({ table: { definition, parts, part }, label }: { table: TableEntry; label: string }) {
  return (
    <nav aria-label={label}>
      <ul className={styles.parts}>
        {parts.map((each) => (
          <li key={each.part}>
            <Link to={addressOfPart(definition.name, each.part)} aria-current={each.part === part ? 'page' : undefined}>
              {partWords(each)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

const partWords = ({ from, rows, first, last }: TablePart) =>
  `Rows ${from} to ${from + rows - 1}: ${first === last ? first : `${first} to ${last}`}`;

/** Where the address names a row of another part, as one that was kept from before the table was parted does, go to it. */
function useRowElsewhere({ definition, part }: TableEntry) {
  const history = useHistory();
  const base = useBaseUrl('/');
  useEffect(() => {
    const line = Number(/^#line-(\d+)$/.exec(history.location.hash)?.[1]);
    if (!line) return;
    const there = partOfLine(line, definition.columns.length);
    if (there !== part)
      history.replace(`${base}${addressOfPart(definition.name, there).slice(1)}${history.location.hash}`);
  }, [history, base, definition, part]);
}

/** How much room a column of words needs, by its longest cell, so that no row stands a screen high in a narrow column. */
function widthOf(rows: TableEntry['rows'], column: TableColumn): 'some' | 'many' | 'most' | undefined {
  const longest = Math.max(...rows.map(({ cells }) => cellWords(column, cells[column.name] ?? null).length));
  if (longest > 160) return 'most';
  if (longest > 60) return 'many';
  return longest > 18 ? 'some' : undefined;
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
