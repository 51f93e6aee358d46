import { promisesIn } from '../../model/food/index.ts';
import { textsOf } from '../case/references.ts';
import type { WorkedMethod } from '../case/types.ts';
import { remembered } from '../remembered.ts';
import { atStep, listed } from './kit.ts';
import { type Found, rule } from './rule.ts';

const promisesOf = remembered(promisesIn, 400);

/** Words of a method that nobody has shown of a board: its head, its sheets and its page are read as a label is. */
export const promiseInWords = rule({
  id: 'promise-in-words',
  level: 'stop',
  title: 'Nothing is promised that nobody has shown',
  looksAt:
    'Every text that whoever makes or gets the piece may read: title, for whom, about, what is made, the claim on food, and what each step says. Left out is what goes wrong in a step, where a promise is quoted as a mistake, and what is bought: ‘food grade’ is a grade of oil.',
  why: 'Nobody certifies a wood, an oil or a board as such; a promise of safety is yours to answer for.',
  citation: { source: 'fda-food-code', locator: '4-101.17(B)', seen: 'quoted' },
  neverExcepted: 'A promise on a label stays a promise, whatever the reason for it.',
  find: (worked) =>
    textsIn(worked).flatMap(({ text, ...place }) => {
      const promises = promisesOf(text);
      if (promises.length === 0) return [];
      return [
        {
          ...place,
          message: `The words promise what nobody has shown of a board: ${listed(promises.map((words) => `“${words}”`))}.`,
          wayOut:
            'Say what it is made of, what it is for and how it is kept; the food-contact calculator writes such a label.',
        },
      ];
    }),
});

type Text = Pick<Found, 'path' | 'step'> & { text: string };

/** What a reader of the method, its sheets and its label meets. */
function textsIn({ record, steps }: WorkedMethod): Text[] {
  return [
    { path: ['title'], text: record.title },
    { path: ['for'], text: record.for },
    ...(record.about ? [{ path: ['about'], text: record.about }] : []),
    { path: ['makes', 'what'], text: record.makes.what },
    ...(record.food ? [{ path: ['food', 'claim'], text: record.food.claim }] : []),
    ...steps.flatMap((step) =>
      textsOf(step.record).flatMap(([part, text]): Text[] =>
        part === 'wrong' ? [] : [{ ...atStep(step, part), text }],
      ),
    ),
  ];
}
