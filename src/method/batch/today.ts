import type { WorkedLink, WorkedStep } from '../case/types.ts';
import { piecesWords } from '../plan/words.ts';
import { judge } from '../rules/judge.ts';
import type { Finding } from '../rules/rule.ts';
import type { PieceWork, WorkDone } from './done.ts';
import { type CardHead, headOf } from './heads.ts';
import type { MeasuredMethod } from './measured.ts';
import type { BatchProblem } from './standing.ts';
import { type WaitOf, waitOf } from './waits.ts';

/**
 * Where some pieces stand at a step. `going`: begun and not finished. `now`: may be done. `later`: not yet. `overdue`: its window is closed.
 * `must-not`: a rule forbids it. `unknown`: something that decides was not written down, or contradicts itself.
 */
export type ItemState = 'going' | 'now' | 'later' | 'overdue' | 'must-not' | 'unknown';

/** A line of today's list. Texts hold marked quantities; moments are instants (RFC 3339). */
export interface TodayItem {
  step: string;
  /** Number and title of the step. */
  number: number;
  title: string;
  pieces: readonly [number, number];
  /** ` (pieces 1 to 4)`, or nothing where it is all of them. */
  which: string;
  state: ItemState;
  text: string;
  wayOut?: string;
  opens?: string;
  closes?: string;
}

const instant = (time: number) => new Date(time).toISOString();

/** The way out of what a reading brought up. */
const readAnew =
  'Put right what was measured, as the maker’s data sheet asks, and write down anew what is read then. If it was mistyped, strike it.';

type Said = Omit<TodayItem, 'step' | 'number' | 'title' | 'pieces' | 'which'>;

const closesOf = (wait: WaitOf): number => ('closes' in wait ? wait.closes : undefined) ?? Number.POSITIVE_INFINITY;

/** Whether somebody stays with resin while it sets: that is never forbidden, never too late and waits for no entry. */
const isAttended = ({ act, interrupt }: WorkedStep): boolean => act.id === 'cure' && interrupt === 'never';

const attended = (said: Said): Said => ({
  ...said,
  state: 'now',
  text: `Stay now. ${said.text.replace('May be done now.', '')}`.replaceAll('  ', ' ').trim(),
});

/** What the rules forbid of a method as it was measured, each thing once. */
export function forbidden({ all }: MeasuredMethod): Finding[] {
  const found = all
    .flatMap((worked) => judge(worked))
    .filter(({ level, excepted }) => level === 'stop' && excepted === undefined);
  return [...new Map(found.map((finding) => [`${finding.rule} ${finding.step} ${finding.message}`, finding])).values()];
}

/**
 * What may be done now and what not, piece by piece, those pieces together that stand alike. Steps that nothing before has reached yet are left out.
 *
 * @param now instant, ms
 * @param momentText writes an instant as the shop’s clock shows it
 */
export function todayOf(
  measured: MeasuredMethod,
  done: WorkDone,
  stops: readonly Finding[],
  now: number,
  momentText: (time: number) => string,
): TodayItem[] {
  const { worked } = measured;
  const titleOf = (id: string) => worked.steps.find((step) => step.id === id)?.record.title ?? id;
  return worked.steps.flatMap((step, at) => {
    const head = headOf(measured, step);
    const lines: { said: Said; pieces: [number, number] }[] = [];
    for (let piece = 1; piece <= worked.pieces; piece += 1) {
      const said = stands(step, piece, head);
      if (!said) continue;
      const before = lines.at(-1);
      if (before && before.pieces[1] === piece - 1 && JSON.stringify(before.said) === JSON.stringify(said))
        before.pieces[1] = piece;
      else lines.push({ said, pieces: [piece, piece] });
    }
    return lines.map(
      ({ said, pieces }): TodayItem => ({
        step: step.id,
        number: at + 1,
        title: step.record.title,
        pieces,
        which: piecesWords(pieces, worked.pieces),
        ...said,
      }),
    );
  });

  function stands(step: WorkedStep, piece: number, head: CardHead | undefined): Said | undefined {
    const work: PieceWork = done.works.get(step.id)?.[piece] ?? {};
    if (work.doubt !== undefined)
      return {
        state: 'unknown',
        text: `Of this step, ${work.doubt}.`,
        wayOut: 'Strike the entry that is wrong and write it anew.',
      };
    if (work.end !== undefined) return undefined;
    if (work.start !== undefined) {
      const word = head?.level === 'stop' ? 'Stop' : 'Mind';
      return { state: 'going', text: `${head ? `${word}: ${head.text} ` : ''}Begun ${momentText(work.start)}.` };
    }
    const waits = step.after.map((link) => ({ link, wait: waitOf(measured, done, link, piece) }));
    const reached = step.after.length === 0 || waits.some(({ wait }) => wait.kind !== 'before');
    const begun = step.after.some(({ step: id }) => done.works.get(id)?.[piece]?.start !== undefined);
    if (!reached && !begun) return undefined;
    const said = standsAt(step, waits, head);
    return isAttended(step) && said.state !== 'later' ? attended(said) : said;
  }

  function standsAt(
    step: WorkedStep,
    waits: readonly { link: WorkedLink; wait: WaitOf }[],
    head: CardHead | undefined,
  ): Said {
    const stop = stops.find((finding) => finding.step === step.id);
    if (stop) return { state: 'must-not', text: stop.message, wayOut: stop.wayOut };
    const unsure = waits.find(({ wait }) => wait.kind === 'unknown')?.wait as
      | Extract<WaitOf, { kind: 'unknown' }>
      | undefined;
    if (head?.level === 'stop') return { state: 'must-not', text: `Do not: ${head.text}`, wayOut: readAnew };
    const closed = waits.find(({ wait }) => closesOf(wait) < now);
    if (closed && isAttended(step))
      return { state: 'now', text: `It was to be begun by ${momentText(closesOf(closed.wait))}.` };
    if (closed) return overdue(closed.link, closesOf(closed.wait));
    const mind = head ? `Mind: ${head.text} ` : '';
    if (unsure) return { state: 'unknown', text: `${mind}${unsure.why}`, wayOut: unsure.wayOut };
    if (head?.level === 'unknown') return { state: 'unknown', text: head.text, wayOut: readAnew };
    const said = byTimes(waits);
    return { ...said, text: `${mind}${said.text}` };
  }

  function byTimes(waits: readonly { link: WorkedLink; wait: WaitOf }[]): Said {
    const timed = waits.flatMap(({ wait }) => (wait.kind === 'times' ? [wait] : []));
    const open = waits.filter(({ wait }) => wait.kind === 'before').map(({ link }) => `“${titleOf(link.step)}”`);
    const opens = Math.max(0, ...timed.map((each) => each.opens));
    const closes = Math.min(...waits.map(({ wait }) => closesOf(wait)));
    const until = Number.isFinite(closes) ? { closes: instant(closes) } : {};
    const closing = Number.isFinite(closes) ? ` It must be begun by ${momentText(closes)}.` : '';
    if (open.length > 0)
      return {
        state: 'later',
        text: `Waits until ${open.join(' and ')} ${open.length === 1 ? 'is' : 'are'} done.${closing}`,
        ...until,
      };
    if (opens > closes)
      return {
        state: 'must-not',
        text: `It may be begun from ${momentText(opens)} on, and one of its windows closes before that, ${momentText(closes)}.`,
        wayOut: 'Stop here. Look at the second ways of this step, or ask the maker of what was laid on.',
        ...until,
      };
    if (opens > now)
      return { state: 'later', text: `Not before ${momentText(opens)}.${closing}`, opens: instant(opens), ...until };
    return { state: 'now', text: `May be done now.${closing}`, ...until };
  }

  function overdue({ step, missed }: WorkedLink, closes: number): Said {
    const text = `Its window after “${titleOf(step)}” closed ${momentText(closes)}.`;
    if (worked.steps.find(({ id }) => id === step)?.act.id === 'mix')
      return {
        state: 'must-not',
        text: `${text} What was mixed is over.`,
        wayOut:
          'Do not pour it. A warm cup goes outdoors while it can be held, on bare concrete, no lid; if it smokes, leave it, everybody out. Mix anew.',
        closes: instant(closes),
      };
    return missed
      ? { state: 'overdue', text: `${text} Do it the second way: ${missed.do}.`, closes: instant(closes) }
      : {
          state: 'must-not',
          text: `${text} The method knows no second way.`,
          wayOut:
            'Stop here, and ask the maker of what was laid on before you go on. Write down what you do as a deviation.',
          closes: instant(closes),
        };
  }
}

/** What was done too early, too late or before what it waits for: it stays as it is, and somebody must look at it. */
export function outOfTurn(
  measured: MeasuredMethod,
  done: WorkDone,
  momentText: (time: number) => string,
): BatchProblem[] {
  const { worked } = measured;
  return worked.steps.flatMap((step) =>
    step.after.flatMap((link): BatchProblem[] => {
      const wrong = new Map<string, { pieces: number[]; wayOut: string }>();
      for (let piece = 1; piece <= worked.pieces; piece += 1) {
        const told = wrongAt(step, link, piece);
        if (!told) continue;
        const before = wrong.get(told.text);
        if (before) before.pieces.push(piece);
        else wrong.set(told.text, { pieces: [piece], wayOut: told.wayOut });
      }
      return [...wrong].map(([text, { pieces, wayOut }]) => ({
        entries: [],
        step: step.id,
        text: `“${step.record.title}”${piecesWords([pieces[0] ?? 1, pieces.at(-1) ?? 1], worked.pieces)} ${text}`,
        wayOut,
      }));
    }),
  );

  function wrongAt(step: WorkedStep, link: WorkedLink, piece: number): { text: string; wayOut: string } | undefined {
    const work = done.works.get(step.id)?.[piece] ?? {};
    if (work.doubt !== undefined) return undefined;
    const begun = work.start ?? work.end;
    if (begun === undefined) return undefined;
    const title = worked.steps.find(({ id }) => id === link.step)?.record.title ?? link.step;
    const wait = waitOf(measured, done, link, piece);
    if (wait.kind === 'unknown') return undefined;
    if (wait.kind === 'before')
      return {
        text: `was begun ${momentText(begun)}, and “${title}”, which comes before it, is not written down as done.`,
        wayOut: `Write down when “${title}” was done, if it was; else stop here and look at the piece.`,
      };
    // Setting up may be done while a wait runs.
    if (begun + step.hands.setUp * 60_000 < wait.opens)
      return {
        text: `was begun ${momentText(begun)}, before the time after “${title}” was over, ${momentText(wait.opens)}.`,
        wayOut:
          'If a time was mistyped, strike it and write it anew. If it was so, look at the piece before you go on, and write down as a deviation what you see. Resin that has not cured: keep skin and lungs away from it, and go by the maker’s data sheet.',
      };
    if (wait.closes !== undefined && begun > wait.closes)
      return {
        text: `was begun ${momentText(begun)}, after its window had closed, ${momentText(wait.closes)}.`,
        wayOut: link.missed
          ? `Write down as a deviation that it was done the second way: ${link.missed.do}.`
          : 'If a time was mistyped, strike it and write it anew; else the layers may not hold together: test it, and write it down as a deviation.',
      };
    return undefined;
  }
}
