import type { WorkedLink, WorkedMethod, WorkedStep } from '../case/types.ts';
import {
  answerFor,
  atStep,
  isLongEnough,
  layersOfResin,
  leastBetween,
  minutesOf,
  span,
  stepsBefore,
  stepsThat,
} from './kit.ts';
import { type Found, rule } from './rule.ts';

/** Resin over resin outside its window, with nothing to hold to. */
export const recoatWindow = rule({
  id: 'recoat-window',
  level: 'warn',
  title: 'Resin goes on resin while its window is open, or on an abraded face',
  looksAt:
    'Each layer of resin and the one before it (seal, pour, coat): the least and the most time between them beside the opening and the closing of the window that the cure clock gives. Sanding, scraping or levelling in between keeps it, and so does a second way that abrades where the window was missed.',
  why: 'Inside the window the layers join by chemistry. Too soon, the lower one is lifted and mixed in; too late, the upper one holds to nothing and lifts with the seasons.',
  find: (worked) =>
    layersOfResin(worked).flatMap((later) => {
      const earlier = layerBelow(worked, later);
      return earlier && !isAbraded(worked, earlier, later) ? outsideWindow(worked, earlier, later) : [];
    }),
});

/** The layer that comes just before another: the last one in the file of those that it waits for. */
function layerBelow(worked: WorkedMethod, later: WorkedStep): WorkedStep | undefined {
  const before = stepsBefore(worked, later);
  return layersOfResin(worked).findLast(({ id }) => before.has(id));
}

/** Whether the face is abraded after the one layer and before the other. */
function isAbraded(worked: WorkedMethod, earlier: WorkedStep, later: WorkedStep): boolean {
  const before = stepsBefore(worked, later);
  return stepsThat(worked, 'sand', 'level', 'scrape').some(
    (step) => before.has(step.id) && stepsBefore(worked, step).has(earlier.id),
  );
}

function outsideWindow(worked: WorkedMethod, earlier: WorkedStep, later: WorkedStep): Found[] {
  const clock = answerFor(worked, later, 'cure-clock');
  const [title, below] = [later.record.title, earlier.record.title];
  // That no clock was asked is another rule's.
  if (!clock) return [];
  const opens = minutesOf(clock, 'recoatOpens');
  const closes = minutesOf(clock, 'recoatCloses');
  const least = leastBetween(worked, earlier.id, later.id) ?? 0;
  const { name } = clock;
  const links = later.after.filter(({ step }) => step === earlier.id);
  const link = links.find(({ most }) => most !== undefined) ?? links[0];
  return [...tooSoon(), ...tooLate()];

  function tooSoon(): Found[] {
    if (opens === undefined || isLongEnough(least, opens)) return [];
    return [
      {
        ...placeOfLink(later, link),
        message: `“${title}” may begin ${least > 0 ? `${span(least)} after` : 'as soon as'} “${below}” is done; the window opens after ${span(opens)}.`,
        wayOut: `Let it wait at least that long: least: { from: /calculations/${name}/figures/recoatOpens, take: high }.`,
      },
    ];
  }

  function tooLate(): Found[] {
    if (closes === undefined) return [];
    const abrade = 'state under “missed” how the face is abraded then (abrades: true)';
    const close = `most: { from: /calculations/${name}/figures/recoatCloses, take: low }`;
    const place = placeOfLink(later, link);
    if (link?.most === undefined)
      return [
        {
          ...place,
          message: `“${title}” may come any time after “${below}”; the window closes after ${span(closes)}.`,
          wayOut: `Close it on the link between the two, ${close}, and ${abrade}; or sand in between.`,
        },
      ];
    if (!isLongEnough(closes, link.most))
      return [
        {
          ...place,
          message: `“${title}” may come up to ${span(link.most)} after “${below}”; the window closes after ${span(closes)}.`,
          wayOut: `Close it in time, ${close}, and ${abrade}.`,
        },
      ];
    if (link.missed && !link.missed.abrades)
      return [
        {
          ...place,
          message: `Where the window between “${below}” and “${title}” was missed, the second way does not abrade the face.`,
          wayOut: `Sand the face dull in it, and ${abrade.replace('state under “missed” how the face is abraded then', 'say so')}.`,
        },
      ];
    return [];
  }
}

const placeOfLink = (later: WorkedStep, link: WorkedLink | undefined): Pick<Found, 'path' | 'step'> =>
  link ? { path: link.path, step: later.id } : atStep(later);
