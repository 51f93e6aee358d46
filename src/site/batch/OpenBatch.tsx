import { useEffect, useMemo, useState } from 'react';
import { useLinks } from '../../calculators/view/links.tsx';
import { fileName } from '../bench/names.ts';
import { useShelf } from '../bench/use-shelf.ts';
import styles from './batch.module.css';
import { OpenForm } from './OpenForm.tsx';
import { type MethodText, methodText } from './open.ts';

/** Open a batch of a method of the site, with the case that the address holds. */
export function OpenBatch({ asked }: { asked: URLSearchParams }) {
  const { Link, href } = useLinks();
  const id = asked.get('open') ?? '';
  const [method, setMethod] = useState<MethodText | 'none' | undefined>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the method is fetched once for its id
  useEffect(() => {
    let gone = false;
    void methodText(id, href).then((found) => !gone && setMethod(found ?? 'none'));
    return () => {
      gone = true;
    };
  }, [id]);
  return (
    <section data-part="open-batch">
      <h1>Open a batch</h1>
      {method === undefined && <p>Fetching the method …</p>}
      {method === 'none' && (
        <p className={styles.notice}>
          The method “{id.slice(0, 80)}” was not found here. It may have another name now, or there is no connection.
          The <Link to="/batches">list of batches</Link> opens one from a file of a method.
        </p>
      )}
      {method !== undefined && method !== 'none' && <OpenForm method={method} asked={asked} />}
    </section>
  );
}

/** Open a batch of a draft of the bench: the batch keeps the text as it is now, whatever becomes of the draft. */
export function OpenDraft({ id, asked }: { id: string; asked: URLSearchParams }) {
  const { Link } = useLinks();
  const { shelf } = useShelf();
  const draft = shelf.drafts.find((each) => each.id === id);
  const text = draft?.text;
  const file = draft && fileName(draft.name);
  const method = useMemo(() => (text === undefined || file === undefined ? undefined : { file, text }), [text, file]);
  return (
    <section data-part="open-batch">
      <h1>Open a batch</h1>
      {!method && !shelf.loaded && <p>Looking for the draft …</p>}
      {!method && shelf.loaded && (
        <p className={styles.notice}>
          The draft of this address is not kept in this browser: it may have been removed, or stand in another one. To{' '}
          <Link to="/bench">all drafts</Link>.
        </p>
      )}
      {method && <OpenForm method={method} asked={asked} />}
    </section>
  );
}
