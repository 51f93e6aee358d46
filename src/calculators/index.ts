import { acclimatiseCalculator } from './acclimatise/calculator.ts';
import { boardYieldCalculator } from './board-yield/calculator.ts';
import { careCardCalculator } from './care-card/calculator.ts';
import { cureClockCalculator } from './cure-clock/calculator.ts';
import { cutterSpeedCalculator } from './cutter-speed/calculator.ts';
import { equilibriumMoistureCalculator } from './equilibrium-moisture/calculator.ts';
import { finishAndMoistureCalculator } from './finish-and-moisture/calculator.ts';
import { finishCoatsCalculator } from './finish-coats/calculator.ts';
import { flattenPlanCalculator } from './flatten-plan/calculator.ts';
import { floodCoatCalculator } from './flood-coat/calculator.ts';
import { foodContactCalculator } from './food-contact/calculator.ts';
import { gritSequenceCalculator } from './grit-sequence/calculator.ts';
import type { Calculator } from './kit/calculator.ts';
import { pourHeatCalculator } from './pour-heat/calculator.ts';
import { resinDoseCalculator } from './resin-dose/calculator.ts';
import { seasonalMovementCalculator } from './seasonal-movement/calculator.ts';
import { stockOrderCalculator } from './stock-order/calculator.ts';
import { templateFitCalculator } from './template-fit/calculator.ts';
import { widthChangeCalculator } from './width-change/calculator.ts';
import { workingTimeCalculator } from './working-time/calculator.ts';

/** Every calculator, in the order in which the work asks for them. One line a folder; a test holds the list complete. */
export const calculators: readonly Calculator[] = [
  seasonalMovementCalculator,
  widthChangeCalculator,
  equilibriumMoistureCalculator,
  stockOrderCalculator,
  boardYieldCalculator,
  flattenPlanCalculator,
  acclimatiseCalculator,
  templateFitCalculator,
  cutterSpeedCalculator,
  gritSequenceCalculator,
  resinDoseCalculator,
  pourHeatCalculator,
  finishCoatsCalculator,
  finishAndMoistureCalculator,
  workingTimeCalculator,
  cureClockCalculator,
  floodCoatCalculator,
  foodContactCalculator,
  careCardCalculator,
] as unknown as readonly Calculator[];

/** The calculator of this id. */
export function calculatorById(id: string): Calculator | undefined {
  return calculators.find((calculator) => calculator.id === id);
}
