import Link from '@docusaurus/Link';
import useBaseUrl from '@docusaurus/useBaseUrl';
import Layout from '@theme/Layout';
import { useId, useState } from 'react';
import { EmergencyLinks } from './EmergencyLinks.tsx';
import { NeedsScripts } from './NeedsScripts.tsx';
import { OtherPages } from './OtherPages.tsx';

/** What stands where there is no page: that there is none, the emergencies all the same, and three ways on. */
export function NoSuchPage() {
  const id = useId();
  const action = useBaseUrl('/woods');
  const [text, setText] = useState('');
  return (
    <main className="page page--text">
      <h1>There is no such page</h1>
      <p>
        The address may be mistyped, or the page was renamed. Begin at <Link to="/">the first page</Link>, look through
        the <Link to="/how-to">how-to pages</Link> and the <Link to="/calculators">calculators</Link>, or search.
      </p>
      <EmergencyLinks />
      <NeedsScripts instead="To search needs scripts.">
        <form action={action}>
          <label htmlFor={id}>Find a wood, a page or a calculator</label>
          <input
            id={id}
            name="q"
            type="search"
            className="control"
            autoComplete="off"
            spellCheck={false}
            value={text}
            onChange={(event) => setText(event.target.value)}
          />
          <p className="small">Enter looks among the woods.</p>
        </form>
      </NeedsScripts>
      {text.trim() !== '' && <OtherPages text={text} />}
    </main>
  );
}

/** The same as a page of its own. */
export default function NoSuchPageInLayout() {
  return (
    <Layout title="No such page" description="There is no page at this address.">
      <NoSuchPage />
    </Layout>
  );
}
