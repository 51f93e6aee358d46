import { useEffect, useRef, useState } from 'react';
import { channelOf } from '../kept/channel.ts';
import { DraftHold, type Holding } from '../kept/draft-hold.ts';
import type { DraftShelf } from '../kept/drafts.ts';
import { freeName } from './names.ts';

/** Hold a draft for writing as long as it is open here. */
export function useHold(drafts: DraftShelf, id: string): { holding: Holding; takeOver: () => void } {
  const [holding, setHolding] = useState<Holding>('asking');
  const hold = useRef<DraftHold>(undefined);
  useEffect(() => {
    const made = new DraftHold({
      id,
      onChange: setHolding,
      store: () => drafts.flush(),
      renew: () => drafts.refresh(id),
      lost() {
        const names = drafts.shelf().drafts.map(({ name }) => name);
        void drafts.fork(id, freeName(`${drafts.get(id)?.name ?? 'A method'} (from another tab)`, names));
      },
      // Without a secure address, as on a classroom's own server, a browser has none.
      locks: navigator.locks as LockManager | undefined,
      channel: channelOf('kerf-draft-hold'),
    });
    hold.current = made;
    return () => made.close();
  }, [drafts, id]);
  return { holding, takeOver: () => void hold.current?.takeOver() };
}
