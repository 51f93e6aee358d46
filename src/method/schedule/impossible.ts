import { type Change, type Found, feasible, smallest, wide } from './change.ts';
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
  /** A set that no plan can keep, while without any one of them the rest can be kept; empty where nothing is proved. */
  readonly constraints: readonly Constraint[];
  /** Ways out, the smallest of each kind, the least minutes first, units last. */
  readonly changes: readonly (Change & {
    /** Does it alone make the whole problem possible? Otherwise only this conflict, and there is another. */
    readonly whole: boolean;
    /** Is every smaller change of its kind proved to be too small? */
    readonly smallest: boolean;
  })[];
}

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
function conflict(problem: Problem, nodes: number): readonly Constraint[] {
  const impossible = (kept: readonly Constraint[]) => feasible(only(problem, kept), nodes) === false;
  let kept: readonly Constraint[] = constraintsOf(problem);
  const waits = kept.filter(({ kind }) => kind !== 'use' && kind !== 'hold');
  if (waits.length < kept.length && impossible(waits)) kept = waits;
  for (let size = Math.ceil(kept.length / 2); ; size = Math.ceil(size / 2)) {
    let dropped = false;
    for (let from = 0; from < kept.length; ) {
      const rest = [...kept.slice(0, from), ...kept.slice(from + size)];
      if (rest.length < kept.length && impossible(rest)) {
        kept = rest;
        dropped = true;
      } else from += size;
    }
    // Once single ones are tried in vain, no one can be left out.
    if (size === 1 && !dropped) return kept;
  }
}

/** How many openings are tried for a later closing time. */
const openingsTried = 40;

/** Smallest change of what one constraint allows; several kinds for some. */
function changesOf(problem: Problem, constraint: Constraint, nodes: number): Found[] {
  const found = (make: (by: number) => Change, greatest: number): Found[] => {
    const change = smallest(problem, make, greatest, nodes);
    return change === undefined ? [] : [change];
  };
  const far = wide(problem);
  switch (constraint.kind) {
    case 'most':
      return found((by) => ({ kind: 'most', lag: constraint.lag, by }), far);
    case 'least':
      return found((by) => ({ kind: 'least', lag: constraint.lag, by }), far + problem.horizon);
    case 'horizon':
      return found((by) => ({ kind: 'horizon', by }), far - problem.horizon);
    case 'latest': {
      const { activity } = constraint;
      return found((by) => ({ kind: 'latest', activity, by }), problem.horizon - (problem.latest?.[activity] ?? 0));
    }
    case 'earliest': {
      const { activity } = constraint;
      return found((by) => ({ kind: 'earliest', activity, by }), problem.earliest?.[activity] ?? 0);
    }
    case 'use':
    case 'hold': {
      const resource =
        constraint.kind === 'use' ? constraint.resource : (problem.holds[constraint.hold]?.resource as string);
      const asked =
        problem.activities.reduce((sum, { uses }) => sum + (uses[resource] ?? 0), 0) +
        problem.holds.reduce((sum, hold) => sum + (hold.resource === resource ? hold.units : 0), 0);
      return found((by) => ({ kind: 'capacity', resource, by }), asked - (problem.resources[resource] as number));
    }
    case 'calendar':
      return openings(problem, constraint.calendar, nodes);
  }
}

/** The opening that must close later by least. */
function openings(problem: Problem, calendar: string, nodes: number): Found[] {
  const open = joined(problem.calendars.find(({ id }) => id === calendar)?.open ?? []);
  let best: Found | undefined;
  for (const [at, { start: opens, end }] of open.slice(0, openingsTried).entries()) {
    const room = (open[at + 1]?.start ?? Math.max(end, problem.horizon)) - end;
    const make = (by: number): Change => ({ kind: 'opening', calendar, opens, by });
    const found = smallest(problem, make, Math.min(room, (best?.change.by ?? Number.POSITIVE_INFINITY) - 1), nodes);
    if (found !== undefined) best = found;
  }
  return best === undefined ? [] : [best];
}

function waysOut(problem: Problem, constraints: readonly Constraint[], nodes: number, whole: boolean) {
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
  let found = [...asked.values()].flatMap((each) => changesOf(problem, each, nodes));
  // A least wait may be a cure: shortening it is the way out only where there is no other.
  if (found.length === 0)
    found = constraints.filter(({ kind }) => kind === 'least').flatMap((each) => changesOf(problem, each, nodes));
  const units = ({ change }: Found) => (change.kind === 'capacity' ? 1 : 0);
  return found
    .sort((one, two) => units(one) - units(two) || one.change.by - two.change.by)
    .map(({ change, smallest }) => ({ ...change, whole, smallest }));
}

/**
 * Name what makes a problem impossible, and the smallest changes that make it possible, each tried out.
 *
 * @param proved whether the search has proved that there is no plan
 * @param nodes limit of each search; 2,000 are used where they suffice for the proof
 */
export function whyImpossible(problem: Problem, nodes: number, proved: boolean): Impossible {
  if (!proved) return { proved, constraints: [], changes: [] };
  const each = feasible(problem, Math.min(nodes, 2000)) === false ? Math.min(nodes, 2000) : nodes;
  const constraints = conflict(problem, each);
  const whole = waysOut(problem, constraints, each, true);
  return {
    proved,
    constraints,
    changes: whole.length > 0 ? whole : waysOut(only(problem, constraints), constraints, each, false),
  };
}
