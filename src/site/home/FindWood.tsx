import Link from '@docusaurus/Link';
import { useHistory } from '@docusaurus/router';
import { useBaseUrlUtils } from '@docusaurus/useBaseUrl';
import { type FormEvent, type KeyboardEvent, useId, useRef, useState } from 'react';
import { surelyNamed } from '../../model/quantity/index.ts';
import { findWoods, namesOf } from '../../model/species/find-woods.ts';
import { usualWoods } from '../../model/species/usual.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { OtherPages } from '../page/OtherPages.tsx';
import type { WoodName } from '../woods/row.ts';
import styles from './home.module.css';

const shown = 8;
/** Letters from which a word is looked for among the pages: fewer begin too many words. */
const shortest = 3;

/** A field that finds a wood by any of its names and goes straight to it, and the pages and calculators of a word. */
export function FindWood({ woods }: { woods: readonly WoodName[] }) {
  const id = useId();
  const history = useHistory();
  const { withBaseUrl } = useBaseUrlUtils();
  const results = useRef<HTMLDivElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState('');
  const typed = text.trim() !== '';
  const found = typed
    ? findWoods(woods, text)
    : usualWoods.flatMap((one) => woods.find((wood) => wood.id === one) ?? []);
  const listed = found.slice(0, shown);

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!typed) return;
    // A name that several woods bear, as soft maple, opens none of them: they stand below to be picked from.
    const one = found.length === 1 ? found[0] : surelyNamed(found, text, namesOf);
    if (one) history.push(withBaseUrl(`/woods/${one.id}`));
    else results.current?.querySelector('a')?.focus();
  };
  /** Down from the field into the list, up and down in it, and back to the field. */
  const move = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
    const links = [...(results.current?.querySelectorAll('a') ?? [])];
    const at = links.indexOf(document.activeElement as HTMLAnchorElement);
    const next = event.key === 'ArrowDown' ? at + 1 : at - 1;
    event.preventDefault();
    if (next < 0) field.current?.focus();
    else links[Math.min(next, links.length - 1)]?.focus();
  };

  return (
    <section className={styles.find} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>
        <label htmlFor={id}>Find a wood or a page</label>
      </h2>
      <NeedsScripts instead="To find one by its name needs scripts. Without them all woods stand in one list.">
        <form onSubmit={submit}>
          <input
            ref={field}
            id={id}
            name="q"
            type="search"
            className="control"
            autoComplete="off"
            spellCheck={false}
            placeholder="walnut, epoxy, oil …"
            aria-describedby={`${id}-count`}
            value={text}
            onChange={(event) => setText(event.target.value)}
            onKeyDown={move}
          />
        </form>
      </NeedsScripts>
      <p id={`${id}-count`} className={styles.count} role="status">
        {!typed && 'Often asked for:'}
        {typed && found.length === 0 && 'No wood bears that name; it may have another, or a botanical one.'}
        {typed && found.length > shown && `${found.length} woods; the first ${shown}:`}
        {typed &&
          found.length > 0 &&
          found.length <= shown &&
          `${found.length} ${found.length === 1 ? 'wood' : 'woods'}:`}
      </p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: arrows move from link to link; each link is reached by Tab all the same */}
      <div ref={results} onKeyDown={move}>
        <ul className={typed ? styles.found : `${styles.found} ${styles.usual}`}>
          {listed.map((wood) => (
            <li key={wood.id}>
              <Link to={`/woods/${wood.id}`}>
                <strong>{wood.name}</strong>
                {wood.botanical && <span className="botanical"> {wood.botanical}</span>}
              </Link>
            </li>
          ))}
        </ul>
        {text.trim().length >= shortest && <OtherPages text={text} more={found.length > 0} />}
      </div>
      <p className={styles.all}>
        <Link to="/woods">All {woods.length} woods</Link>, to sort and put side by side
      </p>
    </section>
  );
}
