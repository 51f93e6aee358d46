import { memo, useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { useUnits } from '../../calculators/view/units.tsx';
import type { MethodPage, ShownStep, ShownTimetable } from '../../method/page/types.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { ScrollBox } from '../page/ScrollBox.tsx';
import styles from './method.module.css';
import { dayText, minutesText, shortDay } from './time-words.ts';

/** Whether the timetable that stands is still the one of the case before. */
const isOfBefore = ({ toCome }: MethodPage) => toCome === 'judgement' || toCome === 'timetable';

/** When what is done: drawn, as a list of sessions, and what makes it so long. */
export const Timetable = memo(function Timetable({ page }: { page: MethodPage }) {
  const units = useUnits();
  const { timetable, impossible } = page;
  if (impossible)
    return (
      <>
        <p>
          <strong>There is no timetable.</strong> {inReaderUnits(impossible.why, units)}
        </p>
        {impossible.changes.length > 0 && (
          <>
            <p>{impossible.changes.length === 1 ? 'This would help:' : 'Any of these would help:'}</p>
            <ul>
              {impossible.changes.map((change) => (
                <li key={change}>{inReaderUnits(change, units)}</li>
              ))}
            </ul>
          </>
        )}
      </>
    );
  if (!timetable) return <p role="status">The timetable is being worked out …</p>;
  return (
    <>
      {isOfBefore(page) && (
        <p role="status">This is the timetable of the numbers before; the new one is being worked out …</p>
      )}
      <Assumed timetable={timetable} />
      <Drawn steps={page.steps} timetable={timetable} />
      <Sessions steps={page.steps} pieces={page.makes.pieces} timetable={timetable} />
      {!timetable.relative && !isOfBefore(page) && <AsCalendar page={page} />}
      <Reasons timetable={timetable} />
    </>
  );
}, sameTimetable);

/** The sessions as a file that a calendar takes in. */
function AsCalendar({ page }: { page: MethodPage }) {
  const units = useUnits();
  const [failed, setFailed] = useState(false);
  const take = async () => {
    try {
      const { calendarOfPage } = await import('../../method/plan/calendar-file.ts');
      const text = calendarOfPage(page, units);
      setFailed(false);
      if (text !== undefined)
        download(`${page.file.replace(/^.*\/|\.ya?ml$/g, '')}.ics`, 'text/calendar;charset=utf-8', text);
    } catch {
      setFailed(true);
    }
  };
  return (
    <p className="no-print">
      <button type="button" className={frame.button} onClick={() => void take()}>
        Take the sessions as a calendar file
      </button>
      <span> Its times are those of the clock where the work is done, whatever the zone of your calendar.</span>
      {failed && <span role="status"> Its code could not be fetched: there may be no connection. Try again.</span>}
    </p>
  );
}

/** What of the timetable nobody told. */
function Assumed({ timetable: { relative, assumedHours, assumedPeople } }: { timetable: ShownTimetable }) {
  const parts = [
    ...(assumedHours ? ['hours of Monday to Friday, 9:00 to 17:00'] : []),
    ...(assumedPeople === undefined ? [] : [`${assumedPeople} people`]),
    ...(relative ? ['a start on a Monday'] : []),
  ];
  if (parts.length === 0) return null;
  return (
    <p className={styles.assumed}>
      <strong>Assumed:</strong> {parts.join('; ')}.
      <span className="no-print">
        {' '}
        Say above what holds for you{assumedHours && ', or keep a shop record, whose hours then stand here'}.
      </span>
    </p>
  );
}

const row = 22;
const gutter = 34;
const head = 26;
const width = 900;

/** A bar no thinner than the eye sees. */
const barOf = (from: number, to: number) => ({ x: from, width: Math.max(2.5, to - from) });

interface DrawnProps {
  steps: readonly Pick<ShownStep, 'id' | 'number'>[];
  timetable: Pick<
    ShownTimetable,
    'start' | 'end' | 'open' | 'moments' | 'sessions' | 'waits' | 'relative' | 'critical'
  >;
  /** The moment at which it is looked at, in minutes of the plan. */
  now?: number;
}

const sameIn = <Whole,>(one: Whole, other: Whole, ...parts: readonly (keyof Whole)[]) =>
  parts.every((part) => one[part] === other[part]);

type Named = Pick<ShownStep, 'id' | 'number'> & { title?: string };
/** A step whose numbers changed is called as before: what only names it need not be drawn again. */
const sameNames = (one: readonly Named[], other: readonly Named[]) =>
  one === other ||
  (one.length === other.length && one.every(({ id, title }, at) => id === other[at]?.id && title === other[at]?.title));

function sameTimetable({ page }: { page: MethodPage }, { page: other }: { page: MethodPage }): boolean {
  const { timetable, impossible, makes, steps } = page;
  return (
    timetable === other.timetable &&
    impossible === other.impossible &&
    makes.pieces === other.makes.pieces &&
    isOfBefore(page) === isOfBefore(other) &&
    sameNames(steps, other.steps)
  );
}

const sameDrawing = (one: DrawnProps, other: DrawnProps) =>
  one.now === other.now &&
  sameNames(one.steps, other.steps) &&
  sameIn(
    one.timetable,
    other.timetable,
    'start',
    'end',
    'open',
    'moments',
    'sessions',
    'waits',
    'relative',
    'critical',
  );

const sameSessions = (one: SessionsProps, other: SessionsProps) =>
  one.pieces === other.pieces &&
  sameNames(one.steps, other.steps) &&
  sameIn(one.timetable, other.timetable, 'sessions', 'moments', 'relative');

/**
 * The plan as bars: a row a step, work solid, waits as thin lines, closed hours shaded. Steps that make the plan as long as it is have a mark in
 * front of their number and a thick edge.
 */
export const Drawn = memo(function Drawn({ steps, timetable, now }: DrawnProps) {
  const units = useUnits();
  const { start, end, open, moments, sessions, waits, relative } = timetable;
  const length = Math.max(1, end - start);
  const x = (minute: number) => gutter + ((minute - start) / length) * (width - gutter - 8);
  const at = new Map(steps.map(({ id }, place) => [id, place]));
  const y = (id: string) => head + (at.get(id) ?? 0) * row;
  const height = head + steps.length * row + 4;
  const work = sessions.flatMap((session) => session.work);
  const critical = new Set(timetable.critical.map(({ step }) => step));
  const days = daysAlong(timetable, x);
  return (
    <figure className={styles.timetable}>
      <ScrollBox label="Timetable">
        <svg
          viewBox={`0 0 ${width} ${height}`}
          className={styles.chart}
          role="img"
          aria-label={`Timetable of ${steps.length} steps from ${dayText(moments[start] as never, relative)} to ${dayText(moments[end] as never, relative)}, ${minutesText(length, units)} in all. The list below says the same.`}
        >
          <rect className={styles.closed} x={gutter} y={head} width={width - gutter - 8} height={steps.length * row} />
          {open.map((span) => {
            const [from, to] = [x(Math.max(start, span.start)), x(Math.min(end, span.end))];
            return (
              <rect
                key={span.start}
                className={styles.open}
                x={from}
                y={head}
                width={to - from}
                height={steps.length * row}
              />
            );
          })}
          {days.map(({ minute, text }) => (
            <g key={minute}>
              <line className={styles.day} x1={x(minute)} x2={x(minute)} y1={head - 6} y2={height - 4} />
              <text
                className={styles.dayText}
                // At the end of the plan there is room on its left alone.
                {...(x(minute) > width - dayRoom ? { x: x(minute) - 3, textAnchor: 'end' } : { x: x(minute) + 3 })}
                y={head - 9}
              >
                {text}
              </text>
            </g>
          ))}
          {steps.map(({ id, number }) => (
            <text key={id} className={styles.rowNumber} x={gutter - 6} y={y(id) + row * 0.68} textAnchor="end">
              {critical.has(id) ? '▸ ' : ''}
              {number}
            </text>
          ))}
          {waits.map(({ step, until, start: from, end: to }) => (
            <line
              key={`${step} ${until}`}
              className={styles.waitLine}
              x1={x(from)}
              x2={x(Math.min(to, end))}
              y1={y(step) + row / 2}
              y2={y(step) + row / 2}
            />
          ))}
          {work.map(({ step, pieces, start: from, end: to, critical: holds }) => (
            <rect
              key={`${step} ${pieces[0]} ${from}`}
              className={styles.work}
              data-critical={holds || undefined}
              {...barOf(x(from), x(to))}
              y={y(step) + 4}
              height={row - 8}
            />
          ))}
          {now !== undefined && (
            <g>
              <line className={styles.now} x1={x(now)} x2={x(now)} y1={head - 4} y2={height - 4} />
              <text className={styles.dayText} x={x(now)} y={height - 6} textAnchor="middle">
                now
              </text>
            </g>
          )}
        </svg>
      </ScrollBox>
      <figcaption className="small quiet">
        A row a step, by its number. Bars: work; dashed lines: waits that need nobody; shaded: nobody is there. Times
        are by the clock: where several share a step it takes less than the work that it is.
        {critical.size > 0 && ' ▸ and a thick edge: it makes the plan as long as it is.'}
      </figcaption>
    </figure>
  );
}, sameDrawing);

/** Room that the name of a day takes, in the units of the drawing. */
const dayRoom = 46;

/** Days to write along the axis: those of sessions, as many as there is room for. */
function daysAlong({ sessions, moments, relative }: DrawnProps['timetable'], x: (minute: number) => number) {
  let last = Number.NEGATIVE_INFINITY;
  const seen = new Set<string>();
  return sessions.flatMap(({ work }) => {
    const minute = work[0]?.start;
    const moment = minute === undefined ? undefined : moments[minute];
    if (minute === undefined || !moment || seen.has(moment.date) || x(minute) - last < dayRoom) return [];
    seen.add(moment.date);
    last = x(minute);
    return [{ minute, text: `${relative ? 'day ' : ''}${shortDay(moment, relative)}` }];
  });
}

const piecesText = ([first, last]: readonly [number, number], all: number): string => {
  if (first === 1 && last === all) return '';
  return first === last ? `piece ${first}` : `pieces ${first} to ${last}`;
};

interface SessionsProps {
  steps: readonly Pick<ShownStep, 'id' | 'number' | 'title'>[];
  /** How many are made. */
  pieces: number;
  timetable: Pick<ShownTimetable, 'sessions' | 'moments' | 'relative'>;
}

/** The same as a table: what to do in each session, in order. */
const Sessions = memo(function Sessions({ steps, pieces: made, timetable }: SessionsProps) {
  const units = useUnits();
  const { sessions, moments, relative } = timetable;
  const byId = new Map(steps.map((step) => [step.id, step]));
  return (
    <ol className={styles.sessions}>
      {sessions.map(({ start, work }) => {
        const [first, last] = [moments[work[0]?.start ?? start], moments[work.at(-1)?.end ?? start]];
        return (
          <li key={start}>
            <h3>
              {first && `${dayText(first, relative, true)}, ${first.time}`}
              {last && ` to ${last.time}`}
            </h3>
            <table>
              <thead className="visually-hidden">
                <tr>
                  <th scope="col">From</th>
                  <th scope="col">Step</th>
                  <th scope="col">Takes</th>
                </tr>
              </thead>
              <tbody>
                {work.map((each) => {
                  const step = byId.get(each.step);
                  const pieces = piecesText(each.pieces, made);
                  return (
                    <tr key={`${each.step} ${each.pieces[0]} ${each.start}`} data-critical={each.critical || undefined}>
                      <td className={styles.clock}>{moments[each.start]?.time}</td>
                      <td>
                        {each.critical && (
                          <span className={styles.mark} title="The plan is longer if this is later">
                            ▸<span className="visually-hidden">makes the plan as long as it is: </span>
                          </span>
                        )}{' '}
                        <a href={`#step-${each.step}`}>
                          {step?.number}. {step && inReaderUnits(step.title, units)}
                        </a>
                        {pieces && ` (${pieces})`}
                        {each.people > 1 && `, ${each.people} people`}
                      </td>
                      <td className={styles.clock}>{minutesText(each.end - each.start, units)}</td>
                    </tr>
                  );
                })}
              </tbody>
            </table>
          </li>
        );
      })}
    </ol>
  );
}, sameSessions);

/** What makes the plan so long, and what would shorten it. */
function Reasons({ timetable: { critical, advice, limits, proved, known } }: { timetable: ShownTimetable }) {
  const units = useUnits();
  const held = critical.filter(({ heldBy, waited, resource }) => heldBy !== 'wait' || waited > 0 || resource);
  return (
    <details className={styles.rests}>
      <summary>What makes it so long</summary>
      <p>
        {proved ? 'No plan is shorter with these hands, tools and hours.' : known && inReaderUnits(known, units)}
        {limits &&
          ` In all ${minutesText(limits.work, units)} of work, ${minutesText(limits.waits, units)} of waiting for wood and resin, ${minutesText(limits.closed, units)} of closed hours.`}
      </p>
      <ul>
        {held.map(({ words, start, step }) => (
          <li key={`${step} ${start}`}>{inReaderUnits(words, units)}</li>
        ))}
      </ul>
      {advice.map((sentence) => (
        <p key={sentence}>{inReaderUnits(sentence, units)}</p>
      ))}
    </details>
  );
}
