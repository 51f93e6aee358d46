import { useState } from 'react';
import { replaceSearch } from '../../calculators/view/address-bar.ts';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { headOf } from '../../method/batch/merge.ts';
import { withOffset } from '../../method/batch/moment.ts';
import { type BatchEntry, type BatchRecord, batchesText } from '../../method/batch/record.ts';
import { wordsInReaderUnits } from '../../model/quantity/index.ts';
import { newId } from '../kept/database.ts';
import styles from './batch.module.css';
import { EndPage } from './EndPage.tsx';
import { EntryList } from './EntryList.tsx';
import { addBatches, dropBatch, useKeptBatches } from './kept-batches.ts';
import { keptWords } from './kept-words.ts';
import { OtherEntries } from './OtherEntries.tsx';
import { Plan } from './Plan.tsx';
import { Readings } from './Readings.tsx';
import { notInLinks, saleAddress, stepAddress } from './step-address.ts';
import { Today } from './Today.tsx';
import { useNow, useShown } from './use-shown.ts';
import { useTyped } from './use-typed.ts';

/** Without the parts that every entry has. */
export type NewEntry = BatchEntry extends infer Each
  ? Each extends BatchEntry
    ? Omit<Each, 'id' | 'at'>
    : never
  : never;

/** One batch by its id; two that bear one id stand under each other. */
export function OneBatch({ id }: { id: string }) {
  const { Link } = useLinks();
  const { batches, kept } = useKeptBatches();
  if (!batches) return <p>Looking into this browser …</p>;
  const found = batches.filter((batch) => batch.id === id);
  if (found.length === 0)
    return (
      <>
        <h1>No such batch here</h1>
        <p>
          This browser keeps no batch of this id. It may be kept in another one: save it there as a file and take that
          in. To the <Link to="/batches">list of batches</Link>.
        </p>
      </>
    );
  return (
    <>
      <p className="no-print">
        <Link to="/batches">All batches</Link>
      </p>
      {kept !== 'kept' && (
        <div className={styles.notice} role="status" data-part="not-kept">
          <p>{keptWords(kept)}</p>
          <button
            type="button"
            className={frame.button}
            onClick={() => download('batch.json', 'application/json', batchesText(found))}
          >
            Save this batch as a file
          </button>
        </div>
      )}
      {found.length > 1 && (
        <p className={styles.notice}>
          {found.length} batches bear this id and were opened otherwise. All are kept; each stands below by itself, and
          an entry goes to the one that you write it in.
        </p>
      )}
      {found.map((record) => (
        <Bench key={headOf(record)} record={record} />
      ))}
    </>
  );
}

/** A batch at the bench: today's list first. */
function Bench({ record }: { record: BatchRecord }) {
  const units = useUnits();
  const { now, look } = useNow();
  const { shown: told, problems, laying } = useShown(record, now);
  const typed = useTyped(record.id);
  const [said, setSaid] = useState('');

  const write = async (entry: NewEntry, words: string) => {
    const whole = { ...entry, id: newId(), at: withOffset(record.zone, Date.now()) } as BatchEntry;
    setSaid(`Written down: ${words}.`);
    // Else what was just done lies ahead of the minute that the page last saw.
    look();
    const { kept } = await addBatches([{ ...record, entries: [whole] }]);
    if (kept !== 'kept') setSaid(`Written down: ${words}. ${keptWords(kept)}`);
  };

  if (problems)
    return (
      <>
        <h1>{record.title}</h1>
        <div className={styles.notice}>
          <p>Its method, its shop record or its case cannot be worked out. What was written down is kept.</p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{wordsInReaderUnits(problem, units)}</li>
            ))}
          </ul>
        </div>
      </>
    );
  if (!told)
    return (
      <>
        <h1>{record.title}</h1>
        <p>Working it out …</p>
      </>
    );
  const shown = wordsInReaderUnits(told, units);
  const writing = {
    zone: shown.state.zone,
    opened: record.opened,
    pieces: shown.state.pieces,
    now,
    typed,
    write: (entry: NewEntry, words: string) => void write(entry, words),
  };
  return (
    <article data-part="batch">
      <h1>{record.title}</h1>
      <p className={styles.status} role="status" data-part="written">
        {said}
      </p>
      <Readings state={shown.state} writing={writing} units={units} />
      <Today shown={shown} pageOf={(step) => stepAddress(record, step)} writing={writing} />
      <Plan shown={shown} laying={laying} />
      <OtherEntries shown={shown} writing={writing} units={units} />
      <EntryList entries={shown.entries} writing={writing} />
      <EndPage shown={told} sale={saleAddress(record)} units={units} laying={laying} />
      <p className={`${styles.buttons} no-print`}>
        <button
          type="button"
          className={frame.button}
          onClick={() => download('batch.json', 'application/json', batchesText([record]))}
        >
          Save this batch as a file
        </button>
        <TakeOut record={record} />
      </p>
      <p className="small">
        Of the method “{shown.method}”, kept as it was when the batch was opened. Photographs are not kept. The sheets
        of your resin and your finish come before anything worked out here. {notInLinks(record)}
      </p>
    </article>
  );
}

/** Take a batch out of the browser: asked once more, since it comes back from a file alone. */
function TakeOut({ record }: { record: BatchRecord }) {
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <button type="button" className={frame.button} onClick={() => setAsked(true)}>
        Take it out of this browser
      </button>
    );
  return (
    <>
      <span>It comes back from a saved file alone.</span>
      <button
        type="button"
        className={frame.button}
        onClick={() => {
          void dropBatch(record.id);
          replaceSearch('');
        }}
      >
        Take it out
      </button>
      <button type="button" className={frame.button} onClick={() => setAsked(false)}>
        Keep it
      </button>
    </>
  );
}
