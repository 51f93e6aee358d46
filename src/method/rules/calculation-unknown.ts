import { ofVerdict } from './answers.ts';
import { rule } from './rule.ts';

/** An answer that lacks a figure which decides. */
export const calculationUnknown = rule({
  id: 'calculation-unknown',
  level: 'stop',
  title: 'No answer lacks the figure that decides',
  looksAt:
    'The verdict of every calculation: whether it says that a figure which decides is missing, or that two contradict each other.',
  why: 'Unknown is never good: without that figure nobody knows whether it is too hot, too deep or too soon.',
  neverExcepted: 'A reason does not replace a figure that nobody has.',
  general: true,
  find: (worked) =>
    ofVerdict(
      worked,
      'unknown',
      ({ name }) => `Find the figure that it names, on the maker’s sheet or from the maker, and give it to ${name}.`,
    ),
});
