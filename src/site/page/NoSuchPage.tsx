import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import { Suspense, useState } from 'react';
import { SearchBox } from '../search/SearchBox.tsx';
import { EmergencyLinks } from './EmergencyLinks.tsx';

/** What stands where there is no page: that there is none, the emergencies all the same, three ways on and the search. */
export function NoSuchPage() {
  const [text, setText] = useState('');
  return (
    <main className="page page--text">
      <h1>There is no such page</h1>
      <p>
        The address may be mistyped, or the page was renamed. Begin at <Link to="/">the first page</Link>, look through
        the <Link to="/how-to">how-to pages</Link> and the <Link to="/calculators">calculators</Link>, or search.
      </p>
      <EmergencyLinks />
      <SearchBox label="Find anything on this site" text={text} onText={setText} most={5} />
    </main>
  );
}

/**
 * The same as a page of its own, which a host sends for any address that is none. Within the how-to pages its code comes later: there the
 * page as sent comes to life only where both have it within the same bounds.
 */
export default function NoSuchPageInLayout() {
  return (
    <Layout title="No such page" description="There is no page at this address.">
      <Suspense>
        <NoSuchPage />
      </Suspense>
    </Layout>
  );
}
