import type { Hold, Lag, Problem, Span } from './problem.ts';
import { joined, type Track, trackOf } from './track.ts';

/** Why one activity waits for another. */
export type Cause =
  | { readonly kind: 'lag'; readonly lag: Lag; readonly part: 'least' | 'most' }
  | { readonly kind: 'hold'; readonly hold: Hold }
  | { readonly kind: 'resource'; readonly resource: string }
  | { readonly kind: 'end' };

/**
 * One rule of the form: the named end of `to` is at least `weight` minutes after the named end of `from`. Activities by their number.
 */
export interface Arc {
  readonly from: number;
  readonly fromEnd: boolean;
  readonly to: number;
  readonly toEnd: boolean;
  readonly weight: number;
  readonly cause: Cause;
}

/** Units of a resource held from the start of one activity to the end of another, or of the same, in its open hours alone where given. */
export interface Occupation {
  readonly from: number;
  readonly to: number;
  readonly units: number;
  readonly open: readonly Span[] | undefined;
}

/** A resource and all who hold it. */
export interface Store {
  readonly name: string;
  readonly capacity: number;
  readonly occupations: readonly Occupation[];
}

/** A problem by numbers. The last activity is the end of all: it takes no time and comes after every other. */
export interface Model {
  readonly ids: readonly string[];
  readonly durations: readonly number[];
  readonly tracks: readonly Track[];
  readonly splittable: readonly boolean[];
  readonly arcs: readonly Arc[];
  readonly stores: readonly Store[];
  /** Least start of each. */
  readonly earliest: readonly number[];
  /** Greatest end of each. */
  readonly latest: readonly number[];
  /** Number of the end of all. */
  readonly last: number;
}

const endsOf = {
  'end-start': [true, false],
  'start-start': [false, false],
  'end-end': [true, true],
  'start-end': [false, true],
} as const;

/** The two rules of a wait: at least, and at most; either may be without limit and then is none. */
function arcsOf(lag: Lag, numberOf: ReadonlyMap<string, number>): Arc[] {
  const [fromEnd, toEnd] = endsOf[lag.kind];
  const from = numberOf.get(lag.from) as number;
  const to = numberOf.get(lag.to) as number;
  const least = lag.least ?? 0;
  const most = lag.most ?? Number.POSITIVE_INFINITY;
  const arcs: Arc[] = [];
  if (Number.isFinite(least))
    arcs.push({ from, fromEnd, to, toEnd, weight: least, cause: { kind: 'lag', lag, part: 'least' } });
  if (Number.isFinite(most))
    arcs.push({
      from: to,
      fromEnd: toEnd,
      to: from,
      toEnd: fromEnd,
      weight: -most,
      cause: { kind: 'lag', lag, part: 'most' },
    });
  return arcs;
}

/**
 * Number everything and write waits, holds and the end of all as arcs.
 *
 * @param problem a problem that `needProblem` passed
 */
export function compile(problem: Problem): Model {
  const { activities, horizon } = problem;
  const books = new Map(problem.calendars.map(({ id, open }) => [id, joined(open)]));
  const numberOf = new Map(activities.map(({ id }, at) => [id, at]));
  const last = activities.length;
  const end = { id: '', duration: 0, uses: {}, splittable: false };
  const tracks = [...activities, end].map((each) =>
    trackOf(each, 'calendar' in each && each.calendar !== undefined ? books.get(each.calendar) : undefined),
  );
  const arcs = problem.lags.flatMap((lag) => arcsOf(lag, numberOf));
  for (const hold of problem.holds)
    arcs.push({
      from: numberOf.get(hold.from) as number,
      fromEnd: false,
      to: numberOf.get(hold.to) as number,
      toEnd: true,
      weight: 0,
      cause: { kind: 'hold', hold },
    });
  for (let from = 0; from < last; from += 1)
    arcs.push({ from, fromEnd: true, to: last, toEnd: false, weight: 0, cause: { kind: 'end' } });
  const stores = Object.entries(problem.resources).map(([name, capacity]) => {
    const occupations: Occupation[] = activities.flatMap(({ uses, duration }, at) => {
      const units = uses[name] ?? 0;
      return units > 0 && duration > 0 ? [{ from: at, to: at, units, open: tracks[at]?.open }] : [];
    });
    for (const { resource, units, from, to } of problem.holds)
      if (resource === name && units > 0)
        occupations.push({
          from: numberOf.get(from) as number,
          to: numberOf.get(to) as number,
          units,
          open: undefined,
        });
    return { name, capacity, occupations };
  });
  const bound = (table: Readonly<Record<string, number>> | undefined, id: string) =>
    table !== undefined && Object.hasOwn(table, id) ? (table[id] as number) : undefined;
  return {
    ids: [...activities.map(({ id }) => id), ''],
    durations: [...activities.map(({ duration }) => duration), 0],
    tracks,
    splittable: [...activities.map(({ splittable }) => splittable), false],
    arcs,
    stores,
    earliest: [...activities.map(({ id }) => Math.max(0, bound(problem.earliest, id) ?? 0)), 0],
    latest: [...activities.map(({ id }) => Math.min(horizon, bound(problem.latest, id) ?? horizon)), horizon],
    last,
  };
}

/**
 * The same problem seen backwards from a minute: what was t minutes from zero lies `at` - t from the new zero, starts are ends and what came
 * first comes last. A shortest plan of it is a plan of the first that ends by `at` and begins as late as can be.
 */
export function mirrored(problem: Problem, at: number): Problem {
  const { activities, horizon } = problem;
  const kinds = {
    'end-start': 'end-start',
    'start-start': 'end-end',
    'end-end': 'start-start',
    'start-end': 'start-end',
  } as const;
  const earliest: Record<string, number> = {};
  const latest: Record<string, number> = {};
  for (const { id } of activities) {
    earliest[id] = at - Math.min(problem.latest?.[id] ?? horizon, horizon, at);
    latest[id] = at - Math.max(problem.earliest?.[id] ?? 0, 0);
  }
  return {
    ...problem,
    lags: problem.lags.map((lag) => ({ ...lag, from: lag.to, to: lag.from, kind: kinds[lag.kind] })),
    holds: problem.holds.map((hold) => ({ ...hold, from: hold.to, to: hold.from })),
    calendars: problem.calendars.map(({ id, open }) => ({ id, open: turned(open, at) })),
    horizon: at,
    earliest,
    latest,
  };
}

/** Spans seen backwards from a minute, in their new order. */
export function turned(spans: readonly Span[], at: number): Span[] {
  return spans.map(({ start, end }) => ({ start: at - end, end: at - start })).reverse();
}
