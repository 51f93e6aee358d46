import { rateFactor } from './clock.ts';
import { type Course, cureUnder } from './cure.ts';
import type { ResinKinetics } from './fit.ts';
import { type History, steady, timeOfAge } from './history.ts';
import { oven, type Stated } from './stated.ts';

/** A time with its band, s from mixing; null where it never comes, or lies too far off to plan for. */
export interface Span {
  time: number | null;
  low: number | null;
  high: number | null;
}

/** A wait before the resin is used, and what decides it: the time as it was stated, or how far the cure has come. */
export interface Wait extends Span {
  by: 'stated' | 'cure';
  /** Conversion that the stated time brings at a little less than its own temperature: what is asked for here too. */
  asks: number;
  /** The stated time carried over by the rate of cure alone, s; null where it lies too far off. */
  carried: number | null;
}

/**
 * How much colder than its own temperature a stated time must still hold, K. No shop keeps a temperature to better than that, and room
 * temperature, which most sheets mean, is 20 to 25 °C: the cure that a sheet asks for is taken as what its time brings at 2 °C less.
 */
export const sheetTolerance = 2;

/**
 * A time is given only where the cure gets there within so many times the stated wait carried over. Further out hard resin creeps along a
 * curve so flat that a degree in its glass transition, which is assumed, moves the date by a fifth: that is no date to plan for.
 */
export const farthest = 3;

/** The times that an uncertain activation energy leaves open, the middle first. */
function spanOf(times: readonly (number | null)[]): Span {
  const [time = null] = times;
  const finite = times.filter((each) => each !== null);
  return time === null || finite.length < times.length
    ? { time, low: null, high: null }
    : { time, low: Math.min(...finite), high: Math.max(...finite) };
}

const energiesOf = ({ kinetics, energyBand }: ResinKinetics): readonly [number, number, number] => {
  const { activationEnergy: energy } = kinetics;
  return [energy, energy - energyBand, energy + energyBand];
};

/** A stated time carried over to a history by the rate of cure: later in the cold, and sooner in the warm. */
export function carry(stated: Stated, known: ResinKinetics, history: History): Span {
  return spanOf(energiesOf(known).map((energy) => aged(stated, energy, history)));
}

/** The same of a wait that warmth never shortens: until the resin may be sanded. */
export function carryNoSooner(stated: Stated, known: ResinKinetics, history: History): Span {
  return spanOf(energiesOf(known).map((energy) => aged(stated, energy, history, 1)));
}

/** When a history has aged a resin as much as a stated time does, s, where it ages no more than so many times faster. */
function aged({ time, celsius }: Stated, energy: number, history: History, fastest = Number.POSITIVE_INFINITY) {
  return timeOfAge(history, time, (here) => Math.min(fastest, rateFactor(energy, celsius, here)));
}

/**
 * Waits before a resin is oiled, used and lent to food, under a history of temperatures.
 *
 * Warmth never shortens one: heat hastens the cure, but no maker has said that it hastens what such a wait is for. Cold lengthens it twice:
 * the resin cures more slowly, and where it turns glassy before it has come as far as the stated time brings it at its own temperature, it
 * waits until it has. Where that is never, or too far off to plan for, there is no time: such a shop must be warmed.
 *
 * @param stated the waits by name, each at its temperature
 */
export function waitsBeforeUse<Name extends string>(
  stated: Readonly<Record<Name, Stated>>,
  known: ResinKinetics,
  history: History,
): Record<Name, Wait> {
  const names = Object.keys(stated) as Name[];
  const perEnergy = energiesOf(known).map((energy) => {
    const kinetics = { ...known.kinetics, activationEnergy: energy };
    const carried = names.map((name) => aged(stated[name], energy, history, 1));
    const horizon = farthest * Math.max(0, ...carried.map((time) => time ?? 0));
    const course = cureUnder(kinetics, known.glass, history, horizon);
    const hottest = history.highest;
    return names.map((name, at) => waitOf(stated[name], carried[at] ?? null, course, hottest, { ...known, kinetics }));
  });
  const waits = names.map((name, at): [Name, Wait] => {
    const [middle, ...ends] = perEnergy.map((row) => row[at] as Single) as [Single, ...Single[]];
    const { by, asks, carried } = middle;
    return [name, { ...spanOf([middle.time, ...ends.map(({ time }) => time)]), by, asks, carried }];
  });
  return Object.fromEntries(waits) as Record<Name, Wait>;
}

type Single = Pick<Wait, 'time' | 'by' | 'asks' | 'carried'>;

/** One wait with one activation energy. */
function waitOf(
  { time, celsius }: Stated,
  carried: number | null,
  course: Course,
  hottest: number,
  { kinetics, glass }: ResinKinetics,
): Single {
  const asks = curedAfter(time, celsius, { kinetics, glass });
  if (carried === null) return { time: null, by: 'stated', asks, carried };
  // Hours in an oven after the gel are no days on a shelf, whatever the rate of cure makes of them.
  if (celsius > oven && hottest < oven) return { time: null, by: 'cure', asks, carried };
  const reached = course.timeOf(asks);
  // A thousandth is the difference of two step lengths.
  if (reached !== null && reached <= carried * 1.001) return { time: carried, by: 'stated', asks, carried };
  return { time: reached !== null && reached <= farthest * carried ? reached : null, by: 'cure', asks, carried };
}

/** Conversion that a stated time brings where its temperature is kept but for the tolerance, and the time is lengthened for that. */
function curedAfter(time: number, celsius: number, { kinetics, glass }: Pick<ResinKinetics, 'kinetics' | 'glass'>) {
  const colder = celsius - sheetTolerance;
  const until = time / rateFactor(kinetics.activationEnergy, celsius, colder);
  return cureUnder(kinetics, glass, steady(colder), until).at(until);
}

/** The later of two waits, with the later ends of their bands; where either never comes, neither does. */
export function later<One extends Span, Other extends Span>(one: One, other: Other): One | Other {
  if (one.time === null) return one;
  if (other.time === null) return other;
  const last = other.time > one.time ? other : one;
  const end = (name: 'low' | 'high') =>
    one[name] === null || other[name] === null ? null : Math.max(one[name], other[name]);
  return { ...last, low: end('low'), high: end('high') };
}
