import type { WorkedLink, WorkedMethod } from '../case/types.ts';
import type { Timetable } from '../plan/index.ts';
import { timeWords } from '../plan/words.ts';
import type { DoneRun, WorkDone } from './done.ts';
import type { MeasuredMethod } from './measured.ts';
import { waitOf } from './waits.ts';

/** Something that is otherwise than it was planned, a sentence; old and new are marked quantities or moments of the shop’s clock. */
export interface BatchChange {
  step: string;
  what: 'done' | 'wait' | 'start';
  old: string;
  new: string;
  words: string;
}

const minute = 60_000;

/** Plans are laid to the quarter of an hour: less is no change worth saying, ms. */
const worthSaying = 15 * minute;

const rangeWords = ({ least, most }: Pick<WorkedLink, 'least' | 'most'>): string =>
  [least === undefined ? '' : `at least ${timeWords(least)}`, most === undefined ? '' : `at most ${timeWords(most)}`]
    .filter(Boolean)
    .join(' and ');

/** Waits and windows that what was measured has made longer or shorter, with their times where they have begun. */
export function changedWaits(
  measured: MeasuredMethod,
  done: WorkDone,
  momentText: (time: number) => string,
): BatchChange[] {
  const { planned, worked } = measured;
  const titleOf = (id: string) => worked.steps.find((step) => step.id === id)?.record.title ?? id;
  return worked.steps.flatMap((step, at) =>
    step.after.flatMap((link, place): BatchChange[] => {
      const before = planned.steps[at]?.after[place];
      if (!before || (before.least === link.least && before.most === link.most)) return [];
      const [old, now] = [rangeWords(before), rangeWords(link)];
      if (now === '') return [];
      const first = done.runs.find((run) => run.step === link.step && run.end !== undefined)?.pieces[0];
      const wait = first === undefined ? undefined : waitOf(measured, done, link, first);
      const times =
        wait?.kind === 'times'
          ? ` It may be begun from ${momentText(wait.opens)}${wait.closes === undefined ? '' : `, and by ${momentText(wait.closes)}`}.`
          : '';
      return [
        {
          step: step.id,
          what: 'wait',
          old,
          new: now,
          words: `“${step.record.title}” comes ${now} after “${titleOf(link.step)}”; the plan said ${old}.${times}`,
        },
      ];
    }),
  );
}

/** Instant of a minute of a timetable, ms. */
export const instantOf = ({ clock }: Pick<Timetable, 'clock'>, minutes: number): number =>
  Date.parse(clock.zero) + minutes * minute;

const apart = (time: number) => `${timeWords(Math.abs(Math.round(time / minute)))} ${time > 0 ? 'later' : 'earlier'}`;

/** Steps that were begun, or are now planned, at another time than the first plan had them. */
export function changedTimes(
  worked: WorkedMethod,
  first: Timetable | undefined,
  now: Timetable | undefined,
  runs: readonly DoneRun[],
  momentText: (time: number) => string,
): BatchChange[] {
  if (!first) return [];
  return worked.steps.flatMap(({ id, record }): BatchChange[] => {
    const planned = first.steps.find((step) => step.id === id);
    if (!planned) return [];
    const before = instantOf(first, planned.start);
    const begun = runs
      .filter(({ step, doubt }) => step === id && doubt === undefined)
      .map(({ start, end }) => start ?? (end as number));
    const later = now?.steps.find((step) => step.id === id);
    const after = begun.length > 0 ? Math.min(...begun) : now && later ? instantOf(now, later.start) : undefined;
    if (after === undefined || Math.abs(after - before) < worthSaying) return [];
    const [old, fresh] = [momentText(before), momentText(after)];
    const isDone = begun.length > 0;
    return [
      {
        step: id,
        what: isDone ? 'done' : 'start',
        old,
        new: fresh,
        words: isDone
          ? `“${record.title}” was begun ${fresh}, ${apart(after - before)} than planned (${old}).`
          : `“${record.title}” is now planned ${fresh} instead of ${old}, ${apart(after - before)}.`,
      },
    ];
  });
}
