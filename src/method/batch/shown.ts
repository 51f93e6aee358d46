import type { DataProblem } from '../../model/data/problem.ts';
import { problemLine } from '../../model/data/problem.ts';
import type { ResultDocument } from '../../model/evidence/index.ts';
import { sessionsOf } from '../plan/sessions.ts';
import { piecesWords } from '../plan/words.ts';
import { cardsOf, type StepCard } from './card.ts';
import { instantOf } from './changes.ts';
import { type DrawnBatch, drawnBatch } from './drawn.ts';
import { type BatchLabel, batchLabel } from './label.ts';
import { type LogLine, logLine } from './log.ts';
import { batchPage, entryWords } from './page.ts';
import type { BatchRecord } from './record.ts';
import { type BatchState, batchState, type WorkedBatch } from './state.ts';

/** An entry as the page lists it. */
export interface ShownLine {
  id: string;
  kind: string;
  words: string;
  /** When it was written down, as the shop’s clock shows it. */
  written: string;
  /** Why it does not hold, where it is struck, and the entry that strikes it: who strikes that one puts this one back. */
  struck?: string;
  struckBy?: string;
}

/** What is left of the work, in sessions; moments as the shop’s clock shows them. */
export interface ShownSession {
  day: string;
  from: string;
  to: string;
  work: readonly { step: string; title: string; which: string; from: string; to: string }[];
}

/** A batch as its page shows it, plain data: it goes through JSON unchanged. Texts hold marked quantities. */
export interface ShownBatch {
  state: BatchState;
  method: string;
  makes: string;
  materials: readonly { name: string; what: string }[];
  /** What to do at each step that may be done now or is going on, by its id. */
  cards: Readonly<Record<string, StepCard>>;
  entries: readonly ShownLine[];
  line: LogLine;
  page: ResultDocument;
  label?: BatchLabel;
  /** Left out while only today’s list is worked out. */
  sessions?: readonly ShownSession[];
  ends?: { planned?: string; now?: string };
  drawn?: DrawnBatch;
}

/** A batch as its page shows it, or what is wrong with its method, its shop record or its case, a line each. */
export type BatchShown = { ok: true; shown: ShownBatch } | { ok: false; problems: readonly string[] };

/**
 * A batch at a moment as plain data.
 *
 * @param now instant (RFC 3339)
 * @param stage `today` leaves out timetable and label, which take longest
 */
export async function shownBatch(
  record: BatchRecord,
  now: string,
  stage: 'today' | 'whole',
  memo: Map<string, unknown> = new Map(),
): Promise<BatchShown> {
  const answer = await batchState(record, now, { memo, withoutTimetable: stage === 'today' });
  if (!answer.ok) return { ok: false, problems: answer.problems.map((problem: DataProblem) => problemLine(problem)) };
  const { worked: batch } = answer;
  const { measured, state } = batch;
  const drawn = stage === 'today' ? undefined : drawnBatch(batch);
  return {
    ok: true,
    shown: {
      state,
      method: measured.worked.record.title,
      makes: measured.worked.record.makes.what,
      materials: Object.values(measured.worked.materials).map(({ name, record: { what } }) => ({ name, what })),
      cards: cardsOf(measured, state.today),
      entries: linesOf(batch),
      line: logLine(record, batch),
      page: batchPage(record, batch),
      ...(stage === 'today'
        ? {}
        : { label: await batchLabel(batch, record.title), sessions: sessionsLeft(batch), ends: endsOf(batch) }),
      ...(drawn ? { drawn } : {}),
    },
  };
}

function linesOf(batch: WorkedBatch): ShownLine[] {
  return batch.standing.all.map(({ entry, struck }) => ({
    id: entry.id,
    kind: entry.kind,
    words: entryWords(entry, batch),
    written: batch.momentText(Date.parse(entry.at)),
    ...(struck ? { struck: struck.why, struckBy: struck.id } : {}),
  }));
}

/** What is left to do, in the sessions of the plan. */
function sessionsLeft({ timetable, measured: { worked }, state }: WorkedBatch): ShownSession[] {
  if (!timetable) return [];
  const now = Date.parse(state.now);
  const titles = new Map(worked.steps.map(({ id, record }) => [id, record.title]));
  const { momentAt } = timetable;
  return sessionsOf(timetable, []).flatMap(({ start, end, work }): ShownSession[] => {
    const left = work.filter((each) => instantOf(timetable, each.end) > now);
    if (left.length === 0) return [];
    const { weekday, date, time } = momentAt(start);
    return [
      {
        day: `${weekday.charAt(0).toUpperCase()}${weekday.slice(1)} ${date}`,
        from: time,
        to: momentAt(end).time,
        work: left.map((each) => ({
          step: each.step,
          title: titles.get(each.step) ?? each.step,
          which: piecesWords(each.pieces, worked.pieces),
          from: momentAt(each.start).time,
          to: momentAt(each.end).time,
        })),
      },
    ];
  });
}

function endsOf({ first, timetable, momentText }: WorkedBatch): NonNullable<ShownBatch['ends']> {
  const text = (plan: NonNullable<typeof first>) => momentText(instantOf(plan, plan.end));
  return { ...(first ? { planned: text(first) } : {}), ...(timetable ? { now: text(timetable) } : {}) };
}
