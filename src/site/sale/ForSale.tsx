import Link from '@docusaurus/Link';
import { useState } from 'react';
import { DocumentView } from '../../calculators/view/DocumentView.tsx';
import type { MethodPage } from '../../method/page/types.ts';
import { batchLabelDocument, batchLabelOf, listingOf } from '../../method/sale/index.ts';
import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import styles from './quote.module.css';

interface ForSaleProps {
  page: MethodPage;
  units: ReaderUnits;
  /** Today, 2026-11-29; left out while something that was typed is wrong: then the listing names no day. */
  day?: string;
}

/** The text of an online listing with what it must not say, and the label of a batch that is still to be made. */
export function ForSale({ page, units, day }: ForSaleProps) {
  const { text, inTheWay, mustNot } = listingOf(page, day);
  const [said, setSaid] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid('Copied.');
    } catch {
      setSaid('This browser does not copy: mark the text and copy it by hand.');
    }
  };
  return (
    <div className="no-print">
      <section aria-labelledby="listing" data-part="listing">
        <h2 id="listing">Text for an online listing</h2>
        {inTheWay.map((line) => (
          <p key={line} className={styles.wrong}>
            <strong>Not as it stands.</strong> {inReaderUnits(line, units)}
          </p>
        ))}
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard */}
        <section className={styles.listing} tabIndex={0} aria-label="Text of the listing">
          <pre>{text}</pre>
        </section>
        <p className={styles.line}>
          <button type="button" className="button button--secondary" onClick={() => void copy()}>
            Copy the text
          </button>
          <span role="status">{said}</span>
        </p>
        {mustNot.length > 0 && (
          <>
            <h3>What it must not say</h3>
            <dl className={styles.not}>
              {mustNot.map(({ words, why }) => (
                <div key={words}>
                  <dt>“{inReaderUnits(words, units)}”</dt>
                  <dd>{inReaderUnits(why, units)}</dd>
                </div>
              ))}
            </dl>
            <p>
              More, with words to put in their place:{' '}
              <Link to="/how-to/what-may-be-promised">What may be promised</Link>.
            </p>
          </>
        )}
      </section>
      <section aria-labelledby="batch-label" data-part="batch-label">
        <h2 id="batch-label">Label of the batch</h2>
        <p>
          Before it is made, days and lots are lines to write on. <Link to="/batches">The record of a batch</Link> fills
          them in.
        </p>
        <DocumentView document={batchLabelDocument(batchLabelOf(page))} units={units} headingLevel={3} />
      </section>
    </div>
  );
}
