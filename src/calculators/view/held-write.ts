import { useCallback, useEffect, useRef } from 'react';
import { writeDelay, writeLeaving } from './address-bar.ts';
import { whenLeaving } from './leaving.ts';

/** A write that waits until nobody types. */
export interface HeldWrite {
  /** Write a moment from now, unless more is typed before. */
  later: () => void;
  /** Nothing is to be written any more. */
  drop: () => void;
}

/**
 * Hold back what goes into the address while somebody types: it is written a moment later, or at once where they leave a field or the page.
 *
 * @param write writes what stands then; another function is another form, and what waited for the one before is dropped
 * @param forget told when the reader goes back in history: what the address holds then stands
 */
export function useHeldWrite(write: () => void, forget: () => void): HeldWrite {
  const pending = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const drop = useCallback(() => {
    clearTimeout(pending.current);
    pending.current = undefined;
  }, []);
  const now = useCallback(() => {
    if (pending.current === undefined) return;
    drop();
    write();
  }, [write, drop]);
  const later = useCallback(() => {
    clearTimeout(pending.current);
    pending.current = setTimeout(now, writeDelay);
  }, [now]);
  useEffect(() => {
    window.addEventListener('popstate', forget);
    window.addEventListener('focusout', now);
    const stay = whenLeaving(() => writeLeaving(now));
    return () => {
      stay();
      window.removeEventListener('popstate', forget);
      window.removeEventListener('focusout', now);
      drop();
    };
  }, [now, forget, drop]);
  return { later, drop };
}
