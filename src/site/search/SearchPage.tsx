import { useCallback, useRef, useState } from 'react';
import { replaceSearch, useSearch } from '../../calculators/view/address-bar.ts';
import { useHeldWrite } from '../../calculators/view/held-write.ts';
import { Page } from '../page/Page.tsx';
import { SearchBox } from './SearchBox.tsx';

const nothing = () => undefined;

/** All that is listed of a kind: more than anybody looks through. */
const most = 100;

/** The search as a page of its own: the words stand in its address. */
export default function SearchPage() {
  const inAddress = new URLSearchParams(useSearch()).get('q') ?? '';
  // Until something is typed here, the words are those of the address, which is known once the page is alive.
  const [typed, setTyped] = useState<string>();
  const latest = useRef('');
  const write = useCallback(() => {
    const words = latest.current;
    replaceSearch(words.trim() === '' ? '' : `?${new URLSearchParams({ q: words })}`);
  }, []);
  const { later } = useHeldWrite(write, nothing);
  const type = (words: string) => {
    latest.current = words;
    setTyped(words);
    later();
  };
  return (
    <Page
      title="Search"
      description="Search the whole site: woods by every name, how-to pages, calculators, methods, words, acts and rules."
      width="text"
    >
      <h1>Search</h1>
      <SearchBox
        label="Words of the trade, in any spelling"
        text={typed ?? inAddress}
        onText={type}
        most={most}
        first
      />
    </Page>
  );
}
