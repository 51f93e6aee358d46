import styles from './notice.module.css';

/** A way on from a notice. */
interface Way {
  label: string;
  /** What is done; the notice is taken away first. */
  act: () => void;
}

/**
 * Say something over the page that its reader must hear now. What says so can often not be fetched any more, so it comes with every page, without
 * anything of the framework.
 *
 * @returns takes it away
 */
export function sayOver(text: string, ways: readonly Way[]): () => void {
  const box = document.body.appendChild(document.createElement('div'));
  box.className = styles.notice ?? '';
  box.setAttribute('role', 'alert');
  const words = box.appendChild(document.createElement('p'));
  words.textContent = text;
  const line = box.appendChild(document.createElement('p'));
  line.className = styles.ways ?? '';
  const close = () => box.remove();
  for (const { label, act } of ways) {
    const button = line.appendChild(document.createElement('button'));
    button.type = 'button';
    button.className = 'button';
    button.textContent = label;
    button.onclick = () => {
      close();
      act();
    };
  }
  return close;
}
