import { useEffect, useState, useSyncExternalStore } from 'react';
import { channelOf } from '../kept/channel.ts';
import { DraftShelf, type Shelf } from '../kept/drafts.ts';

let shelf: DraftShelf | undefined;

/** The one shelf of the page; made in a browser only. */
export function theShelf(): DraftShelf {
  shelf ??= new DraftShelf(channelOf('kerf-drafts'));
  return shelf;
}

const empty: Shelf = { loaded: false, drafts: [], damaged: [], storage: 'kept', unstored: [] };
const never = () => () => undefined;

/** The drafts of this browser, kept up to date; stored whenever the page is hidden or left. */
export function useShelf(): { shelf: Shelf; drafts: DraftShelf | undefined } {
  const [drafts, setDrafts] = useState<DraftShelf>();
  useEffect(() => {
    const found = theShelf();
    setDrafts(found);
    void found.load();
    const store = () => void found.flush();
    const hidden = () => document.visibilityState === 'hidden' && store();
    // Leaving loses only what the browser refuses to store.
    const leaving = (event: BeforeUnloadEvent) => {
      store();
      const { storage, unstored } = found.shelf();
      if (storage !== 'kept' && unstored.length > 0) event.preventDefault();
    };
    window.addEventListener('pagehide', store);
    window.addEventListener('beforeunload', leaving);
    document.addEventListener('visibilitychange', hidden);
    return () => {
      store();
      window.removeEventListener('pagehide', store);
      window.removeEventListener('beforeunload', leaving);
      document.removeEventListener('visibilitychange', hidden);
    };
  }, []);
  const now = useSyncExternalStore(
    drafts?.subscribe ?? never,
    () => drafts?.shelf() ?? empty,
    () => empty,
  );
  return { shelf: now, drafts };
}
