import { rimSpeed } from './cutters.ts';
import { thickestSlab } from './flatten-plane.ts';
import { boardFeet, surfaceMeasure, tallyBoardFeet } from './lumber.ts';

/** Every equation of the room, for the Equations page. */
export const equations = [boardFeet, surfaceMeasure, tallyBoardFeet, thickestSlab, rimSpeed] as const;
