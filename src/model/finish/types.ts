import type { Figure } from '../evidence/index.ts';
import type { OilOrigin } from '../food/allergens.ts';
import type { FoodStanding } from '../food/types.ts';
import type { ExcludingClass } from './excluding.ts';

/** Ids of the generic kinds of finish, in the order in which they are listed. */
export const finishIds = [
  'mineral-oil',
  'oil-wax-paste',
  'linseed-oil',
  'tung-oil',
  'walnut-oil',
  'polymerised-oil',
  'oil-with-driers',
  'hard-wax-oil',
  'shellac',
  'varnish',
  'film-epoxy',
] as const;
export type FinishId = (typeof finishIds)[number];

/** Names of the figures of a finish that are never unknown. */
export type FinishFigureName = 'coats' | 'spreadingFirst' | 'spreadingNext' | 'density' | 'recoat' | 'lightUse';

/** Names of those that a finish may lack: one that is not wiped has no soak, one that never cures no cure. */
export type FinishOptionalName = 'soak' | 'fullCure' | 'upkeep';

/**
 * A generic kind of finish with everything that is known of it. The sheet of the finish at hand wins over all of it.
 *
 * Units of `figures`: coats a count; spreading rates m²/L; density g/mL as it comes from the can; times s. `recoat` is from one
 * coat to the next, `lightUse` from the last coat to dry handling, `fullCure` from the last coat to food and water,
 * `upkeep` from one renewal to the next in a home.
 */
export interface Finish {
  id: FinishId;
  /** Sentence case: `Mineral oil`. */
  name: string;
  /** What it is, in a line without a full stop. */
  about: string;
  /** How it sets: not at all, by taking up oxygen, by losing its solvent, by a reaction of two parts. */
  sets: 'never' | 'by-oxygen' | 'by-drying' | 'by-reaction';
  figures: Readonly<Record<FinishFigureName, Figure> & Record<FinishOptionalName, Figure | null>>;
  /** How a coat goes on, and what is done with what stays on top: sentences. */
  application: string;
  /** True where what has not sunk in is wiped off after the soak. */
  wiped: boolean;
  food: FoodStanding;
  /** Whom it may matter to. */
  origin: OilOrigin;
  /** One line, no full stop. */
  look: string;
  /** False where hot water and soap go through it, so that it is wiped and not washed. */
  washable: boolean;
  /** When and how to renew it, a sentence. */
  upkeepWords: string;
  rags: {
    /** Whether cloths wet with it can take fire by themselves, give off vapour that takes fire, or neither. */
    hazard: 'self-heating' | 'vapour' | 'none-known';
    /** One line, no full stop. */
    words: string;
  };
  /** Ids of the cautions that belong beside every answer about it, the gravest first. */
  cautions: readonly string[];
  /** On and beside cured resin. */
  overResin: {
    level: 'suits' | 'after-sanding' | 'test-first';
    /** Sentences. */
    words: string;
  };
  /** How it stands in the table of moisture-excluding effectiveness. */
  excluding: {
    /** Null where nothing in the table is like it: it is then taken as bare wood. */
    class: ExcludingClass | null;
    /** False where the class is only the nearest to it. */
    measured: boolean;
    /** A sentence for what is not measured. */
    note?: string;
  };
}
