import { useEffect, useId, useState } from 'react';
import type { TimedEvent, Timeline } from '../../model/evidence/index.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { clockTime, fieldText, momentOf } from './clock.ts';
import { EvidenceMark } from './EvidenceMark.tsx';
import form from './form.module.css';
import styles from './timeline.module.css';

/** What happens when: the time from the start, and the time on the clock once it is said when that was. */
export function TimelineView({ timeline, units }: { timeline: Timeline; units: ReaderUnits }) {
  const id = useId();
  // The server does not know what time it is where the page is read.
  const [started, setStarted] = useState('');
  useEffect(() => setStarted(fieldText(new Date())), []);
  const start = momentOf(started);
  const clock = (seconds: number) => (start ? clockTime(start, seconds) : '');
  if (timeline.events.length === 0) return null;
  return (
    <section className={styles.timeline} data-part="timeline" aria-labelledby={`${id}-title`}>
      <div className={styles.title} id={`${id}-title`}>
        What happens when, from {timeline.zero}
      </div>
      <div className={styles.start}>
        <label htmlFor={id}>Started at</label>
        <input
          id={id}
          type="datetime-local"
          className={form.input}
          value={started}
          data-empty={started === '' || undefined}
          onChange={(event) => setStarted(event.target.value)}
        />
      </div>
      <ol className={styles.events}>
        {timeline.events.map((event) => (
          <li key={event.id} className={styles.event} data-event={event.id}>
            <span className={styles.clock}>{clock(event.at)}</span>
            <span className={styles.after}>{formatQuantity(event.at, 's', units, { digits: 2 })}</span>
            <span className={styles.what}>
              {event.label} <EvidenceMark basis={event.basis} />
              <Band event={event} units={units} clock={clock} />
              {event.note && <span className={styles.note}>{event.note}</span>}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function Band({ event, units, clock }: { event: TimedEvent; units: ReaderUnits; clock: (seconds: number) => string }) {
  const { low, high } = event;
  if (low === undefined || high === undefined) return null;
  const written = (seconds: number) => formatQuantity(seconds, 's', units, { digits: 2 });
  return (
    <span className={styles.note}>
      {written(low)} to {written(high)}
      {clock(low) && `: ${clock(low)} to ${clock(high)}`}
    </span>
  );
}
