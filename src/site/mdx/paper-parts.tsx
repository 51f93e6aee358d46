import type { ReactNode } from 'react';
import styles from './paper-parts.module.css';

interface Held {
  children: ReactNode;
}

/** What is handed out by itself: on paper it begins a sheet, and what comes after it begins another. */
export function HandOut({ children }: Held) {
  return (
    <div className={styles.handOut} data-part="hand-out">
      {children}
    </div>
  );
}

/** Cards to cut apart: on paper two beside each other, across the columns of the page. */
export function Cards({ children }: Held) {
  return (
    <div className={styles.cards} data-part="cards">
      {children}
    </div>
  );
}

/** One of them: never parted by the end of a sheet, its frame is the line to cut along. */
export function Card({ children }: Held) {
  return (
    <div className={styles.card} data-part="card">
      {children}
    </div>
  );
}
