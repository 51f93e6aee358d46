import type { WorkedLink, WorkedMethod, WorkedStep, WorkedTool } from '../case/types.ts';
import type { Activity, Hold, Lag, Problem, Span } from '../schedule/index.ts';
import { machineKinds } from '../shop/machines.ts';
import { type PinnedWork, pinnedSitting, restOf } from './pinned.ts';
import { roundsOf } from './rounds.ts';

/** A sitting of a step: the pieces that are done in one go. */
export interface Sitting {
  id: string;
  step: string;
  /** First and last piece, from 1. */
  pieces: readonly [number, number];
  /** min of setting up that it begins with. */
  setUp: number;
  /** min for one piece. */
  each: number;
  /** Pieces at a time. */
  lanes: number;
  /** Actual minutes of one that was done, or is going on. */
  pinned?: { start: number; end: number; going: boolean };
}

/** A wait of the problem, and the link of the method that it comes from. */
export interface LinkedLag extends Lag {
  link?: WorkedLink;
  /** The step that waits. */
  step?: string;
}

/** A method as a problem for the scheduler, with the way back. */
export interface ProblemOfMethod {
  problem: Problem;
  sittings: readonly Sitting[];
  lags: readonly LinkedLag[];
}

/** Names of resources and of the calendar, apart from those of tools. */
export const handsResource = 'hands';
export const shopHours = 'shop hours';

/** What there is for the work. */
export interface Means {
  people: number;
  /** Hours in which somebody is there, minutes from zero. */
  open: readonly Span[];
  horizon: number;
  /** Minutes after which nothing may end; for a wanted end. */
  latest?: number;
  /** Work that stays where it was, and the minute that it is: nothing else begins before it. */
  pinned?: readonly PinnedWork[];
  now?: number;
}

/** Kinds of tool of which there are only so many, told or not; of others a count binds only where it is told. */
const countedKinds: readonly string[] = [
  ...machineKinds,
  'router-bit',
  'drill-bit',
  'mould',
  'clamp',
  'template',
  'scale',
  'torch',
  'heat-gun',
  'polisher',
];

function isCounted({ record, from }: WorkedTool): boolean {
  return record.count !== undefined || from === 'shop' || countedKinds.includes(record.kind);
}

/** Longest sitting, min: after an hour somebody looks up, and the next person may take the machine. */
const longestSitting = 60;

const lengthOf = ({ start, end }: Span) => end - start;

/** How many pieces of a step go at a time: as many as there are hands and tools for. */
function lanesOf(step: WorkedStep, tools: readonly WorkedTool[], means: Means, pieces: number): number {
  const rooms = [Math.floor(means.people / step.people), ...tools.map(({ count }) => count), pieces];
  return Math.max(1, Math.min(...rooms));
}

/**
 * Sittings of the pieces of a step from the first to the last, round by round, without their names.
 *
 * @param round pieces that go through it together; all where it shares nothing of which there is too little
 */
function sittingsOf(
  step: WorkedStep,
  lanes: number,
  means: Means,
  [from, to]: readonly [number, number],
  round: number,
  alone: boolean,
): Omit<Sitting, 'id'>[] {
  const { setUp, each } = step.hands;
  const opening = Math.max(0, ...means.open.map(lengthOf));
  const room = Math.max(each, Math.min(longestSitting, opening - setUp));
  const whole = each === 0 || step.interrupt === 'never';
  const perLane = alone ? 1 : Math.max(1, Math.floor(room / each));
  const perSitting = whole ? round : Math.min(round, lanes * perLane);
  const sittings: Omit<Sitting, 'id'>[] = [];
  for (let begin = from; begin <= to; ) {
    // A round ends at the same piece for all the steps that share it.
    const end = Math.min(to, Math.ceil(begin / round) * round);
    for (let first = begin; first <= end; first += perSitting) {
      const pieces = [first, Math.min(end, first + perSitting - 1)] as const;
      sittings.push({ step: step.id, pieces, setUp: first === begin ? setUp : 0, each, lanes });
    }
    begin = end + 1;
  }
  return sittings;
}

/** The sittings of a step: those that were done where they were, then what is left. */
function allSittings(
  step: WorkedStep,
  lanes: number,
  means: Means,
  { pieces, round }: { pieces: number; round: number },
  alone: boolean,
): Sitting[] {
  const works = (means.pinned ?? []).filter((work) => work.step === step.id);
  const sittings = [
    ...works.map((work) => pinnedSitting(work, step.hands, means.now ?? 0)),
    ...restOf(pieces, works).flatMap((run) => sittingsOf(step, lanes, means, run, round, alone)),
  ];
  return sittings.map((sitting, at) => ({ id: sittings.length === 1 ? step.id : `${step.id} ${at + 1}`, ...sitting }));
}

/** Minutes that a sitting takes. */
export function minutesOf({ setUp, each, lanes, pieces: [first, last], pinned }: Sitting): number {
  if (pinned) return pinned.end - pinned.start;
  return setUp + each * Math.ceil((last - first + 1) / lanes);
}

const overlap = (one: Sitting, two: Sitting) =>
  Math.max(0, Math.min(one.pieces[1], two.pieces[1]) - Math.max(one.pieces[0], two.pieces[0]) + 1);

/**
 * Waits between two sittings that share pieces, so that every piece keeps the link: it follows its own earlier step, waits at least so long
 * after it and at most so long. A wait counts from the last piece of the earlier sitting, a window from its first; counted from the start, a
 * window runs from the setting up and a wait from the last piece: both err on the safe side.
 */
function lagsBetween(from: Sitting, to: Sitting, link: WorkedLink, windows: boolean): LinkedLag[] {
  // What is set up while a cure runs need not wait for its end.
  const waited = (link.least ?? 0) - (link.counts === 'start' ? from.each : 0) - to.setUp;
  const base = { link, step: to.step, from: from.id, to: to.id };
  const lags: LinkedLag[] = [{ ...base, kind: 'end-start', least: Math.max(0, waited) }];
  if (link.most === undefined || !windows) return lags;
  const firstDone = link.counts === 'start' ? 0 : from.setUp + from.each;
  lags.push({
    ...base,
    kind: 'start-end',
    least: Number.NEGATIVE_INFINITY,
    most: firstDone + link.most + to.each,
  });
  return lags;
}

/** Hands and tools of work that is going on, no more than are left of each. */
function goingOn(step: WorkedStep, tools: readonly WorkedTool[], left: Map<string, number>): Record<string, number> {
  const wanted = [[handsResource, step.people] as const, ...tools.map(({ name }) => [name, 1] as const)];
  return Object.fromEntries(
    wanted.flatMap(([name, units]) => {
      const taken = Math.min(units, left.get(name) ?? 0);
      left.set(name, (left.get(name) ?? 0) - taken);
      return taken > 0 ? [[name, taken] as const] : [];
    }),
  );
}

/**
 * A worked method as activities, waits and resources.
 *
 * A step for several pieces is done in sittings of about an hour, as many pieces at a time as there are hands and tools; the next step begins on
 * the pieces that are ready. Setting up is counted once a step, and once a round where moulds or clamps do not suffice for all pieces.
 *
 * @param secondWays links whose window is given up for the second way that the method states
 * @param alone steps that take their pieces one by one, since a window would close on a longer sitting
 */
export function problemOf(
  worked: WorkedMethod,
  means: Means,
  secondWays: ReadonlySet<WorkedLink>,
  alone: ReadonlySet<string>,
): ProblemOfMethod {
  const held = new Set(worked.steps.flatMap(({ record }) => record.holds?.map(({ tool }) => tool) ?? []));
  const resources: Record<string, number> = { [handsResource]: means.people };
  const activities: Activity[] = [];
  const lags: LinkedLag[] = [];
  const holds: Hold[] = [];
  const bySteps = new Map<string, Sitting[]>();
  const rounds = roundsOf(worked);
  /** What work that is going on leaves of each resource. */
  const left = new Map<string, number>([[handsResource, means.people]]);

  for (const step of worked.steps) {
    const counted = (step.record.tools ?? []).flatMap((name) => {
      const tool = worked.tools[name];
      return tool && !held.has(name) && isCounted(tool) ? [tool] : [];
    });
    for (const { name, count } of counted) {
      resources[name] = count;
      if (!left.has(name)) left.set(name, count);
    }
    const adds = step.after.reduce(
      (sum, link) => sum + (secondWays.has(link) ? (link.missed?.addsMinutes ?? 0) : 0),
      0,
    );
    const timed = { ...step, hands: { ...step.hands, each: step.hands.each + adds } };
    const { pieces } = worked;
    const round = rounds.get(step.id) ?? pieces;
    const lanes = lanesOf(step, counted, means, round);
    const sittings = allSittings(timed, lanes, means, { pieces, round }, alone.has(step.id));
    bySteps.set(step.id, sittings);
    for (const [at, sitting] of sittings.entries()) {
      const duration = minutesOf(sitting);
      if (sitting.pinned) {
        // What was done takes nothing any more; what is going on takes its hands and tools until it is over, as far as there are any.
        const taken = sitting.pinned.going && duration > 0 ? goingOn(step, counted, left) : {};
        activities.push({ id: sitting.id, duration, splittable: false, uses: taken });
        continue;
      }
      const width = Math.min(lanes, sitting.pieces[1] - sitting.pieces[0] + 1);
      activities.push({
        id: sitting.id,
        duration,
        splittable: step.interrupt === 'anywhere',
        uses:
          duration === 0
            ? {}
            : {
                [handsResource]: step.people * (timed.hands.each === 0 ? 1 : width),
                ...Object.fromEntries(counted.map(({ name }) => [name, timed.hands.each === 0 ? 1 : width])),
              },
        ...(duration === 0 ? {} : { calendar: shopHours }),
      });
      const before = sittings[at - 1];
      if (before && !before.pinned) lags.push({ from: before.id, to: sitting.id, kind: 'start-start', least: 0 });
    }
  }

  for (const step of worked.steps) {
    const own = bySteps.get(step.id) ?? [];
    // What was done was done, whatever it should have waited for.
    for (const link of step.after)
      for (const from of bySteps.get(link.step) ?? [])
        for (const to of own)
          if (overlap(from, to) > 0 && !to.pinned) lags.push(...lagsBetween(from, to, link, !secondWays.has(link)));
    for (const { tool, until, each = 1 } of step.record.holds ?? []) {
      let taken = 0;
      for (const from of own)
        for (const to of bySteps.get(until) ?? []) {
          const shared = overlap(from, to);
          if (shared === 0 || to.pinned) continue;
          holds.push({ resource: tool, units: each * shared, from: from.id, to: to.id });
          if (from.pinned) taken += each * shared;
        }
      // Who had more of them than the method knows has shown that they are there.
      resources[tool] = Math.max(worked.tools[tool]?.count ?? 1, taken);
    }
  }

  const sittings = [...bySteps.values()].flat();
  const { latest, now } = means;
  return {
    problem: {
      activities,
      lags,
      holds,
      resources,
      calendars: [{ id: shopHours, open: means.open }],
      horizon: means.horizon,
      ...(now === undefined
        ? {}
        : { earliest: Object.fromEntries(sittings.map(({ id, pinned }) => [id, pinned?.start ?? now])) }),
      ...(latest === undefined && now === undefined
        ? {}
        : {
            latest: Object.fromEntries(sittings.map(({ id, pinned }) => [id, pinned?.end ?? latest ?? means.horizon])),
          }),
    },
    sittings,
    lags,
  };
}
