import { amount, listed } from '../../model/quantity/index.ts';
import { minute } from '../../model/quantity/seconds.ts';
import type { WorkedMethod } from '../case/types.ts';
import type { Change, Constraint, CriticalLink } from '../schedule/index.ts';
import { handsResource, type LinkedLag, type ProblemOfMethod, shopHours } from './activities.ts';
import { momentText } from './closed.ts';
import { type Duty, whoWords } from './duties.ts';
import type { NoTimetable, Timetable } from './timetable.ts';

/** Minutes as a reader says them: `40 min`, `2 h`, `3 d`. */
export const timeWords = (minutes: number) => amount(minutes * minute, 's', 3);

/** `Tue 2027-01-12 18:30` of a minute of the plan. */
export const momentWords = ({ clock }: Pick<NoTimetable, 'clock'>, minutes: number): string =>
  momentText(clock, minutes);

const peopleWords = (count: number) => `${count} ${count === 1 ? 'person' : 'people'}`;

/** Steps that take more people at once than there are, whatever the hours, with how many each takes; what was done or is going on is not asked. */
function shortOfPeople(worked: WorkedMethod, { made }: NoTimetable): { title: string; people: number }[] {
  const there = made.problem.resources[handsResource] ?? 0;
  const asked = new Map<string, number>();
  for (const { id, uses } of made.problem.activities) {
    const people = uses[handsResource] ?? 0;
    const { step = id, pinned } = made.sittings.find((sitting) => sitting.id === id) ?? {};
    if (people > there && !pinned) asked.set(step, Math.max(people, asked.get(step) ?? 0));
  }
  return worked.steps.flatMap(({ id, record: { title } }) => {
    const people = asked.get(id);
    return people === undefined ? [] : [{ title, people }];
  });
}

/**
 * How many people a case needs where some steps take more at once than there are; undefined where there are enough for each step by itself.
 *
 * @returns `there` of them, and `needed` by the step that takes most
 */
export function fewPeople(worked: WorkedMethod, none: NoTimetable): { there: number; needed: number } | undefined {
  const short = shortOfPeople(worked, none);
  if (short.length === 0) return undefined;
  const there = none.made.problem.resources[handsResource] ?? 0;
  return { there, needed: Math.max(...short.map(({ people }) => people)) };
}

/** `“Mix” and “Pour” need 2 people at once, and 1 person is there.` */
function fewPeopleWords(worked: WorkedMethod, none: NoTimetable, there: number): string {
  const short = shortOfPeople(worked, none);
  const counts = [...new Set(short.map(({ people }) => people))].sort((one, two) => one - two);
  const needs = counts.map((count) => {
    const titles = short.filter(({ people }) => people === count).map(({ title }) => `“${title}”`);
    return `${listed(titles)} ${titles.length === 1 ? 'needs' : 'need'} ${peopleWords(count)} at once`;
  });
  return `${needs.join('; ')}; ${there} ${there === 1 ? 'is' : 'are'} there. No hours make up for that.`;
}

/** What a resource is, as it stands in a sentence. */
export function resourceWords(worked: WorkedMethod, resource: string): string {
  if (resource === handsResource) return 'hands';
  return worked.tools[resource]?.record.what.toLowerCase() ?? resource;
}

/** Which pieces are meant, as it stands behind a title: ` (pieces 1 to 4)`; nothing where it is all of them. */
export function piecesWords([first, last]: readonly [number, number], all: number): string {
  if (first === 1 && last === all) return '';
  return first === last ? ` (piece ${first})` : ` (pieces ${first} to ${last})`;
}

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** A row of a session: what is done, to which pieces, and by whom where there are several. */
export function dutyWords({ worked, people }: { worked: WorkedMethod; people: readonly string[] }, duty: Duty): string {
  const title = worked.steps.find(({ id }) => id === duty.step)?.record.title ?? duty.step;
  return workWords(title, duty, worked.pieces, people);
}

/** The same of a title that is known. */
export function workWords(
  title: string,
  { pieces, by = [], goesOn = false }: Pick<Duty, 'pieces'> & Partial<Pick<Duty, 'by' | 'goesOn'>>,
  all: number,
  people: readonly string[],
): string {
  const who = people.length > 1 && by.length > 0 ? `${capital(whoWords(by, people))}: ` : '';
  return `${who}${title}${piecesWords(pieces, all)}${goesOn ? ', going on' : ''}`;
}

const titleOf = (worked: WorkedMethod, made: ProblemOfMethod, sitting: string): string => {
  const { step = sitting, pieces } = made.sittings.find(({ id }) => id === sitting) ?? {};
  const title = worked.steps.find(({ id }) => id === step)?.record.title ?? step;
  return `“${title}”${piecesWords(pieces ?? [1, worked.pieces], worked.pieces)}`;
};

/** A link of the chain that makes the plan as long as it is. */
export interface ChainLink {
  step: string;
  pieces: readonly [number, number];
  start: number;
  end: number;
  /** What it waited for. */
  heldBy: 'wait' | 'window' | 'resource' | 'opening' | 'start';
  /** Minutes between what held it and its own start, and those of them in which nothing but the closed shop held it. */
  waited: number;
  closed: number;
  /** Name of the resource, where one held it. */
  resource?: string;
  /** The sentence for a reader. */
  words: string;
}

function heldWords(worked: WorkedMethod, made: ProblemOfMethod, link: CriticalLink): [ChainLink['heldBy'], string] {
  const { heldBy, opening } = link;
  if (opening && opening.wait > 0 && heldBy.kind !== 'lag')
    return ['opening', `it waits ${timeWords(opening.wait)} for the shop to open`];
  switch (heldBy.kind) {
    case 'lag': {
      const by = titleOf(worked, made, heldBy.by);
      if (heldBy.part === 'most') return ['window', `it may not run too far ahead of ${by}`];
      // As the method says it; what is set up meanwhile shortens the lag of the problem.
      const least = (heldBy.lag as LinkedLag).link?.least ?? heldBy.lag.least ?? 0;
      if (opening && opening.wait > 0)
        return [
          'opening',
          `${least > 0 ? `${timeWords(least)} after ${by} are over` : `${by} is done`}, and the shop opens ${timeWords(opening.wait)} later`,
        ];
      return least > 0 ? ['wait', `it waits ${timeWords(least)} after ${by}`] : ['wait', `it follows ${by}`];
    }
    case 'resource':
      if (heldBy.resource === handsResource)
        return ['resource', `too few hands are free until ${titleOf(worked, made, heldBy.by)} is done`];
      return [
        'resource',
        `${titleOf(worked, made, heldBy.by)} has the ${resourceWords(worked, heldBy.resource)} until then`,
      ];
    case 'hold':
      return [
        'resource',
        `it gives back the ${resourceWords(worked, heldBy.resource)} that ${titleOf(worked, made, heldBy.by)} takes`,
      ];
    default:
      return ['start', 'nothing holds it but the start of the plan'];
  }
}

/** The chain that makes a plan as long as it is, from its first step to its last. */
export function chainOf(worked: WorkedMethod, made: ProblemOfMethod, links: readonly CriticalLink[]): ChainLink[] {
  const ordered = [...links].reverse();
  return ordered.map((link, at): ChainLink => {
    const sitting = made.sittings.find(({ id }) => id === link.activity);
    const before = ordered[at - 1];
    const waited = Math.max(0, link.start - (before?.end ?? link.start));
    // The day begins at midnight, the plan when the shop opens.
    const isFirst = at === 0 && (link.heldBy.kind === 'start' || link.heldBy.kind === 'earliest');
    const [heldBy, words] = isFirst
      ? (['start', 'it begins when the shop opens'] as const)
      : heldWords(worked, made, link);
    return {
      step: sitting?.step ?? link.activity,
      pieces: sitting?.pieces ?? [1, worked.pieces],
      start: link.start,
      end: link.end,
      heldBy,
      waited,
      closed: Math.min(waited, link.opening?.wait ?? 0),
      ...(link.heldBy.kind === 'resource' ? { resource: link.heldBy.resource } : {}),
      words: `${titleOf(worked, made, link.activity)}: ${words}.`,
    };
  });
}

/** Where the time of a plan goes along its chain, min. */
export interface Limits {
  work: number;
  /** Cures, drying, soaking. */
  waits: number;
  /** Closed hours. */
  closed: number;
  /** By resource: behind others at it. */
  resources: Readonly<Record<string, number>>;
}

/** What limits a plan: how much of its length is work, waits, closed hours, queues. */
export function limitsOf(chain: readonly ChainLink[]): Limits {
  const resources: Record<string, number> = {};
  let work = 0;
  let waits = 0;
  let closed = 0;
  for (const { start, end, waited, closed: shut, resource } of chain) {
    work += end - start;
    closed += shut;
    waits += waited - shut;
    if (resource !== undefined) resources[resource] = (resources[resource] ?? 0) + (end - start);
  }
  return { work, waits, closed, resources };
}

/** Where the time goes, as a sentence says it: only what there is of it. */
export function limitsWords(worked: WorkedMethod, { work, waits, closed, resources }: Limits): string {
  const parts: [number, string][] = [
    [work, 'of work'],
    [waits, 'of waiting for wood, glue, resin and oil'],
    [closed, 'of closed hours'],
  ];
  const told = parts.filter(([minutes]) => minutes > 0).map(([minutes, of]) => `${timeWords(minutes)} ${of}`);
  const queues = Object.entries(resources).map(
    ([resource, minutes]) =>
      `${timeWords(minutes)} had to wait for ${resource === handsResource ? 'free hands' : `the ${resourceWords(worked, resource)}`}`,
  );
  return `${told.join(', ')}${queues.length > 0 ? `; of the work, ${queues.join(' and ')}` : ''}`;
}

/** Nobody works longer in one go, min: a change that asks for it helps nobody. */
const longestSession = 12 * 60;

/** Whether a change leaves every session of a length that people can work. */
function isBearable({ made }: NoTimetable, change: Change): boolean {
  if (change.kind !== 'opening' && change.kind !== 'hours') return true;
  const open = made.problem.calendars.find(({ id }) => id === change.calendar)?.open ?? [];
  return open
    .filter(({ start }) => change.kind === 'hours' || start === change.opens)
    .every(({ start, end }) => end - start + change.by <= longestSession);
}

/** Changes of the calendar before those of the work: who teaches an evening class moves its end sooner than a window of a resin. */
const easeOf: Readonly<Record<Change['kind'], number>> = {
  latest: 0,
  horizon: 0,
  earliest: 0,
  opening: 1,
  hours: 1,
  most: 2,
  capacity: 3,
  least: 4,
};

/**
 * Why there is no plan, in a sentence or a few, and the smallest changes that make one, those first that are easiest to make.
 *
 * @param later the plan as it is without its wanted end, where there is one
 */
export function impossibleWords(
  worked: WorkedMethod,
  none: NoTimetable,
  later?: Timetable,
): { why: string; changes: readonly string[] } {
  const { why, made, closed } = none;
  const laterEnd = later ? [`a wanted end of ${momentWords(later, later.end)} or later`] : [];
  if (closed) return { why: closed.why, changes: laterEnd };
  const few = fewPeople(worked, none);
  // Whatever else cannot be kept, that is put right first.
  if (few)
    return {
      why: fewPeopleWords(worked, none, few.there),
      changes: [`at least ${few.needed} people instead of ${few.there}`],
    };
  const lagWords = (at: number, part: 'least' | 'most'): string => {
    const lag = made.lags[at];
    if (!lag) return '';
    const [from, to] = [lag.from, lag.to].map((id) => titleOf(worked, made, id)) as [string, string];
    const { link } = lag;
    if (part === 'most') return `${to} must come within ${timeWords(link?.most ?? lag.most ?? 0)} of ${from}`;
    const least = link?.least ?? 0;
    return least > 0 ? `${to} waits at least ${timeWords(least)} after ${from}` : `${to} follows ${from}`;
  };
  const constraintWords = (constraint: Constraint): string => {
    switch (constraint.kind) {
      case 'least':
      case 'most':
        return lagWords(constraint.lag, constraint.kind);
      case 'hold': {
        const hold = made.problem.holds[constraint.hold];
        return hold
          ? `${titleOf(worked, made, hold.from)} keeps ${hold.units} × ${resourceWords(worked, hold.resource)} until ${titleOf(worked, made, hold.to)}`
          : '';
      }
      case 'use': {
        const title = titleOf(worked, made, constraint.activity);
        const units =
          made.problem.activities.find(({ id }) => id === constraint.activity)?.uses[constraint.resource] ?? 1;
        return constraint.resource === handsResource
          ? `${title} takes ${peopleWords(units)}`
          : `${title} takes ${units} × ${resourceWords(worked, constraint.resource)}`;
      }
      case 'calendar':
        return `${titleOf(worked, made, constraint.activity)} needs somebody there, in the ${shopHours}`;
      case 'earliest':
        return `${titleOf(worked, made, constraint.activity)} does not begin before its day`;
      case 'latest':
        return `${titleOf(worked, made, constraint.activity)} must be done by the wanted end`;
      case 'horizon':
        return 'all of it within the time looked at';
    }
  };
  const told = [...new Set(why.constraints.map(constraintWords).filter(Boolean))];
  const changeWords = (change: Change): string => {
    switch (change.kind) {
      case 'most': {
        const { from = '', to = '' } = made.lags[change.lag] ?? {};
        return `a window longer by ${timeWords(change.by)} between ${titleOf(worked, made, from)} and ${titleOf(worked, made, to)}; only where the data sheet allows it`;
      }
      case 'least': {
        const { from = '', to = '' } = made.lags[change.lag] ?? {};
        return `a wait shorter by ${timeWords(change.by)} between ${titleOf(worked, made, from)} and ${titleOf(worked, made, to)}; only where the data sheet allows it`;
      }
      case 'opening':
        return `the session of ${momentWords(none, change.opens)} longer by ${timeWords(change.by)}`;
      case 'hours':
        return `every session longer by ${timeWords(change.by)}`;
      case 'horizon':
        return `${timeWords(change.by)} more in all`;
      case 'capacity':
        return change.resource === handsResource
          ? `${peopleWords((made.problem.resources[handsResource] ?? 0) + change.by)} instead of ${made.problem.resources[handsResource] ?? 0}`
          : `${change.by} more of: ${resourceWords(worked, change.resource)}`;
      case 'earliest':
        return `a start earlier by ${timeWords(change.by)}`;
      case 'latest':
        return `a wanted end later by ${timeWords(change.by)}`;
    }
  };
  const reason =
    told.length === 0
      ? 'No plan was found, and it is not proved that there is none.'
      : `It cannot all be kept: ${told.slice(0, 6).join('; ')}${told.length > 6 ? `; and ${told.length - 6} more` : ''}.`;
  const changes = why.changes
    .filter((change) => isBearable(none, change))
    // A wait cannot be shorter by more than it is long.
    .filter((change) => change.kind !== 'least' || change.by < (made.lags[change.lag]?.link?.least ?? 0))
    // Where a later end was planned with, it is named once and in full.
    .filter(({ kind }) => !later || (kind !== 'latest' && kind !== 'horizon'))
    .sort((one, two) => easeOf[one.kind] - easeOf[two.kind]);
  return { why: reason, changes: [...new Set([...laterEnd, ...changes.map(changeWords)])] };
}
