import Link from '@docusaurus/Link';
import type { SpeciesDossier } from '../../model/species/types.ts';
import { Anchored } from '../page/Anchored.tsx';
import { addressOfRow } from '../reference/table-parts.ts';

/** The table rows that the page was made from, and what to do about a wrong figure. */
export function RecordLinks({ wood }: { wood: SpeciesDossier }) {
  return (
    <section>
      <Anchored as="h2" id="record">
        Record
      </Anchored>
      <p>
        This page is made from <code>src/model/species/records/{wood.id}.yaml</code>
        <span className="no-print"> and these rows:</span>
      </p>
      <ul className="no-print">
        {wood.rows.map((row) => (
          <li key={`${row.table}${row.line}`}>
            <Link to={addressOfRow(row.table, row.line)}>{row.label}</Link> in <code>{row.table}</code>
          </li>
        ))}
      </ul>
      <p className="no-print">
        A figure looks wrong, or you own the book that a figure from memory names?{' '}
        <Link to="/reference/evidence#report">Say what is printed there</Link>.
      </p>
    </section>
  );
}
