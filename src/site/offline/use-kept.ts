import { useCallback, useEffect, useState } from 'react';
import { choose, type KeptState, keptState, register, serverList, workersOf } from './client.ts';
import { forgetOffline } from './forget.ts';
import type { FileList } from './kept-files.ts';
import { heardWords } from './offline-words.ts';
import type { Asked, Heard } from './worker.ts';

/** What is kept is looked at so often while the page stands, ms. */
const look = 2_000;

const notKept =
  'The browser refused to keep it. In a private window, or where storage is switched off, it keeps nothing.';

export interface Kept {
  /** Undefined until the browser has been asked; null where it can keep nothing at this address. */
  state: KeptState | null | undefined;
  list: FileList | undefined;
  online: boolean;
  busy: boolean;
  /** What came of the last button. */
  said: string;
  keepAll: () => void;
  takeAway: () => void;
}

/** What this browser keeps of the site, followed while the page stands, and the two buttons. */
export function useKept(folder: string): Kept {
  const [state, setState] = useState<KeptState | null>();
  const [fromServer, setFromServer] = useState<FileList>();
  const [online, setOnline] = useState(true);
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState('');

  const refresh = useCallback(async () => {
    const now = workersOf() ? ((await keptState(folder)) ?? null) : null;
    setState(now);
    setOnline(navigator.onLine);
    return now;
  }, [folder]);

  useEffect(() => {
    // Sizes of what could be kept are asked of the server only where nothing says them here.
    void refresh().then((now) => now && !now.list && void serverList(folder).then(setFromServer));
    const timer = setInterval(() => document.visibilityState === 'visible' && void refresh(), look);
    return () => clearInterval(timer);
  }, [folder, refresh]);

  const run = async (work: () => Promise<string>) => {
    setBusy(true);
    setSaid(await work().catch(() => notKept));
    await refresh();
    setBusy(false);
  };

  return {
    state,
    list: state?.list ?? fromServer,
    online,
    busy,
    said,
    keepAll: () =>
      void run(async () => {
        choose('all');
        setSaid('Keeping the first part …');
        // The browser may drop what it was not asked to hold; whether it holds it is its own affair.
        void navigator.storage?.persist?.();
        const active = await activeWorker(folder);
        return active ? heardWords(await keepTheRest(active, (heard) => setSaid(heardWords(heard)))) : notKept;
      }),
    takeAway: () =>
      void run(async () => {
        const remembered = choose('nothing');
        if (!(await forgetOffline(folder))) return 'The browser refused. Clear the data of this site in its settings.';
        return remembered
          ? 'It is taken away. What you typed is still here.'
          : 'It is taken away, but this browser cannot remember that you want it so: the next page may keep it again.';
      }),
  };
}

/** The worker, once it has kept the first part; undefined where that failed. */
async function activeWorker(folder: string): Promise<ServiceWorker | undefined> {
  const registration = await register(folder);
  if (!registration) return undefined;
  const beginning = registration.installing;
  if (!registration.active && beginning) {
    await new Promise<void>((resolve) => {
      const heard = () => /activated|redundant/.test(beginning.state) && resolve();
      beginning.addEventListener('statechange', heard);
      heard();
    });
  }
  return registration.active ?? undefined;
}

/** Ask the worker to keep the second part, and hear how far it is, until it is done or refused. */
function keepTheRest(worker: ServiceWorker, told: (heard: Heard) => void): Promise<Heard> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<Heard>) => ('kept' in data ? told(data) : resolve(data));
    worker.postMessage({ say: 'keep the rest' } satisfies Asked, [port2]);
  });
}
