import { textsOf } from '../case/references.ts';
import { atStep } from './kit.ts';
import { inWords, isInside, means, measureAt } from './measure.ts';
import { rule } from './rule.ts';
import { sentencesOf } from './written.ts';

/** How near a written quantity must be to a figure of its sentence to be taken for it. */
const near = 0.25;

/** A quantity written out beside a figure that it all but equals. */
export const wordsBeside = rule({
  id: 'words-beside',
  level: 'warn',
  title: 'A sentence does not say a figure twice, and differently',
  looksAt: `Quantities written out in a sentence that also refers to a figure or parameter of the same dimension: one within ${near * 100} % of it, and not it to the digits written nor inside its band. What a bracket says again in other units is left out.`,
  why: 'Of two numbers for one thing in one sentence a reader takes either.',
  find: (worked) =>
    worked.steps.flatMap((step) =>
      textsOf(step.record).flatMap(([field, text]) =>
        sentencesOf(text).flatMap(({ pointers, written }) => {
          if (pointers.length === 0 || written.length === 0) return [];
          const figures = pointers.flatMap((pointer) => measureAt(worked, pointer));
          return written.flatMap((each) => {
            const same = figures.filter(({ dimension }) => dimension === each.dimension);
            if (same.some((figure) => means(each, figure) || isInside(each, figure))) return [];
            const close = same.find(({ value }) => Math.abs(each.value / value - 1) <= near);
            if (!close) return [];
            return [
              {
                ...atStep(step, field),
                message: `The sentence says ${each.text} beside “${close.label}”, which is ${inWords(close)} here.`,
                wayOut: 'Leave the written quantity out, or say what else it is.',
              },
            ];
          });
        }),
      ),
    ),
});
