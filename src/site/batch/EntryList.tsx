import { useState } from 'react';
import form from '../../calculators/view/form.module.css';
import frame from '../../calculators/view/frame.module.css';
import type { ShownLine } from '../../method/batch/shown.ts';
import { PutBack } from '../kept/PutBack.tsx';
import styles from './batch.module.css';
import type { Writing } from './writing.ts';

type Props = { entries: readonly ShownLine[]; writing: Writing };

/** Everything that was written down, the latest first. What was wrong is struck: it stays in the record, folded, and may be put back. */
export function EntryList({ entries, writing }: Props) {
  if (entries.length === 0) return null;
  const lines = [...entries].reverse();
  const strikers = new Set(lines.map(({ struckBy }) => struckBy));
  // A correction is told by what it strikes; one that strikes nothing here stands by itself, or nobody could strike it.
  const isFolded = ({ id, kind, struck }: ShownLine) =>
    struck !== undefined || (kind === 'correction' && strikers.has(id));
  const struck = lines.filter((line) => line.struck !== undefined && line.kind !== 'correction');
  const taken = lines.filter((line) => line.struck !== undefined && line.kind === 'correction');
  return (
    <section aria-labelledby="written" data-part="entries">
      <h2 id="written">Written down</h2>
      <ul className={styles.list}>
        {lines
          .filter((line) => !isFolded(line))
          .map((line, at) => (
            // Two entries may bear one id.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <Line key={`${line.id} ${at}`} line={line} writing={writing} />
          ))}
      </ul>
      {struck.length + taken.length > 0 && (
        <details data-part="struck">
          <summary className={form.summary}>Struck out ({struck.length})</summary>
          <ul className={styles.list}>
            {struck.map((line, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              <li key={`${line.id} ${at}`} className={styles.line}>
                <span>
                  <s>{line.words}</s> Struck: {line.struck}
                </span>
                <PutBack
                  what={line.words}
                  onPutBack={() =>
                    writing.write(
                      { kind: 'correction', strikes: line.struckBy ?? '', why: 'Put back.' },
                      'it holds again, and that it was struck stays in the record',
                    )
                  }
                />
              </li>
            ))}
            {taken.map((line, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              <li key={`${line.id} ${at}`} className={styles.line}>
                <span className="small">
                  {line.words} That was taken back: {line.struck}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** An entry that holds, with the way to strike it. */
function Line({ line, writing: { typed, write } }: { line: ShownLine; writing: Writing }) {
  const [striking, setStriking] = useState(false);
  const field = `strike ${line.id}`;
  const why = typed.of(field);
  const leave = () => {
    typed.drop(field);
    setStriking(false);
  };
  return (
    <li className={styles.line}>
      <span>{line.words}</span>
      {striking || why !== undefined ? (
        <form
          className={`${styles.fields} no-print`}
          onSubmit={(event) => {
            event.preventDefault();
            write(
              { kind: 'correction', strikes: line.id, why: (why ?? '').trim() || 'Written down by mistake.' },
              'it is struck, and stays in the record',
            );
            leave();
          }}
        >
          <label>
            What was wrong with it
            <input
              className={styles.input}
              maxLength={400}
              value={why ?? ''}
              onChange={(event) => typed.type(field, event.target.value)}
            />
          </label>
          <span className={styles.buttons}>
            <button type="submit" className={styles.second}>
              Strike it
            </button>
            <button type="button" className={frame.button} onClick={leave}>
              Leave it
            </button>
          </span>
        </form>
      ) : (
        <button
          type="button"
          className={`${frame.button} no-print`}
          aria-label={`Strike: ${line.words}`}
          onClick={() => setStriking(true)}
        >
          Strike
        </button>
      )}
    </li>
  );
}
