import type { Basis } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { FlattenPlan } from '../../model/stock/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  thicknessLeft: { label: 'Thickness that two flat faces leave', unit: 'mm' },
  shortfall: { label: 'Lacking from the thickness wanted', unit: 'mm' },
  deepest: { label: 'Deepest cut, measured face', unit: 'mm' },
  passes: { label: 'Passes, measured face', unit: '{count}', digits: 4 },
  deepestBelow: { label: 'Deepest cut, other face', unit: 'mm' },
  passesBelow: { label: 'Passes, other face', unit: '{count}', digits: 4 },
  highestShim: { label: 'Highest shim', unit: 'mm', help: 'Under the board on a flat sled, measured face up.' },
} as const satisfies Record<string, FigureDeclaration>;

/**
 * The figures of a plan.
 *
 * @param target thickness wanted, mm
 * @param passBasis what the depth of a pass rests on
 */
export function figuresOf(
  plan: FlattenPlan,
  target: number,
  passBasis: Basis,
): Partial<Record<keyof typeof figures, FigureValue>> {
  const length = (value: number): FigureValue => ({ value, basis: 'derived' });
  const passes = (value: number): FigureValue => ({ value, basis: passBasis });
  return {
    thicknessLeft: {
      ...length(plan.thicknessLeft),
      note: `${plan.meetsTarget ? 'Enough' : 'Too little'} for the ${amount(target, 'mm')} wanted.`,
    },
    ...(plan.meetsTarget ? {} : { shortfall: length(plan.shortfall) }),
    deepest: length(plan.deepest),
    passes: passes(plan.passes),
    deepestBelow: length(plan.deepestBelow),
    passesBelow: passes(plan.passesBelow),
    highestShim: length(plan.highestShim),
  };
}
