import { useState } from 'react';
import { report } from '../kit/report.ts';
import type { ActionsProps } from './Actions.tsx';
import { localDay } from './clock.ts';
import { download } from './download.ts';
import styles from './frame.module.css';
import { useLinks } from './links.tsx';
import takeStyles from './take-away.module.css';

type Kit = typeof import('../kit/taken.ts');

interface TakeAwayProps extends Omit<ActionsProps, 'print' | 'reset'> {
  copy: (text: string, done: string) => void;
}

/** A text as one word of a shell. */
const shellWord = (text: string) => `'${text.replaceAll("'", `'\\''`)}'`;

/** A title as it stands on a button: what comes behind a comma or a colon only says more of it. */
const shortTitle = (title: string) => title.split(/[,:]/)[0] ?? title;

/**
 * An answer as files, folded: the tables as CSV, one a file, all of them in one spreadsheet, all of it as JSON, and the command that asks the same.
 * What makes the tables is fetched when it is opened, what writes the spreadsheet when it is pressed.
 */
export function TakeAway({ calculator, asked, result, units, link, copy }: TakeAwayProps) {
  const { Link } = useLinks();
  const [kit, setKit] = useState<Kit | null>(null);
  const [open, setOpen] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  // Made anew with each answer while it stands open, and not at all while it is folded.
  const tables =
    kit && open ? kit.takenTables({ calculator, inputs: asked, result, units, day: localDay(), address: link() }) : [];
  const name = (table: string, ending: 'csv' | 'xlsx' | 'json') =>
    kit?.takenName(calculator.id, localDay(), table, ending) ?? `${calculator.id}.${ending}`;
  const failed = () => setSaid('It could not be fetched: look whether you are connected, and try again.');
  const toggle = (now: boolean) => {
    setOpen(now);
    if (now && !kit) import('../kit/taken.ts').then((module) => setKit(module), failed);
  };
  const spreadsheet = async () => {
    if (!kit) return;
    setSaid('The spreadsheet is being written …');
    try {
      const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
      download(name('answer', 'xlsx'), type, await kit.spreadsheetOf(tables));
      setSaid(null);
    } catch {
      failed();
    }
  };

  return (
    <details className={styles.more} onToggle={({ currentTarget }) => toggle(currentTarget.open)}>
      <summary className={`${styles.button} ${takeStyles.quiet}`}>Take it away</summary>
      <div className={styles.actions}>
        {tables.map((table) => (
          <button
            key={table.id}
            type="button"
            className={styles.button}
            title={table.title}
            onClick={() =>
              kit && download(name(table.id, 'csv'), 'text/csv;charset=utf-8', kit.byteOrderMark + kit.csvOf(table))
            }
          >
            CSV: {table.id === 'answer' ? 'question and figures' : shortTitle(table.title)}
          </button>
        ))}
        {tables.length > 0 && (
          <button type="button" className={styles.button} onClick={spreadsheet}>
            Spreadsheet, {tables.length === 1 ? 'one sheet' : `${tables.length} sheets`}
          </button>
        )}
        <button
          type="button"
          className={styles.button}
          onClick={() =>
            download(
              name('answer', 'json'),
              'application/json',
              JSON.stringify(report(calculator, asked, result, units), null, 2),
            )
          }
        >
          JSON
        </button>
        <button
          type="button"
          className={styles.button}
          onClick={() =>
            copy(
              `npm run -s kerf -- calc ${calculator.id} --json ${shellWord(JSON.stringify(asked))}`,
              'Command copied: it gives the same answer in a copy of the project.',
            )
          }
        >
          Copy as a command
        </button>
      </div>
      <p className={takeStyles.said}>
        For a program: <Link to="/reference/schemas">the names of the inputs and of the answer</Link>.
      </p>
      <p className={takeStyles.said} role="status">
        {said}
      </p>
    </details>
  );
}
