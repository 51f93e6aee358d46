import Link from '@docusaurus/Link';
import { memo } from 'react';
import { type AddressedCase, caseQuery, quoteAddress, sheetsAddress } from '../../method/documents/address.ts';
import styles from './method.module.css';

interface CaseLinksProps {
  id: string;
  /** The case that stands on the page, as it is asked, with the hours that were chosen for it. */
  asked: AddressedCase;
  /** Calendar by which it is taught: a class begins with it where no other was chosen. */
  taught?: string | undefined;
}

/** What can be done with a method from its page, each with the very case that stands there. */
export const CaseLinks = memo(function CaseLinks({ id, asked, taught }: CaseLinksProps) {
  const hours = asked.calendar ?? taught;
  const course = new URLSearchParams([
    ['method', id],
    ...caseQuery({ ...asked, ...(hours === undefined ? {} : { calendar: hours }) }),
  ]);
  const batch = new URLSearchParams([['open', id], ...caseQuery(asked)]);
  return (
    <nav aria-label="With this case" className={`no-print ${styles.ways}`} data-part="case-links">
      <ul>
        <li>
          <Link to={sheetsAddress(id, asked)}>Print its sheets</Link>
        </li>
        <li>
          <Link to={quoteAddress(id, asked)}>Sell it: a quote, a listing, a label</Link>
        </li>
        <li>
          <Link to={`/batches?${batch}`}>Make it: open a batch</Link>
        </li>
        <li>
          <Link to={`/class?${course}`}>Teach it to a class</Link>
        </li>
        <li>
          <Link to={`/bench?from=${id}`}>Change the method</Link>
        </li>
      </ul>
    </nav>
  );
});
