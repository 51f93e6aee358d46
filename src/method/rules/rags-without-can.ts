import type { Finish } from '../../model/finish/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import { atStep, finishesOf, isResinCoat, kindsAt, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** Rags that can take fire by themselves, with nowhere to put them. */
export const ragsWithoutCan = rule({
  id: 'rags-without-can',
  level: 'stop',
  title: 'Rags of a drying finish have their can',
  looksAt:
    'Steps that oil, wax or coat, and the finishes of the case: whether cloths wet with them heat by themselves, and whether the step lists a can for rags. A finish that is nowhere named is taken for a drying one.',
  why: 'Cloths wet with a drying oil take fire by themselves, hours later, when everybody has gone home.',
  citation: { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
  neverExcepted: 'A heap of oily rags burns down a shop at night; the can costs a lid.',
  find(worked) {
    const heating = heatingOf(worked);
    if (heating === undefined) return [];
    return stepsThat(worked, 'oil', 'wax', 'coat').flatMap((step) => {
      // A coat of resin is no finish from a can of oil.
      if (kindsAt(worked, step).has('rag-can') || isResinCoat(worked, step)) return [];
      return [
        {
          ...atStep(step),
          message: heating
            ? `Rags from “${step.record.title}” are wet with ${heating.name.toLowerCase()}, ${setsWords[heating.sets]}, and can take fire by themselves; the step lists no can for them.`
            : `Nowhere is it said which finish “${step.record.title}” puts on, so its rags are taken to heat by themselves; the step lists no can for them.`,
          wayOut: `List a metal can with a lid and water (kind rag-can) among the tools of the step${heating ? '' : ', and name the finish in a parameter of kind finish'}.`,
        },
      ];
    });
  },
});

const setsWords: Readonly<Record<Finish['sets'], string>> = {
  'by-oxygen': 'which sets by taking up oxygen',
  'by-reaction': 'which sets by a reaction that gives off heat',
  'by-drying': 'which sets as it dries',
  never: 'which never sets',
};

/** The first finish of the case whose rags heat by themselves; null where none is named; undefined where none of those named does. */
function heatingOf(worked: WorkedMethod): Finish | null | undefined {
  const finishes = finishesOf(worked);
  if (finishes.length === 0) return null;
  return finishes.find(({ thing }) => thing.rags.hazard === 'self-heating')?.thing;
}
