import { type FoodStatement, inMonths } from '../../model/food/index.ts';
import { type FigureDeclaration, type FigureValue, figureValueOf } from '../kit/calculator.ts';
import type { Card, CardInputs } from './card.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  fullCure: { label: 'Wait before handing over', unit: 's', digits: 2 },
  resinCure: { label: 'And so long after the last pour', unit: 'd' },
  upkeep: { label: 'From one renewal to the next, in a home', unit: 'mo', digits: 2 },
  lines: { label: 'Lines of care on the card', unit: '{count}' },
} as const satisfies Record<string, FigureDeclaration>;

type Figures = Partial<Record<keyof typeof figures, FigureValue>>;

/** When the board may go, and how often its finish is renewed; lines of care alone where neither is known. */
export function figuresOf({ finish, resin }: CardInputs, card: Card, { waits }: FoodStatement): Figures {
  const { upkeep, fullCure } = finish?.figures ?? { upkeep: null, fullCure: null };
  // A resin of which no days are known leaves no day to hand the board over, whatever its finish says.
  const known = waits.every(({ fullCureDays }) => fullCureDays !== null);
  const pour = known ? waits.find(({ name }) => name === resin?.name) : undefined;
  const times: Figures = {
    ...(fullCure && known ? { fullCure: figureValueOf(fullCure) } : {}),
    ...(pour?.fullCureDays ? { resinCure: { value: pour.fullCureDays, basis: pour.basis, note: pour.text } } : {}),
    ...(upkeep && finish?.wiped ? { upkeep: figureValueOf(inMonths(upkeep)) } : {}),
  };
  if (Object.keys(times).length > 0) return times;
  const lines = card.sections.reduce((count, section) => count + section.lines.length, 0);
  return { lines: { value: lines, basis: 'shop-practice' } };
}
