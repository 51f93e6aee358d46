import type { WorkedLink, WorkedMethod } from '../case/types.ts';
import type { Finding } from '../rules/rule.ts';
import type { Span } from '../schedule/index.ts';
import { gainedMinutes } from './advice.ts';
import { timeRules } from './time-rules.ts';
import { type Timetable, type TimetableOptions, timetableOf, type Work } from './timetable.ts';
import { momentWords, timeWords } from './words.ts';

/** Minutes by which a session may be missed and still be nearly met. */
const mostMissed = 60;
/** Minutes that a plan must gain for it to be worth a word: a day. */
const worthWhile = 24 * 60;
/** Steps of halving by which the fewest minutes are found. */
const halvings = 6;

/** A plan in which each session is open some minutes longer. */
interface Longer {
  by: number;
  timetable: Timetable;
}

/** The fewest minutes, of those tried, by which all sessions must be open longer for a plan that gains as much. */
async function fewest(
  worked: WorkedMethod,
  options: TimetableOptions,
  stands: Timetable,
  most: Longer,
): Promise<Longer> {
  const gained = gainedMinutes(options, stands, most.timetable);
  let [low, best] = [0, most];
  for (let round = 0; round < halvings && best.by - low > 1; round += 1) {
    const by = (low + best.by) >> 1;
    const timetable = await timetableOf(worked, { ...options, longer: by });
    // The minutes that a session is longer are themselves a part of what is gained.
    if (timetable.ok && gainedMinutes(options, stands, timetable) > gained - mostMissed) best = { by, timetable };
    else low = by;
  }
  return best;
}

/** Work of a plan that runs past the closing time that there is, each with that session. */
function pastClosing(open: readonly Span[], { steps }: Timetable): { work: Work; session: Span }[] {
  return steps
    .flatMap(({ work }) => work)
    .flatMap((work) => {
      const session = open.filter(({ start }) => start <= work.start || start < work.end).at(-1);
      return session && work.end > session.start && work.end > session.end ? [{ work, session }] : [];
    })
    .sort((one, two) => one.work.start - two.work.start);
}

/** The wait that lets a step begin only when it does, in a plan; undefined where something else holds it. */
function tightWait({ steps }: Timetable, worked: WorkedMethod, { step, start }: Work): WorkedLink | undefined {
  const { after = [], hands } = worked.steps.find(({ id }) => id === step) ?? {};
  return after.find(({ step: before, counts, least = 0 }) => {
    const earlier = steps.find(({ id }) => id === before);
    if (least === 0 || !earlier) return false;
    // What is set up while the wait runs begins before its end.
    const ready = (counts === 'start' ? earlier.start : earlier.end) + least - (hands?.setUp ?? 0);
    return start - ready >= -1 && start - ready <= 1;
  });
}

/**
 * A session that is missed by a few minutes, where a plan would end a day sooner or more with them: planned again with sessions that close later.
 *
 * Said is what was planned: by how many minutes each session would have to be open longer, which of them are used, and what the plan gains. Where a
 * wait is what comes too late for the session, the wait is named. No wait is shortened: it may be a cure.
 */
export async function nearMisses(
  worked: WorkedMethod,
  options: TimetableOptions,
  stands: Timetable,
): Promise<Finding[]> {
  const widest = await timetableOf(worked, { ...options, longer: mostMissed });
  if (!widest.ok || gainedMinutes(options, stands, widest) < worthWhile) return [];
  const { by, timetable } = await fewest(worked, options, stands, { by: mostMissed, timetable: widest });
  const past = pastClosing(stands.open, timetable);
  const [first] = past;
  const step = worked.steps.find(({ id }) => id === first?.work.step);
  if (!first || !step) return [];
  const gained = gainedMinutes(options, stands, timetable);
  const sessions = [...new Set(past.map(({ session }) => session))];
  const shown = sessions.map((session) => momentWords(stands, session.start)).join(' and ');
  const whole = `With ${timeWords(by)} more in ${sessions.length === 1 ? 'the session' : 'the sessions'} of ${shown} the plan ${options.end === undefined ? 'ends' : 'begins'} ${timeWords(gained)} ${options.end === undefined ? 'earlier' : 'later'}`;
  const title = `“${step.record.title}”`;
  const link = tightWait(timetable, worked, first.work);
  const before = worked.steps.find(({ id }) => id === link?.step)?.record.title;
  if (link && before !== undefined)
    return [
      {
        rule: timeRules.waitMisses.id,
        level: timeRules.waitMisses.level,
        path: link.least === undefined ? link.path : [...link.path, 'least'],
        step: step.id,
        message: `The wait of ${timeWords(link.least ?? 0)} after “${before}” counts by the clock, and ends ${timeWords(by)} too late for ${title} in the session of ${momentWords(stands, first.session.start)}. ${whole}.`,
        wayOut: `Begin “${before}” ${timeWords(by)} earlier, or stay ${timeWords(by)} longer. Where it is no cure and no drying, write the wait as the hours that it needs; a cure is not shortened.`,
      },
    ];
  return [
    {
      rule: timeRules.sessionMisses.id,
      level: timeRules.sessionMisses.level,
      path: ['steps', step.id],
      step: step.id,
      message: `The session of ${momentWords(stands, first.session.start)} is ${timeWords(by)} too short for ${title}. ${whole}.`,
      wayOut: `Stay ${timeWords(by)} longer, or have something of it done beforehand.`,
    },
  ];
}
