import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import styles from './class.module.css';
import type { DamagedClass } from './use-classes.ts';

/** Classes whose stored form cannot be read: as text, to be taken as a file. */
export function DamagedClasses({
  damaged,
  onForget,
}: {
  damaged: readonly DamagedClass[];
  onForget: (id: string) => void;
}) {
  return damaged.map(({ id, content, problems }) => (
    <section key={id} data-part="class-damaged" className="no-print" aria-label="A class that cannot be read">
      <p>
        <strong>One class of this browser cannot be read.</strong> Nothing of it is lost: take it as a file, mend what
        is said here, and open the file again.
      </p>
      <ul className={styles.wrong}>
        {problems.slice(0, 5).map((problem) => (
          <li key={problem}>{problem}</li>
        ))}
      </ul>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keyboard */}
      <pre className={styles.stored} tabIndex={0}>
        {content.slice(0, 20_000)}
      </pre>
      <div className={styles.row}>
        <button
          type="button"
          className={frame.button}
          onClick={() => download('class.json', 'application/json', content)}
        >
          Save it as a file
        </button>
        <button type="button" className={frame.button} onClick={() => onForget(id)}>
          Forget it
        </button>
      </div>
    </section>
  ));
}
