import { makesDust } from '../acts/index.ts';
import { isByHand } from './by-hand.ts';
import { atStep, kindsAt } from './kit.ts';
import { rule } from './rule.ts';

/** A machine that makes dust which nothing takes away. */
export const dustWithoutExtraction = rule({
  id: 'dust-without-extraction',
  level: 'stop',
  title: 'Dust is taken away where it is made',
  looksAt:
    'Steps whose act asks for a dust extractor, unless they are done with hand tools alone: whether they list one.',
  why: 'Wood dust causes cancer in humans (IARC group 1), dust of resin can sensitise for life, and both burn. A mask alone protects the one who wears it.',
  citation: { source: 'iarc-62', locator: 'overall evaluation', seen: 'source-text' },
  find: (worked) =>
    worked.steps.flatMap((step) => {
      if (!makesDust(step.act) || isByHand(worked, step)) return [];
      if (kindsAt(worked, step).has('dust-extractor')) return [];
      return [
        {
          ...atStep(step),
          message: `“${step.record.title}” makes dust and lists no dust extractor.`,
          wayOut:
            'List the extractor (kind dust-extractor) among the tools of the step, connected to the tool that makes the dust.',
        },
      ];
    }),
});
