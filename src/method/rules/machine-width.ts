import { beyondMachines, machineMeasures } from './machines.ts';
import { rule } from './rule.ts';

/** A piece whose width a machine of its step does not take. */
export const machineWidth = rule({
  id: 'machine-width',
  level: 'stop',
  title: 'The machine takes the piece by its width',
  looksAt:
    'The width of the piece as it comes to each tool of the step, beside the most and the least that the tool takes; a step that says its way round has answered.',
  why: 'A board that is wider than the table runs against guard or frame, and a strip that is too narrow has nothing to hold it. The manual of the machine has the last word.',
  citation: { source: 'cfr-29-1910-213', locator: '(j), (n)', seen: 'source-text' },
  find: (worked) => beyondMachines(worked, machineMeasures.width),
});
