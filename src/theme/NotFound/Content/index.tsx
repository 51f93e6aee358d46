import { lazy, Suspense } from 'react';

// Every how-to page carries this for addresses that are none; what it shows, with the search, comes only there.
const NoSuchPage = lazy(() =>
  import('../../../site/page/NoSuchPage.tsx').then(({ NoSuchPage: Shown }) => ({ default: Shown })),
);

export default function NotFoundContent() {
  return (
    <Suspense>
      <NoSuchPage />
    </Suspense>
  );
}
