import type { Shop } from '../shop/index.ts';
import type { Work } from './timetable.ts';

/** A stretch of work, and who is at it. */
export interface Duty extends Work {
  /** Names of people, as the plan calls them. */
  by: readonly string[];
  /** Whether these pieces were begun in an earlier stretch. */
  goesOn: boolean;
}

/** Somebody has nothing to do while others work, or while all wait. */
export interface Free {
  who: readonly string[];
  /** Minutes from the plan's zero. */
  start: number;
  end: number;
}

/** Minutes without work above which it is worth saying: a shorter rest is a rest. */
export const worthSaying = 15;

/**
 * Names for so many people: those of the shop record, numbered where several bear one; `person 4` for whom it does not name.
 */
export function peopleNames(people: number, shop?: Pick<Shop, 'people'>): string[] {
  const named = (shop?.people ?? []).flatMap(({ id, name = id, count }) =>
    count === 1 ? [name] : Array.from({ length: count }, (_, at) => `${name} ${at + 1}`),
  );
  return Array.from({ length: people }, (_, at) => named[at] ?? `Person ${at + 1}`);
}

/**
 * Who does what: whoever has been at a step goes on with it, else the first of the list who is free.
 *
 * At no moment do more people work than there are, so that taking the stretches in the order of their starts never finds too few of them free.
 *
 * @param works stretches of work in any order
 * @param names as many as there are people
 */
export function dutiesOf(works: readonly Work[], names: readonly string[]): Duty[] {
  const busyUntil = names.map(() => Number.NEGATIVE_INFINITY);
  const been = new Map<string, Set<number>>();
  const begun = new Set<string>();
  const inOrder = works
    .filter(({ start, end }) => end > start)
    .map((work, at) => ({ work, at }))
    .sort((one, two) => one.work.start - two.work.start || one.at - two.at);
  return inOrder.map(({ work }): Duty => {
    const { step, pieces, start, end, people } = work;
    const before = been.get(step) ?? new Set<number>();
    const free = names.flatMap((_, at) => ((busyUntil[at] as number) <= start ? [at] : []));
    const taken = [...free.filter((at) => before.has(at)), ...free.filter((at) => !before.has(at))]
      .slice(0, people)
      .sort((one, two) => one - two);
    for (const at of taken) {
      busyUntil[at] = end;
      before.add(at);
    }
    been.set(step, before);
    const name = `${step} ${pieces.join(' ')}`;
    const goesOn = begun.has(name);
    begun.add(name);
    return { ...work, by: taken.map((at) => names[at] as string), goesOn };
  });
}

/** Stretches of a session, longer than a rest, in which somebody has nothing to do between its first work and its last; those alike are told together. */
export function freeOf(duties: readonly Duty[], names: readonly string[]): Free[] {
  const first = Math.min(...duties.map(({ start }) => start));
  const last = Math.max(...duties.map(({ end }) => end));
  const alike = new Map<string, Free & { who: string[] }>();
  for (const name of names) {
    let since = first;
    const add = (until: number) => {
      if (until - since <= worthSaying) return;
      const key = `${since} ${until}`;
      const known = alike.get(key) ?? { who: [], start: since, end: until };
      known.who.push(name);
      alike.set(key, known);
    };
    for (const { by, start, end } of duties) {
      if (!by.includes(name)) continue;
      add(start);
      since = Math.max(since, end);
    }
    add(last);
  }
  return [...alike.values()].sort((one, two) => one.start - two.start || one.end - two.end);
}

/** `Helper 1 to 4` of names that are numbered one after another. */
function runsOf(who: readonly string[]): string[] {
  const runs: { base: string; from: number; to: number }[] = [];
  for (const name of who) {
    const [, base = name, number = ''] = /^(.*) (\d+)$/.exec(name) ?? [];
    const at = number === '' ? Number.NaN : Number(number);
    const last = runs.at(-1);
    if (last && last.base === base && last.to + 1 === at) last.to = at;
    else runs.push({ base, from: at, to: at });
  }
  return runs.map(({ base, from, to }) =>
    Number.isNaN(from)
      ? base
      : from === to
        ? `${base} ${from}`
        : `${base} ${from}${to === from + 1 ? ' and' : ' to'} ${to}`,
  );
}

/**
 * People as a sentence names them: `Maker`, `Maker and Helper 1`, `all 14`.
 *
 * @param names everybody of the plan
 */
export function whoWords(who: readonly string[], names: readonly string[]): string {
  if (who.length === names.length && who.length > 1) return who.length === 2 ? 'both' : `all ${who.length}`;
  const runs = runsOf(who);
  return runs.length === 2 && who.length === 2 ? runs.join(' and ') : runs.join(', ');
}

/**
 * Who has nothing to do in a session, in one sentence: first those whom it does not need, then each with the stretch.
 *
 * @param clock what the clock shows at a minute of the plan
 * @returns undefined where nobody is named
 */
export function freeWords(
  { work, free }: { work: readonly Duty[]; free: readonly Free[] },
  names: readonly string[],
  clock: (minutes: number) => string,
): string | undefined {
  if (free.length === 0) return undefined;
  const first = Math.min(...work.map(({ start }) => start));
  const last = Math.max(...work.map(({ end }) => end));
  const whole = free.filter(({ start, end }) => start === first && end === last);
  const parts = free.filter((each) => !whole.includes(each));
  return `Free: ${[
    ...whole.map(({ who }) => `${whoWords(who, names)} all the time`),
    ...parts.map(({ who, start, end }) => `${whoWords(who, names)} from ${clock(start)} to ${clock(end)}`),
  ].join('; ')}.`;
}
