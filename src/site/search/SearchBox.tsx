import Link from '@docusaurus/Link';
import { useHistory } from '@docusaurus/router';
import useBaseUrl, { useBaseUrlUtils } from '@docusaurus/useBaseUrl';
import {
  type FormEvent,
  type KeyboardEvent,
  type ReactNode,
  useDeferredValue,
  useEffect,
  useId,
  useMemo,
  useRef,
} from 'react';
import { nameKey, surelyNamed } from '../../model/quantity/index.ts';
import { namesOf } from '../../model/species/find-woods.ts';
import { asPage } from '../page/address.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import type { Found, FoundPage } from './find.ts';
import { Results } from './Results.tsx';
import styles from './search.module.css';
import { useSearchIndex } from './use-search-index.ts';

interface SearchBoxProps {
  label: ReactNode;
  text: string;
  onText(text: string): void;
  /** Results of each kind that are listed; the rest is a page away. */
  most: number;
  /** What stands there while nothing is typed. */
  children?: ReactNode;
  /** The field has the focus when the page opens. */
  first?: boolean;
}

/** The only page of that title, where nothing else bears it. */
function titled(found: Found, text: string): FoundPage | undefined {
  const wanted = nameKey(text);
  return found.groups.flatMap(({ pages }) => pages).find(({ page, heading }) => nameKey(heading || page) === wanted);
}

/** A field that searches the whole site, with what it finds below: arrows lead through it, Enter goes to what is surely meant. */
export function SearchBox({ label, text, onText, most, children, first = false }: SearchBoxProps) {
  const id = useId();
  const history = useHistory();
  const { withBaseUrl } = useBaseUrlUtils();
  const action = useBaseUrl('/search/');
  const box = useRef<HTMLElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const [state, wake] = useSearchIndex();
  const typed = text.trim() !== '';
  // Typing stays quick on a slow phone: what is found may follow a moment later.
  const asked = useDeferredValue(text);
  const found = useMemo(() => (typeof state === 'object' ? state.find(asked) : undefined), [state, asked]);

  useEffect(() => {
    if (first) field.current?.focus();
  }, [first]);
  useEffect(() => {
    if (typed) wake();
  }, [typed, wake]);

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!typed || typeof state !== 'object') return;
    const now = state.find(text);
    // A name that several woods bear, as soft maple, opens none of them: they stand below to be picked from.
    const only = now.woods.length === 1 && now.groups.length === 0 ? now.woods[0] : undefined;
    const wood = only ?? surelyNamed(now.woods, text, namesOf);
    const to = wood ? `/woods/${wood.id}` : titled(now, text)?.to;
    if (to) history.push(asPage(withBaseUrl(to)));
    else box.current?.querySelector<HTMLElement>('[data-part="found"] a')?.focus();
  };
  /** Down from the field into the list, up and down in it, and back to the field. */
  const move = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
    const links = [...(box.current?.querySelectorAll<HTMLElement>('[data-part="found"] a') ?? [])];
    const at = links.indexOf(document.activeElement as HTMLElement);
    const next = event.key === 'ArrowDown' ? at + 1 : at - 1;
    event.preventDefault();
    if (next < 0) field.current?.focus();
    else links[Math.min(next, links.length - 1)]?.focus();
  };

  return (
    <NeedsScripts
      instead={
        <>
          To search needs scripts. Without them begin at the <Link to="/how-to">how-to pages</Link>, the{' '}
          <Link to="/woods">woods</Link> or the <Link to="/calculators">calculators</Link>.
        </>
      }
    >
      <search ref={box} className={styles.box} onKeyDown={move}>
        <form action={action} onSubmit={submit}>
          <label htmlFor={id}>{label}</label>
          <input
            ref={field}
            id={id}
            name="q"
            type="search"
            className="control"
            autoComplete="off"
            spellCheck={false}
            placeholder="walnut, sticky resin, rags …"
            aria-describedby={`${id}-said`}
            value={text}
            onFocus={wake}
            onPointerEnter={wake}
            onChange={(event) => onText(event.target.value)}
          />
        </form>
        <p id={`${id}-said`} className={styles.said} role="status">
          {typed ? said(state, found) : ''}
        </p>
        {typed && state === 'failed' && (
          <button
            type="button"
            className="control"
            onClick={() => {
              wake();
              // What was pressed goes once it is asked again.
              field.current?.focus();
            }}
          >
            Try again
          </button>
        )}
        <div data-part="found">
          {typed && found ? <Results found={found} text={text} most={most} /> : !typed && children}
        </div>
      </search>
    </NeedsScripts>
  );
}

function said(state: ReturnType<typeof useSearchIndex>[0], found: Found | undefined): string {
  if (state === 'failed')
    return 'The search could not be fetched: there is no connection, it seems. Try again, or type on.';
  if (!found) return 'The search is on its way …';
  const pages = found.groups.reduce((sum, group) => sum + group.pages.length, 0);
  const woods = found.woods.length;
  if (pages + woods === 0) return 'Nothing is found under these words. Try one word less, or another word for it.';
  const counted = [
    woods > 0 ? `${woods} ${woods === 1 ? 'wood' : 'woods'}` : '',
    pages > 0 ? `${pages} ${pages === 1 ? 'place' : 'places'}` : '',
  ].filter(Boolean);
  return found.some
    ? `Nothing holds all of these words; ${counted.join(' and ')} with some of them:`
    : `${counted.join(' and ')}:`;
}
