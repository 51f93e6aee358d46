import { useState } from 'react';
import frame from '../../calculators/view/frame.module.css';
import type { ShownLine } from '../../method/batch/shown.ts';
import styles from './batch.module.css';
import type { Writing } from './writing.ts';

/** Everything that was written down, the latest first. What was wrong is struck and stays. */
export function EntryList({ entries, writing }: { entries: readonly ShownLine[]; writing: Writing }) {
  const [striking, setStriking] = useState('');
  const { typed, write } = writing;
  const strike = (line: ShownLine) => {
    const why = (typed.of(`strike ${line.id}`) ?? '').trim() || 'Written down by mistake.';
    write({ kind: 'correction', strikes: line.id, why }, 'it is struck, and stays in the record');
    typed.drop(`strike ${line.id}`);
    setStriking('');
  };
  if (entries.length === 0) return null;
  return (
    <section aria-labelledby="written" data-part="entries">
      <h2 id="written">Written down</h2>
      <ul className={styles.list}>
        {[...entries].reverse().map((line, at) => {
          const open = striking === line.id || typed.of(`strike ${line.id}`) !== undefined;
          return (
            // Two entries may bear one id.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <li key={`${line.id} ${at}`} className={styles.line}>
              {line.struck === undefined ? (
                <span>{line.words}</span>
              ) : (
                <span>
                  <s>{line.words}</s> Struck: {line.struck}
                </span>
              )}
              {line.struck === undefined && !open && (
                <button
                  type="button"
                  className={`${frame.button} no-print`}
                  aria-label={`Strike: ${line.words}`}
                  onClick={() => setStriking(line.id)}
                >
                  Strike
                </button>
              )}
              {line.struck === undefined && open && (
                <form
                  className={`${styles.fields} no-print`}
                  onSubmit={(event) => {
                    event.preventDefault();
                    strike(line);
                  }}
                >
                  <label>
                    What was wrong with it
                    <input
                      className={styles.input}
                      maxLength={400}
                      value={typed.of(`strike ${line.id}`) ?? ''}
                      onChange={(event) => typed.type(`strike ${line.id}`, event.target.value)}
                    />
                  </label>
                  <span className={styles.buttons}>
                    <button type="submit" className={styles.second}>
                      Strike it
                    </button>
                    <button
                      type="button"
                      className={frame.button}
                      onClick={() => {
                        typed.drop(`strike ${line.id}`);
                        setStriking('');
                      }}
                    >
                      Leave it
                    </button>
                  </span>
                </form>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
