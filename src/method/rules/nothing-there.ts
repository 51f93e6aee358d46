import type { Gap, WorkedMethod } from '../case/types.ts';
import { aboutPeople } from './answers.ts';
import { type Found, rule } from './rule.ts';

/** A reference that reaches nothing in this case: a wait, a need or a limit that is not there. */
export const nothingThere = rule({
  id: 'nothing-there',
  level: 'stop',
  title: 'Every reference finds its value',
  looksAt:
    'Waits, times, needs and limits that refer to a figure, an event or a use: whether the answer of this case has it. Where the calculation itself has no answer, or none that may be followed, its own rule speaks.',
  why: 'A wait that is not there lets the next step begin at once, and a need that is not there is not bought.',
  neverExcepted: 'Nobody can wait for a time that does not exist.',
  find: (worked) =>
    worked.gaps.flatMap((gap): Found[] => {
      if (isToldByItsCalculation(worked, gap)) return [];
      return [
        {
          path: gap.path,
          ...(gap.step === undefined ? {} : { step: gap.step }),
          message: gap.message,
          wayOut: gap.wayOut ?? 'Refer to something that this case has, or change the case so that it is there.',
        },
      ];
    }),
});

/** Whether the calculation that a gap refers to is found by a rule that allows no exception. */
function isToldByItsCalculation({ calculations }: WorkedMethod, { pointer }: Gap): boolean {
  const [, branch, name = ''] = pointer.split('/');
  const calculation = branch === 'calculations' ? calculations[name] : undefined;
  if (!calculation) return false;
  const level = calculation.result?.verdict.level;
  return level === undefined || level === 'unknown' || (level === 'stop' && aboutPeople.includes(calculation.use));
}
