import { answer, type FieldError, type Outcome } from '../evidence/index.ts';
import type { Finish } from './types.ts';

/** A surface to be finished, and how. */
export interface CoatsRequest {
  finish: Finish;
  /** Area to be coated of all boards together, mm². */
  area: number;
  /** Whole number. */
  coats: number;
  /** Own spreading rates in place of the record’s, m²/L. */
  spreadingFirst?: number;
  spreadingNext?: number;
  /** Share added for what stays in cloth, brush and can: 0.1 is a tenth. */
  spare: number;
}

/** An amount with the ends that the spreading rate leaves open. */
export interface Amount {
  value: number;
  low: number;
  high: number;
}

/** One coat: what it takes, and when. Times in s from when the first coat goes on. */
export interface Coat {
  number: number;
  /** mL, with spare. */
  volume: Amount;
  /** g, with spare. */
  mass: number;
  /** Goes on. */
  start: number;
  /** Wiped off; null where it is not wiped. */
  wipe: number | null;
  /** The next coat may go on, or after the last coat the board may be handled. */
  ready: number;
}

/** All coats of a finish. */
export interface CoatsPlan {
  coats: readonly Coat[];
  /** mL of all coats. */
  volume: Amount;
  /** g of all coats. */
  mass: number;
  /** s from the first coat until the board may be handled. */
  light: number;
  /** s from the first coat until food and water may touch it; the same as `light` for what never cures. */
  use: Amount;
  /** False where the coats are fewer or more than is usual. */
  usualCoats: boolean;
}

/** Most coats that are reckoned with. */
export const mostCoats = 12;
const squareMillimetres = 1e6;
const millilitres = 1000;

/** A value with its band, or the value alone where it has none. */
const ends = ({ value, low, high }: { value: number; low?: number; high?: number }): Amount => ({
  value,
  low: low ?? value,
  high: high ?? value,
});

const sum = (amounts: readonly Amount[]): Amount => ({
  value: amounts.reduce((total, { value }) => total + value, 0),
  low: amounts.reduce((total, { low }) => total + low, 0),
  high: amounts.reduce((total, { high }) => total + high, 0),
});

/**
 * How much of a finish each coat takes, and when each goes on, is wiped, and the board may be used.
 *
 * @returns the plan; errors on `coats`, `area`, `spreadingFirst`, `spreadingNext` or `spare`
 */
export function planCoats(request: CoatsRequest): Outcome<CoatsPlan> {
  const { finish, area, coats, spare } = request;
  const errors: FieldError[] = [];
  if (!Number.isInteger(coats) || coats < 1 || coats > mostCoats) {
    errors.push({
      field: 'coats',
      message: `${coats} coats were read; it is a whole number from 1 to ${mostCoats}. Give one, such as ${finish.figures.coats.value}.`,
    });
  }
  if (!(area > 0)) {
    errors.push({ field: 'area', message: `An area of ${area} mm² was read; it must be more than nothing. Give one.` });
  }
  for (const field of ['spreadingFirst', 'spreadingNext'] as const) {
    const own = request[field];
    if (own !== undefined && !(own > 0)) {
      errors.push({
        field,
        message: `A spreading rate of ${own} m²/l was read; it must be more than nothing. Leave it empty for the usual one.`,
      });
    }
  }
  if (!(spare >= 0)) {
    errors.push({ field: 'spare', message: `A spare of ${spare} was read; it is 0 or more. Give 0.1 for a tenth.` });
  }
  if (errors.length > 0) return { ok: false, errors };

  const { figures } = finish;
  const rateOf = (own: number | undefined, known: Amount): Amount =>
    own === undefined ? known : { value: own, low: own, high: own };
  const first = rateOf(request.spreadingFirst, ends(figures.spreadingFirst));
  const next = rateOf(request.spreadingNext, ends(figures.spreadingNext));
  const amount = (rate: Amount): Amount => {
    const needed = (area / squareMillimetres) * millilitres * (1 + spare);
    return { value: needed / rate.value, low: needed / rate.high, high: needed / rate.low };
  };
  const soak = figures.soak?.value ?? 0;
  const plan = Array.from({ length: coats }, (_, index): Coat => {
    const volume = amount(index === 0 ? first : next);
    const start = index * figures.recoat.value;
    return {
      number: index + 1,
      volume,
      mass: volume.value * figures.density.value,
      start,
      wipe: finish.wiped ? start + soak : null,
      ready: start + (index + 1 === coats ? figures.lightUse.value : figures.recoat.value),
    };
  });
  const between = (end: keyof Amount) => (coats - 1) * ends(figures.recoat)[end];
  const until = ends(figures.fullCure ?? figures.lightUse);
  return answer({
    coats: plan,
    volume: sum(plan.map(({ volume }) => volume)),
    mass: plan.reduce((total, { mass }) => total + mass, 0),
    light: between('value') + figures.lightUse.value,
    use: {
      value: between('value') + until.value,
      low: between('low') + until.low,
      high: between('high') + until.high,
    },
    usualCoats: coats >= ends(figures.coats).low && coats <= ends(figures.coats).high,
  });
}

/** Which surfaces of a board are coated. */
const coatedSides = ['all', 'faces', 'face-and-edges', 'face'] as const;

/** Which surfaces of a board are coated. */
export type CoatedSides = (typeof coatedSides)[number];

/**
 * Area of a board that is coated, mm².
 *
 * @param face area of one face, mm²
 * @param perimeter length of all edges, holes with them, mm
 * @param thickness mm
 */
export function coatedArea(face: number, perimeter: number, thickness: number, sides: CoatedSides): number {
  const faces = sides === 'all' || sides === 'faces' ? 2 : 1;
  const edges = sides === 'all' || sides === 'face-and-edges' ? perimeter * thickness : 0;
  return faces * face + edges;
}
