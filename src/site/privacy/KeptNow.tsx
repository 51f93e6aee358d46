import useBaseUrl from '@docusaurus/useBaseUrl';
import { useEffect, useRef, useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import { clearAll, everythingAsText, type KeptPlace, keptPlaces } from './kept-places.ts';
import styles from './privacy.module.css';

const kinds: Readonly<Record<KeptPlace['kind'], string>> = {
  storage: 'local storage',
  database: 'database “kerf”',
  files: 'files of the site',
};

/** What lies in this browser, by name and size, and the button that takes it away after it has asked. */
export function KeptNow() {
  const { Link } = useLinks();
  const folder = useBaseUrl('/');
  const [places, setPlaces] = useState<readonly KeptPlace[]>();
  const [isAsking, setAsking] = useState(false);
  const [told, setTold] = useState('');
  const yes = useRef<HTMLButtonElement>(null);
  const look = () => keptPlaces(folder).then(setPlaces);

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, as the page comes.
  useEffect(() => {
    look();
  }, []);
  useEffect(() => {
    if (isAsking) yes.current?.focus();
  }, [isAsking]);

  async function clear() {
    setAsking(false);
    const left = await clearAll(folder);
    await look();
    setTold(
      left.length === 0
        ? 'All of it is taken away. A later visit keeps things again as you enter them, and pages to be read without a network.'
        : `Not all could be taken away. Still there: ${left.join('; ')}. Close the other tabs of this site and try again, or clear the data of this site in the settings of your browser.`,
    );
  }

  async function save() {
    download('kerf-and-cure-kept.json', 'application/json', await everythingAsText());
    setTold('Saved as kerf-and-cure-kept.json.');
  }

  if (!places) return <p>Looking…</p>;
  const entered = places.filter(({ kind }) => kind !== 'files');
  return (
    <>
      {places.length === 0 ? (
        <p data-part="nothing-kept">Nothing.</p>
      ) : (
        <ul data-part="kept-places" className={styles.places}>
          {places.map(({ kind, name, words, count, bytes }) => (
            <li key={`${kind} ${name}`}>
              {words.page ? <Link to={words.page}>{sentenceCase(words.what)}</Link> : sentenceCase(words.what)}
              {kind !== 'storage' && `: ${count}`}
              <span className="quiet">
                {' '}
                ({kinds[kind]}, {name}
                {bytes !== undefined && `, ${sizeWords(bytes)}`})
              </span>
            </li>
          ))}
        </ul>
      )}
      {entered.length > 0 && (
        <p>
          <button type="button" className={frame.button} onClick={save}>
            Save all of it as a file
          </button>
        </p>
      )}
      {places.length > 0 && !isAsking && (
        <p>
          <button type="button" className={frame.button} onClick={() => setAsking(true)}>
            Take all of it away
          </button>
        </p>
      )}
      {isAsking && (
        <fieldset className={styles.asking}>
          <legend>Take away all that this browser keeps of the site?</legend>
          <p>
            Drafts, records, classes, data sheets and your shop record go with it, and nothing brings them back. Save
            them as a file first, where you may want them. Close other tabs of this site: what is open there could be
            kept anew.
          </p>
          <button ref={yes} type="button" className={frame.button} onClick={clear}>
            Yes, take all of it away
          </button>{' '}
          <button type="button" className={frame.button} onClick={() => setAsking(false)}>
            No, leave it
          </button>
        </fieldset>
      )}
      <p role="status">{told}</p>
    </>
  );
}

const sentenceCase = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** Bytes in the unit that fits, with no more digits than help. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  const [size, unit] = bytes < 1_000_000 ? [bytes / 1000, 'KB'] : [bytes / 1_000_000, 'MB'];
  return `${size < 10 ? Math.round(size * 10) / 10 : Math.round(size)} ${unit}`;
}
