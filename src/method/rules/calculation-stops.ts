import { aboutPeople, ofVerdict } from './answers.ts';
import { rule } from './rule.ts';

/** An answer about the piece that says stop. */
export const calculationStops = rule({
  id: 'calculation-stops',
  level: 'stop',
  title: 'No answer says stop',
  looksAt:
    'The verdict of every calculation that speaks of the piece, not of people; those have a rule that allows no exception.',
  why: 'What is worked out says that it cannot be done so. The sentence of the verdict says why.',
  general: true,
  find: (worked) =>
    ofVerdict(
      worked,
      'stop',
      ({ name }) => `Change the work, or what ${name} is told of it, until its answer no longer says stop.`,
      ({ use }) => !aboutPeople.includes(use),
    ),
});
