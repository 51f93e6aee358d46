import { useState, useSyncExternalStore } from 'react';

const never = () => () => undefined;

/**
 * Whether a part stands in a page as it was sent, and has come to life there: false from the start where this browser draws the page itself, as when
 * somebody comes by a link. It stays what it is.
 */
export function useWasSent(): boolean {
  const drawsItself = useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
  const [sent] = useState(!drawsItself);
  return sent;
}
