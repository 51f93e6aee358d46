import { useEffect, useState } from 'react';
import { download } from './download.ts';
import styles from './frame.module.css';

interface ActionsProps {
  /** Names the downloads. */
  id: string;
  title: string;
  link: () => string;
  json: () => string;
  csv: () => string;
  print: () => void;
  reset: () => void;
}

/** Ways to keep an answer: hand it on, print it, and behind one button the downloads and a new start. */
export function Actions({ id, title, link, json, csv, print, reset }: ActionsProps) {
  const [said, setSaid] = useState<string | null>(null);
  // The server knows no browser: every button starts as the one that all browsers can do.
  const [shares, setShares] = useState(false);
  useEffect(() => setShares(typeof navigator.share === 'function'), []);

  const copy = async () => {
    const address = link();
    try {
      await navigator.clipboard.writeText(address);
      setSaid('Link copied.');
    } catch {
      // A browser may refuse the clipboard; the reader can still take the address from here.
      setSaid(address);
    }
  };
  const share = async () => {
    try {
      await navigator.share({ title, url: link() });
    } catch (problem) {
      // Whoever closes the list of apps wants nothing; a browser that refuses leaves the clipboard.
      if (!(problem instanceof DOMException && problem.name === 'AbortError')) await copy();
    }
  };

  return (
    <div className={styles.actions}>
      <button type="button" className={`${styles.button} ${styles.first}`} onClick={shares ? share : copy}>
        {shares ? 'Share' : 'Copy link'}
      </button>
      <button type="button" className={styles.button} onClick={print}>
        Print
      </button>
      <details className={styles.more}>
        <summary className={styles.button}>More</summary>
        <div className={styles.moreButtons}>
          <button
            type="button"
            className={styles.button}
            onClick={() => download(`${id}.json`, 'application/json', json())}
          >
            JSON
          </button>
          <button type="button" className={styles.button} onClick={() => download(`${id}.csv`, 'text/csv', csv())}>
            CSV
          </button>
          <button type="button" className={styles.button} onClick={reset}>
            Start again
          </button>
        </div>
      </details>
      <span className={styles.copied} role="status">
        {said}
      </span>
    </div>
  );
}
