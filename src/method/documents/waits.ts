import { exactTime, noLessThan } from '../page/time-words.ts';
import type { MethodPage, ShownBound, ShownMoment, ShownStep, ShownTimetable } from '../page/types.ts';
import { momentText } from './words.ts';

/** From here on, min, a wait is one to write down the begin of: nobody keeps it in mind. */
const worthWriting = 30;

function clockOf(
  { moments, relative }: { moments: Readonly<Record<number, ShownMoment>>; relative: boolean },
  minute: number,
): string {
  const moment = moments[minute];
  return moment ? momentText(moment, relative) : '';
}

function between({ least, most, counts }: ShownBound, before: string): string {
  const from = counts === 'start' ? `${before} has begun` : `${before} is done`;
  if (least !== undefined && most !== undefined)
    return `Begin at the earliest ${noLessThan(least)} and at the latest ${exactTime(most)} after ${from}`;
  if (least !== undefined) return `Wait at least ${noLessThan(least)} after ${from}`;
  return `Begin at the latest ${exactTime(most ?? 0)} after ${from}`;
}

/**
 * What is said where a step is planned to begin before its wait is over: a wait is for the pieces, and what is set up stands ready by its end.
 *
 * @param until minute at which the wait is over
 */
export function setUpFirst({ sessions }: ShownTimetable, step: string, until: number): string {
  const begun = sessions.flatMap(({ work }) => work.filter((each) => each.step === step).map(({ start }) => start));
  return Math.min(...begun) < until ? ' (set up by then)' : '';
}

/** What a step waits for, each with the clock as planned; where there is no timetable, without. */
export function waitLines({ timetable, steps, makes }: MethodPage, step: ShownStep): string[] {
  const bounds = timetable?.bounds?.filter(({ until }) => until === step.id) ?? [];
  if (!timetable || bounds.length === 0) return [...step.waits];
  const byStep = new Map<string, ShownBound[]>();
  for (const bound of bounds) byStep.set(bound.step, [...(byStep.get(bound.step) ?? []), bound]);
  const lines = [...byStep].flatMap(([id, runs]) => {
    const before = steps.find((each) => each.id === id);
    const [first] = runs;
    if (!before || !first) return [];
    const clocks = runs.map(({ pieces, earliest, latest }) => {
      const [from, to] = pieces;
      const which =
        runs.length === 1 || (from === 1 && to === makes.pieces)
          ? ''
          : from === to
            ? `piece ${from} `
            : `pieces ${from} to ${to} `;
      return [
        ...(earliest === undefined
          ? []
          : [`${which}not before ${clockOf(timetable, earliest)}${setUpFirst(timetable, step.id, earliest)}`]),
        ...(latest === undefined
          ? []
          : [`${earliest === undefined ? which : ''}not after ${clockOf(timetable, latest)}`]),
      ].join(', ');
    });
    return `${between(first, `step ${before.number}`)}. As planned: ${clocks.join('; ')}.`;
  });
  // What only follows a step in order has no clock.
  return [...step.waits.filter((words) => words.startsWith('Begin once')), ...lines];
}

/** Whether a later step counts from this one, so that the hour is written down. */
export function isCountedFrom({ timetable }: MethodPage, { id }: ShownStep): 'start' | 'end' | undefined {
  const bounds =
    timetable?.bounds?.filter(
      ({ step, least = 0, most }) => step === id && (least >= worthWriting || most !== undefined),
    ) ?? [];
  return bounds.find(({ counts }) => counts === 'start')?.counts ?? bounds[0]?.counts;
}
