import { type Stage, sealCoatName } from './dose.ts';

/** A colour of the inlay: its share of the mix and what colours it. */
export interface Colour {
  name: string;
  /** Share of every layer, 0 to 1; the shares of all colours sum to 1. */
  share: number;
  /** Pigment added on top of the mix, in percent of its mass. */
  pigment: number;
  kind?: PigmentKind | undefined;
}

/**
 * Kinds of pigment and the most that is usual, in percent by mass of the mix, from practice: beyond it cure and strength
 * suffer. The maker's own limit outranks it.
 */
export const pigmentKinds = [
  { kind: 'paste', label: 'pigment paste', usual: 5, most: 6 },
  { kind: 'powder', label: 'dry powder', usual: 2, most: 5 },
  { kind: 'ink', label: 'alcohol ink', usual: 1, most: 2 },
] as const;
export type PigmentKind = (typeof pigmentKinds)[number]['kind'];

/** One cup: what it is for and how much of each part goes in. */
export interface Cup {
  /** From 1, in the order of mixing. */
  number: number;
  stage: string;
  colour: string;
  /** Parts as measured: whole divisions, in the unit that is measured in (g or mL). */
  a: number;
  b: number;
  /** g of pigment on top. */
  pigment: number;
  /** How far the rounding puts the ratio off, in percent; positive with too much hardener. */
  off: number;
}

/** How the parts are measured. */
export interface Measure {
  /** Parts of B to one of A in the measured unit. */
  ratio: number;
  /** Measured units in a gram of each part: 1 by weight, one by its density by volume. */
  perGramA: number;
  perGramB: number;
  /** Smallest division, in the measured unit. */
  division: number;
}

/** More cups than this are no plan. */
export const mostCups = 120;

/** Cups that every stage and colour takes when none may hold more than `largest` grams of mix. */
export function cupCounts(stages: readonly Stage[], colours: readonly Colour[], largest: number): number {
  return groupsOf(stages, colours).reduce((sum, { mass }) => sum + cupsFor(mass, largest), 0);
}

/** Mass of mix in the smallest of these cups, g. */
export function smallestCup(stages: readonly Stage[], colours: readonly Colour[], largest: number): number {
  return groupsOf(stages, colours).reduce(
    (least, { mass }) => Math.min(least, mass / cupsFor(mass, largest)),
    Number.POSITIVE_INFINITY,
  );
}

/** Full cups, one more for a rest; a rest of arithmetic is none. */
function cupsFor(mass: number, largest: number): number {
  return Math.max(1, Math.ceil(mass / largest - 1e-9));
}

interface Group {
  stage: string;
  colour: Colour;
  mass: number;
}

/** A seal coat is clear: pigment would be wasted on it. */
const clear: Colour = { name: 'clear', share: 1, pigment: 0 };

function groupsOf(stages: readonly Stage[], colours: readonly Colour[]): Group[] {
  return stages.flatMap(({ name, mass }) =>
    (name === sealCoatName ? [clear] : colours).map((colour) => ({ stage: name, colour, mass: mass * colour.share })),
  );
}

/**
 * Cups for every stage and colour, each part in whole divisions.
 *
 * Over all cups the parts sum to the totals rounded to the division: what rounding takes from one cup the next gets back.
 * Cups of one stage and colour differ in their smaller part by at most one division, and the larger part keeps to it.
 *
 * @param largest most grams of mix in one cup; Infinity for no limit
 * @param weightRatio parts of B to one of A by weight
 */
export function cupsOf(
  stages: readonly Stage[],
  colours: readonly Colour[],
  largest: number,
  weightRatio: number,
  measure: Measure,
): Cup[] {
  const { division } = measure;
  const cups: Cup[] = [];
  let mixed = 0;
  let [givenA, givenB] = [0, 0];
  for (const { stage, colour, mass } of groupsOf(stages, colours)) {
    mixed += mass;
    // Divisions that all cups up to here hold, rounded once: so no error adds up.
    const untilA = Math.round(((mixed / (1 + weightRatio)) * measure.perGramA) / division);
    const untilB = Math.round((((mixed * weightRatio) / (1 + weightRatio)) * measure.perGramB) / division);
    const count = cupsFor(mass, largest);
    const [stepsOfA, stepsOfB] = [untilA - givenA, untilB - givenB];
    const smallIsB = stepsOfB <= stepsOfA;
    const pairs = shareOut(smallIsB ? stepsOfB : stepsOfA, smallIsB ? stepsOfA : stepsOfB, count);
    for (const { small, large } of pairs) {
      const [stepsA, stepsB] = smallIsB ? [large, small] : [small, large];
      cups.push({
        number: cups.length + 1,
        stage,
        colour: colour.name,
        a: toDivisions(stepsA, division),
        b: toDivisions(stepsB, division),
        pigment: (mass / count) * (colour.pigment / 100),
        off: stepsA > 0 ? 100 * (stepsB / stepsA / measure.ratio - 1) : 0,
      });
    }
    givenA = untilA;
    givenB = untilB;
  }
  return cups;
}

/** Whole divisions spread over some cups as evenly as they go, those with one more first. */
function spread(whole: number, count: number): number[] {
  const base = Math.floor(whole / count);
  return Array.from({ length: count }, (_, index) => base + (index < whole - base * count ? 1 : 0));
}

/**
 * Divisions of both parts over some cups: the smaller part as evenly as it goes, since a division weighs most in it, and
 * the larger in proportion to it, so that rounding puts no cup off by more than about one division of the larger part.
 */
function shareOut(small: number, large: number, count: number): { small: number; large: number }[] {
  const smalls = spread(small, count);
  const least = smalls[count - 1] ?? 0;
  const fuller = smalls.filter((steps) => steps > least).length;
  // Cups without any of the smaller part say nothing of the proportion.
  const forFuller = least > 0 ? Math.round((large * fuller * (least + 1)) / small) : 0;
  const larges =
    least > 0 ? [...spread(forFuller, fuller), ...spread(large - forFuller, count - fuller)] : spread(large, count);
  return smalls.map((steps, index) => ({ small: steps, large: larges[index] ?? 0 }));
}

/** So many divisions as a number without the noise of binary arithmetic. */
export function toDivisions(steps: number, division: number): number {
  return Number((steps * division).toPrecision(12));
}
