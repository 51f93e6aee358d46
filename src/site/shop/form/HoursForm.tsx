import { useId, useState } from 'react';
import { LineField, useTyped } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { Problems } from '../../bench/form/Problems.tsx';
import { type Path, useField, useProblemsAt, useRecord, valueAt } from '../../bench/form/use-record.tsx';
import { Section } from './Section.tsx';
import styles from './shop-form.module.css';

/** Days of the week as the record names them. */
const days = [
  ['mon', 'Monday'],
  ['tue', 'Tuesday'],
  ['wed', 'Wednesday'],
  ['thu', 'Thursday'],
  ['fri', 'Friday'],
  ['sat', 'Saturday'],
  ['sun', 'Sunday'],
] as const;

const span = /^(?:(\d{4}-\d\d-\d\d) )?(\d\d:\d\d)-(\d\d:\d\d)$/;

interface ClockFieldProps {
  label: string;
  /** Whose it is, for whoever does not see the field where it stands. */
  of: string;
  value: string;
  type: 'time' | 'date';
  problems: boolean;
  describedBy: string;
  write: (value: string) => void;
}

/** A time or a day. While a part of it is missing nothing is written. */
function ClockField({ label, of, value, type, problems, describedBy, write }: ClockFieldProps) {
  const id = useId();
  const typed = useTyped(value, (fresh) => fresh !== '' && write(fresh));
  return (
    <div className={styles.clock}>
      <label className={forms.label} htmlFor={id}>
        {label}
        <span className="visually-hidden"> ({of})</span>
      </label>
      <input
        id={id}
        type={type}
        className={forms.input}
        aria-invalid={problems || undefined}
        aria-describedby={describedBy}
        {...typed}
      />
    </div>
  );
}

/** An opening, from and until, with its day where it is a session. What is not written so stands as it is, to be mended. */
function Opening({ path, title, remove }: { path: Path; title: string; remove: () => void }) {
  const { id, value, set, problems } = useField(path);
  const [, day, from = '', until = ''] = (typeof value === 'string' && span.exec(value)) || [];
  const write = (changed: { day?: string; from?: string; until?: string }) => {
    const now = { day, from, until, ...changed };
    // A clock of 24 hours has midnight as 00:00; as the end of a day the record has it as 24:00.
    const end = now.until === '00:00' ? '24:00' : now.until;
    set(path, `${now.day === undefined ? '' : `${now.day} `}${now.from}-${end}`);
  };
  const field = { of: title, problems: problems.length > 0, describedBy: `${id}-problems` };
  if (from === '') {
    return (
      <div className={styles.line}>
        <LineField path={path} label={title} />
        <RemoveButton words={title} press={remove} />
      </div>
    );
  }
  return (
    <div className={styles.opening}>
      {day !== undefined && (
        <ClockField {...field} type="date" label="Day" value={day} write={(fresh) => write({ day: fresh })} />
      )}
      <ClockField {...field} type="time" label="From" value={from} write={(fresh) => write({ from: fresh })} />
      <ClockField
        {...field}
        type="time"
        label="Until"
        value={until === '24:00' ? '00:00' : until}
        write={(fresh) => write({ until: fresh })}
      />
      <RemoveButton words={title} press={remove} />
      <div className={styles.whole}>
        <Problems id={`${id}-problems`} problems={problems} />
      </div>
    </div>
  );
}

function RemoveButton({ words, press }: { words: string; press: () => void }) {
  return (
    <button type="button" className={forms.small} onClick={press}>
      Remove<span className="visually-hidden">: {words}</span>
    </button>
  );
}

const listAt = (data: unknown, path: Path): readonly unknown[] => {
  const held = valueAt(data, path);
  return Array.isArray(held) ? held : [];
};

/** A new opening goes on an hour after the last, as after a meal; the first is a working day. */
function nextOpening(list: readonly unknown[]): string {
  const [, , , until] = span.exec(String(list.at(-1) ?? '')) ?? [];
  const hour = until === undefined ? 8 : Number(until.slice(0, 2));
  const two = (number: number) => String(number).padStart(2, '0');
  if (hour >= 22) return '09:00-17:00';
  return `${two(hour + 1)}:00-${two(Math.max(17, hour + 2))}:00`;
}

/** The hours of a day of the week. */
function Weekday({ day, name, before }: { day: string; name: string; before: readonly [string, string] | undefined }) {
  const { data, add, set, remove } = useRecord();
  const path: Path = ['calendar', 'week', day];
  const list = listAt(data, path);
  const own = useProblemsAt(
    path,
    list.map((_each, at) => String(at)),
  );
  const there = Object.keys((valueAt(data, ['calendar', 'week']) as object | undefined) ?? {});
  /** The day, among those before it in the week. */
  const begin = (spans: readonly unknown[]) => {
    if (there.includes(day)) return set(path, spans);
    const order = days.map(([each]) => each as string);
    const place = there.filter((each) => order.indexOf(each) < order.indexOf(day)).length;
    return add(['calendar', 'week'], day, spans, place);
  };
  return (
    <fieldset className={styles.day} data-part={path.join('/')}>
      <legend className={forms.label}>
        {name}
        {list.length === 0 && <span className={styles.closed}> closed</span>}
      </legend>
      <Problems problems={own} />
      {list.map((_each, at) => (
        <Opening
          // biome-ignore lint/suspicious/noArrayIndexKey: an opening is known by its place in the day.
          key={at}
          path={[...path, at]}
          title={name}
          remove={() => (list.length === 1 ? set(path, undefined) : remove([...path, at]))}
        />
      ))}
      <div className={styles.buttons}>
        <button
          type="button"
          className={forms.small}
          onClick={() => (list.length === 0 ? begin([nextOpening([])]) : add(path, undefined, nextOpening(list)))}
        >
          Add hours<span className="visually-hidden"> on {name}</span>
        </button>
        {list.length === 0 && before && (
          <button
            type="button"
            className={forms.small}
            onClick={() => begin(listAt(data, ['calendar', 'week', before[0]]))}
          >
            As on {before[1]}
            <span className="visually-hidden">, for {name}</span>
          </button>
        )}
      </div>
    </fieldset>
  );
}

/** Days or sessions, each taken out by its button; a new one is put in at once. */
function DayList({
  list,
  title,
  help,
  kind,
}: {
  list: 'holidays' | 'sessions';
  title: string;
  help: string;
  kind: string;
}) {
  const { data, add, set, remove } = useRecord();
  const id = useId();
  const [day, setDay] = useState('');
  const path: Path = ['calendar', list];
  const held = listAt(data, path);
  const own = useProblemsAt(
    path,
    held.map((_each, at) => String(at)),
  );
  const press = () => {
    if (day === '') return document.getElementById(id)?.focus();
    add(path, undefined, list === 'holidays' ? day : `${day} 09:00-17:00`);
    return setDay('');
  };
  return (
    <fieldset className={forms.group} data-part={path.join('/')}>
      <legend className={forms.label}>{title}</legend>
      <p className={forms.help}>{help}</p>
      <Problems problems={own} />
      {held.map((each, at) => {
        const takeOut = () => (held.length === 1 ? set(path, undefined) : remove([...path, at]));
        const words = `${kind} ${at + 1}`;
        const here = [...path, at];
        return list === 'sessions' ? (
          <Opening key={here.join('/')} path={here} title={words} remove={takeOut} />
        ) : (
          <div key={here.join('/')} className={styles.line}>
            <LineField path={here} label={words} help="" />
            <RemoveButton words={String(each)} press={takeOut} />
          </div>
        );
      })}
      <label className={forms.label} htmlFor={id}>
        Another {kind.toLowerCase()}, its day
      </label>
      <div className={forms.value}>
        <input
          id={id}
          type="date"
          className={forms.input}
          value={day}
          onChange={({ target }) => setDay(target.value)}
        />
        <button type="button" className={forms.small} onClick={press}>
          Add<span className="visually-hidden"> this {kind.toLowerCase()}</span>
        </button>
      </div>
    </fieldset>
  );
}

/** When the shop is open. */
export function HoursForm() {
  const { data } = useRecord();
  const own = useProblemsAt(['calendar'], ['week', 'holidays', 'sessions']);
  const open = (day: string) => listAt(data, ['calendar', 'week', day]).length > 0;
  return (
    <Section part="hours" title="Hours">
      {() => (
        <>
          <p className={forms.help}>On the shop’s own clock. Until 00:00 is until midnight.</p>
          <Problems problems={own} />
          {days.map(([day, name], at) => (
            <Weekday key={day} day={day} name={name} before={days.slice(0, at).findLast(([each]) => open(each))} />
          ))}
          <DayList
            list="holidays"
            title="Holidays"
            kind="Holiday"
            help="Days on which the hours of the week do not hold."
          />
          <DayList
            list="sessions"
            title="Sessions"
            kind="Session"
            help="Single openings, such as an evening of a class; held on a holiday too."
          />
        </>
      )}
    </Section>
  );
}
