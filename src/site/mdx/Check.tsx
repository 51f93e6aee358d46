import type { ReactNode } from 'react';
import styles from './check.module.css';

interface Held {
  children: ReactNode;
}

/** The questions of a page, with their answers apart. */
export function Check({ children }: Held) {
  return <div data-part="check">{children}</div>;
}

/**
 * The answers to the questions above them, closed until somebody opens them: also without scripts. Paper holds them at the end of its last
 * sheet (`AnswersSheet`).
 */
export function Answers({ children }: Held) {
  return (
    <details className={`${styles.answers} no-print`} data-part="answers">
      <summary>Answers</summary>
      {children}
    </details>
  );
}

/** The answers of a page at the end of its last sheet; a handout leaves them out. The build puts it at the end of the page. */
export function AnswersSheet({ title, children }: Held & { title?: string }) {
  return (
    <section className="print-only" data-part="answers-sheet">
      <h2>{title ? `Answers: ${title}` : 'Answers'}</h2>
      {children}
    </section>
  );
}
