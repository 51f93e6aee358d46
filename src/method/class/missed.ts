import { listed } from '../../model/quantity/index.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { StepBounds } from '../plan/bounds.ts';
import { momentText } from '../plan/closed.ts';
import { type NoTimetable, type Timetable, timetableOf, withWays } from '../plan/index.ts';
import { impossibleWords, timeWords } from '../plan/words.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { dryTimes, dustBesideWet, type InOneRoom, leaderTwice, noDustBesideWet, stretchesOf } from './beside.ts';
import type { WorkedClass } from './class.ts';
import { turnStarts } from './timetable.ts';
import type { ClassSession, MissedSession, MissedStep } from './types.ts';

/** Weeks after the last session in which a further evening is looked for. */
const weeksAfter = 12;

const laterDay = (date: string, days: number) =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** The sessions of a class, and the same evening of the weeks after the last, in case somebody needs one more. */
function withFurther(hours: OpeningHours): OpeningHours {
  const sessions = [...(hours.sessions ?? [])].sort();
  const last = sessions.at(-1);
  if (last === undefined) return hours;
  const further = Array.from(
    { length: weeksAfter },
    (_, week) => `${laterDay(last.slice(0, 10), 7 * (week + 1))}${last.slice(10)}`,
  );
  return { ...hours, sessions: [...sessions, ...further] };
}

/** What a plan for one place is bound to. */
interface Bound {
  /** Steps that are done by somebody else in the session that is missed. */
  others: ReadonlySet<string>;
  /** What stays done: all of it, what was done before the session alone, or nothing that a window does not hold. */
  keep: 'all' | 'before' | 'nothing';
}

/** One place of a class beside the class: when it came to each step, and what a plan without a session gives. */
class Absence {
  readonly worked: WorkedMethod;
  readonly #classOf: WorkedClass;
  readonly #session: ClassSession;
  /** The session of the class in which the piece comes to a step; undefined for a mere moment between two. */
  readonly at = new Map<string, ClassSession | undefined>();
  readonly missed: readonly WorkedStep[];

  constructor(classOf: WorkedClass, timetable: Timetable, worked: WorkedMethod, piece: number, session: ClassSession) {
    this.#classOf = classOf;
    this.#session = session;
    this.worked = worked;
    for (const [step, minute] of turnStarts(timetable, piece))
      this.at.set(
        step,
        classOf.sessions.find(({ start, end }) => minute >= start && minute < end),
      );
    this.missed = worked.steps.filter(({ id, hands }) => {
      const there = this.at.get(id);
      return there?.number === session.number && hands.setUp + hands.each > 0;
    });
  }

  /** The plan of this piece: what was done before stays, what was missed comes later, what comes later keeps to the class where it can. */
  plan({ others, keep }: Bound): Promise<Timetable | NoTimetable> {
    const { hours, start, record } = this.#classOf;
    const missed = new Set(this.missed.map(({ id }) => id));
    const within = new Map<string, StepBounds>();
    for (const [step, session] of this.at) {
      if (!session) continue;
      const isBefore = session.number < this.#session.number;
      const stays = (isBefore && keep !== 'nothing') || (others.has(step) && keep === 'all');
      if (missed.has(step) && !others.has(step)) within.set(step, { from: session.end });
      else within.set(step, { from: session.start, ...(stays ? { to: session.end } : {}) });
    }
    const hands = record.people.teachers + record.people.helpers + 1;
    return timetableOf(this.worked, {
      start: start as string,
      hours: withFurther(hours as OpeningHours),
      people: Math.max(hands, ...this.worked.steps.map(({ people }) => people)),
      within,
    });
  }

  /** Whether a step is planned in the session that was missed. */
  isThen(timetable: Timetable, step: string): boolean {
    const planned = timetable.steps.find(({ id }) => id === step);
    return planned !== undefined && planned.start < this.#session.end;
  }
}

/**
 * What the piece does by itself once the session was missed, beside what the class does. A step that was not missed and begins before the class has
 * ended its own is done with the class.
 */
function roomOf(absence: Absence, plan: Timetable, ofClass: Timetable, { end: since }: ClassSession): InOneRoom {
  const { worked } = absence;
  const missed = new Set(absence.missed.map(({ id }) => id));
  const others = stretchesOf(worked, ofClass).filter(({ start }) => start >= since);
  const own = stretchesOf(worked, plan).filter(
    ({ step, start }) =>
      start >= since &&
      (missed.has(step.id) || !others.some((other) => other.step.id === step.id && start < other.end)),
  );
  return { worked, own, others, sessions: plan.open, clock: plan.clock };
}

/** Windows whose second way one plan takes and another does not. */
const newSecondWays = (plan: Timetable, usual: Timetable) =>
  plan.secondWays.filter(
    (way) => !usual.secondWays.some(({ step, after }) => step === way.step && after === way.after),
  );

/** The open hours in which a plan ends. */
const lastOpening = ({ open, end }: Timetable) =>
  open.find((span) => end >= span.start && end <= span.end)?.start ?? end;

/** Steps that must be done by others for a step to be done by others: it, and what it follows of the same session. */
function withBefore(step: WorkedStep, missed: readonly WorkedStep[]): Set<string> {
  const all = new Set([step.id]);
  const add = (one: WorkedStep) => {
    for (const { step: before } of one.after) {
      const found = missed.find(({ id }) => id === before);
      if (!found || all.has(before)) continue;
      all.add(before);
      add(found);
    }
  };
  add(step);
  return all;
}

const isHeard = ({ act }: WorkedStep) => act.id === 'brief';
const isOnce = (step: WorkedStep) => step.hands.each === 0 && !isHeard(step);

const titles = (steps: readonly WorkedStep[]) => steps.map(({ record }) => `“${record.title}”`);

/**
 * What a student who misses a session does: what can be caught up and when, which windows have closed and what is done instead, and what somebody
 * else does that evening if the piece is to stay with the class. Planned again for that place without that session's hours.
 *
 * @param place id of a place that could be worked out
 * @param number of the session, from 1
 * @returns undefined where there is no timetable, no such place or no such session
 */
export async function missedSession(
  classOf: WorkedClass,
  place: string,
  number: number,
): Promise<MissedSession | undefined> {
  const { one, timetable, sessions } = classOf;
  const piece = one.places.findIndex(({ id }) => id === place);
  const session = sessions.find((each) => each.number === number);
  const who = one.places[piece];
  if (!timetable?.ok || !session || !who) return undefined;
  if (session.who === 'teacher')
    return {
      place,
      session: { number, from: session.from },
      verdict: { level: 'good', text: 'That session is without students: nothing is missed.' },
      steps: [],
    };
  const absence = new Absence(classOf, timetable, await one.work(who, 1), piece + 1, session);
  const { missed, worked } = absence;
  const base = { place, session: { number, from: session.from } };
  if (missed.length === 0)
    return {
      ...base,
      verdict: { level: 'good', text: 'Nothing of this place is done in that session: nothing is missed.' },
      steps: [],
    };
  const everything = new Set(missed.map(({ id }) => id));
  const usual = await absence.plan({ others: everything, keep: 'all' });
  const once = new Set(missed.filter(isOnce).map(({ id }) => id));
  // First as if the class had done for all what is done once; where a window then closes without a second way, it is done again for this place.
  let plan = await absence.plan({ others: once, keep: 'all' });
  for (const keep of ['before', 'nothing'] as const) if (!plan.ok) plan = await absence.plan({ others: once, keep });
  const numbers = new Map(worked.steps.map(({ id }, at) => [id, at + 1]));
  if (!plan.ok) {
    const { why, changes } = impossibleWords(worked, withWays(plan));
    return {
      ...base,
      verdict: {
        level: 'stop',
        text: `This cannot be caught up in the sessions that there are, nor in ${weeksAfter} weeks after them. Somebody else does it that evening: ${listed(titles(missed.filter((step) => !isHeard(step))))}.`,
      },
      steps: missed.map((step) => ({
        step: step.id,
        number: numbers.get(step.id) ?? 0,
        title: step.record.title,
        kind: isHeard(step) ? 'hear' : 'later',
        minds: [why, ...changes.map((change) => `What would help: ${change}.`)],
      })),
    };
  }
  const found = plan;
  const steps = missed.map((step): MissedStep => stepOf(absence, found, usual, step, numbers.get(step.id) ?? 0));
  const redone = worked.steps.filter((step) => {
    const before = absence.at.get(step.id);
    return before !== undefined && before.number < number && (startOf(found, step.id) ?? 0) >= session.end;
  });
  for (const step of redone)
    steps.push({
      step: step.id,
      number: numbers.get(step.id) ?? 0,
      title: step.record.title,
      kind: 'again',
      at: momentText(found.clock, startOf(found, step.id) ?? 0),
      minds: ['It was done before, and what it is good for has passed: it is done again for this place.'],
    });
  const isLate = !usual.ok || lastOpening(found) > lastOpening(usual);
  const gaveUp = usual.ok ? newSecondWays(found, usual) : found.secondWays;
  const others =
    isLate || gaveUp.length > 0 || steps.some(({ kind }) => kind === 'again')
      ? await othersOf(absence, usual, once)
      : undefined;
  const { teachers, helpers } = classOf.record.people;
  const room = roomOf(absence, found, timetable, session);
  const dust = dustBesideWet(room);
  const twice = leaderTwice(room, { leaders: teachers, helpers });
  const verdict = verdictOf({
    found,
    usual,
    isLate,
    gaveUp: gaveUp.length,
    extra: extraEvenings(found, timetable, sessions),
    again: steps.filter(({ kind }) => kind === 'again').length,
  });
  return {
    ...base,
    verdict: verdict.level === 'good' && dust.length + twice.length > 0 ? { ...verdict, level: 'care' } : verdict,
    ...(dust.length > 0 ? { dust: [...dust, ...dryTimes(room), noDustBesideWet] } : {}),
    ...(twice.length > 0 ? { twice } : {}),
    steps,
    ...(others ? { others } : {}),
    ends: {
      at: momentText(found.clock, found.end),
      otherwise: usual.ok ? momentText(usual.clock, usual.end) : momentText(timetable.clock, timetable.end),
    },
  };
}

const startOf = (plan: Timetable, step: string) => plan.steps.find(({ id }) => id === step)?.start;

function stepOf(
  absence: Absence,
  plan: Timetable,
  usual: Timetable | NoTimetable,
  step: WorkedStep,
  number: number,
): MissedStep {
  const { id, record } = step;
  const base = { step: id, number, title: record.title };
  if (isOnce(step) && absence.isThen(plan, id)) return { ...base, kind: 'once', minds: [] };
  const minds = (usual.ok ? newSecondWays(plan, usual) : plan.secondWays)
    .filter((way) => way.step === id || way.after === id)
    .map((way) => {
      const [after, to] = [way.after, way.step].map((name) => absence.worked.record.steps[name]?.title ?? name) as [
        string,
        string,
      ];
      const more = way.addsMinutes > 0 ? `, ${timeWords(way.addsMinutes)} more` : '';
      return `The window between “${after}” and “${to}” has closed by then. Instead: ${way.do}${more}.`;
    });
  const later = absence.worked.steps.filter(({ after }) => after.some((link) => link.step === id));
  for (const next of later) {
    const link = next.after.find((each) => each.step === id);
    const session = absence.at.get(next.id);
    const begins = startOf(plan, next.id) ?? 0;
    if (!link?.least || !session || begins < session.end || session.number === absence.at.get(id)?.number) continue;
    minds.push(
      `“${next.record.title}” waits ${timeWords(link.least)} after it, so it comes ${momentText(plan.clock, begins)} and not with the class.`,
    );
  }
  return {
    ...base,
    kind: isHeard(step) ? 'hear' : isOnce(step) ? 'again' : 'later',
    at: momentText(plan.clock, startOf(plan, id) ?? 0),
    minds,
  };
}

/** The fewest steps of the session that somebody else does, so that the piece is done with the class. */
async function othersOf(
  absence: Absence,
  usual: Timetable | NoTimetable,
  once: ReadonlySet<string>,
): Promise<MissedSession['others']> {
  if (!usual.ok) return undefined;
  const { missed } = absence;
  const tries = missed
    .filter((step) => !isHeard(step) && !isOnce(step))
    .map((step) => withBefore(step, missed))
    .sort((one, other) => one.size - other.size);
  for (const set of tries) {
    const plan = await absence.plan({ others: new Set([...set, ...once]), keep: 'all' });
    if (!plan.ok || newSecondWays(plan, usual).length > 0 || lastOpening(plan) > lastOpening(usual)) continue;
    const done = missed.filter((step) => set.has(step.id) && !isOnce(step) && !isHeard(step));
    const left = missed.filter((step) => !set.has(step.id) && !isOnce(step));
    const rest = left.map((step) => `“${step.record.title}” ${momentText(plan.clock, startOf(plan, step.id) ?? 0)}`);
    return {
      steps: done.map(({ id }) => id),
      sentence: `If somebody else does ${listed(titles(done))} at this place that evening, the piece stays with the class.${
        rest.length > 0 ? ` Left to the student: ${listed(rest)}.` : ''
      }`,
    };
  }
  return undefined;
}

interface Outcome {
  found: Timetable;
  usual: Timetable | NoTimetable;
  isLate: boolean;
  gaveUp: number;
  again: number;
  /** Beginnings of the evenings in which this piece is worked on and the class plans nothing, as the shop’s clock shows them. */
  extra: readonly string[];
}

/**
 * Evenings that the catching up takes and the plan of the class does not: further ones after its last session, and sessions in which it has nothing
 * to do, so that nobody may be there.
 */
function extraEvenings(found: Timetable, ofClass: Timetable, sessions: readonly ClassSession[]): string[] {
  const worksIn = (plan: Timetable, { start, end }: { start: number; end: number }) =>
    plan.steps.some(({ work }) => work.some((each) => each.start < end && each.end > start));
  return found.open
    .filter((span) => worksIn(found, span))
    .filter((span) => {
      const session = sessions.find(({ start, end }) => span.start < end && span.end > start);
      return session === undefined || !worksIn(ofClass, session);
    })
    .map(({ start }) => momentText(found.clock, start));
}

function verdictOf({ found, usual, isLate, gaveUp, again, extra: evenings }: Outcome): MissedSession['verdict'] {
  const end = momentText(found.clock, found.end);
  const further =
    evenings.length > 0
      ? ` The class plans nothing ${listed(evenings)}: somebody must open for this place ${evenings.length === 1 ? 'that evening' : 'those evenings'}.`
      : '';
  const extra =
    again > 0 ? ` ${again === 1 ? 'One step is' : `${again} steps are`} done again for this place alone.` : '';
  if (isLate) {
    const by = usual.ok ? `, ${timeWords(lastOpening(found) - lastOpening(usual))} behind the class` : '';
    return { level: 'care', text: `The piece is done ${end}${by}.${further}${extra}` };
  }
  if (gaveUp > 0)
    return {
      level: 'care',
      text: `It can be caught up with the class, by the second way where a window has closed.${further}${extra}`,
    };
  return {
    level: again > 0 || evenings.length > 0 ? 'care' : 'good',
    text: `It can be caught up, and the piece is done with the class, ${end}.${further}${extra}`,
  };
}
