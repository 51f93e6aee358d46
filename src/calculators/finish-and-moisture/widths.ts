import type { EvidenceNote, Outcome } from '../../model/evidence/index.ts';
import { answer } from '../../model/evidence/index.ts';
import type { MoistureYear } from '../../model/finish/year.ts';
import { movementNote, ringAngleNotes } from '../../model/movement/board-evidence.ts';
import {
  bandOf,
  type Cut,
  chooseEquation,
  type MovementEquation,
  movementProperties,
  ringAngles,
  spreadOf,
  straightRingStrain,
  strains,
} from '../../model/movement/index.ts';
import type { Species } from '../../model/species/types.ts';
import type { Found, Three } from './found.ts';

/** A value with its ends. */
export interface Ends {
  value: number;
  low: number;
  high: number;
}

/** The value in the middle of everything that was worked out for it. */
export function ends({ value, slow, quick }: Three<number>): Ends {
  return { value, low: Math.min(value, slow, quick), high: Math.max(value, slow, quick) };
}

/** How a board’s width follows from its moisture. */
export interface Widths {
  /** Width at a mean moisture content, mm. */
  at(moisture: number): number;
  /** Swing of the width through a year, mm, with boards that move less and more than the average of their wood. */
  swing(year: Three<MoistureYear>): Ends;
  equation: MovementEquation;
  /** Moisture content above which the wood no longer swells, %. */
  shrinkageStart: number;
  evidence: readonly EvidenceNote[];
  basis: EvidenceNote['basis'];
}

/** Width of a board that measures `width` at the mean moisture of the year; errors where its shrinkage is not published. */
export function widthsOf({ bare, balance }: Found, species: Species, width: number, cut: Cut): Outcome<Widths> {
  const wood = movementProperties(species);
  if (!wood.ok) return wood;
  const { properties, basis, evidence } = wood.value;
  const now = bare.value.mean;
  const chosen = chooseEquation([now, ...balance], properties);
  if (!chosen.ok) return chosen;
  const equation = chosen.value;
  const spread = spreadOf(properties, equation);
  /** Widths of a board that moves less than the average of its wood, of the average, and of one that moves more. */
  const widths = (moisture: number) =>
    bandOf(strains(now, moisture, properties, equation), spread).map(
      (each) => width * (1 + straightRingStrain(ringAngles[cut], each)),
    ) as [less: number, average: number, more: number];
  const at = (moisture: number) => widths(moisture)[1];
  const swing = ({ driest, wettest }: MoistureYear, which: 0 | 1 | 2) => widths(wettest)[which] - widths(driest)[which];
  const swings = ({ value, slow, quick }: Three<MoistureYear>, which: 0 | 1 | 2) =>
    ends({ value: swing(value, which), slow: swing(slow, which), quick: swing(quick, which) });
  return answer({
    at,
    swing: (year) => ({ value: swings(year, 1).value, low: swings(year, 0).low, high: swings(year, 2).high }),
    equation,
    shrinkageStart: properties.shrinkageStart,
    evidence: [movementNote(equation, properties), ...ringAngleNotes(ringAngles[cut]), ...evidence[equation]],
    basis: basis[equation],
  });
}
