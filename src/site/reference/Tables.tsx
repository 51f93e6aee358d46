import Link from '@docusaurus/Link';
import { type SourceId, shortSource } from '../../model/evidence/index.ts';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { Download } from './Download.tsx';
import type { TableSummary } from './data.ts';

/** Every table: what it transcribes, how its rows were read, and the files to take away. */
export default function Tables({ tables }: { tables: readonly TableSummary[] }) {
  return (
    <Page title="Tables" description="The published tables row by row, to read and to download as CSV or JSON.">
      <h1>Tables</h1>
      <p className="lead">
        Transcribed as printed, one row a line, each row marked with how it was read. All of them together are a data
        package: <Download file="datapackage.json">datapackage.json</Download>.
      </p>
      <ScrollBox label="Tables">
        <table>
          <thead>
            <tr>
              <th scope="col">Table</th>
              <th scope="col" className="num">
                Rows
              </th>
              <th scope="col" className="num">
                Read in the work
              </th>
              <th scope="col" className="num">
                Quoted
              </th>
              <th scope="col" className="num">
                From memory
              </th>
              <th scope="col">Files</th>
            </tr>
          </thead>
          <tbody>
            {tables.map((table) => (
              <tr key={table.name}>
                <th scope="row">
                  <Link to={`/reference/tables/${table.name}`}>{table.title}</Link>
                  <br />
                  <span className="quiet">
                    {table.source ? shortSource(table.source as SourceId) : 'Each row names its source'}
                    {table.locator && `, ${table.locator}`}
                  </span>
                </th>
                <td className="num">{table.rows}</td>
                <td className="num">{table.seen['source-text']}</td>
                <td className="num">{table.seen.quoted}</td>
                <td className="num">{table.seen.memory}</td>
                <td>
                  <Download file={`${table.name}.csv`}>CSV</Download>{' '}
                  <Download file={`${table.name}.json`}>JSON</Download>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Page>
  );
}
