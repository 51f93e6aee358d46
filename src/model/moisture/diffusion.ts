import { answer, type FieldError, type Outcome } from '../evidence/index.ts';
import { diffusionScatter } from './diffusion-coefficients.ts';
import { boardResponse } from './diffusion-series.ts';

export {
  assumedDensity,
  coefficientEvidence,
  densityRange,
  diffusionScatter,
  stillAirSurface,
  workingDiffusion,
} from './diffusion-coefficients.ts';
export { fickMean, fickMeanFreeFace, fickProfile } from './diffusion-series.ts';

/** A board brought into other air. */
export interface BoardInAir {
  /** mm. */
  thickness: number;
  /** Whether both faces meet the air, or one is sealed or lies on a bench. Both, unless told. */
  faces?: 'both' | 'one';
  /** Moisture content at the start, the same through the thickness, %. */
  start: number;
  /** Moisture content at balance with the new air, %. */
  balance: number;
  /** Diffusion coefficient across the grain, m²/s. */
  diffusion: number;
  /** Surface coefficient on moisture content, m/s; Infinity puts the face at balance at once. */
  surface: number;
  /** Resistance of a coating on each open face, s/m; 0 unless told. */
  coating?: number;
}

/** Moisture content of a board at one time, %. */
export interface MoistureAt {
  /** s since it came into the air. */
  time: number;
  mean: number;
  /** At the open face. */
  shell: number;
  /** In the middle, or at the sealed face. */
  core: number;
  /** Mean if the board were half or twice as quick, in order of size. */
  meanLow: number;
  meanHigh: number;
}

/** How a board follows the air. */
export interface Acclimatisation {
  /** D·t/l² in one second. */
  fourierPerSecond: number;
  /** S·l/D with the resistance of the coating in S: under about 1 the face governs, over about 10 the wood. */
  surfaceNumber: number;
  /** Time until the mean has gone half-way, s. */
  halfWay: number;
  /** Time until the mean is within one percent of moisture content of balance, s; 0 where it starts so near. */
  withinOne: number;
  /** The two times with the board twice as quick and half as quick, s. */
  band: { halfWay: readonly [number, number]; withinOne: readonly [number, number] };
  /** Moisture content at any time, s. */
  at(time: number): MoistureAt;
}

const metresPerMillimetre = 1e-3;

/** What each number of a board may be: wide enough for any wood and any film, narrow enough that arithmetic never overflows. */
const limits: readonly {
  field: 'thickness' | 'start' | 'balance' | 'diffusion' | 'surface' | 'coating';
  noun: string;
  unit: string;
  minimum: number;
  maximum: number;
  wayOut: string;
}[] = [
  { field: 'thickness', noun: 'thickness', unit: 'mm', minimum: 0.1, maximum: 1000, wayOut: 'such as 25 mm' },
  { field: 'start', noun: 'moisture content', unit: '%', minimum: 0, maximum: 200, wayOut: 'such as 12 %' },
  { field: 'balance', noun: 'moisture content', unit: '%', minimum: 0, maximum: 200, wayOut: 'such as 8 %' },
  {
    field: 'diffusion',
    noun: 'diffusion coefficient',
    unit: 'm²/s',
    minimum: 1e-14,
    maximum: 1e-6,
    wayOut: 'such as 1e-10',
  },
  {
    field: 'surface',
    noun: 'surface coefficient',
    unit: 'm/s',
    minimum: 1e-12,
    maximum: Number.POSITIVE_INFINITY,
    wayOut: 'such as 5e-8 for still air',
  },
  {
    field: 'coating',
    noun: 'resistance of a coating',
    unit: 's/m',
    minimum: 0,
    maximum: 1e13,
    wayOut: 'such as 1e8 for a film of varnish, or 0 for bare wood',
  },
];

function problems(board: BoardInAir): FieldError[] {
  return limits.flatMap(({ field, noun, unit, minimum, maximum, wayOut }) => {
    const value = board[field] ?? 0;
    if (value >= minimum && value <= maximum) return [];
    const most = Number.isFinite(maximum) ? ` to ${maximum}` : ' upwards';
    return [
      {
        field,
        message: `${value} ${unit} cannot be used as the ${noun}: it goes from ${minimum}${most}. Give a value ${wayOut}.`,
      },
    ];
  });
}

/**
 * Follow the moisture of a board after it comes into other air: one-dimensional diffusion across the thickness with
 * constant coefficients, and the resistances of coating and air at the face added to one, 1/S + R.
 *
 * @param board sizes, moisture and coefficients
 * @returns times, and the moisture at any time; field errors for values that no board has
 */
export function acclimatise(board: BoardInAir): Outcome<Acclimatisation> {
  const errors = problems(board);
  if (errors.length > 0) return { ok: false, errors };
  const depth = board.thickness * metresPerMillimetre * (board.faces === 'one' ? 1 : 0.5);
  const effective = 1 / (1 / board.surface + (board.coating ?? 0));
  const surfaceNumber = (effective * depth) / board.diffusion;
  const fourierPerSecond = board.diffusion / depth ** 2;
  const { mean, at: local, timeFor } = boardResponse(surfaceNumber);
  const change = board.balance - board.start;

  const secondsFor = (share: number) => timeFor(share) / fourierPerSecond;
  const halfWay = secondsFor(0.5);
  const withinOne = Math.abs(change) <= 1 ? 0 : secondsFor(1 - 1 / Math.abs(change));
  const around = (time: number): [number, number] => [time / diffusionScatter, time * diffusionScatter];
  return answer({
    fourierPerSecond,
    surfaceNumber,
    halfWay,
    withinOne,
    band: { halfWay: around(halfWay), withinOne: around(withinOne) },
    at(time) {
      const fo = Math.max(0, time) * fourierPerSecond;
      const slow = board.start + change * mean(fo / diffusionScatter);
      const quick = board.start + change * mean(fo * diffusionScatter);
      return {
        time,
        mean: board.start + change * mean(fo),
        shell: board.start + change * local(1, fo),
        core: board.start + change * local(0, fo),
        meanLow: Math.min(slow, quick),
        meanHigh: Math.max(slow, quick),
      };
    },
  });
}

/**
 * Times at which to show a board, closer together at the start where it changes fastest.
 *
 * @param board the answer of `acclimatise`
 * @param count how many, the first being 0
 * @returns s, until the mean is within one percent of balance or has gone 95 % of the way, whichever is later
 */
export function showingTimes(board: Acclimatisation, count: number): number[] {
  const end = Math.max(board.withinOne, board.halfWay * 4.5);
  return Array.from({ length: count }, (_, index) => end * (index / (count - 1)) ** 2);
}
