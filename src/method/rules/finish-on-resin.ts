import { type Finish, finishById } from '../../model/finish/index.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import { answerFor, atStep, finishesOf, isResinCoat, layersOfResin, stepsBefore, stepsThat, wordTold } from './kit.ts';
import { rule } from './rule.ts';

/** A finish that lets go of resin as it lies there. */
export const finishOnResin = rule({
  id: 'finish-on-resin',
  level: 'warn',
  title: 'A finish holds to the resin under it',
  looksAt:
    'Finishes that hold only to sanded resin, by their records, where they follow a layer of resin: whether the resin is sanded, scraped or levelled in between, and not polished after that.',
  why: 'On resin as it was poured or polished such a film lets go: a white line stands at the inlay.',
  find: (worked) =>
    stepsThat(worked, 'oil', 'wax', 'coat').flatMap((step) => {
      if (isResinCoat(worked, step)) return [];
      const finish = finishAt(worked, step);
      const before = stepsBefore(worked, step);
      const resin = layersOfResin(worked).findLast(({ id }) => before.has(id));
      if (!finish || finish.overResin.level === 'suits' || !resin) return [];
      const last = stepsThat(worked, 'sand', 'level', 'scrape', 'polish').findLast(
        (between) => before.has(between.id) && stepsBefore(worked, between).has(resin.id),
      );
      if (last && last.act.id !== 'polish') return [];
      return [
        {
          ...atStep(step),
          message: last
            ? `“${step.record.title}” puts ${finish.name.toLowerCase()} on resin that “${last.record.title}” has polished.`
            : `“${step.record.title}” puts ${finish.name.toLowerCase()} on resin that nobody has sanded since “${resin.record.title}”.`,
          wayOut: finish.overResin.words,
        },
      ];
    }),
});

/** The finish that a step puts on: that of finish-coats, else the only one of the method. */
function finishAt(worked: WorkedMethod, step: WorkedStep): Finish | undefined {
  const asked = answerFor(worked, step, 'finish-coats');
  if (asked) return finishById(wordTold(asked, 'finish') ?? 'none');
  const all = finishesOf(worked);
  return all.length === 1 ? all[0]?.thing : undefined;
}
