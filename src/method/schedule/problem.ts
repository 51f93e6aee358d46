/** Minutes from the plan's zero; a piece of work runs from its start up to, and not including, its end. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Something that is done, or that happens by itself, once. */
export interface Activity {
  readonly id: string;
  /** Minutes of work; 0 for a mere moment. */
  readonly duration: number;
  /** Units of each renewable resource that it holds while it is worked on, and not while it is interrupted. */
  readonly uses: Readonly<Record<string, number>>;
  /** Runs only in the open hours of this calendar; without one it runs through closed hours, as a cure does. */
  readonly calendar?: string;
  /**
   * May be interrupted at closing time and go on at the next opening, so that its duration counts open minutes only; otherwise it must fit
   * within one opening. Without a calendar nothing interrupts it.
   */
  readonly splittable: boolean;
}

/** Between which ends of two activities a wait is counted: the first word is of `from`, the second of `to`. */
export type LagKind = 'end-start' | 'start-start' | 'end-end' | 'start-end';

/** A wait in elapsed minutes from an end of one activity to an end of another; a cure does not know of closing time. */
export interface Lag {
  readonly id?: string;
  readonly from: string;
  readonly to: string;
  readonly kind: LagKind;
  /** Elapsed minutes at least; 0 where it is left out, less than 0 for an overlap, -Infinity for no lower limit at all. */
  readonly least?: number;
  /** Elapsed minutes at most; no limit where it is left out. */
  readonly most?: number;
}

/** Units of a resource (a mould, a clamp) held from the start of one activity to the end of another, through closed hours too. */
export interface Hold {
  readonly resource: string;
  readonly units: number;
  readonly from: string;
  readonly to: string;
}

/** Open hours in minutes from the plan's zero: sorted, disjoint, as far as the horizon; two that touch count as one. */
export interface Calendar {
  readonly id: string;
  readonly open: readonly Span[];
}

/** What is to be planned. */
export interface Problem {
  readonly activities: readonly Activity[];
  readonly lags: readonly Lag[];
  readonly holds: readonly Hold[];
  /** Units there are of each resource. */
  readonly resources: Readonly<Record<string, number>>;
  readonly calendars: readonly Calendar[];
  /** Minutes from zero within which everything ends. */
  readonly horizon: number;
  /** Minutes from zero before which an activity does not start. */
  readonly earliest?: Readonly<Record<string, number>>;
  /** Minutes from zero after which an activity does not end. */
  readonly latest?: Readonly<Record<string, number>>;
}

/** When an activity is worked on: several pieces where closing time interrupts it; one of no length for a mere moment. */
export interface Placement {
  readonly id: string;
  readonly pieces: readonly Span[];
}

/** A problem that cannot be read: it contradicts its own names or counts. Not a plan that is impossible. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
}

const refuse = (field: string, value: unknown, allowed: string, way: string): never => {
  throw new ProblemError(`${field}: ${JSON.stringify(value) ?? value} is not allowed; ${allowed}. ${way}`);
};

function needWhole(field: string, value: number, least: number): void {
  if (!Number.isInteger(value) || value < least || value > 1e9)
    refuse(
      field,
      value,
      `a whole number from ${least} to 1,000,000,000 is`,
      'Round it to the minute, or to whole units.',
    );
}

function needNamed(field: string, id: string, known: ReadonlySet<string>, what: string): void {
  if (!known.has(id))
    refuse(
      field,
      id,
      `a ${what} of the problem is: ${[...known].slice(0, 12).join(', ') || 'there is none'}`,
      `Name one of these, or add the ${what}.`,
    );
}

function setOf(field: string, ids: readonly string[]): Set<string> {
  const seen = new Set<string>();
  for (const id of ids) {
    if (seen.has(id)) refuse(field, id, 'each id may stand once', 'Rename one of the two.');
    seen.add(id);
  }
  return seen;
}

/**
 * Refuse a problem that contradicts itself: an unknown name, an id twice, minutes or units that are not whole, hours out of order.
 *
 * @throws ProblemError naming the field, the value, what is allowed and a way out
 */
export function needProblem(problem: Problem): void {
  const { activities, lags, holds, resources, calendars, horizon } = problem;
  needWhole('horizon', horizon, 0);
  const known = setOf(
    'activities',
    activities.map((each) => each.id),
  );
  const books = setOf(
    'calendars',
    calendars.map((each) => each.id),
  );
  const stock = new Set(Object.keys(resources));
  for (const [name, units] of Object.entries(resources)) needWhole(`resources.${name}`, units, 0);
  for (const { id, open } of calendars) {
    open.forEach(({ start, end }, at) => {
      const field = `calendars.${id}.open.${at}`;
      needWhole(`${field}.start`, start, -1e9);
      needWhole(`${field}.end`, end, start + 1);
      const before = open[at - 1];
      if (before !== undefined && before.end > start)
        refuse(
          `${field}.start`,
          start,
          `not before ${before.end}, when the opening before it closes, is`,
          'Sort them.',
        );
    });
  }
  for (const { id, duration, uses, calendar } of activities) {
    needWhole(`activities.${id}.duration`, duration, 0);
    if (calendar !== undefined) needNamed(`activities.${id}.calendar`, calendar, books, 'calendar');
    for (const [name, units] of Object.entries(uses)) {
      needNamed(`activities.${id}.uses`, name, stock, 'resource');
      needWhole(`activities.${id}.uses.${name}`, units, 0);
    }
  }
  lags.forEach(({ id, from, to, least, most }, at) => {
    const field = `lags.${id ?? at}`;
    needNamed(`${field}.from`, from, known, 'activity');
    needNamed(`${field}.to`, to, known, 'activity');
    if (least !== undefined && least !== Number.NEGATIVE_INFINITY) needWhole(`${field}.least`, least, -1e9);
    if (most !== undefined && most !== Number.POSITIVE_INFINITY) needWhole(`${field}.most`, most, -1e9);
  });
  holds.forEach(({ resource, units, from, to }, at) => {
    needNamed(`holds.${at}.resource`, resource, stock, 'resource');
    needWhole(`holds.${at}.units`, units, 0);
    needNamed(`holds.${at}.from`, from, known, 'activity');
    needNamed(`holds.${at}.to`, to, known, 'activity');
  });
  for (const field of ['earliest', 'latest'] as const)
    for (const [id, minute] of Object.entries(problem[field] ?? {})) {
      needNamed(field, id, known, 'activity');
      needWhole(`${field}.${id}`, minute, -1e9);
    }
}
