import type { WorkedLink, WorkedMethod, WorkedStep } from '../case/types.ts';
import { handsResource } from '../plan/activities.ts';
import { momentText } from '../plan/closed.ts';
import type { Timetable } from '../plan/index.ts';
import type { Work } from '../plan/timetable.ts';
import { machineKinds } from '../shop/machines.ts';
import type { ClassCase, WorkedPlace } from './places.ts';
import type { ClassMachine, ClassSession, SessionWork } from './types.ts';

/** The longer of two waits, and the shorter of two windows: what holds for one of them holds for both. */
function strictest(one: WorkedLink, other: WorkedLink | undefined): WorkedLink {
  if (!other) return one;
  const least = Math.max(one.least ?? 0, other.least ?? 0);
  const windows = [one.most, other.most].filter((most) => most !== undefined);
  const adds = Math.max(one.missed?.addsMinutes ?? 0, other.missed?.addsMinutes ?? 0);
  return {
    ...one,
    ...(least > 0 ? { least } : {}),
    ...(windows.length > 0 ? { most: Math.min(...windows) } : {}),
    ...(one.missed && adds > 0 ? { missed: { ...one.missed, addsMinutes: adds } } : {}),
  };
}

function slowest(one: WorkedStep, other: WorkedStep | undefined): WorkedStep {
  if (!other) return one;
  return {
    ...one,
    hands: {
      setUp: Math.max(one.hands.setUp, other.hands.setUp),
      each: Math.max(one.hands.each, other.hands.each),
    },
    people: Math.max(one.people, other.people),
    after: one.after.map((link, at) => strictest(link, other.after[at])),
  };
}

/**
 * A class as one method that its timetable is laid out for: as many pieces as places, each step as long as at the slowest of them, each wait as
 * long as the longest, each window as short as the shortest.
 */
export async function wholeClass(one: ClassCase): Promise<WorkedMethod> {
  const [first] = one.places as [WorkedPlace];
  const base = await one.work(first, one.places.length);
  const others = [...new Set(one.places.map(({ worked }) => worked))];
  return {
    ...base,
    steps: base.steps.map((step, at) => others.reduce((sum, { steps }) => slowest(sum, steps[at]), step)),
  };
}

/** Kinds of machine that people stand at. */
const queued: readonly string[] = machineKinds.filter((kind) => kind !== 'dust-extractor');

/** Machines of a step, and tools of which there are only so many. */
function machinesOf(worked: WorkedMethod, step: WorkedStep, timetable: Timetable): ClassMachine[] {
  const scarce = timetable.made.problem.resources;
  return (step.record.tools ?? []).flatMap((name) => {
    const tool = worked.tools[name];
    // An extractor stands beside the machine that it serves.
    const isMachine = tool !== undefined && queued.includes(tool.record.kind);
    if (!tool || name === handsResource || !isMachine || scarce[name] === undefined) return [];
    return [{ name, what: tool.record.what, count: tool.count }];
  });
}

/** Minutes of the plan at which so many minutes of a sitting are done, over the stretches that closing time leaves of it. */
export function minuteOf(stretches: readonly Work[], done: number): number {
  let left = done;
  for (const { start, end } of stretches) {
    if (left < end - start) return start + left;
    left -= end - start;
  }
  return stretches.at(-1)?.end ?? 0;
}

/** Turns of a sitting: who is at it from when to when, in minutes of the plan. */
function turnsOf(timetable: Timetable, work: Work): { start: number; end: number; pieces: number[] }[] {
  const { work: all = [] } = timetable.steps.find(({ id }) => id === work.step) ?? {};
  const stretches = all.filter(({ pieces: [first] }) => first === work.pieces[0]);
  const sitting = timetable.made.sittings.find(
    ({ step, pieces: [first] }) => step === work.step && first === work.pieces[0],
  );
  if (!sitting || sitting.each === 0) return [];
  const { setUp, each, lanes, pieces } = sitting;
  const [first, last] = pieces;
  const turns: { start: number; end: number; pieces: number[] }[] = [];
  for (let from = first, at = 0; from <= last; from += lanes, at += 1) {
    const start = minuteOf(stretches, setUp + at * each);
    const end = minuteOf(stretches, setUp + (at + 1) * each - 1) + 1;
    // A turn that closing time interrupts stands in both sessions.
    if (start >= work.end || end <= work.start) continue;
    turns.push({
      start: Math.max(start, work.start),
      end: Math.min(end, work.end),
      pieces: Array.from({ length: Math.min(lanes, last - from + 1) }, (_, lane) => from + lane),
    });
  }
  return turns;
}

const idsOf = (places: readonly WorkedPlace[], pieces: readonly number[]) =>
  pieces.flatMap((piece) => places[piece - 1]?.id ?? []);

/** @param places that are there: none in a session without students */
function workOf(worked: WorkedMethod, timetable: Timetable, places: readonly WorkedPlace[], work: Work): SessionWork {
  const at = worked.steps.findIndex(({ id }) => id === work.step);
  const step = worked.steps[at] as WorkedStep;
  const clock = (minute: number) => timetable.clock.momentAt(minute).time;
  const [first, last] = work.pieces;
  return {
    step: work.step,
    number: at + 1,
    title: step.record.title,
    start: work.start,
    end: work.end,
    from: clock(work.start),
    to: clock(work.end),
    once: step.hands.each === 0,
    places: idsOf(
      places,
      Array.from({ length: last - first + 1 }, (_, piece) => first + piece),
    ),
    machines: machinesOf(worked, step, timetable),
    turns: (places.length === 0 ? [] : turnsOf(timetable, work)).map(({ start, end, pieces }) => ({
      from: clock(start),
      to: clock(end),
      places: idsOf(places, pieces),
    })),
  };
}

/**
 * The sessions of a class: what is done in each, by whom and at which machine, in order.
 *
 * @param alone sessions without students: the teacher works there, and no place has a turn
 */
export function classSessions(
  worked: WorkedMethod,
  timetable: Timetable,
  places: readonly WorkedPlace[],
  alone: readonly string[] = [],
): ClassSession[] {
  const all = timetable.steps.flatMap(({ work }) => work).filter(({ start, end }) => end > start);
  const within = timetable.open.flatMap((span) => {
    const work = all
      .filter(({ start, end }) => start >= span.start && end <= span.end)
      .sort((one, other) => one.start - other.start);
    return work.length > 0 ? [{ ...span, work }] : [];
  });
  const apart = alone.map((text) => timetable.clock.minutesAt(text.slice(0, 16)));
  return within.map(({ start, end, work }, at) => {
    const isAlone = apart.includes(start);
    return {
      number: at + 1,
      start,
      end,
      from: momentText(timetable.clock, start),
      to: timetable.clock.momentAt(end).time,
      ...(isAlone ? { who: 'teacher' as const } : {}),
      work: work.map((each) => workOf(worked, timetable, isAlone ? [] : places, each)),
    };
  });
}

/** When a piece of the class comes to each of its steps, in minutes of the plan: the beginning of its own turn. */
export function turnStarts(timetable: Timetable, piece: number): Map<string, number> {
  const starts = new Map<string, number>();
  for (const { id, work } of timetable.steps) {
    const own = work.filter(({ pieces: [first, last] }) => first <= piece && piece <= last);
    const sitting = timetable.made.sittings.find(
      ({ step, pieces: [first, last] }) => step === id && first <= piece && piece <= last,
    );
    if (!sitting) continue;
    const { setUp, each, lanes, pieces } = sitting;
    const turn = Math.floor((piece - pieces[0]) / lanes);
    // Setting up belongs to the first turn; a single piece sets up for itself.
    starts.set(id, minuteOf(own, turn === 0 ? 0 : Math.max(0, setUp + turn * each)));
  }
  return starts;
}
