import { startTransition, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { onFailure } from '../../calculators/view/worker-failure.ts';
import type { ShopBeyond } from '../../method/case/types.ts';
import { patched, withTimetableOf } from '../../method/page/patch.ts';
import type { MethodPage, MethodQuestion } from '../../method/page/types.ts';
import type { DataProblem } from '../../model/data/problem.ts';
import { makeWorker } from './ahead.ts';
import { BehindPaint } from './behind-paint.ts';
import type { MethodAsked, MethodReply, MethodTexts, MethodUse } from './worker.ts';

/** Where the answer to a question stands. */
export interface MethodState {
  /** The last page that was worked out; while `problems` stand, of the question before. */
  page: MethodPage | undefined;
  problems: readonly DataProblem[];
  /** The shop, where the method does not hold in it as its record says it. */
  beyond?: ShopBeyond;
  /** What is still being worked out. */
  pending: 'nothing' | 'numbers' | 'judgement' | 'timetable' | 'advice';
  /** True where the worker failed, so that nothing is worked out any more. */
  failed: boolean;
}

/** A timetable that takes longer than this is left, and the worker begun anew, once somebody asks something else. ms */
const patience = 1500;

/** The same each time, so that a form without a fault is not drawn again. */
const noProblems: readonly DataProblem[] = [];

/** A question apart from its long texts, which would take longer to compare and to send than all of the rest. */
interface Parted {
  key: string;
  texts: MethodTexts;
}

/** What stands, and the question that it answers. */
interface Answered extends MethodState {
  of: Parted | undefined;
}

const isSameTexts = (one: MethodTexts | undefined, other: MethodTexts) =>
  one?.text === other.text && one.shop === other.shop;

/** A question, the same object as long as nothing of it is another. */
function useParted(question: MethodQuestion | undefined): Parted | undefined {
  const last = useRef<Parted | undefined>(undefined);
  const parted = useMemo(() => {
    if (!question) return undefined;
    const { text, shop, ...rest } = question;
    return { key: JSON.stringify(rest), texts: { text, ...(shop === undefined ? {} : { shop }) } };
  }, [question]);
  const before = last.current;
  if (!parted || before?.key !== parted.key || !isSameTexts(before.texts, parted.texts)) last.current = parted;
  return last.current;
}

/**
 * Work a method out in a worker: first its numbers, then how they are judged, its timetable, its advice. While a question changes the page before stays.
 *
 * @param question undefined while nothing is to be asked: `first` is then the answer
 * @param first the page that was worked out before, as by the build
 * @param use what is made of the answer
 */
export function useMethod(
  question: MethodQuestion | undefined,
  first?: MethodPage,
  use: MethodUse = 'page',
): MethodState {
  const [state, setState] = useState<Answered>({
    page: first,
    problems: noProblems,
    pending: 'nothing',
    failed: false,
    of: undefined,
  });
  const worker = useRef<Worker | undefined>(undefined);
  const number = useRef(0);
  /** The last question that was answered at all; whether the worker is still at a timetable. */
  const heard = useRef(0);
  const busy = useRef(false);
  /** What the worker told last, whether or not it was still wanted: it tells what is new beside it. */
  const told = useRef<MethodPage | undefined>(undefined);
  /** The question that stands, also for a worker that was begun for another. */
  const latest = useRef<Parted | undefined>(undefined);
  /** What of its replies waits until the figures before them are painted. */
  const heldBack = useRef<BehindPaint<MessageEvent<MethodReply>> | undefined>(undefined);
  /** The texts that the worker has. */
  const sent = useRef<MethodTexts | undefined>(undefined);
  const parted = useParted(question);

  useEffect(
    () => () => {
      worker.current?.terminate();
      worker.current = undefined;
    },
    [],
  );

  useEffect(() => {
    number.current += 1;
    if (parted === undefined) {
      setState({ page: first, problems: noProblems, pending: 'nothing', failed: false, of: undefined });
      return;
    }
    const kept = use === 'following' ? withTimetableOf : withLastsOf;
    const asked = { number: number.current, question: JSON.parse(parted.key) as MethodAsked['question'], use };
    const begin = () => {
      const made = makeWorker();
      told.current = undefined;
      sent.current = undefined;
      const replies = new BehindPaint(({ data }: MessageEvent<MethodReply>) => {
        // A worker that was left tells nothing that the next one knows of.
        if (worker.current !== made) return;
        if ('patch' in data) told.current = patched(told.current, data.patch);
        if (data.number !== number.current) return;
        const page = 'patch' in data ? told.current : undefined;
        // Numbers are waited for; what follows on them leaves room for what the reader does meanwhile.
        const isFirst = data.number !== heard.current;
        const draw = isFirst ? (change: () => void) => change() : startTransition;
        if (isFirst && use === 'following') replies.hold();
        busy.current = !data.last;
        heard.current = data.number;
        draw(() =>
          setState((before) => ({
            page: page ? kept(page, before.page) : before.page,
            problems: 'problems' in data ? data.problems : noProblems,
            ...('problems' in data && data.beyond ? { beyond: data.beyond } : {}),
            pending: page?.toCome ?? 'nothing',
            failed: false,
            of: latest.current,
          })),
        );
      });
      made.onmessage = (event: MessageEvent<MethodReply>) => replies.hear(event);
      heldBack.current = replies;
      made.onerror = onFailure(() => {
        if (worker.current !== made) return;
        // What is asked next begins another, which may come once there is a network.
        made.terminate();
        worker.current = undefined;
        busy.current = false;
        setState((before) => ({ ...before, pending: 'nothing', failed: true, of: latest.current }));
      });
      worker.current = made;
      return made;
    };
    const send = (to: Worker) => {
      const known = isSameTexts(sent.current, parted.texts);
      sent.current = parted.texts;
      to.postMessage({ ...asked, ...(known ? {} : { texts: parted.texts }) } satisfies MethodAsked);
    };
    latest.current = parted;
    const held = busy.current;
    busy.current = true;
    send(worker.current ?? begin());
    if (!held) return;
    const timer = setTimeout(() => {
      if (heard.current >= asked.number) return;
      // It is at the timetable of an older question, and hears nothing.
      worker.current?.terminate();
      send(begin());
    }, patience);
    return () => clearTimeout(timer);
  }, [parted, first, use]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is told is in the page once it was drawn
  useLayoutEffect(() => heldBack.current?.drawn(), [state]);

  // Told by what is asked, and not by a change of its own, which would draw the page once more.
  const { of, ...shown } = state;
  return parted !== undefined && of !== parted ? { ...shown, pending: 'numbers' } : shown;
}

/** A page of numbers keeps how long the one before lasted, so that the first screen does not jump; its timetable comes after it. */
function withLastsOf(page: MethodPage, before: MethodPage | undefined): MethodPage {
  const lasts = page.toCome === 'timetable' ? before?.brief.lasts : undefined;
  return lasts === undefined || page.brief.lasts !== undefined ? page : { ...page, brief: { ...page.brief, lasts } };
}
