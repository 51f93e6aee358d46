import type { Activity, Lag, Placement, Problem } from './problem.ts';

/**
 * Everything by which placements are no plan of the problem, one sentence each; empty when they are one.
 *
 * Written apart from the search and sharing nothing with it: it walks the minutes and counts, so that the one can be held against the other.
 *
 * @param problem what was to be planned
 * @param placements when each activity is worked on
 */
export function checkSchedule(problem: Problem, placements: readonly Placement[]): string[] {
  const faults: string[] = [];
  const placed = new Map<string, Placement>();
  for (const placement of placements) {
    if (placed.has(placement.id)) faults.push(`${placement.id} is placed twice`);
    if (!problem.activities.some(({ id }) => id === placement.id)) faults.push(`${placement.id} is no activity`);
    if (placement.pieces.length === 0) faults.push(`${placement.id} has no piece`);
    else placed.set(placement.id, placement);
  }
  for (const activity of problem.activities) {
    const placement = placed.get(activity.id);
    if (placement === undefined) faults.push(`${activity.id} is not placed`);
    else faults.push(...faultsOfPieces(problem, activity, placement));
  }
  if (placed.size < problem.activities.length) return faults;
  const startOf = (id: string) => (placed.get(id) as Placement).pieces[0]?.start as number;
  const endOf = (id: string) => (placed.get(id) as Placement).pieces.at(-1)?.end as number;
  for (const lag of problem.lags) faults.push(...faultsOfLag(lag, startOf, endOf));
  for (const { resource, from, to } of problem.holds)
    if (endOf(to) < startOf(from)) faults.push(`${resource} is given back by ${to} before ${from} takes it`);
  for (const resource of Object.keys(problem.resources)) {
    const fault = faultOfResource(problem, resource, placed, startOf, endOf);
    if (fault !== undefined) faults.push(fault);
  }
  return faults;
}

function faultsOfPieces(problem: Problem, activity: Activity, { pieces }: Placement): string[] {
  const { id, duration, calendar, splittable } = activity;
  const faults: string[] = [];
  let worked = 0;
  for (const { start, end } of pieces) {
    worked += end - start;
    if (!Number.isInteger(start) || !Number.isInteger(end)) faults.push(`${id} is not placed on whole minutes`);
    if (end < start || (end === start && duration > 0)) faults.push(`${id} has a piece without time, at ${start}`);
  }
  if (worked !== duration) faults.push(`${id} is worked on for ${worked} min, not ${duration}`);
  const start = pieces[0]?.start as number;
  const end = pieces.at(-1)?.end as number;
  if (start < 0 || start < (problem.earliest?.[id] ?? 0)) faults.push(`${id} starts too early, at ${start}`);
  if (end > problem.horizon || end > (problem.latest?.[id] ?? end)) faults.push(`${id} ends too late, at ${end}`);
  const hours = problem.calendars.find((each) => each.id === calendar)?.open;
  if (pieces.length > 1 && (!splittable || hours === undefined)) faults.push(`${id} is interrupted`);
  for (let at = 1; at < pieces.length; at += 1) {
    const [before, after] = [pieces[at - 1]?.end as number, pieces[at]?.start as number];
    if (after <= before) faults.push(`${id} goes on at ${after}, before it stopped at ${before}`);
    const idle = (hours ?? []).some((span) => span.start < after && span.end > before);
    if (idle) faults.push(`${id} rests in open hours between ${before} and ${after}`);
  }
  if (hours === undefined) return faults;
  for (const piece of pieces) {
    if (piece.start === piece.end) {
      if (!hours.some((span) => span.start <= piece.start && piece.start <= span.end))
        faults.push(`${id} falls at ${piece.start}, when ${calendar} is closed`);
      continue;
    }
    // Openings may touch, so what they cover is added up.
    let covered = 0;
    for (const span of hours) covered += Math.max(0, Math.min(span.end, piece.end) - Math.max(span.start, piece.start));
    if (covered !== piece.end - piece.start)
      faults.push(`${id} runs from ${piece.start} to ${piece.end}, partly while ${calendar} is closed`);
  }
  return faults;
}

function faultsOfLag(lag: Lag, startOf: (id: string) => number, endOf: (id: string) => number): string[] {
  const [first, second] = lag.kind.split('-');
  const from = first === 'end' ? endOf(lag.from) : startOf(lag.from);
  const to = second === 'end' ? endOf(lag.to) : startOf(lag.to);
  const wait = to - from;
  const name = `${first} of ${lag.from} to ${second} of ${lag.to}: ${wait} min`;
  const faults: string[] = [];
  if (wait < (lag.least ?? 0)) faults.push(`${name}, at least ${lag.least ?? 0} are asked`);
  if (wait > (lag.most ?? wait)) faults.push(`${name}, at most ${lag.most} are allowed`);
  return faults;
}

function faultOfResource(
  problem: Problem,
  resource: string,
  placed: ReadonlyMap<string, Placement>,
  startOf: (id: string) => number,
  endOf: (id: string) => number,
): string | undefined {
  const spans: { start: number; end: number; units: number }[] = [];
  for (const { id, uses } of problem.activities)
    for (const piece of placed.get(id)?.pieces ?? []) spans.push({ ...piece, units: uses[resource] ?? 0 });
  for (const hold of problem.holds)
    if (hold.resource === resource) spans.push({ start: startOf(hold.from), end: endOf(hold.to), units: hold.units });
  // Use grows only where a span starts, so it is enough to count there.
  for (const { start, end } of spans) {
    if (start >= end) continue;
    let used = 0;
    for (const other of spans) if (other.start <= start && start < other.end) used += other.units;
    if (used > (problem.resources[resource] as number))
      return `${used} of ${resource} are in use at ${start}, there are ${problem.resources[resource]}`;
  }
  return undefined;
}
