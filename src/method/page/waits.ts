import type { WorkedLink, WorkedMethod } from '../case/types.ts';
import { exactTime, noLessThan } from './time-words.ts';
import { shownTitle } from './values.ts';

/** What a link says beyond the order of the file, in a sentence; undefined where the step only follows the one above it. */
function waitSentence(link: WorkedLink, before: string, isAbove: boolean): string | undefined {
  const { least, most, counts } = link;
  const from = counts === 'start' ? `“${before}” has begun` : `“${before}” is done`;
  if (least && most !== undefined)
    return `Begin at the earliest ${noLessThan(least)} and at the latest ${exactTime(most)} after ${from}.`;
  if (least) return `Wait at least ${noLessThan(least)} after ${from}.`;
  if (most !== undefined) return `Begin within ${exactTime(most)} after ${from}.`;
  return isAbove ? undefined : `Begin once ${from}.`;
}

function missedSentence({ most, missed }: WorkedLink, before: string): string | undefined {
  if (!missed) return undefined;
  const window = most === undefined ? '' : ` of ${exactTime(most)}`;
  const adds = missed.addsMinutes ? ` It takes ${exactTime(missed.addsMinutes)} more for each piece.` : '';
  const way = missed.do.replace(/[.\s]+$/, '');
  return `Where the window${window} after “${before}” was missed: ${way}.${adds}`;
}

/** What each step waits for, and what is done where its window was missed, as sentences. */
export function waitsOf(worked: Pick<WorkedMethod, 'steps' | 'at'>): { waits: string[]; missed: string[] }[] {
  const { steps } = worked;
  const titles = new Map(steps.map(({ id, record }) => [id, shownTitle(worked, record.title)]));
  return steps.map(({ after }, at) => {
    const titled = after.map((link) => ({ link, before: titles.get(link.step) ?? link.step }));
    return {
      waits: titled.flatMap(
        ({ link, before }) => waitSentence(link, before, after.length === 1 && steps[at - 1]?.id === link.step) ?? [],
      ),
      missed: titled.flatMap(({ link, before }) => missedSentence(link, before) ?? []),
    };
  });
}
