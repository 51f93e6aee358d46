import { cureRate, gelPoint } from './clock.ts';
import { arrhenius, type Kinetics, type ThermalProperties, workConversion } from './kinetics.ts';
import { modesOf, multiply } from './modes.ts';
import { runawayTemperature } from './pour.ts';

/** Height of the resin in the cup as a multiple of its radius: a plastic cup filled as cups are. */
const heightOverRadius = 1.065;
/** Heat lost from each side, W/(m²·K): still air over the resin, round the wall, and under the cup on a bench. */
const films = { top: 10, side: 9, bottom: 6 };
/** The wall of the cup: 0.8 mm of polypropylene, 0.22 W/(m·K). */
const wallResistance = 0.0008 / 0.22;
/** How fine a cup is divided and a run is stepped. */
export interface CupGrid {
  /** Cells from the axis to the wall. */
  radial: number;
  /** Cells from bottom to top. */
  axial: number;
  /** Most conversion that a step may add to a cell. */
  step: number;
}

/** As fine as the reference runs, for checks and for temperatures. */
export const fineGrid: CupGrid = { radial: 15, axial: 16, step: 0.01 };
/** For times to work and to gel, within half a percent of the fine grid at a fiftieth of its cost. */
export const quickGrid: CupGrid = { radial: 5, axial: 5, step: 0.02 };

/** A cup of mixed resin, ready to run: its size, and the shapes in which it cools. */
export interface Cup {
  grid: CupGrid;
  thermal: ThermalProperties;
  /** Radius of the resin, m. */
  radius: number;
  /** Decay of each pair of shapes, 1/s. */
  decays: Float64Array;
  toModes: (field: Float64Array, out: Float64Array) => void;
  fromModes: (modes: Float64Array, out: Float64Array) => void;
}

/** Radius of the resin in a cup of a mass, m. */
function cupRadius(mass: number, density: number): number {
  return Math.cbrt(mass / 1000 / density / (Math.PI * heightOverRadius));
}

/**
 * A cup filled with mixed resin: a cylinder whose height is 1.065 of its radius, losing heat through top, wall and bottom.
 *
 * @param mass of mixed resin, g
 */
export function cupOf(mass: number, thermal: ThermalProperties, grid: CupGrid = quickGrid): Cup {
  const { radial, axial } = grid;
  const { density, heatCapacity, conductivity } = thermal;
  const radius = cupRadius(mass, density);
  const [dr, dz] = [radius / radial, (heightOverRadius * radius) / axial];
  // Heat passes through half a cell before it meets the film.
  const loss = (film: number, half: number, wall = 0) => 1 / (1 / film + wall + half / conductivity);

  // Per radian: a ring's face has the area r·dz and its volume is half the difference of the squares, times dz.
  const volumes = Array.from({ length: radial }, (_, i) => ((2 * i + 1) * dr * dr) / 2);
  const roots = volumes.map(Math.sqrt);
  const out = modesOf(
    volumes.map((volume, i) => {
      const inner = conductivity * i;
      const outer = i + 1 < radial ? conductivity * (i + 1) : radius * loss(films.side, dr / 2, wallResistance);
      return (inner + outer) / volume;
    }),
    roots.slice(1).map((root, i) => (-conductivity * (i + 1)) / (root * (roots[i] as number))),
  );
  const pass = conductivity / dz;
  const up = modesOf(
    Array.from({ length: axial }, (_, j) => {
      const below = j > 0 ? pass : loss(films.bottom, dz / 2);
      const above = j + 1 < axial ? pass : loss(films.top, dz / 2);
      return (below + above) / dz;
    }),
    Array.from({ length: axial - 1 }, () => -pass / dz),
  );

  const cells = radial * axial;
  const capacity = density * heatCapacity;
  const decays = new Float64Array(cells);
  for (const [p, decay] of out.decays.entries()) {
    for (const [q, other] of up.decays.entries()) decays[p * axial + q] = (decay + other) / capacity;
  }
  // The rings differ in volume: weighted with its root, their matrix is symmetric.
  const weighted = (turned: boolean) => {
    const matrix = new Float64Array(radial * radial);
    for (let i = 0; i < radial; i += 1) {
      for (let p = 0; p < radial; p += 1) {
        const shape = out.shapes[i * radial + p] as number;
        const root = roots[i] as number;
        if (turned) matrix[p * radial + i] = shape * root;
        else matrix[i * radial + p] = shape / root;
      }
    }
    return matrix;
  };
  const [into, back] = [weighted(true), weighted(false)];
  const upTurned = new Float64Array(axial * axial);
  for (let j = 0; j < axial; j += 1) {
    for (let q = 0; q < axial; q += 1) upTurned[q * axial + j] = up.shapes[j * axial + q] as number;
  }
  const between = new Float64Array(cells);
  const apply = (left: Float64Array, right: Float64Array) => (field: Float64Array, result: Float64Array) => {
    multiply(left, field, radial, radial, axial, between);
    multiply(between, right, radial, axial, axial, result);
  };
  return { grid, thermal, radius, decays, toModes: apply(into, up.shapes), fromModes: apply(back, upTurned) };
}

/** What happens in a cup; times in s from mixing. */
export interface CupRun {
  /** The part that is furthest on has become too thick to use. */
  work: number;
  /** The part that is furthest on has set to a gel. */
  gel: number;
  /** Highest temperature of the hottest part, °C; `runawayTemperature` where it went beyond. Only where the run was asked for it. */
  peak: number | null;
  timeOfPeak: number | null;
  ranAway: boolean;
  /** Conversion of the part that is furthest on, by time, from mixing to the end of the run. */
  course: readonly { time: number; conversion: number }[];
}

/** Air round the cup and resin as it was poured, °C, and how far the run goes: to the gel, or past the highest temperature. */
export interface CupStart {
  air: number;
  resin?: number;
  until?: 'gel' | 'peak';
}

/** A step that adds this many times the wanted conversion is taken again at half its length. */
const rejectAt = 2.5;
const growth = 1.5;
/** More steps than any resin needs; a run that uses them up has no answer. */
const mostSteps = 20_000;

/**
 * Follow the cure of a cup.
 *
 * Each step carries conduction exactly, in the shapes in which the cup cools, with the heat of the cure spread evenly over the
 * step; conversion advances at the temperature of the middle of the step, and the two are brought into agreement by a second
 * pass. So no step is too long for conduction, nothing can swing, and a cup in balance stays in balance.
 *
 * @param kinetics with `k1OverK2` above 0
 * @returns undefined where it never gels: kinetics that never start
 */
export function runCup(
  cup: Cup,
  kinetics: Kinetics,
  { air, resin = air, until = 'gel' }: CupStart,
): CupRun | undefined {
  const { decays } = cup;
  const cells = decays.length;
  const field = () => new Float64Array(cells);
  // Temperatures are counted from the air's.
  const [warmth, source, sourceModes, modes, middle, middleModes] = [
    field().fill(resin - air),
    field(),
    field(),
    field(),
    field(),
    field(),
  ];
  let [conversion, advanced] = [field(), field()];
  cup.toModes(warmth, modes);
  const heatsBy = kinetics.heatOfReaction / cup.thermal.heatCapacity;
  const rateConstant = (rise: number) => arrhenius(kinetics.k2At25C, kinetics.activationEnergy, air + rise);
  const limit = cup.grid.step;

  /** What is left of each mode after half of the step; its square after the whole. */
  const half = field();
  /** The modes after half of the step or the whole with an even source, into `out`. */
  const cool = (whole: boolean, out: Float64Array) => {
    for (let i = 0; i < cells; i += 1) {
      const kept = whole ? (half[i] as number) ** 2 : (half[i] as number);
      out[i] = kept * (modes[i] as number) + ((1 - kept) / (decays[i] as number)) * (sourceModes[i] as number);
    }
  };
  /** Conversion after a step at the temperatures of its middle; the source becomes its mean heat. Gives the largest gain. */
  const advance = (step: number): number => {
    let most = 0;
    for (let i = 0; i < cells; i += 1) {
      const from = conversion[i] as number;
      const gained = gain(from, rateConstant(middle[i] as number), step, kinetics);
      advanced[i] = from + gained;
      source[i] = (heatsBy * gained) / step;
      if (gained > most) most = gained;
    }
    return most;
  };

  let time = 0;
  let step = limit / 2 / cureRate(0, rateConstant(resin - air), kinetics);
  let furthest = 0;
  let [work, gel]: (number | undefined)[] = [];
  let [peak, timeOfPeak] = [resin - air, 0];
  const course = [{ time: 0, conversion: 0 }];
  for (let count = 0; count < mostSteps && Number.isFinite(step); count += 1) {
    for (let i = 0; i < cells; i += 1) {
      half[i] = Math.exp((-(decays[i] as number) * step) / 2);
      source[i] = heatsBy * cureRate(conversion[i] as number, rateConstant(warmth[i] as number), kinetics);
    }
    let gained = 0;
    for (let pass = 0; pass < 2; pass += 1) {
      cup.toModes(source, sourceModes);
      cool(false, middleModes);
      cup.fromModes(middleModes, middle);
      gained = advance(step);
    }
    if (gained > rejectAt * limit) {
      step /= 2;
      continue;
    }
    cup.toModes(source, sourceModes);
    cool(true, modes);
    cup.fromModes(modes, warmth);
    [conversion, advanced] = [advanced, conversion];
    const now = largest(conversion);
    const reached = (wanted: number) =>
      now >= wanted ? time + (step * (wanted - furthest)) / (now - furthest) : undefined;
    work ??= reached(workConversion);
    gel ??= reached(gelPoint);
    time += step;
    furthest = now;
    course.push({ time, conversion: now });
    const hottest = largest(warmth);
    if (hottest > peak) [peak, timeOfPeak] = [hottest, time];
    if (work !== undefined && gel !== undefined) {
      const ranAway = air + peak > runawayTemperature;
      if (until === 'gel') return { work, gel, peak: null, timeOfPeak: null, ranAway, course };
      if (ranAway) return { work, gel, peak: runawayTemperature, timeOfPeak: null, ranAway, course };
      if (hottest < 0.95 * peak) return { work, gel, peak: air + peak, timeOfPeak, ranAway, course };
    }
    step *= Math.min(growth, limit / gained);
  }
  return undefined;
}

/** The largest value; a spread into Math.max would make a list of them first. */
function largest(values: Float64Array): number {
  let most = values[0] as number;
  for (const value of values) if (value > most) most = value;
  return most;
}

/** Conversion gained in a step at constant temperature, by the Runge–Kutta rule of fourth order. */
function gain(from: number, k2: number, step: number, kinetics: Kinetics): number {
  const first = cureRate(from, k2, kinetics);
  const second = cureRate(from + (step / 2) * first, k2, kinetics);
  const third = cureRate(from + (step / 2) * second, k2, kinetics);
  const fourth = cureRate(from + step * third, k2, kinetics);
  return Math.min(1 - from, (step / 6) * (first + 2 * second + 2 * third + fourth));
}
