import type { WorkedMethod } from '../case/types.ts';
import { handsResource } from './activities.ts';
import { neededForOneMore, type PaidBack, paidBack } from './payback.ts';
import type { CaseCost } from './price.ts';
import { keptShort } from './rounds.ts';
import { type Timetable, type TimetableOptions, timetableOf } from './timetable.ts';
import { type Limits, timeWords } from './words.ts';

/** What one more of something would do for a plan. */
export interface OneMore {
  /** Name of the tool, or `hands`. */
  resource: string;
  /** How many more: as many clamps as one piece takes. */
  more: number;
  /** Minutes by which the plan ends earlier, or begins later where its end is wanted; 0 where it changes nothing. */
  saved: number;
  /** What a tool costs and saves, where there is a shop record. */
  paysBack?: PaidBack;
  /** The sentences for a reader. */
  words: string;
}

/** So many things are tried, those first that hold the plan up longest. */
const tried = 2;

/** The same case with more of a tool. */
function withMore(worked: WorkedMethod, resource: string, more: number): WorkedMethod {
  const tool = worked.tools[resource];
  if (!tool) return worked;
  return { ...worked, tools: { ...worked.tools, [resource]: { ...tool, count: tool.count + more } } };
}

/** Minutes that a plan gains on another: from a day on it ends earlier; back from a wanted end it begins later. */
export function gainedMinutes(options: TimetableOptions, stands: Timetable, again: Timetable): number {
  return Math.max(0, options.end === undefined ? stands.end - again.end : again.start - stands.start);
}

/** `the plan ends 20 h earlier`. */
export const gainWords = ({ end }: TimetableOptions, minutes: number): string =>
  end === undefined ? `the plan ends ${timeWords(minutes)} earlier` : `the plan begins ${timeWords(minutes)} later`;

/**
 * Whether one more pair of hands, mould, clamp or machine would end a plan earlier, by how much, and whether it pays for itself: planned again with it,
 * not guessed.
 *
 * @param limits of the plan that stands: what its chain waits for is tried, and what makes pieces go in rounds
 * @param cost of the case, where the shop record has what it takes
 */
export async function oneMoreOf(
  worked: WorkedMethod,
  options: TimetableOptions,
  timetable: Timetable,
  limits: Limits,
  cost?: CaseCost,
): Promise<OneMore[]> {
  const waited = Object.entries(limits.resources)
    .sort(([, one], [, other]) => other - one)
    .slice(0, tried)
    .map(([resource]) => resource);
  const advice: OneMore[] = [];
  for (const resource of new Set([...waited, ...keptShort(worked).map(({ tool }) => tool)])) {
    const isHands = resource === handsResource;
    const more = isHands ? 1 : neededForOneMore(worked, resource);
    const again = await timetableOf(withMore(worked, resource, more), {
      ...options,
      people: options.people + (isHands ? 1 : 0),
    });
    if (!again.ok) continue;
    const saved = gainedMinutes(options, timetable, again);
    const paysBack = isHands ? undefined : paidBack(worked, resource, more, cost);
    const helps = saved > 0 || (paysBack?.savedMinutes ?? 0) > 0;
    const effect = saved > 0 ? gainWords(options, saved) : helps ? 'the plan is as long' : 'it changes nothing';
    const what = isHands
      ? 'One more pair of hands'
      : `${worked.tools[resource]?.record.what ?? resource}, ${more === 1 ? 'one' : more} more`;
    advice.push({
      resource,
      more,
      saved,
      ...(paysBack ? { paysBack } : {}),
      words: `${what}: ${effect}.${helps && paysBack ? ` ${paysBack.words}` : ''}`,
    });
  }
  return advice;
}
