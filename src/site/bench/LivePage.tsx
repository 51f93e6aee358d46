import { useEffect, useState } from 'react';
import type { MethodQuestion } from '../../method/page/types.ts';
import { MethodView } from '../method/MethodView.tsx';
import { useMethod } from '../method/use-method.ts';
import styles from './bench.module.css';

/** A page is worked out when typing pauses for so long, ms. */
const pause = 400;

interface LivePageProps {
  text: string;
  file: string;
  /** The reader's shop record. */
  shop: string | undefined;
  /** Out of sight nothing is worked out. */
  paused: boolean;
}

/** The page of a method while it is written: that of the text where it is sound, else that of the last text that was. */
export default function LivePage({ text, file, shop, paused }: LivePageProps) {
  const [asked, setAsked] = useState<MethodQuestion>();
  useEffect(() => {
    if (paused) return undefined;
    const timer = setTimeout(() => setAsked({ text, file, ...(shop === undefined ? {} : { shop }) }), pause);
    return () => clearTimeout(timer);
  }, [text, file, shop, paused]);
  const { page, problems, failed } = useMethod(asked);
  const old = problems.length > 0;
  return (
    <div data-part="live-page" data-old={old ? '' : undefined}>
      <p role="status" className={styles.hint}>
        {failed && 'The page could not be worked out. Load this page again; what you typed is kept.'}
        {!failed && old && page && 'Of the text as it was last sound: mend what the problems name, and it follows.'}
        {!failed && old && !page && 'The page stands here once the text has no fault.'}
        {!failed && !old && !page && 'Working the page out …'}
      </p>
      {page && (
        <div className={old ? styles.old : undefined}>
          <p className={styles.pageTitle}>{page.title}</p>
          <MethodView page={page} />
        </div>
      )}
    </div>
  );
}
