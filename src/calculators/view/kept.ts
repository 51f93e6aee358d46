/**
 * Listen to what this browser keeps: to changes on this page, told by an event of this name on the window, and in other tabs.
 *
 * @param changed name of the event
 * @returns a `subscribe` for `useSyncExternalStore`
 */
export const keptListener =
  (changed: string) =>
  (listener: () => void): (() => void) => {
    window.addEventListener(changed, listener);
    window.addEventListener('storage', listener);
    return () => {
      window.removeEventListener(changed, listener);
      window.removeEventListener('storage', listener);
    };
  };
