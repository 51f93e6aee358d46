import { useState } from 'react';
import frame from '../../calculators/view/frame.module.css';
import type { ClassRecord } from '../../method/class/record.ts';
import { hoursOfClass } from '../../method/class/sessions.ts';
import { type WeeklyRule, weeklySessions } from '../../method/class/weekly.ts';
import styles from './class.module.css';

interface Props {
  common: ClassRecord['common'];
  weekly: WeeklyRule | undefined;
  /** Zone of this browser, which stands where none is named. */
  here: string;
  /** The calendar by which the method is taught, which an empty field can take. */
  taught?: { name: string; take: () => void } | undefined;
  say: (text: string) => string;
  onChange: (common: ClassRecord['common']) => void;
  onWeekly: (rule: WeeklyRule) => void;
}

const none: WeeklyRule = { first: '', times: '', weeks: '' };

const labels = {
  first: 'First session, such as 2027-02-09',
  times: 'From and to, such as 18:30-21:00',
  weeks: 'How many weeks',
} as const;

/** When the class meets: a line for each session, or a weekly rule that writes them. */
export function SessionFields({ common, weekly = none, here, taught, say, onChange, onWeekly }: Props) {
  const [asked, setAsked] = useState(false);
  const made = weeklySessions(weekly);
  // What is still empty is no fault before somebody wants it written.
  const faults: Partial<Record<keyof WeeklyRule, string>> = made.ok
    ? {}
    : Object.fromEntries(
        made.faults.flatMap(({ field, message }) =>
          asked || weekly[field].trim() !== '' ? [[field, message] as const] : [],
        ),
      );
  const hours = hoursOfClass(common.sessions, common.zone?.trim() || here);
  const wrong = hours.ok ? [] : hours.problems.map(({ message }) => message);
  const write = () => {
    setAsked(!made.ok);
    if (!made.ok) return;
    const before = common.sessions.trimEnd();
    const known = new Set(before.split(/\r?\n/).map((line) => line.trim()));
    const lines = made.lines.filter((line) => !known.has(line));
    onChange({ ...common, sessions: [before, ...lines].filter((line) => line !== '').join('\n') });
  };
  return (
    <>
      <label className={styles.field}>
        Sessions, one a line, such as 2027-02-09 18:30-21:00; behind those without students write: teacher only
        <textarea
          rows={6}
          maxLength={4000}
          value={common.sessions}
          aria-invalid={wrong.length > 0 || undefined}
          aria-describedby={wrong.length > 0 ? 'class-sessions-wrong' : undefined}
          onChange={(event) => onChange({ ...common, sessions: event.target.value })}
        />
      </label>
      {taught && common.sessions.trim() === '' && (
        <div className={styles.row}>
          <button type="button" className={frame.button} onClick={taught.take}>
            Take the sessions by which this method is taught: {taught.name.replaceAll('-', ' ')}
          </button>
        </div>
      )}
      {wrong.length > 0 && (
        <ul id="class-sessions-wrong" className={styles.wrong} role="status">
          {wrong.slice(0, 3).map((message) => (
            <li key={message}>{say(message)}</li>
          ))}
        </ul>
      )}
      <details className={styles.fold} data-part="class-weekly" open={weekly.first !== '' || undefined}>
        <summary>Write the sessions of a class that meets every week</summary>
        <div className={styles.fields}>
          {(['first', 'times', 'weeks'] as const).map((field) => (
            <label key={field} className={styles.field}>
              {labels[field]}
              <input
                value={weekly[field]}
                maxLength={40}
                autoComplete="off"
                aria-invalid={faults[field] ? true : undefined}
                onChange={(event) => onWeekly({ ...weekly, [field]: event.target.value })}
              />
              {faults[field] && <span className={styles.wrong}>{faults[field]}</span>}
            </label>
          ))}
        </div>
        <button type="button" className={frame.button} onClick={write}>
          Add these sessions
        </button>
      </details>
      <label className={styles.field}>
        Time zone of the sessions (empty: {here})
        <input
          value={common.zone ?? ''}
          maxLength={60}
          autoComplete="off"
          placeholder={here}
          onChange={(event) => {
            const { zone: _old, ...rest } = common;
            onChange(event.target.value === '' ? rest : { ...rest, zone: event.target.value });
          }}
        />
      </label>
    </>
  );
}
