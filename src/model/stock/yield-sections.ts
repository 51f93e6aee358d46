import type { Kind, Plate, Problem, Rectangle } from './yield-plate.ts';

/*
 * What one plate can give. Its first cuts part it into sections; the second cuts part a section into pieces, one behind another;
 * a piece shorter than its section is trimmed to length. Any such plan can be pushed towards the start until each section follows
 * the one before, or the end of a fault, at once, and likewise each piece in its section: only those places are tried.
 */

/** A blank at its place. */
export interface Piece {
  kind: number;
  place: Rectangle;
}

/** A way to cut a plate, or a part of one: how many blanks of each kind, and how it came about. */
export interface Way {
  /** By kind, never above what is wanted. */
  counts: readonly number[];
  /** Face area of the blanks, steps². */
  area: number;
  /** Longest clear piece that stays whole across the plate, steps. */
  offcut: number;
  /** What is cut first; undefined where nothing is. */
  first?: { from: number; to: number; pieces: readonly Piece[] };
  rest?: Way;
}

/** How far a search may go before it keeps only the best ways: counted in looks at a way, the same on every machine. */
export interface Effort {
  left: number;
  /** What `left` was; once it is spent twice over, nothing more is opened. */
  most: number;
  /** Most ways kept at each place. */
  breadth: number;
  /** Whether some way was dropped that a full search would have kept. */
  cut: boolean;
}

const overlaps = (fault: Rectangle, place: Rectangle) =>
  fault.from < place.to && fault.to > place.from && fault.low < place.high && fault.high > place.low;

/** Whether one way gives at least as much as another of every kind. */
const covers = (a: readonly number[], b: readonly number[]) => a.every((count, at) => count >= (b[at] as number));

/** Leave out ways that another covers, and, where there are too many or the effort is spent, all but those of most area. */
function keepBest(ways: Way[], effort: Effort): Way[] {
  ways.sort((a, b) => b.area - a.area || b.offcut - a.offcut);
  const kept: Way[] = [];
  const most = effort.left > 0 ? effort.breadth : Math.min(4, effort.breadth);
  for (const way of ways) {
    effort.left -= kept.length + 1;
    if (kept.some((other) => covers(other.counts, way.counts))) continue;
    if (kept.length >= most) {
      effort.cut = true;
      break;
    }
    kept.push(way);
  }
  return kept;
}

/** Counts of two parts together, never above what is wanted. */
const together = (a: readonly number[], b: readonly number[], kinds: readonly Kind[]) =>
  kinds.map(({ count }, at) => Math.min(count, (a[at] as number) + (b[at] as number)));

const areaOf = (counts: readonly number[], kinds: readonly Kind[]) =>
  counts.reduce((sum, count, at) => sum + count * (kinds[at] as Kind).area, 0);

/** The longest stretch of a plate from one place to another that no fault touches. */
export function longestClear(plate: Plate, from: number, to: number): number {
  const faults = plate.faults.filter((fault) => fault.to > from && fault.from < to).sort((a, b) => a.from - b.from);
  let longest = 0;
  let at = from;
  for (const fault of faults) {
    longest = Math.max(longest, fault.from - at);
    at = Math.max(at, fault.to);
  }
  return Math.max(longest, to - at);
}

/** Where a piece of this kind lies in a section, its lower edge at `low`; undefined where a fault is in the way of it everywhere. */
export function placeIn(
  plate: Plate,
  kind: Kind,
  section: { from: number; to: number },
  low: number,
): Rectangle | undefined {
  const high = low + kind.wide;
  if (high > plate.usable.high) return undefined;
  const near = plate.faults.filter(
    (fault) => fault.low < high && fault.high > low && fault.from < section.to && fault.to > section.from,
  );
  const starts = [section.from, ...near.map((fault) => fault.to)].filter(
    (from) => from >= section.from && from + kind.long <= section.to,
  );
  for (const from of starts) {
    const place = { from, to: from + kind.long, low, high };
    if (!near.some((fault) => overlaps(fault, place))) return place;
  }
  return undefined;
}

interface Filling {
  counts: readonly number[];
  area: number;
  pieces: readonly Piece[];
}

/** Every fullest way to part a section into pieces. */
function fillings(problem: Problem, plate: Plate, section: { from: number; to: number }, effort: Effort): Filling[] {
  const { kinds, kerf } = problem;
  const edges = plate.faults
    .filter((fault) => fault.from < section.to && fault.to > section.from)
    .map((fault) => fault.high);
  const known = new Map<number, (Filling & Way)[]>();
  const from = (low: number): (Filling & Way)[] => {
    const before = known.get(low);
    if (before) return before;
    const ways: (Filling & Way)[] = [{ counts: kinds.map(() => 0), area: 0, pieces: [], offcut: 0 }];
    for (const start of new Set([low, ...edges.filter((edge) => edge > low)])) {
      for (const [index, kind] of kinds.entries()) {
        if (kind.long > section.to - section.from) continue;
        const place = placeIn(plate, kind, section, start);
        if (!place) continue;
        for (const rest of from(place.high + kerf)) {
          // Enough of this kind already: this place is taken instead of a later one.
          const spare = (rest.counts[index] as number) >= kind.count;
          const without = spare ? rest.pieces.findLastIndex((piece) => piece.kind === index) : -1;
          ways.push({
            counts: rest.counts.map((count, at) => (at === index && !spare ? count + 1 : count)),
            area: rest.area + (spare ? 0 : kind.area),
            pieces: [{ kind: index, place }, ...rest.pieces.filter((_, at) => at !== without)],
            offcut: 0,
          });
        }
      }
    }
    const kept = keepBest(ways, effort) as (Filling & Way)[];
    known.set(low, kept);
    return kept;
  };
  return from(plate.usable.low);
}

/** Every fullest way to cut up a plate: none gives as much of every kind as another. */
export function waysOf(problem: Problem, plate: Plate, effort: Effort): Way[] {
  const { kinds, kerf } = problem;
  const { from: start, to: stop } = plate.usable;
  const nothing = kinds.map(() => 0);
  const lengths = [...new Set(kinds.filter(({ count }) => count > 0).map(({ long }) => long))];
  const edges = plate.faults.map((fault) => fault.to);
  const sections = new Map<string, Filling[]>();
  const filled = (from: number, long: number): Filling[] => {
    const section = { from, to: from + long };
    const clear = !plate.faults.some((fault) => fault.from < section.to && fault.to > section.from);
    const key = clear ? `${long}` : `${long} ${from}`;
    const before = sections.get(key);
    // Without a fault in it a section holds the same wherever it lies.
    if (before) return clear ? before.map((way) => moved(way, from)) : before;
    const found = fillings(problem, plate, section, effort);
    sections.set(key, found);
    return found;
  };
  const known = new Map<number, Way[]>();
  const after = (at: number): Way[] => {
    const before = known.get(at);
    if (before) return before;
    const ways: Way[] = [{ counts: nothing, area: 0, offcut: Math.max(0, longestClear(plate, at, stop)) }];
    if (effort.left < -effort.most) {
      effort.cut = true;
      return ways;
    }
    for (const from of new Set([at, ...edges.filter((edge) => edge > at)])) {
      const passed = longestClear(plate, at, from) - kerf;
      for (const long of lengths) {
        if (from + long > stop) continue;
        const rests = after(from + long + kerf);
        for (const { counts, pieces } of filled(from, long)) {
          // A section is as long as its longest piece, or a shorter one would do.
          if (!pieces.some(({ kind }) => (kinds[kind] as Kind).long === long)) continue;
          for (const rest of rests) {
            const both = together(counts, rest.counts, kinds);
            ways.push({
              counts: both,
              area: areaOf(both, kinds),
              offcut: Math.max(passed, rest.offcut),
              first: { from, to: from + long, pieces },
              rest,
            });
          }
        }
      }
    }
    const kept = keepBest(ways, effort);
    known.set(at, kept);
    return kept;
  };
  return after(start);
}

/** A filling of a section without faults, where every piece starts with its section, for a section that starts elsewhere. */
function moved(way: Filling, from: number): Filling {
  const shift = from - (way.pieces[0]?.place.from ?? from);
  if (shift === 0) return way;
  return {
    ...way,
    pieces: way.pieces.map(({ kind, place }) => ({
      kind,
      place: { ...place, from: place.from + shift, to: place.to + shift },
    })),
  };
}

/** The sections of a way, from the start of the plate. */
export function sectionsOf(way: Way): NonNullable<Way['first']>[] {
  const sections: NonNullable<Way['first']>[] = [];
  for (let at: Way | undefined = way; at?.first; at = at.rest) sections.push(at.first);
  return sections;
}
