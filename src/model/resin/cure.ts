import { cureRate, type Glass, glassTransition, vitrification } from './clock.ts';
import type { History } from './history.ts';
import { arrhenius, type Kinetics } from './kinetics.ts';

/** How far a thin layer has cured, from mixing on. */
export interface Course {
  /** Conversion at a time in s; at the end of the run for any later time. */
  at(time: number): number;
  /** When a conversion is reached, s; null where the run ends before. */
  timeOf(conversion: number): number | null;
  /** When something first holds of conversion and time, s; null where it never does within the run. */
  first(holds: (conversion: number, time: number) => boolean): number | null;
  /** Where the run ends, s. */
  end: number;
}

/** Most conversion of a step, and its longest time in s: late in the cure hardly anything moves. */
const conversionStep = 0.005;
const longestStep = 6 * 3600;

/**
 * Follow the cure of a thin layer, which has the temperature of its shop, and slows as its glass transition overtakes it.
 *
 * Steps of fourth order that end at every corner of the history; so short that the slowing, which is the steepest thing in it,
 * is followed and never overshot.
 *
 * @param until end of the run, s
 */
export function cureUnder(kinetics: Kinetics, glass: Glass, history: History, until: number): Course {
  const rateAt = (conversion: number, celsius: number) =>
    cureRate(conversion, arrhenius(kinetics.k2At25C, kinetics.activationEnergy, celsius), kinetics) *
    vitrification(glassTransition(conversion, glass), celsius);
  const times = [0];
  const conversions = [0];
  let [time, conversion] = [0, 0];
  while (time < until) {
    const rate = rateAt(conversion, history.at(time));
    const step = Math.min(conversionStep / rate, longestStep, history.nextCorner(time) - time, until - time);
    // Just inside the step: on its very end the history may have jumped.
    const [middle, end] = [history.at(time + step / 2), history.at(time + step * (1 - 1e-9))];
    // A stage that overshoots would find a rate below zero, and the cure would run backwards without end.
    const within = (reached: number) => Math.min(1, Math.max(conversion, reached));
    const second = rateAt(within(conversion + (step / 2) * rate), middle);
    const third = rateAt(within(conversion + (step / 2) * second), middle);
    const fourth = rateAt(within(conversion + step * third), end);
    conversion = within(conversion + (step / 6) * (rate + 2 * second + 2 * third + fourth));
    time += step;
    times.push(time);
    conversions.push(conversion);
  }
  return courseOf(times, conversions);
}

function courseOf(times: readonly number[], conversions: readonly number[]): Course {
  const end = times[times.length - 1] as number;
  /** Index of the first entry of a growing list that is not below a value. */
  const reach = (list: readonly number[], value: number) => {
    let [low, high] = [0, list.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((list[middle] as number) >= value) high = middle;
      else low = middle + 1;
    }
    return low;
  };
  /** The value of one list where another has a value, straight between entries. */
  const read = (from: readonly number[], to: readonly number[], value: number): number | null => {
    const index = reach(from, value);
    const upper = from[index];
    if (upper === undefined) return null;
    const lower = from[index - 1];
    if (lower === undefined) return to[index] as number;
    const [start, finish] = [to[index - 1] as number, to[index] as number];
    return start + ((finish - start) * (value - lower)) / (upper - lower);
  };
  return {
    end,
    at: (time) => read(times, conversions, time) ?? (conversions[conversions.length - 1] as number),
    timeOf: (conversion) => read(conversions, times, conversion),
    first: (holds) => {
      const index = times.findIndex((time, at) => holds(conversions[at] as number, time));
      return index < 0 ? null : (times[index] as number);
    },
  };
}
