import { useCallback, useEffect, useRef } from 'react';

/**
 * Whether the part of the page that asks is still shown: whoever has gone on to another page meanwhile must not have its address changed by what
 * was begun on the one before.
 */
export function useStillShown(): () => boolean {
  const shown = useRef(false);
  useEffect(() => {
    shown.current = true;
    return () => {
      shown.current = false;
    };
  }, []);
  return useCallback(() => shown.current, []);
}
