import type { Calculator } from './kit/calculator.ts';

/**
 * Every calculator by its id, in the order in which the work asks for them: the one list of them. Each comes when it is asked for, so
 * that whoever needs one loads no other.
 */
export const calculatorLoaders = {
  'seasonal-movement': () =>
    import('./seasonal-movement/calculator.ts').then((module) => module.seasonalMovementCalculator),
  'width-change': () => import('./width-change/calculator.ts').then((module) => module.widthChangeCalculator),
  'equilibrium-moisture': () =>
    import('./equilibrium-moisture/calculator.ts').then((module) => module.equilibriumMoistureCalculator),
  'stock-order': () => import('./stock-order/calculator.ts').then((module) => module.stockOrderCalculator),
  'board-yield': () => import('./board-yield/calculator.ts').then((module) => module.boardYieldCalculator),
  'flatten-plan': () => import('./flatten-plan/calculator.ts').then((module) => module.flattenPlanCalculator),
  acclimatise: () => import('./acclimatise/calculator.ts').then((module) => module.acclimatiseCalculator),
  'template-fit': () => import('./template-fit/calculator.ts').then((module) => module.templateFitCalculator),
  'cutter-speed': () => import('./cutter-speed/calculator.ts').then((module) => module.cutterSpeedCalculator),
  'grit-sequence': () => import('./grit-sequence/calculator.ts').then((module) => module.gritSequenceCalculator),
  'resin-dose': () => import('./resin-dose/calculator.ts').then((module) => module.resinDoseCalculator),
  'pour-heat': () => import('./pour-heat/calculator.ts').then((module) => module.pourHeatCalculator),
  'finish-coats': () => import('./finish-coats/calculator.ts').then((module) => module.finishCoatsCalculator),
  'finish-and-moisture': () =>
    import('./finish-and-moisture/calculator.ts').then((module) => module.finishAndMoistureCalculator),
  'working-time': () => import('./working-time/calculator.ts').then((module) => module.workingTimeCalculator),
  'cure-clock': () => import('./cure-clock/calculator.ts').then((module) => module.cureClockCalculator),
  'flood-coat': () => import('./flood-coat/calculator.ts').then((module) => module.floodCoatCalculator),
  'food-contact': () => import('./food-contact/calculator.ts').then((module) => module.foodContactCalculator),
  'care-card': () => import('./care-card/calculator.ts').then((module) => module.careCardCalculator),
} as const satisfies Readonly<Record<string, () => Promise<Calculator>>>;

/** The id of a calculator that there is. */
export type CalculatorId = keyof typeof calculatorLoaders;

/** The ids in the order in which the work asks for them. */
export const calculatorIds = Object.keys(calculatorLoaders) as readonly CalculatorId[];

/** Whether there is a calculator of this id. */
export const isCalculatorId = (id: string): id is CalculatorId => Object.hasOwn(calculatorLoaders, id);

/** Fetch one calculator. */
export const loadCalculator = (id: CalculatorId): Promise<Calculator> => calculatorLoaders[id]();
