import { type Basis, derivedBasis } from '../evidence/index.ts';
import { day } from '../quantity/seconds.ts';
import { knownAnchor } from './anchor.ts';
import { gelPoint, glassTransition } from './clock.ts';
import { type Course, cureUnder } from './cure.ts';
import type { ResinKinetics } from './fit.ts';
import { type History, steady } from './history.ts';
import { type Kinetics, workConversion } from './kinetics.ts';
import {
  type CureOrigin,
  lightShare,
  practice,
  practiceOfSanding,
  recoatShuts,
  type Stated,
  shutAfter,
  statedBy,
  usualCure,
} from './stated.ts';
import type { Resin } from './types.ts';
import { carry, carryNoSooner, farthest, later, type Span, type Wait, waitsBeforeUse } from './waits.ts';

/** What happens to a coat between mixing and use, in the order in which it usually does. */
const cureEventIds = [
  'work',
  'gel',
  'recoatOpens',
  'recoatCloses',
  'sandable',
  'lightUse',
  'fullCure',
  'oil',
  'foodService',
] as const;
export type CureEventId = (typeof cureEventIds)[number];

/**
 * What an event waits for in the end: the time as it was stated, a cure as far as that time brings it at its own temperature, or another
 * event that it must not come before.
 */
export type DecidedBy = 'stated' | 'cure' | 'sandable' | 'fullCure';

export interface CureEvent extends Span {
  id: CureEventId;
  origin: CureOrigin;
  basis: Basis;
  /** The time that was carried over to this history, its temperature, and whether that was assumed; absent for the clock. */
  stated?: Pick<Stated, 'time' | 'celsius' | 'assumed'>;
  decidedBy: DecidedBy;
  /** What the clock alone gives, s, for events that it knows. */
  clock: number | null;
  /** Conversion that the clock has reached at `time`; null where there is none. */
  conversion: number | null;
}

export interface Timetable {
  events: readonly CureEvent[];
  /** True where too little lies between opening and shutting of the window to be sure of any of it: the next coat goes on sanded resin. */
  noWindow: boolean;
  /** Of the middle, a slower and a faster clock. */
  course: Course;
  slower: Course;
  faster: Course;
  /**
   * Conversions: what the full cure asks for, what this history reaches by `at` (s), and what the sheet's own time brings at its own
   * temperature. `at` is the full cure, or where there is none the stated time carried over; null where even that is too far off.
   */
  cured: { asks: number; here: number; asStated: number; at: number; stated: Pick<Stated, 'time' | 'celsius'> } | null;
}

/** The clock is good to a quarter of any time, so its rates to these factors. */
const rateBand = { slower: 1 / 1.25, faster: 1 / 0.75 };
/**
 * A window shorter than this, s, is none: mixing, letting the bubbles out and spreading a coat alone take longer; common practice.
 */
const shortestWindow = 15 * 60;
/**
 * A window shorter than this share of the wait for it is none: two degrees of the shop, which no shop keeps to (`sheetTolerance`), move each
 * of its ends by more than that.
 */
export const narrowestWindow = 0.1;
/** Longest run of the clock, s, and how much further than the last wait it looks. */
const longestRun = 120 * day;
const beyond = 1.15;

/**
 * The slower of two clocks that a data sheet gives where its pot life and its greatest depth do not go together; undefined where they do.
 *
 * The pour then follows the slower one, which its depth asks for. Which is right nobody can tell, so that of every time both are looked at:
 * a window opens by the slower and shuts by the faster.
 */
function slowedKinetics(resin: Resin | undefined, { kinetics, thermal }: ResinKinetics): Kinetics | undefined {
  const { greatestDepth, greatestDepthTemperature } = resin?.figures ?? {};
  if (!greatestDepth || !greatestDepthTemperature) return undefined;
  const anchor = knownAnchor(kinetics, thermal, greatestDepth.value, greatestDepthTemperature.value, true);
  return anchor && anchor.slowedBy > 1 ? anchor.kinetics : undefined;
}

/**
 * True where no time is sure to lie within a window. Ends that were both stated are carried over each with a band of its own; where the bands
 * meet, the resin may be shut before it opens. Of the clock's own two ends only the distance counts: a faster clock brings both.
 */
function tooNarrow(opens: CureEvent, closes: CureEvent): boolean {
  if (opens.time === null || closes.time === null) return false;
  if (closes.time - opens.time < Math.max(shortestWindow, narrowestWindow * opens.time)) return true;
  if (!opens.stated || !closes.stated || opens.high === null || closes.low === null) return false;
  return closes.low <= opens.high;
}

/** When a coat stops bonding to the next by itself: at a conversion, or earlier where it turns glassy. */
function shutsBy(conversion: number, { glass }: ResinKinetics, history: History): (course: Course) => number | null {
  return (course) => {
    const byCure = course.timeOf(conversion);
    const byGlass = course.first(
      (reached, time) => reached > gelPoint && glassTransition(reached, glass) >= history.at(time),
    );
    return byCure === null || byGlass === null ? (byCure ?? byGlass) : Math.min(byCure, byGlass);
  };
}

/** The waits before use in the words of sheet, kind or practice. */
function statedWaits(resin: Resin | undefined, known: ResinKinetics) {
  const cure = statedBy(resin, 'cure') ?? practice(usualCure);
  const light: Stated = { ...cure, time: lightShare * cure.time, origin: 'practice', basis: 'shop-practice' };
  return {
    sandable: statedBy(resin, 'sandable') ?? practiceOfSanding(known),
    light,
    cure,
    food: statedBy(resin, 'foodService'),
  };
}

/** What decides of the later of a wait and an event that it must not come before. */
function notBefore(wait: Wait, other: Span, name: DecidedBy): Span & { decidedBy: DecidedBy } {
  const last = later(wait, other);
  const own = wait.time === null || (other.time !== null && other.time <= wait.time);
  return { time: last.time, low: last.low, high: last.high, decidedBy: own ? wait.by : name };
}

/**
 * Timetable of a coat or a thin layer, from mixing to the table, under a history of temperatures. It is the one place where a recoat window,
 * a time to sand, a full cure and a time for food are worked out: whatever speaks of one takes it from here.
 *
 * The sheet wins where it speaks. Its times hold at its temperature and are carried over to the history: the window by the rate of cure,
 * waits before use by `waitsBeforeUse`. Where neither sheet nor kind speaks, the clock gives work, gel and the recoat window, and common
 * practice the rest. Nothing is cured before it is hard enough to sand, and nothing is oiled or lent to food before it is cured.
 *
 * @param resin undefined where only its kinetics are known
 */
export function timetableOf(resin: Resin | undefined, known: ResinKinetics, history: History): Timetable {
  const said = statedWaits(resin, known);
  const { light: saidLight, cure, food: saidFood } = said;
  const waits = waitsBeforeUse<string>(
    { light: saidLight, cure, ...(saidFood ? { food: saidFood } : {}) },
    known,
    history,
  );
  const [lightWait, cureWait] = [waits.light, waits.cure] as [Wait, Wait];
  const sand = carryNoSooner(said.sandable, known, history);
  const full = notBefore(cureWait, sand, 'sandable');
  const light = notBefore(lightWait, sand, 'sandable');
  const served = waits.food ? notBefore(waits.food, full, 'fullCure') : full;

  const carried = (waits.food ?? cureWait).carried;
  const last = served.time ?? (carried === null ? longestRun : farthest * carried);
  const until = Math.min(longestRun, beyond * last);
  const run = (kinetics: Kinetics, factor = 1) =>
    cureUnder({ ...kinetics, k2At25C: kinetics.k2At25C * factor }, known.glass, history, until);
  const [course, slower, faster] = [
    run(known.kinetics),
    run(known.kinetics, rateBand.slower),
    run(known.kinetics, rateBand.faster),
  ];
  const slowed = slowedKinetics(resin, known);
  const cold = slowed ? { middle: run(slowed), slower: run(slowed, rateBand.slower) } : { middle: course, slower };

  const event = (
    id: CureEventId,
    wait: Stated,
    times: Span & { decidedBy?: DecidedBy },
    clock: number | null = null,
  ): CureEvent => ({
    decidedBy: 'stated',
    ...times,
    id,
    origin: wait.origin,
    basis: derivedBasis([wait.basis]),
    stated: { time: wait.time, celsius: wait.celsius, assumed: wait.assumed },
    clock,
    conversion: times.time === null ? null : course.at(times.time),
  });
  const clocked = (id: CureEventId, time: number | null, low: number | null, high: number | null): CureEvent => ({
    id,
    time,
    low,
    high,
    origin: 'clock',
    basis: 'memory',
    decidedBy: 'stated',
    clock: time,
    conversion: time === null ? null : course.at(time),
  });

  const gels = (one: Course) => one.timeOf(gelPoint);
  const works = (one: Course) => one.timeOf(workConversion);
  const shuts = shutsBy(recoatShuts.from, known, history);
  const saidOpens = statedBy(resin, 'recoatOpens');
  const saidShuts = statedBy(resin, 'recoatCloses') ?? shutAfter(saidOpens, known);
  const opens = saidOpens
    ? event('recoatOpens', saidOpens, carry(saidOpens, known, history), gels(course))
    : clocked('recoatOpens', gels(cold.middle), gels(faster), gels(cold.slower));
  const closes = saidShuts
    ? event('recoatCloses', saidShuts, carry(saidShuts, known, history), shuts(course))
    : clocked('recoatCloses', shuts(course), shuts(faster), shutsBy(recoatShuts.to, known, history)(slower));
  const noWindow = tooNarrow(opens, closes);
  const byPractice = { origin: 'practice', basis: 'shop-practice' } as const;
  return {
    events: [
      clocked('work', works(course), works(faster), works(slower)),
      clocked('gel', gels(cold.middle), gels(faster), gels(cold.slower)),
      ...(noWindow
        ? [event('recoatOpens', said.sandable, { ...sand, decidedBy: 'sandable' }, gels(course))]
        : [opens, closes]),
      event('sandable', said.sandable, sand),
      event('lightUse', saidLight, light),
      event('fullCure', cure, full),
      event('oil', { ...cure, ...byPractice }, full),
      event('foodService', saidFood ?? { ...cure, ...byPractice }, served),
    ],
    noWindow,
    course,
    slower,
    faster,
    cured: curedOf(cureWait, cure, full, known, history),
  };
}

/** How far the resin cures here, beside what its full cure asks for. */
function curedOf(
  wait: Wait,
  stated: Stated,
  full: Span,
  { kinetics, glass }: ResinKinetics,
  history: History,
): Timetable['cured'] {
  const at = full.time ?? wait.carried;
  if (at === null) return null;
  const own = cureUnder(kinetics, glass, steady(stated.celsius), stated.time);
  return {
    asks: wait.asks,
    here: cureUnder(kinetics, glass, history, at).at(at),
    asStated: own.at(stated.time),
    at,
    stated: { time: stated.time, celsius: stated.celsius },
  };
}
