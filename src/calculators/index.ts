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
import { type CalculatorId, calculatorIds, isCalculatorId } from './registry.ts';
import { resinDoseCalculator } from './resin-dose/calculator.ts';
import { seasonalMovementCalculator } from './seasonal-movement/calculator.ts';
import { stockOrderCalculator } from './stock-order/calculator.ts';
import { templateFitCalculator } from './template-fit/calculator.ts';
import { widthChangeCalculator } from './width-change/calculator.ts';
import { workingTimeCalculator } from './working-time/calculator.ts';

/** All at once, for the command line, the build and the tests; the type asks for every one of the registry. */
const loaded: { readonly [Id in CalculatorId]: Calculator } = {
  'seasonal-movement': seasonalMovementCalculator,
  'width-change': widthChangeCalculator,
  'equilibrium-moisture': equilibriumMoistureCalculator,
  'stock-order': stockOrderCalculator,
  'board-yield': boardYieldCalculator,
  'flatten-plan': flattenPlanCalculator,
  acclimatise: acclimatiseCalculator,
  'template-fit': templateFitCalculator,
  'cutter-speed': cutterSpeedCalculator,
  'grit-sequence': gritSequenceCalculator,
  'resin-dose': resinDoseCalculator,
  'pour-heat': pourHeatCalculator,
  'finish-coats': finishCoatsCalculator,
  'finish-and-moisture': finishAndMoistureCalculator,
  'working-time': workingTimeCalculator,
  'cure-clock': cureClockCalculator,
  'flood-coat': floodCoatCalculator,
  'food-contact': foodContactCalculator,
  'care-card': careCardCalculator,
};

/** Every calculator, in the order of the registry. */
export const calculators: readonly Calculator[] = calculatorIds.map((id) => loaded[id]);

/** The calculator of this id. */
export function calculatorById(id: string): Calculator | undefined {
  return isCalculatorId(id) ? loaded[id] : undefined;
}
