import { answer, type FieldError, type Outcome } from '../evidence/index.ts';
import { type Banded, banded, bandOf, type Spread, spreadOf } from './band.ts';
import { assumedSection, type Cut, ringAngleAt, ringAngles } from './cuts.ts';
import { type Strains, straightRingStrain } from './formulas.ts';
import type { MovementProperties } from './properties.ts';
import { checkSection, measureSection, type Section } from './section.ts';
import { type CappedStrains, chooseEquation, type MovementEquation, strains } from './strain.ts';

/** What is known of how a board lay in the log. Angles in degrees between rings and face, distances in mm as in `Section`. */
export type BoardGeometry = { cut: Cut } | { ringAngle: number } | { pithDepth: number; pithOffset: number };

/** A moisture content with its month or name. */
export interface NamedMoisture {
  label: string;
  /** % */
  moisture: number;
}

/** A board, and the moisture contents that it will pass through. */
export interface BoardYearInput {
  /** mm across the face at `moistureNow`. */
  width: number;
  /** mm at `moistureNow`. */
  thickness: number;
  geometry: BoardGeometry;
  /** Moisture content at which the board is flat, square and as wide as stated, %. */
  moistureNow: number;
  moistures: readonly NamedMoisture[];
  properties: MovementProperties;
}

/** A board at one moisture content. Lengths in mm; changes are from the board as it is now, positive when it grew. */
export interface BoardState extends NamedMoisture {
  /** Strains of the average board of the wood. */
  strains: CappedStrains;
  width: Banded;
  change: Banded;
  thickness: Banded;
  /** Hollow on the bark side is positive; see `SectionMeasures`. */
  cup: { bark: Banded; heart: Banded };
  /** Bark-side face less heart-side face. */
  faceDifference: Banded;
  /** True where this moisture content or the one now counts as the start of shrinkage. */
  capped: boolean;
}

/** A value with the label of the moisture content that gives it. */
export interface Labelled extends Banded {
  label: string;
}

/** A board through a set of moisture contents. */
export interface BoardYear {
  /** The one equation used throughout. */
  equation: MovementEquation;
  /** The board in its log, as it is now. */
  section: Section;
  /** True where only a cut or angle was known, and cup and drawing use an assumed place of the pith. */
  pithAssumed: boolean;
  /** Degrees between rings and face in the middle of the width. */
  ringAngle: number;
  states: readonly BoardState[];
  /** Widths, mm. */
  narrowest: Labelled;
  widest: Labelled;
  /** Widest less narrowest, mm. */
  swing: Banded;
  /** Change of width from now to the narrowest and to the widest, mm. */
  changeFromNow: { low: Labelled; high: Labelled };
  /** The largest cup by size, mm, its face, and when. */
  greatestCup: Labelled & { face: 'bark' | 'heart' };
  /** Labels whose moisture content lies above the start of shrinkage; the board does not swell beyond it. */
  cappedLabels: readonly string[];
  /** True where the board now is wetter than the start of shrinkage. */
  cappedNow: boolean;
}

/** Most that wood is taken to hold, % MC: green sapwood of light woods holds about twice its own mass. */
const wettest = 300;

/** Errors of the moisture contents of a question. */
function moistureErrors(now: number, moistures: readonly NamedMoisture[]): FieldError[] {
  const sound = (moisture: number) => Number.isFinite(moisture) && moisture >= 0 && moisture <= wettest;
  const errors: FieldError[] = [];
  if (!sound(now)) {
    errors.push({
      field: 'moistureNow',
      message: `A moisture content of ${now} % was read; it is 0 to ${wettest} % of the ovendry mass. Measure the board with a meter, or give the temperature and humidity of the shop.`,
    });
  }
  if (moistures.length === 0) {
    errors.push({ field: 'moistures', message: 'No moisture content was given. Give at least one.' });
  }
  for (const [index, { label, moisture }] of moistures.entries()) {
    if (sound(moisture)) continue;
    errors.push({
      field: `moistures.${index}`,
      message: `A moisture content of ${moisture} % was read for ${label}; it is 0 to ${wettest} % of the ovendry mass. Correct the reading, or leave it out.`,
    });
  }
  return errors;
}

interface Placed {
  section: Section;
  pithAssumed: boolean;
  ringAngle: number;
}

/** Put a board into its log; where only its cut is known, at the assumed place. */
function placeBoard(width: number, thickness: number, geometry: BoardGeometry): Outcome<Placed> {
  if ('pithDepth' in geometry) {
    const { pithDepth, pithOffset } = geometry;
    const section = checkSection({ width, thickness, pithDepth, pithOffset });
    if (!section.ok) return section;
    return answer({
      section: section.value,
      pithAssumed: false,
      ringAngle: ringAngleAt(pithDepth, pithOffset, thickness),
    });
  }
  const ringAngle = 'cut' in geometry ? ringAngles[geometry.cut] : geometry.ringAngle;
  if (!Number.isFinite(ringAngle) || ringAngle < 0 || ringAngle > 90) {
    const message = `A ring angle of ${ringAngle}° was read; it is 0° (flatsawn) to 90° (quartersawn). Measure from the wide face to the rings, the smaller way.`;
    return { ok: false, errors: [{ field: 'ringAngle', message }] };
  }
  // An assumed place suits any board whose own sizes do, so only those are judged.
  const sizes = checkSection({ width, thickness, pithDepth: 0, pithOffset: 0 });
  return sizes.ok
    ? answer({ section: assumedSection(width, thickness, ringAngle), pithAssumed: true, ringAngle })
    : sizes;
}

/** The measures of a placed board: width and thickness by straight rings where the pith is only assumed. */
function measure({ section, pithAssumed, ringAngle }: Placed, change: Strains) {
  const mapped = measureSection(section, change);
  if (!pithAssumed) return mapped;
  const width = section.width * (1 + straightRingStrain(ringAngle, change));
  const area = section.width * section.thickness * (1 + change.radial) * (1 + change.tangential);
  return { ...mapped, width, thickness: area / width };
}

/** How a board is placed, what it is now, and by which equation it moves. */
interface Moving {
  placed: Placed;
  moistureNow: number;
  properties: MovementProperties;
  equation: MovementEquation;
  spread: Spread;
}

function stateAt(
  { placed, moistureNow, properties, equation, spread }: Moving,
  { label, moisture }: NamedMoisture,
): BoardState {
  const change = strains(moistureNow, moisture, properties, equation);
  const [less, average, more] = bandOf(change, spread).map((each) => measure(placed, each)) as [
    ReturnType<typeof measure>,
    ReturnType<typeof measure>,
    ReturnType<typeof measure>,
  ];
  const width = banded(less.width, average.width, more.width);
  const now = placed.section.width;
  return {
    label,
    moisture,
    strains: change,
    width,
    change: { value: width.value - now, low: width.low - now, high: width.high - now },
    thickness: banded(less.thickness, average.thickness, more.thickness),
    cup: {
      bark: banded(less.cup.bark, average.cup.bark, more.cup.bark),
      heart: banded(less.cup.heart, average.cup.heart, more.cup.heart),
    },
    faceDifference: banded(less.faceDifference, average.faceDifference, more.faceDifference),
    capped: change.capped,
  };
}

/** The item for which a number is largest; the first of several. */
export function largest<T>(items: readonly [T, ...T[]], by: (item: T) => number): T {
  return items.reduce((best, item) => (by(item) > by(best) ? item : best), items[0]);
}

/** The swing between two changes of one board, a board that moves more doing so at both ends. */
export function swingOf(low: Banded, high: Banded): Banded {
  const value = high.value - low.value;
  // Whichever end is further from now belongs, for either change, to the board that moves more.
  const more = furthest(high) - furthest(low);
  const less = nearest(high) - nearest(low);
  return banded(less, value, more);
}

const furthest = ({ value, low, high }: Banded) => (value < 0 ? low : high);
const nearest = ({ value, low, high }: Banded) => (value < 0 ? high : low);

/**
 * A board's width, thickness and cup at each of several moisture contents, its narrowest and widest, and its greatest cup.
 *
 * The board is taken flat and square as it is now, and at rest at each moisture content; a real board lags behind the
 * year and swings less. One equation is used throughout (`chooseEquation`), so that width never falls as moisture rises.
 *
 * @returns the year; errors on `width`, `thickness`, `pithDepth`, `pithOffset`, `ringAngle`, `moistureNow` or
 *   `moistures.<index>`
 */
export function boardThroughYear(input: BoardYearInput): Outcome<BoardYear> {
  const { width, thickness, geometry, moistureNow, moistures, properties } = input;
  const placed = placeBoard(width, thickness, geometry);
  const errors = [...(placed.ok ? [] : placed.errors), ...moistureErrors(moistureNow, moistures)];
  if (!placed.ok || errors.length > 0) return { ok: false, errors };
  const chosen = chooseEquation([moistureNow, ...moistures.map(({ moisture }) => moisture)], properties);
  if (!chosen.ok) return chosen;
  const equation = chosen.value;
  const moving: Moving = {
    placed: placed.value,
    moistureNow,
    properties,
    equation,
    spread: spreadOf(properties, equation),
  };
  const states = moistures.map((moisture) => stateAt(moving, moisture)) as [BoardState, ...BoardState[]];
  const narrow = largest(states, (state) => -state.width.value);
  const wide = largest(states, (state) => state.width.value);
  const cups = states.flatMap(({ label, cup }) =>
    (['bark', 'heart'] as const).map((face) => ({ ...cup[face], label, face })),
  ) as [Labelled & { face: 'bark' | 'heart' }, ...(Labelled & { face: 'bark' | 'heart' })[]];
  return answer({
    equation,
    ...placed.value,
    states,
    narrowest: { ...narrow.width, label: narrow.label },
    widest: { ...wide.width, label: wide.label },
    swing: swingOf(narrow.change, wide.change),
    changeFromNow: {
      low: { ...narrow.change, label: narrow.label },
      high: { ...wide.change, label: wide.label },
    },
    greatestCup: largest(cups, ({ value }) => Math.abs(value)),
    cappedLabels: moistures.filter(({ moisture }) => moisture > properties.shrinkageStart).map(({ label }) => label),
    cappedNow: moistureNow > properties.shrinkageStart,
  });
}
