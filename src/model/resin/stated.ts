import type { Basis, Figure } from '../evidence/index.ts';
import { day, hour } from '../quantity/seconds.ts';
import { assumed } from './assumed.ts';
import { gelPoint, timeToConversion } from './clock.ts';
import type { ResinKinetics } from './fit.ts';
import type { Resin, ResinFigureName } from './types.ts';

/** Where the time of an event comes from: the maker's sheet, the generic kind, common practice, or the clock alone. */
export type CureOrigin = 'sheet' | 'kind' | 'practice' | 'clock';

/** A wait that holds at a temperature, and who says so. */
export interface Stated {
  /** s. */
  time: number;
  /** °C. */
  celsius: number;
  /** True where the sheet gives the time and not its temperature. */
  assumed: boolean;
  origin: CureOrigin;
  basis: Basis;
}

/** Room temperature that practice and the generic kinds mean, °C. */
export const roomTemperature = 22;
/** Until a coating epoxy goes on to its next stage at room temperature; common practice. */
const nextStage = 24 * hour;
/** A slow resin takes longer to that: so many times what a thin layer of it takes to gel; from memory. */
const nextStageOverGel = 4;
/** Full cure where nothing says otherwise, at room temperature; common practice. */
export const usualCure = 7 * day;
/** Light use comes at three of the seven days. */
export const lightShare = 3 / 7;
/** Conversions between which a coat stops bonding by itself to the next. */
export const recoatShuts = { from: 0.75, to: 0.8 };

/**
 * Temperatures between which a sheet that names none may have been measured, °C. A wait must not come out short, so it is taken for warm
 * resin; the end of a window must not come out late, so that it is taken for cold.
 */
const usualTemperatures = { coldest: 20, warmest: assumed.timesTemperature };
/** Warmer than any shop, °C: what a sheet gives for it is cured in an oven, and its recoat window and sanding time are not meant. */
export const oven = 35;

/** The temperature that a time of a resin holds at, and whether it was assumed. */
function temperatureOf({ fromSheet, figures }: Resin, name: ResinFigureName): { celsius: number; assumed: boolean } {
  const { cureTemperature } = figures;
  // The kind's own times hold at room temperature, whatever the sheet that lies over it says of others.
  if (fromSheet && figures[name]?.basis !== 'supplier-sheet') return { celsius: roomTemperature, assumed: false };
  const unsaid = fromSheet && cureTemperature?.basis !== 'supplier-sheet';
  const celsius = cureTemperature?.value ?? roomTemperature;
  const ofShop = name === 'recoatOpens' || name === 'recoatCloses' || name === 'sandable';
  const usual =
    ofShop && celsius > oven ? { celsius: usualTemperatures.warmest, assumed: true } : { celsius, assumed: unsaid };
  if (!usual.assumed || name !== 'recoatCloses') return usual;
  return { celsius: Math.min(usual.celsius, usualTemperatures.coldest), assumed: true };
}

/** A wait in the words of the sheet or of the kind. */
export function statedBy(resin: Resin | undefined, name: ResinFigureName): Stated | undefined {
  const figure: Figure | null | undefined = resin?.figures[name];
  if (!resin || !figure) return undefined;
  return {
    time: figure.value,
    ...temperatureOf(resin, name),
    origin: figure.basis === 'supplier-sheet' ? 'sheet' : 'kind',
    basis: figure.basis,
  };
}

/** A wait that only practice knows, where neither sheet nor kind speaks; at room temperature. */
export function practice(time: number, basis: Basis = 'shop-practice'): Stated {
  return { time, celsius: roomTemperature, assumed: false, origin: 'practice', basis };
}

/** Where a sheet says when the window opens and not when it shuts: as much later as on the clock. */
export function shutAfter(opens: Stated | undefined, { kinetics }: ResinKinetics): Stated | undefined {
  if (!opens) return undefined;
  const ratio =
    timeToConversion(recoatShuts.from, opens.celsius, kinetics) / timeToConversion(gelPoint, opens.celsius, kinetics);
  return { ...opens, time: opens.time * ratio, origin: 'clock', basis: 'memory' };
}

/** About 24 hours at room temperature for a coating epoxy; longer for a slow one. */
export function practiceOfSanding({ kinetics }: ResinKinetics): Stated {
  const slow = nextStageOverGel * timeToConversion(gelPoint, roomTemperature, kinetics);
  return slow > nextStage ? practice(slow, 'memory') : practice(nextStage);
}
