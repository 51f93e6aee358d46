import { toldApart } from '../../model/quantity/index.ts';
import type { WorkedCalculation } from '../case/types.ts';
import { askedOf, figureOf, numberTold, placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** A pour deeper than the resin bears in this shop. */
export const pourTooDeep = rule({
  id: 'pour-too-deep',
  level: 'stop',
  title: 'No pour is deeper than the resin bears in this shop',
  looksAt:
    'The depth that each pour-heat is told, with what stands proud of the face, beside the greatest depth that it finds for this shop (the sheet’s own where it finds none), and its heat index beside 1, the deepest pour of the sheet at the sheet’s own temperature.',
  why: 'Resin heats itself as it cures, and the deeper the faster: it yellows, cracks, smokes and can set fire to what lies beside it.',
  neverExcepted: 'A pour that runs away burns people. It is split into layers.',
  find: (worked) =>
    askedOf(worked, 'pour-heat').flatMap((calculation) => {
      const channel = numberTold(calculation, 'depth');
      const depth = channel === undefined ? undefined : channel + (numberTold(calculation, 'proud') ?? 0);
      const greatest = greatestOf(calculation);
      const index = figureOf(calculation, 'heatIndex')?.value ?? 0;
      if (depth === undefined) return [];
      const deeper = greatest !== undefined && depth > greatest;
      if (!deeper && index <= 1) return [];
      const length = toldApart(depth, greatest ?? depth);
      const layers = figureOf(calculation, 'layers')?.value ?? 0;
      return [
        {
          ...placeOf(calculation, 'with', 'depth'),
          message: deeper
            ? `The pour is ${length(depth)} deep in one go; ${length(greatest)} is the most in this shop.`
            : `A pour of ${length(depth)} heats itself ${index.toFixed(1)} times as far as the deepest that the sheet allows.`,
          wayOut:
            layers > 1
              ? `Pour it in ${layers} layers, as ${calculation.name} says, or in a cooler shop.`
              : deeper
                ? 'Pour no more than that at a time, or in a cooler shop.'
                : 'Pour it in layers, in a cooler shop, or take a resin that is made for the depth.',
        },
      ];
    }),
});

/** The greatest depth, mm: here, else as stated. */
const greatestOf = (calculation: WorkedCalculation): number | undefined =>
  (figureOf(calculation, 'greatestDepthHere') ?? figureOf(calculation, 'sheetDepth'))?.value;
