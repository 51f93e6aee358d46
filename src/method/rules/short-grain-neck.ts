import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, numberTold, placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** A part whose fibres run from side to side, narrower than the board is thick. */
export const shortGrainNeck = rule({
  id: 'short-grain-neck',
  level: 'warn',
  title: 'No neck of short grain',
  looksAt:
    'The narrowest place whose fibres run across it, beside the thickness of the stock; beside the width that the outline was asked for, where the stock is not told.',
  why: 'Wood splits between its fibres: such a part breaks off when it is routed, dropped or leaned on.',
  find: (worked) =>
    askedOf(worked, 'template-fit').flatMap((calculation) => {
      const short = figureOf(calculation, 'shortGrain');
      if (!short) return [];
      const stock = numberTold(calculation, 'stock');
      if (stock !== undefined && short.value >= stock) return [];
      return [
        {
          ...placeOf(calculation),
          message: `A part only ${amount(short.value, 'mm')} wide has its grain running across it${stock === undefined ? '' : `, narrower than the stock is thick, ${amount(stock, 'mm')}`}; it may split off.`,
          wayOut: 'Turn the outline on the board, make that part wider, or leave it out.',
        },
      ];
    }),
});
