import { aboutPeople, ofVerdict } from './answers.ts';
import { rule } from './rule.ts';

/** An answer about heat, cure, food or cutters that says stop. */
export const unsafeAnswer = rule({
  id: 'unsafe-answer',
  level: 'stop',
  title: 'Nothing that is worked out for people’s safety says stop',
  looksAt: `The verdict of every calculation of ${aboutPeople.join(', ')}.`,
  why: 'These speak of burns, fumes, food and flying steel. The sentence of the verdict says which.',
  neverExcepted: 'It is about people, not about the piece.',
  general: true,
  find: (worked) =>
    ofVerdict(
      worked,
      'stop',
      ({ name }) => `Change the work, or what ${name} is told of it, until its answer no longer says stop.`,
      ({ use }) => aboutPeople.includes(use),
    ),
});
