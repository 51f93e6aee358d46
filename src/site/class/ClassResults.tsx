import { useState } from 'react';
import frame from '../../calculators/view/frame.module.css';
import { useUnits } from '../../calculators/view/units.tsx';
import type { ClassPage, MissedSession } from '../../method/class/types.ts';
import { amount, inReaderUnits } from '../../model/quantity/index.ts';
import { ScrollBox } from '../page/ScrollBox.tsx';
import styles from './class.module.css';

const levelWords = { stop: 'Stop', warn: 'Mind', note: 'Note' } as const;

interface Props {
  page: ClassPage;
  missed: MissedSession | undefined;
  onMissed: (place: string, session: number) => void;
}

/** A class as worked out: what is found, the order, the mixes, who stands at which machine, a session that was missed. */
export function ClassResults({ page, missed, onMissed }: Props) {
  const units = useUnits();
  const say = (text: string) => inReaderUnits(text, units);
  const much = (value: number, unit: string) =>
    unit === '{count}' ? String(value) : say(amount(value, unit, 3, unit === 'g' || unit === 'mL'));
  const who = (places: readonly string[]) => (places.length === page.places.length ? 'all' : places.join(', '));
  const { order } = page;
  return (
    <div data-part="class-results">
      <div className="print-only" data-part="class-head">
        <p>
          <strong>{page.name}</strong>
        </p>
        <p>{page.method.title}</p>
        <ul>
          {page.places.map(({ id, name, differs }) => (
            <li key={id}>
              Place {id}
              {name ? `, ${name}` : ''}
              {differs.length > 0 ? `: ${say(differs.join('; '))}` : ''}
            </li>
          ))}
        </ul>
      </div>
      {page.notes.map((note) => (
        <p key={note}>{say(note)}</p>
      ))}
      {page.findings.length > 0 && (
        <>
          <h2>What to mind</h2>
          <ul>
            {page.findings.map((finding) => (
              <li key={`${finding.rule} ${finding.step} ${finding.message}`}>
                <strong>{levelWords[finding.level]}</strong>
                {finding.places.length > 0 ? ` (places ${finding.places.join(', ')})` : ''}
                {finding.step ? `, ${finding.step}` : ''}: {say(finding.message)} {say(finding.wayOut)}
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>One order</h2>
      {order.errors.map((error) => (
        <p key={error}>{say(error)}</p>
      ))}
      <ScrollBox label="The common order">
        <table data-part="class-order">
          <thead>
            <tr>
              <th scope="col">Material</th>
              <th scope="col">Needed, with spare</th>
              <th scope="col">To buy</th>
              <th scope="col">For places</th>
            </tr>
          </thead>
          <tbody>
            {order.lines.map((line) => (
              <tr key={line.id}>
                <th scope="row">{line.what}</th>
                <td>{much(line.need, line.unit)}</td>
                <td>
                  {line.packs.length > 0
                    ? line.packs.map(({ count, size }) => `${count} × ${much(size.value, size.unit)}`).join(', ')
                    : much(line.buy, line.unit)}
                  {line.unknown.map(({ places, why }) => ` Not known for ${who(places)}: ${say(why)}`).join('')}
                </td>
                <td>{who([...new Set(line.from.flatMap(({ places }) => places))])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
      {page.mixes.length > 0 && <h2>Resin, by colour</h2>}
      {page.mixes.map((mix) => (
        <section key={`${mix.calculation} ${mix.places.join()}`} data-part="class-mix">
          <h3>
            {mix.step.title}: {mix.colour ? `${mix.colour}, ` : ''}
            {mix.resin}
          </h3>
          <p>
            Places: {who(mix.places)}. {mix.verdict ? say(mix.verdict.text) : mix.errors.map(say).join(' ')}
          </p>
        </section>
      ))}
      <h2>The sessions, and who stands at which machine</h2>
      {page.timeless && (
        <p>
          No timetable. {say(page.timeless.why)}
          {page.timeless.changes.length > 0 && ` What would help: ${say(page.timeless.changes.join('; '))}.`}
        </p>
      )}
      {page.sessions.map((session) => (
        <section key={session.number} data-part="class-session">
          <h3>
            {session.from} to {session.to}
            {session.who ? ', without students' : ''}
          </h3>
          <ul>
            {session.work.map((work) => (
              <li key={`${work.step} ${work.start}`}>
                {work.from} to {work.to} <strong>{work.title}</strong>
                {session.who ? ' (the teacher)' : work.once ? ' (once for all)' : ''}
                {work.machines.length > 0 && (
                  <>
                    : {work.machines.map(({ what, count }) => `${count} × ${what}`).join('; ')}
                    <ol className={styles.turns}>
                      {work.turns.map((turn) => (
                        <li key={turn.from + turn.places.join()}>
                          {turn.from} {who(turn.places)}
                        </li>
                      ))}
                    </ol>
                  </>
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
      {page.sessions.length > 0 && <Missed page={page} missed={missed} onMissed={onMissed} say={say} />}
    </div>
  );
}

const kindWords = {
  hear: 'must be heard before anything is touched',
  later: 'later',
  once: 'done for all without the student',
  again: 'once more for this place alone',
} as const;

function Missed({ page, missed, onMissed, say }: Props & { say: (text: string) => string }) {
  const [place, setPlace] = useState('');
  const [session, setSession] = useState('');
  return (
    <section data-part="class-missed">
      <h2 className={missed ? undefined : 'no-print'}>Somebody missed a session</h2>
      <div className={`${styles.row} no-print`}>
        <label>
          Place
          <select value={place} onChange={(event) => setPlace(event.target.value)}>
            <option value="">Choose</option>
            {page.places.map(({ id, name }) => (
              <option key={id} value={id}>
                {id}
                {name ? ` ${name}` : ''}
              </option>
            ))}
          </select>
        </label>
        <label>
          Session
          <select value={session} onChange={(event) => setSession(event.target.value)}>
            <option value="">Choose</option>
            {page.sessions
              .filter(({ who }) => who === undefined)
              .map(({ number, from }) => (
                <option key={number} value={number}>
                  {from}
                </option>
              ))}
          </select>
        </label>
        <button
          type="button"
          className={frame.button}
          disabled={place === '' || session === ''}
          onClick={() => onMissed(place, Number(session))}
        >
          What now?
        </button>
      </div>
      <div aria-live="polite">
        {missed && (
          <>
            <p>
              <strong>Place {missed.place}.</strong> {say(missed.verdict.text)}
            </p>
            {missed.dust && (
              <p data-part="class-dust">
                <strong>Danger.</strong> {missed.dust.map(say).join(' ')}
              </p>
            )}
            {missed.twice && (
              <p data-part="class-teacher-twice">
                <strong>Mind.</strong> {missed.twice.map(say).join(' ')}
              </p>
            )}
            <ol>
              {missed.steps.map((step) => (
                <li key={`${step.step} ${step.kind}`}>
                  {step.title}: {kindWords[step.kind]}
                  {step.at ? `, ${step.at}` : ''}. {step.minds.map(say).join(' ')}
                </li>
              ))}
            </ol>
            {missed.others && <p>{say(missed.others.sentence)}</p>}
            <p>Classmates want the machines of those evenings too: the queue above keeps no turn for it.</p>
          </>
        )}
      </div>
    </section>
  );
}
