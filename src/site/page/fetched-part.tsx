import { type ComponentType, lazy, Suspense } from 'react';

/** What is said in place of a part that is not there yet, or cannot be had. */
interface PartWords {
  meanwhile: string;
  /** That it could not be fetched, what is kept, and what to do. */
  notFetched: string;
}

function NotFetched({ words }: { words: string }) {
  return (
    <div role="alert">
      <p>{words}</p>
      <button type="button" className="button button--secondary" onClick={() => window.location.reload()}>
        Try again
      </button>
    </div>
  );
}

/**
 * A part of a page whose code and style are fetched when it is first shown: most visits never show it. Where it cannot be had, the page says so
 * and offers to be loaded again.
 *
 * @param fetchPart fetches the part
 */
export function fetchedPart<Given extends object>(
  fetchPart: () => Promise<ComponentType<Given>>,
  { meanwhile, notFetched }: PartWords,
): ComponentType<Given> {
  const Part = lazy<ComponentType<Given>>(() =>
    fetchPart().then(
      (found) => ({ default: found }),
      () => ({ default: () => <NotFetched words={notFetched} /> }),
    ),
  );
  return (given) => (
    <Suspense fallback={<p role="status">{meanwhile}</p>}>
      <Part {...given} />
    </Suspense>
  );
}
