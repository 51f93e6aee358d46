import { useCallback, useEffect, useRef } from 'react';
import { writeDelay, writeLeaving } from './address-bar.ts';
import { afterPaint } from './after-paint.ts';
import { whenLeaving } from './leaving.ts';

/** A write that waits until nobody types. */
export interface HeldWrite {
  /** Write a moment from now, unless more is typed before. */
  later: () => void;
  /** Nothing is to be written any more. */
  drop: () => void;
}

/**
 * Hold back what goes into the address while somebody types: it is written a moment later, or at once where they follow a link or leave the page.
 * Whoever leaves a field has it written behind the next paint: a browser takes as long to change an address as a slow phone has for a whole tap.
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
    // What is not yet painted when the page is hidden is written by `whenLeaving`.
    const behindPaint = () => {
      if (pending.current !== undefined) afterPaint(now);
    };
    // The page that a link leads to replaces this one, and Back must lead to the case.
    const follow = ({ target }: MouseEvent) => {
      if (target instanceof Element && target.closest('a[href]')) now();
    };
    window.addEventListener('popstate', forget);
    window.addEventListener('focusout', behindPaint);
    window.addEventListener('click', follow, true);
    const stay = whenLeaving(() => writeLeaving(now));
    return () => {
      stay();
      window.removeEventListener('popstate', forget);
      window.removeEventListener('focusout', behindPaint);
      window.removeEventListener('click', follow, true);
      drop();
    };
  }, [now, forget, drop]);
  return { later, drop };
}
