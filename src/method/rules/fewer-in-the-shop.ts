import { rule } from './rule.ts';

/** Fewer of a tool in the shop than the method counts on. */
export const fewerInTheShop = rule({
  id: 'fewer-in-the-shop',
  level: 'note',
  title: 'The shop has as many of a tool as the method counts on',
  looksAt: 'The count that the method writes for a tool, beside how many the shop record has.',
  why: 'The plan goes by what is there. Where four were meant and one stands on the bench, people wait, and a class takes more evenings than its text says.',
  find: (worked) =>
    Object.values(worked.tools).flatMap(({ record, count, from, path }) => {
      if (from !== 'shop' || record.count === undefined || count >= record.count) return [];
      return [
        {
          path: [...path, 'count'],
          message: `The method counts on ${record.count} of “${record.what}”, and ${worked.shop?.name ?? 'the shop'} has ${count}: the plan goes with ${count}.`,
          wayOut:
            'Borrow the others for the day, or read in the plan what waits for them. If there are more, write it into the shop record.',
        },
      ];
    }),
});
