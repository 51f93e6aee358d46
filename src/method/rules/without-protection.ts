import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { MaterialKind, ToolKind } from '../record/index.ts';
import { isByHand } from './by-hand.ts';
import { atStep, finishesOf, kindsAt, listed, stepsThat, withArticle } from './kit.ts';
import { rule } from './rule.ts';

type Kind = ToolKind | MaterialKind;

/** What does the same for lungs. A mask with its filter is listed as a material where it is thrown away. */
const insteadOf: Readonly<Partial<Record<Kind, Kind>>> = { respirator: 'mask-filter' };

/** Work without what its act asks people to wear or to have at hand. */
export const withoutProtection = rule({
  id: 'without-protection',
  level: 'stop',
  title: 'What protects people stands in the step',
  looksAt:
    'What each act asks people to wear or to have at hand, beside the tools and materials of the step; for oil, wax and coats also what the record of the finish says of its vapour and of hands. Hearing protection is not asked where all is done by hand; the extractor has a rule of its own.',
  why: 'A student follows the list of the step: what is not on it is not put on.',
  citation: { source: 'cpwr-epoxy', locator: 'introduction', seen: 'source-text' },
  find: (worked) =>
    worked.steps.flatMap((step) => {
      const at = kindsAt(worked, step);
      const missing = asked(worked, step).filter((kind) => {
        const other = insteadOf[kind];
        return !at.has(kind) && (other === undefined || !at.has(other));
      });
      if (missing.length === 0) return [];
      const words = listed(missing.map(withArticle));
      return [
        {
          ...atStep(step),
          message: `“${step.record.title}” (${step.act.label.toLowerCase()}) lists no ${words.replace(/\b(?:a|an) /g, '').replaceAll(' and ', ' or ')}.`,
          wayOut: `List ${words} among the tools or materials of the step.`,
        },
      ];
    }),
});

/** What a step asks for: of its act, and of the finish that it puts on. */
function asked(worked: WorkedMethod, step: WorkedStep): Kind[] {
  const byHand = isByHand(worked, step);
  const ofAct = step.act.protection.filter(
    (kind) => kind !== 'dust-extractor' && !(byHand && kind === 'hearing-protection'),
  );
  const oiled = stepsThat(worked, 'oil', 'wax').includes(step);
  const vapour = oiled && finishesOf(worked).some(({ thing }) => thing.rags.hazard !== 'none-known');
  return [...new Set([...ofAct, ...(vapour ? (['gloves', 'ventilation'] as const) : [])])];
}
