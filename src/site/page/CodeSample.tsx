import { type ReactNode, useRef, useState } from 'react';
import styles from './code-sample.module.css';

/** Comments; what is written as a text or a number; marks. */
const parts = /(^|\s)(#[^\n]*)|("[^"\n]*"|'[^'\n]*'|\b\d[\d.]*\b)|([{}[\],:|>]+)/g;

/** A text of a file in one ink, with a second for what was written as text and a quiet one for comments and marks. */
function inked(text: string): ReactNode[] {
  const nodes: ReactNode[] = [];
  let done = 0;
  for (const found of text.matchAll(parts)) {
    const [all, before = '', comment, said, mark] = found;
    const start = found.index + before.length;
    const words = comment ?? said ?? mark ?? all;
    if (start > done) nodes.push(text.slice(done, start));
    nodes.push(
      <span key={start} className={said === undefined ? styles.quiet : styles.said}>
        {words}
      </span>,
    );
    done = start + words.length;
  }
  nodes.push(text.slice(done));
  return nodes;
}

/** What stands in a file, or is typed at a terminal, within a page: as written, with a button that copies it. */
export function CodeSample({ children, className }: { children?: ReactNode; className?: string }) {
  const block = useRef<HTMLElement>(null);
  const [said, setSaid] = useState('Copy');
  const copy = () =>
    navigator.clipboard.writeText(block.current?.textContent ?? '').then(
      () => setSaid('Copied'),
      () => setSaid('Not copied: select it'),
    );
  return (
    <div className={styles.sample}>
      {/* It scrolls within itself, so a keyboard must reach it. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by the keyboard */}
      <pre tabIndex={0}>
        <code ref={block} className={className}>
          {typeof children === 'string' ? inked(children.replace(/\n$/, '')) : children}
        </code>
      </pre>
      <button type="button" className={`${styles.copy} needs-scripts`} aria-live="polite" onClick={() => void copy()}>
        {said}
      </button>
    </div>
  );
}
