import type { WorkedMethod } from '../case/types.ts';
import { ofVerdict } from './answers.ts';
import { rule } from './rule.ts';

/** An answer that names something to mind, and no step that says it. */
export const calculationCare = rule({
  id: 'calculation-care',
  level: 'note',
  title: 'What an answer says to mind stands in the text',
  looksAt:
    'The verdict of every calculation that can be done if what it names is minded: whether the text of a step shows that verdict.',
  why: 'Whoever follows the steps reads their text, not the calculation behind them.',
  general: true,
  find(worked) {
    const texts = textsOf(worked);
    return ofVerdict(
      worked,
      'care',
      ({ name }) =>
        `Put {/calculations/${name}/verdict} into the text of the step, or say the same in your own words and make an exception.`,
      ({ name }) => !texts.includes(`{/calculations/${name}/verdict}`),
    );
  },
});

/** The text of all steps, as one. */
const textsOf = ({ steps }: WorkedMethod): string =>
  steps.flatMap(({ record: { does, why, tell, wrong } }) => [does, why ?? '', tell ?? '', wrong ?? '']).join('\n');
