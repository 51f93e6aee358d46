import { useSyncExternalStore } from 'react';
import { defaultUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { keptListener } from './kept.ts';
import styles from './units.module.css';

const storageKey = 'kerf-units';
const changed = 'kerf:units';

const inchStyles: readonly { value: ReaderUnits['inches']; label: string }[] = [
  { value: 'sixteenths', label: '1/16' },
  { value: 'thirty-seconds', label: '1/32' },
  { value: 'sixty-fourths', label: '1/64' },
  { value: 'decimal', label: '0.00' },
];

let cached: { text: string | null; units: ReaderUnits } = { text: null, units: defaultUnits };

/** The reader's units as kept in this browser; the site's own where nothing, or nothing sensible, is kept. */
function storedUnits(): ReaderUnits {
  let text: string | null = null;
  try {
    text = window.localStorage.getItem(storageKey);
  } catch {
    // A browser may forbid storage; the page then keeps the choice for itself only.
    return cached.units;
  }
  if (text !== cached.text) cached = { text, units: readStored(text) };
  return cached.units;
}

function readStored(text: string | null): ReaderUnits {
  const [system, inches] = (text ?? '').split(' ');
  return {
    system: system === 'inch' || system === 'metric' ? system : defaultUnits.system,
    inches: inchStyles.find((style) => style.value === inches)?.value ?? defaultUnits.inches,
  };
}

/** Keep the reader's units and tell every part of the page. */
export function keepUnits(units: ReaderUnits): void {
  const text = `${units.system} ${units.inches}`;
  cached = { text, units };
  try {
    window.localStorage.setItem(storageKey, text);
  } catch {
    // See storedUnits: without storage the choice lasts as long as the page.
  }
  window.dispatchEvent(new Event(changed));
}

const subscribe = keptListener(changed);

/** The reader's units; on the server, and for the first paint, the site's own, so that the two agree. */
export function useUnits(): ReaderUnits {
  return useSyncExternalStore(subscribe, storedUnits, () => defaultUnits);
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
          aria-pressed={units.system === system}
          onClick={() => keepUnits({ ...units, system })}
        >
          {system === 'metric' ? 'mm' : 'inch'}
        </button>
      ))}
      {units.system === 'inch' && (
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
      )}
    </fieldset>
  );
}
