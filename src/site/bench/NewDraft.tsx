import { useEffect, useState } from 'react';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import { starterMethod } from '../../method/record/starter.ts';
import type { DraftShelf } from '../kept/drafts.ts';
import styles from './bench.module.css';
import { type TakenIn, takeFiles, takePasted, takeShipped, takeText } from './take-in.ts';

/** A method that the site ships, as its list names it. */
interface Shipped {
  id: string;
  title: string;
}

const isShipped = (entry: unknown): entry is Shipped =>
  typeof entry === 'object' &&
  entry !== null &&
  /^[a-z0-9-]+$/.test(String((entry as Shipped).id)) &&
  typeof (entry as Shipped).title === 'string';

/** The list of shipped methods: `null` where it cannot be fetched. */
function useShipped(address: string): readonly Shipped[] | null | undefined {
  const [list, setList] = useState<readonly Shipped[] | null>();
  useEffect(() => {
    let closed = false;
    const fetched = async () => {
      const answer = await fetch(address);
      const found: unknown = answer.ok ? await answer.json() : null;
      return Array.isArray(found) ? found.filter(isShipped) : null;
    };
    fetched().then(
      (found) => closed || setList(found),
      () => closed || setList(null),
    );
    return () => {
      closed = true;
    };
  }, [address]);
  return list;
}

interface NewDraftProps {
  drafts: DraftShelf;
  /** Told what came of it; the first draft is opened where there is only one. */
  taken: (taken: TakenIn) => void;
}

/** The ways to begin a draft. */
export function NewDraft({ drafts, taken }: NewDraftProps) {
  const { href } = useLinks();
  const shipped = useShipped(href('/data/methods/index.json'));
  const [chosen, setChosen] = useState('');
  const [pasted, setPasted] = useState('');
  const [problem, setProblem] = useState('');

  const begin = (text: string, name: string) => taken({ ids: [takeText(drafts, text, name).id], said: [] });
  const fromShipped = async () => {
    const one = shipped?.find(({ id }) => id === (chosen || shipped[0]?.id));
    if (!one) return;
    const came = await takeShipped(drafts, href(`/data/methods/${one.id}.yaml`), one.title);
    setProblem(came.ids.length > 0 ? '' : came.said.join(' '));
    if (came.ids.length > 0) taken(came);
  };

  return (
    <section aria-labelledby="bench-new" data-part="new-draft">
      <h2 id="bench-new">Begin a method</h2>
      <div className={styles.ways}>
        <span className={styles.buttons}>
          <button type="button" className={frame.button} onClick={() => begin(starterMethod, 'My method')}>
            A small one to change
          </button>
          <FileButton
            accept=".yaml,.yml,.txt,.zip,application/yaml,text/yaml,text/plain,application/zip"
            part="draft-file"
            onFile={(file) => void takeFiles(drafts, [file]).then(taken)}
          >
            Open a file or a zip
          </FileButton>
          <button type="button" className={frame.button} onClick={() => begin('', 'An empty method')}>
            An empty text
          </button>
        </span>
        {/* It stands here while the list comes, or all below it would jump. */}
        {shipped !== null && shipped?.length !== 0 && (
          <span className={styles.buttons}>
            <label className={styles.field}>
              From one of this site
              <select
                value={chosen || shipped?.[0]?.id}
                disabled={!shipped}
                onChange={(event) => setChosen(event.target.value)}
              >
                {shipped?.map(({ id, title }) => (
                  <option key={id} value={id}>
                    {title}
                  </option>
                ))}
              </select>
            </label>
            <button type="button" className={frame.button} disabled={!shipped} onClick={() => void fromShipped()}>
              Begin from it
            </button>
          </span>
        )}
        {shipped === null && (
          <p className="small">The methods of this site could not be fetched just now; the other ways work without.</p>
        )}
        <details>
          <summary>Paste a text</summary>
          <label className={styles.field}>
            Text of a method (YAML)
            <textarea
              className={styles.plain}
              value={pasted}
              spellCheck={false}
              onChange={(event) => setPasted(event.target.value)}
            />
          </label>
          <button
            type="button"
            className={frame.button}
            onClick={() => {
              const came = takePasted(drafts, pasted);
              if (came.ids.length > 0) setPasted('');
              taken(came);
            }}
          >
            Open it as a draft
          </button>
        </details>
      </div>
      <p role="status" className={styles.status}>
        {problem}
      </p>
    </section>
  );
}
