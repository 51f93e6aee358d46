import { beforeGelWar } from './before-gel.ts';
import { depthAgainstPotLife } from './greatest-pour.ts';
import { ratioLimits } from './ratio.ts';
import { type RatioConflict, ratioConflict, swappedTimes } from './resin.ts';
import type { CureEvent, CureEventId, Timetable } from './timetable.ts';
import type { Resin, ResinFigureName } from './types.ts';

/**
 * What in a reader's own sheet is at war with itself, as a clause that goes on after the resin's name; undefined where nothing is, and for
 * a generic kind. No time, dose or day is told by such a sheet.
 */
export function warIn(resin: Resin): string | undefined {
  if (!resin.fromSheet) return undefined;
  const apart = timesOrRatiosAtWar(resin);
  if (apart) return apart;
  if (depthAgainstPotLife(resin).length === 0) return undefined;
  return silentOn(resin, 'potLife')
    ? 'it names no pot life, and its greatest depth does not go with that of its kind, so nobody knows how fast it cures'
    : 'its pot life and its greatest depth cannot both be right, so nobody knows how fast it cures';
}

/** The same of its times alone: two that look swapped, or a wait that is over before the resin has set. */
export function timesAtWar(resin: Resin): string | undefined {
  return resin.fromSheet ? (swappedTimes(resin)[0]?.war ?? beforeGelWar(resin)) : undefined;
}

/** The same without the depth, which an answer about a pour holds against the pot life itself. */
export function timesOrRatiosAtWar(resin: Resin): string | undefined {
  const ratios = ratiosAtWar(resin);
  if (ratios) {
    return `its ratios by volume and by weight differ by ${ratios.apart.toFixed(0)} %, so nobody knows of which mix its times are`;
  }
  return timesAtWar(resin);
}

/** How far the ratios of a reader's own sheet contradict each other, where nobody can mix by them. */
export function ratiosAtWar(resin: Resin): RatioConflict | undefined {
  const ratios = resin.fromSheet ? ratioConflict(resin) : undefined;
  return ratios && ratios.apart > ratioLimits.stop ? ratios : undefined;
}

/** True where a reader's own sheet does not state a figure itself: the kind's that lies under it is not the sheet's. */
export function silentOn({ fromSheet, figures }: Resin, name: ResinFigureName): boolean {
  return fromSheet && figures[name]?.basis !== 'supplier-sheet';
}

/** A timetable without the times that nobody has told. */
export interface Told extends Timetable {
  /** False where the clock is that of a kind beneath a sheet, so that nothing may be read off it. */
  byClock: boolean;
}

const window = ['recoatOpens', 'recoatCloses'] as const;
const ofTheCure: readonly CureEventId[] = ['lightUse', 'fullCure', 'oil', 'foodService'];

/**
 * What of a timetable may be told. Beside a reader's own sheet the times of a kind count as unknown: without a pot life there is no clock,
 * and without a full cure there is no day for machine, oil or food either. What the sheet states itself stays.
 */
export function toldOf(resin: Resin, timetable: Timetable): Told {
  const [noClock, noCure] = [silentOn(resin, 'potLife'), silentOn(resin, 'cure')];
  if (!noClock && !noCure) return { ...timetable, byClock: true };
  // A window without its end, or with one that the clock set, is not the sheet's.
  const ofSheet = !window.some((name) => silentOn(resin, name));
  const isTold = ({ id, origin }: CureEvent) => {
    if (id === 'recoatOpens' || id === 'recoatCloses') return ofSheet && !timetable.noWindow;
    if (ofTheCure.includes(id)) return !noCure;
    return origin === 'sheet';
  };
  return {
    ...timetable,
    noWindow: timetable.noWindow && ofSheet,
    events: timetable.events.filter(isTold).map((event) => ({ ...event, clock: null, conversion: null })),
    cured: null,
    byClock: false,
  };
}
