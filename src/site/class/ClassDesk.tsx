import { useBaseUrlUtils } from '@docusaurus/useBaseUrl';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { useEffect, useMemo, useRef, useState } from 'react';
import { largestClassList } from '../../calculators/kit/limits.ts';
import { replaceSearch } from '../../calculators/view/address-bar.ts';
import { localDay } from '../../calculators/view/clock.ts';
import { download } from '../../calculators/view/download.ts';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import frame from '../../calculators/view/frame.module.css';
import { useUnits } from '../../calculators/view/units.tsx';
import { type ClassRecord, classText, longestClass, readClass } from '../../method/class/record.ts';
import { placesText, readPlaces, type SheetReading } from '../../method/class/sheet.ts';
import { readMethod } from '../../method/read.ts';
import type { MethodRecord } from '../../method/record/index.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { fileName } from '../bench/names.ts';
import { useShopText, useStandingShop } from '../kept/use-shop-text.ts';
import { fetchedPart } from '../page/fetched-part.tsx';
import { ClassResults } from './ClassResults.tsx';
import { CommonFields } from './CommonFields.tsx';
import styles from './class.module.css';
import { classOfAddress } from './class-address.ts';
import { DamagedClasses } from './DamagedClasses.tsx';
import { MethodChoice, useMethodText } from './MethodChoice.tsx';
import { PlacesTable } from './PlacesTable.tsx';
import { SessionFields } from './SessionFields.tsx';
import { ShopChoice } from './ShopChoice.tsx';
import { taughtAt } from './taught.ts';
import { useClass } from './use-class.ts';
import { freshClass, type KeptClass, useClasses } from './use-classes.ts';

const ClassSheets = fetchedPart(async () => (await import('./ClassSheets.tsx')).ClassSheets, {
  meanwhile: 'One moment: the sheets are being laid out.',
  notFetched:
    'What shows the sheets could not be fetched: there may be no connection. The class is kept in this browser; make its sheets again once there is one.',
});

/** What the address asks for is begun as a class of its own, once: the address is then cleared, so that a reload begins no other. */
async function begunByAddress(
  shop: string | undefined,
  href: (path: string) => string,
): Promise<KeptClass | undefined> {
  const asked = classOfAddress(window.location.search);
  if (!asked) return undefined;
  const { calendar, ...part } = asked;
  replaceSearch('');
  const taught = part.method && 'id' in part.method ? await taughtAt(part.method.id, calendar, href) : undefined;
  return freshClass({ ...part, ...(taught && part.common ? { common: { ...part.common, ...taught } } : {}) }, shop);
}

/** The classes of this browser, one of them open: what is typed is kept as it is typed. */
export function ClassDesk() {
  const { withBaseUrl } = useBaseUrlUtils();
  const { classes, damaged, open, setOpen, keeps, put, drop } = useClasses(
    (record) => begunByAddress(record, withBaseUrl),
    useStandingShop(),
  );
  const { text: shop } = useShopText();
  const [faults, setFaults] = useState<readonly string[]>([]);
  const current = classes?.find(({ id }) => id === open) ?? classes?.[0];
  const begin = (part?: Partial<ClassRecord>) => {
    const one = freshClass(part, shop);
    setOpen(one.id);
    setFaults([]);
    void put(one);
  };
  const takeClass = async (file: File) => {
    if (file.size > 4 * longestClass) {
      setFaults([`${file.name} is too large for a class: ${longestClass} characters are read at most.`]);
      return;
    }
    const read = readClass(await file.text(), file.name);
    if (read.ok) begin(read.record);
    else setFaults(read.problems.map(({ file: name, line, message }) => `${name}, line ${line}: ${message}`));
  };
  if (!classes) return <p>Looking what this browser keeps …</p>;
  return (
    <>
      {!keeps && (
        <p className={styles.wrong}>
          This browser keeps nothing for this page: save the class as a file before you close it.
        </p>
      )}
      <DamagedClasses damaged={damaged} onForget={(id) => void drop(id)} />
      <div className={`${styles.row} no-print`}>
        {current && (
          <label>
            Class
            <select
              value={current.id}
              onChange={(event) => {
                setOpen(event.target.value);
                setFaults([]);
              }}
            >
              {classes.map(({ id, record: { name } }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        )}
        <button type="button" className={frame.button} onClick={() => begin()}>
          New class
        </button>
        <FileButton accept=".json,application/json" part="class-file" onFile={(file) => void takeClass(file)}>
          Open a class (JSON)
        </FileButton>
        {current && (
          <>
            <button
              type="button"
              className={frame.button}
              onClick={() =>
                download(
                  fileName(current.record.name, { ending: 'json', empty: 'class' }),
                  'application/json',
                  classText(current.record),
                )
              }
            >
              Save the class (JSON)
            </button>
            <button
              type="button"
              className={frame.button}
              onClick={() =>
                window.confirm(`Forget “${current.record.name}”? It is kept nowhere else.`) && void drop(current.id)
              }
            >
              Forget this class
            </button>
          </>
        )}
      </div>
      {faults.length > 0 && (
        <ul className={styles.wrong} role="alert" data-part="list-faults">
          {faults.map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      )}
      {current && <OneClass key={current.id} kept={current} put={put} onFaults={setFaults} />}
    </>
  );
}

interface OneClassProps {
  kept: KeptClass;
  put: (kept: KeptClass) => Promise<void>;
  onFaults: (faults: readonly string[]) => void;
}

/** A class: what is asked, and what comes of it. */
function OneClass({ kept, put, onFaults }: OneClassProps) {
  const { record } = kept;
  const units = useUnits();
  const { siteConfig } = useDocusaurusContext();
  const { withBaseUrl } = useBaseUrlUtils();
  const [only, setOnly] = useState('');
  /** A list with faults, which changes nothing until the reader says so. */
  const [doubtful, setDoubtful] = useState<SheetReading>();
  /** The places as they were before a list took their place. */
  const [earlier, setEarlier] = useState<ClassRecord['places']>();
  const say = (text: string) => inReaderUnits(text, units);
  // What comes late, as a list that was read from a file, changes the class as it stands by then, not as it stood when it was asked for.
  const now = useRef(kept);
  now.current = kept;
  const change = (part: Partial<ClassRecord>) => {
    now.current = { ...now.current, record: { ...now.current.record, ...part } };
    void put(now.current);
  };
  const text = useMethodText(record);
  const read = useMemo(() => (typeof text === 'string' ? readMethod(text, 'method') : undefined), [text]);
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const question =
    typeof text === 'string' && record.places.length > 0 ? { record, text, file: 'method', zone: here } : undefined;
  const { answer, progress, state, missed, packet, askMissed, askPacket, closePacket, stop, again } =
    useClass(question);
  const problems = question && answer && !answer.ok ? answer.problems : [];
  /** A list that was opened before its method had come. */
  const [list, setList] = useState<string>();
  const openList = async (file: File) => {
    if (file.size <= largestClassList) return setList(await file.text());
    onFaults([
      `${file.name} is larger than 1 MB, the most that is read here. Save the list of the class alone, as CSV.`,
    ]);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: a list is read once, as soon as its method is there
  useEffect(() => {
    if (list === undefined || !read?.record) return;
    setList(undefined);
    readList(list, read.record);
  }, [list, read]);
  const readList = (csv: string, method: MethodRecord) => {
    const found = readPlaces(csv, method);
    onFaults(
      found.faults.map(({ row, column, message }) => `Row ${row}${column ? `, ${column}` : ''}: ${say(message)}`),
    );
    const isTaken = found.faults.length === 0 && found.places.length > 0;
    setDoubtful(isTaken || found.places.length === 0 ? undefined : found);
    if (isTaken) takePlaces(found.places);
  };
  const takePlaces = (places: ClassRecord['places']) => {
    const { places: before } = now.current.record;
    setEarlier(before.length > 0 ? before : undefined);
    setDoubtful(undefined);
    change({ places });
  };
  const taught = read?.record?.taught;
  const takeTaught = async () => {
    const id = 'id' in record.method ? record.method.id : '';
    const found = await taughtAt(id, taught?.calendar, withBaseUrl, taught);
    if (found) change({ common: { ...now.current.record.common, ...found } });
  };
  const makeSheets = () =>
    askPacket({
      made: localDay(),
      ...('id' in record.method ? { address: `${siteConfig.url}${withBaseUrl(`/methods/${record.method.id}`)}` } : {}),
      ...(only === '' ? {} : { place: only }),
    });
  return (
    <>
      <div className={styles.entry}>
        <label className={styles.field}>
          Name of the class
          <input value={record.name} maxLength={120} onChange={(event) => change({ name: event.target.value })} />
        </label>
        <MethodChoice method={record.method} onChange={(method) => change({ method })} />
        {read?.record && (
          <CommonFields
            record={read.record}
            common={record.common}
            problems={problems}
            say={say}
            onChange={(common) => change({ common })}
          />
        )}
        <SessionFields
          common={record.common}
          weekly={kept.weekly}
          here={here}
          taught={taught && { name: taught.calendar, take: takeTaught }}
          say={say}
          onChange={(common) => change({ common })}
          onWeekly={(weekly) => {
            now.current = { ...now.current, weekly };
            void put(now.current);
          }}
        />
        <div className={styles.row}>
          {(['teachers', 'helpers'] as const).map((who) => (
            <label key={who}>
              {who === 'teachers' ? 'Teachers' : 'Helpers'}
              <select
                value={record.people[who]}
                onChange={(event) => change({ people: { ...record.people, [who]: Number(event.target.value) } })}
              >
                {Array.from({ length: 21 }, (_, count) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the counts are the options
                  <option key={count} value={count}>
                    {count}
                  </option>
                ))}
              </select>
            </label>
          ))}
        </div>
        <ShopChoice common={record.common} onChange={(common) => change({ common })} />
        <h2>Places</h2>
        <div className={styles.row}>
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
        </div>
        {doubtful && (
          <div className={styles.row} role="alert" data-part="list-doubtful">
            <p>
              The list has faults, told above, and nothing was changed. {doubtful.places.length}{' '}
              {doubtful.places.length === 1 ? 'place' : 'places'} can be read; {doubtful.leftOut}{' '}
              {doubtful.leftOut === 1 ? 'entry' : 'entries'} would be left out.
            </p>
            <button type="button" className={frame.button} onClick={() => takePlaces(doubtful.places)}>
              Take what can be read
            </button>
            <button type="button" className={frame.button} onClick={() => setDoubtful(undefined)}>
              Keep the places as they are
            </button>
          </div>
        )}
        {earlier && (
          <div className={styles.row}>
            <button
              type="button"
              className={frame.button}
              onClick={() => {
                setEarlier(undefined);
                change({ places: earlier });
              }}
            >
              Have the {earlier.length} places of before back
            </button>
          </div>
        )}
        {read?.record && (
          <PlacesTable
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
      <p role="status" className="no-print">
        {state === 'working' &&
          (progress ? `Working out: ${progress.now}, ${progress.done} of ${progress.of} places.` : 'Working out …')}
        {state === 'stopped' && 'Stopped. What is shown is of before.'}
        {state === 'failed' && 'The class could not be worked out. Load the page again; what you typed is kept.'}
      </p>
      <div className={`${styles.row} no-print`}>
        {state === 'working' && (
          <button type="button" className={frame.button} onClick={stop}>
            Stop
          </button>
        )}
        {state === 'stopped' && (
          <button type="button" className={frame.button} onClick={again}>
            Work it out
          </button>
        )}
      </div>
      {problems.length > 0 && (
        <ul className={styles.wrong}>
          {/* What is wrong with the sessions stands at their field, as it is typed. */}
          {problems
            .filter(({ where }) => where !== 'sessions')
            .map(({ where, field, message, place }) => (
              <li key={`${where} ${field} ${message}`}>
                {place && (where === 'method' || where === 'shop') ? `${place.file}, line ${place.line}: ` : ''}
                {say(message)}
              </li>
            ))}
        </ul>
      )}
      {question && answer?.ok && (
        <>
          <div className={`${styles.row} no-print`} data-part="class-print">
            <label>
              Sheets for
              <select value={only} onChange={(event) => setOnly(event.target.value)}>
                <option value="">the whole class</option>
                {answer.page.places.map(({ id, name }) => (
                  <option key={id} value={id}>
                    place {id}
                    {name ? `, ${name}` : ''}
                  </option>
                ))}
              </select>
            </label>
            <button type="button" className={frame.button} disabled={state !== 'quiet'} onClick={makeSheets}>
              {only === '' ? 'Make all sheets' : 'Make its sheets'}
            </button>
          </div>
          {packet ? (
            <ClassSheets packet={packet} onClose={closePacket} />
          ) : (
            <ClassResults page={answer.page} missed={missed} onMissed={askMissed} />
          )}
        </>
      )}
    </>
  );
}
