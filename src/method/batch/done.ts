import type { WorkedMethod } from '../case/types.ts';
import { piecesWords } from '../plan/words.ts';
import { clocksApart } from './moment.ts';
import type { BatchEntry, EntryOf } from './record.ts';
import type { BatchProblem } from './standing.ts';

/** What is known of one piece at one step. Times are instants in ms. */
export interface PieceWork {
  start?: number;
  /** The last end that was written down: a wait counts from it. */
  end?: number;
  /** The first: a window counts from it. */
  firstEnd?: number;
  /** Why these times cannot be counted from. */
  doubt?: string;
}

/** Pieces that were worked on alike. */
export interface DoneRun extends PieceWork {
  step: string;
  pieces: readonly [number, number];
}

/** The work of a batch as it was written down: by step, what is known of each piece (from 1; place 0 is empty). */
export interface WorkDone {
  works: ReadonlyMap<string, readonly PieceWork[]>;
  runs: readonly DoneRun[];
  problems: readonly BatchProblem[];
}

type Told = EntryOf<'started'> | EntryOf<'finished'>;

const none: PieceWork = {};

/**
 * The work that entries tell of, piece by piece. What contradicts itself is not mended: it is said, and its times are in doubt.
 *
 * @param momentText writes an instant as the shop’s clock shows it
 * @param now instant, ms
 */
export function workDone(
  worked: WorkedMethod,
  entries: readonly BatchEntry[],
  now: number,
  momentText: (instant: number) => string,
): WorkDone {
  const problems: BatchProblem[] = [];
  const told = entries.filter((entry): entry is Told => entry.kind === 'started' || entry.kind === 'finished');
  const titles = new Map(worked.steps.map(({ id, record }) => [id, record.title]));
  const usable = told.filter((entry) => {
    const [first, last] = entry.pieces ?? [1, worked.pieces];
    if (!titles.has(entry.step))
      problems.push({
        entries: [entry.id],
        text: `“${entry.step}” is no step of this method.`,
        wayOut: 'Strike the entry and write it down at the step that was meant.',
      });
    else if (last > worked.pieces)
      problems.push({
        entries: [entry.id],
        step: entry.step,
        text: `“${titles.get(entry.step)}” was written down for ${first === last ? `piece ${first}` : `pieces ${first} to ${last}`}, and the batch has ${worked.pieces}.`,
        wayOut: 'Strike the entry and write it down for the pieces that there are.',
      });
    else return true;
    return false;
  });
  const works = new Map<string, PieceWork[]>();
  const runs: DoneRun[] = [];
  for (const { id, record } of worked.steps) {
    const own = usable.filter(({ step }) => step === id);
    const pieces: PieceWork[] = [none];
    const said = new Map<string, BatchProblem & { pieces: number[] }>();
    for (let piece = 1; piece <= worked.pieces; piece += 1) {
      const about = own.filter(({ pieces: [first, last] = [1, worked.pieces] }) => first <= piece && piece <= last);
      const { work, wrong } = pieceWork(about, now, momentText);
      pieces.push(work);
      for (const { text, entries: ids, ...more } of wrong) {
        const before = said.get(`${text} ${ids.join(' ')}`);
        if (before) before.pieces.push(piece);
        else said.set(`${text} ${ids.join(' ')}`, { ...more, entries: ids, step: id, text, pieces: [piece] });
      }
    }
    for (const { pieces: which, text, ...rest } of said.values())
      problems.push({
        ...rest,
        text: `“${record.title}”${piecesWords([which[0] ?? 1, which.at(-1) ?? 1], worked.pieces)} ${text}`,
      });
    works.set(id, pieces);
    runs.push(...runsOf(id, pieces));
  }
  return { works, runs, problems };
}

interface Wrong {
  text: string;
  wayOut: string;
  entries: readonly string[];
  mayStay?: boolean;
}

/** What a few entries say of one piece, and what of it cannot be so. */
function pieceWork(
  about: readonly Told[],
  now: number,
  momentText: (instant: number) => string,
): { work: PieceWork; wrong: readonly Wrong[] } {
  const of = (kind: Told['kind']) =>
    about.filter((entry) => entry.kind === kind).sort((one, other) => Date.parse(one.when) - Date.parse(other.when));
  const [starts, ends] = [of('started'), of('finished')];
  const timeOf = (entry: Told | undefined) => (entry ? Date.parse(entry.when) : undefined);
  const [start, firstEnd, end] = [timeOf(starts[0]), timeOf(ends[0]), timeOf(ends.at(-1))];
  const wrong: Wrong[] = [];
  const idsOf = (entries: readonly Told[]) => entries.map(({ id }) => id);
  const ahead = about.filter((entry) => Date.parse(entry.when) > now + clocksApart);
  if (ahead.length > 0)
    wrong.push({
      entries: idsOf(ahead),
      text: `is written down for ${momentText(Date.parse((ahead[0] as Told).when))}, which is still to come.`,
      wayOut:
        'If the time was mistyped, strike the entry and write it anew; if the clock of this device is wrong, set it.',
    });
  if (start !== undefined && firstEnd !== undefined && firstEnd < start)
    wrong.push({
      entries: idsOf([...starts.slice(0, 1), ...ends.slice(0, 1)]),
      text: `was finished ${momentText(firstEnd)}, before it was started, ${momentText(start)}.`,
      wayOut: 'Strike the one that is wrong and write it anew.',
    });
  const doubt = wrong.length > 0 ? 'the times written down for it contradict each other' : undefined;
  if (ends.length > 1 || starts.length > 1)
    wrong.push({
      entries: idsOf(ends.length > 1 ? ends : starts),
      text: `is written down as ${ends.length > 1 ? 'finished' : 'started'} ${ends.length > 1 ? ends.length : starts.length} times on the same pieces. Waits are counted from the last, windows from the first.`,
      wayOut: 'Strike what was written down twice. If it was done again, leave it and say why as a deviation.',
      mayStay: true,
    });
  return {
    work: {
      ...(start === undefined ? {} : { start }),
      ...(end === undefined ? {} : { end }),
      ...(firstEnd === undefined ? {} : { firstEnd }),
      ...(doubt === undefined ? {} : { doubt }),
    },
    wrong,
  };
}

const alike = (one: PieceWork, other: PieceWork) =>
  one.start === other.start && one.end === other.end && one.firstEnd === other.firstEnd && one.doubt === other.doubt;

/** Neighbouring pieces that were worked on alike, where anything is known of them. */
function runsOf(step: string, pieces: readonly PieceWork[]): DoneRun[] {
  const runs: DoneRun[] = [];
  for (const [piece, work] of pieces.entries()) {
    if (work.start === undefined && work.end === undefined) continue;
    const before = runs.at(-1);
    if (before && before.pieces[1] === piece - 1 && alike(before, work))
      runs[runs.length - 1] = { ...before, pieces: [before.pieces[0], piece] };
    else runs.push({ ...work, step, pieces: [piece, piece] });
  }
  return runs;
}
