import type { Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { YieldBlank, YieldPlan, YieldRequest } from '../../model/stock/index.ts';
import { missingWords, shortName, total } from './words.ts';

/** Whether a blank of this size fits on a bare board of the rack at all. */
const fitsNowhere = ({ boards }: YieldRequest, { length, width }: YieldBlank) =>
  boards.every((board) => board.length < length || board.width < width);

/** The sentence that the answer comes to. */
export function verdictOf(plan: YieldPlan, request: YieldRequest): Verdict {
  const [cut, missing] = [total(plan.cut), total(plan.missing)];
  const used = plan.boards.length;
  const from =
    used === request.boards.length
      ? used === 1
        ? 'the board'
        : `all ${used} boards`
      : `${used} of ${request.boards.length} boards`;
  if (missing === 0)
    return {
      level: 'good',
      text: cut === 1 ? `The blank comes from ${from}.` : `All ${cut} blanks come from ${from}.`,
    };
  const tooLarge = request.blanks.find((blank) => fitsNowhere(request, blank));
  const size = tooLarge
    ? ` No board is as large as ${shortName(tooLarge.name)}, ${amount(tooLarge.length, 'mm', 5)} × ${amount(tooLarge.width, 'mm', 5)}.`
    : '';
  const lacking = missingWords(plan, request.blanks);
  if (cut === 0)
    return {
      level: 'stop',
      text: `${missing === 1 ? 'The blank does not fit' : `None of the ${missing} blanks fits`} on this rack.${size}`,
    };
  return {
    level: 'stop',
    text: plan.mostYield
      ? `${cut} of ${cut + missing} blanks come from ${from}; ${lacking} will not fit in this order of cuts: another board is needed.${size}`
      : `${cut} of ${cut + missing} blanks were found a place on ${from}; no place was found for ${lacking}.${size}`,
  };
}
