import { useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import { headOf } from '../../method/batch/merge.ts';
import { type BatchRecord, batchesText } from '../../method/batch/record.ts';
import styles from './batch.module.css';
import { logFiles, takeFile } from './files.ts';
import { useKeptBatches } from './kept-batches.ts';
import { keptWords } from './kept-words.ts';
import { OwnMethod } from './OwnMethod.tsx';

/** Every batch of this browser, the log as files, and what is taken in from others. */
export function BatchList() {
  const { Link } = useLinks();
  const { batches: found, kept, damaged, conflicts } = useKeptBatches();
  // All of the page stands while the browser is being looked into, so that nothing jumps.
  const batches = found ?? [];
  const [said, setSaid] = useState<readonly string[]>([]);
  const [busy, setBusy] = useState(false);

  const load = async (file: File) => setSaid(await takeFile(file));
  const save = async () => {
    setBusy(true);
    try {
      download('batches.zip', 'application/zip', await logFiles(batches));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      {kept !== 'kept' && (
        <p className={styles.notice} role="status">
          {keptWords(kept)}
        </p>
      )}
      {conflicts.map((conflict) => (
        <p key={conflict} className={styles.notice}>
          {conflict}
        </p>
      ))}
      {damaged.length > 0 && <Damaged damaged={damaged} />}
      <section aria-labelledby="batches" data-part="batches">
        <h2 id="batches">Batches</h2>
        {batches.length === 0 && (
          <p>
            {found
              ? 'None yet. Open one from the page of a method, from a method of your own below, or take in a file.'
              : 'Looking into this browser for what was kept of earlier days: batches of methods of this site and of your own.'}
          </p>
        )}
        <ul className={styles.list}>
          {[...batches].reverse().map((batch) => (
            <Line key={headOf(batch)} batch={batch} Link={Link} />
          ))}
        </ul>
      </section>
      <OwnMethod />
      <section aria-labelledby="files" className="no-print">
        <h2 id="files">To files and back</h2>
        <p>
          The log is a data package: one line for each batch, one for each entry, and the batches whole. A file that you
          take in is laid beside what is kept here; nothing is overwritten. Photographs are not kept.
        </p>
        <div className={styles.buttons}>
          <button
            type="button"
            className={frame.button}
            disabled={batches.length === 0 || busy}
            onClick={() => void save()}
          >
            {busy ? 'Working it out …' : 'Save the log (CSV and JSON, zip)'}
          </button>
          <button
            type="button"
            className={frame.button}
            disabled={batches.length === 0}
            onClick={() => download('batches.json', 'application/json', batchesText(batches))}
          >
            Save the batches (JSON)
          </button>
          <FileButton
            accept=".json,.zip,application/json,application/zip"
            part="batch-file"
            onFile={(file) => void load(file)}
          >
            Take in a file
          </FileButton>
        </div>
        <div role="status" className={styles.status} data-part="taken">
          {said.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      </section>
    </>
  );
}

function Line({ batch, Link }: { batch: BatchRecord; Link: ReturnType<typeof useLinks>['Link'] }) {
  const last = batch.entries.at(-1);
  return (
    <li className={styles.line}>
      <span className={styles.name}>
        <Link to={`/batches?batch=${batch.id}`}>{batch.title}</Link>
      </span>
      <span className="small">
        opened {batch.opened.slice(0, 10)}; {batch.entries.length} {batch.entries.length === 1 ? 'entry' : 'entries'}
        {last ? `, the last on ${last.at.slice(0, 10)}` : ''}
      </span>
    </li>
  );
}

/** Stored records that cannot be read: they stay where they are, and can be taken as a file. */
function Damaged({ damaged }: { damaged: readonly string[] }) {
  return (
    <div className={styles.notice}>
      <p>
        {damaged.length === 1 ? 'One stored record' : `${damaged.length} stored records`} cannot be read, and{' '}
        {damaged.length === 1 ? 'stays' : 'stay'} where {damaged.length === 1 ? 'it is' : 'they are'}. Take it as a
        file: it may be mended by hand and taken in again.
      </p>
      <button
        type="button"
        className={frame.button}
        onClick={() => download('batches-damaged.json', 'application/json', `[${damaged.join(',\n')}]\n`)}
      >
        Take it as a file
      </button>
    </div>
  );
}
