import type { Figure } from '../evidence/index.ts';
import type { FinishRecord } from './record.ts';

/**
 * Id of a generic kind of finish: the name of its record, so that a finish is added by adding a file. What may be chosen is checked
 * against the records where it is read, not by the compiler.
 */
export type FinishId = string;

/** Names of the figures of a finish that are never unknown. */
export type FinishFigureName = 'coats' | 'spreadingFirst' | 'spreadingNext' | 'density' | 'recoat' | 'lightUse';

/** Names of those that a finish may lack: one that is not wiped has no soak, one that never cures no cure. */
export type FinishOptionalName = 'soak' | 'fullCure' | 'upkeep';

/**
 * A generic kind of finish with everything that is known of it. The sheet of the finish at hand wins over all of it.
 *
 * Units of `figures`: coats a count; spreading rates m²/L; density g/mL as it comes from the can; times s. `recoat` is from one
 * coat to the next, `lightUse` from the last coat to dry handling, `fullCure` from the last coat to food and water,
 * `upkeep` from one renewal to the next in a home. The other fields are described in the record's schema.
 */
export interface Finish extends Omit<FinishRecord, 'order' | 'figures'> {
  figures: Readonly<Record<FinishFigureName, Figure> & Record<FinishOptionalName, Figure | null>>;
}
