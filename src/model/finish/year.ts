import { day } from '../quantity/seconds.ts';
import { type Complex, type Slab, slabResponse } from './slab.ts';

/** Length of a year, s. */
export const yearSeconds = 365.25 * day;

/** A board in the air of a year that comes back the same. */
export interface BoardInYear {
  /**
   * Moisture content at balance with the air, %, at points evenly spread over the year (mid-months, for example); between
   * them it runs straight.
   */
  balance: readonly number[];
  /** mm. */
  thickness: number;
  /** Diffusion coefficient across the grain, m²/s. */
  diffusion: number;
  /** Surface coefficient of bare wood on moisture content, m/s. */
  surface: number;
  /** Resistance of the coating of each face, s/m; 0 for bare wood. */
  coatings: readonly [number, number];
}

/** The moisture of a board through a year. */
export interface MoistureYear {
  /** Mean moisture content of the board at the points of `balance`, %. */
  points: readonly number[];
  /** Driest and wettest mean of the year, %. */
  driest: number;
  wettest: number;
  /** Wettest less driest, percentage points. */
  swing: number;
  /** Mean of the year, %: that of the air’s balance, whatever the coating. */
  mean: number;
  /** How long the yearly swing of the board’s mean comes after that of the air, s. */
  lag: number;
  /** Largest difference between the two faces under their coatings, percentage points. */
  faceDifference: number;
}

/**
 * Sines that a year is summed from. What is left out falls with the square of their number even where the board follows
 * at once: 0.01 percentage points of a swing of 6.
 */
const harmonics = 120;
/** Least number of times in a year at which extremes are looked for: every day. */
const leastSteps = 360;

/** Fourier coefficients, from the first, of a line that runs straight between points evenly spread over a period. */
function coefficients(points: readonly number[]): Complex[] {
  const count = points.length;
  // Of the points alone: the same again every `count` orders. What runs between them is in the factor below.
  const ofPoints = points.map((_, order): Complex => {
    let [re, im] = [0, 0];
    for (const [at, value] of points.entries()) {
      const angle = (-2 * Math.PI * ((at * order) % count)) / count;
      re += value * Math.cos(angle);
      im += value * Math.sin(angle);
    }
    return { re, im };
  });
  return Array.from({ length: harmonics }, (_, index) => {
    const order = index + 1;
    const { re, im } = ofPoints[order % count] as Complex;
    const x = (Math.PI * order) / count;
    const straight = (Math.sin(x) / x) ** 2 / count;
    return { re: re * straight, im: im * straight };
  });
}

/** A real line from its Fourier coefficients: at `steps` even times of the period. */
function summed(waves: readonly Complex[], steps: number): Float64Array {
  const line = new Float64Array(steps);
  const cosines = Float64Array.from({ length: steps }, (_, at) => Math.cos((2 * Math.PI * at) / steps));
  const sines = Float64Array.from({ length: steps }, (_, at) => Math.sin((2 * Math.PI * at) / steps));
  for (const [index, { re, im }] of waves.entries()) {
    const order = index + 1;
    let at = 0;
    for (let step = 0; step < steps; step += 1) {
      line[step] = (line[step] as number) + 2 * (re * (cosines[at] as number) - im * (sines[at] as number));
      at += order;
      if (at >= steps) at %= steps;
    }
  }
  return line;
}

const by = (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re });

/**
 * The moisture of a board through a year that has always been the same: the air’s year taken apart into sines, each
 * weakened and delayed by the board in closed form, and put together again. Coefficients are constant.
 *
 * @param board at least one point of balance; thickness, coefficients and resistances above 0, coatings from 0
 */
export function moistureYear({ balance, thickness, diffusion, surface, coatings }: BoardInYear): MoistureYear {
  const slab: Slab = {
    thickness,
    diffusion,
    resistances: [1 / surface + coatings[0], 1 / surface + coatings[1]],
  };
  const air = coefficients(balance);
  const responses = air.map((_, index) => slabResponse(slab, (2 * Math.PI * (index + 1)) / yearSeconds));
  const stride = Math.ceil(leastSteps / balance.length);
  const steps = stride * balance.length;
  const mean = balance.reduce((sum, value) => sum + value, 0) / balance.length;
  const board = summed(
    responses.map((response, index) => by(response.mean, air[index] as Complex)),
    steps,
  );
  const like = coatings[0] === coatings[1];
  const apart = like
    ? board.subarray(0, 0)
    : summed(
        responses.map(({ faces: [first, second] }, index) =>
          by({ re: first.re - second.re, im: first.im - second.im }, air[index] as Complex),
        ),
        steps,
      );
  const driest = mean + Math.min(...board);
  const wettest = mean + Math.max(...board);
  const { re, im } = (responses[0] as (typeof responses)[number]).mean;
  return {
    points: balance.map((_, at) => mean + (board[at * stride] as number)),
    driest,
    wettest,
    swing: wettest - driest,
    mean,
    lag: (Math.atan2(-im, re) / (2 * Math.PI)) * yearSeconds,
    faceDifference: apart.reduce((most, value) => Math.max(most, Math.abs(value)), 0),
  };
}
