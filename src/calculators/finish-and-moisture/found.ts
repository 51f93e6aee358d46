import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import {
  type CoatingResistance,
  coatingResistance,
  type Finish,
  finishById,
  finishes,
  mostCoats,
} from '../../model/finish/index.ts';
import { type MoistureYear, moistureYear } from '../../model/finish/year.ts';
import {
  acclimatise,
  diffusionScatter,
  type MoistureReading,
  months,
  stillAirSurface,
  workingDiffusion,
} from '../../model/moisture/index.ts';
import { densityOf, type KnownDensity } from '../../model/moisture/wood-density.ts';
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

/** All that was found of a board, from which figures, charts and notes are made. */
export interface Found {
  given: Inputs;
  finish: Finish;
  coats: number;
  both: boolean;
  /** Null where the finish is taken as bare wood, or the reader gave a resistance of their own. */
  coating: CoatingResistance | null;
  /** s/m. */
  resistance: number;
  wood: KnownDensity;
  diffusion: number;
  labels: readonly (string | number)[];
  axis: string;
  balance: readonly number[];
  bare: Three<MoistureYear>;
  coated: Three<MoistureYear>;
  /** Every finish on the same faces of this board, in the coats that are usual. */
  others: readonly { finish: Finish; coats: number; year: MoistureYear }[];
  /** Null where one face is bare: no closed form of a single change is kept for unlike faces. */
  spell: { bare: Three<Spell>; coated: Three<Spell> } | null;
}

/** The points of the year, and what to call them. Two seasons are the ends of a sine. */
function yearOf(readings: readonly MoistureReading[]): Pick<Found, 'labels' | 'axis' | 'balance'> {
  const [dry, damp] = readings;
  if (readings.length === 2 && dry && damp) {
    const mean = (dry.moisture + damp.moisture) / 2;
    const half = (damp.moisture - dry.moisture) / 2;
    const points = months.map((_, month) => mean - half * Math.cos((2 * Math.PI * month) / months.length));
    return { labels: points.map((_, month) => month), axis: 'Months after the dry season', balance: points };
  }
  return {
    labels: readings.map(({ label }) => label),
    axis: 'Month',
    balance: readings.map(({ moisture }) => moisture),
  };
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const week = 7 * 86_400;

/** What a board does through the year, bare and finished, with what is uncertain of wood and finish. */
export function find(given: Inputs, readings: readonly MoistureReading[]): Outcome<Found> {
  const finish = finishById(given.finish);
  if (!finish) return refuse('finish', `There is no finish ${given.finish}`, 'Pick one of the list.');
  const coats = given.coats ?? finish.figures.coats.value;
  if (!Number.isInteger(coats) || coats > mostCoats) {
    return refuse('coats', `${coats} is not a whole number of coats`, `Give one from 1 to ${mostCoats}, such as 3.`);
  }
  const year = yearOf(readings);
  const wood = densityOf(given.species);
  const diffusion =
    given.diffusion ??
    workingDiffusion(
      wood.density,
      mean(readings.map(({ temperature }) => temperature)),
      Math.min(30, mean(year.balance)),
    );
  const surface = given.surface ?? stillAirSurface;
  const coating =
    given.coating === undefined && finish.excluding.class ? coatingResistance(finish.excluding.class, coats) : null;
  const resistance = given.coating ?? coating?.resistance ?? 0;
  const both = given.faces !== 'one';
  const ends: Three<{ wood: number; film: number }> = {
    value: { wood: 1, film: resistance },
    slow: { wood: 1 / diffusionScatter, film: coating?.high ?? resistance },
    quick: { wood: diffusionScatter, film: coating?.low ?? resistance },
  };
  const each = <T>(make: (end: { wood: number; film: number }) => T): Three<T> => ({
    value: make(ends.value),
    slow: make(ends.slow),
    quick: make(ends.quick),
  });
  const through = (film: (end: { film: number }) => readonly [number, number]) =>
    each((end) =>
      moistureYear({
        balance: year.balance,
        thickness: given.thickness,
        diffusion: diffusion * end.wood,
        surface: surface * end.wood,
        coatings: film(end),
      }),
    );
  const spellBehind = (film: (end: { film: number }) => number): Outcome<Three<Spell>> => {
    const spells = each((end) => {
      const board = acclimatise({
        thickness: given.thickness,
        start: 0,
        balance: 1,
        diffusion: diffusion * end.wood,
        surface: surface * end.wood,
        coating: film(end),
      });
      return board.ok ? answer({ week: board.value.at(week).mean, halfWay: board.value.halfWay }) : board;
    });
    if (!spells.value.ok) return spells.value;
    if (!spells.slow.ok) return spells.slow;
    if (!spells.quick.ok) return spells.quick;
    return answer({ value: spells.value.value, slow: spells.slow.value, quick: spells.quick.value });
  };
  const others = new Map<number, MoistureYear>();
  const behind = (film: number): MoistureYear => {
    // Several finishes count as one class, and share its year.
    const known = others.get(film);
    if (known) return known;
    const found = moistureYear({
      balance: year.balance,
      thickness: given.thickness,
      diffusion,
      surface,
      coatings: [film, both ? film : 0],
    });
    others.set(film, found);
    return found;
  };
  const bareSpell = spellBehind(() => 0);
  const coatedSpell = spellBehind(({ film }) => film);
  if (!bareSpell.ok) return bareSpell;
  if (!coatedSpell.ok) return coatedSpell;
  return answer({
    given,
    finish,
    coats,
    both,
    coating,
    resistance,
    wood,
    diffusion,
    ...year,
    bare: through(() => [0, 0]),
    coated: through(({ film }) => [film, both ? film : 0]),
    others: finishes.map((other) => {
      const usual = other.figures.coats.value;
      const { class: excluding } = other.excluding;
      return {
        finish: other,
        coats: usual,
        year: behind(excluding ? coatingResistance(excluding, usual).resistance : 0),
      };
    }),
    spell: both ? { bare: bareSpell.value, coated: coatedSpell.value } : null,
  });
}
