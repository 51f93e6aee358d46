import type { CalculatorId } from '../../calculators/registry.ts';
import type { Verdict } from '../../model/evidence/index.ts';
import type { WorkedCalculation, WorkedMethod } from '../case/types.ts';
import { placeOf } from './kit.ts';
import type { Found } from './rule.ts';

/** Calculators whose ‘stop’ speaks of people, not of the piece: heat, mixing, cure, food, cutters. */
export const aboutPeople: readonly CalculatorId[] = [
  'resin-dose',
  'pour-heat',
  'working-time',
  'cure-clock',
  'flood-coat',
  'food-contact',
  'care-card',
  'cutter-speed',
];

/** Findings on the calculations whose verdict is of a level; the sentence of the verdict is the message. */
export function ofVerdict(
  worked: WorkedMethod,
  level: Verdict['level'],
  wayOut: (calculation: WorkedCalculation) => string,
  which: (calculation: WorkedCalculation) => boolean = () => true,
): Found[] {
  return worked.steps
    .flatMap(({ calculations }) => calculations)
    .filter((calculation) => calculation.result?.verdict.level === level && which(calculation))
    .map((calculation) => ({
      ...placeOf(calculation),
      message: calculation.result?.verdict.text ?? '',
      wayOut: wayOut(calculation),
    }));
}
