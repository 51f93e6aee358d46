import { finishKindById, gradeOf } from '../../model/abrasive/index.ts';
import type { Finish } from '../../model/finish/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, finishesOf, placeOf, wordTold } from './kit.ts';
import { rule } from './rule.ts';

/** How much coarser or finer than the usual last grit, by grain, still does. Common practice: about two grades and one and a half. */
const mostCoarser = 1.6;
const mostFiner = 1.4;

/** Whether sanding ends where the finish wants it. */
export const lastGritForFinish = rule({
  id: 'last-grit-for-finish',
  level: 'warn',
  title: 'The last grit suits the finish',
  looksAt: `The grain of the last grit of each sanding sequence on wood, beside that of the last grit that is usual for the method’s finish: at most ${mostCoarser} times as coarse and ${mostFiner} times as fine.`,
  why: 'Coarser, scratches show under oil; finer, a film holds worse and hard-wax oil finds too little to soak into.',
  find(worked) {
    const finishes = finishesOf(worked);
    return askedOf(worked, 'grit-sequence').flatMap((calculation) => {
      const grain = figureOf(calculation, 'lastGrain')?.value;
      // The inlay is polished to its own last grit, and what a coat is laid over is keyed for it.
      if (grain === undefined || wordTold(calculation, 'material') === 'resin') return [];
      return finishes.flatMap(({ thing: finish }) => {
        const kind = finishKindById(sandedAs(finish));
        const usual = kind && gradeOf('P', kind.last);
        if (!usual) return [];
        const ratio = grain / usual.micrometres;
        if (ratio <= mostCoarser && 1 / ratio <= mostFiner) return [];
        const last = figureOf(calculation, 'grits')?.note?.replace(/\.$/, '').split(', ').at(-1);
        return [
          {
            ...placeOf(calculation),
            message: `Sanding ends with ${last}, grain ${amount(grain, 'um', 2)}: too ${ratio > 1 ? 'coarse' : 'fine'} under ${finish.name.toLowerCase()}, for which ${usual.id}, ${amount(usual.micrometres, 'um', 2)}, is usual.`,
            wayOut: `End with ${usual.id}. ${kind.why}`,
          },
        ];
      });
    });
  },
});

/** How the sanding knows a finish: by what it asks of the surface. */
function sandedAs({ id, wiped, sets }: Finish): string {
  if (id === 'hard-wax-oil') return 'hard-wax-oil';
  return wiped || sets === 'never' ? 'oil-or-wax' : 'film';
}
