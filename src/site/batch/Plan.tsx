import form from '../../calculators/view/form.module.css';
import type { BatchChange } from '../../method/batch/changes.ts';
import type { ShownBatch } from '../../method/batch/shown.ts';
import { Drawn } from '../method/Timetable.tsx';
import styles from './batch.module.css';

/** So many lines of what is otherwise stand open; more are folded. */
const openLines = 4;

/** What is otherwise than it was planned, and what is left in time. */
export function Plan({ shown, laying }: { shown: ShownBatch; laying: boolean }) {
  const { state, sessions, ends, drawn } = shown;
  const { changes, untimed, findings } = state;
  const waits = changes.filter(({ what }) => what === 'wait');
  const moved = changes.filter(({ what }) => what === 'start');
  const done = changes.filter(({ what }) => what === 'done');
  const first = [...waits, ...moved].slice(0, openLines);
  const rest = [...waits, ...moved].slice(openLines).concat(done);
  return (
    <section aria-labelledby="left" data-part="plan" aria-busy={laying}>
      <h2 id="left">What is left</h2>
      {laying && <p>Laying the plan anew …</p>}
      {ends?.now !== undefined && !state.finished && (
        <p>
          By the plan all is done {ends.now}
          {ends.planned !== undefined && ends.planned !== ends.now ? `; at first it was ${ends.planned}` : ''}.
          {state.assumedHours ? ' Nobody told the hours of the shop: Monday to Friday, 9 to 5, are assumed.' : ''}
        </p>
      )}
      {state.assumedPeople !== undefined && !state.finished && (
        <p>Nobody told how many work at it: {state.assumedPeople} people are assumed.</p>
      )}
      {untimed.length > 0 && (
        <div className={styles.notice} data-part="untimed">
          <p>There is no timetable of what is left:</p>
          <ul>
            {untimed.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      {findings.length > 0 && (
        <ul data-part="findings">
          {findings.map(({ rule, step, message, wayOut, level }) => (
            <li key={`${rule} ${step} ${message}`}>
              <strong>{level === 'stop' ? 'Stop.' : level === 'warn' ? 'Warning.' : 'Mind.'}</strong> {message} {wayOut}
            </li>
          ))}
        </ul>
      )}
      <Changes title="Otherwise than planned" changes={first} />
      {rest.length > 0 && (
        <details>
          <summary className={form.summary}>{rest.length} more that are otherwise than planned</summary>
          <Changes changes={rest} />
        </details>
      )}
      {drawn && <Drawn {...drawn} />}
      {sessions && sessions.length > 0 && (
        <details data-part="sessions">
          <summary className={form.summary}>Day by day</summary>
          {sessions.map(({ day, from, to, work }) => (
            <div key={`${day} ${from}`}>
              <h3>
                {day}, {from} to {to}
              </h3>
              <ul>
                {work.map((each) => (
                  <li key={`${each.step} ${each.from} ${each.which}`}>
                    {each.from} to {each.to} {each.title}
                    {each.which}
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </details>
      )}
    </section>
  );
}

function Changes({ title, changes }: { title?: string; changes: readonly BatchChange[] }) {
  if (changes.length === 0) return null;
  return (
    <>
      {title && <h3>{title}</h3>}
      <ul data-part="changes">
        {changes.map(({ words }) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
}
