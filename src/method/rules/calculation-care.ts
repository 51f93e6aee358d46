import { ofVerdict } from './answers.ts';
import { rule } from './rule.ts';

/** An answer that names something to mind. */
export const calculationCare = rule({
  id: 'calculation-care',
  level: 'note',
  title: 'What an answer says to mind is minded',
  looksAt: 'The verdict of every calculation: whether it can be done if what it names is minded.',
  why: 'It can be done; whoever does it must know what to mind.',
  general: true,
  find: (worked) => ofVerdict(worked, 'care', () => 'See that the text of the step says it.'),
});
