import type { WorkedLink, WorkedMethod, WorkedStep } from '../case/types.ts';
import { pinnedSitting } from '../plan/pinned.ts';
import type { DoneRun, PieceWork, WorkDone } from './done.ts';
import { type MeasuredMethod, restsOn, unreadAt } from './measured.ts';

const minute = 60_000;

/** When a wait of a piece is over and when its window closes, instants in ms; or why nobody can say. */
export type WaitOf =
  | { kind: 'times'; opens: number; closes?: number }
  /** The step before is not done on this piece; a window that counts from its start runs already. */
  | { kind: 'before'; closes?: number }
  | { kind: 'unknown'; why: string; wayOut: string; closes?: number };

const unknown = (why: string, wayOut: string, closes: { closes?: number } = {}): WaitOf => ({
  kind: 'unknown',
  why,
  wayOut,
  ...closes,
});

/** Whether a wait or a window stands in the method and has no length in this case: its calculation refused. */
function refusedPart(worked: WorkedMethod, { path, least, most }: WorkedLink): string | undefined {
  const [, step, , at] = path;
  const link = worked.record.steps[String(step)]?.after?.[Number(at)];
  if (link === undefined || typeof link === 'string') return undefined;
  if (link.least !== undefined && least === undefined) return 'The wait';
  return link.most !== undefined && most === undefined ? 'The window' : undefined;
}

/** Why a wait has no length: what the calculation that it rests on says, as it was measured at the step that the wait counts from. */
export function refusalOf(worked: WorkedMethod, there: WorkedMethod, link: WorkedLink): string | undefined {
  const part = refusedPart(worked, link);
  if (!part) return undefined;
  const told = restsOn(worked.record, link).flatMap((name) => {
    const asked = there.calculations[name];
    return asked?.errors?.[0]?.message ?? (asked?.result ? [asked.result.verdict.text] : []);
  });
  return `${part} cannot be worked out. ${[...new Set(told)].join(' ')}`.trim();
}

/**
 * The run of a step that a piece belongs to, as the plan counts it: minutes to the end of its first piece, minutes of its last. Where nobody wrote down
 * its start, the pieces after the first took what the method gives them.
 */
function countedRun(step: WorkedStep, run: DoneRun): { firstDone: number; lastBegan: number } {
  if (run.start === undefined)
    return { firstDone: -step.hands.each * (run.pieces[1] - run.pieces[0]), lastBegan: -step.hands.each };
  const [start, end] = [(run.start as number) / minute, (run.firstEnd as number) / minute];
  const whole = Math.ceil(end - start);
  const sitting = pinnedSitting({ step: step.id, pieces: run.pieces, start: 0, end: whole }, step.hands, 0);
  return { firstDone: sitting.setUp + sitting.each, lastBegan: whole - sitting.each };
}

/**
 * When a piece may go on from one step to the next, by what was written down: a wait counts from the actual end, a window from the end of the first
 * piece of the sitting; as the plan counts them.
 */
export function waitOf(measured: MeasuredMethod, done: WorkDone, link: WorkedLink, piece: number): WaitOf {
  const { worked } = measured;
  const before = worked.steps.find(({ id }) => id === link.step);
  const work: PieceWork = done.works.get(link.step)?.[piece] ?? {};
  if (!before) return { kind: 'before' };
  const title = `“${before.record.title}”`;
  if (work.doubt !== undefined)
    return unknown(`Of ${title}, ${work.doubt}.`, 'Strike the entry that is wrong and write it anew.');
  const { least = 0, most, counts } = link;
  const running =
    counts === 'start' && most !== undefined && work.start !== undefined ? { closes: work.start + most * minute } : {};
  if (work.end === undefined || work.firstEnd === undefined) return { kind: 'before', ...running };
  const refusal = refusalOf(worked, measured.at(link.step), link);
  if (refusal !== undefined)
    return unknown(
      `${refusal}`,
      'Go by the maker’s data sheet, or ask its maker. Where a reading was mistyped, strike it and write it anew.',
    );
  if (least === 0 && most === undefined) return { kind: 'times', opens: work.end };
  const rests = restsOn(worked.record, link);
  const unread = unreadAt(measured, link.step).filter(({ calculation }) => rests.includes(calculation));
  if (unread.length > 0) {
    const labels = unread.flatMap(({ inputs }) => inputs.map(({ label }) => label));
    return unknown(
      `Not every temperature was written down at ${title}, and the time after it rests on it (${[...new Set(labels)].join(', ')}).`,
      `Write down at ${title} what the thermometer showed. If nobody looked, go by the slowest that the maker’s data sheet gives, and write that down as a deviation.`,
      running,
    );
  }
  const run = done.runs.find(
    ({ step, pieces: [first, last] }) => step === link.step && first <= piece && piece <= last,
  );
  if (work.start === undefined && counts === 'start')
    return unknown(
      `When ${title} was begun was not written down, and ${most === undefined ? 'the wait' : 'the window'} after it counts from there.`,
      `Write down when ${title} was begun.`,
    );
  const start = work.start ?? work.firstEnd;
  const counted = run ? countedRun(before, run) : { firstDone: 0, lastBegan: 0 };
  const opensFrom = counts === 'start' ? start + counted.lastBegan * minute : work.end;
  const closesFrom = counts === 'start' ? start : start + counted.firstDone * minute;
  return {
    kind: 'times',
    opens: Math.max(opensFrom + least * minute, work.end),
    ...(most === undefined ? {} : { closes: closesFrom + most * minute }),
  };
}
