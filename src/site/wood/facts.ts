import type { Figure } from '../../model/evidence/index.ts';
import type { SpeciesDossier } from '../../model/species/types.ts';

/** Another wood that could stand in for this one, and by how much it differs. */
export interface Alternative {
  id: string;
  name: string;
  /** Side hardness at 12 %, N. */
  hardness: number | null;
  /** Change of width of a flatsawn board from 6 to 12 % moisture content, %. */
  swing: number | null;
}

/** What a wood's page shows: the dossier, and what the models make of it. */
export interface WoodFacts {
  wood: SpeciesDossier;
  /** Change of width of a flatsawn board from 6 to 12 % moisture content, %. */
  swing: Figure | null;
  /** The same in mm, for a board 300 mm and one 12 in wide. */
  board: { metric: Figure; inch: Figure } | null;
  /** Side hardness of sugar maple, the wood that the food code names, N. */
  yardstick: number;
  alternatives: readonly Alternative[];
}
