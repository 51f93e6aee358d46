import type { WorkedMethod } from '../../../src/method/case/types.ts';
import type { Session } from '../../../src/method/plan/sessions.ts';
import type { Timetable, Work } from '../../../src/method/plan/timetable.ts';

/**
 * What is wrong with a timetable, judged by the method and the clock alone: it shares no code with what makes one.
 *
 * A step's work is given in stretches, each for some pieces; a sitting that closing time interrupts has several stretches.
 */
export function faultsOf(worked: WorkedMethod, timetable: Timetable, people: number): string[] {
  const faults: string[] = [];
  const steps = new Map(worked.steps.map((step) => [step.id, step]));
  const works = timetable.steps.flatMap(({ work }) => work);
  const given = new Set(timetable.secondWays.map(({ step, after }) => `${after} ${step}`));

  for (const { step, start, end } of works) {
    if (end === start) continue;
    if (!timetable.open.some((span) => span.start <= start && end <= span.end))
      faults.push(`${step} is worked on from ${start} to ${end}, when nobody is there`);
  }

  const all = Array.from({ length: worked.pieces }, (_, at) => at + 1);
  const of = (id: string, piece: number): Work[] =>
    works.filter(({ step, pieces: [first, last] }) => step === id && first <= piece && piece <= last);
  const begins = (id: string, piece: number) => Math.min(...of(id, piece).map(({ start }) => start));
  const ends = (id: string, piece: number) => Math.max(...of(id, piece).map(({ end }) => end));
  const whole = (id: string) => steps.get(id)?.hands.each === 0;

  for (const { id, hands, after, record, interrupt } of worked.steps) {
    for (const piece of all) if (of(id, piece).length === 0) faults.push(`${id} is never done to piece ${piece}`);
    // Where moulds or clamps are few it is done in rounds, each in one go.
    if (interrupt === 'never' && all.some((piece) => of(id, piece).length !== 1)) faults.push(`${id} is interrupted`);
    for (const { step: before, least = 0, most, counts } of after) {
      for (const piece of all) {
        const start = begins(id, piece);
        const from = counts === 'start' ? begins(before, piece) : ends(before, piece);
        // What is set up may be set up while the wait still runs.
        if (ends(id, piece) - hands.each - from < least && start + hands.setUp - from < least)
          faults.push(`${id} comes ${start - from} min after ${before} on piece ${piece}, and ${least} are asked`);
        if (start < ends(before, piece) && hands.setUp + hands.each > 0)
          faults.push(`${id} begins on piece ${piece} before ${before} has ended on it`);
        if (most !== undefined && !given.has(`${before} ${id}`) && start - from > most)
          faults.push(`${id} comes ${start - from} min after ${before} on piece ${piece}, and the window is ${most}`);
      }
    }
    const minutes = works.filter(({ step }) => step === id).reduce((sum, { start, end }) => sum + end - start, 0);
    if (minutes < hands.setUp + (whole(id) ? 0 : hands.each)) faults.push(`${id} takes less than one piece does`);
    if (record.hands && minutes === 0 && hands.setUp + hands.each > 0) faults.push(`${id} takes no time`);
  }

  // At any moment: no more hands than people, no more of a tool than there are.
  const moments = [...new Set(works.map(({ start }) => start))];
  for (const moment of moments) {
    const running = works.filter(({ start, end }) => start <= moment && moment < end);
    const hands = running.reduce((sum, { step }) => sum + (steps.get(step)?.people ?? 1), 0);
    if (hands > people) faults.push(`${hands} hands are at work at ${moment}, and there are ${people}`);
    for (const { name, record, count } of Object.values(worked.tools)) {
      const taken = running.filter(({ step }) => steps.get(step)?.record.tools?.includes(name)).length;
      if (record.count !== undefined && taken > count) faults.push(`${name} is taken ${taken} times at ${moment}`);
    }
  }
  // A held tool, piece by piece: from the start of the step that takes it to the end of the one that gives it back.
  for (const { name, count } of Object.values(worked.tools)) {
    const spans = worked.steps.flatMap(({ id, record }) =>
      (record.holds ?? [])
        .filter(({ tool }) => tool === name)
        .flatMap(({ until, each = 1 }) =>
          all.map((piece) => ({ from: begins(id, piece), to: ends(until, piece), each })),
        ),
    );
    for (const { from } of spans) {
      const held = spans.reduce((sum, span) => sum + (span.from <= from && from < span.to ? span.each : 0), 0);
      if (held > count) faults.push(`${held} of ${name} are held at ${from}, and there are ${count}`);
    }
  }
  return faults;
}

/** What is wrong with the list of who does what: somebody in two places, or fewer hands at a step than it needs for its pieces in that time. */
export function dutyFaultsOf(worked: WorkedMethod, sessions: readonly Session[], names: readonly string[]): string[] {
  const faults: string[] = [];
  const duties = sessions.flatMap(({ work }) => work);
  for (const [at, one] of duties.entries()) {
    for (const other of duties.slice(at + 1))
      if (one.start < other.end && other.start < one.end)
        for (const name of one.by)
          if (other.by.includes(name)) faults.push(`${name} is at ${one.step} and at ${other.step} at ${one.start}`);
    const step = worked.steps.find(({ id }) => id === one.step);
    if (new Set(one.by).size !== one.by.length || one.by.some((name) => !names.includes(name)))
      faults.push(`${one.step} names ${one.by.join(', ')}`);
    const each = step?.people ?? 1;
    if (one.by.length < each || one.by.length % each !== 0)
      faults.push(`${one.step} has ${one.by.length} people, and takes ${each} at a time`);
    // Over all its stretches every piece has had its time under somebody’s hands.
    const own = duties.filter(
      ({ step: id, pieces }) => id === one.step && pieces.every((piece, end) => piece === one.pieces[end]),
    );
    const given = own.reduce((sum, { start, end, by }) => sum + ((end - start) * by.length) / each, 0);
    const asked = (step?.hands.each ?? 0) * (one.pieces[1] - one.pieces[0] + 1);
    if (given < asked) faults.push(`${one.step} has ${given} min for its pieces, and takes ${asked}`);
  }
  return faults;
}
