import type { WorkedMethod } from '../case/types.ts';
import { type NoTimetable, type TimetableOptions, timetableOf } from './timetable.ts';

/**
 * What keeps a window without touching it, where more pieces are done in one go than the window has time for: more hands at a time, or fewer pieces in a
 * batch. Each is planned with, not guessed.
 *
 * @returns how a reader says them; empty where no window is what cannot be kept
 */
export async function fewerOrMore(
  worked: WorkedMethod,
  options: TimetableOptions,
  { why, made }: NoTimetable,
): Promise<string[]> {
  const late = new Set(
    why.constraints.flatMap((each) => (each.kind === 'most' ? (made.lags[each.lag]?.step ?? []) : [])),
  );
  if (late.size === 0 || (options.done ?? []).length > 0) return [];
  const ways: string[] = [];
  const more = Math.max(...worked.steps.filter(({ id }) => late.has(id)).map(({ people }) => people));
  // As many as take one piece more at a time.
  const people = (Math.floor(options.people / more) + 1) * more;
  if (worked.pieces > 1 && (await timetableOf(worked, { ...options, people })).ok)
    ways.push(`${people} people instead of ${options.people}`);
  const { least } = worked.record.makes.pieces;
  const sizes = [worked.pieces - 1, Math.ceil(worked.pieces / 2)].filter(
    (pieces, at, all) => pieces >= least && all.indexOf(pieces) === at,
  );
  for (const pieces of sizes) {
    if (!(await timetableOf({ ...worked, pieces }, options)).ok) continue;
    ways.push(`${pieces === 1 ? 'one piece' : `${pieces} pieces`} in a batch instead of ${worked.pieces}`);
    break;
  }
  return ways;
}
