import { changeByCoefficient, changeByShrinkage, straightRingStrain } from './formulas.ts';
import { lumberThicknessShrinkage, lumberWidthShrinkage } from './lumber.ts';
import { ringMap } from './section.ts';

/** Every equation of the room, for the Equations page. Eq. 4-9, on which 13-3 rests, stands with the woods. */
export const equations = [
  changeByCoefficient,
  changeByShrinkage,
  straightRingStrain,
  ringMap,
  lumberWidthShrinkage,
  lumberThicknessShrinkage,
] as const;
