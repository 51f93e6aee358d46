import { beyondMachines, machineMeasures } from './machines.ts';
import { rule } from './rule.ts';

/** A piece whose thickness a machine of its step does not take. */
export const machineThickness = rule({
  id: 'machine-thickness',
  level: 'stop',
  title: 'The machine takes the piece by its thickness',
  looksAt:
    'The thickness of the piece as it comes to each tool of the step, beside the most and the least that the tool takes; a step that says its way round has answered.',
  why: 'A piece that is too thin bends and shatters under the knives; one that is too thick does not go in. The manual of the machine has the last word.',
  citation: { source: 'cfr-29-1910-213', locator: '(j), (n)', seen: 'source-text' },
  find: (worked) => beyondMachines(worked, machineMeasures.thickness),
});
