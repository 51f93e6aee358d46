import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import styles from './term.module.css';

/** A word of the trade where a page first uses it: it leads to its row of the glossary, and on paper is a word like any other. */
export function Term({ id, children }: { id: string; children?: ReactNode }) {
  return (
    // A row of the glossary is no heading, so that the check of links does not know it; the ids come from the rows themselves.
    <Link className={styles.term ?? ''} to={`/how-to/glossary#${id}`} data-noBrokenLinkCheck>
      {children}
    </Link>
  );
}
