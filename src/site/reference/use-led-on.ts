import { useHistory } from '@docusaurus/router';
import useBaseUrl from '@docusaurus/useBaseUrl';
import { useEffect } from 'react';
import { asPage } from '../page/address.ts';

/**
 * Leads on whoever comes to a list with the address of an entry that stands on a page of its part, as links that were written before the
 * list was parted do. Without scripts they stand at its line in the list, which leads there too.
 *
 * @param pageOf the address of the page on which an entry stands, by the entry's id; undefined where the list has none of the name
 */
export function useLedOn(pageOf: (id: string) => string | undefined): void {
  const history = useHistory();
  const base = useBaseUrl('/');
  useEffect(() => {
    const { hash } = history.location;
    const page = hash === '' ? undefined : pageOf(decodeURIComponent(hash.slice(1)));
    if (page !== undefined) history.replace(`${asPage(`${base}${page.slice(1)}`)}${hash}`);
  }, [history, base, pageOf]);
}
