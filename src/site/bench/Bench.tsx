import { type DragEvent, useEffect, useState, useSyncExternalStore } from 'react';
import { pushSearch, replaceHash, replaceSearch, useSearch } from '../../calculators/view/address-bar.ts';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import type { DraftShelf, Shelf } from '../kept/drafts.ts';
import { useStillShown } from '../page/use-still-shown.ts';
import styles from './bench.module.css';
import { DraftList } from './DraftList.tsx';
import { LinkOffer } from './LinkOffer.tsx';
import { type ReadLink, readFragment } from './link.ts';
import { NewDraft } from './NewDraft.tsx';
import { titleOf } from './names.ts';
import { type TakenIn, takeFiles, takeShipped, takeText } from './take-in.ts';
import { useShelf } from './use-shelf.ts';
import { Workbench } from './Workbench.tsx';
import { zipOf } from './zip.ts';

function useHash(): string {
  return useSyncExternalStore(
    (listener) => {
      for (const event of ['hashchange', 'popstate']) window.addEventListener(event, listener);
      return () => {
        for (const event of ['hashchange', 'popstate']) window.removeEventListener(event, listener);
      };
    },
    () => window.location.hash,
    () => '',
  );
}

/** What the address carries behind its #, until the reader has said what to do with it. */
function useOffered(): [offered: ReadLink | undefined, settle: () => void] {
  const hash = useHash();
  const [offered, setOffered] = useState<ReadLink>();
  useEffect(() => {
    let closed = false;
    void readFragment(hash).then((read) => closed || setOffered(read));
    return () => {
      closed = true;
    };
  }, [hash]);
  const settle = () => {
    setOffered(undefined);
    replaceHash('');
  };
  return [offered, settle];
}

/** The bench: drafts of this browser and the one that is open. All of it works in the reader’s browser alone. */
export default function Bench() {
  const { shelf, drafts } = useShelf();
  if (!drafts || !shelf.loaded) return <p role="status">Looking for your drafts …</p>;
  return <LoadedBench shelf={shelf} drafts={drafts} />;
}

function LoadedBench({ shelf, drafts }: { shelf: Shelf; drafts: DraftShelf }) {
  const open = new URLSearchParams(useSearch()).get('draft');
  const [offered, settle] = useOffered();
  const [said, setSaid] = useState<readonly string[]>([]);
  const draft = shelf.drafts.find(({ id }) => id === open);
  const { Link, href } = useLinks();
  const from = new URLSearchParams(useSearch()).get('from');
  // A method that the address names is opened once as a new draft, whose own address then stands in its place: Back leads to where the reader was.
  useEffect(() => {
    if (from === null || !/^[a-z0-9-]{1,80}$/.test(from)) return;
    let closed = false;
    void takeShipped(drafts, href(`/data/methods/${from}.yaml`), from).then(({ ids: [id], said: words }) => {
      if (closed) return;
      setSaid(words);
      replaceSearch(id === undefined ? '' : `?draft=${id}`);
    });
    return () => {
      closed = true;
    };
  }, [from, drafts, href]);

  const stillShown = useStillShown();
  const taken = ({ ids: [id, ...more], said: words }: TakenIn) => {
    if (!stillShown()) return;
    setSaid(words);
    if (id !== undefined && more.length === 0) pushSearch(`?draft=${id}`);
  };
  const dropped = (event: DragEvent) => {
    const files = [...event.dataTransfer.files];
    if (files.length === 0) return;
    // Before the editor, which would write the file into the open text.
    event.preventDefault();
    event.stopPropagation();
    void takeFiles(drafts, files).then(taken);
  };

  return (
    <section
      aria-label="Bench"
      onDragOverCapture={(event) => event.dataTransfer.types.includes('Files') && event.preventDefault()}
      onDropCapture={dropped}
    >
      <Storage shelf={shelf} />
      {offered && (
        <LinkOffer
          read={offered}
          leave={settle}
          open={(text) => {
            settle();
            taken({ ids: [takeText(drafts, text, titleOf(text) ?? 'A method from a link').id], said: [] });
          }}
        />
      )}
      <div role="status" className={styles.status} data-part="said">
        {said.map((words) => (
          <p key={words}>{words}</p>
        ))}
      </div>
      {draft && <Workbench key={draft.id} draft={draft} drafts={drafts} />}
      {open !== null && !draft && (
        <p className={styles.notice}>
          The draft of this address is not kept in this browser: it may have been removed, or stand in another one.{' '}
          <Link to="/bench">All drafts</Link>
        </p>
      )}
      {!draft && (
        <>
          <DraftList shelf={shelf} drafts={drafts} />
          <NewDraft drafts={drafts} taken={taken} />
        </>
      )}
    </section>
  );
}

/** What is said where the browser does not store what is typed. */
function Storage({ shelf }: { shelf: Shelf }) {
  if (shelf.storage === 'kept') return null;
  const unstored = shelf.drafts.filter(({ id }) => shelf.unstored.includes(id));
  return (
    <div className={styles.notice} role="alert" data-part="storage">
      <p>
        {shelf.storage === 'full'
          ? 'The space that this browser gives to the site is full: what you change now lasts as long as this page. Take it as a file; to make room, remove drafts or clear other data.'
          : 'This browser does not let the page store anything: drafts last as long as this page. Take them as a file before you leave.'}
      </p>
      {unstored.length > 0 && (
        <button
          type="button"
          className={frame.button}
          onClick={() => download('methods.zip', 'application/zip', zipOf(unstored))}
        >
          Take what is not stored as a zip
        </button>
      )}
    </div>
  );
}
