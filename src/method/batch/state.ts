import type { DataProblem } from '../../model/data/problem.ts';
import type { WorkedMethod } from '../case/types.ts';
import { momentText as clockText } from '../plan/closed.ts';
import { timeFindings } from '../plan/findings.ts';
import { type Timetable, timetableOf, withWays } from '../plan/index.ts';
import type { DoneWork } from '../plan/pinned.ts';
import { impossibleWords } from '../plan/words.ts';
import type { Finding } from '../rules/rule.ts';
import type { PlanClock } from '../schedule/calendar.ts';
import { clockFrom, type OpenedCase, openedCase } from './case.ts';
import { type BatchChange, changedTimes, changedWaits } from './changes.ts';
import { type DoneRun, type WorkDone, workDone } from './done.ts';
import { type MeasuredMethod, type ReadableInput, unreadAt, workMeasured } from './measured.ts';
import { headOf } from './merge.ts';
import type { BatchRecord } from './record.ts';
import { type BatchProblem, type Standing, standingOf } from './standing.ts';
import { forbidden, outOfTurn, type TodayItem, todayOf } from './today.ts';
import { refusalOf } from './waits.ts';

/** A step as far as it was done. */
export interface BatchStep {
  id: string;
  number: number;
  title: string;
  /** Pieces that are done, and that are begun. */
  done: number;
  begun: number;
  readable: readonly ReadableInput[];
  /** Those of them that nobody has read and on which a wait after the step rests: until then nobody knows when the next may be done. */
  wanted: readonly ReadableInput[];
}

/** Where a batch stands. Texts hold marked quantities; moments are written as the shop’s clock shows them. */
export interface BatchState {
  ok: true;
  /** Instant (RFC 3339) for which it holds. */
  now: string;
  pieces: number;
  zone: string;
  /** True where nobody told the hours of the shop. */
  assumedHours: boolean;
  /** Set where nobody told how many work at it. */
  assumedPeople?: number;
  steps: readonly BatchStep[];
  today: readonly TodayItem[];
  problems: readonly BatchProblem[];
  /** What is otherwise than it was planned. */
  changes: readonly BatchChange[];
  /** What the rules find now that is about no step alone, or no step that is left. */
  findings: readonly Finding[];
  /** Why what is left cannot be laid in time, a sentence each; empty where it is. */
  untimed: readonly string[];
  /** True where every step is done on every piece. */
  finished: boolean;
}

/** The same with what it was made of, for documents and drawings: not plain data. */
export interface WorkedBatch {
  state: BatchState;
  opened: OpenedCase;
  standing: Standing;
  measured: MeasuredMethod;
  done: WorkDone;
  /** What was done at its actual times, what is left from now on. */
  timetable?: Timetable;
  /** As it was planned on the day on which it was opened. */
  first?: Timetable;
  clock: PlanClock;
  momentText(instant: number): string;
}

export interface BatchOptions {
  /** Answers kept from one asking to the next. */
  memo?: Map<string, unknown>;
  /** True to leave out the timetables, which take longest: what may be done now does not need them. */
  withoutTimetable?: boolean;
}

/** A batch worked out, or what is wrong with its method, its shop record or its case. */
export type BatchAnswer = { ok: true; worked: WorkedBatch } | { ok: false; problems: readonly DataProblem[] };

/**
 * Where a batch stands at a moment: its method worked out with what was measured, done work where it was, what is left laid from now on.
 *
 * @param now instant (RFC 3339)
 */
export async function batchState(
  batch: BatchRecord,
  now: string,
  { memo = new Map(), withoutTimetable = false }: BatchOptions = {},
): Promise<BatchAnswer> {
  const read = await openedCase(batch);
  if (!read.ok) return read;
  const { opened } = read;
  const clock = await clockFrom(opened.hours.zone, batch.opened);
  const momentText = (time: number) => clockText(clock, Math.round((time - Date.parse(clock.zero)) / 60_000));
  const standing = standingOf(batch.entries);
  const at = Date.parse(now);
  const asked = await workMeasured(opened, standing.holding, memo, at);
  if (!asked.ok) return asked;
  const { measured } = asked;
  const done = workDone(measured.worked, standing.holding, at, momentText);
  const first = withoutTimetable ? undefined : await firstPlan(batch, opened, measured.planned, memo);
  const stops = forbidden(measured);
  const today = todayOf(measured, done, stops, at, momentText);
  const unsure = today.filter(({ state }) => state === 'unknown');
  const late =
    unsure.length > 0
      ? { untimed: unsure.map(({ title, text }) => `“${title}”: ${text}`) }
      : withoutTimetable
        ? undefined
        : await laidFrom(opened, measured, done, now);
  const timetable = late && 'timetable' in late ? late.timetable : undefined;
  const { worked } = measured;
  const left = worked.steps.filter(({ id }) => !isDone(done, worked, id));
  const isLeft = (step: string | undefined) => step === undefined || left.some(({ id }) => id === step);
  const state: BatchState = {
    ok: true,
    now,
    pieces: worked.pieces,
    zone: opened.hours.zone,
    assumedHours: opened.assumedHours,
    ...(opened.assumedPeople === undefined ? {} : { assumedPeople: opened.assumedPeople }),
    steps: worked.steps.map(({ id, record }, place) => {
      const works = (done.works.get(id) ?? []).slice(1);
      return {
        id,
        number: place + 1,
        title: record.title,
        done: works.filter(({ end }) => end !== undefined).length,
        begun: works.filter(({ start, end }) => start !== undefined && end === undefined).length,
        readable: measured.readable.get(id) ?? [],
        wanted:
          works.some(({ start, end }) => start !== undefined || end !== undefined) &&
          left.some(({ after }) => after.some((link) => link.step === id))
            ? unreadAt(measured, id).flatMap(({ inputs }) => inputs)
            : [],
      };
    }),
    today,
    problems: [...standing.problems, ...done.problems, ...measured.problems, ...outOfTurn(measured, done, momentText)],
    changes: [
      ...changedWaits(measured, done, momentText),
      ...changedTimes(worked, first, timetable, done.runs, momentText),
    ],
    findings: [...stops, ...(timetable ? timeFindings(worked, timetable) : [])].filter(({ step }) => isLeft(step)),
    untimed: late && 'untimed' in late ? late.untimed : [],
    finished: left.length === 0,
  };
  return {
    ok: true,
    worked: {
      state,
      opened,
      standing,
      measured,
      done,
      ...(timetable ? { timetable } : {}),
      ...(first ? { first } : {}),
      clock,
      momentText,
    },
  };
}

/** Whether a step is done on every piece, at times that are not in doubt. */
export const isDone = ({ works }: WorkDone, { pieces }: WorkedMethod, step: string): boolean =>
  Array.from({ length: pieces }, (_, at) => works.get(step)?.[at + 1]).every(
    (work) => work?.end !== undefined && work.doubt === undefined,
  );

/** The plan as it was laid when the batch was opened; undefined where there was none. */
async function firstPlan(
  batch: BatchRecord,
  { hours, people, start }: OpenedCase,
  planned: WorkedMethod,
  memo: Map<string, unknown>,
): Promise<Timetable | undefined> {
  const key = `first plan ${headOf(batch)}`;
  if (memo.has(key)) return memo.get(key) as Timetable | undefined;
  const refused = planned.steps.some(({ after }) =>
    after.some((link) => refusalOf(planned, planned, link) !== undefined),
  );
  const laid = refused ? undefined : await timetableOf(planned, { start, hours, people });
  const plan = laid?.ok ? laid : undefined;
  memo.set(key, plan);
  return plan;
}

/** What is left, laid in time from now on; or why it cannot be. No plan is laid over what nobody knows. */
async function laidFrom(
  { hours, people, start }: OpenedCase,
  { worked, at }: MeasuredMethod,
  done: WorkDone,
  now: string,
): Promise<{ timetable: Timetable } | { untimed: string[] }> {
  const refusals = worked.steps.flatMap(({ id, record, after }) =>
    isDone(done, worked, id)
      ? []
      : after.flatMap((link) => {
          const refusal = refusalOf(worked, at(link.step), link);
          return refusal === undefined ? [] : [`“${record.title}”: ${refusal}`];
        }),
  );
  if (refusals.length > 0) return { untimed: [...new Set(refusals)] };
  const works = done.runs.map(doneWork);
  const begun = done.runs.map(({ start: from, end }) => from ?? (end as number));
  const clock = await clockFrom(hours.zone, new Date(Math.min(...begun, Date.parse(now))).toISOString());
  const day = clock.momentAt(0).date;
  const laid = await timetableOf(worked, {
    start: [day, start.slice(0, 10)].sort()[0] as string,
    hours,
    people,
    done: works,
    now,
  });
  if (laid.ok) return { timetable: laid };
  const { why, changes } = impossibleWords(worked, withWays(laid));
  return { untimed: [why, ...changes.map((change) => `It would take ${change}.`)] };
}

/** A run as the plan pins it. One whose beginning nobody wrote down counts from its end. */
function doneWork({ step, pieces, start, end }: DoneRun): DoneWork {
  const from = new Date(start ?? (end as number)).toISOString();
  return { step, pieces, from, ...(end === undefined ? {} : { to: new Date(end).toISOString() }) };
}
