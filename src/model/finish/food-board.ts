import type { BoardForCare, BoardForFood, ResinPlace } from '../food/index.ts';
import { amount } from '../quantity/index.ts';
import { day } from '../quantity/seconds.ts';
import { kineticsOf } from '../resin/fit.ts';
import { type History, steady } from '../resin/history.ts';
import { foodBeforeCure } from '../resin/resin.ts';
import { oven, roomTemperature, statedBy } from '../resin/stated.ts';
import { timetableOf } from '../resin/timetable.ts';
import { silentOn, warIn } from '../resin/told.ts';
import type { Resin } from '../resin/types.ts';
import type { Finish } from './types.ts';

type ResinOnBoard = NonNullable<BoardForFood['resin']>;
type FinishOnBoard = NonNullable<BoardForFood['finish']>;

/** What is told of a resin in the board. */
export interface ResinTold {
  /** How much of the board's length is coated, mm; for a coat. */
  coatedLength?: number | undefined;
  declared: boolean;
  daysSince?: number | undefined;
  /** Temperatures of the room since the pour, and how they stand in a sentence; absent where they were not told. */
  room?: { history: History; words: string } | undefined;
}

/**
 * A resin in the board: days until it may touch food, the later of full cure and the days that the sheet gives for food, by the one
 * timetable of the cure clock. They hold in the room that was told, else at the sheet's own temperature.
 *
 * @param given undefined where no resin was named: then nobody knows its days
 */
export function resinPartOf(given: Resin | undefined, place: ResinPlace, told: ResinTold): ResinOnBoard {
  const { declared, daysSince, coatedLength } = told;
  const common = { place, declared, ...(place === 'coat' && coatedLength !== undefined ? { coatedLength } : {}) };
  if (!given) {
    return {
      ...common,
      name: 'Epoxy resin',
      cure: { basis: 'memory', unknown: 'which resin it is was not told, and its sheet has the days to full cure' },
    };
  }
  return {
    ...common,
    name: given.name,
    cure: { ...(daysSince === undefined ? {} : { daysSince }), ...curedBy(given, told.room) },
  };
}

const known = new WeakMap<Resin, Omit<ResinOnBoard['cure'], 'daysSince'>>();

/** Days until a resin may touch food, and where they hold; kept where they do not hang on a room. */
function curedBy(resin: Resin, room: ResinTold['room']): Omit<ResinOnBoard['cure'], 'daysSince'> {
  const kept = room ? undefined : known.get(resin);
  if (kept) return kept;
  const found = curedIn(resin, room);
  if (!room) known.set(resin, found);
  return found;
}

function curedIn(resin: Resin, room: ResinTold['room']): Omit<ResinOnBoard['cure'], 'daysSince'> {
  const war = warIn(resin);
  if (war) return { basis: 'derived', unknown: war };
  if (silentOn(resin, 'cure')) {
    return { basis: 'memory', unknown: 'your sheet names no full cure, so no day can be given. Ask the maker' };
  }
  const stated = statedBy(resin, 'cure');
  if (!room && stated && stated.celsius > oven) {
    return {
      basis: stated.basis,
      unknown: `its sheet gives ${amount(stated.time, 's', 2)} at ${amount(stated.celsius, 'Cel')}, which is no shelf. Give the temperature of your room, and ask its maker for the days at that`,
    };
  }
  const own = stated?.celsius ?? roomTemperature;
  const { events } = timetableOf(resin, kineticsOf(resin), room?.history ?? steady(own));
  const food = events.find(({ id }) => id === 'foodService');
  const basis = food?.basis ?? 'memory';
  if (!food || food.time === null) return { basis, never: true };
  const where = room?.words ?? `at ${amount(own, 'Cel')}`;
  const later = foodBeforeCure(resin);
  return { basis, fullCureDays: wholeDays(food.time), where, ...(later ? { later } : {}) };
}

/** A finish on the board; `fullCureDays` of its own sheet wins over its kind's. */
export function finishPartOf(
  finish: Finish,
  held: { declared: boolean; daysSince?: number | undefined; fullCureDays?: number | undefined },
): FinishOnBoard {
  const { name, food, origin } = finish;
  const cure = finish.figures.fullCure;
  const cures = cure !== null || held.fullCureDays !== undefined;
  const fullCureDays = held.fullCureDays ?? (cure ? wholeDays(cure.value) : undefined);
  return {
    name,
    standing: food,
    origin,
    epoxy: finish.id === 'film-epoxy',
    film: !finish.wiped,
    washable: finish.washable,
    declared: held.declared,
    ...(cures
      ? {
          cure: {
            basis: held.fullCureDays === undefined ? (cure?.basis ?? 'memory') : 'supplier-sheet',
            ...(fullCureDays === undefined ? {} : { fullCureDays }),
            ...(held.daysSince === undefined ? {} : { daysSince: held.daysSince }),
          },
        }
      : {}),
  };
}

/** How the buyer keeps up a finish, or bare wood. */
export function upkeepOf(finish: Finish | undefined): BoardForCare['upkeep'] {
  if (!finish) return { kind: 'none' };
  if (!finish.wiped) return { kind: 'film' };
  return {
    kind: 'renew',
    words: finish.upkeepWords,
    selfHeating: finish.rags.hazard === 'self-heating',
    soak: finish.figures.soak,
    every: finish.figures.upkeep,
  };
}

function wholeDays(seconds: number): number {
  // A hair over a day, from carrying it over, is no further day.
  return Math.ceil(seconds / day - 1e-6);
}
