import useBaseUrl from '@docusaurus/useBaseUrl';
import { useCallback, useEffect, useState } from 'react';
import type { Found, Searching } from './find.ts';
import { searchFile } from './index-format.ts';

/** What can be asked, with the function that asks it: the library comes with the index, and with nothing before. */
export interface SearchIndex {
  searching: Searching;
  find(text: string): Found;
}

/** Fetched once for all boxes of a page, and for the next page too. */
export const fetched: { index?: Promise<SearchIndex> } = {};

async function fetchIndex(address: string): Promise<SearchIndex> {
  const [{ find, searching }, answer] = await Promise.all([import('./find.ts'), fetch(address)]);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}`);
  const read = searching(await answer.json());
  return { searching: read, find: (text) => find(read, text) };
}

/** The index, or why there is none: nobody has asked yet, it is on its way, it could not be fetched. */
export type SearchState = 'asleep' | 'coming' | 'failed' | SearchIndex;

/**
 * The index of the site, fetched when it is first wanted.
 *
 * @returns its state, and what to call when somebody is about to search; called after a failure, it tries again
 */
export function useSearchIndex(): [state: SearchState, wake: () => void] {
  const address = useBaseUrl(searchFile);
  const [state, setState] = useState<SearchState>('asleep');
  const [wanted, setWanted] = useState(0);
  useEffect(() => {
    if (wanted === 0) return;
    let closed = false;
    setState((before) => (typeof before === 'object' ? before : 'coming'));
    fetched.index ??= fetchIndex(address);
    fetched.index.then(
      (index) => closed || setState(index),
      () => {
        delete fetched.index;
        if (!closed) setState('failed');
      },
    );
    return () => {
      closed = true;
    };
  }, [address, wanted]);
  const wake = useCallback(() => setWanted((before) => before + 1), []);
  return [state, wake];
}
