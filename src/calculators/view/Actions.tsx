import { useEffect, useState } from 'react';
import type { Result } from '../../model/evidence/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import styles from './frame.module.css';
import { TakeAway } from './TakeAway.tsx';
import takeStyles from './take-away.module.css';

export interface ActionsProps {
  calculator: Calculator;
  /** The inputs that `result` answers, with their units. */
  asked: RawInputs;
  result: Result;
  units: ReaderUnits;
  link: () => string;
  print: () => void;
  reset: () => void;
}

/** What becomes of an answer: it is handed on or printed, and behind one quiet line taken away as a file; then a new start. */
export function Actions({ link, print, reset, ...taken }: ActionsProps) {
  const { title } = taken.calculator;
  const [said, setSaid] = useState<string | null>(null);
  // The server knows no browser: every button starts as the one that all browsers can do.
  const [shares, setShares] = useState(false);
  useEffect(() => setShares(typeof navigator.share === 'function'), []);

  const copy = async (text: string, done: string) => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(done);
    } catch {
      // A browser may refuse the clipboard; the reader can still take the text from here.
      setSaid(text);
    }
  };
  const copyLink = () => copy(link(), 'Link copied.');
  const share = async () => {
    try {
      await navigator.share({ title, url: link() });
    } catch (problem) {
      // Whoever closes the list of apps wants nothing; a browser that refuses leaves the clipboard.
      if (!(problem instanceof DOMException && problem.name === 'AbortError')) await copyLink();
    }
  };

  return (
    <div className={styles.actions}>
      <button type="button" className={`${styles.button} ${styles.first}`} onClick={shares ? share : copyLink}>
        {shares ? 'Share' : 'Copy link'}
      </button>
      <button type="button" className={styles.button} onClick={print}>
        Print
      </button>
      <button type="button" className={`${styles.button} ${takeStyles.quiet}`} onClick={reset}>
        Start again
      </button>
      <TakeAway {...taken} link={link} copy={copy} />
      <span className={styles.copied} role="status">
        {said}
      </span>
    </div>
  );
}
