import { type Basis, derivedBasis, type Figure } from '../evidence/index.ts';
import { gelPoint, glassTransition, rateFactor, timeToConversion } from './clock.ts';
import { type Course, cureUnder } from './cure.ts';
import type { ResinKinetics } from './fit.ts';
import { type History, steady, timeOfAge } from './history.ts';
import { workConversion } from './kinetics.ts';
import type { Resin, ResinFigureName } from './types.ts';

/** What happens to a coat between mixing and use, in the order in which it usually does. */
export const cureEventIds = [
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

/** Where the time of an event comes from: the maker's sheet, the generic kind, common practice, or the clock alone. */
export type CureOrigin = 'sheet' | 'kind' | 'practice' | 'clock';

export interface CureEvent {
  id: CureEventId;
  /** s from mixing; null where it lies too far off to plan for. */
  time: number | null;
  low: number | null;
  high: number | null;
  origin: CureOrigin;
  basis: Basis;
  /** The time that was carried over to this history, and its temperature; absent for the clock. */
  stated?: { time: number; celsius: number };
  /** What the clock alone gives, s, for events that it knows. */
  clock: number | null;
  /** Conversion that the clock has reached at `time`; null where there is none. */
  conversion: number | null;
}

export interface Timetable {
  events: readonly CureEvent[];
  /** Of the middle, a slower and a faster clock. */
  course: Course;
  slower: Course;
  faster: Course;
  /** Temperature that, kept throughout, would age the resin as much until its full cure, °C; null where that is too far off. */
  evenTemperature: number | null;
  /** Conversion at full cure here, and where the sheet's own temperature were kept for the sheet's own time. */
  cured: { here: number; asStated: number } | null;
}

const hour = 3600;
const day = 24 * hour;

/** The clock is good to a quarter of any time, so its rates to these factors. */
const rateBand = { slower: 1 / 1.25, faster: 1 / 0.75 };
/** Conversions between which a coat stops bonding by itself to the next. */
export const recoatShuts = { from: 0.75, to: 0.8 };
/** Room temperature that practice means, °C. */
const roomTemperature = 22;
/** Until a coating epoxy goes on to its next stage at room temperature; common practice. */
export const nextStage = 24 * hour;
/** A slow resin takes longer to that: so many times what a thin layer of it takes to gel; from memory. */
const nextStageOverGel = 4;
/** Full cure where nothing says otherwise, at room temperature; common practice. */
export const usualCure = 7 * day;
/** Light use comes at three of the seven days. */
const lightShare = 3 / 7;
/** Longest run of the clock, s, and how much further than the full cure it looks. */
const longestRun = 120 * day;
const beyond = 1.15;

/** A time that holds at a temperature, and who says so. */
interface Stated {
  time: number;
  celsius: number;
  origin: CureOrigin;
  basis: Basis;
}

/** A wait in the words of the sheet, the kind or practice. */
function statedBy(resin: Resin, name: ResinFigureName): Stated | undefined {
  const figure: Figure | null = resin.figures[name];
  if (!figure) return undefined;
  return {
    time: figure.value,
    celsius: resin.figures.cureTemperature?.value ?? roomTemperature,
    origin: figure.basis === 'supplier-sheet' ? 'sheet' : 'kind',
    basis: figure.basis,
  };
}

/** A time with its band, s; null where it lies too far off to plan for. */
type Span = Pick<CureEvent, 'time' | 'low' | 'high'>;

/** The later of two spans. */
function later(one: Span, other: Span): Span {
  const of = (name: keyof Span) =>
    one[name] === null || other[name] === null ? null : Math.max(one[name], other[name]);
  return { time: of('time'), low: of('low'), high: of('high') };
}

/** Waits that only practice knows, where neither sheet nor kind speaks. */
function practice(time: number, basis: Basis = 'shop-practice'): Stated {
  return { time, celsius: roomTemperature, origin: 'practice', basis };
}

/**
 * Timetable of a coat or a thin layer, from mixing to the table, under a history of temperatures.
 *
 * The sheet wins where it speaks. Its times hold at its temperature; they are carried over to the history by the
 * Arrhenius clock, each stretch counting as many times more as the resin cures faster in it. Waits before use are never
 * made shorter than the sheet says, however warm the shop is: heat hastens the cure, but no maker has said that it
 * hastens what food asks for. Where neither sheet nor kind speaks, the clock gives work, gel and the recoat window, and
 * common practice the rest.
 */
export function timetableOf(resin: Resin, known: ResinKinetics, history: History): Timetable {
  const age = (stated: Stated, energy: number, hasty: boolean): number | null =>
    timeOfAge(history, stated.time, (celsius) => {
      const factor = rateFactor(energy, stated.celsius, celsius);
      return hasty ? factor : Math.min(1, factor);
    });
  const energy = known.kinetics.activationEnergy;
  /** The stated wait under the history, with the band that the energy leaves it. */
  const carry = (stated: Stated, hasty = true): Span => {
    const all = [energy, energy - known.energyBand, energy + known.energyBand].map((value) =>
      age(stated, value, hasty),
    );
    const [time] = all as [number | null];
    const finite = all.filter((value) => value !== null);
    return finite.length < all.length || time === null
      ? { time, low: null, high: null }
      : { time, low: Math.min(...finite), high: Math.max(...finite) };
  };

  const cure = statedBy(resin, 'cure') ?? practice(usualCure);
  const full = carry(cure, false);
  // Nothing is fit for use before it is cured, whatever else is said of it.
  const food = statedBy(resin, 'foodService');
  const served = food ? later(carry(food, false), full) : full;
  const until = Math.min(longestRun, beyond * (served.time ?? longestRun));
  const run = (factor: number) =>
    cureUnder({ ...known.kinetics, k2At25C: known.kinetics.k2At25C * factor }, known.glass, history, until);
  const [course, slower, faster] = [run(1), run(rateBand.slower), run(rateBand.faster)];

  const stated = (id: CureEventId, wait: Stated, times: Span, clock: number | null = null): CureEvent => ({
    id,
    ...times,
    origin: wait.origin,
    basis: derivedBasis([wait.basis]),
    stated: { time: wait.time, celsius: wait.celsius },
    clock,
    conversion: times.time === null ? null : course.at(times.time),
  });
  const clocked = (id: CureEventId, of: (course: Course) => number | null, latest = of): CureEvent => {
    const time = of(course);
    return {
      id,
      time,
      low: of(faster),
      high: latest(slower),
      origin: 'clock',
      basis: 'memory',
      clock: time,
      conversion: time === null ? null : course.at(time),
    };
  };

  const opens = (one: Course) => one.timeOf(gelPoint);
  const shuts = (conversion: number) => (one: Course) => {
    const byCure = one.timeOf(conversion);
    const byGlass = one.first(
      (reached, time) => reached > gelPoint && glassTransition(reached, known.glass) >= history.at(time),
    );
    return byCure === null || byGlass === null ? (byCure ?? byGlass) : Math.min(byCure, byGlass);
  };
  const openWait = statedBy(resin, 'recoatOpens');
  const shutWait = statedBy(resin, 'recoatCloses') ?? shutAfter(openWait, known);
  const sand = statedBy(resin, 'sandable') ?? practiceOfSanding(known);
  const light = later(carry({ ...cure, time: lightShare * cure.time }, false), carry(sand));
  const byPractice = { origin: 'practice', basis: 'shop-practice' } as const;
  return {
    events: [
      clocked('work', (one) => one.timeOf(workConversion)),
      clocked('gel', opens),
      openWait ? stated('recoatOpens', openWait, carry(openWait), opens(course)) : clocked('recoatOpens', opens),
      shutWait
        ? stated('recoatCloses', shutWait, carry(shutWait), shuts(recoatShuts.from)(course))
        : clocked('recoatCloses', shuts(recoatShuts.from), shuts(recoatShuts.to)),
      stated('sandable', sand, carry(sand)),
      stated('lightUse', { ...practice(lightShare * cure.time), celsius: cure.celsius }, light),
      stated('fullCure', cure, full),
      stated('oil', { ...cure, ...byPractice }, full),
      stated('foodService', food ?? { ...cure, ...byPractice }, served),
    ],
    course,
    slower,
    faster,
    evenTemperature: full.time === null ? null : even(history, full.time, energy),
    cured:
      full.time === null || full.time > until ? null : { here: course.at(full.time), asStated: asStated(known, cure) },
  };
}

/** Where a sheet says when the window opens and not when it shuts: as much later as on the clock. */
function shutAfter(opens: Stated | undefined, { kinetics }: ResinKinetics): Stated | undefined {
  if (!opens) return undefined;
  const ratio =
    timeToConversion(recoatShuts.from, opens.celsius, kinetics) / timeToConversion(gelPoint, opens.celsius, kinetics);
  return { time: opens.time * ratio, celsius: opens.celsius, origin: 'clock', basis: 'memory' };
}

/** About 24 hours at room temperature for a coating epoxy; longer for a slow one. */
function practiceOfSanding({ kinetics }: ResinKinetics): Stated {
  const slow = nextStageOverGel * timeToConversion(gelPoint, roomTemperature, kinetics);
  return slow > nextStage ? practice(slow, 'memory') : practice(nextStage);
}

/** The one temperature that ages a resin as much in a time as a history does, °C. */
function even(history: History, until: number, energy: number): number {
  // Found by halving between the history's own ends: ageing grows with temperature.
  let [low, high] = [history.lowest, history.highest];
  for (let tries = 0; tries < 30 && high - low > 0.01; tries += 1) {
    const middle = (low + high) / 2;
    const age = timeOfAge(history, until, (celsius) => rateFactor(energy, middle, celsius));
    // Reached sooner than at the even temperature: the history is the warmer of the two.
    if (age !== null && age < until) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function asStated({ kinetics, glass }: ResinKinetics, cure: Stated): number {
  return cureUnder(kinetics, glass, steady(cure.celsius), Math.min(longestRun, cure.time)).at(cure.time);
}
