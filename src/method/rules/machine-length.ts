import { beyondMachines, machineMeasures } from './machines.ts';
import { rule } from './rule.ts';

/** A piece whose length a machine of its step does not take. */
export const machineLength = rule({
  id: 'machine-length',
  level: 'stop',
  title: 'The machine takes the piece by its length',
  looksAt:
    'The length of the piece as it comes to each tool of the step, beside the most and the least that the tool takes; a step that says its way round has answered.',
  why: 'A piece shorter than the way between the feed rolls, or than hands keep clear of the knives, is thrown back or drags a hand in. The manual of the machine has the last word.',
  citation: { source: 'cfr-29-1910-213', locator: '(j), (n)', seen: 'source-text' },
  find: (worked) => beyondMachines(worked, machineMeasures.length),
});
