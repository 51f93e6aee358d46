import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, numberTold, placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** An edge that does not reach through the stock from the template. */
export const cutterTooShort = rule({
  id: 'cutter-too-short',
  level: 'warn',
  title: 'The cutting edge reaches past the stock',
  looksAt:
    'The length of the cutting edge beside the stock and a millimetre past it, with the bearing on the template.',
  why: 'A short edge leaves the last passes to ride on the edge already cut, or rubs with its shank and burns.',
  find: (worked) =>
    askedOf(worked, 'template-fit', 'cutter-speed').flatMap((calculation) => {
      const short = (figureOf(calculation, 'edgeShortBy') ?? figureOf(calculation, 'shortBy'))?.value ?? 0;
      if (short <= 0) return [];
      const edge = numberTold(calculation, 'cuttingLength') ?? 0;
      const stock = numberTold(calculation, 'stock') ?? 0;
      return [
        {
          ...placeOf(calculation),
          message: `The edge of ${amount(edge, 'mm')} is ${amount(short, 'mm', 2)} too short for stock of ${amount(stock, 'mm')}.`,
          wayOut: `Take a bit with an edge of at least ${amount(edge + short, 'mm')}, or say why the last passes may ride on the edge already cut.`,
        },
      ];
    }),
});
