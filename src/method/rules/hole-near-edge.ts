import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, numberTold, placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** Wood beside a hole, mm, whatever its size: half an inch, less the hundredths that nobody measures. Common practice. */
export const leastBesideHole = 12.5;

/** A hole with too little wood beside it. */
export const holeNearEdge = rule({
  id: 'hole-near-edge',
  level: 'warn',
  title: 'A hole has wood around it',
  looksAt: `The least wood between a hole and an edge or another hole, beside the diameter of the hole and ${amount(leastBesideHole, 'mm')}.`,
  why: 'A hanging hole takes every knock of the board; thin wood beside it splits out.',
  find: (worked) =>
    askedOf(worked, 'template-fit').flatMap((calculation) => {
      const beside = figureOf(calculation, 'holeToEdge');
      const diameter = numberTold(calculation, 'holeDiameter') ?? 0;
      const least = Math.max(leastBesideHole, diameter);
      if (!beside || beside.value >= least) return [];
      return [
        {
          ...placeOf(calculation),
          message: `Beside the hole stand ${amount(beside.value, 'mm')} of wood; ${amount(least, 'mm')}, ${diameter > leastBesideHole ? 'the diameter of the hole' : 'about half an inch'}, is the least that is usual.`,
          wayOut: 'Move the hole inwards, or bore it smaller.',
        },
      ];
    }),
});
