import { type Verdict, verdictWords } from '../../model/evidence/index.ts';
import styles from './verdict.module.css';

/** What an answer comes to: its level in a word, and the sentence that a maker would say. */
export function VerdictLine({ verdict }: { verdict: Verdict }) {
  return (
    <p className={styles.verdict} data-part="verdict" data-level={verdict.level}>
      <span className={styles.level}>{verdictWords[verdict.level]}</span> <span>{verdict.text}</span>
    </p>
  );
}
