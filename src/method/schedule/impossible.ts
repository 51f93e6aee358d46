import { type Change, type Found, feasible, type Purse, smallest, wide } from './change.ts';
import type { Problem } from './problem.ts';
import { joined } from './track.ts';

/** One thing that is asked of a plan. Lags and holds are named by their place in the problem. */
export type Constraint =
  | { readonly kind: 'least'; readonly lag: number }
  | { readonly kind: 'most'; readonly lag: number }
  | { readonly kind: 'hold'; readonly hold: number }
  | { readonly kind: 'use'; readonly activity: string; readonly resource: string }
  | { readonly kind: 'calendar'; readonly activity: string; readonly calendar: string }
  | { readonly kind: 'earliest'; readonly activity: string }
  | { readonly kind: 'latest'; readonly activity: string }
  | { readonly kind: 'horizon' };

/** Why there is no plan. */
export interface Impossible {
  /** Is it proved that there is none? Otherwise none was found within the limit of the search, and nothing else is known. */
  readonly proved: boolean;
  /** A set that no plan can keep; empty where nothing is proved. */
  readonly constraints: readonly Constraint[];
  /** Is it certain that without any one of them the rest can be kept? */
  readonly minimal: boolean;
  /** Ways out, the smallest of each kind, the least minutes first, units last. */
  readonly changes: readonly Way[];
}

/** A change that makes a plan possible. */
export type Way = Change & {
  /** Does it alone make the whole problem possible? Otherwise only this conflict, and there is another. */
  readonly whole: boolean;
  /** Is every smaller change of its kind proved to be too small? */
  readonly smallest: boolean;
};

/** Everything that is asked. */
function constraintsOf(problem: Problem): Constraint[] {
  const all: Constraint[] = [];
  problem.lags.forEach(({ least, most }, lag) => {
    if (least !== Number.NEGATIVE_INFINITY) all.push({ kind: 'least', lag });
    if (most !== undefined && Number.isFinite(most)) all.push({ kind: 'most', lag });
  });
  problem.holds.forEach((_, hold) => {
    all.push({ kind: 'hold', hold });
  });
  for (const { id: activity, uses, calendar } of problem.activities) {
    for (const [resource, units] of Object.entries(uses)) if (units > 0) all.push({ kind: 'use', activity, resource });
    if (calendar !== undefined) all.push({ kind: 'calendar', activity, calendar });
  }
  for (const kind of ['earliest', 'latest'] as const)
    for (const activity of Object.keys(problem[kind] ?? {})) all.push({ kind, activity });
  all.push({ kind: 'horizon' });
  // What belongs to the same activities stands together, so that it is left out together.
  const places = new Map(problem.activities.map(({ id }, at) => [id, at]));
  const placeOf = (each: Constraint) => {
    if ('activity' in each) return places.get(each.activity) as number;
    if ('lag' in each) return places.get(problem.lags[each.lag]?.to as string) as number;
    return 'hold' in each ? (places.get(problem.holds[each.hold]?.from as string) as number) : all.length;
  };
  return all.sort((one, two) => placeOf(one) - placeOf(two));
}

/** The problem with nothing asked but these. */
function only(problem: Problem, kept: readonly Constraint[]): Problem {
  const names = new Set(kept.map((each) => JSON.stringify(each)));
  const has = (each: Constraint) => names.has(JSON.stringify(each));
  const table = (kind: 'earliest' | 'latest') =>
    Object.fromEntries(Object.entries(problem[kind] ?? {}).filter(([activity]) => has({ kind, activity })));
  return {
    ...problem,
    activities: problem.activities.map(({ calendar, ...activity }) => ({
      ...activity,
      ...(calendar !== undefined && has({ kind: 'calendar', activity: activity.id, calendar }) ? { calendar } : {}),
      uses: Object.fromEntries(
        Object.entries(activity.uses).filter(([resource]) => has({ kind: 'use', activity: activity.id, resource })),
      ),
    })),
    lags: problem.lags.map((lag, at) => ({
      ...lag,
      least: has({ kind: 'least', lag: at }) ? (lag.least ?? 0) : Number.NEGATIVE_INFINITY,
      most: has({ kind: 'most', lag: at }) ? (lag.most as number) : Number.POSITIVE_INFINITY,
    })),
    holds: problem.holds.filter((_, hold) => has({ kind: 'hold', hold })),
    horizon: has({ kind: 'horizon' }) ? problem.horizon : wide(problem),
    earliest: table('earliest'),
    latest: table('latest'),
  };
}

/** Leave out what can be left out, in large pieces first, while the rest stays impossible. */
function conflict(problem: Problem, purse: Purse): { kept: readonly Constraint[]; minimal: boolean } {
  let kept: readonly Constraint[] = constraintsOf(problem);
  const waits = kept.filter(({ kind }) => kind !== 'use' && kind !== 'hold');
  if (waits.length < kept.length && feasible(only(problem, waits), purse) === false) kept = waits;
  for (let size = Math.ceil(kept.length / 2); ; size = Math.ceil(size / 2)) {
    let [dropped, minimal] = [false, true];
    for (let from = 0; from < kept.length; ) {
      const rest = [...kept.slice(0, from), ...kept.slice(from + size)];
      const possible = feasible(only(problem, rest), purse);
      if (possible === false) {
        kept = rest;
        dropped = true;
      } else {
        from += size;
        minimal &&= possible === true;
      }
    }
    // Once single ones are tried in vain, no one can be left out.
    if (size === 1 && !dropped) return { kept, minimal };
  }
}

/** How many openings are tried for a later closing time. */
const openingsTried = 40;

/**
 * Smallest changes of what one constraint allows.
 *
 * @param problem where the constraint's names are at home
 * @param target the problem, or a part of it, that the changes must make possible
 */
function changesOf(problem: Problem, target: Problem, constraint: Constraint, purse: Purse): Found[] {
  const found = (make: (by: number) => Change, greatest: number) => [smallest(target, make, greatest, purse)];
  const far = wide(target);
  switch (constraint.kind) {
    case 'most':
      return found((by) => ({ kind: 'most', lag: constraint.lag, by }), far);
    case 'least':
      return found((by) => ({ kind: 'least', lag: constraint.lag, by }), far + target.horizon);
    case 'horizon':
      return found((by) => ({ kind: 'horizon', by }), far - target.horizon);
    case 'latest': {
      const { activity } = constraint;
      return found((by) => ({ kind: 'latest', activity, by }), target.horizon - (target.latest?.[activity] ?? 0));
    }
    case 'earliest': {
      const { activity } = constraint;
      return found((by) => ({ kind: 'earliest', activity, by }), target.earliest?.[activity] ?? 0);
    }
    case 'use':
    case 'hold': {
      const resource =
        constraint.kind === 'use' ? constraint.resource : (problem.holds[constraint.hold]?.resource as string);
      const asked =
        target.activities.reduce((sum, { uses }) => sum + (uses[resource] ?? 0), 0) +
        target.holds.reduce((sum, hold) => sum + (hold.resource === resource ? hold.units : 0), 0);
      return found((by) => ({ kind: 'capacity', resource, by }), asked - (target.resources[resource] as number));
    }
    case 'calendar':
      return laterClosing(target, constraint.calendar, purse);
  }
}

/** The one opening that must close later by least, and by how much all must where that is less. */
function laterClosing(problem: Problem, calendar: string, purse: Purse): Found[] {
  const open = joined(problem.calendars.find(({ id }) => id === calendar)?.open ?? []);
  const rooms = open.map(({ end }, at) => (open[at + 1]?.start ?? Math.max(end, problem.horizon)) - end);
  const all = smallest(problem, (by) => ({ kind: 'hours', calendar, by }), Math.max(0, ...rooms), purse);
  const least = all.change?.by;
  if (least === undefined) return [];
  let best: Found = { change: undefined, smallest: all.smallest && open.length <= openingsTried };
  for (const [at, { start: opens }] of open.slice(0, openingsTried).entries()) {
    const make = (by: number): Change => ({ kind: 'opening', calendar, opens, by });
    const room = Math.min(rooms[at] as number, (best.change?.by ?? Number.POSITIVE_INFINITY) - 1);
    // One opening cannot do with less than all of them together.
    if (room < least) continue;
    const found = smallest(problem, make, room, purse);
    best = { change: found.change ?? best.change, smallest: best.smallest && found.smallest };
  }
  return best.change !== undefined && best.change.by <= least ? [best] : [all, best];
}

function waysOut(problem: Problem, target: Problem, constraints: readonly Constraint[], purse: Purse): Way[] {
  const asked = new Map<string, Constraint>();
  for (const each of constraints) {
    if (each.kind === 'least') continue;
    // Several activities on one calendar or resource call for the same change.
    const name =
      each.kind === 'calendar'
        ? `calendar ${each.calendar}`
        : each.kind === 'use' || each.kind === 'hold'
          ? `resource ${each.kind === 'use' ? each.resource : problem.holds[each.hold]?.resource}`
          : JSON.stringify(each);
    if (!asked.has(name)) asked.set(name, each);
  }
  const tried = (each: Constraint) =>
    changesOf(problem, target, each, purse).flatMap(({ change, smallest }) =>
      change === undefined ? [] : [{ ...change, whole: target === problem, smallest }],
    );
  // Openings last: there are many, and the searches for them would leave none for the others.
  const calls = [...asked.values()].sort(
    (one, two) => Number(one.kind === 'calendar') - Number(two.kind === 'calendar'),
  );
  let found = calls.flatMap(tried);
  // A least wait may be a cure: shortening it is the way out only where there is no other.
  if (found.length === 0) found = constraints.filter(({ kind }) => kind === 'least').flatMap(tried);
  const units = ({ kind }: Change) => (kind === 'capacity' ? 1 : 0);
  return found.sort((one, two) => units(one) - units(two) || one.by - two.by);
}

/** So many times the limit of one search all those may take that look for the cause, and as many those that look for ways out. */
const searches = 5;

const purseOf = (nodes: number): Purse => ({ each: nodes, left: searches * nodes });

/**
 * Name what makes a problem impossible, without any way out.
 *
 * @param proved whether the search has proved that there is no plan
 * @param nodes limit of the search that proved it
 */
export function causeOf(problem: Problem, nodes: number, proved: boolean): Impossible {
  if (!proved) return { proved, constraints: [], minimal: false, changes: [] };
  const { kept: constraints, minimal } = conflict(problem, purseOf(nodes));
  return { proved, constraints, minimal, changes: [] };
}

/** The same with the smallest changes that make the problem possible, each tried out; it takes several times as long as to name the cause. */
export function withWaysOut(problem: Problem, cause: Impossible, nodes: number): Impossible {
  const { proved, constraints } = cause;
  if (!proved) return cause;
  const whole = waysOut(problem, problem, constraints, purseOf(nodes));
  return {
    ...cause,
    changes: whole.length > 0 ? whole : waysOut(problem, only(problem, constraints), constraints, purseOf(nodes)),
  };
}
