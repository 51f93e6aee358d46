import { promisesIn } from '../../model/food/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import { atStep, listed, stepsThat } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** Words on label, card and claim that nobody has shown of a board. */
export const promiseInWords = rule({
  id: 'promise-in-words',
  level: 'stop',
  title: 'Nothing is promised that nobody has shown',
  looksAt: 'The claim on food, what the piece is called, and the text of the steps that label, pack and hand it over.',
  why: 'Nobody certifies a wood, an oil or a board as such; a promise of safety is yours to answer for.',
  citation: { source: 'fda-food-code', locator: '4-101.17(B)', seen: 'quoted' },
  neverExcepted: 'A promise on a label stays a promise, whatever the reason for it.',
  find: (worked) =>
    textsOf(worked).flatMap(({ text, ...place }) => {
      const promises = promisesIn(text);
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

/** What whoever gets the piece will read or be told. */
function textsOf({ record, ...worked }: WorkedMethod): (Pick<Found, 'path' | 'step'> & { text: string })[] {
  const handedOver = stepsThat({ record, ...worked }, 'label', 'pack', 'hand-over');
  return [
    { path: ['makes', 'what'], text: record.makes.what },
    ...(record.food ? [{ path: ['food', 'claim'], text: record.food.claim }] : []),
    ...handedOver.flatMap((step) =>
      (['does', 'tell'] as const).flatMap((part) => {
        const text = step.record[part];
        return text ? [{ ...atStep(step, part), text }] : [];
      }),
    ),
  ];
}
