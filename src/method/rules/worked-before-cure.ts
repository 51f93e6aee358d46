import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { ToolKind } from '../record/index.ts';
import {
  answerFor,
  atStep,
  isLongEnough,
  isResinCoat,
  kindsAt,
  layersOfResin,
  leastBetween,
  minutesOf,
  span,
  stepsBefore,
} from './kit.ts';
import { type Found, rule } from './rule.ts';

/** Resin that is worked, finished or handed over before it has cured for it. */
export const workedBeforeCure = rule({
  id: 'worked-before-cure',
  level: 'stop',
  title: 'Resin has cured for what is done to it',
  looksAt:
    'The least time between each layer of resin and what comes after it, beside the cure clock: sanding or scraping by hand waits until it can be sanded, levelling, a sander and polish for the full cure, a finish for the day that takes it, hand-over for the full cure and for food where the piece is for food. A seal coat under a later layer is asked for sanding alone.',
  why: 'Dust of half-cured resin makes people allergic for good, paper clogs on it, oil stays soft on it, and food takes up what has not reacted.',
  neverExcepted: 'An allergy to resin stays for life.',
  find(worked) {
    const layers = layersOfResin(worked);
    return worked.steps.flatMap((later) => {
      const need = needOf(worked, later);
      if (!need) return [];
      const before = stepsBefore(worked, later);
      const below = layers.filter(({ id }) => before.has(id));
      const shortfalls = below.flatMap((layer) => shortfallOf(worked, layer, later, need, layer === below.at(-1)));
      const worst = shortfalls.sort((one, other) => other.short - one.short)[0];
      return worst ? [worst.found] : [];
    });
  },
});

type CureFigure = 'sandable' | 'fullCure' | 'oil' | 'foodService';

interface Need {
  figure: CureFigure;
  /** What the cure is for, as it follows “before it”: `can be sanded`. */
  words: string;
}

/** What sands by machine: the cure clock lets a hand sand earlier. */
const sanders: readonly ToolKind[] = [
  'random-orbit-sander',
  'belt-sander',
  'drum-sander',
  'spindle-sander',
  'polisher',
];

/** What a step asks of the resin under it; undefined where nothing. */
function needOf(worked: WorkedMethod, step: WorkedStep): Need | undefined {
  const kinds = kindsAt(worked, step);
  const byMachine = sanders.some((kind) => kinds.has(kind));
  switch (step.act.id) {
    case 'sand':
    case 'scrape':
      return byMachine
        ? { figure: 'fullCure', words: 'has cured through, as a machine asks' }
        : { figure: 'sandable', words: 'can be sanded by hand' };
    case 'level':
    case 'polish':
      return { figure: 'fullCure', words: 'has cured through' };
    case 'oil':
    case 'wax':
      return { figure: 'oil', words: 'takes a finish' };
    case 'coat':
      return isResinCoat(worked, step) ? undefined : { figure: 'oil', words: 'takes a finish' };
    case 'hand-over':
      return worked.record.food
        ? { figure: 'foodService', words: 'may come near food' }
        : { figure: 'fullCure', words: 'has cured through' };
    default:
      return undefined;
  }
}

function shortfallOf(
  worked: WorkedMethod,
  layer: WorkedStep,
  later: WorkedStep,
  { figure, words }: Need,
  isTop: boolean,
): { short: number; found: Found }[] {
  // Under a later layer, a seal coat cures along with it and is not asked apart.
  if (layer.act.id === 'seal' && !isTop && figure !== 'sandable') return [];
  const clock = answerFor(worked, layer, 'cure-clock');
  const needed = minutesOf(clock, figure);
  const least = leastBetween(worked, layer.id, later.id);
  if (needed === undefined || least === undefined || isLongEnough(least, needed)) return [];
  return [
    {
      short: needed - least,
      found: {
        ...atStep(later),
        message: `“${later.record.title}” may begin ${least > 0 ? `${span(least)} after` : 'as soon as'} “${layer.record.title}” is done; it takes ${span(needed)} in this shop before the resin ${words}.`,
        wayOut: `Let it wait for it: { step: ${layer.id}, least: { from: /calculations/${clock?.name}/figures/${figure}, take: high } }. The sheet of the resin comes first.`,
      },
    },
  ];
}
