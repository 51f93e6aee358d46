import type { Figure } from '../../model/evidence/index.ts';
import { type BoardForFood, type FoodStatement, foodRuleById } from '../../model/food/index.ts';
import { amount, convert } from '../../model/quantity/index.ts';
import { type FigureDeclaration, type FigureValue, figureValueOf } from '../kit/calculator.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  daysLeft: { label: 'Days still to wait until full cure', unit: 'd', digits: 4 },
  finishCure: { label: 'Full cure of the finish', unit: 'd' },
  resinCure: { label: 'Full cure of the resin', unit: 'd' },
  limit: { label: 'Limit on what passes out of resin or film', unit: 'mg/dm2' },
} as const satisfies Record<string, FigureDeclaration>;

/** Whether epoxy is in the board, as a casting or as its film. */
export const hasEpoxy = ({ resin, finish }: BoardForFood) => resin !== undefined || finish?.epoxy === true;

/** Days left, the days that each part takes, and the limit that fits a board. */
export function figuresOf(
  board: BoardForFood,
  { waits, daysLeft }: FoodStatement,
): Partial<Record<keyof typeof figures, FigureValue>> {
  const cure = (name: string | undefined): FigureValue | undefined => {
    const wait = waits.find((each) => each.name === name);
    if (!wait || wait.fullCureDays === null) return undefined;
    return { value: wait.fullCureDays, basis: wait.basis, note: wait.text };
  };
  const finish = cure(board.finish?.name);
  const resin = cure(board.resin?.name);
  return {
    ...(daysLeft === null ? {} : { daysLeft: daysLeftOf(daysLeft, waits) }),
    ...(finish ? { finishCure: finish } : {}),
    ...(resin ? { resinCure: resin } : {}),
    ...(hasEpoxy(board) ? { limit: limitOf(board) } : {}),
  };
}

function daysLeftOf(daysLeft: number, waits: FoodStatement['waits']): FigureValue {
  return {
    value: daysLeft,
    basis: waits.some(({ basis }) => basis === 'memory') ? 'memory' : (waits[0]?.basis ?? 'shop-practice'),
    note:
      waits.length === 0
        ? 'Nothing that was told of this board has to cure.'
        : 'By the days of the sheet or kind; those of the resin by the cure clock where the room was told, else at the temperature of its sheet. Still tacky, or still smelling: not cured, whatever the days say.',
  };
}

/** The limit that fits a board, that for repeated use or the one of plastics, in one unit for both markets. */
function limitOf({ market }: BoardForFood): FigureValue {
  const printed = foodRuleById(market === 'us' ? 'cfr-21-175-300' : 'eu-10-2011').figures[0] as Figure;
  return {
    ...figureValueOf(printed),
    value: convert(printed.value, printed.unit, figures.limit.unit),
    note:
      market === 'us'
        ? `${amount(printed.value, printed.unit)} as the rule prints it: chloroform-soluble extractives, for repeated use other than a container. Not to be set beside the European limit: another test.`
        : `${amount(convert(printed.value, printed.unit, 'mg/[sin_i]'), 'mg/[sin_i]')}: overall migration, where the resin counts as plastic. The ban on bisphenol A weighs more. Not to be set beside the American limit: another test.`,
  };
}
