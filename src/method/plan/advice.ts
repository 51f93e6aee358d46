import type { WorkedMethod } from '../case/types.ts';
import { handsResource } from './activities.ts';
import { type Timetable, type TimetableOptions, timetableOf } from './timetable.ts';
import { type Limits, resourceWords, timeWords } from './words.ts';

/** What one more of something would do for a plan. */
export interface OneMore {
  /** Name of the tool, or `hands`. */
  resource: string;
  /** Minutes by which the plan ends earlier; 0 where it changes nothing. */
  saved: number;
  /** The sentence for a reader. */
  words: string;
}

/** So many things are tried, those first that hold the plan up longest. */
const tried = 2;

/** The same case with one more of a tool. */
function withOneMore(worked: WorkedMethod, resource: string): WorkedMethod {
  const tool = worked.tools[resource];
  if (!tool) return worked;
  return { ...worked, tools: { ...worked.tools, [resource]: { ...tool, count: tool.count + 1 } } };
}

/**
 * Whether one more pair of hands, mould, clamp or machine would end a plan earlier, and by how much: planned again with it, not guessed.
 *
 * @param limits of the plan that stands: what its chain waits for is tried
 */
export async function oneMoreOf(
  worked: WorkedMethod,
  options: TimetableOptions,
  timetable: Timetable,
  limits: Limits,
): Promise<OneMore[]> {
  const waited = Object.entries(limits.resources)
    .sort(([, one], [, other]) => other - one)
    .slice(0, tried)
    .map(([resource]) => resource);
  const advice: OneMore[] = [];
  for (const resource of waited) {
    const more = { ...options, people: options.people + (resource === handsResource ? 1 : 0) };
    const again = await timetableOf(withOneMore(worked, resource), more);
    if (!again.ok) continue;
    // From a day on a plan ends earlier; back from a wanted end it begins later.
    const gained = options.end === undefined ? timetable.end - again.end : again.start - timetable.start;
    const saved = Math.max(0, gained);
    const what = resource === handsResource ? 'pair of hands' : resourceWords(worked, resource);
    advice.push({
      resource,
      saved,
      words:
        saved > 0
          ? `One more ${what}: the plan ${options.end === undefined ? 'ends' : 'begins'} ${timeWords(saved)} ${options.end === undefined ? 'earlier' : 'later'}.`
          : `One more ${what} changes nothing.`,
    });
  }
  return advice;
}
