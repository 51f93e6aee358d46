import type { Kind, Plate, Problem } from './yield-plate.ts';
import { longestClear, type Piece, placeIn, type Way } from './yield-sections.ts';

type Section = NonNullable<Way['first']>;

/** One section filled piece by piece: the piece that sets its length first, then whichever leaves least of the width. */
function filledSection(
  problem: Problem,
  plate: Plate,
  from: number,
  lead: number,
  left: number[],
): Section | undefined {
  const { kinds, kerf } = problem;
  const to = from + (kinds[lead] as Kind).long;
  const pieces: Piece[] = [];
  const edges = plate.faults.filter((fault) => fault.from < to && fault.to > from).map((fault) => fault.high);
  const lows = [plate.usable.low, ...edges].sort((a, b) => a - b);
  let low = plate.usable.low;
  const put = (kind: number): boolean => {
    for (const start of [low, ...lows.filter((edge) => edge > low)]) {
      const place = placeIn(plate, kinds[kind] as Kind, { from, to }, start);
      if (!place) continue;
      pieces.push({ kind, place });
      left[kind] = (left[kind] as number) - 1;
      low = place.high + kerf;
      return true;
    }
    return false;
  };
  if (!put(lead)) return undefined;
  for (;;) {
    const fitting = [...kinds.keys()]
      .filter((at) => (left[at] as number) > 0 && (kinds[at] as Kind).long <= to - from)
      .filter((at) => (kinds[at] as Kind).wide <= plate.usable.high - low)
      .sort((a, b) => (kinds[b] as Kind).area - (kinds[a] as Kind).area);
    if (!fitting.some(put)) break;
  }
  return { from, to, pieces };
}

/**
 * One plate cut up without looking back: section after section, each time the one that makes most of the length that it takes.
 * Quick, and good where a rack holds far more plans than can be compared.
 */
export function onePlate(problem: Problem, plate: Plate): Way {
  const { kinds, kerf } = problem;
  const left = kinds.map(({ count }) => count);
  const sections: Section[] = [];
  let at = plate.usable.from;
  const edges = [...new Set(plate.faults.map((fault) => fault.to))].sort((a, b) => a - b);
  const areaOf = ({ pieces }: Section) => pieces.reduce((sum, { kind }) => sum + (kinds[kind] as Kind).area, 0);
  for (;;) {
    let best: { section: Section; left: number[]; share: number } | undefined;
    for (const from of [at, ...edges.filter((edge) => edge > at)]) {
      for (const [lead, kind] of kinds.entries()) {
        if ((left[lead] as number) <= 0 || from + kind.long > plate.usable.to) continue;
        const trial = [...left];
        const section = filledSection(problem, plate, from, lead, trial);
        if (!section) continue;
        const share = areaOf(section) / (section.to + kerf - at);
        if (!best || share > best.share) best = { section, left: trial, share };
      }
    }
    if (!best) break;
    sections.push(best.section);
    for (const [index, count] of best.left.entries()) left[index] = count;
    at = best.section.to + kerf;
  }
  const counts = kinds.map(({ count }, index) => count - (left[index] as number));
  const end: Way = { counts: kinds.map(() => 0), area: 0, offcut: longestClear(plate, at, plate.usable.to) };
  const way = sections.reduceRight<Way>((rest, first) => ({ counts, area: 0, offcut: rest.offcut, first, rest }), end);
  return { ...way, counts, area: counts.reduce((sum, count, index) => sum + count * (kinds[index] as Kind).area, 0) };
}
