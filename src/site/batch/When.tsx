import { useId } from 'react';
import form from '../../calculators/view/form.module.css';
import { localTime, stampOf, whenFault } from '../../method/batch/moment.ts';
import styles from './batch.module.css';
import type { Writing } from './writing.ts';

/** The day and time that something happened, as they stand in a field. */
export interface WhenTyped {
  /** Local time of the shop, `2027-01-12T18:30`; the minute that it is where nobody has touched it. */
  text: string;
  touched: boolean;
  type(text: string): void;
  /** The moment (RFC 3339); undefined where no whole day and time stand there. */
  moment(): string | undefined;
  /** Why it cannot be so. */
  fault?: string;
  /** What is worth a look, though it can be so. */
  remark?: string;
}

/** A day and time that is now until somebody says otherwise. */
export function useWhen({ zone, opened, now, typed }: Writing, field: string): WhenTyped {
  const own = typed.of(field);
  const text = own ?? localTime(zone, now);
  // A page that stood open overnight must not take the minute that it saw last for the one in which a button is pressed.
  const moment = () => stampOf(zone, own ?? localTime(zone, Date.now()));
  const found = own === undefined ? {} : whenFault(zone, own, Date.parse(opened), now);
  return { text, touched: own !== undefined, type: (changed) => typed.type(field, changed), moment, ...found };
}

/** Folded while it is now; what is wrong with it stands at the field as it is typed. */
export function When({ time, of }: { time: WhenTyped; of: string }) {
  const { text, touched, fault, remark, type } = time;
  const id = useId();
  return (
    <details open={touched || undefined} className={styles.whole}>
      <summary className={form.summary}>
        {touched ? 'Read' : 'Read now,'} {text.replace('T', ' ')}: change
      </summary>
      <label className={form.label} htmlFor={id}>
        When {of.charAt(0).toLowerCase()}
        {of.slice(1)} was read
      </label>
      <input
        id={id}
        className={form.input}
        type="datetime-local"
        value={text}
        aria-invalid={fault === undefined ? undefined : true}
        aria-describedby={fault === undefined && remark === undefined ? undefined : `${id}-said`}
        onChange={(event) => type(event.target.value)}
      />
      {(fault ?? remark) !== undefined && (
        <p id={`${id}-said`} role={fault === undefined ? 'status' : 'alert'} className={fault && form.error}>
          {fault ?? remark}
        </p>
      )}
    </details>
  );
}
