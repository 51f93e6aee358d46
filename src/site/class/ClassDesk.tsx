import { useBaseUrlUtils } from '@docusaurus/useBaseUrl';
import { useEffect, useMemo, useRef, useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import frame from '../../calculators/view/frame.module.css';
import { useUnits } from '../../calculators/view/units.tsx';
import { type ClassRecord, classText, readClass } from '../../method/class/record.ts';
import { placesText, readPlaces, type SheetFault } from '../../method/class/sheet.ts';
import { readMethod } from '../../method/read.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { allThings, dropThings, newId, putThings } from '../kept/database.ts';
import { ClassResults } from './ClassResults.tsx';
import styles from './class.module.css';
import { PlacesTable } from './PlacesTable.tsx';
import { useClass } from './use-class.ts';

interface Kept {
  id: string;
  record: ClassRecord;
}

const fresh = (): Kept => ({
  id: newId(),
  record: {
    class: 1,
    name: 'New class',
    method: { id: 'class-of-twelve' },
    common: { set: {}, sessions: '' },
    people: { teachers: 1, helpers: 0 },
    places: [],
  },
});

/** The classes of this browser, one of them open: what is typed is kept as it is typed. */
export function ClassDesk() {
  const [classes, setClasses] = useState<Kept[]>();
  const [open, setOpen] = useState<string>();
  const [keeps, setKeeps] = useState(true);
  const [faults, setFaults] = useState<readonly SheetFault[]>([]);
  const units = useUnits();
  const say = (text: string) => inReaderUnits(text, units);

  useEffect(() => {
    let gone = false;
    allThings('classes').then((things) => {
      if (gone) return;
      setKeeps(things !== null);
      const kept = (things ?? []).flatMap(({ id, text }): Kept[] => {
        const read = typeof text === 'string' ? readClass(text, id) : undefined;
        return read?.ok ? [{ id, record: read.record }] : [];
      });
      const all = kept.length > 0 ? kept : [fresh()];
      setClasses(all);
      setOpen(all[0]?.id);
    });
    return () => {
      gone = true;
    };
  }, []);

  const current = classes?.find(({ id }) => id === open);
  const put = async (kept: Kept) => {
    setClasses((now) => {
      const all = now ?? [];
      return all.some(({ id }) => id === kept.id)
        ? all.map((each) => (each.id === kept.id ? kept : each))
        : [...all, kept];
    });
    const end = await putThings('classes', [{ id: kept.id, changed: Date.now(), text: classText(kept.record) }]);
    setKeeps(end === 'kept');
  };
  const change = (part: Partial<ClassRecord>) => {
    if (current) void put({ ...current, record: { ...current.record, ...part } });
  };

  const text = useMethodText(current?.record);
  const read = useMemo(() => (typeof text === 'string' ? readMethod(text, 'method') : undefined), [text]);
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const question =
    current && typeof text === 'string' && current.record.places.length > 0
      ? { record: current.record, text, file: 'method', zone }
      : undefined;
  const { answer, progress, failed, missed, askMissed } = useClass(question);
  if (!current) return <p>Looking what this browser keeps …</p>;
  const { record } = current;

  const openList = async (file: File) => {
    if (!read?.record) return;
    const found = readPlaces(await file.text(), read.record);
    setFaults(found.faults);
    if (found.places.length > 0) change({ places: found.places });
  };

  return (
    <>
      {!keeps && (
        <p className={styles.wrong}>
          This browser keeps nothing for this page: save the list as CSV before you close it.
        </p>
      )}
      <div className={styles.entry}>
        <div className={styles.row}>
          <label>
            Class
            <select value={open} onChange={(event) => setOpen(event.target.value)}>
              {classes?.map(({ id, record: { name } }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <label>
            Its name
            <input value={record.name} maxLength={120} onChange={(event) => change({ name: event.target.value })} />
          </label>
          <button
            type="button"
            className={frame.button}
            onClick={() => {
              const one = fresh();
              setOpen(one.id);
              setFaults([]);
              void put(one);
            }}
          >
            New class
          </button>
          <button
            type="button"
            className={frame.button}
            onClick={() => {
              void dropThings('classes', [current.id]);
              const left = classes?.filter(({ id }) => id !== current.id) ?? [];
              const all = left.length > 0 ? left : [fresh()];
              setClasses(all);
              setOpen(all[0]?.id);
            }}
          >
            Forget this class
          </button>
        </div>
        <MethodChoice record={record} onChange={(id) => change({ method: { id } })} />
        <label className={styles.field}>
          Sessions, one a line, such as 2027-02-09 18:30-21:00
          <textarea
            rows={6}
            maxLength={4000}
            value={record.common.sessions}
            onChange={(event) => change({ common: { ...record.common, sessions: event.target.value } })}
          />
        </label>
        <div className={styles.row}>
          {(['teachers', 'helpers'] as const).map((who) => (
            <label key={who}>
              {who === 'teachers' ? 'Teachers' : 'Helpers'}
              <select
                value={record.people[who]}
                onChange={(event) => change({ people: { ...record.people, [who]: Number(event.target.value) } })}
              >
                {Array.from({ length: 7 }, (_, count) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the counts are the options
                  <option key={count} value={count}>
                    {count}
                  </option>
                ))}
              </select>
            </label>
          ))}
          <FileButton accept=".csv,text/csv,text/plain" part="class-list" onFile={(file) => void openList(file)}>
            Open a list of places (CSV)
          </FileButton>
          {read?.record && (
            <button
              type="button"
              className={frame.button}
              onClick={() => read.record && download('places.csv', 'text/csv', placesText(record.places, read.record))}
            >
              Save the list (CSV)
            </button>
          )}
          <button type="button" className={frame.button} onClick={() => window.print()}>
            Print
          </button>
        </div>
        {faults.length > 0 && (
          <ul className={styles.wrong} role="alert" data-part="list-faults">
            {faults.map(({ row, column, message }) => (
              <li key={`${row} ${column} ${message}`}>
                Row {row}
                {column ? `, ${column}` : ''}: {say(message)}
              </li>
            ))}
          </ul>
        )}
        {read?.record && (
          <PlacesTable
            key={current.id}
            record={read.record}
            places={record.places}
            pages={answer?.ok ? answer.page.places : []}
            say={say}
            onChange={(places) => change({ places })}
          />
        )}
      </div>
      {text === null && (
        <p className={styles.wrong}>
          The method cannot be fetched. Look whether there is a connection, and load the page again: what you typed is
          kept.
        </p>
      )}
      <p role="status">
        {progress && `Working out: ${progress.now}, ${progress.done} of ${progress.of} places.`}
        {failed && 'The class could not be worked out. Load the page again; what you typed is kept.'}
      </p>
      {question && answer && !answer.ok && (
        <ul className={styles.wrong}>
          {answer.problems.map(({ where, field, message }) => (
            <li key={`${where} ${field} ${message}`}>{say(message)}</li>
          ))}
        </ul>
      )}
      {question && answer?.ok && <ClassResults page={answer.page} missed={missed} onMissed={askMissed} />}
    </>
  );
}

/** The text of the method that a class follows: its own, or one of the site; null where it cannot be fetched. */
function useMethodText(record: ClassRecord | undefined): string | null | undefined {
  const { withBaseUrl } = useBaseUrlUtils();
  const [text, setText] = useState<string | null>();
  const method = record?.method;
  const own = method && 'text' in method ? method.text : undefined;
  const id = method && 'id' in method ? method.id : undefined;
  const href = id === undefined ? undefined : withBaseUrl(`/data/methods/${encodeURIComponent(id)}.yaml`);
  useEffect(() => {
    if (href === undefined) return;
    let gone = false;
    setText(undefined);
    fetch(href)
      .then((answer) => (answer.ok ? answer.text() : null))
      .catch(() => null)
      .then((found) => !gone && setText(found));
    return () => {
      gone = true;
    };
  }, [href]);
  return own ?? text;
}

function MethodChoice({ record, onChange }: { record: ClassRecord; onChange: (id: string) => void }) {
  const { withBaseUrl } = useBaseUrlUtils();
  const [all, setAll] = useState<readonly { id: string; title: string }[]>([]);
  const asked = useRef(false);
  useEffect(() => {
    if (asked.current) return;
    asked.current = true;
    fetch(withBaseUrl('/data/methods/index.json'))
      .then((answer) => answer.json())
      .then((found) => setAll(Array.isArray(found) ? found : (found.methods ?? [])))
      .catch(() => undefined);
  }, [withBaseUrl]);
  if (!('id' in record.method)) return <p>The class follows a method of its own, {record.method.file}.</p>;
  const { id } = record.method;
  return (
    <label className={styles.field}>
      Method
      <select value={id} onChange={(event) => onChange(event.target.value)}>
        {!all.some((each) => each.id === id) && <option value={id}>{id}</option>}
        {all.map((each) => (
          <option key={each.id} value={each.id}>
            {each.title}
          </option>
        ))}
      </select>
    </label>
  );
}
