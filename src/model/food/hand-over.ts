import { type TimedEvent, type Timeline, weakestBasis } from '../evidence/index.ts';
import { day } from '../quantity/seconds.ts';
import type { FoodStatement } from './statement.ts';

/**
 * When a board may go and bear food, counted from the last work on it; undefined where nothing has to cure, or where the days of a part
 * are not known or never end.
 *
 * With a finish on it all is counted from its last coat, the resin too: its pour was no later.
 *
 * @param finish name of the finish, where there is one
 */
export function handOverFromLastWork(statement: FoodStatement, finish: string | undefined): Timeline | undefined {
  const { waits } = statement;
  const days = waits.map(({ fullCureDays, never }) => (never ? null : fullCureDays));
  const known = days.filter((each) => each !== null);
  if (known.length === 0 || known.length < days.length) return undefined;
  const coated = waits.some(({ name }) => name === finish);
  const late =
    coated && waits.length > 1 ? { note: 'The resin is counted from the last coat too: its pour was no later.' } : {};
  return {
    zero: coated ? 'the last coat' : 'the last pour',
    events: eventsAt(Math.max(...known), statement, late),
  };
}

/** The same counted from today; undefined where the days left are not known. */
export function handOverFromToday(statement: FoodStatement): Timeline | undefined {
  const { daysLeft } = statement;
  return daysLeft === null ? undefined : { zero: 'today', events: eventsAt(daysLeft, statement) };
}

/** A board that better bears no food is handed over all the same. */
function eventsAt(days: number, { waits, findings }: FoodStatement, more: Pick<TimedEvent, 'note'> = {}): TimedEvent[] {
  const bearsFood = findings.every(({ level }) => level !== 'better-not');
  const at = {
    at: days * day,
    basis: waits.length === 0 ? ('shop-practice' as const) : weakestBasis(waits.map(({ basis }) => basis)),
    ...more,
  };
  return [
    ...(bearsFood ? [{ id: 'food', label: 'It may serve food, as its label says', ...at }] : []),
    { id: 'hand-over', label: 'It may be handed over', ...at },
  ];
}
