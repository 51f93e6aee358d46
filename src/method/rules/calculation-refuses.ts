import { placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** A calculation that cannot be worked out as it is asked. */
export const calculationRefuses = rule({
  id: 'calculation-refuses',
  level: 'stop',
  title: 'Every calculation has an answer',
  looksAt: 'The inputs of each calculation, as its calculator reads them.',
  why: 'What cannot be worked out holds up all that refers to it.',
  neverExcepted: 'What was not worked out cannot be vouched for.',
  find: (worked) =>
    worked.steps
      .flatMap(({ calculations }) => calculations)
      .flatMap((calculation) =>
        (calculation.errors ?? []).map(({ field, message }) => {
          const [input = field] = field.split('.');
          const told = Object.hasOwn(calculation.record.with, input);
          return {
            ...placeOf(calculation, 'with', ...(told ? [input] : [])),
            message,
            wayOut: `${told ? 'Mend' : 'Give'} ${input} of ${calculation.name}; the page of ${calculation.use} says what it asks.`,
          };
        }),
      ),
});
