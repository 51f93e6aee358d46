import type { Occupation, Store } from './compile.ts';
import { coversAt, firstOver, lastOver, type Profile, profileOf, stretchesOf } from './profile.ts';
import type { Trail } from './trail.ts';

/** When an occupation must hold its units whatever is decided: from its last possible beginning until its first possible end. */
const latestBegin = (trail: Trail, { from }: Occupation) => trail.high(from);
const firstEnd = (trail: Trail, { to }: Occupation) => {
  const track = trail.model.tracks[to];
  return track === undefined ? Number.NEGATIVE_INFINITY : track.end(trail.low(to));
};
const lastEnd = (trail: Trail, { to }: Occupation) => {
  const track = trail.model.tracks[to];
  return track === undefined ? Number.POSITIVE_INFINITY : track.end(trail.high(to));
};

/**
 * The statements by which more than `limit` units are held at a minute, without the occupation left out: of each that must hold then, that
 * it begins by then and that it ends after. The largest first, and no more than needed.
 */
function holders(trail: Trail, store: Store, minute: number, limit: number, without: Occupation | undefined): number[] {
  const found = store.occupations
    .filter((each) => each !== without && coversAt(each, latestBegin(trail, each), firstEnd(trail, each), minute))
    .sort((one, two) => two.units - one.units);
  const why: number[] = [];
  let sum = 0;
  for (const each of found) {
    if (sum > limit) break;
    sum += each.units;
    why.push(...beginsBy(trail, each, minute), ...endsAfter(trail, each, minute));
  }
  return why;
}

const beginsBy = (trail: Trail, { from }: Occupation, minute: number) => [
  2 * from + 1,
  trail.model.tracks[from]?.down(minute) as number,
];
const endsAfter = (trail: Trail, { to }: Occupation, minute: number) => [
  2 * to,
  trail.model.tracks[to]?.upForEnd(minute + 1) as number,
];

/** Begin after every minute at which the others that must run then leave too little. */
function pushBegin(trail: Trail, store: Store, profile: Profile, occupation: Occupation): boolean {
  const { from, units, open } = occupation;
  const limit = store.capacity - units;
  const track = trail.model.tracks[from];
  for (;;) {
    const to = Math.min(firstEnd(trail, occupation), trail.high(from));
    const minute = lastOver(profile, limit, trail.low(from), to, open);
    if (minute === undefined) return true;
    const why = [...endsAfter(trail, occupation, minute), ...holders(trail, store, minute, limit, occupation)];
    if (!trail.imply(2 * from, track?.up(minute + 1) as number, why)) return false;
  }
}

/** End before every such minute. */
function pullEnd(trail: Trail, store: Store, profile: Profile, occupation: Occupation): boolean {
  const { to, units, open } = occupation;
  const limit = store.capacity - units;
  const track = trail.model.tracks[to];
  for (;;) {
    const since = Math.max(trail.high(occupation.from), firstEnd(trail, occupation));
    const minute = firstOver(profile, limit, since, lastEnd(trail, occupation), open);
    if (minute === undefined) return true;
    const why = [...beginsBy(trail, occupation, minute), ...holders(trail, store, minute, limit, occupation)];
    if (!trail.imply(2 * to + 1, track?.downForEnd(minute) as number, why)) return false;
  }
}

/**
 * Narrow windows by what must run at each minute (timetable reasoning). False where more must run than there is; then the trail holds why.
 */
export function propagateStore(trail: Trail, store: Store): boolean {
  const profile = profileOf(
    stretchesOf(
      store,
      (each) => latestBegin(trail, each),
      (each) => firstEnd(trail, each),
    ),
  );
  if (profile.most > store.capacity) {
    const at = profile.units.findIndex((units) => units > store.capacity);
    const minute = ((profile.times[at] as number) + (profile.times[at + 1] as number) - 1) >> 1;
    trail.conflict = holders(trail, store, minute, store.capacity, undefined);
    return false;
  }
  for (const occupation of store.occupations) {
    if (profile.most + occupation.units <= store.capacity) continue;
    const { from, to } = occupation;
    if (from === to && trail.low(from) === trail.high(from)) continue;
    if (!pushBegin(trail, store, profile, occupation) || !pullEnd(trail, store, profile, occupation)) return false;
  }
  return true;
}

/** A minute at which too much is in use when everything starts as early as it still may, and who is at it. */
export interface Clash {
  readonly minute: number;
  readonly among: readonly Occupation[];
}

/** The earliest clash of the earliest starts, or undefined: then they are a plan. */
export function firstClash(trail: Trail, stores: readonly Store[]): Clash | undefined {
  let found: { minute: number; store: Store } | undefined;
  const begin = ({ from }: Occupation) => trail.low(from);
  const finish = (each: Occupation) => firstEnd(trail, each);
  for (const store of stores) {
    const profile = profileOf(stretchesOf(store, begin, finish));
    if (profile.most <= store.capacity) continue;
    const minute = profile.times[profile.units.findIndex((units) => units > store.capacity)] as number;
    if (found === undefined || minute < found.minute) found = { minute, store };
  }
  if (found === undefined) return undefined;
  const { minute, store } = found;
  return { minute, among: store.occupations.filter((each) => coversAt(each, begin(each), finish(each), minute)) };
}
