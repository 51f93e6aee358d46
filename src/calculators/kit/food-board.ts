import { finishById, finishes } from '../../model/finish/kinds.ts';
import type { Finish, FinishId } from '../../model/finish/types.ts';
import type { BoardForCare, BoardForFood, ResinPlace } from '../../model/food/index.ts';
import { resinOf } from '../../model/resin/kinds.ts';
import type { Resin } from '../../model/resin/types.ts';
import { choiceField } from './fields.ts';

/** s. */
const day = 86_400;

type ResinOnBoard = NonNullable<BoardForFood['resin']>;
type FinishOnBoard = NonNullable<BoardForFood['finish']>;

/** The resin taken where one is poured and none is named. */
const usualResin = resinOf('slow-casting-2-1') as Resin;

/** A resin in the board: days until full cure as its sheet or kind gives them, for food where the sheet says so. */
export function resinPartOf(
  given: Resin | undefined,
  place: ResinPlace,
  held: { declared: boolean; daysSince?: number | undefined },
): ResinOnBoard {
  const resin = given ?? usualResin;
  const cure = resin.figures.foodService ?? resin.figures.cure;
  return {
    name: resin.name,
    place,
    declared: held.declared,
    cure: {
      basis: cure?.basis ?? 'memory',
      ...(cure ? { fullCureDays: wholeDays(cure.value) } : {}),
      ...(held.daysSince === undefined ? {} : { daysSince: held.daysSince }),
    },
  };
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

/** A choice among the kinds of finish, and none. */
export function finishChoice(words: { label: string; help?: string; group?: string }) {
  return choiceField<FinishId | 'none'>({
    ...words,
    options: [
      { value: 'none', label: 'None, bare wood' },
      ...finishes.map(({ id, name }) => ({ value: id, label: name })),
    ],
    examples: ['mineral-oil', 'tung-oil', 'none'],
  });
}

/** The finish of such a choice; undefined for none. */
export function chosenFinish(id: FinishId | 'none' | undefined): Finish | undefined {
  return id === undefined || id === 'none' ? undefined : finishById(id);
}

function wholeDays(seconds: number): number {
  return Math.ceil(seconds / day);
}
