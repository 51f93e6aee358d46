import { useEffect, useState } from 'react';
import { useLinks } from '../../calculators/view/links.tsx';
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
