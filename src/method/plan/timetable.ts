import type { WorkedLink, WorkedMethod } from '../case/types.ts';
import { type Moment, type PlanClock, planClock } from '../schedule/calendar.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { type Planned, type Problem, type Schedule, type Span, schedule, withWaysOut } from '../schedule/index.ts';
import { handsResource, type Means, type ProblemOfMethod, problemOf, type Sitting } from './activities.ts';
import { bounded, type StepBounds } from './bounds.ts';
import { bundled } from './bundle.ts';
import { type Closed, closedThroughout } from './closed.ts';
import { type DoneWork, minuteOf, pinnedWork } from './pinned.ts';
import { roundsOf, setUpsOf } from './rounds.ts';

/** What a plan is asked for. */
export interface TimetableOptions {
  /** A day, 2027-01-12, or a local time, 2027-01-12 18:30: nothing begins before it. */
  start: string;
  /** A day or a local time by which all is done; the plan then begins as late as it can. */
  end?: string;
  hours: OpeningHours;
  people: number;
  /** Work that was done, or is going on, none of it before the start; what is left is laid from `now` on (an instant, RFC 3339). */
  done?: readonly DoneWork[];
  now?: string;
  /** True where nobody named a day: `start` is then any day of the right kind, and words count the days of the plan. */
  relative?: boolean;
  /** Minutes that every session is open longer than its hours say: what would be, not what is. */
  longer?: number;
  /** Steps that are kept between minutes of the plan. */
  within?: ReadonlyMap<string, StepBounds>;
  /** How hard to look for a shorter plan; the same number gives the same plan everywhere. */
  nodes?: number;
}

/** A stretch of work on some pieces. */
export interface Work {
  step: string;
  pieces: readonly [number, number];
  /** Minutes from the plan's zero. */
  start: number;
  end: number;
  /** Pairs of hands that it takes. */
  people: number;
}

/** When a step is done. */
export interface PlannedStep {
  id: string;
  start: number;
  end: number;
  /** Hands-on minutes over all pieces and people. */
  hands: number;
  work: readonly Work[];
  /** Minutes that it may slip while the end stays. */
  slack: number;
}

/** A window that could not be kept: what is done instead. */
export interface SecondWayTaken {
  step: string;
  after: string;
  do: string;
  abrades: boolean;
  addsMinutes: number;
}

/** A plan in time. */
export interface Timetable {
  ok: true;
  clock: PlanClock;
  momentAt(minutes: number): Moment;
  start: number;
  end: number;
  steps: readonly PlannedStep[];
  open: readonly Span[];
  secondWays: readonly SecondWayTaken[];
  /** Whether no plan is shorter, and else below which length none can be. */
  proved: boolean;
  lowerBound: number;
  made: ProblemOfMethod;
  planned: Planned;
}

/** There is no plan: why, in the scheduler's own terms, with the way back to the method. */
export interface NoTimetable {
  ok: false;
  clock: PlanClock;
  made: ProblemOfMethod;
  /** Without its ways out, which take far longer: `withWays` looks for them. */
  why: Extract<Schedule, { ok: false }>['why'];
  /** How hard was looked. */
  nodes: number;
  /** Where nobody is ever there in the time that was looked at. */
  closed?: Closed;
}

/** The same with the smallest changes that would make a plan. */
export const withWays = (none: NoTimetable): NoTimetable =>
  none.closed ? none : { ...none, why: withWaysOut(none.made.problem as Problem, none.why, none.nodes) };

const day = 24 * 60;
/** No plan is laid further ahead than three years. */
const furthest = 3 * 365 * day;

/** Minutes within which the work surely fits: every wait, and the hands-on time in the shop's hours three times over. */
function firstHorizon(worked: WorkedMethod): number {
  const waits = worked.steps.reduce((sum, { after }) => sum + Math.max(0, ...after.map(({ least = 0 }) => least)), 0);
  return Math.min(furthest, Math.ceil((waits + 8 * 7 * day) / day) * day);
}

/** Links of a conflict whose windows close too early, each with the step that waits. */
function tooLate({ why, made }: NoTimetable): { link: WorkedLink; step: string }[] {
  return why.constraints.flatMap((constraint) => {
    if (constraint.kind !== 'most') return [];
    const { link, step } = made.lags[constraint.lag] ?? {};
    return link && step !== undefined ? [{ link, step }] : [];
  });
}

/** Steps around a window that closes too early and do not yet take their pieces one by one. */
function toParts(none: NoTimetable, alone: ReadonlySet<string>): string[] {
  return tooLate(none)
    .flatMap(({ link, step }) => [link.step, step])
    .filter(
      (id) =>
        !alone.has(id) &&
        none.made.sittings.some(({ step, pieces: [first, last], lanes }) => step === id && last - first >= lanes),
    );
}

/** The link of a conflict that has a second way, the quickest first. */
function givenUp(none: NoTimetable, taken: ReadonlySet<WorkedLink>): WorkedLink | undefined {
  const adds = ({ missed }: WorkedLink) => missed?.addsMinutes ?? 0;
  return tooLate(none)
    .map(({ link }) => link)
    .filter((link) => link.missed && !taken.has(link))
    .sort((one, two) => adds(one) - adds(two))[0];
}

const stepsBy = (sittings: readonly Sitting[]) => {
  const by = new Map<string, Sitting[]>();
  for (const sitting of sittings) by.set(sitting.step, [...(by.get(sitting.step) ?? []), sitting]);
  return by;
};

function plannedSteps(worked: WorkedMethod, made: ProblemOfMethod, planned: Planned): PlannedStep[] {
  const placed = new Map(planned.placements.map(({ id, pieces }) => [id, pieces]));
  const by = stepsBy(made.sittings);
  const taken = new Map(made.problem.activities.map(({ id, uses }) => [id, uses[handsResource] ?? 0]));
  const rounds = roundsOf(worked);
  return worked.steps.map(({ id, people, hands }): PlannedStep => {
    const sittings = by.get(id) ?? [];
    const work = sittings.flatMap((sitting) =>
      (placed.get(sitting.id) ?? []).map(
        ({ start, end }): Work => ({
          step: id,
          pieces: sitting.pieces,
          start,
          end,
          people: taken.get(sitting.id) ?? 0,
        }),
      ),
    );
    return {
      id,
      start: Math.min(...work.map(({ start }) => start)),
      end: Math.max(...work.map(({ end }) => end)),
      hands: people * (hands.setUp * setUpsOf(rounds, id, worked.pieces) + hands.each * worked.pieces),
      work,
      slack: Math.min(...sittings.map((sitting) => planned.slack[sitting.id] ?? 0)),
    };
  });
}

const withTime = (text: string, time: string) => (/^\d{4}-\d\d-\d\d$/.test(text) ? `${text} ${time}` : text);

/** Every opening closes so much later, as far as the next one and the horizon leave room. */
function openLonger(open: readonly Span[], longer: number, horizon: number): readonly Span[] {
  return open.map(({ start, end }, at) => ({
    start,
    end: Math.max(end, Math.min(end + longer, open[at + 1]?.start ?? horizon, horizon)),
  }));
}

/**
 * Lay a worked method out in time: hands in the hours that the shop is open, cures while nobody is there, every window kept or its second way
 * taken and said.
 *
 * @throws ProblemError where start, end or hours cannot be read
 */
export async function timetableOf(worked: WorkedMethod, options: TimetableOptions): Promise<Timetable | NoTimetable> {
  const { hours, people, within, nodes = 2000 } = options;
  const dated = await planClock(hours.zone, withTime(options.start, '00:00'));
  const countedFrom = (minutes: number): PlanClock =>
    options.relative ? { ...dated, firstDay: dated.momentAt(minutes).date } : dated;
  const clock = countedFrom(0);
  const end = options.end === undefined ? undefined : clock.minutesAt(withTime(options.end, '23:59'));
  const now = options.now === undefined ? undefined : minuteOf(clock, options.now, Math.ceil);
  const pinned = (options.done ?? []).map((work) => pinnedWork(clock, work));
  const left = { pinned, ...(now === undefined ? {} : { now: Math.max(0, now) }) };
  const taken = new Set<WorkedLink>();
  const alone = new Set<string>();
  for (let horizon = end ?? Math.max(0, now ?? 0) + firstHorizon(worked); ; ) {
    const open = openLonger(clock.openSpans(hours, horizon), options.longer ?? 0, horizon);
    if (end === undefined && open.length === 0 && horizon < furthest) {
      horizon = Math.min(furthest, horizon * 3);
      continue;
    }
    const means: Means = { people, open, horizon, ...left, ...(end === undefined ? {} : { latest: end }) };
    const free = problemOf(worked, means, taken, alone);
    const made = within ? bounded(free, within) : free;
    const how = { nodes, ...(end === undefined ? {} : { anchor: 'end' as const, at: end }) };
    const found = schedule(made.problem as Problem, { ...how, explain: 'cause' });
    if (found.ok) {
      const { made: told, planned } = bundled(made, found, how);
      return laidOut(worked, countedFrom(planned.first), told, planned, open, taken);
    }
    const closed = open.length > 0 ? undefined : closedThroughout(clock, hours, horizon);
    const none: NoTimetable = { ok: false, clock, made, why: found.why, nodes, ...(closed ? { closed } : {}) };
    if (closed) return none;
    // A window that closes on a long sitting is first met by shorter ones, and given up only then.
    const parts = toParts(none, alone);
    for (const id of parts) alone.add(id);
    if (parts.length > 0) continue;
    const gone = givenUp(none, taken);
    if (gone) {
      taken.add(gone);
      continue;
    }
    const tooShort = found.why.constraints.length === 0 || found.why.constraints.some(({ kind }) => kind === 'horizon');
    if (end !== undefined || !tooShort || horizon >= furthest) return none;
    horizon = Math.min(furthest, horizon * 3);
  }
}

function laidOut(
  worked: WorkedMethod,
  clock: PlanClock,
  made: ProblemOfMethod,
  planned: Planned,
  open: readonly Span[],
  taken: ReadonlySet<WorkedLink>,
): Timetable {
  return {
    ok: true,
    clock,
    momentAt: (minutes) => clock.momentAt(minutes),
    start: planned.first,
    end: planned.last,
    steps: plannedSteps(worked, made, planned),
    open,
    secondWays: worked.steps.flatMap(({ id, after }) =>
      after.flatMap((link) =>
        taken.has(link) && link.missed
          ? [
              {
                step: id,
                after: link.step,
                do: link.missed.do,
                abrades: link.missed.abrades ?? false,
                addsMinutes: link.missed.addsMinutes ?? 0,
              },
            ]
          : [],
      ),
    ),
    proved: planned.proved,
    lowerBound: planned.lowerBound,
    made,
    planned,
  };
}
