import frame from '../../calculators/view/frame.module.css';
import styles from './bench.module.css';
import type { ReadLink } from './link.ts';
import { titleOf } from './names.ts';

interface LinkOfferProps {
  read: ReadLink;
  open: (text: string) => void;
  leave: () => void;
}

/** What a link has brought, shown before anything is done with it. */
export function LinkOffer({ read, open, leave }: LinkOfferProps) {
  return (
    <section className={styles.notice} aria-labelledby="bench-link" data-part="link-offer">
      <h2 id="bench-link">{read.ok ? 'This link brings a method' : 'This link cannot be opened'}</h2>
      {read.ok ? (
        <>
          <p>
            <strong>{titleOf(read.text) ?? 'A text without a title'}</strong>, {read.text.split('\n').length} lines.
            Whoever made the link wrote it; nobody has checked it. Opened, it is a new draft of yours beside the others.
          </p>
          <details>
            <summary>Read it first</summary>
            <pre className={styles.sample}>{read.text}</pre>
          </details>
        </>
      ) : (
        <p role="alert">{read.message}</p>
      )}
      <span className={styles.buttons}>
        {read.ok && (
          <button type="button" className={frame.button} onClick={() => open(read.text)}>
            Open it as a new draft
          </button>
        )}
        <button type="button" className={frame.button} onClick={leave}>
          {read.ok ? 'Leave it' : 'Close'}
        </button>
      </span>
    </section>
  );
}
