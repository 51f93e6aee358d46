import useBaseUrl from '@docusaurus/useBaseUrl';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { useEffect, useState } from 'react';
import { useSearch } from '../../calculators/view/address-bar.ts';
import type { FieldError } from '../../model/evidence/index.ts';
import { fileName } from '../bench/names.ts';
import { useShelf } from '../bench/use-shelf.ts';
import type { Draft } from '../kept/drafts.ts';
import { useShopText } from '../kept/use-shop-text.ts';
import { countFaults, questionOf } from './question.ts';
import { useNamedHours } from './use-calendars.ts';
import { type MethodState, useMethod } from './use-method.ts';

/** A case of a method as an address names it: `?method=first-tray&pieces=4`, or `?draft=…` of this browser. */
export interface Addressed extends MethodState {
  id: string;
  /** All that stands in the address, to be changed and written back. */
  asked: URLSearchParams;
  draftId: string | null;
  draft: Draft | undefined;
  /** What of the address is the case itself: parameters, pieces, days. */
  own: Readonly<Record<string, string>>;
  /** The same as a query, and the path of the method's page. */
  query: string;
  methodPath: string;
  /** What of the address cannot be used: nothing is worked out before it is mended. */
  faults: readonly FieldError[];
  /** Whole address of the page of this case; none for a draft, which stands in this browser alone. */
  address: string | undefined;
  /** Why there is no method. */
  lacking?: 'no draft' | 'draft being looked for' | 'no method named' | 'no such method';
}

/**
 * The method and the case that stand in the address, worked out.
 *
 * @param ours names in the address that belong to the page, and are no parameter of the method
 * @param documents true where sheets are made of the answer
 */
export function useAddressed(ours: readonly string[], documents: boolean): Addressed {
  const asked = new URLSearchParams(useSearch());
  const { siteConfig } = useDocusaurusContext();
  const id = asked.get('method') ?? '';
  const draftId = asked.get('draft');
  const { shelf } = useShelf();
  const draft = shelf.drafts.find((each) => each.id === draftId);
  const known = /^[a-z0-9-]{1,80}$/.test(id);
  const raw = useBaseUrl(`/data/methods/${known ? id : 'none'}.yaml`);
  const methodPath = useBaseUrl(`/methods/${known ? id : ''}`);
  const fetched = useText(known && draftId === null ? raw : undefined);
  const file = draft ? fileName(draft.name) : `methods/${id}.yaml`;
  const text = draftId === null ? fetched.text : draft?.text;
  const { text: shop, pending: fetching } = useShopText();
  const own = Object.fromEntries([...asked].filter(([name]) => !['method', 'draft', ...ours].includes(name)));
  const hours = useNamedHours(own.calendar ?? '', text);
  const faults = [...countFaults(own), ...hours.faults];
  const waiting = fetching || hours.pending;
  const question =
    text === undefined || waiting || faults.length > 0
      ? undefined
      : questionOf({ text, file, ...(shop === undefined ? {} : { shop }) }, own, hours);
  const state = useMethod(question, undefined, documents ? 'sheets' : 'page');
  const query = `${new URLSearchParams(own)}`;
  const lacking =
    draftId !== null
      ? draft
        ? undefined
        : shelf.loaded
          ? 'no draft'
          : 'draft being looked for'
      : id === ''
        ? 'no method named'
        : !known || fetched.failed
          ? 'no such method'
          : undefined;
  return {
    ...state,
    // What was worked out for a question before is not the answer to none.
    page: question ? state.page : undefined,
    id,
    asked,
    draftId,
    draft,
    own,
    faults,
    query,
    methodPath,
    address: draftId === null ? `${siteConfig.url}${methodPath}${query === '' ? '' : `?${query}`}` : undefined,
    ...(lacking === undefined ? {} : { lacking }),
  };
}

/** The method as written. */
function useText(address: string | undefined): { text?: string; failed: boolean } {
  const [state, setState] = useState<{ of?: string; text?: string; failed: boolean }>({ failed: false });
  useEffect(() => {
    if (address === undefined) return;
    let gone = false;
    fetch(address)
      .then((response) => (response.ok ? response.text() : Promise.reject(new Error(String(response.status)))))
      .then(
        (text) => !gone && setState({ of: address, text, failed: false }),
        () => !gone && setState({ of: address, failed: true }),
      );
    return () => {
      gone = true;
    };
  }, [address]);
  return state.of === address ? state : { failed: false };
}
