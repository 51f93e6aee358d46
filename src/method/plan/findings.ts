import type { WorkedLink, WorkedMethod } from '../case/types.ts';
import type { Finding, RuleWords } from '../rules/rule.ts';
import { timeRules } from './time-rules.ts';
import type { NoTimetable, Timetable } from './timetable.ts';
import { momentWords, timeWords } from './words.ts';

/** Minutes to spare before a window closes below which somebody had better be early. */
export const leastToSpare = 15;

/** What a timetable asks somebody to mind: windows that it gives up, windows that all but close, cures that are ready when nobody is there. */
export function timeFindings(worked: WorkedMethod, timetable: Timetable | NoTimetable): Finding[] {
  if (!timetable.ok) return [];
  const titles = new Map(worked.steps.map(({ id, record }) => [id, record.title]));
  return worked.steps.flatMap(({ id, after }) =>
    after.flatMap((link): Finding[] => {
      const names: Names = { step: id, title: titles.get(id) ?? id, before: titles.get(link.step) ?? link.step };
      const second = secondWay(timetable, link, names);
      return second ? [second] : [...nearlyClosed(timetable, link, names), ...endsClosed(timetable, link, names)];
    }),
  );
}

const by = ({ id, level }: RuleWords) => ({ rule: id, level });

interface Names {
  step: string;
  title: string;
  before: string;
}

function secondWay({ secondWays }: Timetable, link: WorkedLink, { step, title, before }: Names): Finding | undefined {
  const taken = secondWays.find((way) => way.step === step && way.after === link.step);
  if (!taken || !link.missed) return undefined;
  return {
    ...by(timeRules.secondWay),
    path: [...link.path, 'missed'],
    step,
    message: `In these hours the window between “${before}” and “${title}” (${timeWords(link.most ?? 0)}) cannot be kept; the plan takes the second way: ${taken.do}.`,
    wayOut: `Open the shop so that somebody is there in time, or keep to the second way${taken.addsMinutes > 0 ? `, ${timeWords(taken.addsMinutes)} more for each piece` : ''}.`,
  };
}

/** Minutes that a piece has to spare before the window closes on it, of the piece that has the fewest, and when it closes. */
function spareOf({ made, planned }: Timetable, link: WorkedLink): { spare: number; closes: number } | undefined {
  const placed = new Map(planned.placements.map(({ id, pieces }) => [id, pieces]));
  const spares = made.lags.flatMap((lag) => {
    if (lag.link !== link || lag.most === undefined) return [];
    const start = placed.get(lag.from)?.[0]?.start;
    const end = placed.get(lag.to)?.at(-1)?.end;
    if (start === undefined || end === undefined) return [];
    // The lag holds the end of the later sitting; the window, the start of its last piece.
    const each = made.sittings.find(({ id }) => id === lag.to)?.each ?? 0;
    return [{ spare: start + lag.most - end, closes: start + lag.most - each }];
  });
  return spares.sort((one, other) => one.spare - other.spare)[0];
}

function nearlyClosed(timetable: Timetable, link: WorkedLink, { step, title, before }: Names): Finding[] {
  const found = spareOf(timetable, link);
  if (!found || found.spare >= leastToSpare) return [];
  return [
    {
      ...by(timeRules.tight),
      path: [...link.path, 'most'],
      step,
      message: `“${title}” has ${found.spare > 0 ? timeWords(found.spare) : 'no time'} to spare before its window after “${before}” closes, ${momentWords(timetable, found.closes)}.`,
      wayOut: 'Be there, with all that it takes laid out; nothing may run late before it.',
    },
  ];
}

function endsClosed(timetable: Timetable, link: WorkedLink, { step, title, before }: Names): Finding[] {
  if (!link.least || link.most === undefined) return [];
  const [earlier, later] = [link.step, step].map((id) => timetable.steps.find((each) => each.id === id));
  if (!earlier || !later) return [];
  const from = link.counts === 'start' ? earlier.start : earlier.end;
  const ready = from + link.least;
  if (timetable.open.some(({ start, end }) => ready >= start && ready <= end)) return [];
  // It closes on the first piece that was laid on; on the others later.
  const closes = spareOf(timetable, link)?.closes ?? from + link.most;
  return [
    {
      ...by(timeRules.endsClosed),
      path: [...link.path, 'least'],
      step,
      message: `“${before}” is ready for “${title}” ${momentWords(timetable, ready)}, when nobody is there; the window closes ${momentWords(timetable, closes)}.`,
      wayOut: `The plan has it at ${momentWords(timetable, later.start)}. Whoever opens then goes to it first.`,
    },
  ];
}
