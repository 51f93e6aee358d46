import { turnsWords } from '../../calculators/cutter-speed/figures.ts';
import { amount } from '../../model/quantity/index.ts';
import { rimSpeed } from '../../model/stock/index.ts';
import { askedOf, figureOf, numberTold, placeOf, toolsOf, wordTold } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** A router bit that turns faster than it may. */
export const rimSpeedRule = rule({
  id: 'rim-speed',
  level: 'stop',
  title: 'The bit turns no faster than it may',
  looksAt:
    'The turns a minute of each router bit beside the usual highest for its diameter and what is marked on the bit (its limit mostTurns).',
  why: 'A bit that turns too fast burns, chatters, and may shed a piece of carbide. The mark on the tool wins over every table.',
  neverExcepted: 'A bit that sheds a piece hurts whoever stands near, and no reason makes it hold.',
  find: (worked) =>
    askedOf(worked, 'cutter-speed').flatMap((calculation): Found[] => {
      const diameter = numberTold(calculation, 'diameter');
      if (diameter === undefined || wordTold(calculation, 'work') === 'boring') return [];
      const step = worked.steps.find(({ id }) => id === calculation.step);
      const tools = step ? toolsOf(worked, step) : [];
      const marked = leastOf(
        tools.flatMap(({ record, limits }) => (record.kind === 'router-bit' ? (limits.mostTurns?.value ?? []) : [])),
      );
      const usual = figureOf(calculation, 'usualTurns');
      const ceiling = Math.min(usual?.high ?? Number.POSITIVE_INFINITY, marked);
      const turns = numberTold(calculation, 'turns');
      if (turns === undefined || turns <= ceiling) return [];
      return [
        {
          ...placeOf(calculation),
          message: `At ${turnsWords(turns)} the rim of a bit of ${amount(diameter, 'mm')} runs at ${amount(rimSpeed(diameter, turns), 'm/s')}; ${turnsWords(ceiling)}, ${amount(rimSpeed(diameter, ceiling), 'm/s')}, ${marked <= ceiling ? 'is marked on it' : 'is the most that is usual'}.`,
          wayOut: `Set the router to ${turnsWords(Math.min(marked, usual?.value ?? ceiling))} or less before the bit goes in, or take a smaller bit.`,
        },
      ];
    }),
});

/** The least of some numbers; without end where there is none. */
const leastOf = (values: readonly number[]): number => Math.min(...values, Number.POSITIVE_INFINITY);
