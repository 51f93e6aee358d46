import { useEffect, useState } from 'react';

/**
 * A part of the page that is fetched once it is wanted.
 *
 * @param fetch the same function each time
 * @param wanted whether to fetch it yet
 * @returns undefined while it is not there, null where it cannot be fetched
 */
export function useFetched<T>(fetch: () => Promise<T>, wanted = true): T | null | undefined {
  const [found, setFound] = useState<{ part: T | null }>();
  useEffect(() => {
    if (!wanted) return undefined;
    let closed = false;
    fetch().then(
      (part) => closed || setFound({ part }),
      () => closed || setFound({ part: null }),
    );
    return () => {
      closed = true;
    };
  }, [fetch, wanted]);
  return found?.part;
}
