import Link from '@docusaurus/Link';
import { useDeferredValue, useMemo } from 'react';
import { replaceSearch, useSearch } from '../../calculators/view/address-bar.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { Compare } from './Compare.tsx';
import { Filters } from './Filters.tsx';
import { readQuery, selectWoods, type WoodsQuery, writeQuery } from './query.ts';
import type { WoodRow } from './row.ts';
import { WoodTable } from './WoodTable.tsx';
import styles from './woods.module.css';

/** The index of woods: a full table without JavaScript; with it, search, filters, order and comparison, all in the address. */
export default function WoodsIndex({ woods }: { woods: readonly WoodRow[] }) {
  const search = useSearch();
  const query = useMemo(() => readQuery(search), [search]);
  const set = (patch: Partial<WoodsQuery>) =>
    replaceSearch(writeQuery({ ...readQuery(window.location.search), ...patch }));
  // Read anew from the address: a row of the list keeps the function of an earlier render.
  const toggle = (id: string) => {
    const { compare } = readQuery(window.location.search);
    set({ compare: compare.includes(id) ? compare.filter((one) => one !== id) : [...compare, id] });
  };
  // Typing stays quick on a slow phone: the list may follow a moment later.
  const listed = useDeferredValue(query);
  const rows = useMemo(() => selectWoods(woods, listed), [woods, listed]);
  const compared = query.compare.flatMap((id) => woods.find((wood) => wood.id === id) ?? []);
  return (
    <Page
      title="Woods"
      description={`${woods.length} woods: hardness, movement, pores and food contact from published handbook tables, to search, sort and put side by side.`}
    >
      <header>
        <h1>Woods</h1>
        <p className="lead">
          {woods.length} woods from published tables. Hardness is the side hardness at 12&nbsp;% moisture content;
          movement is the change of width of a flatsawn board between 6 and 12&nbsp;%.
        </p>
      </header>
      <NeedsScripts instead="To search, filter and compare needs scripts. Without them this is the whole list, by name; look for a word in it with your browser’s own search.">
        <Filters woods={woods} query={query} set={set} />
      </NeedsScripts>
      {compared.length > 0 && (
        <Compare woods={compared} remove={(id) => set({ compare: query.compare.filter((one) => one !== id) })} />
      )}
      <p className={styles.count} role="status">
        {rows.length === woods.length ? `All ${woods.length} woods` : `${rows.length} of ${woods.length} woods`}
        {rows.length === 0 && '. No wood fits; take a filter away, or try another name.'}
      </p>
      {rows.length === 0 && query.q.trim() !== '' && (
        <p>
          <Link to={`/search?${new URLSearchParams({ q: query.q })}`}>
            Look for “{query.q.trim()}” in the whole site
          </Link>
        </p>
      )}
      <WoodTable woods={rows} compare={query.compare} toggle={toggle} />
    </Page>
  );
}
