import { amount } from '../../model/quantity/index.ts';
import { askedOf, atStep, figureOf, numberTold, placeOf, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** Movement over an inlay that resin and bond are asked to bear, mm between driest and wettest. Common practice. */
export const mostOverInlay = 1;

/** How much the wood works over an inlay that does not. */
export const movementOfInlay = rule({
  id: 'movement-of-inlay',
  level: 'warn',
  title: 'The wood works little over the inlay',
  looksAt: `What the wood would do over the width of the inlay between driest and wettest, beside ${amount(mostOverInlay, 'mm', 2)}, and whether that was worked out at all.`,
  why: 'Cured resin does not follow the wood. We found no published test of what the bond bears; careful shops keep an inlay narrow across the grain.',
  find(worked) {
    const asked = askedOf(worked, 'seasonal-movement').filter(({ record }) => record.with.inlayWidth !== undefined);
    const [pour] = stepsThat(worked, 'pour');
    const wooden = Object.values(worked.materials).some(({ record }) => record.kind === 'wood');
    if (asked.length === 0 && pour && wooden)
      return [
        {
          ...atStep(pour),
          message: 'Resin is poured into wood, and nowhere is it worked out how far the wood moves over it.',
          wayOut:
            'Ask for the movement through the year (seasonal-movement) with inlayWidth, the width of the inlay across the grain.',
        },
      ];
    return asked.flatMap((calculation) => {
      const swing = figureOf(calculation, 'inlaySwing');
      if (!swing || swing.value <= mostOverInlay) return [];
      const width = numberTold(calculation, 'inlayWidth') ?? 0;
      return [
        {
          ...placeOf(calculation),
          message: `Over the ${amount(width, 'mm')} of the inlay the wood works ${amount(swing.value, 'mm')} through the year, which the resin does not follow; up to ${amount(mostOverInlay, 'mm', 2)} is usual.`,
          wayOut: `Draw the inlay narrower across the grain, ${amount((width * mostOverInlay) / swing.value, 'mm', 2)} at most in this wood and place, or turn it along the grain.`,
        },
      ];
    });
  },
});
