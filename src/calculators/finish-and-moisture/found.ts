import { answer, type Outcome } from '../../model/evidence/index.ts';
import { coatingResistance, type Finish, finishes } from '../../model/finish/index.ts';
import { type BoardInYear, type MoistureYear, moistureYear } from '../../model/finish/year.ts';
import { acclimatise, diffusionScatter, type MoistureReading, months } from '../../model/moisture/index.ts';
import { type WoodCoefficients, woodCoefficients } from '../../model/moisture/wood-coefficients.ts';
import { week } from '../../model/quantity/seconds.ts';
import { type Film, filmOf } from './film.ts';
import type { Inputs } from './inputs.ts';

/** A quantity of the average board, of the slowest and of the quickest within the scatter of wood and finish. */
export interface Three<T> {
  value: T;
  slow: T;
  quick: T;
}

/** A share of the way to balance after a week, and the time to half-way (s). */
export interface Spell {
  week: number;
  halfWay: number;
}

/** The points of the year, and what to call them. */
interface Year {
  labels: readonly (string | number)[];
  axis: string;
  /** Moisture content at balance with the air, %. */
  balance: readonly number[];
}

/** All that was found of a board, from which figures, charts and notes are made. */
export interface Found extends Film, Year {
  given: Inputs;
  coefficients: WoodCoefficients;
  bare: Three<MoistureYear>;
  coated: Three<MoistureYear>;
  /** Every finish on the same faces of this board, in the coats that are usual. */
  others: readonly { finish: Finish; coats: number; year: MoistureYear }[];
  /** Null where one face is bare: no closed form of a single change is kept for unlike faces. */
  spell: { bare: Three<Spell>; coated: Three<Spell> } | null;
}

/** What a board does through the year, bare and finished, with what is uncertain of wood and finish. */
export function find(given: Inputs, readings: readonly MoistureReading[]): Outcome<Found> {
  const year = yearOf(readings);
  const film = filmOf(given);
  const coefficients = woodCoefficients({
    ...given,
    temperature: mean(readings.map(({ temperature }) => temperature)),
    moisture: mean(year.balance),
  });
  const { diffusion, surface } = coefficients;
  const board: Board = { balance: year.balance, thickness: given.thickness, diffusion, surface };
  const ways = waysOf(film);
  const bareWays = each(ways, (way) => ({ ...way, film: 0 }));
  const through = (those: Three<Way>) => each(those, (way) => yearWith(quickened(board, way), way.film, film.both));
  const spell = film.both ? spellsOf(board, { bare: bareWays, coated: ways }) : answer(null);
  if (!spell.ok) return spell;
  return answer({
    given,
    coefficients,
    ...film,
    ...year,
    bare: through(bareWays),
    coated: through(ways),
    others: othersOn(board, film.both),
    spell: spell.value,
  });
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Two seasons are the ends of a sine. */
function yearOf(readings: readonly MoistureReading[]): Year {
  const [dry, damp] = readings;
  if (readings.length === 2 && dry && damp) {
    const middle = (dry.moisture + damp.moisture) / 2;
    const half = (damp.moisture - dry.moisture) / 2;
    const points = months.map((_, month) => middle - half * Math.cos((2 * Math.PI * month) / months.length));
    return { labels: points.map((_, month) => month), axis: 'Months after the dry season', balance: points };
  }
  return {
    labels: readings.map(({ label }) => label),
    axis: 'Month',
    balance: readings.map(({ moisture }) => moisture),
  };
}

type Board = Omit<BoardInYear, 'coatings'>;

/** How a board may differ from the average: the pace of its wood as a factor, and what its film holds back, s/m. */
interface Way {
  wood: number;
  film: number;
}

function each<T, U>({ value, slow, quick }: Three<T>, make: (one: T) => U): Three<U> {
  return { value: make(value), slow: make(slow), quick: make(quick) };
}

/** The average board, slow wood under the tightest film of its class, and quick wood under the leakiest. */
function waysOf({ resistance, coating }: Film): Three<Way> {
  return {
    value: { wood: 1, film: resistance },
    slow: { wood: 1 / diffusionScatter, film: coating?.high ?? resistance },
    quick: { wood: diffusionScatter, film: coating?.low ?? resistance },
  };
}

const quickened = (board: Board, { wood }: Way): Board => ({
  ...board,
  diffusion: board.diffusion * wood,
  surface: board.surface * wood,
});

const yearWith = (board: Board, film: number, both: boolean): MoistureYear =>
  moistureYear({ ...board, coatings: [film, both ? film : 0] });

/** Each finish as usual on the same faces. Several count as one class, and share its year. */
function othersOn(board: Board, both: boolean): Found['others'] {
  const years = new Map<number, MoistureYear>();
  return finishes.map((finish) => {
    const coats = finish.figures.coats.value;
    const { class: excluding } = finish.excluding;
    const film = excluding ? coatingResistance(excluding, coats).resistance : 0;
    const year = years.get(film) ?? yearWith(board, film, both);
    years.set(film, year);
    return { finish, coats, year };
  });
}

/** What a week of other air does to a board with both faces alike, and how long it takes half-way. */
function spellOf({ thickness, diffusion, surface }: Board, coating: number): Outcome<Spell> {
  const board = acclimatise({ thickness, start: 0, balance: 1, diffusion, surface, coating });
  return board.ok ? answer({ week: board.value.at(week).mean, halfWay: board.value.halfWay }) : board;
}

function spellsOf(
  board: Board,
  ways: { bare: Three<Way>; coated: Three<Way> },
): Outcome<{ bare: Three<Spell>; coated: Three<Spell> }> {
  const of = (those: Three<Way>) => each(those, (way) => spellOf(quickened(board, way), way.film));
  const bare = together(of(ways.bare));
  const coated = together(of(ways.coated));
  if (!bare.ok) return bare;
  return coated.ok ? answer({ bare: bare.value, coated: coated.value }) : coated;
}

/** Three answers as one, or the first refusal. */
function together<T>({ value, slow, quick }: Three<Outcome<T>>): Outcome<Three<T>> {
  if (!value.ok) return value;
  if (!slow.ok) return slow;
  return quick.ok ? answer({ value: value.value, slow: slow.value, quick: quick.value }) : quick;
}
