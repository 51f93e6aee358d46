import { useId, useState } from 'react';
import { useLinks } from '../../calculators/view/links.tsx';
import type { StepCard } from '../../method/batch/card.ts';
import { cautionWords } from '../../model/evidence/index.ts';
import styles from './words.module.css';

/** As much as three lines of a phone hold, characters. */
const short = 110;

/**
 * What to do at a step, short: how much, what, which dangers. A danger is never folded away; what is long is, and the page of the method has it
 * all.
 */
export function StepWords({ card, number, page }: { card: StepCard; number: number; page: string | undefined }) {
  const { Link } = useLinks();
  const [open, setOpen] = useState(false);
  const id = useId();
  const { does, doses, tell, cautions } = card;
  const dangers = cautions.filter(({ level }) => level === 'danger');
  const more = tell.length + cautions.length > 0 || does.length > 1 || (does[0]?.length ?? 0) > short;
  return (
    <div className={styles.words} data-part="step-words">
      {doses.map((dose) => (
        <p key={dose} className={styles.dose}>
          {dose}
        </p>
      ))}
      <div id={id}>
        <div className={styles.does} data-open={open || undefined}>
          {does.map((line) => (
            <p key={line}>{line} </p>
          ))}
        </div>
        {dangers.length > 0 && (
          <p className={styles.heads}>
            <strong>{dangers.length === 1 ? 'Danger' : 'Dangers'}:</strong>{' '}
            {dangers.map(({ head }) => head).join(' · ')}
          </p>
        )}
        <div className={styles.rest} data-open={open || undefined}>
          {tell.length > 0 && (
            <p>
              <strong>It is right when:</strong> {tell.join(' ')}
            </p>
          )}
          {cautions.map(({ level, text }) => (
            <p key={text}>
              <strong>{cautionWords[level]}.</strong> {text}
            </p>
          ))}
        </div>
      </div>
      <p className={`${styles.ways} no-print`}>
        {more && (
          <button
            type="button"
            className={styles.more}
            aria-expanded={open}
            aria-controls={id}
            onClick={() => setOpen(!open)}
          >
            {open ? 'Less' : 'All of it, and how to tell'}
          </button>
        )}
        {page !== undefined && <Link to={page}>Step {number} on its page</Link>}
      </p>
    </div>
  );
}
