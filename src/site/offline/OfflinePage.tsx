import Link from '@docusaurus/Link';
import useBaseUrl from '@docusaurus/useBaseUrl';
import type { ReactNode } from 'react';
import { useSearch } from '../../calculators/view/address-bar.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import type { LayerState } from './client.ts';
import type { LayerName } from './kept-files.ts';
import { NotHere } from './NotHere.tsx';
import styles from './offline.module.css';
import { isWanted, sizeWords, stateWords } from './offline-words.ts';
import { useKept } from './use-kept.ts';

/** What of the site is kept for reading without a network, how large it is, how to keep all of it and how to be rid of it. */
export default function OfflinePage() {
  return (
    <Page
      title="Without a network"
      description="What your browser keeps of this site for reading where there is no signal, how large it is, how to keep all of it, and how to take it away."
      width="text"
    >
      <h1>Without a network</h1>
      <p className="lead">
        After one visit your browser keeps this site for the yard, the cellar and the classroom. What you type is worked
        out in your browser anyway and needs no network at any time.
      </p>
      <NeedsScripts instead="Scripts are off: nothing is kept while they are. Print what you need, or save the page with your browser.">
        <Missed />
        <Kept />
      </NeedsScripts>
      <h2>On the home screen</h2>
      <p>
        The site can stand among your apps: in the menu of your browser choose <em>Install</em> or{' '}
        <em>Add to home screen</em>. It is the same site in a window of its own, with the same drafts.
      </p>
      <h2>What may go wrong</h2>
      <ul>
        <li>
          A browser that runs out of space may take away what it keeps, drafts too. Save drafts and records as files:{' '}
          <Link to="/kept">what this browser keeps</Link>.
        </li>
        <li>
          When a newer version of the site is there, the one you have stays whole until you accept the notice or close
          every tab of the site. Without a network you read the figures of your last visit.
        </li>
        <li>A private window keeps nothing once it is closed.</li>
      </ul>
    </Page>
  );
}

/** The reader was led here from a page that is not kept. */
function Missed() {
  const page = new URLSearchParams(useSearch()).get('page');
  if (!page || !isWanted(page)) return null;
  return (
    <p role="status" className={styles.missed}>
      There is no network now, and the page <code>{page}</code> is not kept in this browser yet.{' '}
      <a href={page}>Try again</a>, or go on with the <Link to="/calculators">calculators</Link>, the{' '}
      <Link to="/how-to">how-to pages</Link> and the <Link to="/methods">methods</Link>, which are kept first.
    </p>
  );
}

function Kept() {
  const folder = useBaseUrl('/');
  const { state, list, online, busy, said, keepAll, takeAway } = useKept(folder);
  if (state === null) return <NotHere folder={folder} />;
  // While the browser is asked, the same lines stand: nothing below them jumps.
  const { first, second } = state?.layers ?? { first: nothing, second: nothing };
  const words = (layer: LayerName) => (state ? stateWords(state.layers[layer], list?.sizes[layer]) : looking);
  return (
    <section aria-labelledby="kept-now">
      <h2 id="kept-now">What is kept now</h2>
      {!online && <p className={styles.missed}>You are without a network now: this page comes from what is kept.</p>}
      <dl className={styles.layers}>
        <Layer
          name="First part"
          holds="Home, list of woods, calculators, how-to pages with all on safety, methods, bench, batches, class, search"
        >
          {words('first')}
        </Layer>
        <Layer name="Second part" holds="The page of each wood, reference pages, tables, booklets">
          {words('second')}
        </Layer>
      </dl>
      {(state === undefined || state.used !== undefined) && (
        <p>
          On the disk, with what you typed and what the browser adds:{' '}
          <strong>{state?.used === undefined ? looking : sizeWords(state.used)}</strong>.
        </p>
      )}
      <p className={styles.ways}>
        {!(first.whole && second.whole) && (
          <button type="button" className="button" onClick={keepAll} disabled={busy || !state}>
            Keep everything
          </button>
        )}
        {first.kept + second.kept > 0 && (
          <button type="button" className="button" onClick={takeAway} disabled={busy}>
            Take it away
          </button>
        )}
      </p>
      <p role="status">{said}</p>
      <p className="small quiet">
        The first part is kept by itself after your first page, the second after it, unless your browser asks to save
        data: then only by the button. Taking it away touches nothing that you typed, and nothing is kept again until
        you press “Keep everything”.
      </p>
    </section>
  );
}

const nothing: LayerState = { kept: 0, whole: false };
const looking = 'being looked at';

function Layer({ name, holds, children }: { name: string; holds: string; children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {holds}. <strong>{children}</strong>
      </dd>
    </div>
  );
}
