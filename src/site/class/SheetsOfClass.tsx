import { type ComponentProps, lazy, Suspense } from 'react';

type Sheets = typeof import('./ClassSheets.tsx').ClassSheets;

/** What stands in place of the sheets where what draws them cannot be had. */
function NotFetched() {
  return (
    <div role="alert">
      <p>
        What shows the sheets could not be fetched: there may be no connection. The class is kept in this browser; make
        its sheets again once there is one.
      </p>
      <button type="button" className="button button--secondary" onClick={() => window.location.reload()}>
        Try again
      </button>
    </div>
  );
}

const ClassSheets = lazy(() =>
  import('./ClassSheets.tsx').then(
    ({ ClassSheets: found }) => ({ default: found }),
    () => ({ default: NotFetched as Sheets }),
  ),
);

/** The sheets of a class, whose code and style are fetched when they are made: most visits make none. */
export function SheetsOfClass(given: ComponentProps<Sheets>) {
  return (
    <Suspense fallback={<p role="status">One moment: the sheets are being laid out.</p>}>
      <ClassSheets {...given} />
    </Suspense>
  );
}
