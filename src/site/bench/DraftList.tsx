import { useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import type { Draft, DraftShelf, Shelf } from '../kept/drafts.ts';
import { Removed } from '../kept/PutBack.tsx';
import styles from './bench.module.css';
import { fileName, freeName, titleOf } from './names.ts';
import { zipOf } from './zip.ts';

/** Address of a draft on the bench. */
export const draftAddress = (id: string) => `/bench?draft=${id}`;

/** The drafts of this browser, each with what can be done with it. */
export function DraftList({ shelf, drafts }: { shelf: Shelf; drafts: DraftShelf }) {
  const { Link } = useLinks();
  const [removed, setRemoved] = useState<Draft>();
  return (
    <section aria-labelledby="bench-drafts" data-part="drafts">
      <h2 id="bench-drafts">Your drafts</h2>
      {shelf.loaded && shelf.drafts.length === 0 && <p>None yet. Begin one below.</p>}
      <ul className={styles.drafts}>
        {shelf.drafts.map((draft) => (
          <li key={draft.id} className={styles.draft}>
            <span className={styles.link}>
              <Link to={draftAddress(draft.id)}>{draft.name}</Link>
            </span>
            <span className="small">
              {[titleOf(draft.text), `changed ${new Date(draft.changed).toLocaleString()}`]
                .filter((words) => words !== undefined && words !== draft.name)
                .join(', ')}
            </span>
            <span className={styles.buttons}>
              <button
                type="button"
                className={frame.button}
                onClick={() => {
                  const names = shelf.drafts.map(({ name }) => name);
                  drafts.create(freeName(`${draft.name} (copy)`, names), draft.text);
                }}
              >
                Copy<span className="visually-hidden"> {draft.name}</span>
              </button>
              <button
                type="button"
                className={frame.button}
                onClick={() => download(fileName(draft.name), 'application/yaml', draft.text)}
              >
                Export<span className="visually-hidden"> {draft.name}</span>
              </button>
              <button type="button" className={frame.button} onClick={() => setRemoved(drafts.remove(draft.id))}>
                Remove<span className="visually-hidden"> {draft.name}</span>
              </button>
            </span>
          </li>
        ))}
      </ul>
      <Removed
        name={removed?.name}
        className={styles.status}
        onPutBack={() => {
          if (removed) drafts.put(removed);
          setRemoved(undefined);
        }}
      />
      <Damaged shelf={shelf} drafts={drafts} />
      {shelf.drafts.length > 1 && (
        <button
          type="button"
          className={frame.button}
          onClick={() => download('methods.zip', 'application/zip', zipOf(shelf.drafts))}
        >
          Export all as a zip
        </button>
      )}
    </section>
  );
}

/** What is kept as a draft and cannot be read as one. */
function Damaged({ shelf, drafts }: { shelf: Shelf; drafts: DraftShelf }) {
  return shelf.damaged.map(({ id, content }) => (
    <div key={id} className={styles.notice} data-part="damaged">
      <p>A draft that this browser keeps cannot be read whole. This is what is left of it:</p>
      <pre className={styles.sample}>{content}</pre>
      <span className={styles.buttons}>
        <button
          type="button"
          className={frame.button}
          onClick={() => download('damaged-draft.txt', 'text/plain', content)}
        >
          Take it as a file
        </button>
        <button type="button" className={frame.button} onClick={() => drafts.create('A mended draft', content)}>
          Open it as a new draft
        </button>
        <button type="button" className={frame.button} onClick={() => drafts.remove(id)}>
          Throw it away
        </button>
      </span>
    </div>
  ));
}
