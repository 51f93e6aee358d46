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
  /** g of mix that these parts make. */
  mass: number;
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

/** A cup holds no more than its limit by more than this share: what whole divisions may add. */
export const overfill = 0.005;

/** Cups that every stage and colour takes at least when none may hold more than `largest` grams of mix. */
export function cupCounts(stages: readonly Stage[], colours: readonly Colour[], largest: number): number {
  return groupsOf(stages, colours).reduce((sum, { mass }) => sum + cupsFor(mass, largest), 0);
}

/** Mass of mix in the smallest of these cups before any rounding, g. */
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
 * The ratio of each cup comes first, its amount second: a part that is off its ratio stays soft, a cup that is a division short is
 * made up by the next of its stage and colour. None holds more than its limit, so that rounding may cost a cup more.
 *
 * @param largest most grams of mix in one cup; Infinity for no limit
 */
export function cupsOf(stages: readonly Stage[], colours: readonly Colour[], largest: number, measure: Measure): Cup[] {
  const { division } = measure;
  return groupsOf(stages, colours)
    .flatMap(({ stage, colour, mass }) => filled(mass, largest, measure).map((steps) => ({ stage, colour, steps })))
    .map(({ stage, colour, steps }, index) => ({
      number: index + 1,
      stage,
      colour: colour.name,
      a: toDivisions(steps.a, division),
      b: toDivisions(steps.b, division),
      mass: massOf(steps, measure),
      pigment: massOf(steps, measure) * (colour.pigment / 100),
      off: offOf(steps, measure),
    }));
}

/** Divisions of both parts in a cup. */
interface Steps {
  a: number;
  b: number;
}

const massOf = ({ a, b }: Steps, { division, perGramA, perGramB }: Measure): number =>
  division * (a / perGramA + b / perGramB);

const offOf = ({ a, b }: Steps, { ratio }: Measure): number => (a > 0 ? 100 * (b / a / ratio - 1) : 0);

/** A group may come out short of what was wanted by this share where the limit of a cup keeps it from more. */
const short = 0.01;
/** More cups than the limit alone asks for are tried up to this many times as often. */
const mostMore = 2;

/** The cups of one stage and colour: as many as it takes to reach its mass without one over the limit. */
function filled(mass: number, largest: number, measure: Measure): Steps[] {
  const least = cupsFor(mass, largest);
  for (let count = least; ; count += 1) {
    let rest = mass;
    const cups = Array.from({ length: count }, (_, index) => {
      const steps = nearest(rest / (count - index), largest, measure);
      rest -= massOf(steps, measure);
      return steps;
    });
    if (largest === Number.POSITIVE_INFINITY || rest <= short * mass || count >= mostMore * least) return cups;
  }
}

/** A percent off the amount counts so much as a percent off the ratio. */
const amountWeight = 0.2;

/** The divisions nearest to an amount of mix, g, that keep the ratio: a percent of the ratio weighs five of the amount. */
function nearest(wanted: number, largest: number, measure: Measure): Steps {
  const { ratio, perGramA, perGramB, division } = measure;
  const smallIsB = ratio <= 1;
  const larger = smallIsB ? 1 / ratio : ratio;
  const inAll = smallIsB ? larger / perGramA + 1 / perGramB : 1 / perGramA + larger / perGramB;
  const small = Math.max(0, wanted / inAll / division);
  let best: { steps: Steps; score: number } | undefined;
  for (let count = Math.max(1, Math.floor(small) - 1); count <= Math.ceil(small) + 1; count += 1) {
    const large = Math.max(1, Math.round(count * larger));
    const steps = smallIsB ? { a: large, b: count } : { a: count, b: large };
    const mass = massOf(steps, measure);
    if (mass > largest * (1 + overfill)) continue;
    const score = Math.abs(offOf(steps, measure)) + amountWeight * Math.abs(100 * (mass / wanted - 1));
    if (!best || score < best.score) best = { steps, score };
  }
  // Where a single division is more than the cup may hold there is no plan, and one division of each part says so.
  const one = Math.max(1, Math.round(larger));
  return best?.steps ?? (smallIsB ? { a: one, b: 1 } : { a: 1, b: one });
}

/** So many divisions as a number without the noise of binary arithmetic. */
export function toDivisions(steps: number, division: number): number {
  return Number((steps * division).toPrecision(12));
}
