import form from '../../calculators/view/form.module.css';
import type { StepCard } from '../../method/batch/card.ts';
import type { ShownBatch } from '../../method/batch/shown.ts';
import type { ItemState, TodayItem } from '../../method/batch/today.ts';
import styles from './batch.module.css';
import { StepWords } from './StepWords.tsx';
import { useWhen } from './When.tsx';
import type { Writing } from './writing.ts';

const stateWords: Readonly<Record<ItemState, string>> = {
  going: 'Going on',
  now: 'Now',
  later: 'Not yet',
  overdue: 'Overdue',
  'must-not': 'Do not',
  unknown: 'Not known',
};

/** What stands first: what is going on, what cannot wait, what may be done, what must not. */
const order: readonly ItemState[] = ['going', 'overdue', 'now', 'unknown', 'must-not', 'later'];

interface TodayProps {
  shown: Pick<ShownBatch, 'state' | 'cards'>;
  /** Where a step of the method stands on its page with this case; undefined where it has no page. */
  pageOf: (step: string) => string | undefined;
  writing: Writing;
}

/** What may be done now and what not, each with what to do, and with a button for each that begins or is over. */
export function Today({ shown, pageOf, writing }: TodayProps) {
  const { state, cards } = shown;
  const items = [...state.today].sort((one, other) => order.indexOf(one.state) - order.indexOf(other.state));
  // What a rule forbids of a step that is still to come stops the work now; a step of the list says its own.
  const stops = state.findings.filter(
    ({ level, step }) => level === 'stop' && !items.some((item) => item.step === step && item.state === 'must-not'),
  );
  return (
    <section aria-labelledby="today" data-part="today">
      <h2 id="today">Today</h2>
      {state.finished && <p className={styles.large}>Every step is done on every piece.</p>}
      {stops.length > 0 && (
        <ul className={styles.items} data-part="stops">
          {stops.map(({ rule, step, message, wayOut }) => (
            <li key={`${rule} ${step} ${message}`} className={styles.item} data-state="must-not">
              <p className={styles.mark}>Stop</p>
              <p className={styles.large}>
                {message} {wayOut}
              </p>
            </li>
          ))}
        </ul>
      )}
      <ul className={styles.items}>
        {items.map((item) => (
          <Item
            key={`${item.step} ${item.pieces.join(' ')}`}
            item={item}
            card={cards[item.step]}
            page={pageOf(item.step)}
            writing={writing}
          />
        ))}
      </ul>
      {state.problems.length > 0 && (
        <div className={styles.notice} data-part="problems">
          <h3>To be put right</h3>
          <Problems problems={state.problems.slice(0, openProblems)} />
          {state.problems.length > openProblems && (
            <details>
              <summary className={form.summary}>{state.problems.length - openProblems} more to be put right</summary>
              <Problems problems={state.problems.slice(openProblems)} />
            </details>
          )}
        </div>
      )}
    </section>
  );
}

/** So many of what is to be put right stand open; more are folded. */
const openProblems = 3;

/** What is to be put right; a way out that several have in common is said once, after the last of them. */
function Problems({ problems }: { problems: ShownBatch['state']['problems'] }) {
  return (
    <ul>
      {problems.map(({ text, wayOut, entries }, at) => (
        <li key={`${text} ${entries.join(' ')}`}>
          {text} {wayOut === problems[at + 1]?.wayOut ? '' : wayOut}
        </li>
      ))}
    </ul>
  );
}

interface ItemProps {
  item: TodayItem;
  card: StepCard | undefined;
  page: string | undefined;
  writing: Writing;
}

function Item({ item, card, page, writing }: ItemProps) {
  const { step, number, title, which, state, text, wayOut } = item;
  const usual = state === 'going' || state === 'now' || state === 'overdue';
  return (
    <li className={styles.item} data-state={state} data-step={step}>
      <p className={styles.mark}>{stateWords[state]}</p>
      <h3 className={styles.title}>
        {number} {title}
        {which}
      </h3>
      <p className={styles.large}>
        {text} {wayOut}
      </p>
      {usual && card && <StepWords card={card} number={number} page={page} />}
      {usual ? (
        <Buttons item={item} writing={writing} />
      ) : (
        <details className="no-print">
          <summary className={form.summary}>It was done all the same</summary>
          <Buttons item={item} writing={writing} />
        </details>
      )}
    </li>
  );
}

/** Large buttons for a gloved hand, and under them the time and the pieces, which may be changed. */
function Buttons({ item, writing }: { item: TodayItem; writing: Writing }) {
  const { pieces, typed, write } = writing;
  const field = `${item.step} ${item.pieces.join('-')}`;
  const names = { time: `${field} time`, first: `${field} first`, last: `${field} last` };
  const { text: time, moment: momentOf, fault: early, remark } = useWhen(writing, names.time);
  const [first, last] = [typed.of(names.first) ?? `${item.pieces[0]}`, typed.of(names.last) ?? `${item.pieces[1]}`];
  const touched = Object.values(names).some((name) => typed.of(name) !== undefined);
  const wrong = early ?? faultOf(first, last, pieces);
  const press = (kind: 'started' | 'finished') => {
    const when = momentOf();
    if (wrong || !when) return;
    const span: [number, number] = [Number(first), Number(last)];
    const all = span[0] === 1 && span[1] === pieces;
    write(
      { kind, step: item.step, when, ...(all ? {} : { pieces: span }) },
      `“${item.title}” ${kind} ${when.slice(11, 16)}`,
    );
    typed.drop(...Object.values(names));
  };
  const input = (name: string, value: string, label: string, type: 'text' | 'datetime-local') => (
    <label className={form.label}>
      {label}
      <input
        className={form.input}
        type={type}
        inputMode={type === 'text' ? 'numeric' : undefined}
        value={value}
        aria-invalid={wrong ? true : undefined}
        onChange={(event) => typed.type(name, event.target.value)}
      />
    </label>
  );
  return (
    <div className="no-print">
      <div className={styles.pair}>
        {item.state !== 'going' && (
          <button
            type="button"
            className={styles.big}
            aria-label={`Started: ${item.title}${item.which}`}
            onClick={() => press('started')}
          >
            Started
          </button>
        )}
        <button
          type="button"
          className={item.state === 'going' ? styles.big : styles.second}
          aria-label={`Finished: ${item.title}${item.which}`}
          onClick={() => press('finished')}
        >
          Finished
        </button>
      </div>
      {wrong && (
        <p role="alert" className={form.error}>
          {wrong}
        </p>
      )}
      {!wrong && remark && <p role="status">{remark}</p>}
      <details open={touched || undefined}>
        <summary className={form.summary}>
          {touched ? 'At' : 'Now,'} {time.replace('T', ' ')}
          {pieces > 1 ? `, pieces ${first} to ${last}` : ''}: change
        </summary>
        <div className={styles.fields}>
          {input(names.time, time, 'When', 'datetime-local')}
          {pieces > 1 && input(names.first, first, 'From piece', 'text')}
          {pieces > 1 && input(names.last, last, 'To piece', 'text')}
        </div>
      </details>
    </div>
  );
}

/** What is wrong with the pieces as they stand in the fields. */
function faultOf(first: string, last: string, pieces: number): string | undefined {
  const whole = [first, last].every((text) => /^\d{1,3}$/.test(text.trim()));
  const [from, to] = [Number(first), Number(last)];
  if (whole && from >= 1 && from <= to && to <= pieces) return undefined;
  return `“${first}” to “${last}” are no pieces of this batch. Give whole numbers from 1 to ${pieces}, the first no larger than the last.`;
}
