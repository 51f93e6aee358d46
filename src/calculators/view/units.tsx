import { createContext, useContext, useSyncExternalStore } from 'react';
import { systemOfRegion } from '../../model/quantity/region.ts';
import { defaultUnits, type ReaderUnits } from '../../model/quantity/units.ts';
import { keptListener } from './kept.ts';
import styles from './units.module.css';
import { guessAttribute, storageKey, systemAttribute } from './units-guess.ts';

const changed = 'kerf:units';

const inchStyles: readonly { value: ReaderUnits['inches']; label: string }[] = [
  { value: 'sixteenths', label: '1/16' },
  { value: 'thirty-seconds', label: '1/32' },
  { value: 'sixty-fourths', label: '1/64' },
  { value: 'decimal', label: '0.00' },
];

let cached: { text: string | null | undefined; units: ReaderUnits } = { text: undefined, units: defaultUnits };

/** The reader's units as kept in this browser; where nothing is kept, those of the region that the browser is set to. */
function storedUnits(): ReaderUnits {
  let text: string | null = null;
  try {
    text = window.localStorage.getItem(storageKey);
  } catch {
    // A browser may forbid storage; the page then keeps the choice for itself only.
    text = cached.text ?? null;
  }
  if (text !== cached.text) cached = { text, units: readStored(text) };
  return cached.units;
}

function readStored(text: string | null): ReaderUnits {
  const [system, inches] = (text ?? '').split(' ');
  return {
    system: system === 'inch' || system === 'metric' ? system : systemOfRegion(navigator.languages ?? []),
    inches: inchStyles.find((style) => style.value === inches)?.value ?? defaultUnits.inches,
  };
}

/** Write on the root of the page which system it is in, and that it is no guess, for what style shows to some readers alone. */
function markRoot({ system }: ReaderUnits): void {
  document.documentElement.removeAttribute(guessAttribute);
  document.documentElement.setAttribute(systemAttribute, system);
}

/** Keep the reader's units and tell every part of the page. */
export function keepUnits(units: ReaderUnits): void {
  markRoot(units);
  const text = `${units.system} ${units.inches}`;
  cached = { text, units };
  try {
    window.localStorage.setItem(storageKey, text);
  } catch {
    // See storedUnits: without storage the choice lasts as long as the page.
  }
  window.dispatchEvent(new Event(changed));
}

const listen = keptListener(changed);

/** Listen to the reader's units, and follow a choice made in another tab on the root of the page too. */
function subscribe(listener: () => void): () => void {
  const follow = ({ key, newValue }: StorageEvent) => {
    if (key === storageKey && newValue !== null) markRoot(readStored(newValue));
  };
  window.addEventListener('storage', follow);
  const stop = listen(listener);
  return () => {
    window.removeEventListener('storage', follow);
    stop();
  };
}

/** The units in which a part is written into a page as sent: the site's own, unless it is drawn in others besides. */
export const SentUnitsContext = createContext<ReaderUnits>(defaultUnits);

/** The reader's units; on the server, and for the first paint, those of the page as sent, so that the two agree. */
export function useUnits(): ReaderUnits {
  const sent = useContext(SentUnitsContext);
  return useSyncExternalStore(subscribe, storedUnits, () => sent);
}

/** The reader's units as they are now, for what is asked outside a drawing; in a browser only. */
export const unitsNow = (): ReaderUnits => storedUnits();

/**
 * The line of a first visit: which units the page is in, why, and the way to the others. It is in every page as sent; style shows it only
 * while the root of the page carries a guess.
 */
export function UnitsGuess() {
  const choose = (system: ReaderUnits['system']) => {
    keepUnits({ ...storedUnits(), system });
    // The line is gone then: the focus goes to where the choice can be changed again.
    document.querySelector<HTMLElement>(`[data-system="${system}"]`)?.focus();
  };
  return (
    <div className={styles.guess} data-part="units-guess">
      <span data-guess="inch">In inches, by your region.</span>
      <span data-guess="metric">In mm, by your region.</span>
      <button type="button" className={styles.choose} data-guess="inch" onClick={() => choose('inch')}>
        Keep inches
      </button>
      <button type="button" className={styles.choose} data-guess="inch" onClick={() => choose('metric')}>
        Use mm
      </button>
      <button type="button" className={styles.choose} data-guess="metric" onClick={() => choose('metric')}>
        Keep mm
      </button>
      <button type="button" className={styles.choose} data-guess="metric" onClick={() => choose('inch')}>
        Use inches
      </button>
    </div>
  );
}

/** Two buttons for the system and, in inches, a choice of how they are written. */
export function UnitsSwitch() {
  const units = useUnits();
  return (
    <fieldset className={styles.switch} aria-label="Units">
      {(['metric', 'inch'] as const).map((system) => (
        <button
          key={system}
          type="button"
          className={styles.button}
          data-system={system}
          aria-pressed={units.system === system}
          onClick={() => keepUnits({ ...units, system })}
        >
          {system === 'metric' ? 'mm' : 'inch'}
        </button>
      ))}
      {/* In the page as sent: style shows it to a reader of inches before the page comes to life. */}
      <select
        className={styles.select}
        aria-label="Inches written as"
        value={units.inches}
        onChange={(event) => keepUnits({ ...units, inches: event.target.value as ReaderUnits['inches'] })}
      >
        {inchStyles.map((style) => (
          <option key={style.value} value={style.value}>
            {style.label}
          </option>
        ))}
      </select>
    </fieldset>
  );
}
