import { useEffect, useState } from 'react';
import { replaceSearch } from '../../calculators/view/address-bar.ts';
import form from '../../calculators/view/form.module.css';
import { useUnits } from '../../calculators/view/units.tsx';
import type { BatchShown } from '../../method/batch/shown.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { useShopText } from '../kept/use-shop-text.ts';
import { useNamedHours } from '../method/use-calendars.ts';
import { useStillShown } from '../page/use-still-shown.ts';
import styles from './batch.module.css';
import { addBatches } from './kept-batches.ts';
import { type MethodText, newBatch } from './open.ts';

/** What will be opened, in words, and the button that does it. Nothing is kept before. */
export function OpenForm({ method, asked }: { method: MethodText; asked: URLSearchParams }) {
  const units = useUnits();
  const [title, setTitle] = useState('');
  const [found, setFound] = useState<BatchShown | undefined>();
  const [busy, setBusy] = useState(false);
  const { text: shop, whose, pending } = useShopText();
  const hours = useNamedHours(asked.get('calendar') ?? '', method.text);
  const stillShown = useStillShown();
  const address = asked.toString();
  const taughtBy = useTaughtBy(method, asked);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address says whether the case has changed
  useEffect(() => {
    let gone = false;
    setFound(undefined);
    if (pending || hours.pending || hours.faults.length > 0) return;
    void import('../../method/batch/shown.ts')
      .then(({ shownBatch }) =>
        shownBatch(newBatch(method, 'x', asked, Date.now(), shop, hours), new Date().toISOString(), 'today'),
      )
      .then((answer) => !gone && setFound(answer));
    return () => {
      gone = true;
    };
  }, [method, address, shop, pending, hours]);

  if (hours.faults.length > 0)
    return (
      <div className={styles.notice}>
        <p>No batch can be opened of it so:</p>
        <ul>
          {hours.faults.map(({ message }) => (
            <li key={message}>{message}</li>
          ))}
        </ul>
      </div>
    );
  if (!found) return <p>Working the method out …</p>;
  if (!found.ok)
    return (
      <div className={styles.notice}>
        <p>No batch can be opened of it so:</p>
        <ul>
          {found.problems.map((problem) => (
            <li key={problem}>{inReaderUnits(problem, units)}</li>
          ))}
        </ul>
      </div>
    );
  const { shown } = found;
  const usual = `${shown.method}, ${new Date().toISOString().slice(0, 10)}`;
  const withIt =
    shop === undefined
      ? 'The method and this case'
      : `The method, this case and ${whose === 'site' ? 'the shop record of this site' : 'your shop record'}`;
  const open = async () => {
    setBusy(true);
    const batch = newBatch(method, title.trim().slice(0, 200) || usual.slice(0, 200), asked, Date.now(), shop, hours);
    await addBatches([batch]);
    if (stillShown()) replaceSearch(`?batch=${batch.id}`);
  };
  return (
    <>
      <p>
        {shown.method}: {shown.makes}, {shown.state.pieces} {shown.state.pieces === 1 ? 'piece' : 'pieces'}. {withIt}{' '}
        are kept with the batch as they are now; a later change of them does not change it.
      </p>
      {shown.state.assumedHours && (
        <p>Nobody told the hours of your shop: Monday to Friday, 9 to 5, are assumed. Your shop record can say them.</p>
      )}
      {shown.state.assumedPeople !== undefined && (
        <p>
          Nobody told how many work at it: {shown.state.assumedPeople} people are assumed. Your shop record can say it.
        </p>
      )}
      {taughtBy !== undefined && (
        <p>
          This method is taught in the sessions of “{taughtBy}”.{' '}
          <button
            type="button"
            className={styles.second}
            onClick={() => {
              const taken = new URLSearchParams(asked);
              taken.set('calendar', taughtBy);
              replaceSearch(`?${taken}`);
            }}
          >
            Take its sessions as the hours
          </button>
        </p>
      )}
      <label className={form.label} htmlFor="batch-title">
        What you call it <span className={form.optional}>(empty: {usual})</span>
      </label>
      <input
        id="batch-title"
        className={form.input}
        maxLength={200}
        value={title}
        onChange={(event) => setTitle(event.target.value)}
      />
      <p>
        <button type="button" className={styles.big} disabled={busy} onClick={() => void open()}>
          Open a batch
        </button>
      </p>
    </>
  );
}

/** The calendar by which a method is taught, where the address names the method and no hours. */
function useTaughtBy({ text }: MethodText, asked: URLSearchParams): string | undefined {
  const [taught, setTaught] = useState<{ of: string; calendar: string | undefined } | undefined>();
  const offered = asked.get('open') !== null && (asked.get('calendar') ?? '').trim() === '';
  useEffect(() => {
    if (!offered) return;
    let gone = false;
    void import('../../method/read.ts').then(({ readMethod }) => {
      if (!gone) setTaught({ of: text, calendar: readMethod(text, '').record?.taught?.calendar });
    });
    return () => {
      gone = true;
    };
  }, [offered, text]);
  return offered && taught?.of === text ? taught.calendar : undefined;
}
