import { listed } from '../../model/quantity/index.ts';
import { makesDust } from '../acts/index.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import { supervised } from '../documents/supervision.ts';
import { momentText } from '../plan/closed.ts';
import type { Timetable } from '../plan/index.ts';
import { teachersSteps } from './teachers-part.ts';
import type { ClassSession } from './types.ts';

/*
 * A piece that catches up works beside a class that does something else. Dust falls into whatever lies wet in the room, and whoever leads can stand in
 * one place only.
 */

/** A step at work for some minutes of the plan. */
interface Stretch {
  step: WorkedStep;
  start: number;
  end: number;
}

/** What a piece does by itself, and what the class does, in one room. */
export interface InOneRoom {
  worked: WorkedMethod;
  own: readonly Stretch[];
  others: readonly Stretch[];
  sessions: readonly Pick<ClassSession, 'start' | 'end'>[];
  clock: Timetable['clock'];
}

/** The stretches of a plan in which hands are at work. */
export const stretchesOf = ({ steps }: WorkedMethod, timetable: Timetable): Stretch[] =>
  timetable.steps.flatMap(({ id, work }) => {
    const step = steps.find((each) => each.id === id);
    return step ? work.filter(({ start, end }) => end > start).map(({ start, end }) => ({ step, start, end })) : [];
  });

const overlap = (one: { start: number; end: number }, other: { start: number; end: number }) =>
  one.start < other.end && one.end > other.start;

const called = ({ step }: Stretch) => `“${step.record.title}”`;

const clockOf = ({ clock }: InOneRoom, minute: number) => clock.momentAt(minute).time;

/** What has been poured, brushed or oiled lies open until its session is over, and longer. */
function wetUntil({ sessions }: InOneRoom, { start, end }: Stretch): number {
  const session = sessions.find((each) => start >= each.start && start < each.end);
  return Math.max(end, session?.end ?? end);
}

/** Sentences, each once, in the order in which it comes to them. */
const once = (found: readonly { start: number; text: string }[]) => [
  ...new Set([...found].sort((one, other) => one.start - other.start).map(({ text }) => text)),
];

const wetWords = { resin: 'wet resin', finish: 'fresh finish' } as const;

/** Dust of one beside what the other has open: all of it in one session. */
interface Beside {
  dusty: Stretch[];
  wet: Stretch[];
  isOwnDusty: boolean;
}

const titlesOf = (stretches: readonly Stretch[]) => listed([...new Set(stretches.map(called))]);

function besideText(room: InOneRoom, { dusty, wet, isOwnDusty }: Beside): string {
  const [maker, owner] = isOwnDusty ? ['this place', 'the class'] : ['the class', 'this place'];
  const from = Math.min(...dusty.map(({ start }) => start));
  const to = Math.max(...dusty.map(({ end }) => end));
  const open = Math.min(...wet.map(({ start }) => start));
  const kinds = [...new Set(wet.flatMap(({ step }) => (step.act.wet ? wetWords[step.act.wet] : [])))];
  const makes = new Set(dusty.map(({ step }) => step.id)).size === 1 ? 'makes' : 'make';
  return `${momentText(room.clock, from)} to ${clockOf(room, to)} ${titlesOf(dusty)} of ${maker} ${makes} dust, and from ${clockOf(room, open)} on ${owner} has ${kinds.join(' and ')} open (${titlesOf(wet)}).`;
}

/** Where one makes dust while what the other laid or mixed is wet, a sentence for each session. */
export function dustBesideWet(room: InOneRoom): string[] {
  const found = new Map<string, Beside>();
  const look = (dusty: Stretch, wet: Stretch, isOwnDusty: boolean) => {
    if (!wet.step.act.wet || !makesDust(dusty.step.act)) return;
    const until = wetUntil(room, wet);
    if (!overlap(dusty, { start: wet.start, end: until })) return;
    const key = `${until} ${isOwnDusty}`;
    const before = found.get(key) ?? { dusty: [], wet: [], isOwnDusty };
    found.set(key, { ...before, dusty: [...before.dusty, dusty], wet: [...before.wet, wet] });
  };
  for (const own of room.own)
    for (const other of room.others) {
      look(own, other, true);
      look(other, own, false);
    }
  return once(
    [...found.values()].map((beside) => ({
      start: Math.min(...beside.dusty.map(({ start }) => start)),
      text: besideText(room, beside),
    })),
  );
}

/** From when on the class has something wet in a session; undefined where it has nothing. */
function wetFrom({ others }: InOneRoom, { start, end }: { start: number; end: number }): number | undefined {
  const wet = others.filter(({ step, start: from }) => step.act.wet && from >= start && from < end);
  return wet.length === 0 ? undefined : Math.min(...wet.map(({ start: from }) => from));
}

/**
 * For each step of this place that makes dust beside what is wet: the nearest time from then on, within one session, in which the class has
 * nothing wet, a sentence each. A session is dry until something wet is opened in it; what this place has wet itself comes after its dust and moves too.
 */
export function dryTimes(room: InOneRoom): string[] {
  const clashing = new Map<string, { stretch: Stretch; minutes: number }>();
  for (const own of room.own) {
    if (!makesDust(own.step.act) || dustBesideWet({ ...room, own: [own] }).length === 0) continue;
    const before = clashing.get(own.step.id);
    clashing.set(own.step.id, {
      stretch: before?.stretch ?? own,
      minutes: (before?.minutes ?? 0) + own.end - own.start,
    });
  }
  const sessions = [...room.sessions].sort((one, other) => one.start - other.start);
  return [...clashing.values()].map(({ stretch, minutes }) => {
    const free = sessions.flatMap((session) => {
      const from = Math.max(session.start, stretch.start);
      const until = Math.min(session.end, wetFrom(room, session) ?? session.end);
      return until - from >= minutes ? [{ from, until }] : [];
    })[0];
    return free
      ? `The class has nothing wet ${momentText(room.clock, free.from)} to ${clockOf(room, free.until)}: move ${called(stretch)} of this place there, the nearest time for it, and what follows it after it.`
      : `In no session that is left is the room dry for long enough for ${called(stretch)} of this place: do it in another room, or open for it by itself.`;
  });
}

/** What is done instead, common practice; that such dust may heat itself is the reason of the caution on sanding dust. */
export const noDustBesideWet =
  'No dust beside wet resin or fresh finish: it falls in and stays, and sanding dust with fresh oil, finish or hardener in it can heat by itself. Do it before anything wet is opened, in another room with its own extraction, or on another day.';

/** Steps that only whoever leads does: theirs of every class, and what is done once for all. */
function ledSteps({ steps }: WorkedMethod): ReadonlySet<string> {
  const mixes = new Set(
    steps.filter(({ calculations }) => calculations.some(({ use }) => use === 'resin-dose')).map(({ id }) => id),
  );
  const theirs = teachersSteps(steps, (id) => mixes.has(id));
  return new Set(
    steps.filter(({ id, hands }) => theirs.has(id) || (hands.setUp > 0 && hands.each === 0)).map(({ id }) => id),
  );
}

/** Whether somebody who knows it stands beside a step. */
function isWatched({ materials, tools }: WorkedMethod, { act, record }: WorkedStep): boolean {
  const kindsOf = (names: readonly string[] = [], all: Readonly<Record<string, { record: { kind: string } }>>) =>
    names.flatMap((name) => all[name]?.record ?? []);
  return (
    supervised(
      { materials: Object.values(materials).map(({ record: { kind } }) => ({ kind })) },
      { act, tools: kindsOf(record.tools, tools), uses: kindsOf(record.uses, materials) },
    ).length > 0
  );
}

/**
 * Where whoever leads is wanted in two places at once, a sentence each.
 *
 * @param leaders teachers of the class
 * @param helpers who may stand beside a step, and do none that the teacher alone does
 */
export function leaderTwice(room: InOneRoom, { leaders, helpers }: { leaders: number; helpers: number }): string[] {
  const led = ledSteps(room.worked);
  const found: { start: number; text: string }[] = [];
  for (const own of room.own)
    for (const other of room.others) {
      if (!overlap(own, other) || !led.has(other.step.id)) continue;
      const isLed = led.has(own.step.id);
      if (isLed ? leaders > 1 : leaders + helpers > 1 || !isWatched(room.worked, own.step)) continue;
      const start = Math.max(own.start, other.start);
      found.push({
        start,
        text: `The teacher is wanted in two places ${momentText(room.clock, start)}: ${called(other)} of the class is the teacher’s, and ${called(own)} of this place ${isLed ? 'is too' : 'wants somebody beside who knows it'}.`,
      });
    }
  return once(found);
}
